package dose

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of p.
func (p Phase) Value() (driver.Value, error) { return field.Value(p) }

// Scan reads what Value returns.
func (p *Phase) Scan(src any) error { return field.Scan(src, p) }

// Value returns the text of m.
func (m Mode) Value() (driver.Value, error) { return field.Value(m) }

// Scan reads what Value returns.
func (m *Mode) Scan(src any) error { return field.Scan(src, m) }

// Value returns the text of f.
func (f Flag) Value() (driver.Value, error) { return field.Value(f) }

// Scan reads what Value returns.
func (f *Flag) Scan(src any) error { return field.Scan(src, f) }
