package dose_test

import (
	"errors"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/screening"
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

// A row that is too heavy for the left and for the right is left out, and no dose
// of nothing stands in for it.
func TestBothSidesTooHeavy(t *testing.T) {
	r := weekOf(0)
	r.Kit, r.Exercises = pairs(3), []exercise.ID{"one-arm-dumbbell-row"}
	r.Screening.Limits.Masses = []screening.MassLimit{
		{Region: body.Shoulder, Side: body.Left, Max: units.Kilogram, Author: "a clinician"},
		{Region: body.Elbow, Side: body.Right, Max: 2 * units.Kilogram, Author: "a clinician"},
	}
	w := firstWeek(t, r)
	if len(w.LeftOut) == 0 || w.LeftOut[0].Exercise != "one-arm-dumbbell-row" || !has(w.LeftOut[0].Reasons, "dose.too-heavy") {
		t.Errorf("left out: %+v", w.LeftOut)
	}
	for _, item := range w.Sessions[0].Items {
		if item.Exercise == "" || item.Exercise == "one-arm-dumbbell-row" {
			t.Errorf("%q, %v", item.Exercise, item.Load.Each())
		}
	}
	for ex := range exercise.Standard().All() {
		if ex.ID != "one-arm-dumbbell-row" {
			r.Without = append(r.Without, ex.ID)
		}
	}
	if _, err := dose.PlanWeek(r); !errors.Is(err, dose.ErrTooHeavy) {
		t.Errorf("with nothing in its place: %v", err)
	}
}
