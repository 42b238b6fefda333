package record

import (
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
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
// on another day of the week stands in for one that was missed.
func (r Record) attended(l *log, day units.Day) (AttendanceReport, error) {
	var a AttendanceReport
	for _, v := range r.Visits {
		a.Done = append(a.Done, v.Day)
	}
	a.Short = r.short(l)
	if len(r.Days) == 0 {
		return a, nil // reported with the days
	}
	for start := slices.Min(r.Days); start < day; start += weekDays {
		a.Sessions = append(a.Sessions, r.inWeek(start, day, l)...)
	}
	for _, s := range a.Sessions {
		if s.Missed != screening.No {
			a.Missed = append(a.Missed, s.Day)
		}
	}
	var err error
	a.Answer, err = programme.Attendance(programme.SinceReturn(a.Sessions, a.Done, day), day)
	return a, err
}

// comesLittle reports whether so few of the sessions up to a day were come to that
// the plan is to be simpler.
func (r Record) comesLittle(l *log, day units.Day) bool {
	a, err := r.attended(l, day)
	return err == nil && a.Answer.Advice == rule.Ease
}

// inWeek returns the sessions that the plan had in the seven days from start
// on, up to a day.
func (r Record) inWeek(start, until units.Day, l *log) []programme.PlannedSession {
	var list []programme.PlannedSession
	spare := 0
	for d := start; d < min(start+weekDays, until); d++ {
		visited := l.visited[d]
		switch wanted := slices.ContainsFunc(r.Days, func(p units.Day) bool { return (d-p)%weekDays == 0 }); {
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
	return list
}

// short lists what was less at a visit than was asked for.
func (r Record) short(l *log) []Shortfall {
	visits := map[turn]progression.Visit{}
	for _, ex := range l.exercises {
		for _, v := range l.logged[ex.ID] {
			visits[turn{ex.ID, v.Day}] = v.Visit
		}
	}
	var list []Shortfall
	for _, day := range r.Visits {
		for _, ex := range l.exercises {
			if _, ok := l.inForce(ex.ID, day.Day); !ok {
				continue
			}
			v := visits[turn{ex.ID, day.Day}]
			why, below := below(v)
			if len(v.Sets) == 0 || below {
				list = append(list, Shortfall{day.Day, ex.ID, ex.Name, why})
			}
		}
	}
	return list
}

// below reports whether the gate of repetitions finds a visit below its dose,
// and its reason. A load that was looked for has no dose to stay below.
func below(v progression.Visit) (*evidence.Reason, bool) {
	if len(v.Sets) == 0 || v.Plan.Finding != nil {
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
