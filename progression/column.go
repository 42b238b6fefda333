package progression

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// In a database these types are their texts, and "not given" is NULL. A number
// is refused: it may mean something else in another version.

// Value returns the text of a.
func (a Action) Value() (driver.Value, error) { return field.Value(a) }

// Scan reads what Value returns.
func (a *Action) Scan(src any) error { return field.Scan(src, a) }

// Value returns the text of c.
func (c Change) Value() (driver.Value, error) { return field.Value(c) }

// Scan reads what Value returns.
func (c *Change) Scan(src any) error { return field.Scan(src, c) }
