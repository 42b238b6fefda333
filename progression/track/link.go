package track

import (
	"math"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Link ties the 1RM of one variant, side or hold to that of another by a ratio that
// is known roughly. The zero value is "not given".
type Link struct {
	Ratio  units.Fraction  `json:"ratio"`           // of the other to this one; 0.05 to 20
	Spread units.Fraction  `json:"spread,omitzero"` // standard deviation of its logarithm; 0 to 0.5
	Fact   evidence.FactID `json:"fact,omitzero"`
}

// SideLink is from one arm or leg to the other of people over 50: even, with the spread
// between the grips of two hands, which is above that of two legs of the young.
func SideLink() Link { return Link{Ratio: 1, Spread: handSpread, Fact: factHands} }

// LiftLink is from one lift to another whose usual ratio is known, 0.05 to 20: with the
// largest spread that was seen between two lifts of young people of one sex. Another ratio
// makes a link that [Link.Validate] refuses, and so does what takes it.
func LiftLink(ratio units.Fraction) Link {
	return Link{Ratio: ratio, Spread: liftSpread, Fact: factLifts}
}

const (
	handSpread = 0.15
	legSpread  = 0.07
	liftSpread = 0.31
)

// Validate returns every bad field of l at once.
func (l Link) Validate() error {
	var bad field.Errors
	if l.Ratio == 0 {
		bad.Add("/ratio", field.Bad(nil, "0.05 to 20", field.ErrMissing))
	} else if !(l.Ratio >= 0.05 && l.Ratio <= 20) {
		bad.Add("/ratio", field.Bad(float64(l.Ratio), "0.05 to 20", field.ErrOutOfRange))
	}
	if !(l.Spread >= 0 && l.Spread <= 0.5) {
		bad.Add("/spread", field.Bad(float64(l.Spread), "0 to 0.5", field.ErrOutOfRange))
	}
	return bad.Err()
}

// Across returns what s, a track of logarithms, tells of the other one: a state that
// begins on the day of the last reading, with the level moved by the ratio and less
// certain by its spread, and the slope as it is. Readings of the other go on from it, and
// tell the ratio by and by. The way from one to the next must be a chain: back again it
// would count the same readings twice.
//
// What was learned of the width stays. A state that is not
// [Belief.Known] is a [field.ErrMissing].
func (l Link) Across(m Model, s State) (State, error) {
	var bad field.Errors
	bad.Add("/link", l.Validate())
	bad.Add("/model", m.Validate())
	bad.Add("/state", knows(m, s))
	if err := bad.Err(); err != nil {
		return State{}, err
	}
	b, past := s.Now(m), s.Likelihood(m)
	b.Level += math.Log(float64(l.Ratio))
	b.LevelVar += float64(l.Spread * l.Spread)
	return State{Before: b, Past: past}, nil
}

// Apart returns how probably the ratio of one to another, tracked apart, lies outside
// what the link leaves for it: of two sides, for instance, that they differ by more than
// sides do. It compares the difference of the two levels with the link's, and is the
// two-sided tail probability: small where they are farther apart than usual. Both are
// taken at their last readings, for the one model.
func (l Link) Apart(m Model, one, other State) (units.Fraction, error) {
	if _, err := l.Across(m, one); err != nil {
		return 0, field.At("/one", err)
	}
	if err := knows(m, other); err != nil {
		return 0, field.At("/other", err)
	}
	a, b := one.Now(m), other.Now(m)
	own := func(s State, b Belief) float64 { return s.Likelihood(m).Width(m).Factor * b.LevelVar }
	sd := math.Sqrt(own(one, a) + own(other, b) + float64(l.Spread*l.Spread))
	apart := a.Level + math.Log(float64(l.Ratio)) - b.Level
	return units.Fraction(math.Erfc(math.Abs(apart) / (sd * math.Sqrt2))), nil
}

// knows returns why nothing is known of a level in s.
func knows(m Model, s State) error {
	if err := s.Validate(); err != nil {
		return err
	}
	if !s.Now(m).Known() {
		return field.Bad(nil, "a state that knows a level", field.ErrMissing)
	}
	return nil
}
