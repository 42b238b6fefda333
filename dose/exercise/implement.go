package exercise

import (
	"slices"
	"strconv"

	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Implement is what an exercise is done with.
type Implement uint8

// Implements.
const (
	ImplementUnknown Implement = iota // not given
	Bodyweight
	Dumbbell
	Kettlebell
	Barbell
	HexBar // a bar with a frame to stand in
	Machine
	Cable
	AnkleWeight
	Band
)

var implements = units.NewVocabulary[Implement]("implement", "", "bodyweight", "dumbbell", "kettlebell", "barbell",
	"hexagonal bar", "machine", "cable", "ankle weight", "band")

// String returns the implement's name, such as "ankle weight".
func (i Implement) String() string { return implements.Text(i) }

// MarshalText writes what String returns.
func (i Implement) MarshalText() ([]byte, error) { return implements.Marshal(i) }

// UnmarshalText reads what MarshalText writes.
func (i *Implement) UnmarshalText(text []byte) error { return implements.Unmarshal(text, i) }

// inHold lists the implements that are held so, the usual one first.
var inHold = [...][]Implement{
	body.OneHand:        {Dumbbell, Kettlebell},
	body.OneEachHand:    {Dumbbell, Kettlebell},
	body.BothHandsOnOne: {Dumbbell, Kettlebell},
	body.OnBar:          {Barbell, HexBar},
	body.OnStack:        {Machine, Cable},
	body.OnLimb:         {AnkleWeight},
	body.OnBand:         {Band},
	body.Unloaded:       {Bodyweight},
}

func (e Exercise) checkImplements() error {
	var bad units.FieldErrors
	for i, im := range e.Implements {
		if err := im.check(e.Hold, e.Implements[:i]); err != nil {
			bad.Add("/"+strconv.Itoa(i), err)
		}
	}
	return bad.Err()
}

// check takes the hold that i has to go with and the implements before i.
func (i Implement) check(h body.Hold, before []Implement) error {
	switch {
	case !implements.Valid(i):
		return implements.Check("", i)
	case slices.Contains(before, i):
		return units.Field("", i, "each implement once", units.ErrDuplicate)
	case h.Check() == nil && !slices.Contains(inHold[h], i):
		return units.Field("", i, "an implement that is held "+h.String(), units.ErrConflict)
	}
	return nil
}

// Laterality tells how the two sides share the work.
type Laterality uint8

// Lateralities.
const (
	LateralityUnknown Laterality = iota // not given
	Bilateral                           // both sides at once
	Unilateral                          // one side, then the other
	Alternating                         // the sides take turns within a set
)

var lateralities = units.NewVocabulary[Laterality]("laterality", "", "bilateral", "unilateral", "alternating")

// String returns "bilateral", "unilateral" or "alternating".
func (l Laterality) String() string { return lateralities.Text(l) }

// MarshalText writes what String returns.
func (l Laterality) MarshalText() ([]byte, error) { return lateralities.Marshal(l) }

// UnmarshalText reads what MarshalText writes.
func (l *Laterality) UnmarshalText(text []byte) error { return lateralities.Unmarshal(text, l) }

// Laterality returns how the two sides share the work of e.
func (e Exercise) Laterality() Laterality {
	switch {
	case e.OneSided:
		return Unilateral
	case e.Alternating:
		return Alternating
	}
	return Bilateral
}
