package published

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of c.
func (c Chart) Value() (driver.Value, error) { return field.Value(c) }

// Scan reads what Value returns.
func (c *Chart) Scan(src any) error { return field.Scan(src, c) }

// Value returns the text of g.
func (g Regression) Value() (driver.Value, error) { return field.Value(g) }

// Scan reads what Value returns.
func (g *Regression) Scan(src any) error { return field.Scan(src, g) }
