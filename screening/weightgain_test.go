package screening_test

import (
	"slices"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
)

// TestWeightGainRate holds the published row, 1.8 kg or more over 1 to 3 days,
// over any number of days: a gain of 1.8 kg for every 3 days begun holds 1.8 kg
// within 3 of them, however it was spread.
func TestWeightGainRate(t *testing.T) {
	for _, tt := range []struct {
		tenths units.Mass
		days   int
		met    bool
	}{
		{17, 3, false}, {18, 1, true}, {18, 3, true}, {20, 4, false}, {35, 6, false}, {36, 4, true}, {36, 6, true},
		{50, 4, true}, {53, 7, false}, {54, 7, true}, {100, 7, true}, {197, 31, false}, {198, 31, true}, {-30, 2, false},
	} {
		c := screening.Check{Weight: &screening.WeightGain{Mass: tt.tenths * units.Kilogram / 10, Days: tt.days}}
		got := slices.Equal(screening.HeartFailure(c, screening.Profile{}).Reasons, []screening.Code{"hf_weight_gain"})
		if got != tt.met {
			t.Errorf("%v over %d days: met %v, want %v", c.Weight.Mass, tt.days, got, tt.met)
		}
	}
}

// TestWeightGainSpread holds the argument itself: whatever is met by the sum
// has a stretch of at most 3 days that meets the published row.
func TestWeightGainSpread(t *testing.T) {
	for _, daily := range [][]units.Mass{{18, 0, 0, 18}, {9, 9, 0, 0, 9, 9}, {0, 0, 36, 0}, {12, 12, 12, 12, 12, 12, 12}, {6, 6, 6, 6, 6, 6, 18}} {
		sum, best := units.Mass(0), units.Mass(0)
		for i := range daily {
			sum += daily[i]
			stretch := units.Mass(0)
			for j := i; j < min(i+3, len(daily)); j++ {
				stretch += daily[j]
				best = max(best, stretch)
			}
		}
		c := screening.Check{Weight: &screening.WeightGain{Mass: sum * units.Kilogram / 10, Days: len(daily)}}
		if met := len(screening.HeartFailure(c, screening.Profile{}).Reasons) > 0; met && best < 18 {
			t.Errorf("%v: met, with %v tenths of a kilogram in 3 days at most", daily, best)
		}
	}
}
