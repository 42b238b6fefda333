package body

// Len is how many demands s holds.
func (s Demands) Len() int { return s.count() }
