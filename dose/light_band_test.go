package dose_test

import (
	"math"
	"testing"

	"example.org/posology/dose/guideline"
	"example.org/posology/units"
)

// The top of endurance's band is half of the 1RM, which a set has to show by 30 repetitions
// to failure, and no more than 25 and 7 are read of one. Of a lower bound alone the share says
// nothing: 3 kg, done 12 times with ten left, were once eased to 2 kg. Of a value it forbids
// what is heavier, and takes away nothing that was asked for last: the reserve does.
func TestLightBandOfALowerBound(t *testing.T) {
	r := strong(t, 3*(1+19.0/30))
	r.Goal, r.Kit = guideline.Endurance, pairs(2, 2.5, 3, 3.5, 4, 5.5)
	r.Ability.Variance = 0.003
	for name, tt := range map[string]struct {
		atLeast        bool
		last           units.Mass
		three, heavier bool
	}{
		"a lower bound":            {true, 3, true, true},
		"a value, 3 kg asked last": {false, 3, true, false},
		"a value, 2 kg asked last": {false, 2, false, false},
	} {
		r.Ability.AtLeast = tt.atLeast
		f := frameOf(t, r)
		three, _ := f.Allows(3*units.Kilogram, tt.last*units.Kilogram)
		heavier, _ := f.Allows(7*units.Kilogram/2, tt.last*units.Kilogram)
		if three > 0 != tt.three || heavier > 0 != tt.heavier {
			t.Errorf("%s: 3 kg %d times, 3.5 kg %d times", name, three, heavier)
		}
	}
	r.Goal, r.Ability.Log, r.Ability.AtLeast = guideline.Power, math.Log(5), false // its band is no light one
	if n, _ := frameOf(t, r).Allows(4*units.Kilogram, 4*units.Kilogram); n > 0 {
		t.Errorf("power: %d of 80 %% since they were asked for last", n)
	}
}
