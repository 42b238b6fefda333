package published_test

import (
	"errors"
	"math"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/published"
	"example.org/posology/units"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

type equation interface {
	OneRM(load units.Mass, reps float64) (units.Mass, error)
	Load(oneRM units.Mass, reps float64) (units.Mass, error)
}

// Every published equation that predicts is an equation; those of one share at
// every load are Relations.
var (
	_ equation       = onerm.Epley
	_ equation       = published.Braith1993After
	_ equation       = published.Macht2016{}
	_ onerm.Relation = onerm.Epley
	_ onerm.Relation = published.NSCALoadChart
)

// TestRegressionValues: worked by hand from the printed coefficients.
func TestRegressionValues(t *testing.T) {
	tests := []struct {
		p          equation
		load, reps float64
		unit       units.Mass
		want       float64
	}{
		{published.Reynolds2006ChestPress5RM, 50, 5, units.Kilogram, 57.2349},
		{published.Reynolds2006LegPress5RM, 100, 5, units.Kilogram, 123.9546},
		{published.Braith1993Before, 40, 8, units.Kilogram, 56.979},
		{published.Braith1993After, 40, 8, units.Kilogram, 54.584},
		{published.Abadie2000ChestPress, 60, 6, units.Pound, 70.24},
		{published.Abadie2000ShoulderPress, 30, 6, units.Pound, 37.43},
		{published.Roberts2024BenchPress, 60, 4, units.Kilogram, 60*math.Pow(4, 0.1) + 1.49},
		{published.Roberts2024LegExtension, 60, 10, units.Kilogram, 60*math.Pow(10, 0.1) + 1.06},
		{published.Macht2016{Biacromial: 40}, 80, 8, units.Kilogram, 1.2*80 + 2.19*8 - 0.56*40 + 9.6},
	}
	for _, tt := range tests {
		load := units.Must(units.Kilograms(tt.load * tt.unit.Kilograms()))
		m, err := tt.p.OneRM(load, tt.reps)
		if err != nil {
			t.Fatal(err)
		}
		got := float64(m) / float64(tt.unit)
		if math.Abs(got-tt.want) > 1e-9 {
			t.Errorf("%v from %v for %v: %v, want %v", tt.p, tt.load, tt.reps, got, tt.want)
		}
	}
}

func TestRegressionInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := published.Regression(rapid.IntRange(1, 8).Draw(t, "regression"))
		low, _ := g.Studied().Min()
		high, _ := g.Studied().Max()
		reps := rapid.Float64Range(low, high).Draw(t, "reps")
		load := units.Mass(rapid.Int64Range(int64(100*units.Kilogram), int64(400*units.Kilogram)).Draw(t, "load"))
		for _, p := range []equation{g, published.Macht2016{Biacromial: rapid.Float64Range(30, 45).Draw(t, "breadth")}} {
			m, err := p.OneRM(load, reps)
			if err != nil || m < load {
				t.Fatal(m, err)
			}
			back, err := p.Load(m, reps)
			if diff := back - load; err != nil || diff < -3 || diff > 3 {
				t.Errorf("%v: %d → %d → %d (%v)", p, load, m, back, err)
			}
			if more, err := p.OneRM(load+10, reps); err != nil || more <= m {
				t.Errorf("%v does not rise with the load", p)
			}
		}
	})
}

func TestRegressionErrors(t *testing.T) {
	const kg = units.Kilogram
	wide := published.Macht2016{Biacromial: 40}
	tests := []struct {
		name string
		err  error
		path string
		want error
	}{
		{"no regression", second(published.Regression(0).OneRM(kg, 5)), "/regression", field.ErrMissing},
		{"no such", second(published.Regression(99).Load(kg, 5)), "/regression", field.ErrOutOfRange},
		{"5RM from 6", second(published.Reynolds2006ChestPress5RM.OneRM(50*kg, 6)), "/reps", field.ErrOutOfRange},
		{"below the zone", second(published.Braith1993Before.OneRM(50*kg, 6.99)), "/reps", field.ErrOutOfRange},
		{"above the zone", second(published.Roberts2024BenchPress.OneRM(50*kg, 10.01)), "/reps", field.ErrOutOfRange},
		{"not a number", second(published.Abadie2000ChestPress.OneRM(50*kg, math.NaN())), "/reps", field.ErrOutOfRange},
		{"no load", second(published.Braith1993After.OneRM(0, 8)), "/load", field.ErrOutOfRange},
		// 1.554·9 − 5.181 = 8.805 kg lies below 9 kg; 9.4 kg would give 9.43.
		{"1RM below the load", second(published.Braith1993Before.OneRM(9*kg, 8)), "/load", field.ErrOutOfRange},
		{"1RM too small", second(published.Reynolds2006LegPress5RM.Load(14*kg, 5)), "/one_rm", field.ErrOutOfRange},
		{"load above the 1RM", second(published.Braith1993Before.Load(9*kg, 8)), "/one_rm", field.ErrOutOfRange},
		{"too much", second(published.Braith1993Before.OneRM(units.MaxMass, 8)), "/load", field.ErrOverflow},
		{"sum too much", second(published.Roberts2024BenchPress.OneRM(units.Mass(float64(units.MaxMass)/math.Pow(4, 0.1))-1e10, 4)), "/load", field.ErrOverflow},
		{"1RM and offset too much", second(published.Braith1993Before.Load(units.MaxMass, 8)), "/one_rm", field.ErrOverflow},
		{"no breadth", second(published.Macht2016{}.OneRM(kg, 8)), "/biacromial_cm", field.ErrOutOfRange},
		{"a metre and more", second(published.Macht2016{Biacromial: 100.1}.Load(kg, 8)), "/biacromial_cm", field.ErrOutOfRange},
		{"breadth not a number", second(published.Macht2016{Biacromial: math.NaN()}.OneRM(kg, 8)), "/biacromial_cm", field.ErrOutOfRange},
		{"no repetition", second(wide.OneRM(kg, 0)), "/reps", field.ErrOutOfRange},
		{"repetitions without end", second(wide.OneRM(kg, 1e30)), "/reps", field.ErrOverflow},
		{"no 1RM", second(wide.Load(-kg, 8)), "/one_rm", field.ErrOutOfRange},
	}
	for _, tt := range tests {
		var which *field.Error
		if !errors.As(tt.err, &which) || which.Path != tt.path || !errors.Is(tt.err, tt.want) || which.Allowed == "" {
			t.Errorf("%s: error %v, want %v at %s", tt.name, tt.err, tt.want, tt.path)
		}
	}
	if m, err := published.Braith1993Before.OneRM(units.Must(units.Kilograms(9.4)), 8); err != nil || m < 9*kg {
		t.Errorf("9.4 kg: %v, %v", m, err)
	}
}

func TestRegressionTexts(t *testing.T) {
	n := 0
	for g := range published.Regressions() {
		n++
		text, err := g.MarshalText()
		var back published.Regression
		if err != nil || back.UnmarshalText(text) != nil || back != g || g.Fact() == "" || g.Studied().IsZero() {
			t.Errorf("%v: %q reads back as %v (%v)", g, text, back, err)
		}
	}
	if n != 8 || published.Regression(99).Fact() != "" {
		t.Errorf("%d regressions", n)
	}
	var m published.Macht2016
	if err := field.Decode([]byte(`{"biacromial_cm":39.5}`), &m, field.Strict); err != nil || m.Biacromial != 39.5 {
		t.Errorf("%+v, %v", m, err)
	}
	if err := field.Decode([]byte(`{"breadth":39.5}`), &m, field.Strict); err == nil {
		t.Error("an unknown field is taken")
	}
}

func FuzzRegression(f *testing.F) {
	f.Add(uint8(3), int64(40*units.Kilogram), 8.0, 40.0)
	f.Add(uint8(1), int64(units.MaxMass), 5.0, -1.0)
	f.Fuzz(func(t *testing.T, code uint8, load int64, reps, breadth float64) {
		for _, p := range []equation{published.Regression(code), published.Macht2016{Biacromial: breadth}} {
			for _, of := range []func(units.Mass, float64) (units.Mass, error){p.OneRM, p.Load} {
				m, err := of(units.Mass(load), reps)
				if m < 0 || (err == nil) != (m > 0) {
					t.Errorf("%v: %d ng for %v: %d ng, %v", p, load, reps, m, err)
				}
				if err != nil && !errors.Is(err, field.ErrOutOfRange) && !errors.Is(err, field.ErrMissing) && !errors.Is(err, field.ErrOverflow) {
					t.Errorf("%v: an error of no known kind: %v", p, err)
				}
			}
		}
	})
}
