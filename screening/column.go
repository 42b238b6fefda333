package screening

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of a.
func (a StopAction) Value() (driver.Value, error) { return field.Value(a) }

// Scan reads what Value returns.
func (a *StopAction) Scan(src any) error { return field.Scan(src, a) }

// Value returns the text of t.
func (t Trend) Value() (driver.Value, error) { return field.Value(t) }

// Scan reads what Value returns.
func (t *Trend) Scan(src any) error { return field.Scan(src, t) }

// Value returns the text of k.
func (k PainKind) Value() (driver.Value, error) { return field.Value(k) }

// Scan reads what Value returns.
func (k *PainKind) Scan(src any) error { return field.Scan(src, k) }

// Value returns the text of z.
func (z PainZone) Value() (driver.Value, error) { return field.Value(z) }

// Scan reads what Value returns.
func (z *PainZone) Scan(src any) error { return field.Scan(src, z) }

// Value returns the text of b.
func (b Branch) Value() (driver.Value, error) { return field.Value(b) }

// Scan reads what Value returns.
func (b *Branch) Scan(src any) error { return field.Scan(src, b) }

// Value returns the text of n.
func (n Need) Value() (driver.Value, error) { return field.Value(n) }

// Scan reads what Value returns.
func (n *Need) Scan(src any) error { return field.Scan(src, n) }

// Value returns the text of l.
func (l ContraindicationLevel) Value() (driver.Value, error) { return field.Value(l) }

// Scan reads what Value returns.
func (l *ContraindicationLevel) Scan(src any) error { return field.Scan(src, l) }

// Value returns the text of r.
func (r Referral) Value() (driver.Value, error) { return field.Value(r) }

// Scan reads what Value returns.
func (r *Referral) Scan(src any) error { return field.Scan(src, r) }

// Value returns the text of p.
func (p DayPlan) Value() (driver.Value, error) { return field.Value(p) }

// Scan reads what Value returns.
func (p *DayPlan) Scan(src any) error { return field.Scan(src, p) }

// Value returns the text of a.
func (a Answer) Value() (driver.Value, error) { return field.Value(a) }

// Scan reads what Value returns.
func (a *Answer) Scan(src any) error { return field.Scan(src, a) }

// Value returns the text of s.
func (s Setting) Value() (driver.Value, error) { return field.Value(s) }

// Scan reads what Value returns.
func (s *Setting) Scan(src any) error { return field.Scan(src, s) }

// Value returns the text of p.
func (p Posture) Value() (driver.Value, error) { return field.Value(p) }

// Scan reads what Value returns.
func (p *Posture) Scan(src any) error { return field.Scan(src, p) }

// Value returns the text of k.
func (k Ketones) Value() (driver.Value, error) { return field.Value(k) }

// Scan reads what Value returns.
func (k *Ketones) Scan(src any) error { return field.Scan(src, k) }

// Value returns the text of g.
func (g Glucose) Value() (driver.Value, error) { return field.Value(g) }

// Scan reads what Value returns.
func (g *Glucose) Scan(src any) error { return field.Scan(src, g) }

// Value returns the text of k.
func (k Kind) Value() (driver.Value, error) { return field.Value(k) }

// Scan reads what Value returns.
func (k *Kind) Scan(src any) error { return field.Scan(src, k) }

// Value returns the text of i.
func (i Intensity) Value() (driver.Value, error) { return field.Value(i) }

// Scan reads what Value returns.
func (i *Intensity) Scan(src any) error { return field.Scan(src, i) }

// Value returns the text of r.
func (r Route) Value() (driver.Value, error) { return field.Value(r) }

// Scan reads what Value returns.
func (r *Route) Scan(src any) error { return field.Scan(src, r) }

// Value returns the text of m.
func (m Meanwhile) Value() (driver.Value, error) { return field.Value(m) }

// Scan reads what Value returns.
func (m *Meanwhile) Scan(src any) error { return field.Scan(src, m) }

// Value returns the text of v.
func (v Variant) Value() (driver.Value, error) { return field.Value(v) }

// Scan reads what Value returns.
func (v *Variant) Scan(src any) error { return field.Scan(src, v) }

// Value returns the text of l.
func (l Lifter) Value() (driver.Value, error) { return field.Value(l) }

// Scan reads what Value returns.
func (l *Lifter) Scan(src any) error { return field.Scan(src, l) }

// Value returns the text of m.
func (m Means) Value() (driver.Value, error) { return field.Value(m) }

// Scan reads what Value returns.
func (m *Means) Scan(src any) error { return field.Scan(src, m) }

// Value returns the text of c.
func (c ListChoice) Value() (driver.Value, error) { return field.Value(c) }

// Scan reads what Value returns.
func (c *ListChoice) Scan(src any) error { return field.Scan(src, c) }

// Value returns the text of s.
func (s Strictness) Value() (driver.Value, error) { return field.Value(s) }

// Scan reads what Value returns.
func (s *Strictness) Scan(src any) error { return field.Scan(src, s) }
