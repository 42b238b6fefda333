package given

import (
	"fmt"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// TestDays is for how long a test of strength is used.
const TestDays = 84

// StillSays refuses a test of strength, or a set that was done, that says nothing of the
// day decided on, with a [field.ErrConflict]: it is of after that day, of before from,
// the first day whose tests say something, or older than twelve weeks (dose.test-age).
func StillSays(day, from, tested units.Day) error {
	switch {
	case tested > day:
		return UpTo(day, tested)
	case tested < from:
		return field.Bad(tested, fmt.Sprintf("%v or later: an event ended what was tested before", from), field.ErrConflict)
	case int(day-tested) <= TestDays:
		return nil
	}
	return field.Bad(tested, fmt.Sprintf("at most %d days before %v", TestDays, day), field.ErrConflict)
}

// AboutTwice is how many times a figure another one is from which on a slip is
// likelier than strength: twice, for per hand and total, less 5 %; pounds for
// kilograms make 2.2.
const AboutTwice = 1.9
