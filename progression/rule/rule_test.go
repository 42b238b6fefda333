package rule_test

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/exercise"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// rises holds that more repetitions never give more cautious advice.
func rises(t *rapid.T, rule func(done int) (rule.Ruling, error)) {
	fewer := rapid.IntRange(0, 40).Draw(t, "fewer")
	more := fewer + rapid.IntRange(0, 20).Draw(t, "by")
	a, errA := rule(fewer)
	b, errB := rule(more)
	if errA != nil || errB != nil || b.Advice > a.Advice {
		t.Fatalf("%d repetitions: %+v, %v; %d: %+v, %v", fewer, a, errA, more, b, errB)
	}
	low, okLow := a.Load.Max()
	high, okHigh := b.Load.Max()
	if okLow && okHigh && high < low {
		t.Fatalf("%d repetitions: load %v; %d: %v", fewer, a.Load, more, b.Load)
	}
}

func TestMoreRepetitionsNeverLower(t *testing.T) {
	for name, rule := range map[string]func(int) (rule.Ruling, error){
		"over target": func(n int) (rule.Ruling, error) { return rule.OverTarget(kg(7), 10, n) },
		"two for two": func(n int) (rule.Ruling, error) { return rule.TwoForTwo(10, []int{12, n}) },
		"earlier":     func(n int) (rule.Ruling, error) { return rule.TwoForTwo(10, []int{n, 12}) },
		"small steps": func(n int) (rule.Ruling, error) {
			return rule.TrialStep(rule.NameSmallSteps, kg(7), n)
		},
		"bench steps": func(n int) (rule.Ruling, error) {
			return rule.TrialStep(rule.NameBenchSteps, kg(7), n)
		},
		"top of range": func(n int) (rule.Ruling, error) { return rule.TopOfRange([]int{12, 12, n}) },
		"reps first": func(n int) (rule.Ruling, error) {
			a, err := rule.RepsThenLoad(kg(7), units.Must(units.Between(8, 12)), n)
			return a, err
		},
	} {
		t.Run(name, func(t *testing.T) { rapid.Check(t, func(t *rapid.T) { rises(t, rule) }) })
	}
}

// At, just under and just over each number of the rules.
func TestRuleBoundaries(t *testing.T) {
	omni := func(v float64) (rule.Ruling, error) {
		return rule.OMNIBelow8(units.Must(units.OMNI(v)))
	}
	step := func(r rule.Name, n int) string {
		a, err := rule.TrialStep(r, kg(5), n)
		return fmt.Sprint(a.Advice, " ", a.Load, " ", err)
	}
	advice := func(a rule.Ruling, err error) string { return fmt.Sprint(a.Advice, " ", a.Reps, " ", err) }
	twelve := units.Must(units.Between(8, 12))
	for name, tt := range map[string][2]string{
		"on target":        {advice(rule.OverTarget(kg(5), 10, 10)), "keep not stated <nil>"},
		"one over":         {advice(rule.OverTarget(kg(5), 10, 11)), "raise not stated <nil>"},
		"three over":       {advice(rule.OverTarget(kg(5), 10, 13)), "raise not stated <nil>"},
		"one workout":      {advice(rule.TwoForTwo(10, []int{12})), "keep not stated <nil>"},
		"no workout":       {advice(rule.TwoForTwo(10, nil)), "keep not stated <nil>"},
		"rated 7.99":       {advice(omni(7.99)), "raise not stated <nil>"},
		"rated 8":          {advice(omni(8)), "keep not stated <nil>"},
		"12, 12, 11":       {advice(rule.TopOfRange([]int{12, 12, 11})), "keep not stated <nil>"},
		"12, 12":           {advice(rule.TopOfRange([]int{12, 12})), "keep not stated <nil>"},
		"12, 12, 12":       {advice(rule.TopOfRange([]int{12, 12, 12})), "raise 8 <nil>"},
		"two below":        {advice(rule.Simplify(2)), "keep not stated <nil>"},
		"three below":      {advice(rule.Simplify(3)), "ease not stated <nil>"},
		"at the top":       {advice(rule.RepsThenLoad(kg(5), twelve, 12)), "keep at least 13 <nil>"},
		"past the top":     {advice(rule.RepsThenLoad(kg(5), twelve, 13)), "raise 8 <nil>"},
		"small steps at 6": {step(rule.NameSmallSteps, 6), "keep 5 kg <nil>"},
		"small steps at 7": {step(rule.NameSmallSteps, 7), "raise 5.22 kg <nil>"},
		"small steps at 8": {step(rule.NameSmallSteps, 8), "raise 5.22 kg <nil>"},
		"small steps at 9": {step(rule.NameSmallSteps, 9), "raise 5.44 kg <nil>"},
		"triceps at 6":     {step(rule.NameTricepsSteps, 6), "keep 5 kg <nil>"},
		"triceps at 7":     {step(rule.NameTricepsSteps, 7), "raise 6.1 kg <nil>"},
	} {
		if tt[0] != tt[1] {
			t.Errorf("%s: %s, want %s", name, tt[0], tt[1])
		}
	}
	a, err := rule.RepsThenLoad(kg(5), twelve, 13)
	if err != nil || a.Load != units.AtLeast(kg(6.1)) {
		t.Errorf("past the top: %v, %v, want at least 6.1 kg", a.Load, err)
	}
}

// The ends of the published 2 to 10 % are exact in kilograms and in pounds.
func TestOverTargetIsExact(t *testing.T) {
	for _, u := range []units.MassUnit{units.KG, units.LB} {
		for n := 1; n <= 50; n++ {
			each := units.Must((10 * u.Mass()).Times(n))
			a, err := rule.OverTarget(each, 8, 9)
			if want := units.Must(units.Between(each+each/50, each+each/10)); err != nil || a.Load != want {
				t.Errorf("%v: %v, %v, want %v", units.Marked{Mass: each, Unit: u}, a.Load, err, want)
			}
		}
	}
}

// An intermediate takes the newcomer's step, and every pattern has a region.
func TestStepFor(t *testing.T) {
	for p := range exercise.Patterns() {
		novice := units.Must(rule.StepFor(body.Novice, p, units.KG))
		middle := units.Must(rule.StepFor(body.Intermediate, p, units.KG))
		advanced := units.Must(rule.StepFor(body.Advanced, p, units.KG))
		if novice.Low != middle.Low || novice.High != middle.High || advanced.Low.Mass < novice.High.Mass {
			t.Errorf("%v: %v, %v, %v", p, novice.Low, middle.Low, advanced.Low)
		}
	}
	row := units.Must(rule.StepFor(body.Advanced, exercise.Row, units.LB))
	squat := units.Must(rule.StepFor(body.Advanced, exercise.Squat, units.LB))
	if fmt.Sprint(row.Low, row.High, squat.Low, squat.High, row.Share) != "5 lb 10 lb 10 lb 15 lb 2.5 % to 10 %" {
		t.Errorf("%v to %v, %v to %v, %v", row.Low, row.High, squat.Low, squat.High, row.Share)
	}
}

func TestRulesRefuse(t *testing.T) {
	nan, most := math.NaN(), units.MaxMass
	for name, tt := range map[string]struct {
		err   error
		paths string
		is    error
	}{
		"over target":     {second(rule.OverTarget(0, 0, -1)), "/each /target /done", field.ErrOutOfRange},
		"too heavy":       {second(rule.OverTarget(most, 1, 2)), "/each", field.ErrOverflow},
		"2 % too heavy":   {second(rule.OverTarget(most-most/20, 1, 2)), "/each", field.ErrOverflow},
		"two for two":     {second(rule.TwoForTwo(0, []int{1, -1})), "/goal /last_sets/1", field.ErrOutOfRange},
		"no range":        {second(rule.RepsThenLoad(-1, units.AtLeast(8), -1)), "/each /reps /done", field.ErrOutOfRange},
		"range from 0":    {second(rule.RepsThenLoad(kg(1), units.Must(units.Between(0, 8)), 1)), "/reps", field.ErrOutOfRange},
		"1.1 kg too much": {second(rule.RepsThenLoad(most, units.Exactly(8), 1)), "/each", field.ErrOverflow},
		"no rating":       {second(rule.OMNIBelow8(units.Effort{})), "/effort", field.ErrMissing},
		"another scale":   {second(rule.OMNIBelow8(units.Must(units.RPE(7)))), "/effort", field.ErrOutOfRange},
		"top of range":    {second(rule.TopOfRange([]int{-1})), "/sets/0", field.ErrOutOfRange},
		"simplify":        {second(rule.Simplify(-1)), "/sessions", field.ErrOutOfRange},
		"step":            {second(rule.StepFor(0, 0, units.G)), "/training /pattern /unit", field.ErrMissing},
		"pattern":         {second(rule.StepFor(body.Novice, 200, units.KG)), "/pattern", field.ErrOutOfRange},
		"trial step":      {second(rule.TrialStep(rule.NameTwoForTwo, 0, -1)), "/rule /each /done", field.ErrOutOfRange},
		"trial too heavy": {second(rule.TrialStep(rule.NameSmallSteps, most, 9)), "/each", field.ErrOverflow},
		"pain":            {second(rule.PainGate(nan, screening.No, screening.No)), "/pain", field.ErrOutOfRange},
		"less pain":       {second(rule.PainGate(-0.1, screening.No, screening.No)), "/pain", field.ErrOutOfRange},
	} {
		if !errors.Is(tt.err, tt.is) || paths(tt.err) != tt.paths {
			t.Errorf("%s: %v at %q, want %v at %q", name, tt.err, paths(tt.err), tt.is, tt.paths)
		}
	}
}

func second[T any](_ T, err error) error { return err }

// The gate that was published: pain below 5, and everything known to be well.
func TestPainGate(t *testing.T) {
	for _, answers := range [][2]screening.Answer{{screening.Yes, screening.No}, {screening.No, screening.Yes}, {screening.Unknown, screening.No}, {screening.No, screening.Unknown}} {
		if a, err := rule.PainGate(0, answers[0], answers[1]); err != nil || a.Advice != rule.Keep {
			t.Errorf("range lost %v, missed %v: %v, %v", answers[0], answers[1], a.Advice, err)
		}
	}
	if a, err := rule.PainGate(math.Nextafter(5, 0), screening.No, screening.No); err != nil || a.Advice != rule.Raise {
		t.Errorf("just under 5: %v, %v", a.Advice, err)
	}
}

// Anything worse never gives less cautious advice.
func TestPainIsMonotone(t *testing.T) {
	answers := []screening.Answer{screening.No, screening.Unknown, screening.Yes}
	rapid.Check(t, func(t *rapid.T) {
		step := func(name string) (int, int) {
			a := rapid.IntRange(0, 2).Draw(t, name)
			return a, rapid.IntRange(a, 2).Draw(t, name+" worse")
		}
		lost, lostWorse := step("lost")
		missed, missedWorse := step("missed")
		score := rapid.Float64Range(0, 10).Draw(t, "score")
		better, err := rule.PainGate(score, answers[lost], answers[missed])
		bad, badErr := rule.PainGate(rapid.Float64Range(score, 10).Draw(t, "worse"), answers[lostWorse], answers[missedWorse])
		if err != nil || badErr != nil || bad.Advice < better.Advice {
			t.Fatalf("worse gives %v, %v, better %v, %v", bad.Advice, badErr, better.Advice, err)
		}
	})
}

func TestVocabularies(t *testing.T) {
	for a := rule.Raise; a <= rule.Refer; a++ {
		var back rule.LoadAdvice
		if err := back.UnmarshalText(units.Must(a.MarshalText())); err != nil || back != a {
			t.Errorf("%v: %v, %v", a, back, err)
		}
		if stored := units.Must(a.Value()); stored != a.String() || back.Scan(stored) != nil || back != a {
			t.Errorf("%v: stored as %#v, comes back as %v", a, stored, back)
		}
	}
	seen := []string{}
	for r := rule.NameOverTarget; r <= rule.NameSetToSetPercent; r++ {
		var back rule.Name
		if err := back.UnmarshalText(units.Must(r.MarshalText())); err != nil || back != r || slices.Contains(seen, r.String()) {
			t.Errorf("%v: %v, %v", r, back, err)
		}
		if stored := units.Must(r.Value()); stored != r.String() || back.Scan(stored) != nil || back != r {
			t.Errorf("%v: stored as %#v, comes back as %v", r, stored, back)
		}
		seen = append(seen, r.String())
	}
	if _, err := (rule.Refer + 1).MarshalText(); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("after the last advice: %v", err)
	}
	if _, err := (rule.NameSetToSetPercent + 1).MarshalText(); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("after the last rule: %v", err)
	}
}

func TestRoundTrips(t *testing.T) {
	fieldtest.ComesBack(t, units.Must(rule.OverTarget(kg(5), 10, 11)))
	fieldtest.ComesBack(t, units.Must(rule.RepsThenLoad(kg(5), units.Exactly(8), 9)))
	fieldtest.ComesBack(t, units.Must(rule.StepFor(body.Advanced, exercise.Squat, units.LB)))
	table := pairs(t, kg(40), kg(42), kg(44))
	fieldtest.ComesBack(t, units.Must(units.Must(rule.SetToSetKg(units.Must(units.RPE(6)))).InKit(table, kg(42))))
	fieldtest.ComesBack(t, units.Must(rule.ReturnAfter(20, screening.No)))
}
