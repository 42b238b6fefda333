package dose_test

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/strength"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// knownOf draws a request of somebody of whose strength something is known.
func knownOf(t *rapid.T) dose.Request {
	at := rapid.SampledFrom([]exercise.ID{"one-arm-dumbbell-row", "dumbbell-shoulder-press", "dumbbell-floor-press", "seated-hammer-curl"}).Draw(t, "exercise")
	ex, _ := exercise.Standard().Get(at)
	training := body.Training(rapid.IntRange(1, 3).Draw(t, "training"))
	return dose.Request{
		Day: firstDay, Screening: waived(training), Exercise: ex, Side: body.Both, Kit: drawKit(t),
		Goal:  guideline.Goal(rapid.IntRange(1, 7).Draw(t, "goal")),
		Phase: rapid.SampledFrom([]dose.Phase{0, dose.Familiarise, dose.Build}).Draw(t, "phase"),
		Technique: rapid.SampledFrom([]dose.Observation{
			{}, {Who: "a colleague", Day: firstDay}, {Who: "a colleague", Day: firstDay - 40},
		}).Draw(t, "technique"),
		Ability: strength.Ability{Log: math.Log(float64(rapid.IntRange(2, 80).Draw(t, "half kg")) / 2), Variance: rapid.SampledFrom([]float64{.003, .0064, .02}).Draw(t, "variance"), AtLeast: rapid.Bool().Draw(t, "at least")},
		Missed:  rapid.SampledFrom([]int{0, 0, 9, 30}).Draw(t, "missed"),
	}
}

// spoilings make one thing of a request worse, and change nothing else.
var spoilings = map[string]func(r *dose.Request){
	"weaker":            func(r *dose.Request) { r.Ability.Log -= 0.1 },
	"less known":        func(r *dose.Request) { r.Ability.Variance *= 2 },
	"known exactly":     func(r *dose.Request) { r.Ability.AtLeast = false },
	"longer away":       func(r *dose.Request) { r.Missed += 14 },
	"no reserve told":   func(r *dose.Request) { r.Ability.Untold = true },
	"nobody saw it":     func(r *dose.Request) { r.Technique = dose.Observation{} },
	"alone":             func(r *dose.Request) { r.Screening.Setting = screening.Alone },
	"no breath-holding": func(r *dose.Request) { r.Screening.Limits.NoBreathHolding = true },
	"moderate effort":   func(r *dose.Request) { r.Screening.Limits.MaxIntensity = screening.Moderate },
	"a share":           func(r *dose.Request) { r.Screening.Limits.MaxFraction = 0.6 },
	"more reserve":      func(r *dose.Request) { r.Screening.Limits.MinReserve = 6 },
	"a mass":            func(r *dose.Request) { restrict(r, 3*units.Kilogram) },
	"a lighter day":     func(r *dose.Request) { r.Screening.Limits = screening.LighterSession() },
	"frailty":           func(r *dose.Request) { r.Screening.Findings = []screening.Finding{{Code: "frailty"}} },
	"a smaller chance":  func(r *dose.Request) { r.Chance = strength.Chance{Reserve: 0.05, Finish: 0.02} },
	"a fractured vertebra": func(r *dose.Request) {
		r.Screening.Findings = []screening.Finding{{Code: "vertebral_fracture", Known: true}}
	},
}

// The law of what a weight allows: less of a heavier one, and less where one thing
// is worse; and with it no dose, first or next, gets heavier, takes more sets or keeps
// less in reserve.
func TestAllowsLaw(t *testing.T) {
	names := slices.Sorted(func(yield func(string) bool) {
		for name := range spoilings {
			if !yield(name) {
				return
			}
		}
	})
	rapid.Check(t, func(t *rapid.T) {
		good := knownOf(t)
		f := frameOf(t, good)
		last := units.Mass(rapid.IntRange(0, 40).Draw(t, "last")) * units.Kilogram / 2
		worse := good
		name := rapid.SampledFrom(names).Draw(t, "worse")
		spoilings[name](&worse)
		g := frameOf(t, worse)
		before := 100
		for load := range f.Table().Loads() {
			n, ok := f.Allows(load.Each(), last)
			less, still := g.Allows(load.Each(), last)
			if !ok || !still || n > before || less > n {
				t.Fatalf("%v allows %d after %d, %v; %s: %d", load.Each(), n, before, ok, name, less)
			}
			before = n
			if _, feel := g.Feelable(load.Each()); feel {
				if _, felt := f.Feelable(load.Each()); !felt {
					t.Fatalf("%s lets %v be felt", name, load.Each())
				}
			}
		}
		was, err := f.Prescribe()
		is, then := g.Prescribe()
		ordered(t, name, was, is, err, then)
		s := dose.Step{Load: last, Last: last, Count: 8, Sets: 2}
		was, err = f.Continue(s)
		is, then = g.Continue(s)
		ordered(t, name, was, is, err, then)
		if n, _ := f.Allows(was.Load.Each(), last); err == nil && was.Count > n {
			t.Fatalf("%d repetitions of %v, which allows %d", was.Count, was.Load.Each(), n)
		}
	})
}

func ordered(t *rapid.T, name string, was, is dose.Prescription, err, then error) {
	t.Helper()
	switch {
	case then != nil:
	case err != nil:
		t.Fatalf("%s gives a dose where there was none: %v", name, err)
	case is.Load.Each() > was.Load.Each() || is.Sets > was.Sets || is.Reserve.Least < was.Reserve.Least:
		t.Fatalf("%s: %v × %d, reserve %v, and before %v × %d, reserve %v", name, is.Load.Each(), is.Sets, is.Reserve, was.Load.Each(), was.Sets, was.Reserve)
	}
}
