package dose_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A load so light that the equation has no answer for it is not one that cannot
// be lifted: Mayhew's ends at 52.2 % of the maximum, and the row begins at 40 %.
func TestTheCurveEndsAboveTheLoad(t *testing.T) {
	r := tested(t, row(t), 6, 8, 2)
	r.Estimates[0].Formula, r.Estimates[0].Loading = onerm.Mayhew, 0
	if err := r.Estimates[0].Validate(); err != nil {
		t.Fatal(err)
	}
	for range 2 {
		p := prescribe(t, r)
		if p.Mode == dose.OnCurve || p.Count != 15 || p.Load.Each() != 4*units.Kilogram {
			t.Errorf("%v: %v × %d, want 4 kg for the row's 10 to 15, off the curve", p.Mode, p.Load.Each(), p.Count)
		}
		r.Screening.Who.Training, r.Guideline = body.Intermediate, "acsm2011-older-start"
	}
}
