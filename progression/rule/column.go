package rule

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of a.
func (a LoadAdvice) Value() (driver.Value, error) { return field.Value(a) }

// Scan reads what Value returns.
func (a *LoadAdvice) Scan(src any) error { return field.Scan(src, a) }

// Value returns the text of r.
func (r Name) Value() (driver.Value, error) { return field.Value(r) }

// Scan reads what Value returns.
func (r *Name) Scan(src any) error { return field.Scan(src, r) }
