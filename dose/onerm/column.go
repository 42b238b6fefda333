package onerm

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of f.
func (f Formula) Value() (driver.Value, error) { return field.Value(f) }

// Scan reads what Value returns.
func (f *Formula) Scan(src any) error { return field.Scan(src, f) }

// Value returns the text of g.
func (g Grade) Value() (driver.Value, error) { return field.Value(g) }

// Scan reads what Value returns.
func (g *Grade) Scan(src any) error { return field.Scan(src, g) }

// Value returns the text of f.
func (f Form) Value() (driver.Value, error) { return field.Value(f) }

// Scan reads what Value returns.
func (f *Form) Scan(src any) error { return field.Scan(src, f) }
