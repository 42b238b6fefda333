package equipment

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of k.
func (k PartKind) Value() (driver.Value, error) { return field.Value(k) }

// Scan reads what Value returns.
func (k *PartKind) Scan(src any) error { return field.Scan(src, k) }
