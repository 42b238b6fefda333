package review

import (
	"slices"

	"example.org/posology/progression"
	"example.org/posology/units"
)

// attended compares the visits with the days of the plan, week by week: a visit
// on another day of the week stands in for one that was missed.
func (c Case) attended(l log) Attendance {
	var a Attendance
	for _, v := range c.Visits {
		a.Done = append(a.Done, v.Day)
		a.Short = append(a.Short, c.short(l, v.Day)...)
	}
	if len(c.Days) == 0 {
		return a
	}
	first := slices.Min(c.Days)
	for start := first; start < c.Review; start += week {
		var empty []units.Day
		spare := 0
		for d := start; d < min(start+week, c.Review); d++ {
			visited := slices.Contains(a.Done, d)
			wanted := slices.ContainsFunc(c.Days, func(p units.Day) bool { return (d-p)%week == 0 })
			if wanted {
				a.Planned++
			}
			switch {
			case wanted && !visited:
				empty = append(empty, d)
			case visited && !wanted:
				spare++
			}
		}
		a.Missed = append(a.Missed, empty[min(spare, len(empty)):]...)
	}
	return a
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
	report, err := progression.Gates(v)
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
