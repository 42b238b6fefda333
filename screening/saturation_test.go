package screening_test

import (
	"errors"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Saturation below 89 % is read again after a rest, as pressure and pulse are: the second
// counts, and the doctor is asked only where it is low too. That it is read again is our own
// choice (screening.measure-again); the limits are those of the first reading.
func TestSaturationAgain(t *testing.T) {
	for name, tt := range map[string]struct {
		first, again int
		plan         screening.DayPlan
		code         evidence.ReasonCode
		way          screening.WayOut
	}{
		"first only":    {86, 0, screening.SettleFirst, "screening.spo2_lt_89.again", screening.WayOut{Who: screening.ThePerson, With: screening.AReading, Ask: "oxygen_saturation_again"}},
		"up":            {86, 90, screening.AsPlanned, "screening.spo2_lt_89_passed", screening.WayOut{}},
		"well":          {90, 0, screening.AsPlanned, "", screening.WayOut{}},
		"up a little":   {86, 89, screening.Lighter, "screening.spo2_lt_90", screening.WayOut{}},
		"still low":     {86, 88, screening.NotToday, "screening.spo2_lt_89", screening.WayOut{Who: screening.TheDoctor, With: screening.BeingSettled}},
		"down":          {97, 88, screening.NotToday, "screening.spo2_lt_89", screening.WayOut{Who: screening.TheDoctor, With: screening.BeingSettled}},
		"89, only once": {89, 0, screening.Lighter, "screening.spo2_lt_90", screening.WayOut{}},
	} {
		c := quiet()
		c.SpO2, c.SpO2Again = tt.first, tt.again
		o := mustToday(t, c, assess(t, blank()))
		if o.Plan != tt.plan || misses(o, "oxygen_saturation_again") != (tt.plan == screening.SettleFirst) {
			t.Errorf("%s: %v, missing %v", name, o.Plan, o.Missing)
		}
		if tt.code == "" {
			continue
		}
		f, ok := finding(o, tt.code)
		if !ok || f.Exit.Who != tt.way.Who || f.Exit.With != tt.way.With || f.Exit.Ask != tt.way.Ask {
			t.Errorf("%s: %+v", name, o.Findings)
		}
	}
	c := quiet()
	c.SpO2Again = 90
	if err := c.Validate(); !errors.Is(err, field.ErrMissing) {
		t.Errorf("a second reading alone: %v", err)
	}
}

// A second reading is never looser than the same one taken alone, and a first one alone stands.
func TestSaturationAgainNoLooser(t *testing.T) {
	o := assess(t, blank())
	of := func(first, again int) screening.Outcome {
		c := quiet()
		c.SpO2, c.SpO2Again = first, again
		return mustToday(t, c, o)
	}
	for again := 50; again <= 100; again++ {
		alone := of(again, 0)
		for first := 50; first <= 100; first++ {
			both := of(first, again)
			tighter(t, "a second reading", first, alone, both)
			if both.Plan < alone.Plan {
				t.Fatalf("%d %%: %v, after %d %%: %v", again, alone.Plan, first, both.Plan)
			}
		}
	}
}
