package onerm_test

import (
	"encoding/json"
	"errors"
	"math"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func FuzzOneRM(f *testing.F) {
	for _, r := range []float64{1, 5, 10, 24.15, 36.9, 37, 1e300, -1, math.NaN(), math.Inf(1)} {
		f.Add(uint8(1), int64(20*units.Kilogram), r)
		f.Add(uint8(9), int64(units.MaxMass), r)
	}
	f.Fuzz(func(t *testing.T, code uint8, ng int64, reps float64) {
		e := onerm.Formula(code)
		for _, of := range []func(units.Mass, float64) (units.Mass, error){e.OneRM, e.Load} {
			m, err := of(units.Mass(ng), reps)
			if m < 0 || err != nil && m != 0 {
				t.Errorf("%v: %d ng for %v: %d ng, %v", e, ng, reps, m, err)
			}
			checkFields(t, err)
		}
		share, err := e.Fraction(reps)
		if !(share >= 0) || math.IsInf(float64(share), 0) || (err == nil) != (share > 0) {
			t.Errorf("%v: share %v at %v repetitions, %v", e, share, reps, err)
		}
		checkFields(t, err)
		back, err := e.Reps(units.Fraction(reps))
		if !(back >= 0) || math.IsInf(back, 0) || (err == nil) != (back > 0) {
			t.Errorf("%v: %v repetitions at share %v, %v", e, back, reps, err)
		}
		checkFields(t, err)
		list, err := e.OneRMs(nil, []float64{reps}, []int32{int32(code)})
		if err == nil && !(list[0] > 0 && !math.IsInf(list[0], 0)) {
			t.Errorf("%v: list %v", e, list)
		}
		checkFields(t, err)
	})
}

// checkFields fails unless every error names a field and what is allowed there.
func checkFields(t *testing.T, err error) {
	t.Helper()
	if err == nil {
		return
	}
	var all field.Errors
	var one *field.Error
	if !errors.As(err, &all) && errors.As(err, &one) {
		all = field.Errors{one}
	}
	if len(all) == 0 {
		t.Errorf("error without a field: %v", err)
	}
	for _, f := range all {
		if f.Path == "" || f.Err == nil {
			t.Errorf("error without path or category: %v", f)
		}
	}
}

func FuzzFromSet(f *testing.F) {
	f.Add(int64(20*units.Kilogram), 8, "rir 2", uint8(body.OnStack), uint8(body.Total), uint8(58), uint8(1), uint8(2), int32(day), false)
	f.Add(int64(16*units.Kilogram), 1, "rir 0", uint8(body.OneEachHand), uint8(body.Total), uint8(71), uint8(2), uint8(1), int32(day), false)
	f.Add(int64(units.MaxMass), 14, "rpe 9.5", uint8(body.OnStack), uint8(0), uint8(60), uint8(1), uint8(3), int32(day), false)
	f.Add(int64(1), 2, "rir 4.5", uint8(body.OnStack), uint8(0), uint8(60), uint8(0), uint8(3), int32(day), false)
	f.Add(int64(-1), 0, "borg 13", uint8(9), uint8(9), uint8(0), uint8(9), uint8(9), int32(-4), true)
	f.Fuzz(func(t *testing.T, load int64, reps int, effort string, hold, stated, age, sex, training uint8, on int32, moves bool) {
		s := setlog.Set{
			Day: units.Day(on), Exercise: "press", Side: body.Right, Hold: body.Hold(hold),
			Load: units.Mass(load), Stated: body.Stated(stated), Reps: reps,
		}
		if err := s.Effort.UnmarshalText([]byte(effort)); err != nil {
			return
		}
		ex := press(body.Hold(hold))
		ex.MovesBody = moves
		open := onerm.Options{Level: 0.5 + units.Fraction(age%50)/100, Tired: reps%2 == 0, Accuracy: onerm.OpenBench()}
		measured, err := open.FromSet(s, ex, body.Person{Age: body.Age(age), Sex: body.Sex(sex), Training: body.Training(training)})
		checkFields(t, err)
		if err == nil && measured.Validate() != nil {
			t.Errorf("%+v: %v", measured, measured.Validate())
		}
		e, err := onerm.FromSet(s, ex, body.Person{Age: body.Age(age), Sex: body.Sex(sex), Training: body.Training(training)})
		checkFields(t, err)
		if err != nil {
			if e.OneRM != 0 || !e.Interval.IsZero() {
				t.Errorf("estimate %+v beside error %v", e, err)
			}
			return
		}
		if err := e.Validate(); err != nil {
			t.Errorf("%+v: %v", e, err)
		}
		if s.Reps > 1 {
			s.Reps--
			if fewer, err := onerm.FromSet(s, ex, body.Person{Age: body.Age(age), Sex: body.Sex(sex), Training: body.Training(training)}); err == nil && dosetest.LowEnd(fewer) > dosetest.LowEnd(e) {
				t.Errorf("one repetition fewer than %d raises %v to %v", reps, dosetest.LowEnd(e), dosetest.LowEnd(fewer))
			}
		}
	})
}

func FuzzEstimateJSON(f *testing.F) {
	good, _ := json.Marshal(estimate(f, set(6, 1), man))
	f.Add(good)
	f.Add([]byte(`{"one_rm":"20 kg","one_rm":"21 kg"}`))
	f.Add([]byte(`{"interval":{"min":"3 kg","max":"2 kg"}}`))
	f.Add([]byte(`{"grade":`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var e onerm.Estimate
		if field.Decode(data, &e, field.Strict) != nil {
			return
		}
		text, err := json.Marshal(e)
		if err != nil {
			t.Fatalf("%+v does not marshal: %v", e, err)
		}
		var again onerm.Estimate
		if err := field.Decode(text, &again, field.Strict); err != nil {
			t.Errorf("%s: %v", text, err)
		}
	})
}

// TestExerciseOfOnesOwn: an exercise that is in no catalogue will do.
func TestExerciseOfOnesOwn(t *testing.T) {
	own := press(body.OneHand)
	own.ID, own.Pattern = "my-press", exercise.OverheadPush
	s := set(6, 1)
	s.Exercise, s.Hold, s.Side = "my-press", body.OneHand, body.Left
	e, err := onerm.FromSet(s, own, man)
	if err != nil || e.Exercise != "my-press" || e.Side != body.Left {
		t.Errorf("%+v, %v", e, err)
	}
}
