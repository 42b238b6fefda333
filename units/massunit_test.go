package units_test

import (
	"errors"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

func TestMassUnit(t *testing.T) {
	tests := []struct {
		u          units.MassUnit
		text, ucum string // codes: Unified Code for Units of Measure, tables of SI and avoirdupois units
		mass       units.Mass
	}{
		{units.KG, "kg", "kg", units.Kilogram},
		{units.G, "g", "g", units.Gram},
		{units.LB, "lb", "[lb_av]", units.Pound},
		{units.OZ, "oz", "[oz_av]", units.Ounce},
	}
	for _, tt := range tests {
		if tt.u.String() != tt.text || tt.u.UCUM() != tt.ucum || tt.u.Mass() != tt.mass {
			t.Errorf("got %q, %q, %d; want %q, %q, %d", tt.u, tt.u.UCUM(), tt.u.Mass(), tt.text, tt.ucum, tt.mass)
		}
		for _, code := range []string{tt.text, tt.ucum} {
			if got, err := units.ParseMassUnit(code); got != tt.u || err != nil {
				t.Errorf("ParseMassUnit(%q) = %v, %v", code, got, err)
			}
		}
	}
}

func TestMassUnitNotGiven(t *testing.T) {
	for _, u := range []units.MassUnit{0, 99} {
		if u.String() != "kg" || u.UCUM() != "kg" || u.Mass() != units.Kilogram {
			t.Errorf("MassUnit(%d) is %q, %q, %d; want the kilogram", uint8(u), u, u.UCUM(), u.Mass())
		}
	}
	for _, s := range []string{"", "kgg", "lbss", "stone", " kg"} {
		if _, err := units.ParseMassUnit(s); !errors.Is(err, field.ErrUnknown) {
			t.Errorf("ParseMassUnit(%q): %v, want %v", s, err, field.ErrUnknown)
		}
	}
}

func TestMassUnitText(t *testing.T) {
	for _, u := range append(allUnits, 0) {
		text, err := u.MarshalText()
		if err != nil {
			t.Errorf("MassUnit(%d).MarshalText: %v", uint8(u), err)
		}
		got := units.MassUnit(77)
		if err := got.UnmarshalText(text); err != nil || got != u {
			t.Errorf("UnmarshalText(%q): %d, %v, want %d", text, uint8(got), err, uint8(u))
		}
	}
	if text, err := units.MassUnit(99).MarshalText(); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("MassUnit(99).MarshalText() = %q, %v, want %v", text, err, field.ErrOutOfRange)
	}
	u := units.LB
	if err := u.UnmarshalText([]byte("stone")); !errors.Is(err, field.ErrUnknown) || u != units.LB {
		t.Errorf("UnmarshalText(stone): %v, unit %v; want %v and the old unit", err, u, field.ErrUnknown)
	}
}

func TestMarked(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := units.Marked{Mass: anyMass().Draw(t, "m"), Unit: rapid.SampledFrom(allUnits).Draw(t, "u")}
		text, err := m.MarshalText()
		if err != nil || string(text) != m.String() {
			t.Fatalf("MarshalText() = %q, %v, want %q", text, err, m)
		}
		var got units.Marked
		if err := got.UnmarshalText(text); err != nil || got != m {
			t.Fatalf("UnmarshalText(%q) = %+v, %v, want %+v", text, got, err, m)
		}
	})
	m := units.Marked{Mass: 25 * units.Pound, Unit: units.LB}
	if m.String() != "25 lb" {
		t.Errorf("String() = %q, want 25 lb", m)
	}
	if err := m.UnmarshalText([]byte("25")); !errors.Is(err, field.ErrMissing) || m.Unit != units.LB {
		t.Errorf("UnmarshalText(25): %v, %v; want %v and the old value", err, m, field.ErrMissing)
	}
}
