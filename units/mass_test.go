package units_test

import (
	"errors"
	"fmt"
	"math"
	"math/big"
	"strings"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

func TestPublishedUnits(t *testing.T) {
	tests := []struct {
		src  string
		got  units.Mass
		want string // nanograms
	}{
		{"International yard and pound agreement, 1959: 1 lb = 0.453 592 37 kg", units.Pound, "453592370000"},
		{"Avoirdupois: 16 oz to the pound", 16 * units.Ounce, "453592370000"},
		{"SI: 1 kg = 1000 g", 1000 * units.Gram, "1000000000000"},
		{"SI: 1 kg = 10^12 ng", units.Kilogram, "1000000000000"},
		{"Avoirdupois: 7000 grains of 64.798 91 mg to the pound", 7000 * 64_798_910, "453592370000"},
	}
	for _, tt := range tests {
		if got := fmt.Sprint(int64(tt.got)); got != tt.want {
			t.Errorf("%s: got %s ng, want %s", tt.src, got, tt.want)
		}
	}
	if got := units.Pound.String(); got != "0.45359237 kg" {
		t.Errorf("Pound.String() = %q, want %q", got, "0.45359237 kg")
	}
}

func TestParseMass(t *testing.T) {
	tests := []struct {
		in   string
		want units.Mass
	}{
		{"12.5 kg", 12_500 * units.Gram},
		{"12,5 kg", 12_500 * units.Gram},
		{"12.5kg", 12_500 * units.Gram},
		{"  12.5\u00a0kg\n", 12_500 * units.Gram},
		{"27.5 lb", 55 * units.Pound / 2},
		{"27.5 [lb_av]", 55 * units.Pound / 2},
		{"4 [oz_av]", units.Pound / 4},
		{"-250 g", -units.Kilogram / 4},
		{"-0 kg", 0},
		{"007 kg", 7 * units.Kilogram},
		{"1,000 kg", units.Kilogram}, // the comma is a decimal sign, always
		{"0.000000000001 kg", 1},
		{"0.0000000000004 kg", 0},
		{"0.0000000000005 kg", 1}, // halves away from zero
		{"-0.0000000000005 kg", -1},
		{"9223372.036854775807 kg", units.MaxMass},
		{"-9223372.036854775808 kg", math.MinInt64},
		{"1." + strings.Repeat("0", 59) + " kg", units.Kilogram},
	}
	for _, tt := range tests {
		if got, err := units.ParseMass(tt.in); got != tt.want || err != nil {
			t.Errorf("ParseMass(%q) = %d, %v, want %d", tt.in, got, err, tt.want)
		}
	}
}

func TestParseMassErrors(t *testing.T) {
	tests := []struct {
		in   string
		want error
	}{
		{"", field.ErrSyntax},
		{" ", field.ErrSyntax},
		{"kg", field.ErrSyntax},
		{"12.5", field.ErrMissing},
		{"12.5 ", field.ErrMissing},
		{"12.5 stone", field.ErrSyntax},
		{"12.5 kgg", field.ErrSyntax},
		{"12.5 kg kg", field.ErrSyntax},
		{"1.000,5 kg", field.ErrSyntax},
		{"1 000 kg", field.ErrSyntax},
		{"1e3 kg", field.ErrSyntax},
		{"1e300 kg", field.ErrSyntax},
		{"+5 kg", field.ErrSyntax},
		{"--5 kg", field.ErrSyntax},
		{"- 5 kg", field.ErrSyntax},
		{"\u22125 kg", field.ErrSyntax},
		{"\u0665 kg", field.ErrSyntax}, // digits of other scripts
		{".5 kg", field.ErrSyntax},
		{"5. kg", field.ErrSyntax},
		{"NaN kg", field.ErrSyntax},
		{"Inf kg", field.ErrSyntax},
		{"0x10 kg", field.ErrSyntax},
		{strings.Repeat("9", 61) + " kg", field.ErrSyntax},
		{strings.Repeat("9", 1_000_000) + " kg", field.ErrSyntax},
		{strings.Repeat("9", 60) + " kg", field.ErrOverflow},
		{"9223372.036854775808 kg", field.ErrOverflow},
		{"-9223372.036854775809 kg", field.ErrOverflow},
	}
	for _, tt := range tests {
		got, err := units.ParseMass(tt.in)
		if got != 0 || !errors.Is(err, tt.want) {
			t.Errorf("ParseMass(%.40q) = %d, %v, want 0, %v", tt.in, got, err, tt.want)
		}
		if len(err.Error()) > 600 {
			t.Errorf("ParseMass(%.40q): the error has %d bytes", tt.in, len(err.Error()))
		}
	}
}

func TestMassText(t *testing.T) {
	tests := []struct {
		m    units.Mass
		u    units.MassUnit
		want string
	}{
		{0, units.KG, "0 kg"},
		{0, units.LB, "0 lb"},
		{22_500 * units.Gram, units.KG, "22.5 kg"},
		{22_500 * units.Gram, units.G, "22500 g"},
		{25 * units.Pound, units.LB, "25 lb"},
		{25 * units.Pound, units.KG, "11.33980925 kg"},
		{units.Pound, units.OZ, "16 oz"},
		{-units.Gram, units.KG, "-0.001 kg"},
		{1, units.KG, "0.000000000001 kg"},
		{5, units.KG, "0.000000000005 kg"},
		{1, units.LB, "0.000000000002 lb"},
		{20 * units.Kilogram, 0, "20 kg"},
		{20 * units.Kilogram, 99, "20 kg"},
		{units.MaxMass, units.KG, "9223372.036854775807 kg"},
		{math.MinInt64, units.KG, "-9223372.036854775808 kg"},
		{math.MinInt64, units.G, "-9223372036.854775808 g"},
	}
	for _, tt := range tests {
		if got := tt.m.Text(tt.u); got != tt.want {
			t.Errorf("Mass(%d).Text(%v) = %q, want %q", tt.m, tt.u, got, tt.want)
		}
	}
}

// corners are masses at which arithmetic may break.
var corners = []units.Mass{
	0, 1, -1, 5, units.Gram, units.Pound, -units.Pound, units.Ounce, units.Kilogram,
	1 << 53, 1<<53 + 1, units.MaxMass, units.MaxMass - 1, -units.MaxMass, math.MinInt64, math.MinInt64 + 1,
}

func anyMass() *rapid.Generator[units.Mass] {
	return rapid.OneOf(
		rapid.Map(rapid.Int64(), func(n int64) units.Mass { return units.Mass(n) }),
		rapid.SampledFrom(corners),
	)
}

var allUnits = []units.MassUnit{units.KG, units.G, units.LB, units.OZ}

func TestMassTextRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, u := anyMass().Draw(t, "m"), rapid.SampledFrom(allUnits).Draw(t, "u")
		text := m.Text(u)
		got, err := units.ParseMarked(text)
		if err != nil || got != (units.Marked{Mass: m, Unit: u}) {
			t.Fatalf("ParseMarked(%q) = %+v, %v, want %d in %v", text, got, err, m, u)
		}
		if again := got.Mass.Text(u); again != text {
			t.Fatalf("%q prints again as %q", text, again)
		}
	})
}

// Text in kg and g is exact, whichever way it is read, and no longer than needed.
func TestMassTextExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, u := anyMass().Draw(t, "m"), rapid.SampledFrom(allUnits[:2]).Draw(t, "u")
		number := strings.TrimSuffix(m.Text(u), " "+u.String())
		exact, ok := new(big.Rat).SetString(number)
		if !ok {
			t.Fatalf("Text(%v) = %q is not a number", u, number)
		}
		exact.Mul(exact, new(big.Rat).SetInt64(int64(u.Mass())))
		if exact.Cmp(new(big.Rat).SetInt64(int64(m))) != 0 {
			t.Fatalf("Mass(%d).Text(%v) = %q, which is %v ng", m, u, number, exact)
		}
		if strings.Contains(number, ".") && strings.HasSuffix(number, "0") {
			t.Fatalf("Mass(%d).Text(%v) = %q with a nought too many", m, u, number)
		}
	})
}

func TestMassPoundsAndBack(t *testing.T) {
	for n := range 2000 {
		half := units.Mass(n) * units.Pound / 2
		kg, err := units.ParseMass(half.Text(units.KG))
		if err != nil || kg != half {
			t.Errorf("%d half pounds: by way of kg %d ng, %v, want %d", n, kg, err, half)
		}
		lb, err := units.Pounds(half.Pounds())
		if err != nil || lb != half {
			t.Errorf("%d half pounds: by way of float64 %d ng, %v, want %d", n, lb, err, half)
		}
	}
}

func TestFromFloat(t *testing.T) {
	tests := []struct {
		kg   float64
		want units.Mass
		err  error
	}{
		{0, 0, nil},
		{math.Copysign(0, -1), 0, nil},
		{22.5, 22_500 * units.Gram, nil},
		{-22.5, -22_500 * units.Gram, nil},
		{0.1, units.Kilogram / 10, nil},
		{0.5e-12, 0, nil},                   // the float64 lies below the half
		{1.0 / (1 << 13), 122_070_313, nil}, // 122 070 312.5 ng, away from zero
		{math.SmallestNonzeroFloat64, 0, nil},
		{9223372, 9_223_372 * units.Kilogram, nil},
		{9223373, 0, field.ErrOverflow},
		{1e300, 0, field.ErrOverflow},
		{-1e300, 0, field.ErrOverflow},
		{math.NaN(), 0, field.ErrOutOfRange},
		{math.Inf(1), 0, field.ErrOutOfRange},
		{math.Inf(-1), 0, field.ErrOutOfRange},
	}
	for _, tt := range tests {
		got, err := units.Kilograms(tt.kg)
		if !errors.Is(err, tt.err) || got != tt.want {
			t.Errorf("Kilograms(%v) = %d, %v, want %d, %v", tt.kg, got, err, tt.want, tt.err)
		}
	}
	if _, err := units.Pounds(1e300); !errors.Is(err, field.ErrOverflow) {
		t.Errorf("Pounds(1e300): %v, want %v", err, field.ErrOverflow)
	}
}

func TestToFloat(t *testing.T) {
	if got := (22_500 * units.Gram).Kilograms(); got != 22.5 {
		t.Errorf("22.5 kg in kilograms = %v", got)
	}
	if got := (25 * units.Pound).Pounds(); got != 25 {
		t.Errorf("25 lb in pounds = %v", got)
	}
	// Below 2^53 ng the quotient is the one nearest to the exact value.
	rapid.Check(t, func(t *rapid.T) {
		m := units.Mass(rapid.Int64Range(-1<<53, 1<<53).Draw(t, "m"))
		if want, _ := big.NewRat(int64(m), int64(units.Pound)).Float64(); m.Pounds() != want {
			t.Fatalf("Mass(%d).Pounds() = %v, want %v", m, m.Pounds(), want)
		}
		if want, _ := big.NewRat(int64(m), int64(units.Kilogram)).Float64(); m.Kilograms() != want {
			t.Fatalf("Mass(%d).Kilograms() = %v, want %v", m, m.Kilograms(), want)
		}
	})
}

func TestMassAddTimesAgainstBig(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, n := anyMass().Draw(t, "m"), anyMass().Draw(t, "n")
		times := rapid.OneOf(rapid.Int(), rapid.IntRange(-20, 20)).Draw(t, "times")
		x, y := big.NewInt(int64(m)), big.NewInt(int64(n))

		sum, err := m.Add(n)
		checkBig(t, "Add", sum, err, new(big.Int).Add(x, y))
		product, err := m.Times(times)
		checkBig(t, "Times", product, err, new(big.Int).Mul(x, big.NewInt(int64(times))))
	})
}

func checkBig(t *rapid.T, name string, got units.Mass, err error, want *big.Int) {
	switch {
	case !want.IsInt64():
		if got != 0 || !errors.Is(err, field.ErrOverflow) {
			t.Fatalf("%s = %d, %v, want %v", name, got, err, field.ErrOverflow)
		}
	case err != nil || int64(got) != want.Int64():
		t.Fatalf("%s = %d, %v, want %v", name, got, err, want)
	}
}

func TestMassEdges(t *testing.T) {
	const least = units.Mass(math.MinInt64)
	if _, err := least.Times(-1); !errors.Is(err, field.ErrOverflow) {
		t.Errorf("least mass times -1: %v, want %v", err, field.ErrOverflow)
	}
	if got, err := least.Times(1); got != least || err != nil {
		t.Errorf("least mass times 1 = %d, %v", got, err)
	}
}

func TestShare(t *testing.T) {
	if got, err := (70 * units.Kilogram).Share(100 * units.Kilogram); got != 0.7 || err != nil {
		t.Errorf("70 kg of 100 kg = %v, %v, want 0.7", float64(got), err)
	}
	for _, whole := range []units.Mass{0, -units.Kilogram} {
		if _, err := units.Kilogram.Share(whole); !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("Share(%v): %v, want %v", whole, err, field.ErrOutOfRange)
		}
	}
}

func TestMassUnmarshalTextKeepsOnError(t *testing.T) {
	m := units.Kilogram
	if err := m.UnmarshalText([]byte("5")); !errors.Is(err, field.ErrMissing) || m != units.Kilogram {
		t.Errorf("UnmarshalText(5): %v, mass %v; want %v and the old mass", err, m, field.ErrMissing)
	}
	if err := m.UnmarshalText([]byte("5 kg")); err != nil || m != 5*units.Kilogram {
		t.Errorf("UnmarshalText(5 kg): %v, mass %v", err, m)
	}
	if text, err := m.MarshalText(); string(text) != "5 kg" || err != nil {
		t.Errorf("MarshalText() = %q, %v, want 5 kg", text, err)
	}
}
