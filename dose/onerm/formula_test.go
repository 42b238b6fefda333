package onerm_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

var everyFormula = func() (list []onerm.Formula) {
	for f := range onerm.Formulas() {
		list = append(list, f)
	}
	return list
}()

var drawFormula = rapid.SampledFrom(everyFormula)

// drawStudied draws repetitions within the studied range of f.
func drawStudied(t *rapid.T, f onerm.Formula) float64 {
	low, _ := f.Studied().Min()
	high, _ := f.Studied().Max()
	return rapid.Float64Range(low, high).Draw(t, "reps")
}

func drawMass(t *rapid.T, name string) units.Mass {
	return units.Mass(rapid.Int64Range(int64(units.Gram), int64(4000*units.Kilogram)).Draw(t, name))
}

func TestFormulaTexts(t *testing.T) {
	if len(everyFormula) != 18 {
		t.Errorf("%d formulas, want 18", len(everyFormula))
	}
	for _, f := range everyFormula {
		text, err := f.MarshalText()
		if got := formula(t, string(text)); err != nil || got != f {
			t.Errorf("%v: text %q reads back as %v (%v)", f, text, got, err)
		}
		if f.Fact() == "" || f.Studied().IsZero() || f.Domain().IsZero() {
			t.Errorf("%v: fact, studied or domain not given", f)
		}
	}
	for _, f := range []onerm.Formula{0, 200} {
		if f.Fact() != "" || !f.Studied().IsZero() || !f.Domain().IsZero() {
			t.Errorf("formula %d passes for an equation", f)
		}
	}
}

func TestStudied(t *testing.T) {
	for _, f := range everyFormula {
		want := units.Must(units.Between(1.0, 10))
		switch {
		case f == onerm.Kemmler2006:
			want = units.Must(units.Between(3.0, 20))
		case strings.HasPrefix(f.String(), "kemmler2024"):
			want = units.Must(units.Between(5.0, 16))
		case strings.HasPrefix(f.String(), "reynolds2006"):
			want = units.Must(units.Between(5.0, 10))
		}
		if f.Studied() != want {
			t.Errorf("%v: studied %v, want %v", f, f.Studied(), want)
		}
	}
}

func TestInverses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFormula.Draw(t, "formula")
		r := drawStudied(t, f)
		share, err := f.Fraction(r)
		if err != nil {
			t.Fatal(err)
		}
		back, err := f.Reps(share)
		if err != nil || math.Abs(back-r) > 1e-11*r {
			t.Errorf("%v: %v repetitions → %v → %v (%v)", f, r, share, back, err)
		}
		again, err := f.Fraction(back)
		if err != nil || math.Abs(float64(again-share)) > 1e-14 {
			t.Errorf("%v: share %v → %v → %v (%v)", f, share, back, again, err)
		}
		load := drawMass(t, "load")
		max, err := f.OneRM(load, r)
		if err != nil {
			t.Fatal(err)
		}
		down, err := f.Load(max, r)
		if diff := down - load; err != nil || diff < -3 || diff > 3 {
			t.Errorf("%v: load %d ng → 1RM → %d ng (%v)", f, load, down, err)
		}
	})
}

// TestNearest: the product is rounded once, as if worked out without error,
// near a half and for masses of every size too.
func TestNearest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := float64(rapid.IntRange(1, 60).Draw(t, "reps")) / 2
		load := units.Mass(rapid.Int64Range(1, int64(units.MaxMass)/3).Draw(t, "load") >> rapid.IntRange(0, 60).Draw(t, "size"))
		if load == 0 {
			return
		}
		want := units.Must(load.Scale(units.Fraction(1+r/30), units.Nearest))
		if got, err := onerm.Epley.OneRM(load, r); err != nil || got != want {
			t.Errorf("%d ng for %v: %d ng, want %d (%v)", load, r, got, want, err)
		}
	})
}

// TestNearHalf: at 700 kg one product in ten lies too close to a half for
// float64 to tell.
func TestNearHalf(t *testing.T) {
	for ng := range units.Mass(1000) {
		load := 700*units.Kilogram + ng
		want := units.Must(load.Scale(units.Fraction(1+5.0/30), units.Nearest))
		if got, err := onerm.Epley.OneRM(load, 5); err != nil || got != want {
			t.Errorf("%d ng for 5: %d ng, want %d (%v)", load, got, want, err)
		}
	}
}

func TestRising(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFormula.Draw(t, "formula")
		r := drawStudied(t, f)
		load := drawMass(t, "load")
		m, err := f.OneRM(load, r)
		if err != nil {
			t.Fatal(err)
		}
		if m < load {
			t.Errorf("%v: 1RM %v below the load %v at %v repetitions", f, m, load, r)
		}
		if heavier, _ := f.OneRM(load+10, r); heavier <= m {
			t.Errorf("%v: 1RM does not rise with the load at %v, %v repetitions", f, load, r)
		}
		high, _ := f.Studied().Max()
		if more, _ := f.OneRM(load, r+1e-3); r+1e-3 <= high && more <= m {
			t.Errorf("%v: 1RM does not rise with repetitions at %v, %v repetitions", f, load, r)
		}
	})
}

func TestPoundsAndKilograms(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFormula.Draw(t, "formula")
		r := drawStudied(t, f)
		load := drawMass(t, "load")
		exact, err := f.OneRM(load, r)
		if err != nil {
			t.Fatal(err)
		}
		for _, in := range []float64{load.Kilograms() * float64(units.Kilogram), load.Pounds() * float64(units.Pound)} {
			list, err := f.OneRMs(nil, []float64{in}, []int32{5})
			if err != nil {
				t.Fatal(err)
			}
			five, _ := f.OneRM(load, 5)
			if math.Abs(list[0]-float64(five)) > 1+1e-14*list[0] {
				t.Errorf("%v: list gives %v ng, one by one %d ng", f, list[0], five)
			}
		}
		again, _ := f.OneRM(units.Must(units.ParseMass(load.Text(units.LB))), r)
		if again != exact {
			t.Errorf("%v: %v in pounds gives %v, want %v", f, load, again, exact)
		}
	})
}

func TestDomains(t *testing.T) {
	const turn = 24.1477 // Kemmler 2006, see TestTurn
	tests := []struct {
		f        onerm.Formula
		in, out  []float64
		least    float64 // share below which there is no inverse
		most     float64 // and above
		atLeast  float64 // a share just inside
		justBelo float64
	}{
		{onerm.Epley, []float64{5e-324, 0.5, 1e15}, []float64{0, -1}, 0, 1, 1e-9, 1 - 1e-12},
		{onerm.Brzycki, []float64{0.1, 36.999, math.Nextafter(37, 0)}, []float64{0, 37, 38}, 0, 37.0 / 36, 1e-9, 37.0/36 - 1e-12},
		{onerm.Lander, []float64{0.1, 37.9, math.Nextafter(101.3/2.67123, 0)}, []float64{0, 101.3 / 2.67123, 38}, 0, 1.013, 1e-9, 1.013 - 1e-12},
		{onerm.Lombardi, []float64{1, 1024}, []float64{0, 0.999}, 0, 1, 1e-9, 1},
		{onerm.Mayhew, []float64{1e-9, 400}, []float64{0, -3}, 0.522, 0.941, 0.522 + 1e-9, 0.941 - 1e-12},
		{onerm.OConner, []float64{1e-9, 1e15}, []float64{0, -3}, 0, 1, 1e-9, 1 - 1e-12},
		{onerm.Wathen, []float64{1e-9, 400}, []float64{0, -3}, 0.488, 1.026, 0.488 + 1e-9, 1.026 - 1e-12},
		{onerm.Adams, []float64{1e-9, math.Nextafter(50, 0)}, []float64{0, 50, 51}, 0, 1, 1e-9, 1 - 1e-12},
		{onerm.BaechleGroves, []float64{1e-9, 1e15}, []float64{0, -3}, 0, 1, 1e-9, 1 - 1e-12},
		{onerm.Reynolds2006ChestPress, []float64{1e-9, 400}, []float64{0, -3}, 0.4847, 1.0398, 0.4847 + 1e-9, 1.0398 - 1e-12},
		{onerm.Reynolds2006LegPress, []float64{1e-9, 400}, []float64{0, -3}, 0.2641, 1.0458, 0.2641 + 1e-9, 1.0458 - 1e-12},
		{onerm.Kemmler2024LatPulls, []float64{1e-9, 18.3}, []float64{0, 18.5}, 0.6706, 1 / 0.987542505, 0.6708, 1/0.987542505 - 1e-12},
		{onerm.Kemmler2024TrunkExtension, []float64{1.2, 16.3}, []float64{0.5, 1.1, 16.5}, 0.7084, 0.9919, 0.7086, 0.99},
		{onerm.Kemmler2006, []float64{1e-9, turn - 0.001}, []float64{0, turn + 0.001, 30}, 0.6558, 1 / 0.988, 0.6559, 1/0.988 - 1e-12},
	}
	for _, tt := range tests {
		for _, r := range tt.in {
			if share, err := tt.f.Fraction(r); err != nil || !(share > 0) || math.IsInf(float64(share), 0) || !tt.f.Domain().Contains(r) {
				t.Errorf("%v: %v repetitions give %v, %v", tt.f, r, share, err)
			}
		}
		for _, r := range append(tt.out, math.NaN(), math.Inf(1), math.Inf(-1)) {
			if _, err := tt.f.Fraction(r); !errors.Is(err, field.ErrOutOfRange) {
				t.Errorf("%v: %v repetitions: error %v", tt.f, r, err)
			}
		}
		for _, p := range []float64{tt.least, tt.most * (1 + 1e-12), -0.5, math.NaN(), math.Inf(1)} {
			if r, err := tt.f.Reps(units.Fraction(p)); !errors.Is(err, field.ErrOutOfRange) {
				t.Errorf("%v: share %v: %v repetitions, %v", tt.f, p, r, err)
			}
		}
		for _, p := range []float64{tt.atLeast, tt.justBelo} {
			r, err := tt.f.Reps(units.Fraction(p))
			if err != nil || !tt.f.Domain().Contains(r) {
				t.Errorf("%v: share %v: %v repetitions, %v", tt.f, p, r, err)
			}
		}
	}
}

// TestTurns: the cubics of 2024 rise up to where the evidence says that they
// turn over; trunk extension also falls up to about 1.2.
func TestTurns(t *testing.T) {
	for f, want := range map[onerm.Formula]float64{
		onerm.Kemmler2024TrunkExtension: 16.4, onerm.Kemmler2024LatPulls: 18.4, onerm.Kemmler2024TrunkFlexion: 19.8,
		onerm.Kemmler2024LegExtension: 20.5, onerm.Kemmler2024LegFlexion: 21.4, onerm.Kemmler2024TricepsDips: 21.7,
	} {
		if end, _ := f.Domain().Max(); math.Abs(end-want) > 0.05 {
			t.Errorf("%v turns over at %v, want %v", f, end, want)
		}
		if first := factor(t, f, 2); first < 1 || first > 1.04 {
			t.Errorf("%v: factor %v at 2 repetitions", f, first)
		}
	}
	if start, _ := onerm.Kemmler2024TrunkExtension.Domain().Min(); math.Abs(start-1.2) > 0.05 {
		t.Errorf("trunk extension rises from %v, want 1.2", start)
	}
}

// TestTurn: the Kemmler factor rises up to the end of its domain and would fall
// beyond it.
func TestTurn(t *testing.T) {
	end, _ := onerm.Kemmler2006.Domain().Max()
	slope := 0.0104 + 2*0.0019*end - 3*0.0000584*end*end
	if math.Abs(slope) > 1e-12 {
		t.Errorf("slope %v at the turning point, want 0", slope)
	}
	if got := factor(t, onerm.Kemmler2006, end); math.Abs(got-1.525) > 0.0005 {
		t.Errorf("factor %v at the turning point, want 1.525", got)
	}
}

// TestTurnInverse: the turning point itself still has an inverse, and a share as
// large as at no repetitions has none.
func TestTurnInverse(t *testing.T) {
	end, _ := onerm.Kemmler2006.Domain().Max()
	share, _ := onerm.Kemmler2006.Fraction(end)
	if back, err := onerm.Kemmler2006.Reps(share); err != nil || math.Abs(back-end) > 1e-6 {
		t.Errorf("share %v: %v repetitions, want %v (%v)", float64(share), back, end, err)
	}
	least := units.Fraction(math.Nextafter(float64(share), 0))
	for _, none := range []units.Fraction{least, 1 / 0.988} {
		if back, err := onerm.Kemmler2006.Reps(none); err == nil {
			t.Errorf("share %v: %v repetitions", float64(none), back)
		}
	}
}

func TestDomainEnds(t *testing.T) {
	for _, f := range everyFormula {
		low, hasLow := f.Domain().Min()
		if _, err := f.Fraction(low); !hasLow || err != nil {
			t.Errorf("%v: lower end %v: %v", f, low, err)
		}
		if _, err := f.Fraction(math.Nextafter(low, -1)); err == nil {
			t.Errorf("%v: below the lower end %v is taken", f, low)
		}
		high, hasHigh := f.Domain().Max()
		if !hasHigh {
			high = math.MaxFloat64
		}
		if share, err := f.Fraction(high); err != nil || !(share > 0) {
			t.Errorf("%v: upper end %v: %v, %v", f, high, share, err)
		}
		if _, err := f.Fraction(math.Nextafter(high, math.Inf(1))); err == nil {
			t.Errorf("%v: above the upper end %v is taken", f, high)
		}
	}
}

func TestFormulaErrors(t *testing.T) {
	kg := units.Kilogram
	tests := []struct {
		name string
		err  error
		path string
		want error
	}{
		{"load 0", second(onerm.Epley.OneRM(0, 5)), "/load", field.ErrOutOfRange},
		{"load below 0", second(onerm.Epley.OneRM(-kg, 5)), "/load", field.ErrOutOfRange},
		{"reps not a number", second(onerm.Epley.OneRM(kg, math.NaN())), "/reps", field.ErrOutOfRange},
		{"reps below 0", second(onerm.Wathen.OneRM(kg, -1)), "/reps", field.ErrOutOfRange},
		{"too much", second(onerm.Epley.OneRM(kg, 1e300)), "/load", field.ErrOverflow},
		{"no formula", second(onerm.Formula(0).OneRM(kg, 5)), "/formula", field.ErrMissing},
		{"no such formula", second(onerm.Formula(99).OneRM(kg, 5)), "/formula", field.ErrOutOfRange},
		{"1RM 0", second(onerm.Brzycki.Load(0, 5)), "/one_rm", field.ErrOutOfRange},
		{"pole", second(onerm.Brzycki.Load(kg, 37)), "/reps", field.ErrOutOfRange},
		{"1RM too much", second(onerm.Kemmler2006.Load(units.MaxMass, 0.1)), "/one_rm", field.ErrOverflow},
		{"no formula, fraction", second(onerm.Formula(0).Fraction(5)), "/formula", field.ErrMissing},
		{"no formula, reps", second(onerm.Formula(99).Reps(0.5)), "/formula", field.ErrOutOfRange},
		{"share", second(onerm.Mayhew.Reps(0.522)), "/fraction", field.ErrOutOfRange},
	}
	for _, tt := range tests {
		var which *field.Error
		if !errors.As(tt.err, &which) || which.Path != tt.path || !errors.Is(tt.err, tt.want) || which.Allowed == "" {
			t.Errorf("%s: error %v, want %v at %s", tt.name, tt.err, tt.want, tt.path)
		}
	}
	var all field.Errors
	if _, err := onerm.Lombardi.OneRM(-kg, 0.5); !errors.As(err, &all) || len(all) != 2 {
		t.Errorf("two bad fields give %v", err)
	}
}

func second[A, B any](_ A, b B) B { return b }
