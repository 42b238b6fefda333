package onerm_test

import (
	"errors"
	"fmt"
	"go/constant"
	"go/token"
	"go/types"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// The worked line of every formula gives the digits of OneRM, names the fact of the
// ledger, and comes to that number when it is worked out as it stands.
func TestWork(t *testing.T) {
	ledger := units.Must(evidence.NewLedger(onerm.Facts()))
	rapid.Check(t, func(t *rapid.T) {
		load := units.Mass(rapid.Int64Range(1, int64(500*units.Kilogram)).Draw(t, "load"))
		if rapid.Bool().Draw(t, "round") {
			load = max(load-load%(units.Kilogram/4), units.Kilogram/4)
		}
		reps := float64(rapid.IntRange(0, 60).Draw(t, "reps"))
		if rapid.Bool().Draw(t, "half") {
			reps += 0.5
		}
		for f := range onerm.Formulas() {
			checkWorked(t, ledger, f, load, reps)
		}
	})
}

func checkWorked(t *rapid.T, ledger *evidence.Ledger, f onerm.Formula, load units.Mass, reps float64) {
	want, wantErr := f.OneRM(load, reps)
	w, err := f.Work(load, reps)
	if fmt.Sprint(err) != fmt.Sprint(wantErr) {
		t.Fatalf("%s: %v, but OneRM says %v", f, err, wantErr)
	}
	if err != nil {
		return
	}
	fact, ok := ledger.Fact(f.Fact())
	if w.Result != want || w.Formula != f || !ok || w.Fact.ID != fact.ID || w.Fact.Value != fact.Value || w.Fact.Source != fact.Source || w.Fact.Basis != fact.Basis {
		t.Fatalf("%s: %+v, want %v and %+v", f, w, want, fact)
	}
	if !strings.HasPrefix(w.String(), w.Numbers) || !strings.HasSuffix(w.String(), " kg") {
		t.Fatalf("%s: %s", f, w)
	}
	if got := worked(t, w.Numbers); math.Abs(got/want.Kilograms()-1) > 1e-9 && math.Abs(got-want.Kilograms()) > 1e-12 {
		t.Fatalf("%s: %s comes to %v, not %v", f, w.Numbers, got, want)
	}
}

var (
	squares = regexp.MustCompile(`([0-9.]+)²`)
	cubes   = regexp.MustCompile(`([0-9.]+)³`)
	powers  = regexp.MustCompile(`([0-9.]+)\^([0-9.]+)`)
	ofE     = regexp.MustCompile(`e\^\(−([0-9.]+) × ([0-9.]+)\)`)
)

// worked is what the line comes to by the compiler's exact arithmetic; powers with
// broken exponents, which that lacks, are worked out before.
func worked(t *rapid.T, line string) float64 {
	line = squares.ReplaceAllString(line, "($1*$1)")
	line = cubes.ReplaceAllString(line, "($1*$1*$1)")
	line = powers.ReplaceAllStringFunc(line, func(s string) string {
		p := powers.FindStringSubmatch(s)
		return exact(math.Pow(value(t, p[1]), value(t, p[2])))
	})
	line = ofE.ReplaceAllStringFunc(line, func(s string) string {
		p := ofE.FindStringSubmatch(s)
		return exact(math.Exp(-value(t, p[1]) * value(t, p[2])))
	})
	line = whole.ReplaceAllString(strings.NewReplacer(" kg", "", "×", "*", "−", "-").Replace(line), "$1.0$2")
	v, err := types.Eval(token.NewFileSet(), nil, token.NoPos, line)
	if err != nil {
		t.Fatalf("%s: %v", line, err)
	}
	f, _ := constant.Float64Val(constant.ToFloat(v.Value))
	return f
}

// whole are numbers without a point, which the compiler would divide as such.
var whole = regexp.MustCompile(`((?:^|[^0-9.])[0-9]+)($|[^0-9.])`)

func exact(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

func value(t *rapid.T, s string) float64 {
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// Lines for a student, checked by hand: 6·40/30; 20·36/29; 8 to the tenth part of 1 is 1.23114; 10·1.0825;
// 1000/87.94385; 10·(0.988 + 0.104 + 0.19 − 0.0584).
func TestWorkedLines(t *testing.T) {
	for _, tt := range []struct {
		formula onerm.Formula
		load    units.Mass
		reps    float64
		want    string
	}{
		{onerm.Epley, 6 * units.Kilogram, 10, "6 kg × (1 + 10/30) = 8 kg"},
		{onerm.Brzycki, 20 * units.Kilogram, 8, "20 kg × 36/(37 − 8) ≈ 24.828 kg"},
		{onerm.Lombardi, 100 * units.Kilogram, 8, "100 kg × 8^0.1 ≈ 123.114 kg"},
		{onerm.BaechleGroves, 10 * units.Kilogram, 2.5, "10 kg × (1 + 0.033 × 2.5) = 10.825 kg"},
		{onerm.Lander, 10 * units.Kilogram, 5, "10 kg × 100/(101.3 − 2.67123 × 5) ≈ 11.371 kg"},
		{onerm.Kemmler2006, 10 * units.Kilogram, 10, "10 kg × (0.988 + 0.0104 × 10 + 0.0019 × 10² − 0.0000584 × 10³) = 12.236 kg"},
	} {
		w, err := tt.formula.Work(tt.load, tt.reps)
		if err != nil || w.String() != tt.want {
			t.Errorf("%v: %v, %v, want %s", tt.formula, w, err, tt.want)
		}
	}
	if _, err := onerm.Formula(0).Work(units.Kilogram, 5); !errors.Is(err, field.ErrMissing) {
		t.Error(err)
	}
}

// What could not be worked out prints nothing.
func TestWorkingOfNothing(t *testing.T) {
	w, err := onerm.Epley.Work(units.Kilogram, -1)
	if err == nil || w.String() != "" {
		t.Errorf("%q, %v", w, err)
	}
}

// What an equation allows reads as a sentence.
func TestDomainsAsPeopleReadThem(t *testing.T) {
	for f, want := range map[onerm.Formula]string{
		onerm.Epley: "more than 0 repetitions, any finite number", onerm.Brzycki: "more than 0 repetitions, below about 37",
		onerm.Lombardi: "1 repetition or more, any finite number", onerm.Kemmler2024TrunkExtension: "at least about 1.164 repetitions, below about 16.39",
	} {
		_, err := f.OneRM(units.Kilogram, -1)
		var one *field.Error
		if !errors.As(err, &one) || one.Allowed != want {
			t.Errorf("%s: %v, want %s", f, err, want)
		}
	}
}
