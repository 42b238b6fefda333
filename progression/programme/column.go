package programme

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of k.
func (k HappeningKind) Value() (driver.Value, error) { return field.Value(k) }

// Scan reads what Value returns.
func (k *HappeningKind) Scan(src any) error { return field.Scan(src, k) }

// Value returns the text of s.
func (s Standing) Value() (driver.Value, error) { return field.Value(s) }

// Scan reads what Value returns.
func (s *Standing) Scan(src any) error { return field.Scan(src, s) }

// Value returns the text of e.
func (e Exit) Value() (driver.Value, error) { return field.Value(e) }

// Scan reads what Value returns.
func (e *Exit) Scan(src any) error { return field.Scan(src, e) }

// Value returns the text of c.
func (c Criterion) Value() (driver.Value, error) { return field.Value(c) }

// Scan reads what Value returns.
func (c *Criterion) Scan(src any) error { return field.Scan(src, c) }

// Value returns the text of h.
func (h CriterionState) Value() (driver.Value, error) { return field.Value(h) }

// Scan reads what Value returns.
func (h *CriterionState) Scan(src any) error { return field.Scan(src, h) }
