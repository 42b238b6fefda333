package dose_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// misused is what goes wrong with an outcome or an estimate, and the error of it.
var misused = []struct {
	name  string
	spoil func(r *dose.Request)
	want  error
	text  string
}{
	{"an estimate of another person", func(r *dose.Request) { r.Estimates[0].Key = "p2" }, field.ErrConflict,
		`contradiction: /estimates/0/key = "p2", allowed: "p1", the key beside it: nothing follows from a record of somebody else`},
	{"an outcome of another person", func(r *dose.Request) { r.Screening.Key = "p2" }, field.ErrConflict,
		`contradiction: /estimates/0/key = "p1", allowed: "p2", the key beside it: nothing follows from a record of somebody else`},
	{"an estimate from the future", func(r *dose.Request) { r.Estimates[0].Day = firstDay + 1 }, field.ErrConflict,
		"contradiction: /estimates/0/day = 2026-12-01, allowed: 2026-11-30, the day decided on, or before"},
	{"a stale estimate", func(r *dose.Request) { r.Estimates[0].Day = firstDay - 85 }, field.ErrConflict,
		"contradiction: /estimates/0/day = 2026-09-06, allowed: at most 84 days before 2026-11-30"},
	{"an estimate from before an event", func(r *dose.Request) { r.Screening.TestsFrom, r.Estimates[0].Day = firstDay, firstDay-1 }, field.ErrConflict,
		"contradiction: /estimates/0/day = 2026-11-29, allowed: 2026-11-30 or later: an event ended what was tested before"},
	{"a lapsed outcome", func(r *dose.Request) { r.Screening.Day, r.Screening.ReviewBy = firstDay-400, firstDay-35 }, dose.ErrNoDose,
		"dose: no exercise until the person was seen: one-arm-dumbbell-row, review 2026-10-26, day 2026-11-30"},
	{"an outcome whose review was put off", func(r *dose.Request) { r.Screening.Day, r.Screening.ReviewBy = firstDay-400, firstDay+35 }, dose.ErrNoDose,
		"dose: no exercise until the person was seen: one-arm-dumbbell-row, review 2026-10-26, day 2026-11-30"},
	{"an outcome from the future", func(r *dose.Request) { r.Screening.Day = firstDay + 1 }, field.ErrConflict,
		"contradiction: /screening/day = 2026-12-01, allowed: 2026-11-30, the day decided on, or before"},
	{"another day's check", func(r *dose.Request) { r.Screening.Today = firstDay - 3 }, field.ErrConflict,
		"contradiction: /screening/today = 2026-11-27, allowed: 2026-11-30, the day decided on; check again on that day"},
	{"two fields filled", func(r *dose.Request) {
		r.Screening = screening.Outcome{Route: screening.NoRoute, Meanwhile: screening.WithinLimits}
	}, dose.ErrNotScreened,
		"dose: not screened: /screening/who/age, allowed: the outcome of Assess, or of Waived\n" +
			"dose: not screened: /screening/setting, allowed: the outcome of Assess, or of Waived\n" +
			"dose: not screened: /screening/day, allowed: the outcome of Assess, or of Waived\n" +
			"dose: not screened: /screening/review_by, allowed: the outcome of Assess, or of Waived\n" +
			"not given: /screening/who/training, allowed: training status: novice, intermediate, advanced"},
	{"training not known", func(r *dose.Request) { r.Screening.Who.Training = 0 }, field.ErrMissing,
		"not given: /screening/who/training, allowed: training status: novice, intermediate, advanced"},
	{"a waiver without a reason", func(r *dose.Request) {
		r.Screening = screening.Waived("", r.Screening.Who, screening.InGroup, firstDay)
	}, dose.ErrNotScreened, "dose: not screened: /screening, allowed: the outcome of Assess, or of Waived"},
	{"a limit in per cent", func(r *dose.Request) { r.Screening.Limits.MaxFraction = 40 }, field.ErrOutOfRange,
		"out of range: /screening/limits/max_fraction = 40, allowed: 0 to 1 of the one-repetition maximum"},
	{"a reserve that is no number", func(r *dose.Request) { r.Screening.Limits.MinReserve = units.RIR(math.NaN()) }, field.ErrOutOfRange,
		"out of range: /screening/limits/min_reserve = NaN, allowed: 0 to 10 repetitions"},
	{"more repetitions than a dose asks for", func(r *dose.Request) { r.Screening.Limits.LeastCount = 26 }, field.ErrOutOfRange,
		"out of range: /screening/limits/least_count = 26, allowed: 0 to 25 repetitions"},
	{"a set of another person", func(r *dose.Request) { r.Done = []setlog.Set{doneBy("p2", *r)} }, field.ErrConflict,
		`contradiction: /done/0/key = "p2", allowed: "p1", the key beside it: nothing follows from a record of somebody else`},
	{"a first set of another person", func(r *dose.Request) { s := doneBy("p2", *r); r.Performed = &s }, field.ErrConflict,
		`contradiction: /performed/key = "p2", allowed: "p1", the key beside it: nothing follows from a record of somebody else`},
}

func TestMisuse(t *testing.T) {
	for _, tt := range misused {
		r := row(t)
		r.Screening = assessed(t, firstDay-30)
		r = tested(t, r, 6, 8, 2)
		r.Estimates[0].Key = "p1"
		if _, err := dose.Prescribe(r); err != nil {
			t.Fatalf("before %s: %v", tt.name, err)
		}
		tt.spoil(&r)
		p, err := dose.Prescribe(r)
		if !errors.Is(err, tt.want) || err.Error() != tt.text || p.Sets != 0 {
			t.Errorf("%s: %v\nwant %s", tt.name, err, tt.text)
		}
	}
}

// Of several tests of an exercise those that say nothing of the day are listed;
// tests of other exercises are passed over.
func TestUnusedTestsAreListed(t *testing.T) {
	r := tested(t, row(t), 6, 8, 2)
	alone := prescribe(t, r)
	old, other := r.Estimates[0], r.Estimates[0]
	old.Day, other.Exercise = firstDay-100, "goblet-squat"
	r.Estimates = append(r.Estimates, old, other)
	p := prescribe(t, r)
	if len(p.Unused) != 1 || p.Unused[0].Reason.Code != "dose.test-old" || p.Load.Each() != alone.Load.Each() || p.Share != alone.Share {
		t.Errorf("unused %+v, %v at %v; alone %v at %v", p.Unused, p.Load, p.Share, alone.Load, alone.Share)
	}
	r.Estimates = []onerm.Estimate{other}
	if p := prescribe(t, r); p.Mode != dose.LoadFinding || len(p.Unused) > 0 {
		t.Errorf("with a test of another exercise alone: %v, %+v", p.Mode, p.Unused)
	}
}

// loosenings take something out of the sum of an outcome, and leave the findings.
var loosenings = map[string]func(o *screening.Outcome){
	"route":     func(o *screening.Outcome) { o.Route = screening.NoRoute },
	"meanwhile": func(o *screening.Outcome) { o.Meanwhile = screening.WithinLimits },
	"limits":    func(o *screening.Outcome) { o.Limits = screening.Limits{} },
	"fraction":  func(o *screening.Outcome) { o.Limits.MaxFraction = 0 },
	"reserve":   func(o *screening.Outcome) { o.Limits.MinReserve = 0 },
	"effort":    func(o *screening.Outcome) { o.Limits.MaxIntensity = 0 },
	"avoid":     func(o *screening.Outcome) { o.Limits.Avoid = 0 },
	"support":   func(o *screening.Outcome) { o.Limits.Support = false },
	"company":   func(o *screening.Outcome) { o.Limits.LeastSetting = 0 },
	"masses":    func(o *screening.Outcome) { o.Limits.Masses = nil },
	"lighten":   func(o *screening.Outcome) { o.Limits.Lighten = screening.Lighten{} },
	"review":    func(o *screening.Outcome) { o.ReviewBy += 1000 },
}

// Who loosens an outcome gains nothing by it.
func TestLoosenedOutcomeGivesNoMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := drawVisit(t)
		v.profile.Restrictions = []screening.Restriction{{Author: "a surgeon", Day: firstDay, Region: body.Shoulder, Side: body.Both, MaxMass: new(2 * units.Kilogram)}}
		o, err := screening.Assess(v.profile)
		if err != nil {
			t.Fatal(err)
		}
		if rapid.Bool().Draw(t, "checked") {
			o, err = screening.Today(screening.Check{Day: firstDay, Setting: v.profile.Setting, New: screening.AskedFor(), Febrile: screening.No, SorenessDays: rapid.IntRange(0, 5).Draw(t, "sore")}, o)
			if err != nil {
				t.Fatal(err)
			}
		}
		r := v.request
		r.Screening = o
		was, errWas := dose.Prescribe(r)
		for name, loosen := range loosenings {
			r.Screening = o
			loosen(&r.Screening)
			is, errIs := dose.Prescribe(r)
			if (errWas == nil) != (errIs == nil) || errWas != nil && errWas.Error() != errIs.Error() {
				t.Fatalf("%s: %v became %v", name, errWas, errIs)
			}
			if is.Load.Each() != was.Load.Each() || is.Sets != was.Sets || is.Count != was.Count || is.Reserve != was.Reserve || is.Most != was.Most {
				t.Fatalf("%s loosened: %+v\nbefore %+v", name, is, was)
			}
		}
	})
}
