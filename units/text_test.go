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

// Numbers are digits with a point or a comma between them, as in a mass: none of the forms
// that a number has in Go. Letters may be small or capital.
func TestEffortTextIsPlain(t *testing.T) {
	for text, want := range map[string]string{"rpe 8,5": "rpe 8.5", "RIR 2": "rir 2", "rir 2.0": "rir 2", "Cr10 0,3": "cr10 0.3", "borg 13": "borg 13"} {
		var e units.Effort
		if err := e.UnmarshalText([]byte(text)); err != nil || e.String() != want {
			t.Errorf("%q: %v, %v", text, e, err)
		}
	}
	for _, text := range []string{"rir 1_0", "rir 0x1p1", "rir 1e-400", "rir 1e0", "rir +2", "rir .5", "rir ,5", "rir 2.", "rir 1,000.5", "rir inf", "rir NaN", "rir  2", "rir 2 ", "rir", "rir -"} {
		var e units.Effort
		if err := e.UnmarshalText([]byte(text)); !errors.Is(err, field.ErrSyntax) {
			t.Errorf("%q: %v, %v", text, e, err)
		}
	}
}

// Units have one rule for capitals and plurals; what is printed stays as it was.
func TestMassUnitsAsPeopleWriteThem(t *testing.T) {
	for text, want := range map[string]string{"5 lbs": "5 lb", "10 pounds": "10 lb", "5 KG": "5 kg", "5,5 Kilos": "5.5 kg", "3 OZ": "3 oz", "2 [LB_AV]": "2 lb", "40 Grams": "40 g"} {
		if m, err := units.ParseMarked(text); err != nil || m.String() != want {
			t.Errorf("%q: %v, %v", text, m, err)
		}
	}
}
