package rule_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

func TestRepsBeforeJump(t *testing.T) {
	for _, bad := range []struct {
		low int
		p   units.Fraction
	}{{0, 0.1}, {-1, 0.1}, {8, 0}, {8, -0.1}, {8, units.Fraction(math.NaN())}, {8, units.Fraction(math.Inf(1))}} {
		if _, _, err := rule.RepsBeforeJump(bad.low, bad.p); !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("RepsBeforeJump(%d, %v): %v, want out of range", bad.low, float64(bad.p), err)
		}
	}
	// The bridge undoes the jump: on the linear form, the repetitions reached
	// with the lighter weight predict the same 1RM as low with the heavier one.
	rapid.Check(t, func(t *rapid.T) {
		low := rapid.IntRange(1, 30).Draw(t, "low")
		p := rapid.Float64Range(0.01, 1).Draw(t, "p")
		reps, _, err := rule.RepsBeforeJump(low, units.Fraction(p))
		if err != nil {
			t.Fatal(err)
		}
		light, heavy := 1+reps/30, (1+p)*(1+float64(low)/30)
		if math.Abs(light-heavy) > 1e-12*heavy {
			t.Fatalf("1RM %v before, %v after", light, heavy)
		}
	})
}
