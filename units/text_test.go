package units_test

import (
	"encoding"
	"encoding/json"
	"errors"
	"reflect"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// No text is "not given", also where something was given before.
func TestNoTextTakesBack(t *testing.T) {
	effort, unit, scale := units.Must(units.RPE(8)), units.LB, units.ScaleBorg
	for name, v := range map[string]encoding.TextUnmarshaler{"effort": &effort, "mass unit": &unit, "scale": &scale} {
		if err := v.UnmarshalText(nil); err != nil || !reflect.ValueOf(v).Elem().IsZero() {
			t.Errorf("%s: %v, %v", name, v, err)
		}
	}
}

// The second half of a surrogate pair is an escape too; encoding/json gives a
// replacement character for the first, which is not what was written.
func TestHalfASurrogatePair(t *testing.T) {
	const text = `"\ud83d\ndc00"`
	var got string
	if err := field.Decode([]byte(text), &got, field.Strict); !errors.Is(err, field.ErrSyntax) {
		t.Errorf("%s gives %q, %v; want %v", text, got, err, field.ErrSyntax)
	}
	if err := json.Unmarshal([]byte(text), &got); err != nil || got != "\ufffd\ndc00" {
		t.Errorf("encoding/json: %q, %v", got, err)
	}
}
