package progression_test

import (
	"testing"

	"example.org/posology/progression"
	"example.org/posology/units"
)

// Where the next weight is far a count goes on to 25, our own choice as 20 is elsewhere;
// not with the lightest weight, of which a search begins again, nor beyond a policy's end
// or an exercise's own range.
func TestNextBridgesToAFarWeight(t *testing.T) {
	easily := func(reps int) func(c *progression.Course) {
		return func(c *progression.Course) {
			span(c, reps, max(reps, 12))
			done(c, 4*kilo, reps, 8)
			repeat(c, 4)
		}
	}
	walk(t, func() progression.Course { return rowCourse(t, 2, 4, 10) }, []edge{
		{"far", easily(24), "progress, repetitions: 3 × 25 × 4 to 25", "progression.more-reps"},
		{"at the end", easily(25), "progress, slower lowering: 3 × 8 × 4 to 25", "progression.slower"},
		{"the lightest", func(c *progression.Course) { c.Request.Kit = dumbbells(4, 10); easily(20)(c) }, "progress, finding the load: 3 × 8 × 4 to 12, 1 up", "progression.find-on"},
		{"a policy's end", func(c *progression.Course) { c.Policy.MostReps = 20; easily(20)(c) }, "progress, slower lowering: 3 × 8 × 4 to 20", "progression.slower"},
		{"an own range", func(c *progression.Course) { c.Request.Exercise.CountFact = "own"; easily(20)(c) }, "progress, slower lowering: 3 × 8 × 4 to 20", "progression.slower"},
		{"the body moves", func(c *progression.Course) { c.Request.Exercise.MovesBody = true; easily(20)(c) }, "progress, slower lowering: 3 × 8 × 4 to 20", "progression.slower"},
	})
}

// A far weight is felt once strength comes near it, though sets end by the reserve asked;
// not with less left, with none told, or where more is to be left today.
func TestNextFeelsByStrength(t *testing.T) {
	for _, tt := range []struct {
		left  float64
		today units.RIR
		told  bool
		felt  bool
	}{{3, 3, true, true}, {5, 3, true, true}, {2, 3, true, false}, {3, 4, true, false}, {5, 4, true, true}, {5, 3, false, false}} {
		c := rowCourse(t, 4, 6)
		span(&c, 17, 20)
		done(&c, 4*kilo, 17, tt.left)
		repeat(&c, 3)
		if reserve(&c, tt.today); !tt.told {
			done(&c, 4*kilo, 17, tt.left)
			unrated(&c)
		}
		if d := nextOf(t, c); (d.Next.Feel != nil) != tt.felt {
			t.Errorf("%v left, %v asked for: %s", tt.left, tt.today, tell(d))
		}
	}
}

// A set of which none were left brings the count down by all that is to be left, which
// nobody misjudges; one such day takes no weight away.
func TestNextAfterNoneLeft(t *testing.T) {
	after := func(reps int, left float64) func(c *progression.Course) {
		return func(c *progression.Course) {
			span(c, 14, 20)
			done(c, 4*kilo, 14, 5)
			repeat(c, 6)
			done(c, 4*kilo, reps, left)
		}
	}
	walk(t, func() progression.Course { return rowCourse(t, 2, 4, 10) }, []edge{
		{"one left", after(14, 1), "hold, none: 3 × 13 × 4 to 25", "progression.hold"},
		{"none left", after(14, 0), "hold, none: 3 × 11 × 4 to 25", "progression.fewer-reps"},
		{"six, none left", after(6, 0), "hold, none: 3 × 5 × 4 to 25", "progression.fewer-reps"},
		{"seven, none left", after(7, 0), "hold, none: 3 × 5 × 4 to 25", "progression.fewer-reps"},
	})
}
