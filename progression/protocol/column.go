package protocol

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of s.
func (s Scheme) Value() (driver.Value, error) { return field.Value(s) }

// Scan reads what Value returns.
func (s *Scheme) Scan(src any) error { return field.Scan(src, s) }
