package interview

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of f.
func (f ReplyForm) Value() (driver.Value, error) { return field.Value(f) }

// Scan reads what Value returns.
func (f *ReplyForm) Scan(src any) error { return field.Scan(src, f) }
