package week_test

import (
	"encoding/json"
	"errors"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/tested"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// curlTest is a set of the seated hammer curl with its estimate, so many days
// from the first one.
func curlTest(t testing.TB, kg float64, days int) (onerm.Estimate, setlog.Set) {
	t.Helper()
	r := row(t)
	r.Exercise, r.Side = exerciseOf(t, "seated-hammer-curl"), body.Both
	e := estimateOf(t, r, kg, 8, 2)
	e.Day = plus(days)
	return e, setlog.Set{Day: plus(days), Exercise: r.Exercise.ID, Side: body.Both, Hold: r.Exercise.Hold, Stated: body.PerHand,
		Load: units.Must(units.Kilograms(kg)), Reps: 8, Effort: units.Must(units.InReserve(2))}
}

// fine is a kit of every half kilogram from 0.5 to 12 kg.
func fine() equipment.Kit {
	var kg []float64
	for half := range 24 {
		kg = append(kg, float64(half+1)/2)
	}
	return pairs(kg...)
}

// What says nothing of the day decided on, and what is doubtful, is listed and
// not used: no plan fails by it and none rests on it.
func TestUsable(t *testing.T) {
	type given struct {
		kg   float64
		days int
	}
	tests := []struct {
		name   string
		tests  []given
		unused map[float64]evidence.ReasonCode // by load
	}{
		{"one of the day", []given{{6, 0}}, nil},
		{"the last day", []given{{6, -84}}, nil},
		{"too old", []given{{6, -85}}, map[float64]evidence.ReasonCode{6: "dose.test-old"}},
		{"of the next day", []given{{6, 1}}, map[float64]evidence.ReasonCode{6: "dose.test-later"}},
		{"before the event", []given{{6, -11}, {6.5, -10}}, map[float64]evidence.ReasonCode{6: "dose.test-before-event"}},
		{"not of the kit", []given{{6.1, 0}, {6, -1}}, map[float64]evidence.ReasonCode{6.1: "dose.test-not-in-kit"}},
		{"twice on one day", []given{{5, 0}, {10, 0}}, map[float64]evidence.ReasonCode{5: "dose.tests-disagree", 10: "dose.tests-disagree"}},
		{"intervals apart on one day", []given{{5, 0}, {8, 0}}, map[float64]evidence.ReasonCode{5: "dose.tests-disagree", 8: "dose.tests-disagree"}},
		{"alike on one day", []given{{5, 0}, {6, 0}}, nil},
		{"twice on two days", []given{{5, -7}, {10, 0}}, map[float64]evidence.ReasonCode{5: "dose.tests-far-apart", 10: "dose.tests-far-apart"}},
		{"pounds for kilograms", []given{{11, -7}, {5, 0}}, map[float64]evidence.ReasonCode{5: "dose.tests-far-apart", 11: "dose.tests-far-apart"}},
		{"a third between", []given{{5, -7}, {7, -3}, {10, 0}}, map[float64]evidence.ReasonCode{5: "dose.tests-far-apart", 10: "dose.tests-far-apart"}},
		{"stronger on another day", []given{{5, -7}, {9, 0}}, nil},
		{"old ones are not set against new ones", []given{{5, -90}, {10, 0}}, map[float64]evidence.ReasonCode{5: "dose.test-old"}},
	}
	for _, tt := range tests {
		r := weekOf(2)
		r.Kit = fine()
		r.Exercises = []exercise.ID{"seated-hammer-curl"}
		if tt.name == "before the event" {
			r.Screening.TestsFrom = plus(-10)
		}
		for _, g := range tt.tests {
			e, s := curlTest(t, g.kg, g.days)
			r.Estimates, r.Performed = append(r.Estimates, e), append(r.Performed, s)
		}
		got := map[float64]evidence.ReasonCode{}
		w := firstWeek(t, r)
		estimates := 0
		for _, u := range w.Unused {
			if u.OneRM > 0 {
				estimates++
				continue
			}
			got[u.Load.Kilograms()] = u.Reason.Code
		}
		if diff := cmp.Diff(tt.unused, got); diff != "" && len(tt.unused)+len(got) > 0 {
			t.Errorf("%s: %s", tt.name, diff)
		}
		if estimates != len(tt.unused) {
			t.Errorf("%s: %d estimates listed, want %d: %+v", tt.name, estimates, len(tt.unused), w.Unused)
		}
		item := w.Sessions[0].Items[0]
		if used := len(tt.tests) > len(tt.unused); used != (item.Share > 0) || !used && item.Load.Each() != units.Kilogram/2 {
			t.Errorf("%s: %v, %v of the estimate", tt.name, item.Load, item.Share)
		}
		kept, unused := r.Usable()
		if len(kept.Estimates)+estimates != len(r.Estimates) || len(kept.Performed)+len(got) != len(r.Performed) || len(unused) != len(w.Unused) {
			t.Errorf("%s: %d and %d kept, %d not", tt.name, len(kept.Estimates), len(kept.Performed), len(unused))
		}
	}
}

// Where the kit has nothing to be held so, that is said of the exercise; the test
// is not doubted for it.
func TestUsableWithoutAKit(t *testing.T) {
	r := weekOf(2)
	e, s := curlTest(t, 6, 0)
	r.Kit, r.Estimates, r.Performed = equipment.Kit{}, []onerm.Estimate{e}, []setlog.Set{s}
	if kept, unused := r.Usable(); len(unused) > 0 || len(kept.Estimates) != 1 || len(kept.Performed) != 1 {
		t.Errorf("%+v", unused)
	}
}

// Whatever order the tests come in, the same ones are used; what is used stays
// usable, and what is not used does not move the plan.
func TestUsableProperties(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r := weekOf(2)
		r.Kit, r.Exercises = fine(), []exercise.ID{"seated-hammer-curl"}
		r.Screening.TestsFrom = plus(-30)
		for range rapid.IntRange(0, 6).Draw(rt, "tests") {
			e, s := curlTest(t, float64(rapid.IntRange(4, 25).Draw(rt, "half kg"))/2, rapid.SampledFrom([]int{-90, -40, -20, -10, 0, 0, 3}).Draw(rt, "day"))
			r.Estimates, r.Performed = append(r.Estimates, e), append(r.Performed, s)
		}
		kept, unused := r.Usable()
		if again, more := kept.Usable(); len(more) > 0 || len(again.Estimates) != len(kept.Estimates) || len(again.Performed) != len(kept.Performed) {
			rt.Fatalf("not usable any more: %+v", more)
		}
		if len(kept.Estimates)+len(kept.Performed)+len(unused) != len(r.Estimates)+len(r.Performed) {
			rt.Fatalf("%d, %d and %d", len(kept.Estimates), len(kept.Performed), len(unused))
		}
		turned := r
		turned.Estimates, turned.Performed = slices.Clone(r.Estimates), slices.Clone(r.Performed)
		slices.Reverse(turned.Estimates)
		slices.Reverse(turned.Performed)
		back, _ := turned.Usable()
		slices.Reverse(back.Estimates)
		if diff := cmp.Diff(string(units.Must(json.Marshal(kept.Estimates))), string(units.Must(json.Marshal(back.Estimates)))); diff != "" {
			rt.Fatalf("by order: %s", diff)
		}
		whole, without := firstWeek(rt, r), firstWeek(rt, kept)
		whole.Unused, without.Unused = nil, nil
		if diff := cmp.Diff(string(units.Must(json.Marshal(whole))), string(units.Must(json.Marshal(without)))); diff != "" {
			rt.Fatalf("what is not used moves the plan: %s", diff)
		}
	})
}

// What is not used has words and facts, and goes through JSON strictly.
func TestUnusedIsSaid(t *testing.T) {
	r := weekOf(2)
	r.Kit, r.Screening.TestsFrom = fine(), plus(-20)
	for _, at := range []struct {
		kg   float64
		days int
	}{{6, -85}, {6, -21}, {6, 1}, {6.1, -3}, {5, -2}, {10, -2}, {5, -6}, {10, -5}} {
		e, s := curlTest(t, at.kg, at.days)
		r.Estimates, r.Performed = append(r.Estimates, e), append(r.Performed, s)
	}
	w, words := firstWeek(t, r), strength.Words().Copy()
	if len(w.Unused) != 16 {
		t.Errorf("%d not used, want all 16: %+v", len(w.Unused), w.Unused)
	}
	for _, u := range w.Unused {
		if words.Client(u.Reason) == "" || words[u.Reason.Code].Clinician == "" || len(u.Reason.Facts) == 0 {
			t.Errorf("%v reads %q, %q", u.Reason, words.Client(u.Reason), words.Clinician(u.Reason))
		}
	}
	text := units.Must(json.Marshal(w.Unused[0]))
	var back strength.Unused
	if err := field.Decode(text, &back, field.Strict); err != nil || !cmp.Equal(back, w.Unused[0]) {
		t.Errorf("%s: %v", text, err)
	}
	if err := field.Decode([]byte(`{"exercize": "row"}`), &back, field.Strict); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("an unknown field: %v", err)
	}
}

// The plan and a caller of Prescribe or Next rest on the same estimate, which the
// request takes.
func TestEstimateFor(t *testing.T) {
	q := row(t)
	of := func(kg float64, side body.Side, days int) onerm.Estimate {
		q.Side = side
		e := estimateOf(t, q, kg, 8, 2)
		e.Day = plus(days)
		return e
	}
	left, right, both := of(5, body.Left, 0), of(6, body.Right, 0), of(5.5, body.Both, 0)
	tests := []struct {
		name  string
		given []onerm.Estimate
		side  body.Side
		want  *onerm.Estimate
		note  evidence.ReasonCode
	}{
		{"none", nil, body.Both, nil, ""},
		{"weaker side", []onerm.Estimate{right, left}, body.Both, &left, "dose.weaker-side"},
		{"the stronger does not exceed it", []onerm.Estimate{right, left}, body.Right, &left, "dose.weaker-side"},
		{"one side", []onerm.Estimate{right}, body.Both, nil, "dose.one-side-tested"},
		{"one side, for itself", []onerm.Estimate{right}, body.Right, &right, ""},
		{"one side, for the other", []onerm.Estimate{right}, body.Left, nil, "dose.one-side-tested"},
		{"both at once", []onerm.Estimate{both}, body.Both, &both, ""},
		{"both at once, for one", []onerm.Estimate{both}, body.Left, &both, ""},
		{"both at once and each", []onerm.Estimate{both, left, right}, body.Both, &left, "dose.weaker-side"},
		{"both at once and one", []onerm.Estimate{both, left}, body.Both, &both, ""},
		{"the latest", []onerm.Estimate{of(6, body.Both, 0), of(5, body.Both, -7)}, body.Both, ptr(of(6, body.Both, 0)), ""},
		{"the lower of a day", []onerm.Estimate{of(6, body.Both, 0), of(5.5, body.Both, 0)}, body.Both, &both, ""},
	}
	for _, tt := range tests {
		r := weekOf(0)
		r.Exercises, r.Estimates = []exercise.ID{q.Exercise.ID}, tt.given
		one := q
		one.Side, one.Estimates = tt.side, tt.given
		got, _ := tested.Lists{Estimates: tt.given}.Test(q.Exercise, tt.side)
		if (got != nil) != (tt.want != nil) || got != nil && (got.OneRM != tt.want.OneRM || got.Side != tt.side) {
			t.Errorf("%s: %+v", tt.name, got)
			continue
		}
		for _, code := range []evidence.ReasonCode{"dose.weaker-side", "dose.one-side-tested"} {
			if said := has(prescribe(t, one).Reasons, code); said != (code == tt.note) {
				t.Errorf("%s: %s said: %v", tt.name, code, said)
			}
		}
		p := prescribe(t, one)
		if item := firstWeek(t, r).Sessions[0].Items[0]; tt.side == body.Both && (item.Load.Each() != p.Load.Each() || item.Share != p.Share) {
			t.Errorf("%s: planned %v, %v; prescribed %v, %v", tt.name, item.Load, item.Share, p.Load, p.Share)
		}
	}
}

// A test of the weaker left side does not lift a limit on the right one.
func TestWeakerSideKeepsTheOthersLimit(t *testing.T) {
	r := weekOf(0)
	q := row(t)
	right := estimateOf(t, q, 12, 8, 2)
	q.Side = body.Left
	r.Exercises, r.Estimates = []exercise.ID{q.Exercise.ID}, []onerm.Estimate{right, estimateOf(t, q, 10, 8, 2)}
	r.Screening.Limits.Masses = append(r.Screening.Limits.Masses, screening.MassLimit{Region: body.Shoulder, Side: body.Right, Max: 2 * units.Kilogram, Author: "a clinician"})
	item := firstWeek(t, r).Sessions[0].Items[0]
	if item.Side != body.Both || item.Load.Each() > 2*units.Kilogram {
		t.Errorf("%v on %v, the right shoulder is allowed 2 kg", item.Load, item.Side)
	}
	if slices.ContainsFunc(item.Reasons, func(r evidence.Reason) bool { return r.Code == "dose.one-side-only" }) {
		t.Errorf("one side only, though 2 kg can be lifted with both")
	}
}

// A set of one side is where that side alone begins; both begin with the lighter.
func TestTheSetOfASide(t *testing.T) {
	ex := exerciseOf(t, "one-arm-dumbbell-row")
	set := func(kg float64, side body.Side, days int) setlog.Set {
		return setlog.Set{Day: plus(days), Exercise: ex.ID, Side: side, Hold: ex.Hold, Load: units.Must(units.Kilograms(kg)), Reps: 8}
	}
	r := weekOf(2)
	r.Performed = []setlog.Set{set(5, body.Left, -2), set(4, body.Left, -1), set(6, body.Right, -1), set(9, body.Right, 1)}
	kept, _ := r.Usable()
	for side, want := range map[body.Side]units.Mass{body.Left: 4, body.Right: 6, body.Both: 4} {
		if got := (tested.Lists{Performed: kept.Performed}).Set(ex, side); got == nil || got.Load != want*units.Kilogram {
			t.Errorf("%v: %+v, want %d kg", side, got, want)
		}
	}
}

func ptr[T any](v T) *T { return &v }
