package fit_test

import (
	"encoding/json"
	"errors"
	"reflect"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/fit"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// TestRoundTrip: a stored curve is the curve, bit by bit.
func TestRoundTrip(t *testing.T) {
	for f := range onerm.Forms() {
		points := samples[7].points(3, 6, 9, 14)
		points[0].Day, points[1].Day = 700_000, 700_003
		points[2].Load += units.Kilogram / 3
		c := curve(t, points, fit.Options{Form: f})
		if c.String() != f.String()+" through 4 sets" || c.Data().Form != f || c.Data().Sets != 4 || c.Data().Alone {
			t.Errorf("%v", c)
		}
		text, err := json.Marshal(c)
		if err != nil {
			t.Fatal(err)
		}
		var again onerm.Curve
		if err := field.Decode(text, &again, field.Strict); err != nil {
			t.Fatalf("%s: %v", text, err)
		}
		if !reflect.DeepEqual(c, again) {
			t.Errorf("%+v\nbecame %+v", c, again)
		}
		if !reflect.DeepEqual(c.Covariance(), again.Covariance()) || len(c.Covariance()) != f.Parameters() {
			t.Errorf("covariance %v", again.Covariance())
		}
	}
	text, err := json.Marshal(onerm.Curve{})
	again := curve(t, samples[0].points(5), fit.Options{Form: onerm.Line})
	if err != nil || string(text) != "null" || again.UnmarshalJSON(text) != nil || again.Data().Sets != 0 {
		t.Errorf("zero curve: %s, %v, %v", text, err, again)
	}
}

// TestDecode: points and options take nothing else.
func TestDecode(t *testing.T) {
	for _, v := range []any{new(fit.Point), new(fit.Options), new(onerm.Form)} {
		if err := field.Decode([]byte(`{"lod":1}`), v, field.Strict); err == nil {
			t.Errorf("%T takes anything", v)
		}
	}
}

// TestZero: what is not given says so.
func TestZero(t *testing.T) {
	var c onerm.Curve
	_, a := c.Fraction(5)
	_, b := c.Reps(0.8)
	_, d := c.Load(5)
	_, e := c.RepsAt(units.Kilogram)
	_, f := fit.LoadWithin(c, 5, 0.9)
	_, g := fit.OneRMWithin(c, 0.9)
	_, h := fit.RepsWithin(c, units.Kilogram, 0.9)
	for i, err := range []error{a, b, d, e, f, g, h} {
		if !errors.Is(err, field.ErrMissing) {
			t.Errorf("%d: %v", i, err)
		}
	}
	if c.String() != "" || c.Data().Form.String() != "" || len(c.Covariance()) != 0 || c.Data().Form.Parameters() != 0 || c.StandardError() != (onerm.StandardError{}) {
		t.Errorf("zero curve %v", c)
	}
	if err := (fit.Options{}).Validate(); !errors.Is(err, field.ErrMissing) {
		t.Errorf("zero options: %v", err)
	}
}

// TestDomain: the ends of what a curve answers, just inside and just outside.
func TestDomain(t *testing.T) {
	c := curve(t, []fit.Point{{Load: 20 * units.Kilogram, Reps: 8}}, fit.Options{Form: onerm.Hyperbola})
	line := curve(t, samples[3].points(2, 6, 10, 14), fit.Options{Form: onerm.Line, Alone: true})
	steep := curve(t, sample{onerm.Line, 20, 20, 0}.points(2, 6, 10, 14), fit.Options{Form: onerm.Line, Alone: true})
	for _, test := range []struct {
		name string
		err  error
		ok   bool
	}{
		{"1 repetition", second(c.Fraction(1)), true},
		{"under 1", second(c.Fraction(0.999)), false},
		{"30 repetitions", second(c.Fraction(30)), true},
		{"over 30", second(c.Fraction(30.001)), false},
		{"30 of a line that goes on to 37", second(line.Fraction(30)), true},
		{"20.9 of a line that ends at 21", second(steep.Load(20.9)), true},
		{"21.1 of it", second(steep.Load(21.1)), false},
		{"all of the 1RM", second(c.Reps(1)), true},
		{"over all", second(c.Reps(1.001)), false},
		{"nothing", second(c.Reps(0)), false},
		{"less than nothing", second(c.Reps(-1)), false},
		{"nothing of a line that ends", second(steep.Reps(0)), true},
		{"less than nothing of it", second(steep.Reps(-0.5)), false},
		{"the 1RM", second(c.RepsAt(c.OneRM())), true},
		{"more than it", second(c.RepsAt(c.OneRM() + units.Gram)), false},
		{"level 0.5", second(fit.OneRMWithin(c, 0.5)), true},
		{"level under 0.5", second(fit.OneRMWithin(c, 0.499)), false},
		{"level 0.99", second(fit.OneRMWithin(c, 0.99)), true},
		{"level over 0.99", second(fit.OneRMWithin(c, 0.991)), false},
		{"level and repetitions", second(fit.LoadWithin(c, 0, 1)), false},
		{"a load for too many", second(fit.RepsWithin(c, units.Kilogram, 0.9)), false},
		{"level of repetitions", second(fit.RepsWithin(c, 20*units.Kilogram, 2)), false},
	} {
		if (test.err == nil) != test.ok || !test.ok && !errors.Is(test.err, field.ErrOutOfRange) {
			t.Errorf("%s: %v", test.name, test.err)
		}
	}
	for end, share := range map[float64]units.Fraction{1: units.Must(c.Fraction(1)), 30: units.Must(c.Fraction(30))} {
		if got := units.Must(c.Reps(share)); got != end {
			t.Errorf("share %v: %v repetitions, want %v", share, got, end)
		}
	}
}

// TestOverflow: an end of an interval that no number holds is an error, not an
// infinity.
func TestOverflow(t *testing.T) {
	heavy := curve(t, []fit.Point{{Load: 9e6 * units.Kilogram, Reps: 1}}, fit.Options{Form: onerm.Hyperbola})
	if within, err := fit.OneRMWithin(heavy, 0.9); !errors.Is(err, field.ErrOverflow) || !within.IsZero() {
		t.Errorf("%v, %v", within, err)
	}
	var c onerm.Curve
	if err := field.Decode([]byte(hyperbola), &c, field.Strict); err != nil {
		t.Fatal(err)
	}
	if within, err := fit.RepsWithin(c, c.OneRM(), 0.9); !errors.Is(err, field.ErrOverflow) || !within.IsZero() {
		t.Errorf("%v, %v", within, err)
	}
}

// hyperbola is nearly flat.
const hyperbola = `{"form":"hyperbola","one_rm":"20 kg","shape":8900,"covariance":[0.01,0,1],"freedom":4,"noise":0.1,"sets":3,"studied":{"min":5,"max":12}}`

func second[T any](_ T, err error) error { return err }
