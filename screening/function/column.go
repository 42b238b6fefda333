package function

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of t.
func (t Test) Value() (driver.Value, error) { return field.Value(t) }

// Scan reads what Value returns.
func (t *Test) Scan(src any) error { return field.Scan(src, t) }

// Value returns the text of p.
func (p Position) Value() (driver.Value, error) { return field.Value(p) }

// Scan reads what Value returns.
func (p *Position) Scan(src any) error { return field.Scan(src, p) }

// Value returns the text of b.
func (b BatteryBand) Value() (driver.Value, error) { return field.Value(b) }

// Scan reads what Value returns.
func (b *BatteryBand) Scan(src any) error { return field.Scan(src, b) }

// Value returns the text of m.
func (m Measure) Value() (driver.Value, error) { return field.Value(m) }

// Scan reads what Value returns.
func (m *Measure) Scan(src any) error { return field.Scan(src, m) }

// Value returns the text of h.
func (h HowDone) Value() (driver.Value, error) { return field.Value(h) }

// Scan reads what Value returns.
func (h *HowDone) Scan(src any) error { return field.Scan(src, h) }

// Value returns the text of h.
func (h Hand) Value() (driver.Value, error) { return field.Value(h) }

// Scan reads what Value returns.
func (h *Hand) Scan(src any) error { return field.Scan(src, h) }

// Value returns the text of s.
func (s Shown) Value() (driver.Value, error) { return field.Value(s) }

// Scan reads what Value returns.
func (s *Shown) Scan(src any) error { return field.Scan(src, s) }

// Value returns the text of u.
func (u Unit) Value() (driver.Value, error) { return field.Value(u) }

// Scan reads what Value returns.
func (u *Unit) Scan(src any) error { return field.Scan(src, u) }

// Value returns the text of a.
func (a Amount) Value() (driver.Value, error) { return field.Value(a) }

// Scan reads what Value returns.
func (a *Amount) Scan(src any) error { return field.Scan(src, a) }
