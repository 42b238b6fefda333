package visit

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// In a database these types are their texts, and "not given" is NULL. A number
// is refused: it may mean something else in another version.

// Value returns the text of g.
func (g Gate) Value() (driver.Value, error) { return field.Value(g) }

// Scan reads what Value returns.
func (g *Gate) Scan(src any) error { return field.Scan(src, g) }
