package rota

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of p.
func (p Proof) Value() (driver.Value, error) { return field.Value(p) }

// Scan reads what Value returns.
func (p *Proof) Scan(src any) error { return field.Scan(src, p) }
