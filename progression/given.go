package progression

import (
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// dayUpTo takes a day that is not given, or one up to last, 0 for no end.
func dayUpTo(day, last units.Day) error {
	switch {
	case day.IsZero():
		return nil
	case day.Check() != nil:
		return day.Check()
	case last > 0 && day > last:
		return field.Bad(day, "today or before", field.ErrConflict)
	}
	return nil
}

// orNone takes any value of an enumeration, not given among them.
func orNone(v interface{ MarshalText() ([]byte, error) }) error {
	_, err := v.MarshalText()
	return err
}
