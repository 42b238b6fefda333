package guideline

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of g.
func (g Goal) Value() (driver.Value, error) { return field.Value(g) }

// Scan reads what Value returns.
func (g *Goal) Scan(src any) error { return field.Scan(src, g) }

// Value returns the text of u.
func (u EffectUnit) Value() (driver.Value, error) { return field.Value(u) }

// Scan reads what Value returns.
func (u *EffectUnit) Scan(src any) error { return field.Scan(src, u) }

// Value returns the text of c.
func (c Condition) Value() (driver.Value, error) { return field.Value(c) }

// Scan reads what Value returns.
func (c *Condition) Scan(src any) error { return field.Scan(src, c) }

// Value returns the text of f.
func (f Field) Value() (driver.Value, error) { return field.Value(f) }

// Scan reads what Value returns.
func (f *Field) Scan(src any) error { return field.Scan(src, f) }

// Value returns the text of v.
func (v Verdict) Value() (driver.Value, error) { return field.Value(v) }

// Scan reads what Value returns.
func (v *Verdict) Scan(src any) error { return field.Scan(src, v) }
