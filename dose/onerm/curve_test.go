package onerm_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Doses follow the lower of Epley and Brzycki at every load, whichever of the
// two an estimate took, and for a measured 1RM, which took none.
func TestHouseCurve(t *testing.T) {
	for _, s := range []struct{ reps, reserve int }{{1, 0}, {8, 0}, {8, 2}} {
		e, err := onerm.FromSet(set(s.reps, float64(s.reserve)), press(body.OnStack), man)
		if err != nil {
			t.Fatal(err)
		}
		curve := e.Relation()
		for share := 0.40; share < 0.96; share += 0.01 {
			f := units.Fraction(share)
			got, err := curve.Reps(f)
			epley, _ := onerm.Epley.Reps(f)
			brzycki, _ := onerm.Brzycki.Reps(f)
			if want := math.Min(epley, brzycki); err != nil || got != want {
				t.Errorf("%d with %d: %v repetitions at %v (%v), want %v", s.reps, s.reserve, got, f, err, want)
			}
			if back, err := curve.Fraction(got); err != nil || math.Abs(float64(back)-share) > 1e-12 {
				t.Errorf("%v repetitions give back %v (%v), want %v", got, back, err, f)
			}
		}
		if curve.Studied() != onerm.Epley.Studied() || fmt.Sprint(curve) != "the lower of epley and brzycki" {
			t.Errorf("%v, studied %v", curve, curve.Studied())
		}
		for _, f := range []units.Fraction{-1, 0, units.Fraction(math.NaN()), 1.2} {
			if reps, err := curve.Reps(f); err == nil {
				t.Errorf("%v repetitions at %v", reps, float64(f))
			}
		}
		for _, r := range []float64{-1, 0, 37, math.NaN()} {
			if f, err := curve.Fraction(r); err == nil {
				t.Errorf("%v at %v repetitions", f, r)
			}
		}
	}
}
