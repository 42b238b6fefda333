package body_test

import (
	"errors"
	"testing"

	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Two keys that are given and differ are of two people; one that is not says nothing.
func TestKeyMatches(t *testing.T) {
	for _, tt := range []struct {
		a, b body.Key
		want error
	}{{"", "", nil}, {"p1", "", nil}, {"", "p1", nil}, {"p1", "p1", nil}, {"p1", "p2", field.ErrConflict}, {"p1", "P1", field.ErrConflict}} {
		if err := tt.a.Matches(tt.b); !errors.Is(err, tt.want) || (err == nil) != (tt.want == nil) {
			t.Errorf("%q and %q: %v", tt.a, tt.b, err)
		}
	}
}

func TestPersonNamesEveryBadField(t *testing.T) {
	var bad field.Errors
	if !errors.As(body.Person{Sex: 7}.Validate(), &bad) || len(bad) != 3 {
		t.Errorf("%v", bad)
	}
	if err := (body.Person{Age: 66, Training: body.Novice}).Validate(); err != nil {
		t.Errorf("without a sex: %v", err)
	}
}
