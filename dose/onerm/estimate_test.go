package onerm_test

import (
	"encoding/json"
	"errors"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

func TestValidateEstimate(t *testing.T) {
	var all field.Errors
	if err := (onerm.Estimate{}).Validate(); !errors.As(err, &all) || len(all) != 9 {
		t.Errorf("zero estimate: %v", err)
	}
	kg := units.Kilogram
	tests := []struct {
		path   string
		want   error
		change func(*onerm.Estimate)
	}{
		{"/one_rm", field.ErrOutOfRange, func(e *onerm.Estimate) { e.OneRM, e.Interval = 0, units.Must(units.Between(0, 200*kg)) }},
		{"/interval", field.ErrMissing, func(e *onerm.Estimate) { e.Interval = units.AtLeast(kg) }},
		{"/interval", field.ErrOutOfRange, func(e *onerm.Estimate) { e.Interval = units.Must(units.Between(-1, 200*kg)) }},
		{"/interval", field.ErrConflict, func(e *onerm.Estimate) {
			e.Interval, e.Answers = units.Must(units.Between(e.OneRM+1, 200*kg)), nil
		}},
		{"/stated", field.ErrConflict, func(e *onerm.Estimate) { e.Stated = body.PerHand }},
		{"/to_failure", field.ErrOutOfRange, func(e *onerm.Estimate) { e.ToFailure = units.AtLeast(1.0) }},
		{"/to_failure", field.ErrOutOfRange, func(e *onerm.Estimate) { e.ToFailure = units.Exactly(0.5) }},
		{"/grade", field.ErrOutOfRange, func(e *onerm.Estimate) { e.Grade = 77 }},
		{"/formula", field.ErrMissing, func(e *onerm.Estimate) { e.Formula = 0 }},
		{"/formula", field.ErrConflict, func(e *onerm.Estimate) { e.Grade = onerm.Measured }},
		{"/answers/1/one_rm", field.ErrConflict, func(e *onerm.Estimate) { e.Answers[1].OneRM = kg }},
		{"/answers/0/formula", field.ErrMissing, func(e *onerm.Estimate) { e.Answers[0].Formula = 0 }},
	}
	for _, tt := range tests {
		e := estimate(t, set(6, 1), man)
		tt.change(&e)
		var all field.Errors
		if err := e.Validate(); !errors.As(err, &all) || len(all) != 1 || all[0].Path != tt.path || !errors.Is(err, tt.want) {
			t.Errorf("%s: %v, want %v", tt.path, err, tt.want)
		}
	}
}

func TestRoundTrip(t *testing.T) {
	for _, s := range []setlog.Set{set(1, 0), set(6, 1.5), set(4, 5)} {
		e := estimate(t, s, woman)
		text, err := json.Marshal(e)
		if err != nil {
			t.Fatal(err)
		}
		var back onerm.Estimate
		if err := field.Decode(text, &back, field.Strict); err != nil {
			t.Fatalf("%s: %v", text, err)
		}
		if diff := cmp.Diff(e, back, cmp.AllowUnexported(units.Range[units.Mass]{}, units.Range[float64]{})); diff != "" {
			t.Errorf("%s: %s", text, diff)
		}
	}
	text, _ := json.Marshal(woman)
	var back body.Person
	if err := field.Decode(text, &back, field.Strict); err != nil || back != woman {
		t.Errorf("%s reads as %+v: %v", text, back, err)
	}
	for _, bad := range []string{`{"age":58,"age":59}`, `{"shoe":44}`, `{"age":`, `{"grade":"excellent"}`} {
		if err := field.Decode([]byte(bad), &back, field.Strict); err == nil {
			t.Errorf("person %s is taken", bad)
		}
		if err := field.Decode([]byte(bad), new(onerm.Estimate), field.Strict); err == nil {
			t.Errorf("estimate %s is taken", bad)
		}
	}
}
