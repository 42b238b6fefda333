package onerm_test

import (
	"encoding/json"
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

var sameEstimate = cmp.AllowUnexported(units.Range[units.Mass]{}, units.Range[float64]{})

// drawEstimates draws estimates of one exercise, hold and level.
func drawEstimates(t *rapid.T) []onerm.Estimate {
	o := onerm.Options{Level: rapid.SampledFrom([]units.Fraction{0, 0.8, 0.9, 0.99}).Draw(t, "level")}
	if rapid.Bool().Draw(t, "accuracy") {
		o.Accuracy = onerm.OpenBench()
	}
	p := rapid.SampledFrom(everyone()).Draw(t, "person")
	var list []onerm.Estimate
	for range rapid.IntRange(1, 6).Draw(t, "n") {
		s := set(rapid.IntRange(1, 12).Draw(t, "reps"), float64(rapid.IntRange(0, 6).Draw(t, "reserve"))/2)
		s.Hold = body.OnBar
		s.Load = units.Mass(rapid.Int64Range(int64(5*units.Kilogram), int64(40*units.Kilogram)).Draw(t, "load"))
		s.Day += units.Day(rapid.IntRange(0, 3).Draw(t, "day"))
		if e, err := o.FromSet(s, press(s.Hold), p); err == nil {
			list = append(list, e)
		}
	}
	return list
}

func TestCombineLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		list := drawEstimates(t)
		if len(list) == 0 {
			return
		}
		e, err := onerm.Combine(list...)
		if err != nil {
			t.Fatal(err)
		}
		if err := e.Validate(); err != nil {
			t.Errorf("%+v: %v", e, err)
		}
		shuffled := rapid.Permutation(list).Draw(t, "order")
		again, err := onerm.Combine(shuffled...)
		if diff := cmp.Diff(e, again, sameEstimate); diff != "" || err != nil {
			t.Errorf("the order matters: %s (%v)", diff, err)
		}
		byOneRM := func(a, b onerm.Estimate) int { return int(a.OneRM>>20) - int(b.OneRM>>20) }
		least, most := slices.MinFunc(list, byOneRM).OneRM, slices.MaxFunc(list, byOneRM).OneRM
		if e.OneRM < least-1<<21 || e.OneRM > most+1<<21 {
			t.Errorf("%v outside %v to %v", e.OneRM, least, most)
		}
		latest := units.Day(0)
		for _, one := range list {
			latest = max(latest, one.Day)
		}
		if e.Day != latest {
			t.Errorf("day %v, the latest %v", e.Day, latest)
		}
	})
}

func TestCombineNarrows(t *testing.T) {
	one := estimateOn(t, body.OnBar, 6, onerm.Options{Accuracy: onerm.OpenBench()})
	width := func(days ...int) float64 {
		var list []onerm.Estimate
		for _, d := range days {
			e := one
			e.Day += units.Day(d)
			list = append(list, e)
		}
		e, err := onerm.Combine(list...)
		if err != nil || e.OneRM != one.OneRM {
			t.Fatal(e.OneRM, one.OneRM, err)
		}
		low, _ := e.Interval.Min()
		high, _ := e.Interval.Max()
		return float64(high-low) / float64(e.OneRM)
	}
	alone, sameDay, twoDays, many := width(0), width(0, 0), width(0, 1), width(0, 1, 2, 3, 4, 5, 6, 7, 8, 9)
	if !(alone > sameDay && sameDay > twoDays && twoDays > many && many > alone*0.8) {
		t.Errorf("widths %v alone, %v on one day, %v on two, %v on ten; most of a table's interval is shared", alone, sameDay, twoDays, many)
	}
	// σ from the interval at 95 %; the rest beside 1.2 and 1.8 % is shared.
	sigma := alone / 2 / 1.959964
	shared := sigma*sigma - 0.012*0.012 - 0.018*0.018
	for got, want := range map[float64]float64{sameDay: shared + 0.012*0.012 + 0.018*0.018/2, twoDays: shared + (0.012*0.012+0.018*0.018)/2} {
		if math.Abs(got/2/1.959964-math.Sqrt(want)) > 2e-5 { // ends in whole grams
			t.Errorf("width %v, want %v", got, 2*1.959964*math.Sqrt(want))
		}
	}
}

// TestUnfit: a load written down in pounds for kilograms is named, kept and
// held by the interval; doses start no higher than from it alone.
func TestUnfit(t *testing.T) {
	young := body.Person{Age: 30, Sex: body.Male, Training: body.Advanced}
	var list []onerm.Estimate
	for i, kg := range []units.Mass{80, 81, 36} {
		e, err := onerm.Options{Level: 0.9, Accuracy: onerm.OpenBench()}.FromSet(benchSet(kg*units.Kilogram, 6, day+units.Day(i)), bench, young)
		if err != nil {
			t.Fatal(err)
		}
		list = append(list, e)
	}
	good, err := onerm.Combine(list[:2]...)
	if err != nil || strings.Contains(codes(good), "unfit") {
		t.Fatalf("%v: %s", err, codes(good))
	}
	all, err := onerm.Combine(list...)
	if err != nil {
		t.Fatal(err)
	}
	named := map[string]bool{}
	for _, r := range all.Reasons {
		if r.Code == "onerm.unfit" {
			named[r.Args[2].Value()] = true
		}
	}
	if !named[list[2].OneRM.String()] || !all.Interval.Contains(list[2].OneRM) {
		t.Errorf("named %v; %v in %v", named, all.OneRM, all.Interval)
	}
}

func TestCombineErrors(t *testing.T) {
	e := estimate(t, set(6, 0), man)
	change := func(f func(*onerm.Estimate)) onerm.Estimate {
		c := e
		f(&c)
		return c
	}
	tests := []struct {
		path string
		want error
		list []onerm.Estimate
	}{
		{"", field.ErrMissing, nil},
		{"/2/key", field.ErrConflict, []onerm.Estimate{e, change(func(e *onerm.Estimate) { e.Key = "p1" }), change(func(e *onerm.Estimate) { e.Key = "p2" })}},
		{"/1/exercise", field.ErrConflict, []onerm.Estimate{e, change(func(e *onerm.Estimate) { e.Exercise = "row" })}},
		{"/1/side", field.ErrConflict, []onerm.Estimate{e, change(func(e *onerm.Estimate) { e.Side = body.Left })}},
		{"/2/hold", field.ErrConflict, []onerm.Estimate{e, e, change(func(e *onerm.Estimate) { e.Hold = body.OnBar })}},
		{"/1/level", field.ErrConflict, []onerm.Estimate{e, change(func(e *onerm.Estimate) { e.Level = 0.9 })}},
		{"/0/one_rm", field.ErrOutOfRange, []onerm.Estimate{change(func(e *onerm.Estimate) {
			e.OneRM, e.Answers, e.Interval = 0, nil, units.Must(units.Between(0, units.Kilogram))
		})}},
		{"/0/level", field.ErrOutOfRange, []onerm.Estimate{change(func(e *onerm.Estimate) { e.Level = 2 })}},
		{"/0/loading", field.ErrOutOfRange, []onerm.Estimate{change(func(e *onerm.Estimate) { e.Loading = 99 })}},
		{"/one_rm", field.ErrOverflow, []onerm.Estimate{
			change(func(e *onerm.Estimate) {
				e.OneRM, e.Answers, e.Interval = units.MaxMass-1, nil, units.Must(units.Between(1, units.MaxMass))
			}), change(func(e *onerm.Estimate) {
				e.OneRM, e.Answers, e.Interval = units.MaxMass-1, nil, units.Must(units.Between(1, units.MaxMass))
			})}},
	}
	for _, tt := range tests {
		got, err := onerm.Combine(tt.list...)
		var which *field.Error
		if !errors.As(err, &which) || which.Path != tt.path || !errors.Is(err, tt.want) || got.OneRM != 0 {
			t.Errorf("%v, want %v at %s", err, tt.want, tt.path)
		}
	}
	alone, err := onerm.Combine(e)
	if diff := cmp.Diff(e, alone, sameEstimate); diff != "" || err != nil {
		t.Error(diff, err)
	}
	joined, err := onerm.Combine(e, estimate(t, set(8, 1), man))
	if err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(joined)
	if err != nil {
		t.Fatal(err)
	}
	var back onerm.Estimate
	if err := field.Decode(text, &back, field.Strict); err != nil || !cmp.Equal(joined, back, sameEstimate) {
		t.Errorf("%s reads as %+v: %v", text, back, err)
	}
}

func FuzzCombine(f *testing.F) {
	f.Add(int64(20*units.Kilogram), int64(22*units.Kilogram), int64(18*units.Kilogram), int64(25*units.Kilogram), uint8(0), uint8(1))
	f.Add(int64(1), int64(1), int64(1), int64(1), uint8(1), uint8(0))
	f.Add(int64(units.MaxMass), int64(1), int64(0), int64(units.MaxMass), uint8(2), uint8(9))
	f.Fuzz(func(t *testing.T, a, b, low, high int64, days, grade uint8) {
		base := onerm.Estimate{Stated: body.Total, Exercise: "press", Side: body.Both, Hold: body.OnBar, Day: day, ToFailure: units.Exactly(5.0), Formula: onerm.Epley, Grade: onerm.Good}
		var list []onerm.Estimate
		for i, oneRM := range []int64{a, b, a} {
			e := base
			e.OneRM, e.Day = units.Mass(oneRM), day+units.Day(days)*units.Day(i)
			e.Interval, _ = units.Between(units.Mass(low), units.Mass(high))
			if i == 2 {
				e.Grade, e.Formula = onerm.Grade(grade), onerm.Brzycki
			}
			list = append(list, e)
		}
		e, err := onerm.Combine(list...)
		checkFields(t, err)
		if err != nil {
			return
		}
		if err := e.Validate(); err != nil {
			t.Errorf("%+v: %v", e, err)
		}
		for _, r := range e.Reasons {
			if text := onerm.Words().Clinician(r); strings.Contains(text, "NaN") || strings.Contains(text, "Inf") {
				t.Errorf("%s", text)
			}
		}
		if back, _ := onerm.Combine(list[2], list[1], list[0]); !cmp.Equal(e, back, sameEstimate) {
			t.Errorf("the order matters: %s", cmp.Diff(e, back, sameEstimate))
		}
	})
}
