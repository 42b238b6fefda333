package visit

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of g.
func (g Gate) Value() (driver.Value, error) { return field.Value(g) }

// Scan reads what Value returns.
func (g *Gate) Scan(src any) error { return field.Scan(src, g) }
