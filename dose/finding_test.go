package dose_test

import (
	"errors"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Steps within a visit: as many as fit under the limits and inside the kit, and
// none where nobody saw the technique or is there, whatever the training.
func TestStepsWithinAVisit(t *testing.T) {
	alone := func(r *dose.Request) { r.Screening.Setting = screening.Alone }
	for name, tt := range map[string]struct {
		spoil func(r *dose.Request)
		steps int
		code  evidence.ReasonCode
		says  string
	}{
		"two":                   {func(*dose.Request) {}, 2, "dose.load-finding", "2 kg at most"},
		"one under the limit":   {func(r *dose.Request) { restrict(r, 1900*units.Gram) }, 1, "dose.load-finding", "1 kg at most"},
		"one up to the limit":   {func(r *dose.Request) { restrict(r, units.Kilogram) }, 1, "dose.load-finding", "1 kg at most"},
		"none under the limit":  {func(r *dose.Request) { restrict(r, 900*units.Gram) }, 0, "dose.no-step", ""},
		"one in the kit":        {func(r *dose.Request) { r.Kit = pairs(3, 4) }, 1, "dose.load-finding", "4 kg at most"},
		"none in the kit":       {func(r *dose.Request) { r.Kit = pairs(3) }, 0, "dose.no-step", ""},
		"technique not seen":    {func(r *dose.Request) { r.Technique = dose.Observation{} }, 0, "dose.no-step-unseen", "Show us the movement first"},
		"not seen, and trained": {func(r *dose.Request) { r.Technique, r.Screening.Who.Training = dose.Observation{}, body.Advanced }, 0, "dose.no-step-unseen", "Show us the movement first"},
		"alone":                 {alone, 0, "dose.no-step-alone", "while you are alone"},
		"alone, and trained":    {func(r *dose.Request) { alone(r); r.Screening.Who.Training = body.Advanced }, 0, "dose.no-step-alone", "while you are alone"},
		"a helper":              {func(r *dose.Request) { r.Screening.Setting = screening.WithHelper }, 2, "dose.load-finding", "2 kg at most"},
		"unseen, and none left": {func(r *dose.Request) { r.Technique, r.Kit = dose.Observation{}, pairs(3) }, 0, "dose.no-step", ""},
		"a lighter day":         {func(r *dose.Request) { r.Screening.Limits = screening.LighterSession() }, 0, "dose.no-step", ""},
	} {
		r := seen(t)
		tt.spoil(&r)
		p := prescribe(t, r)
		low, _ := p.Span.Min()
		for _, p := range []dose.Prescription{p, continued(t, r, dose.Step{Load: p.Load.Each(), Last: p.Load.Each(), Count: low, Sets: 1, Steps: 2})} {
			if p.Finding == nil || p.Mode != dose.LoadFinding {
				t.Fatalf("%s: %v, %+v", name, p.Mode, p.Finding)
			}
			code := tt.code
			if p.Reserve.Countable && code == "dose.load-finding" {
				code = "dose.load-finding-counted"
			}
			if p.Finding.MaxSteps != tt.steps || !has(p.Reasons, code) || !strings.Contains(told(p), tt.says) {
				t.Errorf("%s: %+v, want %d and %s with %q:\n%s", name, p.Finding, tt.steps, code, tt.says, told(p))
			}
		}
	}
	s := step()
	s.Steps = 1
	if p := continued(t, seen(t), s); p.Finding.MaxSteps != 1 || !strings.Contains(told(p), "5 kg at most") {
		t.Errorf("one step asked for: %+v\n%s", p.Finding, told(p))
	}
}

// aboutEffort are the sentences that tell a client how hard a set may get.
func aboutEffort(p dose.Prescription) int {
	n := 0
	for line := range strings.Lines(told(p)) {
		if strings.Contains(line, "clearly easy") || strings.Contains(line, "done more") || strings.Contains(line, "cannot") {
			n++
		}
	}
	return n
}

// Whatever the kit, the limits, the setting and what was seen: a dose and the
// steps from it stay under the most that is allowed, which the client is told
// where it binds; without a look, or alone, there is no step, and no sentence of
// one.
func TestEveryLimitReachesThePage(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := drawVisit(t)
		r := v.request
		r.Screening = screening.Waived("a test", body.Person{Age: v.profile.Age, Training: v.profile.Training}, v.profile.Setting, firstDay)
		r.Screening.Limits.MaxFraction = rapid.SampledFrom([]units.Fraction{0, 0, 0.4, 0.8}).Draw(t, "share")
		for range rapid.IntRange(0, 2).Draw(t, "restrictions") {
			r.Screening.Limits.Masses = append(r.Screening.Limits.Masses, screening.MassLimit{
				Region: body.Region(rapid.IntRange(1, 11).Draw(t, "region")), Side: body.Side(rapid.IntRange(1, 3).Draw(t, "limited side")),
				Max: units.Mass(rapid.IntRange(1, 60).Draw(t, "limit")) * units.Kilogram / 4, Author: "Doctor B",
			})
		}
		if v.test != nil && r.Exercise.Hold != body.OnBand {
			e := estimateOf(t, r, v.test.Load.Kilograms(), v.test.Reps, v.test.Effort.Number())
			r.Estimates = []onerm.Estimate{e}
		}
		f, err := dose.NewFrame(r)
		if err != nil || r.Exercise.Hold == body.Unloaded {
			return
		}
		low, _ := f.Outline().Span.Min()
		asked := dose.Step{Load: units.Mass(rapid.IntRange(1, 60).Draw(t, "asked")) * units.Kilogram / 2, Count: low, Sets: 1, Steps: rapid.IntRange(0, 2).Draw(t, "steps")}
		if p, err := f.Prescribe(); err == nil {
			checkLimits(t, f, p)
		}
		if p, err := f.Continue(asked); err == nil {
			checkLimits(t, f, p)
		}
	})
}

func checkLimits(t *rapid.T, f *dose.Frame, p dose.Prescription) {
	r, top := f.Request(), f.Table().Heaviest().Each()
	if p.Load.Each() > f.Ceiling() || heaviest(f.Table(), p) > min(f.Ceiling(), top) {
		t.Fatalf("%v, %+v above %v", p.Load.Each(), p.Finding, f.Ceiling())
	}
	switch {
	case f.Ceiling() <= top && (p.Most != f.Ceiling() || !strings.Contains(told(p), "Take no more than ")):
		t.Fatalf("most %v of %v is not told:\n%s", p.Most, f.Ceiling(), told(p))
	case f.Ceiling() > top && (p.Most != 0 || strings.Contains(told(p), "Take no more than ")):
		t.Fatalf("most %v in a kit that ends at %v:\n%s", p.Most, top, told(p))
	}
	for _, l := range r.Screening.Limits.Masses {
		demand, some := l.Region.Resisted()
		if (!some || r.Exercise.Demands.Has(demand)) && (l.Side == body.Both || r.Side == body.Both || l.Side == r.Side || !r.Exercise.OneSided) &&
			!(strings.Contains(told(p), "No more than "+l.Max.Short(units.Down)) && strings.Contains(told(p), l.Region.String()+", as Doctor B asked.")) {
			t.Fatalf("%+v is not told:\n%s", l, told(p))
		}
	}
	offers := strings.Contains(told(p), "next weight up")
	if steps := p.Finding != nil && p.Finding.MaxSteps > 0; offers != steps || steps && (!r.Technique.Made() || r.Screening.Setting <= screening.Alone) {
		t.Fatalf("technique %+v, %v: %+v\n%s", r.Technique, r.Screening.Setting, p.Finding, told(p))
	}
	if aboutEffort(p) > 1 {
		t.Fatalf("two sentences about effort:\n%s", told(p))
	}
}

func TestSupportFitsTheHands(t *testing.T) {
	for id, want := range map[exercise.ID]evidence.ReasonCode{
		"standing-leg-back": "dose.support", "suitcase-carry": "dose.support-near", "hip-hinge-practice": "dose.support-near",
		"sit-to-stand": "dose.support-seat", "dumbbell-sit-to-stand": "dose.support-seat", "step-up": "dose.support", "dead-bug": "",
	} {
		r := row(t)
		r.Exercise, r.Side = exerciseOf(t, id), body.Both
		r.Screening.Limits.Support = true
		p := prescribe(t, r)
		for _, code := range []evidence.ReasonCode{"dose.support", "dose.support-near", "dose.support-seat"} {
			if has(p.Cautions, code) != (code == want) {
				t.Errorf("%s: %v, want %q", id, p.Cautions, want)
			}
		}
	}
}

// Whoever may fall and is alone is given no weight for both hands to stand with, but out of a
// chair: then the page says that the chair is the support.
func TestAloneBothHands(t *testing.T) {
	given := 0
	for ex := range exercise.Standard().All() {
		r := row(t)
		r.Exercise, r.Side, r.Screening.Setting = ex, body.Both, screening.Alone
		r.Screening.Limits.Support, r.Screening.Limits.Avoid = true, body.DemandSet(body.FreeStanding)
		r.Screening.Findings = []screening.Finding{{Code: "falls_risk", Known: true, Limits: r.Screening.Limits, Meanwhile: screening.WithinLimits}}
		p, err := dose.Prescribe(r)
		if err != nil || !ex.Demands.Has(body.FreeStanding) {
			continue
		}
		given++
		if !ex.Seat || !has(p.Cautions, "dose.support-seat") {
			t.Errorf("%s: %v", ex.ID, p.Cautions)
		}
	}
	if given < 2 {
		t.Errorf("%d exercises out of a chair", given)
	}
}

// A kit that is wrong is refused as such, whatever the exercise needs.
func TestBadKitBeforeNothingToHold(t *testing.T) {
	r := row(t)
	r.Exercise.Implements = []exercise.Implement{exercise.Kettlebell}
	r.Kit = equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: units.Marked{Mass: units.Kilogram, Unit: units.KG}}}}
	if _, err := dose.Prescribe(r); len(paths(err)) == 0 || !strings.HasPrefix(paths(err)[0], "/kit/") {
		t.Errorf("%v", err)
	}
}

// A first weight binds while nobody saw the technique. Once somebody did, the search
// begins at its upper end where somebody is there, and with up to three times of it
// where the kit has nothing lighter.
func TestFirstMassEndsWithTheLook(t *testing.T) {
	for name, tt := range map[string]struct {
		spoil func(r *dose.Request)
		want  units.Mass // 0: too heavy
	}{
		"seen":                     {func(*dose.Request) {}, 2 * units.Kilogram},
		"seen, and alone":          {func(r *dose.Request) { r.Screening.Setting = screening.Alone }, units.Kilogram},
		"not seen":                 {func(r *dose.Request) { r.Technique = dose.Observation{} }, units.Kilogram},
		"a heavy kit":              {func(r *dose.Request) { r.Kit = pairs(6, 8) }, 6 * units.Kilogram},
		"a heavy kit, alone":       {func(r *dose.Request) { r.Kit, r.Screening.Setting = pairs(6, 8), screening.Alone }, 6 * units.Kilogram},
		"a heavy kit, not seen":    {func(r *dose.Request) { r.Kit, r.Technique = pairs(6, 8), dose.Observation{} }, 0},
		"a kit that is too heavy":  {func(r *dose.Request) { r.Kit = pairs(6.5, 8) }, 0},
		"too heavy, but practised": {func(r *dose.Request) { r.Kit, r.Screening.Who.Training = pairs(6.5, 8), body.Intermediate }, 6500 * units.Gram},
	} {
		r := seen(t)
		r.Exercise, r.Side = exerciseOf(t, "dumbbell-romanian-deadlift"), body.Both
		tt.spoil(&r)
		p, err := dose.Prescribe(r)
		if p.Load.Each() != tt.want || (tt.want == 0) != errors.Is(err, dose.ErrTooHeavy) {
			t.Errorf("%s: %v, %v, want %v", name, p.Load.Each(), err, tt.want)
		}
	}
}
