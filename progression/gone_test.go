package progression_test

import (
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
)

// The weight that was lifted last is gone from the kit: more days missed never bring more
// load, nor at the same load more sets or more repetitions, nor a dose where there was none.
func TestNextNeverMoreAfterMoreDaysOnceWeightIsGone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawCourse(t)
		c.Request.Kit = dumbbells(rapid.SliceOfNDistinct(rapid.SampledFrom([]float64{0.5, 1, 2, 2.5, 3, 3.25, 3.5, 3.6, 3.7, 3.75, 3.8, 3.9, 4.25, 4.5, 6, 8}), 1, 5, rapid.ID[float64]).Draw(t, "kit left")...)
		dayAfter := func(days int) progression.Decision {
			c.Day = last(&c).Day + units.Day(days)
			return nextOf(t, c)
		}
		few := between(t, "few days", 8, rule.LongestBreak()-1)
		was, is := dayAfter(few), dayAfter(between(t, "more days", few+1, rule.LongestBreak()))
		if a, b := was.Next, is.Next; was.Instead == is.Instead && b != nil && (a == nil || b.Load.Each() > a.Load.Each() || b.Load.Each() == a.Load.Each() && (b.Sets > a.Sets || b.Count > a.Count)) {
			t.Fatalf("%d days\nbefore %s\nafter  %s", few, tell(was), tell(is))
		}
	})
}

// Of 10 repetitions with 4 kg, which is gone, as many with 3 kg as the range begins with,
// whatever rung of the ladder the days are on.
func TestNextOfAnotherWeightOnceItsOwnIsGone(t *testing.T) {
	for days, sets := range map[units.Day]int{8: 2, 14: 2, 15: 1, 17: 1, 18: 1, 56: 1} {
		for _, left := range []float64{3, 5} {
			c := rowCourse(t, 3, 5)
			span(&c, 10, 12)
			done(&c, 4*kilo, 10, left)
			repeat(&c, 3)
			away(&c)
			c.Day = last(&c).Day + days
			if d := nextOf(t, c); d.Next == nil || d.Next.Load.Each() != 3*kilo || d.Next.Sets != sets || d.Next.Count != 8 {
				t.Errorf("%d days, %v left: %s", days, left, tell(d))
			}
		}
	}
}
