package body

import (
	"database/sql/driver"
	"encoding/json"

	"example.org/posology/units/field"
)

// Value returns the text of d.
func (d Demand) Value() (driver.Value, error) { return field.Value(d) }

// Scan reads what Value returns.
func (d *Demand) Scan(src any) error { return field.Scan(src, d) }

// Value returns the text of h.
func (h Hold) Value() (driver.Value, error) { return field.Value(h) }

// Scan reads what Value returns.
func (h *Hold) Scan(src any) error { return field.Scan(src, h) }

// Value returns the text of s.
func (s Stated) Value() (driver.Value, error) { return field.Value(s) }

// Scan reads what Value returns.
func (s *Stated) Scan(src any) error { return field.Scan(src, s) }

// Value returns the text of s.
func (s Sex) Value() (driver.Value, error) { return field.Value(s) }

// Scan reads what Value returns.
func (s *Sex) Scan(src any) error { return field.Scan(src, s) }

// Value returns the text of t.
func (t Training) Value() (driver.Value, error) { return field.Value(t) }

// Scan reads what Value returns.
func (t *Training) Scan(src any) error { return field.Scan(src, t) }

// Value returns the text of s.
func (s Side) Value() (driver.Value, error) { return field.Value(s) }

// Scan reads what Value returns.
func (s *Side) Scan(src any) error { return field.Scan(src, s) }

// Value returns the text of r.
func (r Region) Value() (driver.Value, error) { return field.Value(r) }

// Scan reads what Value returns.
func (r *Region) Scan(src any) error { return field.Scan(src, r) }

// Value returns the text of m.
func (m Muscle) Value() (driver.Value, error) { return field.Value(m) }

// Scan reads what Value returns.
func (m *Muscle) Scan(src any) error { return field.Scan(src, m) }

// Value returns the list of names as JSON text, "[]" for the empty set.
func (s Demands) Value() (driver.Value, error) { return field.Column[[]Demand]{V: s.list()}.Value() }

// Scan reads what Value returns.
func (s *Demands) Scan(src any) error {
	var list field.Column[json.RawMessage]
	if err := list.Scan(src); err != nil {
		return err
	}
	return s.UnmarshalJSON(list.V)
}
