package week_test

import (
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
)

// The week says what it takes as there.
func TestTakenAsThere(t *testing.T) {
	r := weekOf(0, 2, 4)
	r.Exercises = []exercise.ID{"goblet-squat", "step-up", "dumbbell-bench-press"}
	says := func(w week.Week) string {
		for _, why := range w.Reasons {
			if why.Code == "dose.taken-as-there" {
				return why.Args[0].Value()
			}
		}
		return ""
	}
	if got := says(firstWeek(t, r)); got != "step, bench" {
		t.Errorf("%q", got)
	}
	r.Kit.Things = []exercise.Thing{exercise.Staircase, exercise.Chair}
	w := firstWeek(t, r)
	if got := says(w); got != "" {
		t.Errorf("asked, and yet %q", got)
	}
	if len(w.LeftOut) != 1 || w.LeftOut[0].Exercise != "dumbbell-bench-press" || w.LeftOut[0].Instead == "" || !has(w.LeftOut[0].Reasons, "dose.not-there") || !has(w.LeftOut[0].Free, "dose.free-by-thing") {
		t.Errorf("%+v", w.LeftOut)
	}
}
