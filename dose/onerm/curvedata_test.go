package onerm_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// storedCurve is a curve as it is stored, invented.
const storedCurve = `{"form":"exponential-floor","one_rm":"20 kg","shape":0.08,"floor":0.5,"covariance":[0.01,0,0,0.04,0,1],"freedom":4,"noise":0.04,"sets":3,"studied":{"min":5,"max":12}}`

// TestCurveDecode: what no curve can be is refused by the field that is wrong.
func TestCurveDecode(t *testing.T) {
	var c onerm.Curve
	if err := field.Decode([]byte(storedCurve), &c, field.Strict); err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct{ old, new, path string }{
		{`"form":"exponential-floor",`, ``, "/form"},
		{`"form":"exponential-floor"`, `"form":"spline"`, "/form"},
		{`"form":"exponential-floor"`, `"form":"power"`, "/floor"},
		{`"20 kg"`, `"0 kg"`, "/one_rm"},
		{`0.08`, `0`, "/shape"},
		{`0.08`, `1e-9`, "/shape"},
		{`0.08`, `1e300`, "/shape"},
		{`"exponential-floor","one_rm":"20 kg","shape":0.08,"floor":0.5,"covariance":[0.01,0,0,0.04,0,1]`, `"line","one_rm":"20 kg","shape":10,"covariance":[1,0,1]`, "/shape"},
		{`"floor":0.5`, `"floor":1`, "/floor"},
		{`"floor":0.5,`, ``, "/floor"},
		{`0.08`, `3`, "/shape"},
		{`,0,1]`, `,0]`, "/covariance"},
		{`[0.01`, `[-0.01`, "/covariance"},
		{`[0.01,0,0,0.04`, `[0.01,0.03,0,0.04`, "/covariance"},
		{`[0.01,0,0,0.04`, `[0.01,0.0201,0,0.04`, "/covariance"},
		{`[0.01,0,0,0.04,0,1]`, `[1,0.9,0.9,1,-0.9,1]`, "/covariance"},
		{`"freedom":4`, `"freedom":0`, "/freedom"},
		{`"noise":0.04`, `"noise":-1`, "/noise"},
		{`"sets":3`, `"sets":0`, "/sets"},
		{`{"min":5,"max":12}`, `{"min":5}`, "/studied"},
		{`{"min":5,"max":12}`, `{"min":0,"max":12}`, "/studied"},
		{`{"min":5,"max":12}`, `{"min":5,"max":31}`, "/studied"},
		{`"sets":3`, `"sets":3,"more":1`, "/more"},
		{`"sets":3`, `"sets":3,"sets":3`, "/sets"},
	} {
		text := strings.Replace(storedCurve, test.old, test.new, 1)
		if text == storedCurve {
			t.Errorf("%q is not in the text", test.old)
		}
		var got onerm.Curve
		err := field.Decode([]byte(text), &got, field.Strict)
		var which *field.Error
		if !errors.As(err, &which) || which.Path != test.path || got.Data().Sets != 0 {
			t.Errorf("%s: %v, want an error at %s", test.new, err, test.path)
		}
	}
	for shape, ok := range map[string]bool{"8990": true, "9010": false, "1.07": true, "1.05": false} { // falls of 0.001 and 2.25
		var got onerm.Curve
		text := strings.Replace(flatCurve, "8900", shape, 1)
		if err := field.Decode([]byte(text), &got, field.Strict); (err == nil) != ok || !ok && !errors.Is(err, onerm.ErrNotFalling) {
			t.Errorf("shape %s: %v", shape, err)
		}
	}
}

// flatCurve is nearly flat.
const flatCurve = `{"form":"hyperbola","one_rm":"20 kg","shape":8900,"covariance":[0.01,0,1],"freedom":4,"noise":0.1,"sets":3,"studied":{"min":5,"max":12}}`

// data are the numbers of storedCurve.
func data(t testing.TB) onerm.CurveData {
	t.Helper()
	var d onerm.CurveData
	if err := field.Decode([]byte(storedCurve), &d, field.Strict); err != nil {
		t.Fatal(err)
	}
	return d
}

// A curve made of its numbers is the stored one, and keeps to itself.
func TestNewCurve(t *testing.T) {
	d := data(t)
	c, err := onerm.NewCurve(d)
	if err != nil {
		t.Fatal(err)
	}
	d.Covariance[0] = 7
	text, err := json.Marshal(c)
	if err != nil || string(text) != storedCurve {
		t.Errorf("%s, %v", text, err)
	}
	if c.Covariance()[0][0] != 0.01 || c.Covariance()[2][2] != 1 || c.Data().Form.Parameters() != 3 || c.String() != "exponential-floor through 3 sets" {
		t.Errorf("%v: %v", c, c.Covariance())
	}
	// 0.5 + 0.5·e^(−0.08·7), by hand
	if share, err := c.Fraction(8); err != nil || math.Abs(float64(share)-0.785604532) > 1e-9 {
		t.Errorf("%v of the 1RM, %v", float64(share), err)
	}
}

// What no text can say, a program can: it is refused nevertheless.
func TestNewCurveRefuses(t *testing.T) {
	for path, change := range map[string]func(*onerm.CurveData){
		"/form":       func(d *onerm.CurveData) { d.Form = 99 },
		"/shape":      func(d *onerm.CurveData) { d.Shape = math.NaN() },
		"/floor":      func(d *onerm.CurveData) { d.Floor = math.NaN() },
		"/noise":      func(d *onerm.CurveData) { d.Noise = math.Inf(1) },
		"/covariance": func(d *onerm.CurveData) { d.Covariance[1] = math.NaN() },
		"/days":       func(d *onerm.CurveData) { d.Days = units.Must(units.Between[units.Day](-5, 1)) },
	} {
		d := data(t)
		change(&d)
		c, err := onerm.NewCurve(d)
		var which *field.Error
		if !errors.As(err, &which) || which.Path != path || c.Data().Sets != 0 {
			t.Errorf("%v, want an error at %s", err, path)
		}
	}
}

// A curve that is not given answers nothing, and says so.
func TestNoCurve(t *testing.T) {
	var c onerm.Curve
	_, a := c.Fraction(5)
	_, b := c.Reps(0.8)
	_, d := c.Load(5)
	_, e := c.RepsAt(units.Kilogram)
	for i, err := range []error{a, b, d, e} {
		if !errors.Is(err, field.ErrMissing) {
			t.Errorf("%d: %v", i, err)
		}
	}
	if text, err := json.Marshal(c); err != nil || string(text) != "null" || c.String() != "" {
		t.Errorf("%s, %v", text, err)
	}
}
