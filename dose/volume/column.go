package volume

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of l.
func (l VolumeLoad) Value() (driver.Value, error) { return field.Value(l) }

// Scan reads what Value returns.
func (l *VolumeLoad) Scan(src any) error { return field.Scan(src, l) }

// Value returns the text of k.
func (k TallyKind) Value() (driver.Value, error) { return field.Value(k) }

// Scan reads what Value returns.
func (k *TallyKind) Scan(src any) error { return field.Scan(src, k) }

// Value returns the text of w.
func (w ISOWeek) Value() (driver.Value, error) { return field.Value(w) }

// Scan reads what Value returns.
func (w *ISOWeek) Scan(src any) error { return field.Scan(src, w) }

// Value returns the text of c.
func (c Convention) Value() (driver.Value, error) { return field.Value(c) }

// Scan reads what Value returns.
func (c *Convention) Scan(src any) error { return field.Scan(src, c) }

// Value returns the text of s.
func (s Sets) Value() (driver.Value, error) { return field.Value(s) }

// Scan reads what Value returns.
func (s *Sets) Scan(src any) error { return field.Scan(src, s) }
