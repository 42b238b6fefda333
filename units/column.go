package units

import (
	"database/sql/driver"
	"time"

	"example.org/posology/units/field"
)

// Value returns the text of u.
func (u MassUnit) Value() (driver.Value, error) { return field.Value(u) }

// Scan reads what Value returns.
func (u *MassUnit) Scan(src any) error { return field.Scan(src, u) }

// Value returns the text of m.
func (m Marked) Value() (driver.Value, error) { return field.Value(m) }

// Scan reads what Value returns.
func (m *Marked) Scan(src any) error { return field.Scan(src, m) }

// Value returns the text of m.
func (m Mass) Value() (driver.Value, error) { return field.Value(m) }

// Scan reads what Value returns.
func (m *Mass) Scan(src any) error { return field.Scan(src, m) }

// Value returns the text of s.
func (s Scale) Value() (driver.Value, error) { return field.Value(s) }

// Scan reads what Value returns.
func (s *Scale) Scan(src any) error { return field.Scan(src, s) }

// Value returns the text of e.
func (e Effort) Value() (driver.Value, error) { return field.Value(e) }

// Scan reads what Value returns.
func (e *Effort) Scan(src any) error { return field.Scan(src, e) }

// Value returns the day as text, such as "2026-11-25", and NULL if it is not given.
func (d Day) Value() (driver.Value, error) { return field.Value(d) }

// Scan reads what Value returns. Drivers that make a [time.Time] of a column of
// days are understood: its date counts, and a time of day is a [field.ErrSyntax].
func (d *Day) Scan(src any) error {
	t, ok := src.(time.Time)
	if !ok {
		return field.Scan(src, d)
	}
	if hour, minute, second := t.Clock(); hour+minute+second+t.Nanosecond() != 0 {
		return field.Bad(t.Format(time.RFC3339Nano), "a day without a time of day", field.ErrSyntax)
	}
	day, err := NewDay(t.Date())
	if err == nil {
		*d = day
	}
	return err
}
