package beside

import (
	"iter"

	"example.org/posology/units/field"
)

// ItemKind is what an item trains.
type ItemKind uint8

// Kinds of items.
const (
	_       ItemKind = iota // not given
	Balance                 // "balance": stances, reaching, stepping
	Aerobic                 // "aerobic": walking or other movement that goes on
	Impact                  // "impact": stamps, jumps, hops, for bone
	Power                   // "power": fast on the way up
)

var itemKinds = field.NewVocabulary[ItemKind]("kind", "", "balance", "aerobic", "impact", "power")

// ItemKinds yields every kind.
func ItemKinds() iter.Seq[ItemKind] { return itemKinds.All() }

// String returns "balance", "aerobic", "impact" or "power".
func (k ItemKind) String() string { return itemKinds.Text(k) }

// MarshalText writes what String returns.
func (k ItemKind) MarshalText() ([]byte, error) { return itemKinds.Marshal(k) }

// UnmarshalText reads what MarshalText writes.
func (k *ItemKind) UnmarshalText(text []byte) error { return itemKinds.Unmarshal(text, k) }

// Holding is where the hands are in standing work. The values rise in support.
type Holding uint8

// Holdings, in rising order of support.
const (
	_           Holding = iota // not stated
	HandsNear                  // "hands free": something firm within reach
	OneHandOn                  // "one hand": one hand on something firm
	BothHandsOn                // "both hands": both hands on something firm
)

var holdings = field.NewVocabulary[Holding]("hands", "", "hands free", "one hand", "both hands")

// Holdings yields every kind of support.
func Holdings() iter.Seq[Holding] { return holdings.All() }

// String returns "hands free", "one hand" or "both hands".
func (h Holding) String() string { return holdings.Text(h) }

// MarshalText writes what String returns.
func (h Holding) MarshalText() ([]byte, error) { return holdings.Marshal(h) }

// UnmarshalText reads what MarshalText writes.
func (h *Holding) UnmarshalText(text []byte) error { return holdings.Unmarshal(text, h) }

// Trouble is what spoke against an item while it was done, or after it.
type Trouble uint8

// Troubles.
const (
	_           Trouble = iota // none
	SoreNextDay                // "sore next day": sore or painful on the day after
	OutOfBreath                // "out of breath": could not speak a sentence
	Hurt                       // "pain": while it was done
	Leaked                     // "leak or heaviness": of the pelvic floor, on landing or pushing
	Swayed                     // "nearly fell": balance was lost and caught
	Dizzied                    // "dizzy": dizzy or faint
	Tumbled                    // "fell": to the floor
)

var troubles = field.NewVocabulary[Trouble]("trouble", "", "sore next day", "out of breath", "pain", "leak or heaviness", "nearly fell", "dizzy", "fell")

// Troubles yields every trouble.
func Troubles() iter.Seq[Trouble] { return troubles.All() }

// String returns the text, such as "nearly fell".
func (t Trouble) String() string { return troubles.Text(t) }

// MarshalText writes what String returns.
func (t Trouble) MarshalText() ([]byte, error) { return troubles.Marshal(t) }

// UnmarshalText reads what MarshalText writes.
func (t *Trouble) UnmarshalText(text []byte) error { return troubles.Unmarshal(text, t) }
