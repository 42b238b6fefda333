package dose

import (
	"errors"
	"fmt"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// checkScreened refuses an outcome that lacks what [screening.Assess] gives.
func checkScreened(o screening.Outcome) error {
	if o.Route == 0 && o.Meanwhile == 0 {
		return &field.Error{Path: "/screening", Allowed: "the outcome of Assess, or of Waived", Err: ErrNotScreened}
	}
	var bad field.Errors
	bad.Add("/screening", o.Validate())
	for _, f := range bad {
		if errors.Is(f, field.ErrMissing) {
			f.Err = ErrNotScreened
		}
	}
	if o.Who.Training == 0 {
		bad.Add("/screening/who/training", o.Who.Training.Check())
	}
	return bad.Err()
}

// checkDay refuses a day that is not given, an outcome from after it, and one of
// another day's check: of a slip of a year nobody would hear otherwise.
func checkDay(day units.Day, o screening.Outcome) error {
	if err := day.Check(); err != nil {
		return field.At("/day", err)
	}
	var bad field.Errors
	bad.Add("/screening/day", upTo(day, o.Day))
	if o.Today != 0 && o.Today != day {
		bad.Add("/screening/today", field.Bad(o.Today, day.String()+", the day decided on; check again on that day", field.ErrConflict))
	}
	return bad.Err()
}

// upTo refuses a day after the one decided on; one that is not given passes.
func upTo(day, d units.Day) error {
	if d <= day {
		return nil
	}
	return field.Bad(d, fmt.Sprintf("%v, the day decided on, or before", day), field.ErrConflict)
}

// outdated reports whether what was tested on a day says nothing of the day
// decided on, and why: it is of after it, of before the first day whose tests say
// something, or too old.
func outdated(day, from, tested units.Day) (evidence.Reason, bool) {
	switch {
	case tested > day:
		return evidence.Because("dose.test-later", factTestAge).With(evidence.Day("tested", tested), evidence.Day("day", day)), true
	case tested < from:
		return evidence.Because("dose.test-before-event", factTestAge).With(evidence.Day("tested", tested), evidence.Day("from", from)), true
	case int(day-tested) > testDays:
		return evidence.Because("dose.test-old", factTestAge).With(evidence.Day("tested", tested), evidence.Days("most", testDays), evidence.Day("day", day)), true
	}
	return evidence.Reason{}, false
}

// stillSays refuses a test of strength, or a set that was done, that is outdated.
func (r *Request) stillSays(tested units.Day) error {
	from := r.Screening.TestsFrom
	if _, out := outdated(r.Day, from, tested); !out {
		return nil
	}
	switch {
	case tested > r.Day:
		return upTo(r.Day, tested)
	case tested < from:
		return field.Bad(tested, fmt.Sprintf("%v or later: an event ended what was tested before", from), field.ErrConflict)
	}
	return field.Bad(tested, fmt.Sprintf("at most %d days before %v", testDays, r.Day), field.ErrConflict)
}
