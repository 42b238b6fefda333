package progression_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// paths lists where the bad fields of err are.
func paths(err error) string {
	var many field.Errors
	var one *field.Error
	var all []string
	switch {
	case errors.As(err, &many):
		for _, f := range many {
			all = append(all, f.Path)
		}
	case errors.As(err, &one):
		all = append(all, one.Path)
	}
	return strings.Join(all, " ")
}

// comesBack holds that v reads back from its JSON and that unknown fields are
// refused.
func comesBack[T any](t *testing.T, v T) {
	t.Helper()
	first := units.Must(json.Marshal(v))
	var back T
	if err := field.Decode(first, &back, field.Strict); err != nil {
		t.Errorf("%T: %v", v, err)
	}
	if again := units.Must(json.Marshal(back)); string(again) != string(first) {
		t.Errorf("%T: %s came back as %s", v, first, again)
	}
	if err := field.Decode([]byte(`{"surprise":1}`), &back, field.Strict); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("%T: an unknown field gives %v", v, err)
	}
}
