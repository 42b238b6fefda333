package record

import (
	"cmp"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// AttendanceReport is what was done of what was planned.
type AttendanceReport struct {
	// Sessions are those that the plan had, up to the last before the review.
	Sessions []programme.PlannedSession `json:"sessions"`
	Done     []units.Day                `json:"done"`
	Missed   []units.Day                `json:"missed,omitempty"` // planned, and no visit
	Away     []units.Day                `json:"away,omitempty"`   // likewise, and it is known why: told beforehand, a medical cause, or nothing was asked for; they are not judged
	Short    []Shortfall                `json:"short,omitempty"`
	Answer   programme.AttendanceAnswer `json:"answer"` // what it says of the plan
}

// Shortfall is an exercise that got less at a visit than was asked for.
type Shortfall struct {
	Day      units.Day   `json:"day"`
	Exercise exercise.ID `json:"exercise"`
	Name     string      `json:"name"`
	// Why is what the gate of repetitions says; nil: the exercise was left out.
	Why *evidence.Reason `json:"why,omitempty"`
}

const weekDays = 7 // days

// attended compares the visits with the days of the plan, week by week: a visit
// on another day of the week stands in for one that was missed, and a day too soon after a visit
// was none of the plan's, nor one that moved to the next plan's, unless it is of a few minutes on each day.
func (r Record) attended(l *log, day units.Day) (AttendanceReport, error) {
	var a AttendanceReport
	for _, v := range r.Visits {
		a.Done = append(a.Done, v.Day)
	}
	a.Short = r.short(l)
	if len(r.Days) == 0 {
		return a, nil // reported with the days
	}
	for _, p := range r.periods(day) {
		for start := slices.Min(p.days); start < p.until; start += weekDays {
			a.Sessions = append(a.Sessions, p.inWeek(start, l)...)
		}
	}
	var judged []programme.PlannedSession
	for _, s := range a.Sessions {
		switch missed := s.Missed != screening.No; {
		case missed && r.excused(s.Day):
			a.Away = append(a.Away, s.Day)
			continue
		case missed:
			a.Missed = append(a.Missed, s.Day)
		}
		judged = append(judged, s)
	}
	var err error
	a.Answer, err = programme.Attendance(judged, day)
	return a, err
}

// excused reports whether it is known why nobody came on a day: somebody was away, as was told
// beforehand, or missing for what was told is a medical cause, or nothing was asked for.
func (r Record) excused(day units.Day) bool {
	ill := func(g Given, visits int, until units.Day) bool {
		return g.Absence == screening.Yes && visits > 0 && r.Visits[visits-1].Day < day && day <= until
	}
	known, stopped := r.awayUntil(day) > 0 || ill(r.Given, len(r.Visits), day), false
	for _, e := range r.Entries {
		decided := cmp.Or(e.Decided, e.Day)
		known = known || ill(e.Given, e.Rests.Visits, decided)
		if decided <= day { // where all is stopped nothing is asked for until something begins anew
			stopped = e.Plan == nil && !slices.ContainsFunc(e.Items, Decided.prescribed) &&
				!slices.ContainsFunc(r.Asked, func(a Asked) bool { return decided <= a.From && a.From <= day })
		}
	}
	return known || stopped
}

// A period is the time in which one set of days was the plan's.
type period struct {
	days  []units.Day // of its first week
	until units.Day   // that it did not last to
	brief bool
}

// periods are those of the plan in force and of the plans before it, by what entries
// rest on: a plan lasts until another is decided on. Of plans made before anybody had
// trained the last is the one that was begun.
func (r Record) periods(until units.Day) []period {
	var list []period
	begin := func(days []units.Day, decided units.Day, brief bool) {
		if len(days) == 0 {
			return
		}
		first := slices.Min(days)
		for n := len(list); n > 0 && slices.Min(list[n-1].days) >= first; n-- {
			list = list[:n-1]
		}
		if n := len(list); n > 0 && list[n-1].until > min(first, decided) {
			list[n-1].until = min(first, decided)
		}
		list = append(list, period{days, until, brief})
	}
	for i, e := range r.Entries {
		again := e.Plan != nil && i+1 < len(r.Entries) && r.Entries[i+1].Plan != nil
		if same := len(list) > 0 && slices.Equal(list[len(list)-1].days, e.Given.Days); !again && !same {
			begin(e.Given.Days, e.Day, e.Given.Brief)
		}
	}
	if len(list) == 0 || !slices.Equal(list[len(list)-1].days, r.Days) {
		begin(r.Days, until, r.Brief)
	}
	return list
}

// inWeek returns the sessions that the plan had in the seven days from start on.
func (p period) inWeek(start units.Day, l *log) []programme.PlannedSession {
	var list []programme.PlannedSession
	spare := 0
	for d := start; d < min(start+weekDays, p.until); d++ {
		visited := l.visited[d]
		switch wanted := slices.ContainsFunc(p.days, func(first units.Day) bool { return (d-first)%weekDays == 0 }); {
		case wanted && visited:
			list = append(list, programme.PlannedSession{Day: d, Missed: screening.No})
		case wanted:
			list = append(list, programme.PlannedSession{Day: d, Missed: screening.Yes})
		case visited:
			spare++
		}
	}
	for i := range list {
		if spare > 0 && list[i].Missed == screening.Yes {
			list[i].Missed = screening.No
			spare--
		}
	}
	return slices.DeleteFunc(list, func(s programme.PlannedSession) bool {
		return s.Missed == screening.Yes && !p.brief &&
			(l.visitedIn(s.Day-week.DaysBetween+1, s.Day-1) || l.visitedIn(p.until, s.Day+week.DaysBetween))
	})
}

// visitedIn reports whether there was a visit on one of some days.
func (l *log) visitedIn(first, last units.Day) bool {
	for d := first; d <= last; d++ {
		if l.visited[d] {
			return true
		}
	}
	return false
}

// short lists what was less at a visit than was asked for.
func (r Record) short(l *log) []Shortfall {
	visits := map[turn]*progression.Visit{}
	for id, ex := range l.logged {
		for i := range ex.visits {
			visits[turn{id, ex.visits[i].Day}] = &ex.visits[i]
		}
	}
	var list []Shortfall
	for _, day := range r.Visits {
		for _, ex := range l.exercises {
			if _, ok := l.inForce(ex.ID, day.Day); !ok || l.daysOf.out(ex.ID, day.Day) {
				continue
			}
			if why, short := fellShort(visits[turn{ex.ID, day.Day}]); short {
				list = append(list, Shortfall{day.Day, ex.ID, ex.Name, why})
			}
		}
	}
	return list
}

// fellShort reports whether there was no set, or the gate of repetitions finds a visit below
// its dose, and its reason. A load that was looked for has no dose to stay below.
func fellShort(v *progression.Visit) (*evidence.Reason, bool) {
	switch {
	case v == nil || len(v.Sets) == 0:
		return nil, true
	case v.Plan.Finding != nil:
		return nil, false
	}
	for _, why := range v.Repetitions().Reasons {
		if why.Code == belowDose {
			return &why, true
		}
	}
	return nil, false
}

const belowDose = "progression.below-dose"
