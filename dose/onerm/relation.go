package onerm

import (
	"example.org/posology/units"
)

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

// houseCurve is the lower of the two house equations: of Epley below 10
// repetitions, of Brzycki above.
type houseCurve struct{}

func (houseCurve) Fraction(reps float64) (units.Fraction, error) {
	f, err := Epley.Fraction(reps)
	if err != nil {
		return 0, err
	}
	g, err := Brzycki.Fraction(reps)
	return min(f, g), err
}

func (houseCurve) Reps(f units.Fraction) (float64, error) {
	r, err := Epley.Reps(f)
	if err != nil {
		return 0, err
	}
	s, err := Brzycki.Reps(f)
	return min(r, s), err
}

func (houseCurve) Studied() units.Range[float64] { return sharedRange }

// String names the equations.
func (houseCurve) String() string {
	return "the lower of " + Epley.String() + " and " + Brzycki.String()
}
