package dose

import (
	"fmt"

	"example.org/posology/screening"
	"example.org/posology/units"
)

// checkDay refuses a day that is not given, and an outcome from after it: of a
// slip of a year nobody would hear otherwise.
func checkDay(day units.Day, o screening.Outcome) error {
	if err := day.Check(); err != nil {
		return units.At("/day", err)
	}
	var bad units.FieldErrors
	bad.Add("/screening/day", upTo(day, o.Day))
	bad.Add("/screening/today", upTo(day, o.Today))
	return bad.Err()
}

// upTo refuses a day after the one decided on; one that is not given passes.
func upTo(day, d units.Day) error {
	if d <= day {
		return nil
	}
	return units.Field("", d, fmt.Sprintf("%v, the day decided on, or before", day), units.ErrConflict)
}

// stillSays refuses a test of strength, or a set that was done, that says
// nothing of the day decided on: one from after it, from before an event that
// ends estimates, or too old.
func (r Request) stillSays(tested units.Day) error {
	switch {
	case tested > r.Day:
		return upTo(r.Day, tested)
	case tested < r.Screening.TestsFrom:
		return units.Field("", tested, fmt.Sprintf("%v or later: an event ended what was tested before", r.Screening.TestsFrom), units.ErrConflict)
	case int(r.Day-tested) > testDays:
		return units.Field("", tested, fmt.Sprintf("at most %d days before %v", testDays, r.Day), units.ErrConflict)
	}
	return nil
}
