package progression_test

import (
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/screening"
)

// The least count of screening binds every dose: the first, the next, its stand-in, and
// those of a whole visit.
func TestLeastCountBinds(t *testing.T) {
	tried(t, func(t *rapid.T) bool {
		c, ok := drawToday(t)
		if !ok {
			return false
		}
		least := rapid.SampledFrom([]int{8, 10, 12, 25}).Draw(t, "least count")
		c.Request.Screening.Limits = c.Request.Screening.Limits.Join(screening.Limits{LeastCount: least})
		if seldom(t, "a lighter day", 4) {
			c.Request.Screening.Limits = c.Request.Screening.Limits.Join(screening.LighterSession())
		}
		first := c.Request
		first.Day = c.Day
		p, err := dose.Prescribe(first)
		if err == nil {
			holdsLeast(t, p, least)
		}
		list, err := progression.NextAll([]progression.Course{c, c, c})
		if err != nil {
			return false
		}
		d, err := progression.Next(c)
		for _, d := range append(list, d) {
			if d.Next != nil {
				holdsLeast(t, *d.Next, least)
			}
		}
		if last(&c).Plan.Count >= least { // else the limit is new, and the lighter weight comes with more
			for _, what := range notOneThing(c, d) {
				t.Fatalf("%s: %s", what, tell(d))
			}
		}
		return err == nil && d.Next != nil && d.Next.Measure == exercise.Repetitions
	})
}

func holdsLeast(t *rapid.T, p dose.Prescription, least int) {
	if p.Measure != exercise.Repetitions {
		return
	}
	if low, some := p.Span.Min(); p.Count < least || some && low < least {
		t.Fatalf("%s %v: %d × %d of %v, sets of at least %d: %+v", p.Exercise, p.Load.Each(), p.Sets, p.Count, p.Span, least, p.Reasons)
	}
	if p.Feel != nil {
		t.Fatalf("%s %v: felt %d times, sets of at least %d", p.Exercise, p.Load.Each(), p.Feel.Count, least)
	}
}

// Four left where more than can be counted was asked brings no fewer than the least count,
// and at it the dose stays; with two left, less than a novice begins with, another
// exercise comes. A row of ten once went to 6, 4 and 3, a step-up to 6.
func TestLeastCountOverVisits(t *testing.T) {
	for _, id := range []exercise.ID{"one-arm-dumbbell-row", "supported-step-up", "dumbbell-calf-raise", "back-extension", "dumbbell-sit-to-stand"} {
		for _, left := range []float64{4, 2} {
			c := beginner(t, id, 2, 4)
			c.Request.Screening.Limits.LeastCount = 8
			c.Log[0] = asAsked(c.Log[0].Plan, firstDay, left)
			list := goesOn(t, &c, 16, left)
			for _, d := range list {
				if d.Next != nil && d.Instead == "" && d.Next.Count < 8 {
					t.Errorf("%s, %v left: %s", id, left, trail(list))
					break
				}
			}
			if kept := list[len(list)-1].Instead == "" && list[len(list)-1].Next != nil; kept != (left == 4) {
				t.Errorf("%s, %v left: %s", id, left, trail(list))
			}
		}
	}
}
