package exercise

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of p.
func (p Pattern) Value() (driver.Value, error) { return field.Value(p) }

// Scan reads what Value returns.
func (p *Pattern) Scan(src any) error { return field.Scan(src, p) }

// Value returns the text of m.
func (m DoseUnit) Value() (driver.Value, error) { return field.Value(m) }

// Scan reads what Value returns.
func (m *DoseUnit) Scan(src any) error { return field.Scan(src, m) }

// Value returns the text of r.
func (r Role) Value() (driver.Value, error) { return field.Value(r) }

// Scan reads what Value returns.
func (r *Role) Scan(src any) error { return field.Scan(src, r) }

// Value returns the text of i.
func (i Implement) Value() (driver.Value, error) { return field.Value(i) }

// Scan reads what Value returns.
func (i *Implement) Scan(src any) error { return field.Scan(src, i) }

// Value returns the text of t.
func (t Thing) Value() (driver.Value, error) { return field.Value(t) }

// Scan reads what Value returns.
func (t *Thing) Scan(src any) error { return field.Scan(src, t) }
