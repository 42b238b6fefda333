package dose

import (
	"errors"
	"fmt"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/given"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Why no dose can be given.
var (
	// ErrNotScreened: the screening outcome is the zero value, or lacks what every
	// outcome of [screening.Assess] has.
	ErrNotScreened = given.ErrNotScreened
	// ErrNoDose: screening lets nothing go on until somebody was seen.
	ErrNoDose = errors.New("dose: no exercise until the person was seen")
	// ErrTooHeavy: the lightest weight that can be held is too heavy.
	ErrTooHeavy = errors.New("dose: lightest weight is too heavy")
)

// Categories whose [ConstraintError.Constraint] says as much.
var (
	// errUnloadedOnly: screening, or a few minutes each day, let only movements without
	// weights go on.
	errUnloadedOnly = errors.New("dose: only unloaded practice may go on")
	// errSetting: screening asks for more supervision than the setting has.
	errSetting = errors.New("dose: setting has too little supervision")
	// errDemand: the exercise demands something that is to be avoided.
	errDemand = errors.New("dose: exercise demands what is to be avoided")
	// errNothingToHold: the kit has nothing to be held in this way.
	errNothingToHold = errors.New("dose: nothing in the kit can be held so")
	// errNotThere: what has to stand there for the exercise does not.
	errNotThere = errors.New("dose: what the exercise needs is not there")
)

// A ConstraintError says that no dose can be given for an exercise, which
// constraint bit, what would free it, and what to try instead.
type ConstraintError struct {
	Exercise   exercise.ID
	Constraint evidence.Reason
	Free       []evidence.Reason // what would free it, if anything can
	Instead    exercise.ID       // an easier exercise to try, if the catalogue names one
	Err        error             // [ErrNoDose], [ErrTooHeavy], or what the code of Constraint says too
}

// Error gives the category, the exercise and the values that bit.
func (e *ConstraintError) Error() string {
	e = field.OrZero(e)
	text := fmt.Sprint(e.Err)
	if e.Exercise != "" {
		text += ": " + string(e.Exercise)
	}
	for _, a := range e.Constraint.Args {
		if a.Name != "exercise" { // said already
			text += ", " + a.String()
		}
	}
	return text
}

// Unwrap returns the category.
func (e *ConstraintError) Unwrap() error { return field.OrZero(e).Err }
