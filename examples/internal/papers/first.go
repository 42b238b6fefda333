package papers

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/letter"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// OfPlan returns what the papers of a first visit are made of.
func OfPlan(r record.Plan) Visit {
	day := max(r.Screening.Day, r.Screening.Today)
	v := Visit{
		note: r.Note, client: r.Client, day: day, profile: r.Profile, check: r.Today, outcome: r.Screening,
		letter: letter.Letter{
			Note: r.Note, Client: r.Client, Task: r.Task, Day: day,
			Opening: fmt.Sprintf("On %s I saw this person for strength training.", page.Day(day)),
			Profile: r.Profile, Check: r.Today, Outcome: r.Screening, Stopped: r.Week == nil, Tests: results(r.Tested),
		},
		handout: func(s *sheet) { firstVisit(s, r) },
	}
	if r.Week != nil {
		v.items = r.Week.Sessions[0].Items
	}
	return v
}

func firstVisit(s *sheet, r record.Plan) {
	s.Title = "For you, after your first visit"
	s.Say(page.Wanted(aim, r.Task, r.Tasks))
	s.Section("First")
	first := s.texts(page.ToClient(r.Screening))
	if r.Week != nil {
		first = append(first, s.texts(page.WhyUnused(r.Week.Unused))...)
	}
	first = append(first, limits(r.Screening, r.Profile, r.Week != nil)...)
	s.Points(first...)
	s.asked(r.Screening, OfPlan(r).letter)
	if r.Week == nil {
		s.Section("For now")
		s.Points(s.texts([]evidence.Reason{r.Stop.Constraint})...)
		return
	}
	var days []string
	for _, one := range r.Week.Sessions {
		days = append(days, page.Day(one.Day))
	}
	text := fmt.Sprintf("Each time about %d minutes", r.Week.Sessions[0].Minutes) // all are alike
	if warmUp := r.Week.Sessions[0].WarmUp; warmUp > 0 {
		text += fmt.Sprintf(", %d of them easy movement to warm up", warmUp)
	}
	s.Listed("Your days", append(days, text+".")...)
	s.exercises(partsOf(r.Week.Sessions[0].Items), first...)
	s.beside(r.Week.Beside, r.Week.NotBeside)
	s.tests(r.Tested)
	s.goodToKnow(r.Week.Reasons, r.Week.Sessions[0].Items, r.Week.Review, OfPlan(r).day)
}

// limits are when to call for help, what others have asked for and, where there are exercises, what is left out and minded.
func limits(o screening.Outcome, p screening.Profile, dosed bool) []string {
	lines := append(letter.HelpAtOnce(o), page.Given(o, p)...)
	if !dosed {
		return lines
	}
	if text := page.LeaveOut(o.Limits); text != "" {
		lines = append(lines, text)
	}
	return append(lines, minded(o)...)
}

// asked says what the doctor is asked, where training waits for it.
func (s *sheet) asked(o screening.Outcome, l letter.Letter) {
	if o.Route == screening.AskFirst {
		s.Listed("What your doctor is asked", l.Questions()...)
	}
}

// goodToKnow leaves out what was said of single exercises: that they are light.
func (s *sheet) goodToKnow(reasons []evidence.Reason, items []dose.Prescription, review, day units.Day) {
	if slices.ContainsFunc(items, func(d dose.Prescription) bool { return slices.Contains(d.Flags, dose.BelowEffectiveDose) }) {
		reasons = slices.DeleteFunc(slices.Clone(reasons), func(r evidence.Reason) bool { return strings.HasPrefix(string(r.Code), "dose.week-below-goal") })
	}
	texts := s.texts(reasons)
	if review > day {
		texts = append(texts, "We look at this plan together again by "+page.Day(review)+".")
	}
	s.Listed("Good to know", texts...)
}
