package page

import (
	"fmt"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// A Summary is what stands on top of a file.
type Summary struct {
	Overdue []string // what should have happened by now
	Outcome screening.Outcome
	Profile screening.Profile
	Day     units.Day // that is decided on
	Items   []dose.Prescription
	Dates   string
	Open    []string // what is still to be asked or looked at
}

// Summary prints the head of a file in about ten lines.
func (p *Paper) Summary(s Summary) {
	p.Heading("In short")
	for _, text := range s.Overdue {
		p.Say("Overdue   ", text)
	}
	p.Say("Route     ", fmt.Sprintf("%s; meanwhile %s", s.Outcome.Route, s.Outcome.Meanwhile))
	if way := FreesMost(s.Outcome); way != "" {
		p.Say("Frees most ", way)
	}
	others := Restrictions(s.Profile)
	if limits := OwnLimits(s.Outcome); !limits.IsZero() || len(others) == 0 {
		p.Say("Limits    ", strings.Join(LimitLines(limits), "; "))
	}
	for _, text := range others {
		p.Say("Set by    ", text)
	}
	p.Say("Doses     ", doses(s.Items))
	if s.Dates != "" {
		p.Say("Dates     ", s.Dates)
	}
	if len(s.Open) == 0 {
		s.Open = []string{"nothing"}
	}
	p.Say("Open      ", strings.Join(s.Open, "; "))
}

// Dates says the days that a plan is held to, seen from a day.
func Dates(d week.Dates, from units.Day) string {
	return fmt.Sprintf("Review %s; test strength again %s; follow the plan no longer than %s.", due(d.Review, from), due(d.Retest, from), Day(d.Expires))
}

func due(d, from units.Day) string {
	if d < from {
		return "now: it was due by " + Day(d)
	}
	return "by " + Day(d)
}

// doses says every load and amount in few words.
func doses(items []dose.Prescription) string {
	if len(items) == 0 {
		return "none"
	}
	list := make([]string, len(items))
	for i, item := range items {
		list[i] = fmt.Sprintf("%s%s, %d × %d", item.Name, weight(item), item.Sets, item.Count)
		if item.Measure != exercise.Repetitions {
			list[i] += " " + item.Measure.String()
		}
	}
	return strings.Join(list, "; ")
}

func weight(item dose.Prescription) string {
	switch {
	case item.Mode == dose.WithoutLoad:
		return ""
	case item.Hold.Implements() > 1:
		return fmt.Sprintf(" %s in each hand", item.Load.Each())
	}
	return fmt.Sprintf(" %s", item.Load.Each())
}

// Open says in few words what screening still wants to know, and that somebody is to hold
// the exercises against the words of others, which no rule reads.
func Open(missing []screening.Question, p screening.Profile) []string {
	var open []string
	for _, q := range missing {
		text, _, _ := strings.Cut(screening.Words().Clinician(q.Reason), "; ")
		text, _, _ = strings.Cut(text, ". ")
		open = append(open, "to be asked: "+strings.ToLower(text[:1])+strings.TrimSuffix(text[1:], "."))
	}
	for _, r := range inForce(p) {
		if r.Note != "" {
			open = append(open, "to be looked at: whether every exercise keeps to "+Quoted(r.Note)+", which no rule here reads")
		}
	}
	return open
}
