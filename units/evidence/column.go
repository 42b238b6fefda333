package evidence

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of b.
func (b Basis) Value() (driver.Value, error) { return field.Value(b) }

// Scan reads what Value returns.
func (b *Basis) Scan(src any) error { return field.Scan(src, b) }
