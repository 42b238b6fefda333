package exercise

import (
	"iter"
	"slices"
	"strconv"

	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Implement is what an exercise is done with.
type Implement uint8

// Implements.
const (
	_           Implement = iota // not given
	Bodyweight                   // "bodyweight"
	Dumbbell                     // "dumbbell"
	Kettlebell                   // "kettlebell"
	Barbell                      // "barbell"
	HexBar                       // "hexagonal bar": a bar with a frame to stand in
	Machine                      // "machine"
	Cable                        // "cable"
	AnkleWeight                  // "ankle weight"
	Band                         // "band"
)

var implements = field.NewVocabulary[Implement]("implement", "", "bodyweight", "dumbbell", "kettlebell", "barbell",
	"hexagonal bar", "machine", "cable", "ankle weight", "band")

// Implements yields every implement.
func Implements() iter.Seq[Implement] { return implements.All() }

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

// handWeights do alike where a weight hangs, rests against the chest or is walked with.
var handWeights = []Implement{Dumbbell, Kettlebell}

func (e *Exercise) checkImplements() error {
	var bad field.Errors
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
		return field.Bad(i, "each implement once", field.ErrDuplicate)
	case h.Check() == nil && !slices.Contains(inHold[h], i):
		return field.Bad(i, "an implement that is held "+h.String(), field.ErrConflict)
	}
	return nil
}
