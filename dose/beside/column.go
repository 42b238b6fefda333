package beside

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of k.
func (k ItemKind) Value() (driver.Value, error) { return field.Value(k) }

// Scan reads what Value returns.
func (k *ItemKind) Scan(src any) error { return field.Scan(src, k) }

// Value returns the text of h.
func (h Holding) Value() (driver.Value, error) { return field.Value(h) }

// Scan reads what Value returns.
func (h *Holding) Scan(src any) error { return field.Scan(src, h) }

// Value returns the text of t.
func (t Trouble) Value() (driver.Value, error) { return field.Value(t) }

// Scan reads what Value returns.
func (t *Trouble) Scan(src any) error { return field.Scan(src, t) }
