package dose_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

func frameOf(t failer, r dose.Request) *dose.Frame {
	t.Helper()
	f, err := dose.NewFrame(r)
	if err != nil {
		t.Fatalf("NewFrame: %v", err)
	}
	return f
}

// step goes on with 4 kg, 10 repetitions and 2 sets.
func step() dose.Step {
	return dose.Step{Load: 4 * units.Kilogram, Last: 4 * units.Kilogram, Count: 10, Sets: 2}
}

func continued(t testing.TB, r dose.Request, s dose.Step) dose.Prescription {
	t.Helper()
	p, err := frameOf(t, r).Continue(s)
	if err != nil {
		t.Fatalf("Continue: %v", err)
	}
	return p
}

func TestContinue(t *testing.T) {
	r := seen(t)
	p := continued(t, r, step())
	if p.Mode != dose.Continued || p.Load.Each() != 4*units.Kilogram || p.Count != 10 || p.Sets != 2 || p.Finding != nil || !has(p.Reasons, "dose.continued") || has(p.Reasons, "dose.sets") {
		t.Errorf("%v, %v × %d × %d, %+v", p.Mode, p.Load.Each(), p.Sets, p.Count, p.Reasons)
	}
	if p.Next == nil || p.Next.To.Each() != 5*units.Kilogram {
		t.Errorf("next %+v", p.Next)
	}
	s := step()
	s.UpTo, s.Lowering, s.Pausing, s.Steps = 18, 4, 2, 1
	p = continued(t, r, s)
	if top, _ := p.Span.Max(); top != 18 || p.Tempo.Lowering != 4 || p.Tempo.Pausing != 2 || p.Tempo.Lifting != 2 {
		t.Errorf("%v, %+v", p.Span, p.Tempo)
	}
	if p.Mode != dose.LoadFinding || p.Finding == nil || p.Finding.MaxSteps != 1 || p.Finding.Ceiling != 0 {
		t.Errorf("%v, %+v", p.Mode, p.Finding)
	}
	if open := frameOf(t, r).Outline(); p.Reserve != open.Reserve || open.Load.Each() != 0 {
		t.Errorf("reserve %v, in the outline %v", p.Reserve, open.Reserve)
	}
	s = step()
	s.Load, s.Sets = 4900*units.Gram, 9
	p = continued(t, r, s)
	if p.Load.Each() != 4*units.Kilogram || p.Sets != frameOf(t, r).MostSets() {
		t.Errorf("%v × %d: a weight between two, and more sets than there are", p.Load.Each(), p.Sets)
	}
}

// saysGiven fails where the reason to go on names another dose than the one given.
func saysGiven(t *testing.T, name string, p dose.Prescription) {
	t.Helper()
	i := slices.IndexFunc(p.Reasons, func(r evidence.Reason) bool { return r.Code == "dose.continued" })
	want := fmt.Sprintf("Goes on from what was done: %v each, %d a set; sets: %d now, to build to %d.", p.Load.Each(), p.Count, p.Sets, p.BuildTo)
	if got := dose.Words().Clinician(p.Reasons[i]); got != want {
		t.Errorf("%s: %q, of %q", name, got, want)
	}
}

func TestContinueUnderLimits(t *testing.T) {
	for name, tt := range map[string]struct {
		tighten func(r *dose.Request)
		load    units.Mass
		sets    int
	}{
		"mass":          {func(r *dose.Request) { restrict(r, 3*units.Kilogram) }, 3 * units.Kilogram, 2},
		"between two":   {func(r *dose.Request) { restrict(r, 3500*units.Gram) }, 3 * units.Kilogram, 2},
		"share unknown": {func(r *dose.Request) { r.Screening.Limits.MaxFraction = 0.5 }, units.Kilogram / 2, 2},
		"share, blind":  {func(r *dose.Request) { r.Screening.Limits.MaxFraction = 0.6 }, units.Kilogram / 2, 2},
		"share of 1RM":  {func(r *dose.Request) { *r = tested(t, *r, 5, 6, 1); r.Screening.Limits.MaxFraction = 0.5 }, 3 * units.Kilogram, 2},
		"a lighter day": {func(r *dose.Request) { r.Screening.Limits = screening.LighterSession() }, 4 * units.Kilogram, 1},
		"supervised": {func(r *dose.Request) {
			r.Screening.Meanwhile, r.Screening.Setting = screening.LightSupervised, screening.InClinic
		}, 4 * units.Kilogram, 1},
		"nothing to say": {func(*dose.Request) {}, 4 * units.Kilogram, 2},
	} {
		r := row(t)
		tt.tighten(&r)
		p := continued(t, r, step())
		saysGiven(t, name, p)
		if p.Load.Each() != tt.load || p.Sets != tt.sets {
			t.Errorf("%s: %v × %d, want %v × %d", name, p.Load.Each(), p.Sets, tt.load, tt.sets)
		}
		if most := frameOf(t, r).Ceiling(); p.Load.Each() > most {
			t.Errorf("%s: %v above the ceiling %v", name, p.Load.Each(), most)
		}
	}
	// On a lighter day nothing exceeds the last load, whatever is asked for.
	r := row(t)
	r.Screening.Limits = screening.LighterSession()
	s := step()
	s.Load = 6 * units.Kilogram
	if p := continued(t, r, s); p.Load.Each() != 4*units.Kilogram {
		t.Errorf("%v after 4 kg, on a lighter day", p.Load.Each())
	}
	// A beginner's first weight binds until the technique was seen.
	r = row(t)
	r.Exercise = exerciseOf(t, "lateral-raise")
	r.Side = body.Both
	most, ok := r.Exercise.FirstMass.Max()
	if !ok {
		t.Fatal("the exercise has no first weight")
	}
	if f := frameOf(t, r); f.Ceiling() != most {
		t.Errorf("ceiling %v, first weight %v", f.Ceiling(), most)
	}
	r.Technique = dose.Observation{Who: "a colleague", Day: firstDay}
	if f := frameOf(t, r); f.Ceiling() != units.MaxMass {
		t.Errorf("ceiling %v with the technique seen", f.Ceiling())
	}
	// Where everything is too heavy, the constraint says so.
	r = row(t)
	restrict(&r, units.Kilogram/4)
	if _, err := frameOf(t, r).Continue(step()); !errors.Is(err, dose.ErrTooHeavy) {
		t.Errorf("%v", err)
	}
}

func restrict(r *dose.Request, most units.Mass) {
	r.Screening.Limits.Masses = []screening.MassLimit{{Region: body.WholeBody, Side: body.Both, Max: most, Author: "a surgeon"}}
}

func TestContinueRefuses(t *testing.T) {
	s := dose.Step{Load: -1, Last: -1, Count: 16, UpTo: 21, Sets: 0, Lowering: -1, Pausing: 11, Steps: 5}
	_, err := frameOf(t, row(t)).Continue(s)
	var all field.Errors
	if !errors.As(err, &all) {
		t.Fatalf("%v", err)
	}
	var got []string
	for _, f := range all {
		got = append(got, f.Path)
	}
	if diff := cmp.Diff([]string{"/load", "/last", "/up_to", "/sets", "/steps", "/lowering", "/pausing"}, got); diff != "" {
		t.Error(diff)
	}
	s = step()
	s.Count = 16 // the range ends at 15
	if _, err := frameOf(t, row(t)).Continue(s); err == nil {
		t.Error("a count beyond the range was taken")
	}
	for _, f := range []*dose.Frame{{}, units.Must(dose.NewFrame(row(t)))} {
		f.Outline()
		f.Ceiling()
		f.MostSets()
		if _, err := f.Continue(step()); (f.Table() == nil) != errors.Is(err, dose.ErrNotScreened) {
			t.Errorf("%v", err)
		}
		if _, err := f.Prescribe(); (f.Table() == nil) != errors.Is(err, dose.ErrNotScreened) {
			t.Errorf("%v", err)
		}
	}
	if f, err := dose.NewFrame(dose.Request{}); !errors.Is(err, dose.ErrNotScreened) || f == nil {
		t.Errorf("%v, %v", f, err)
	}
}

func TestStepJSON(t *testing.T) {
	s := step()
	s.Steps = 2
	var back dose.Step
	if err := field.Decode(units.Must(json.Marshal(s)), &back, field.Strict); err != nil || back != s {
		t.Errorf("%+v, %v", back, err)
	}
	for _, bad := range []string{`{"what":1}`, `{"sets":1,"sets":2}`} {
		if field.Decode([]byte(bad), &back, field.Strict) == nil {
			t.Errorf("%s was read", bad)
		}
	}
}

// Two doses of one frame do not share what they say, and Prescribe is what the
// frame gives.
func TestFrameIsShared(t *testing.T) {
	r := tested(t, row(t), 6, 8, 2)
	f := frameOf(t, r)
	a, b := units.Must(f.Continue(step())), units.Must(f.Prescribe())
	c := units.Must(f.Continue(step()))
	text := func(v any) string { return string(units.Must(json.Marshal(v))) }
	if text(a) != text(c) {
		t.Error("the second dose differs")
	}
	if text(b) != text(prescribe(t, r)) {
		t.Error("Prescribe differs from the frame's")
	}
	if text(f.Request()) != text(r) {
		t.Error("the request differs")
	}
}

// Continue agrees with a plain search: the heaviest weight of the kit at or below
// what is asked for and every limit.
func TestContinueAgainstPlainSearch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := dose.Request{
			Day: firstDay, Screening: waived(body.Intermediate),
			Side: body.Both, Goal: 1, Kit: drawKit(t),
		}
		r.Exercise = rapid.SampledFrom(exercises).Filter(func(e exercise.Exercise) bool { return e.Hold == body.OneHand }).Draw(t, "exercise")
		limit := units.Mass(rapid.IntRange(0, 40).Draw(t, "limit")) * units.Kilogram / 4
		asked := units.Mass(rapid.IntRange(0, 40).Draw(t, "asked")) * units.Kilogram / 4
		restrict(&r, limit)
		f, err := dose.NewFrame(r)
		if err != nil {
			return
		}
		low, _ := f.Outline().Span.Min()
		p, err := f.Continue(dose.Step{Load: asked, Last: asked, Count: low, Sets: 1})
		best := units.Mass(-1)
		for load := range f.Table().Loads() {
			if load.Each() <= asked && load.Each() <= limit {
				best = max(best, load.Each())
			}
		}
		if (best < 0) != (err != nil) || err == nil && p.Load.Each() != best {
			t.Fatalf("asked %v, limit %v: %v, %v; plain %v", asked, limit, p.Load.Each(), err, best)
		}
	})
}
