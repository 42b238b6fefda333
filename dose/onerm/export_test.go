package onerm

// Grades below measured.
const (
	Fair     = fair
	Good     = good
	Poor     = poor
	VeryPoor = veryPoor
)
