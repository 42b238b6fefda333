package simulate_test

import (
	"errors"
	"math"
	"testing"

	"example.org/posology/progression/simulate"
	"example.org/posology/units/field"
)

func TestLogGain(t *testing.T) {
	// Steele 2022: 50 to 60 % by the sixth year.
	if percent, _, err := simulate.FirstYear().At(6 * 52); err != nil || percent < 50 || percent > 60 {
		t.Errorf("sixth year: %v, %v", percent, err)
	}
	if percent, rate, err := simulate.FirstYear().At(1); err != nil || percent != 0 || rate <= 0 {
		t.Errorf("first week: %v, %v, %v", percent, rate, err)
	}
	_, _, err := simulate.LogGain{Percent: math.Inf(1), Weeks: 1}.At(0.5)
	var bad field.Errors
	if !errors.As(err, &bad) || len(bad) != 3 || bad[0].Path != "/weeks" || bad[1].Path != "/percent" || bad[2].Path != "/at" || !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("bad fields: %v", err)
	}
	if _, _, err := (simulate.LogGain{Percent: 1, Weeks: math.NaN()}).At(math.Inf(1)); !errors.As(err, &bad) || len(bad) != 2 {
		t.Errorf("bad fields: %v", err)
	}
}
