package strength_test

import (
	"encoding/json"
	"errors"
	"math"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

func near(got, want float64) bool { return math.Abs(got-want) <= 1e-8 }

// TestAbilityByHand follows three visits with numbers worked out by hand from the
// formulation: 20 kg each.
func TestAbilityByHand(t *testing.T) {
	var a strength.Ability
	check := func(what string, m, variance float64, atLeast bool) {
		t.Helper()
		if !near(a.Log, m) || !near(a.Variance, variance) || a.AtLeast != atLeast || !a.Known() {
			t.Errorf("%s: %+v, want %v, %v", what, a, m, variance)
		}
	}
	a = a.Seen(2, 3, set(8, 8), set(9, 7)) // all easy: 9 and 7 at the least
	first := math.Log(20 * (1 + 16/30.))
	check("a lower bound", first, 0.0064, true)
	a = a.Seen(2, 3, set(10, 3), set(8, 4)) // 10 and 4
	gain := 0.0064 / (0.0064 + 0.003025)
	m := first + gain*(math.Log(20*(1+14/30.))-first)
	variance := 0.0064*(1-gain) + 0.000225
	check("an exact visit", m, variance, false)
	a = a.Seen(2, 3, set(8, 7), set(8, 7)) // shows 15 at the least, of which nothing is learned
	gain = variance / (variance + 0.003025)
	m = max(m, math.Log(20*(1+15/30.)))
	check("a lower bound after it", m, variance*(1-gain)+0.000225, false)
	if mass, ok := a.OneRM(); !ok || math.Abs(mass.Kilograms()-math.Exp(m)) > 0.0005 || mass%units.Gram != 0 {
		t.Errorf("1RM %v, %v", mass, ok)
	}
}

// TestAbilityReads: what a set of 8 at 20 kg is read as, by what was told.
func TestAbilityReads(t *testing.T) {
	effort := func(e units.Effort, err error) units.Effort { return units.Must(e, err) }
	for _, tt := range []struct {
		effort units.Effort
		reps   float64
		untold bool
	}{
		{effort(units.InReserve(0)), 9, false}, {effort(units.InReserve(3)), 12, false}, {effort(units.InReserve(5)), 14, false},
		{effort(units.InReserve(6)), 15, false}, {effort(units.InReserve(7)), 15, false}, {effort(units.InReserve(10)), 15, false},
		{effort(units.RPE(8)), 11, false}, {effort(units.RPE(8.5)), 10, false}, {effort(units.RPE(5)), 14, false},
		{effort(units.RPE(3)), 14, false}, // easier than 5 is no less than 5
		{units.Effort{}, 12, true}, {effort(units.OMNI(4)), 12, true},
	} {
		s := set(8, 0)
		s.Effort = tt.effort
		a := strength.Ability{}.Seen(1, 3, s)
		if want := math.Log(20 * (1 + tt.reps/30)); !near(a.Log, want) || a.Untold != tt.untold {
			t.Errorf("%v: %+v, want %v (%v repetitions)", tt.effort, a, want, tt.reps)
		}
	}
}

// TestUntoldNeverRaises: a reserve that was not told counts as the one asked, and
// neither raises what is known nor lets the load rise.
func TestUntoldNeverRaises(t *testing.T) {
	untold := set(20, 0)
	untold.Effort = units.Effort{}
	a := strength.Ability{}.Seen(1, 3, set(8, 3))
	b := a.Seen(1, 3, untold)
	if b.Log != a.Log || !b.Untold {
		t.Errorf("%+v, then not told %+v", a, b)
	}
	for _, load := range []struct {
		kg  float64
		any bool
	}{{20, true}, {21, false}} {
		if n, ok := b.Most(strength.Prospect{Load: kg(load.kg), Last: kg(20), Reserve: 3}, strength.StandardChance()); !ok || n > 0 != load.any {
			t.Errorf("%v kg after 20 not told: %d, %v", load.kg, n, ok)
		}
	}
	untold.Reps = 2
	if c := a.Seen(1, 3, untold); c.Log >= a.Log {
		t.Errorf("2 and not told: %+v after %+v", c, a)
	}
	if c := b.Seen(1, 3, untold, set(8, 3)); c.Untold {
		t.Errorf("told in one set: %+v", c)
	}
}

func TestAbilityPassesOver(t *testing.T) {
	unloaded, bad := set(8, 3), set(0, 3)
	unloaded.Load = 0
	a := strength.Ability{}.Seen(1, 3, set(8, 3))
	if got := a.Seen(1, 3, unloaded, bad); got != a {
		t.Errorf("sets without load or repetitions: %+v, before %+v", got, a)
	}
	if got := a.Seen(1, 3); got != a {
		t.Errorf("no set: %+v", got)
	}
	if got := a.Tested(onerm.Estimate{}); got != a {
		t.Errorf("no test: %+v", got)
	}
	if got := a.Unable(0); got != a {
		t.Errorf("no load: %+v", got)
	}
	untold := set(8, 0)
	untold.Effort = units.Effort{}
	for _, asked := range []units.RIR{units.RIR(math.NaN()), -1} {
		if got, want := (strength.Ability{}).Seen(1, asked, untold), (strength.Ability{}).Seen(1, 0, set(8, 0)); got.Log != want.Log {
			t.Errorf("asked %v: %+v, want %+v", asked, got, want)
		}
	}
	one := a.Seen(1, 3, set(1, 0))
	if got := a.Unable(20 * units.Kilogram); got.Log >= one.Log || got.Variance != one.Variance || got.Untold {
		t.Errorf("not once %+v, once %+v", got, one)
	}
	if got := a.Unable(200 * units.Kilogram); got.Log != a.Log {
		t.Errorf("200 kg could not be lifted: %+v, before %+v", got, a)
	}
	if got, want := (strength.Ability{}).Unable(20*units.Kilogram), math.Log(20); !near(got.Log, want) {
		t.Errorf("nothing else is known: %+v", got)
	}
}

// TestTestsReadAsSets: a set says the same, by whichever door it comes in, and a
// worse one never more.
func TestTestsReadAsSets(t *testing.T) {
	for _, p := range everyone() {
		for reps := 1; reps <= 18; reps++ {
			before := math.Inf(1)
			for left := 5; left >= 0; left-- {
				s := set(reps, float64(left))
				e, err := onerm.FromSet(s, press(body.OnStack), p)
				if err != nil {
					continue
				}
				tested, seen := strength.Ability{}.Tested(e), strength.Ability{}.Seen(1, 3, s)
				switch {
				case e.Grade == onerm.Measured && !near(tested.Log, math.Log(20)):
					t.Errorf("measured: %+v", tested)
				case e.Grade != onerm.Measured && (math.Abs(tested.Log-seen.Log) > 2e-9 || tested.Variance != seen.Variance):
					t.Errorf("%v: %d and %d left: test %+v, visit %+v", p, reps, left, tested, seen)
				case tested.Log > before:
					t.Errorf("%v: %d and %d left shows more than with one more left", p, reps, left)
				}
				before = tested.Log
			}
		}
	}
	e, err := onerm.FromSet(set(8, 2), press(body.OnStack), man)
	if err != nil {
		t.Fatal(err)
	}
	e.Answers = nil // as Combine leaves them
	if got, want := (strength.Ability{}).Tested(e).Log, math.Log(e.OneRM.Kilograms()); !near(got, want) {
		t.Errorf("of several sets: %v, want %v", got, want)
	}
}

// TestATestThatAgreesNeverLowers: one that shows as much as is known, or more, never
// makes a count smaller; one that shows less lowers what is known, and by a fifth
// less every count.
func TestATestThatAgreesNeverLowers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var a strength.Ability
		for range rapid.IntRange(1, 12).Draw(t, "visits") {
			s := set(rapid.IntRange(3, 20).Draw(t, "reps"), float64(rapid.IntRange(0, 10).Draw(t, "told")))
			a = a.Seen(1, 3, s)
		}
		now, _ := a.OneRM()
		e := onerm.Estimate{OneRM: now + units.Gram + kg(rapid.Float64Range(0, 10).Draw(t, "more"))}
		low := onerm.Estimate{OneRM: units.Must(now.Scale(0.8, units.Nearest))}
		with, less := a.Tested(e), a.Tested(low)
		if with.Log < a.Log || less.Log >= a.Log {
			t.Errorf("%+v: agreeing %+v, low %+v", a, with, less)
		}
		for _, load := range []float64{5, 10, 15, 20, 25} {
			p := strength.Prospect{Load: kg(load), Last: kg(20), Reserve: 3}
			n, _ := a.Most(p, strength.StandardChance())
			more, _ := with.Most(p, strength.StandardChance())
			fewer, _ := less.Most(p, strength.StandardChance())
			if more < n || fewer > n || n > 0 && n < 100 && fewer == n {
				t.Errorf("%v kg: %d without, %d with one that agrees, %d with a low one", load, n, more, fewer)
			}
		}
	})
}

func TestAbilityInJSON(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var a strength.Ability
		for range rapid.IntRange(0, 5).Draw(t, "visits") {
			s := set(rapid.IntRange(1, 30).Draw(t, "reps"), float64(rapid.IntRange(0, 10).Draw(t, "told")))
			if rapid.Bool().Draw(t, "not told") {
				s.Effort = units.Effort{}
			}
			a = a.Seen(rapid.IntRange(1, 2).Draw(t, "asked"), 3, s)
		}
		text, err := json.Marshal(a)
		var got strength.Ability
		if err != nil || field.DecodeChecked(text, &got, field.Strict, strength.Ability.Validate) != nil || got != a {
			t.Errorf("%s: %+v, want %+v (%v)", text, got, a, err)
		}
	})
	for text, path := range map[string]string{
		`{"log":2,"variance":0.01}`:    "",
		`{}`:                           "",
		`{"log":31,"variance":0.01}`:   "/log",
		`{"log":2,"variance":1.1}`:     "/variance",
		`{"log":2,"variance":-0.1}`:    "/variance",
		`{"log":2}`:                    "/variance",
		`{"untold":true}`:              "/variance",
		`{"level":2,"variance":0.01}`:  "/level",
		`{"log":"2","variance":0.01}`:  "/log",
		`{"log":2,"variance":"small"}`: "/variance",
	} {
		var got strength.Ability
		var bad *field.Error
		err := field.DecodeChecked([]byte(text), &got, field.Strict, strength.Ability.Validate)
		if (err != nil) != (path != "") || err != nil && (!errors.As(err, &bad) || bad.Path != path) {
			t.Errorf("%s: %v, want %q", text, err, path)
		}
	}
}

// TestAbilityOneRM: where nothing is known, or too much, there is none.
func TestAbilityOneRM(t *testing.T) {
	for _, a := range []strength.Ability{{}, {Log: 25, Variance: 0.01}} {
		if m, ok := a.OneRM(); ok || m != 0 {
			t.Errorf("%+v: %v", a, m)
		}
	}
}

// TestLossWhileAway works the weekly loss out of the figures in its fact (Taaffe
// 1997, abstract: 29.9 % of a gain of 40.4 % in 12 weeks).
func TestLossWhileAway(t *testing.T) {
	weekly := math.Log(1.404/(1+0.404*(1-0.299))) / 12
	a := strength.Ability{Log: math.Log(10), Variance: 0.001}
	most := func(a strength.Ability, missed int) int {
		n, _ := a.Most(strength.Prospect{Load: kg(3), Last: kg(3), Missed: missed}, strength.StandardChance())
		return n
	}
	for weeks := range 30 {
		less := a
		less.Log -= weekly * float64(weeks)
		if got, want := most(a, 7*weeks), most(less, 0); got < want-1 || got > want+1 {
			t.Errorf("%d weeks: %d, want %d", weeks, got, want)
		}
	}
}

func TestAbilityDoesNotAllocate(t *testing.T) {
	a, p, c, sets := strength.Ability{}, strength.Prospect{Load: kg(10), Last: kg(8), Reserve: 3}, strength.StandardChance(), []setlog.Set{set(7, 3), set(7, 2)}
	e, err := onerm.FromSet(sets[0], press(body.OnStack), man)
	if err != nil {
		t.Fatal(err)
	}
	if n := testing.AllocsPerRun(100, func() {
		a = a.Seen(2, 3, sets...).Tested(e).Unable(40 * units.Kilogram)
		a.Most(p, c)
	}); n != 0 {
		t.Errorf("%v allocations", n)
	}
}
