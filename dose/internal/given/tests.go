package given

import (
	"fmt"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// TestDays is for how long a test of strength is used.
const TestDays = 84

// Outdated reports whether what was tested on a day says nothing of the day
// decided on, and why: it is of after it, of before the first day whose tests say
// something, or too old.
func Outdated(day, from, tested units.Day) (evidence.Reason, bool) {
	switch {
	case tested > day:
		return evidence.Because("dose.test-later", "dose.test-age").With(evidence.Day("tested", tested), evidence.Day("day", day)), true
	case tested < from:
		return evidence.Because("dose.test-before-event", "dose.test-age").With(evidence.Day("tested", tested), evidence.Day("from", from)), true
	case int(day-tested) > TestDays:
		return evidence.Because("dose.test-old", "dose.test-age").With(evidence.Day("tested", tested), evidence.Days("most", TestDays), evidence.Day("day", day)), true
	}
	return evidence.Reason{}, false
}

// StillSays refuses a test of strength, or a set that was done, that says nothing of the
// day decided on, with an [field.ErrConflict]: it is of after that day, of before from,
// the first day whose tests say something, or older than twelve weeks (dose.test-age).
func StillSays(day, from, tested units.Day) error {
	if _, out := Outdated(day, from, tested); !out {
		return nil
	}
	switch {
	case tested > day:
		return UpTo(day, tested)
	case tested < from:
		return field.Bad(tested, fmt.Sprintf("%v or later: an event ended what was tested before", from), field.ErrConflict)
	}
	return field.Bad(tested, fmt.Sprintf("at most %d days before %v", TestDays, day), field.ErrConflict)
}
