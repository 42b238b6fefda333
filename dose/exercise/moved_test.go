package exercise_test

import (
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// TestMovedShare holds where a share of body mass is stated, that it is owned
// up to as a choice, and that it agrees with the trade's example: for a person
// of 70 kg the goblet squat from 4 to 8 kg moves about 6 % more.
func TestMovedShare(t *testing.T) {
	facts, stated := ledger(t), 0
	for e := range exercise.Standard().All() {
		if e.MovedShare.IsZero() != (e.MovedShareFact == "") {
			t.Errorf("%s: share %s, fact %q", e.ID, e.MovedShare, e.MovedShareFact)
		}
		if e.MovedShareFact == "" {
			continue
		}
		stated++
		f, ok := facts.Fact(e.MovedShareFact)
		if !ok || f.Basis != evidence.Design || !strings.Contains(f.Value, e.MovedShare.String()) || !e.MovesBody {
			t.Errorf("%s: share %s, moves the body %v, fact %+v", e.ID, e.MovedShare, e.MovesBody, f)
		}
	}
	if stated != 34 {
		t.Errorf("%d exercises state a share, want the 34 in the table", stated)
	}
	squat, _ := exercise.Standard().Get("goblet-squat")
	low, _ := squat.MovedShare.Min()
	high, _ := squat.MovedShare.Max()
	more := func(share units.Fraction) float64 { return 4 / (float64(share)*70 + 4) }
	if more(high) > 0.06 || more(low) < 0.06 || more(low) > 0.07 {
		t.Errorf("from 4 to 8 kg moves %.3f to %.3f more, want about 0.06", more(high), more(low))
	}
	for _, id := range []exercise.ID{"supported-sit-to-stand", "wall-squat", "leg-press", "push-up", "one-dumbbell-hinge", "biceps-curl"} {
		if e, ok := exercise.Standard().Get(id); !ok || !e.MovedShare.IsZero() {
			t.Errorf("%s: share %s, want none: arms, wall, machine or floor bear an unknown part", id, e.MovedShare)
		}
	}
}

// A raise with a straight arm lifts the arm (common practice): no 1RM of the
// dumbbell alone. What share of the body an arm is was not found published, and
// one from memory would make steps look smaller: none is stated.
func TestRaisesLiftTheArm(t *testing.T) {
	raises := 0
	for e := range exercise.Standard().All() {
		if e.Pattern != exercise.ShoulderRaise || !strings.Contains(string(e.ID), "raise") {
			continue
		}
		raises++
		if !e.MovesBody || !e.MovedShare.IsZero() {
			t.Errorf("%s: moves the body %v, share %s", e.ID, e.MovesBody, e.MovedShare)
		}
	}
	if raises < 5 {
		t.Errorf("%d raises, want at least 5", raises)
	}
}

func TestLegs(t *testing.T) {
	legs := map[exercise.Pattern]bool{}
	for e := range exercise.Standard().All() {
		for _, w := range e.Muscles {
			legs[e.Pattern] = legs[e.Pattern] || w.Role == exercise.Prime && w.Muscle >= body.HipFlexors
		}
	}
	for p := range exercise.Patterns() {
		// a march trains the hip flexors and is grouped with the carries
		if want := legs[p] && p != exercise.Carry; p.Legs() != want {
			t.Errorf("%s: Legs = %v, want %v", p, p.Legs(), want)
		}
	}
}
