package onerm

import "example.org/posology/units/field"

// Grade says how much an estimate is worth. It goes with the width of the
// interval.
type Grade uint8

// Grades, the best first.
const (
	GradeUnknown Grade = iota // not given
	Measured                  // one repetition to failure: no equation
	Good                      // up to 5 repetitions to failure
	Fair                      // up to 10
	Poor                      // up to 15
	VeryPoor                  // up to 20
)

var grades = field.NewVocabulary[Grade]("grade", "", "measured", "good", "fair", "poor", "very poor")

// String returns the grade's name, such as "very poor".
func (g Grade) String() string { return grades.Text(g) }

// MarshalText writes what String returns.
func (g Grade) MarshalText() ([]byte, error) { return grades.Marshal(g) }

// UnmarshalText reads what MarshalText writes.
func (g *Grade) UnmarshalText(text []byte) error { return grades.Unmarshal(text, g) }
