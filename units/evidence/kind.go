package evidence

import (
	"iter"

	"example.org/posology/units/field"
)

// ArgKind says what an [Arg] is.
type ArgKind uint8

// Kinds of values.
const (
	KindText      ArgKind = iota // "text": words as they are
	KindCode                     // "code": a code or an ID
	KindTerm                     // "term": the text of an enumeration
	KindTerms                    // "terms": several, with commas
	KindCount                    // "count": a whole number
	KindChange                   // "change": a whole number with its sign
	KindSeconds                  // "seconds"
	KindMinutes                  // "minutes"
	KindDays                     // "days": how many
	KindDay                      // "day": of the calendar
	KindMass                     // "mass": in JSON in the unit that it prints
	KindNumber                   // "number": without a unit
	KindTenths                   // "tenths": a number to one decimal
	KindShare                    // "share": in JSON a fraction
	KindQuantity                 // "quantity": a number with its unit
	KindReserve                  // "reserve": the least to leave undone
	KindUncounted                // "uncounted": more than can be counted to leave undone
	KindEffort                   // "effort": a rating; its unit is the scale
)

var kinds = field.NewVocabulary[ArgKind]("kind of value", "text", "code", "term", "terms", "count", "change", "seconds", "minutes", "days",
	"day", "mass", "number", "tenths", "share", "quantity", "reserve", "uncounted", "effort")

// ArgKinds yields every kind.
func ArgKinds() iter.Seq[ArgKind] { return kinds.All() }

// String returns the kind's name, such as "mass".
func (k ArgKind) String() string { return kinds.Text(k) }

// MarshalText writes what String returns.
func (k ArgKind) MarshalText() ([]byte, error) { return kinds.Marshal(k) }

// UnmarshalText reads what MarshalText writes.
func (k *ArgKind) UnmarshalText(text []byte) error { return kinds.Unmarshal(text, k) }

// IsNumber reports whether values of the kind are numbers or ranges of them. A day
// of the calendar is none.
func (k ArgKind) IsNumber() bool { return k >= KindCount && k != KindDay }

// isWhole reports whether the number is a whole one.
func (k ArgKind) isWhole() bool { return k >= KindCount && k <= KindMass }

// timeUnits are the units that sentences name.
var timeUnits = map[ArgKind]string{KindSeconds: "s", KindMinutes: "min", KindDays: "d"}
