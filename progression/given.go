package progression

import "example.org/posology/units"

// dayUpTo takes a day that is not given, or one up to last, 0 for no end.
func dayUpTo(day, last units.Day) error {
	switch {
	case day.IsZero():
		return nil
	case day.Check() != nil:
		return day.Check()
	case last > 0 && day > last:
		return units.Field("", day, "today or before", units.ErrConflict)
	}
	return nil
}

// orNone takes any value of an enumeration, not given among them.
func orNone(v interface{ MarshalText() ([]byte, error) }) error {
	_, err := v.MarshalText()
	return err
}
