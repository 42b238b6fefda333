package week_test

import (
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
)

// No set of a week has fewer repetitions than screening asks for, of a few minutes a day
// neither.
func TestLeastCountOfWeeks(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		c := drawCourse(rt)
		if !c.next(rt, firstDay) {
			return
		}
		r, least := c.request, rapid.SampledFrom([]int{8, 12, 25}).Draw(rt, "least count")
		r.Brief, r.Minutes = rapid.Bool().Draw(rt, "brief"), rapid.SampledFrom([]int{0, 0, 20}).Draw(rt, "minutes")
		r.Screening.Limits = r.Screening.Limits.Join(screening.Limits{LeastCount: least})
		w, err := week.Plan(r)
		if err != nil {
			return
		}
		for _, s := range w.Sessions {
			for _, p := range s.Items {
				if p.Measure == exercise.Repetitions && p.Count < least {
					rt.Fatalf("%s: %d × %d, sets of at least %d", p.Exercise, p.Sets, p.Count, least)
				}
			}
		}
	})
}
