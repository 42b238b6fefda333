package guideline

import (
	"example.org/posology/dose/volume"
	"example.org/posology/units"
)

// perMuscle adds the findings about single muscles: one for each that the week
// trains where the recommendation has a bound, and else one for the week.
func (a *auditor) perMuscle() {
	sets, exercises := a.line(FieldWeeklySets, "", bound{}), a.line(FieldPerMuscle, "", bound{})
	muscles := a.week.Totals.Muscles
	if sets.Bound.IsZero() || len(muscles) == 0 {
		a.judge(sets)
	}
	if exercises.Bound.IsZero() || len(muscles) == 0 {
		a.judge(exercises)
	}
	for _, m := range muscles {
		sets.Of, exercises.Of = m.Muscle.String(), m.Muscle.String()
		if !sets.Bound.IsZero() {
			a.held(sets, m)
		}
		if m.Exercises > 0 && !exercises.Bound.IsZero() {
			exercises.Found = units.Exactly(float64(m.Exercises))
			a.judge(exercises)
		}
	}
	a.hours()
}

// hours adds the muscle with the shortest time from one of its days to the
// next, direct or indirect.
func (a *auditor) hours() {
	l := a.line(FieldHoursBetween, "", bound{})
	for _, m := range a.week.Totals.Muscles {
		for i := 1; i < len(m.Days); i++ {
			h := 24 * float64(m.Days[i]-m.Days[i-1])
			if shortest, any := l.Found.Min(); !any || h < shortest {
				l.Found, l.Of = units.Exactly(h), m.Muscle.String()
			}
		}
	}
	if l.Found.IsZero() && !l.Bound.IsZero() && len(a.week.Totals.Muscles) > 0 {
		a.add(l, Met) // no muscle on two days of the week
		return
	}
	a.judge(l)
}

// conventions are those that a number which cannot be compared is shown in.
var conventions = []volume.Convention{volume.DirectSets, volume.FractionalSets, volume.TotalSets}

// held compares one muscle's sets with a bound whose source does not say how
// it counts, if the caller does.
func (a *auditor) held(l AuditLine, m volume.MuscleWeek) {
	c := a.week.Assume
	sets := m.Sets(c)
	at, err := sets.Against(l.Bound, c)
	if err != nil {
		for _, c := range conventions {
			l.Sets = append(l.Sets, m.Sets(c))
		}
		a.add(l, NotComparable)
		return
	}
	l.Found, l.Convention, l.Assumed = units.Exactly(sets.Count()), c, true
	a.add(l, [...]Verdict{Short, Met, Over}[at+1])
}
