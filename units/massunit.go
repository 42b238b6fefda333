package units

import (
	"fmt"
	"strings"

	"example.org/posology/units/field"
)

// MassUnit is a unit that a mass is marked in. The zero value is "not given".
type MassUnit uint8

// Units that equipment is marked in.
const (
	_  MassUnit = iota // not given
	KG                 // kilogram
	G                  // gram
	LB                 // avoirdupois pound
	OZ                 // avoirdupois ounce
	numMassUnits
)

var massUnits = [numMassUnits]struct {
	text, ucum string
	mass       Mass
}{
	0:  {"kg", "kg", Kilogram},
	KG: {"kg", "kg", Kilogram},
	G:  {"g", "g", Gram},
	LB: {"lb", "[lb_av]", Pound},
	OZ: {"oz", "[oz_av]", Ounce},
}

// valid maps a value that is no unit to zero.
func (u MassUnit) valid() MassUnit {
	if u < numMassUnits {
		return u
	}
	return 0
}

// String returns "kg", "g", "lb" or "oz"; a unit not given counts as kg.
func (u MassUnit) String() string { return massUnits[u.valid()].text }

// UCUM returns the code of the Unified Code for Units of Measure: "kg", "g",
// "[lb_av]" or "[oz_av]".
func (u MassUnit) UCUM() string { return massUnits[u.valid()].ucum }

// Mass returns one of the unit; a unit not given counts as the kilogram.
func (u MassUnit) Mass() Mass { return massUnits[u.valid()].mass }

const unitForm = "kg, g, lb, oz, [lb_av], [oz_av]"

// massUnitNames are what units are called beside their signs.
var massUnitNames = map[string]MassUnit{
	"kgs": KG, "kilo": KG, "kilos": KG, "kilogram": KG, "kilograms": KG,
	"gram": G, "grams": G, "lbs": LB, "pound": LB, "pounds": LB, "ounce": OZ, "ounces": OZ,
}

// ParseMassUnit reads "kg", "g", "lb", "oz", a UCUM code, or a name in the singular or
// plural, such as "lbs", "pound" and "kilos", in small or capital letters; else
// [field.ErrUnknown].
func ParseMassUnit(s string) (MassUnit, error) {
	small := strings.ToLower(s)
	for u := KG; u < numMassUnits; u++ {
		if small == massUnits[u].text || small == massUnits[u].ucum {
			return u, nil
		}
	}
	if u, known := massUnitNames[small]; known {
		return u, nil
	}
	return 0, field.Bad(fmt.Sprintf("%.40q", s), unitForm, field.ErrUnknown)
}

// MarshalText writes the unit's short text, and nothing for "not given"; a
// value that is no unit is a [field.ErrOutOfRange].
func (u MassUnit) MarshalText() ([]byte, error) {
	switch {
	case u == 0:
		return nil, nil
	case u >= numMassUnits:
		return nil, field.Bad(uint8(u), unitForm, field.ErrOutOfRange)
	}
	return []byte(u.String()), nil
}

// UnmarshalText reads what [ParseMassUnit] reads, and nothing as "not given".
func (u *MassUnit) UnmarshalText(text []byte) error {
	return field.AssignText(u, text, ParseMassUnit)
}

// Marked is a mass with the unit that is marked on the thing, so that a
// dumbbell of 25 lb prints as that and not as 11.339 809 25 kg.
type Marked struct {
	Mass Mass
	Unit MassUnit
}

// String prints the mass in its marked unit, such as "25 lb".
func (m Marked) String() string { return m.Mass.Text(m.Unit) }

// MarshalText writes what [Marked.String] prints, so that a unit not given
// reads back as kg.
func (m Marked) MarshalText() ([]byte, error) { return []byte(m.String()), nil }

// UnmarshalText reads what [ParseMarked] reads.
func (m *Marked) UnmarshalText(text []byte) error {
	v, err := ParseMarked(string(text))
	return field.Assign(m, v, err)
}
