package dose_test

import (
	"errors"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// seen is the row's request in the phase Build, with the technique seen.
func seen(t testing.TB) dose.Request {
	r := row(t)
	r.Phase, r.Technique = dose.Build, dose.Observation{Who: "a colleague", Day: firstDay}
	return r
}

// A guideline of two to four sets is built up to three and allows four; where only
// one set is to be done, its most is one.
func TestMostSets(t *testing.T) {
	for name, tt := range map[string]struct {
		spoil func(r *dose.Request)
		most  int
	}{
		"two to four": {func(r *dose.Request) { r.Guideline = "acsm2011-strength-novice-intermediate" }, 4},
		"two to four, supervised": {func(r *dose.Request) {
			r.Guideline = "acsm2011-strength-novice-intermediate"
			r.Screening.Meanwhile, r.Screening.Setting = screening.LightSupervised, screening.InClinic
		}, 1},
		"a lighter day leaves out of what is asked for, not of what is allowed": {func(r *dose.Request) {
			r.Guideline, r.Screening.Limits = "acsm2011-strength-novice-intermediate", screening.LighterSession()
		}, 4},
	} {
		r := seen(t)
		tt.spoil(&r)
		if got := frameOf(t, r).MostSets(); got != tt.most {
			t.Errorf("%s: %d, want %d", name, got, tt.most)
		}
	}
}

func TestContinueAtItsEdges(t *testing.T) {
	for name, tt := range map[string]struct {
		spoil func(r *dose.Request, s *dose.Step)
		sets  int
		count int
		load  units.Mass
	}{
		"the count that was asked for": {func(_ *dose.Request, s *dose.Step) { s.Count = 11 }, 2, 11, 4 * units.Kilogram},
		"as slow as may be":            {func(_ *dose.Request, s *dose.Step) { s.Lowering, s.Pausing = 10, 10 }, 2, 10, 4 * units.Kilogram},
		"one repetition":               {func(_ *dose.Request, s *dose.Step) { s.Count = 1 }, 2, 1, 4 * units.Kilogram},
		"one set, on a lighter day": {func(r *dose.Request, s *dose.Step) {
			s.Sets, r.Screening.Limits = 1, screening.LighterSession()
		}, 1, 10, 4 * units.Kilogram},
		"less than last time, on a lighter day": {func(r *dose.Request, s *dose.Step) {
			s.Last, r.Screening.Limits = 6*units.Kilogram, screening.LighterSession()
		}, 1, 10, 4 * units.Kilogram},
		"nothing in the hand": {func(r *dose.Request, s *dose.Step) {
			r.Exercise, r.Side = exerciseOf(t, "dead-bug"), body.Both
			s.Load, s.Last = 0, 0
		}, 2, 10, 0},
		"metres beyond any repetitions": {func(r *dose.Request, s *dose.Step) {
			r.Exercise = exerciseOf(t, "suitcase-carry")
			s.Count, s.UpTo = 30, 30
		}, 2, 30, 4 * units.Kilogram},
		"two limits: the lower": {func(r *dose.Request, _ *dose.Step) {
			*r = tested(t, *r, 5, 6, 1)
			r.Screening.Limits.MaxFraction = 0.5 // 2 kg, as above
			restrict(r, units.Kilogram)
		}, 2, 10, units.Kilogram},
	} {
		r, s := seen(t), step()
		tt.spoil(&r, &s)
		p := continued(t, r, s)
		if diff := cmp.Diff([]any{tt.sets, tt.count, tt.load}, []any{p.Sets, p.Count, p.Load.Each()}); diff != "" {
			t.Errorf("%s: %s", name, diff)
		}
		if (p.Mode == dose.WithoutLoad) != (tt.load == 0) {
			t.Errorf("%s: %v", name, p.Mode)
		}
	}
}

// A pace that is quicker than usual is not taken; a load that is looked for later
// on keeps the reserve of the plan; an estimate tells the share.
func TestContinueKeeps(t *testing.T) {
	r, s := seen(t), step()
	s.Lowering, s.Steps = 1, 1
	p := continued(t, r, s)
	if open := frameOf(t, r).Outline(); p.Tempo.Lowering != open.Tempo.Lowering || p.Reserve != open.Reserve || p.Finding == nil {
		t.Errorf("%+v, %v, %+v", p.Tempo, p.Reserve, p.Finding)
	}
	r = tested(t, r, 10, 6, 1)
	s = step()
	s.Load = units.Kilogram
	p = continued(t, r, s)
	oneRM, known := frameOf(t, r).Ability().OneRM()
	share, err := p.Load.Each().Share(oneRM)
	if !known || err != nil || p.Share != share || !slices.Contains(p.Flags, dose.BelowEffectiveDose) {
		t.Errorf("%v, want %v, %v; %v", p.Share, share, err, p.Flags)
	}
}

// A limit below the lightest weight is one, whatever the share says.
func TestContinueBelowTheLightest(t *testing.T) {
	r := seen(t)
	restrict(&r, units.Kilogram/4)
	r.Screening.Limits.MaxFraction = 0.5
	if p, err := frameOf(t, r).Continue(step()); !errors.Is(err, dose.ErrTooHeavy) {
		t.Errorf("%v, %v", p.Load.Each(), err)
	}
	for want, spoil := range map[string]func(s *dose.Step){
		"/count":        func(s *dose.Step) { s.Count = 0 },
		"/count /up_to": func(s *dose.Step) { s.Count, s.UpTo = 22, 25 },
	} {
		s := step()
		spoil(&s)
		_, err := frameOf(t, seen(t)).Continue(s)
		var all field.Errors
		if !errors.As(err, &all) {
			t.Fatalf("%s: %v", want, err)
		}
		got := all[0].Path
		for _, f := range all[1:] {
			got += " " + f.Path
		}
		if got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
}

// The least count of screening goes with the weight asked for, with a lighter one, or
// there is no dose; what the last sets showed stays where the chance allows fewer, and no
// chance is then told.
func TestContinueAtTheLeastCount(t *testing.T) {
	known := tested(t, seen(t), 8, 6, 1) // a set of six with 8 kg and one left
	for name, tt := range map[string]struct {
		r     dose.Request
		spoil func(r *dose.Request, s *dose.Step)
		load  units.Mass // 0: none
		count int
		told  bool // the chance
	}{
		"as many as the limit": {seen(t), func(_ *dose.Request, s *dose.Step) { s.Count = 8 }, 4 * units.Kilogram, 8, false},
		"one fewer":            {seen(t), func(_ *dose.Request, s *dose.Step) { s.Count = 7 }, 3 * units.Kilogram, 8, false},
		"one fewer, and lighter by a limit already": {seen(t), func(r *dose.Request, s *dose.Step) {
			s.Count = 7
			restrict(r, 2*units.Kilogram)
			r.Screening.Limits.LeastCount = 8
		}, 2 * units.Kilogram, 8, false},
		"one fewer of the lightest": {seen(t), func(_ *dose.Request, s *dose.Step) { s.Load, s.Count = units.Kilogram/2, 7 }, 0, 0, false},
		"one fewer, without a weight": {seen(t), func(r *dose.Request, s *dose.Step) {
			r.Exercise, r.Side, s.Load, s.Last, s.Count = exerciseOf(t, "dead-bug"), body.Both, 0, 0, 7
		}, 0, 0, false},
		"the chance allows fewer": {known, func(_ *dose.Request, s *dose.Step) { s.Load, s.Last, s.Count = 8*units.Kilogram, 8*units.Kilogram, 10 }, 6 * units.Kilogram, 10, true},
		"and the last sets showed as many": {known, func(_ *dose.Request, s *dose.Step) {
			s.Load, s.Last, s.Count, s.Held = 8*units.Kilogram, 8*units.Kilogram, 10, 9
		}, 8 * units.Kilogram, 9, false},
	} {
		r, s := tt.r, step()
		r.Screening.Limits.LeastCount = 8
		tt.spoil(&r, &s)
		p, err := frameOf(t, r).Continue(s)
		if (tt.count == 0) != errors.Is(err, dose.ErrTooHeavy) || p.Load.Each() != tt.load || p.Count != tt.count || has(p.Reasons, "dose.chance") != tt.told {
			t.Errorf("%s: %v × %d, %v", name, p.Load.Each(), p.Count, err)
		}
	}
}

// A first dose neither: half a kilogram six times with one left allows fewer than eight of it.
func TestPrescribeAtTheLeastCount(t *testing.T) {
	r := tested(t, seen(t), 0.5, 6, 1)
	p, err := dose.Prescribe(r)
	if err != nil || p.Count >= 8 {
		t.Fatalf("%v × %d, %v", p.Load.Each(), p.Count, err)
	}
	r.Screening.Limits.LeastCount = 8
	var barred *dose.ConstraintError
	if _, err = dose.Prescribe(r); !errors.As(err, &barred) || barred.Constraint.Code != "dose.too-few" {
		t.Errorf("%v", err)
	}
}
