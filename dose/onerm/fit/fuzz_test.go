package fit_test

import (
	"encoding/json"
	"errors"
	"math"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/fit"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// FuzzFit: any sets at all give a sound curve or an error, never both.
func FuzzFit(f *testing.F) {
	for form := range onerm.Forms() {
		f.Add(uint8(form), false, 20.0, 5.0, 18.0, 8.0, 16.0, 12.0, 15.0, 16.0, 0.04, int32(0), 0.0)
		f.Add(uint8(form), true, 20.0, 5.0, 18.0, 8.0, 16.0, 12.0, 15.0, 16.0, 0.001, int32(5), 0.0)
		f.Add(uint8(form), true, 1e-12, 1.0, 9e6, 1.0001, 16.0, 30.0, 15.0, 30.0, 0.5, int32(5), 0.0)
		f.Add(uint8(form), false, 9e6, 30.0, 1e-12, 29.0, 9e6, 28.0, 1e-12, 1.0, 0.001, int32(5), 0.01)
		f.Add(uint8(form), true, 20.0, 5.0, 20.0, 8.0, 20.0, 12.0, 20.0, 16.0, 0.04, int32(0), 0.0)
	}
	f.Add(uint8(99), true, math.NaN(), math.Inf(1), -1.0, 0.0, 1.0, 1.0, 1.0, 1.0, -1.0, int32(-1), math.NaN())
	f.Fuzz(func(t *testing.T, form uint8, alone bool, w1, r1, w2, r2, w3, r3, w4, r4, sd float64, day int32, expected float64) {
		o := fit.Options{Form: onerm.Form(form), Alone: alone}
		if expected != 0 {
			o.Expected, o.ExpectedSD = 20*units.Kilogram, units.Fraction(expected)
		}
		var points []fit.Point
		for _, p := range [][2]float64{{w1, r1}, {w2, r2}, {w3, r3}, {w4, r4}} {
			load, _ := units.Kilograms(p[0])
			points = append(points, fit.Point{Load: load, Reps: p[1], SD: units.Fraction(sd), Day: units.Day(day)})
		}
		c, err := fit.Fit(points, o)
		checkFields(t, err)
		if err != nil {
			if c.OneRM() != 0 || c.Data().Sets != 0 {
				t.Errorf("%+v beside %v", c, err)
			}
			return
		}
		checkCurve(t, c)
		text, err := json.Marshal(c)
		if err != nil {
			t.Fatal(err)
		}
		if err := field.Decode(text, new(onerm.Curve), field.Strict); err != nil {
			t.Errorf("%s: %v", text, err)
		}
	})
}

// FuzzCurveJSON: what can be read is a sound curve.
func FuzzCurveJSON(f *testing.F) {
	f.Add([]byte(hyperbola))
	f.Add([]byte(`{"form":"line","one_rm":"20 kg","shape":10,"covariance":[1,0,1]}`))
	f.Add([]byte(`null`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var c onerm.Curve
		if field.Decode(data, &c, field.Strict) != nil || c.Data().Sets == 0 {
			return
		}
		for _, r := range []float64{1, 5, 30} {
			if share, err := c.Fraction(r); err == nil && !(share >= 0 && share <= 1) {
				t.Errorf("share %v", share)
			}
			within, err := fit.LoadWithin(c, r, 0.9)
			checkFields(t, err)
			if low, _ := within.Min(); low < 0 {
				t.Errorf("%v", within)
			}
			reps, err := fit.RepsWithin(c, c.OneRM()/2, 0.9)
			checkFields(t, err)
			if low, _ := reps.Min(); !(low >= 0) {
				t.Errorf("%v", reps)
			}
		}
	})
}

// checkFields fails unless an error names a field and what is wrong with it.
func checkFields(t *testing.T, err error) {
	t.Helper()
	var one *field.Error
	if err == nil {
		return
	}
	if !errors.As(err, &one) || one.Path == "" || one.Err == nil {
		t.Errorf("error without path or category: %v", err)
	}
}
