package onerm

import (
	"iter"

	"example.org/posology/units/field"
)

// Grade says how much an estimate is worth. It goes with the width of the
// interval.
type Grade uint8

// Grades, the best first.
const (
	_        Grade = iota // not given
	Measured              // "measured": one repetition to failure: no equation
	Good                  // "good": up to 5 repetitions to failure
	Fair                  // "fair": up to 10
	Poor                  // "poor": up to 15
	VeryPoor              // "very poor": up to 20
)

var grades = field.NewVocabulary[Grade]("grade", "", "measured", "good", "fair", "poor", "very poor")

// Grades yields every grade.
func Grades() iter.Seq[Grade] { return grades.All() }

// String returns the grade's name, such as "very poor".
func (g Grade) String() string { return grades.Text(g) }

// MarshalText writes what String returns.
func (g Grade) MarshalText() ([]byte, error) { return grades.Marshal(g) }

// UnmarshalText reads what MarshalText writes.
func (g *Grade) UnmarshalText(text []byte) error { return grades.Unmarshal(text, g) }
