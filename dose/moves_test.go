package dose_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/units/body"
)

// Why no maximum of the held weight is used is said where the body, or a long
// limb, is most of what is lifted, and nowhere else.
func TestMovedBodyIsSaid(t *testing.T) {
	for id, want := range map[exercise.ID]bool{"lateral-raise": true, "goblet-squat": true, "one-arm-dumbbell-row": false, "biceps-curl": false} {
		r := row(t)
		r.Exercise = exerciseOf(t, id)
		if !r.Exercise.OneSided {
			r.Side = body.Both
		}
		if r.Exercise.MovesBody != want {
			t.Fatalf("%s: moves the body %v", id, r.Exercise.MovesBody)
		}
		p, err := dose.Prescribe(r)
		if err != nil {
			t.Fatal(err)
		}
		if got := has(p.Reasons, "dose.moves-body"); got != want {
			t.Errorf("%s: said %v, want %v", id, got, want)
		}
	}
}
