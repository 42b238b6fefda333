package volume

import (
	"iter"

	"example.org/posology/dose/exercise"
	"example.org/posology/units/field"
)

// Movement is one of two pairs of opposed movements that a week is looked
// through for.
type Movement uint8

// Movements.
const (
	_     Movement = iota // none of these
	Push                  // "push": away from the body, overhead or down
	Pull                  // "pull": rows and vertical pulls
	Squat                 // "squat": squats and lunges
	Hinge                 // "hinge": hinges and bridges
)

var movements = field.NewVocabulary[Movement]("movement", "", "push", "pull", "squat", "hinge")

// Movements yields every movement.
func Movements() iter.Seq[Movement] { return movements.All() }

// String returns "push", "pull", "squat" or "hinge".
func (m Movement) String() string { return movements.Text(m) }

// MarshalText writes what String returns.
func (m Movement) MarshalText() ([]byte, error) { return movements.Marshal(m) }

// UnmarshalText reads what MarshalText writes.
func (m *Movement) UnmarshalText(text []byte) error { return movements.Unmarshal(text, m) }

// movement returns which of the opposed movements the exercise is, if any.
func (e ExerciseWeek) movement() Movement {
	switch p := e.Pattern; {
	case p.Pushes():
		return Push
	case p.Pulls():
		return Pull
	case p == exercise.Squat || p == exercise.Lunge:
		return Squat
	case p == exercise.Hinge:
		return Hinge
	}
	return 0
}

// CountsReps reports whether the exercise is measured in repetitions.
func (e ExerciseWeek) CountsReps() bool { return e.Measure == exercise.Repetitions }

// MovementSets returns the sets of exercises of movement m that both sides did.
func (t Totals) MovementSets(m Movement) int {
	n := 0
	for _, e := range t.Exercises {
		if m != 0 && e.movement() == m {
			n += min(e.Left, e.Right)
		}
	}
	return n
}
