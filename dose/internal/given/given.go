package given

import (
	"errors"
	"fmt"
	"strconv"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// ErrNotScreened is that of package dose.
var ErrNotScreened = errors.New("dose: not screened")

// Week is so many days.
const Week = 7

// At is the path of an element of a list.
func At(list string, i int) string { return list + "/" + strconv.Itoa(i) }

// Screened refuses an outcome that lacks what [screening.Assess] gives.
func Screened(o *screening.Outcome) error {
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

// Day refuses a day that is not given, an outcome from after it, and one of
// another day's check: of a slip of a year nobody would hear otherwise.
func Day(day units.Day, o *screening.Outcome) error {
	if err := day.Check(); err != nil {
		return field.At("/day", err)
	}
	var bad field.Errors
	bad.Add("/screening/day", UpTo(day, o.Day))
	if o.Today != 0 && o.Today != day {
		bad.Add("/screening/today", field.Bad(o.Today, day.String()+", the day decided on; check again on that day", field.ErrConflict))
	}
	return bad.Err()
}

// UpTo refuses a day after the one decided on; one that is not given passes.
func UpTo(day, d units.Day) error {
	if d <= day {
		return nil
	}
	return field.Bad(d, fmt.Sprintf("%v, the day decided on, or before", day), field.ErrConflict)
}

// Older is the age from which the rows for older adults are chosen.
const Older body.Age = 50

var (
	youngChosen = []evidence.FactID{"dose.older-from", "dose.row-by-training"}
	aimChosen   = []evidence.FactID{"dose.older-from", "dose.row-by-goal"}
)

// RowFacts name how the row that a goal leads to is chosen.
func RowFacts(age body.Age) []evidence.FactID {
	if age < Older {
		return youngChosen
	}
	return aimChosen
}
