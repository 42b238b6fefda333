package papers

import (
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/document"
	"example.org/posology/examples/internal/letter"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// A Paper is a document with the name of its file, such as "handout".
type Paper struct {
	Name string
	document.Document
}

// From returns the papers of a day: those of a first visit where the record has no
// visit yet, else those of a review. Its errors are those of [record.Record.Start]
// and [record.Record.Assess].
func From(r record.Record, day units.Day) ([]Paper, error) {
	if len(r.Visits) == 0 {
		plan, err := r.Start(day)
		if err != nil {
			return nil, err
		}
		return OfPlan(plan).All()
	}
	review, err := r.Assess(day)
	if err != nil {
		return nil, err
	}
	return OfReview(review).All()
}

// A Visit is what the papers of one day are made of.
type Visit struct {
	note, client string
	day          units.Day
	profile      screening.Profile
	check        *screening.Check
	outcome      screening.Outcome
	items        []dose.Prescription
	letter       letter.Letter
	handout      func(*sheet)
}

// All returns the papers that there is something to say on.
func (v Visit) All() ([]Paper, error) {
	handout, err := v.Handout()
	if err != nil {
		return nil, err
	}
	list := []Paper{{"handout", handout}}
	if len(v.items) > 0 {
		list = append(list, Paper{"diary", v.Diary()})
	}
	if v.takesInsulin() {
		list = append(list, Paper{"glucose", v.glucose()})
	}
	for to := letter.Doctor; to <= letter.FallsService; to++ {
		l := v.letter
		if l.To = to; !l.Due() {
			continue
		}
		written, err := l.Document()
		if err != nil {
			return nil, err
		}
		list = append(list, Paper{strings.ReplaceAll(to.String(), " ", "-"), written})
	}
	return list, nil
}

// Handout returns what the client does until the next visit.
func (v Visit) Handout() (document.Document, error) {
	s, err := newSheet(v.day, v.note, v.profile)
	if err != nil {
		return document.Document{}, err
	}
	v.handout(s)
	s.Say(asTold, noDevice)
	return s.Document, nil
}

// Letter returns the letter to the doctor.
func (v Visit) Letter() (document.Document, error) { return v.letter.Document() }

func (v Visit) takesInsulin() bool {
	return v.profile.Answers[insulin] == screening.Yes || v.check != nil && v.check.InsulinOrSecretagogue == screening.Yes ||
		slices.Contains(v.outcome.EachDay, "glucose")
}

const insulin screening.Code = "insulin_or_secretagogue"
