package review

import (
	"slices"

	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// attended compares the visits with the days of the plan, week by week: a visit
// on another day of the week stands in for one that was missed.
func (c Case) attended(l log) (Attendance, error) {
	var a Attendance
	for _, v := range c.Visits {
		a.Done = append(a.Done, v.Day)
		a.Short = append(a.Short, c.short(l, v.Day)...)
	}
	if len(c.Days) == 0 {
		return a, nil // reported with the days
	}
	for start := slices.Min(c.Days); start < c.Review; start += week {
		a.Sessions = append(a.Sessions, c.inWeek(start, a.Done)...)
	}
	for _, s := range a.Sessions {
		if s.Missed != screening.No {
			a.Missed = append(a.Missed, s.Day)
		}
	}
	var err error
	a.Answer, err = programme.Attendance(a.Sessions, c.Review)
	return a, err
}

// inWeek returns the sessions that the plan had in the seven days from start
// on, up to the review.
func (c Case) inWeek(start units.Day, done []units.Day) []programme.PlannedSession {
	var list []programme.PlannedSession
	spare := 0
	for d := start; d < min(start+week, c.Review); d++ {
		visited := slices.Contains(done, d)
		switch wanted := slices.ContainsFunc(c.Days, func(p units.Day) bool { return (d-p)%week == 0 }); {
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
func (c Case) short(l log, day units.Day) []Short {
	var list []Short
	for _, ex := range l.exercises {
		if _, ok := l.inForce(ex.ID, day); !ok {
			continue
		}
		visits := c.visits(l, ex.ID)
		i := slices.IndexFunc(visits, func(v logged) bool { return v.Day == day })
		s := Short{Day: day, Exercise: ex.ID, Name: ex.Name}
		if i < 0 || len(visits[i].Sets) == 0 {
			list = append(list, s)
			continue
		}
		if below(visits[i].Visit, &s) {
			list = append(list, s)
		}
	}
	return list
}

// below reports whether the gate of repetitions finds a visit below its dose,
// and takes its reason. A load that was looked for has no dose to stay below.
func below(v progression.Visit, s *Short) bool {
	report, err := visit.Gates(v)
	if err != nil || v.Plan.Finding != nil {
		return false // bad fields are reported where they are decided on
	}
	for _, g := range report.Gates {
		for _, why := range g.Reasons {
			if why.Code == belowDose {
				s.Why = &why
				return true
			}
		}
	}
	return false
}

const belowDose = "progression.below-dose"
