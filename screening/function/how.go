package function

import "example.org/posology/units/field"

// How is how a test went. All are results.
type How uint8

// Ways that a test may go.
const (
	HowUnknown How = iota // not given
	Done                  // done by the protocol
	Unable                // tried, or plainly impossible: not able
	UsedArms              // rose with the help of the arms
	Refused               // did not want to
	Stopped               // broken off, by the person or the tester
)

var hows = field.NewVocabulary[How]("how it went", "", "done", "unable", "used arms", "refused", "stopped")

// String returns its name, such as "used arms".
func (h How) String() string { return hows.Text(h) }

// Check returns nil if h is given.
func (h How) Check() error { return hows.Check("", h) }

// MarshalText writes what String returns.
func (h How) MarshalText() ([]byte, error) { return hows.Marshal(h) }

// UnmarshalText reads what MarshalText writes.
func (h *How) UnmarshalText(text []byte) error { return hows.Unmarshal(text, h) }

// Hand says whether the hand that was tested is the one preferred.
type Hand uint8

// Hands.
const (
	HandUnknown Hand = iota // not given
	Dominant
	NonDominant
)

var hands = field.NewVocabulary[Hand]("hand", "", "dominant", "non-dominant")

// String returns "dominant" or "non-dominant", and "" for not given.
func (h Hand) String() string { return hands.Text(h) }

// MarshalText writes what String returns.
func (h Hand) MarshalText() ([]byte, error) { return hands.Marshal(h) }

// UnmarshalText reads what MarshalText writes.
func (h *Hand) UnmarshalText(text []byte) error { return hands.Unmarshal(text, h) }
