package equipment

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// In a database these types are their texts, and "not given" is NULL. A number
// is refused: it may mean something else in another version.

// Value returns the text of k.
func (k PartKind) Value() (driver.Value, error) { return field.Value(k) }

// Scan reads what Value returns.
func (k *PartKind) Scan(src any) error { return field.Scan(src, k) }
