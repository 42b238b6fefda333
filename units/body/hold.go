package body

import (
	"fmt"
	"iter"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Hold is the way a weight is held.
type Hold uint8

// Holds.
const (
	_              Hold = iota // not given
	OneHand                    // "one hand": one dumbbell in one hand
	OneEachHand                // "one in each hand": two like dumbbells, one in each hand
	BothHandsOnOne             // "both hands on one": one dumbbell in both hands
	OnBar                      // "on a bar": a bar with plates
	OnStack                    // "on a stack": a stack of a machine or cable
	OnLimb                     // "on a limb": a weight strapped to the ankle or the wrist
	OnBand                     // "on a band": an elastic band, which has no mass to state
	Unloaded                   // "unloaded": nothing but the body
)

var holds = field.NewVocabulary[Hold]("hold", "", "one hand", "one in each hand", "both hands on one", "on a bar", "on a stack",
	"on a limb", "on a band", "unloaded")

// Holds yields every hold.
func Holds() iter.Seq[Hold] { return holds.All() }

// String returns the hold's name, such as "one in each hand".
func (h Hold) String() string { return holds.Text(h) }

// Check returns nil if h is given.
func (h Hold) Check() error { return holds.Check("", h) }

// MarshalText writes what String returns.
func (h Hold) MarshalText() ([]byte, error) { return holds.Marshal(h) }

// UnmarshalText reads what MarshalText writes.
func (h *Hold) UnmarshalText(text []byte) error { return holds.Unmarshal(text, h) }

// Implements returns how many weights are held at once: two for one in each
// hand, none unloaded or on a band, else one.
func (h Hold) Implements() int {
	switch h {
	case OneEachHand:
		return 2
	case OneHand, BothHandsOnOne, OnBar, OnStack, OnLimb:
		return 1
	}
	return 0
}

// Stated says what a mass counts. It keeps a clinic's "two fours" from being
// taken for four kilograms in all.
type Stated uint8

// Ways to state a mass.
const (
	_       Stated = iota // not given: refused where two weights are held
	PerHand               // "per hand": the weight in one hand
	Total                 // "total": all that is held at once
)

var stateds = field.NewVocabulary[Stated]("statement of mass", "", "per hand", "total")

// EveryStated yields every statement of mass.
func EveryStated() iter.Seq[Stated] { return stateds.All() }

// String returns "per hand" or "total", and "" for not given.
func (s Stated) String() string { return stateds.Text(s) }

// MarshalText writes what String returns.
func (s Stated) MarshalText() ([]byte, error) { return stateds.Marshal(s) }

// UnmarshalText reads what MarshalText writes.
func (s *Stated) UnmarshalText(text []byte) error { return stateds.Unmarshal(text, s) }

// Each returns the mass of one implement, when m is stated as s. A mass for
// two dumbbells that does not say per hand or total is a [field.ErrMissing];
// a mass per hand where the two hands do not hold one each, a total that two
// hands cannot share to the nanogram, and a mass for an unloaded exercise or a
// band are a [field.ErrConflict]; a hold not given is a [field.ErrMissing], a mass below
// zero a [field.ErrOutOfRange].
func (h Hold) Each(m units.Mass, s Stated) (units.Mass, error) {
	if m < 0 && h.Check() == nil {
		return 0, field.Bad(m, "0 kg or more", field.ErrOutOfRange)
	}
	switch h {
	case OneHand:
	case OneEachHand:
		switch s {
		case PerHand:
			return m, nil
		case Total:
			if m%2 != 0 {
				return 0, field.Bad(m, "a total that two hands share evenly", field.ErrConflict)
			}
			return m / 2, nil
		}
		return 0, field.Bad(m, `"per hand" or "total" beside a mass for two dumbbells`, field.ErrMissing)
	case BothHandsOnOne, OnBar, OnStack:
		if s == PerHand {
			return 0, field.Bad(fmt.Sprintf("%s per hand", m), "a total, since both hands hold one thing", field.ErrConflict)
		}
	case OnLimb:
		if s == PerHand {
			return 0, field.Bad(fmt.Sprintf("%s per hand", m), "a total, since no hand holds it", field.ErrConflict)
		}
	case OnBand, Unloaded:
		if m != 0 {
			return 0, field.Bad(m, "no mass, since the hold is "+h.String(), field.ErrConflict)
		}
	default:
		return 0, h.Check()
	}
	return m, nil
}

// Total returns all that is held at once when each implement weighs each, or
// a [field.ErrOverflow].
func (h Hold) Total(each units.Mass) (units.Mass, error) {
	if h == OneEachHand {
		return each.Add(each)
	}
	return each, nil
}
