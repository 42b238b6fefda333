package track

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of k.
func (k TrendKind) Value() (driver.Value, error) { return field.Value(k) }

// Scan reads what Value returns.
func (k *TrendKind) Scan(src any) error { return field.Scan(src, k) }
