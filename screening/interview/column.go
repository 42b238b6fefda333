package interview

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// In a database these types are their texts, and "not given" is NULL. A number
// is refused: it may mean something else in another version.

// Value returns the text of f.
func (f ReplyForm) Value() (driver.Value, error) { return field.Value(f) }

// Scan reads what Value returns.
func (f *ReplyForm) Scan(src any) error { return field.Scan(src, f) }
