package function_test

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

func TestAmountText(t *testing.T) {
	for _, test := range []struct {
		text, want string
		value      float64
	}{
		{"0 reps", "0 reps", 0},
		{"8.86 s", "8.86 s", 8.86},
		{"0.80 m/s", "0.8 m/s", 0.8},
		{"-1.5 kg", "-1.5 kg", -1.5},
		{"-0.000001 kg", "-0.000001 kg", -0.000001},
		{"-0 s", "0 s", 0},
		{"999999999.999999 %", "999999999.999999 %", 999999999.999999},
		{"120 s", "120 s", 120},
		{"8,86 s", "8.86 s", 8.86},
		{"1 rep", "1 reps", 1},
		{"12 Reps", "12 reps", 12},
		{"0,8 M/S", "0.8 m/s", 0.8},
		{"3 levels", "3 level", 3},
	} {
		a, err := function.ParseAmount(test.text)
		if err != nil || a.String() != test.want || a.Number() != test.value || a.IsZero() {
			t.Errorf("%q: %q, %v, %v", test.text, a, a.Number(), err)
		}
	}
	for text, category := range map[string]error{
		"": field.ErrSyntax, "12": field.ErrSyntax, "12s": field.ErrSyntax, "1.2345678 s": field.ErrSyntax, "1e3 s": field.ErrSyntax,
		"1,5,5 s": field.ErrSyntax, "1_5 s": field.ErrSyntax, "5 ms": field.ErrUnknown, "5 ss": field.ErrUnknown, ".5 s": field.ErrSyntax, "5. s": field.ErrSyntax, "1234567890 s": field.ErrSyntax, "12 miles": field.ErrUnknown, "5 m/": field.ErrUnknown, "5 m/ss": field.ErrUnknown,
	} {
		_, err := function.ParseAmount(text)
		wants(t, err, "", category)
	}
}

func TestNewAmount(t *testing.T) {
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), 1e9, -1e9} {
		_, err := function.NewAmount(v, function.Seconds)
		wants(t, err, "", field.ErrOutOfRange)
	}
	_, err := function.NewAmount(1, 0)
	wants(t, err, "", field.ErrMissing)
	_, err = function.NewAmount(1, 99)
	wants(t, err, "", field.ErrOutOfRange)
	if a, err := function.NewAmount(4.82, function.Seconds); err != nil || a != amt("4.82 s") {
		t.Errorf("4.82 s: %v, %v", a, err)
	}
}

func TestAmountRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := units.Must(function.NewAmount(rapid.Float64Range(-1e6, 1e6).Draw(t, "value"), function.Unit(rapid.IntRange(1, len(slices.Collect(function.Units()))).Draw(t, "unit"))))
		text := units.Must(a.MarshalText())
		var back function.Amount
		if err := back.UnmarshalText(text); err != nil || back != a {
			t.Fatalf("%v came back as %v: %v", a, back, err)
		}
	})
	back := amt("1 s")
	if err := back.UnmarshalText(nil); err != nil || !back.IsZero() || back.String() != "" {
		t.Errorf("nothing came back as %v: %v", back, err)
	}
	if err := back.UnmarshalText([]byte("x")); err == nil {
		t.Error("x is an amount")
	}
}
