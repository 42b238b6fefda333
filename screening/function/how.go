package function

import (
	"iter"

	"example.org/posology/units/field"
)

// HowDone is how a test went. All are results.
type HowDone uint8

// Ways that a test may go.
const (
	_        HowDone = iota // not given
	Done                    // "done": done by the protocol
	Unable                  // "unable": tried, or plainly impossible: not able
	UsedArms                // "used arms": rose with the help of the arms
	Refused                 // "refused": did not want to
	Stopped                 // "stopped": broken off, by the person or the tester
)

var hows = field.NewVocabulary[HowDone]("how it went", "", "done", "unable", "used arms", "refused", "stopped")

// EveryHowDone yields every way that a test went.
func EveryHowDone() iter.Seq[HowDone] { return hows.All() }

// String returns its name, such as "used arms".
func (h HowDone) String() string { return hows.Text(h) }

// Order returns where h stands to how the test went before: [Better], [Worse] or [Equal].
// Unable is less than arms used and less than a test that was broken off, and each of
// these is less than one that was done. It returns 0 where nothing is known of the order: for a
// refusal, for arms used and broken off, and for two of a kind that a number tells apart.
func (h HowDone) Order(before HowDone) Position {
	switch is, was := ranks[h], ranks[before]; {
	case is == 0 || was == 0:
		return 0
	case is > was:
		return Better
	case is < was:
		return Worse
	case h == Unable:
		return Equal
	}
	return 0
}

// ranks rise with how far the person got.
var ranks = map[HowDone]int{Unable: 1, UsedArms: 2, Stopped: 2, Done: 3}

// check returns nil if h is given.
func (h HowDone) check() error { return hows.Check("", h) }

// MarshalText writes what String returns.
func (h HowDone) MarshalText() ([]byte, error) { return hows.Marshal(h) }

// UnmarshalText reads what MarshalText writes.
func (h *HowDone) UnmarshalText(text []byte) error { return hows.Unmarshal(text, h) }

// Hand says whether the hand that was tested is the one preferred.
type Hand uint8

// Hands.
const (
	_           Hand = iota // not given
	Dominant                // "dominant"
	NonDominant             // "non-dominant"
)

var hands = field.NewVocabulary[Hand]("hand", "", "dominant", "non-dominant")

// Hands yields every hand.
func Hands() iter.Seq[Hand] { return hands.All() }

// String returns "dominant" or "non-dominant", and "" for not given.
func (h Hand) String() string { return hands.Text(h) }

// MarshalText writes what String returns.
func (h Hand) MarshalText() ([]byte, error) { return hands.Marshal(h) }

// UnmarshalText reads what MarshalText writes.
func (h *Hand) UnmarshalText(text []byte) error { return hands.Unmarshal(text, h) }
