package onerm

import "example.org/posology/units"

// A Relation ties the share of a one-repetition maximum to the repetitions that
// can be done with it to failure.
type Relation interface {
	// Fraction returns the share of the 1RM that can be lifted reps times, to
	// failure.
	Fraction(reps float64) (units.Fraction, error)
	// Reps returns how often a share f of the 1RM can be lifted, to failure. It
	// is the inverse of Fraction.
	Reps(f units.Fraction) (float64, error)
	// Studied returns the repetitions to failure over which the relation was
	// tested.
	Studied() units.Range[float64]
}
