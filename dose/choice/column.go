package choice

import (
	"database/sql/driver"

	"example.org/posology/units/field"
)

// Value returns the text of t.
func (t Task) Value() (driver.Value, error) { return field.Value(t) }

// Scan reads what Value returns.
func (t *Task) Scan(src any) error { return field.Scan(src, t) }

// Value returns the text of c.
func (c Concern) Value() (driver.Value, error) { return field.Value(c) }

// Scan reads what Value returns.
func (c *Concern) Scan(src any) error { return field.Scan(src, c) }

// Value returns the text of t.
func (t TaskTrial) Value() (driver.Value, error) { return field.Value(t) }

// Scan reads what Value returns.
func (t *TaskTrial) Scan(src any) error { return field.Scan(src, t) }
