package evidence

import "example.org/posology/units/field"

// argKind says what an [Arg] is.
type argKind uint8

const (
	isText      argKind = iota // words as they are
	isCode                     // a code or an ID
	isTerm                     // the text of an enumeration
	isTerms                    // several, with commas
	isCount                    // a whole number
	isChange                   // a whole number with its sign
	isSeconds                  // how many
	isMinutes                  // how many
	isDays                     // how many
	isDay                      // of the calendar
	isMass                     // in JSON in the unit that it prints
	isNumber                   // without a unit
	isTenths                   // a number to one decimal
	isShare                    // in JSON a fraction
	isQuantity                 // a number with its unit
	isReserve                  // the least to leave undone
	isUncounted                // more than can be counted to leave undone
	isEffort                   // a rating; its unit is the scale
)

var kinds = field.NewVocabulary[argKind]("kind of value", "text", "code", "term", "terms", "count", "change", "seconds", "minutes", "days",
	"day", "mass", "number", "tenths", "share", "quantity", "reserve", "uncounted", "effort")

// counts reports whether values of the kind are numbers or ranges of them. A day
// of the calendar is none.
func (k argKind) counts() bool { return k >= isCount && k != isDay }

// whole reports whether the number is a whole one.
func (k argKind) whole() bool { return k >= isCount && k <= isMass }

// timeUnits are the units that sentences name.
var timeUnits = map[argKind]string{isSeconds: "s", isMinutes: "min", isDays: "d"}
