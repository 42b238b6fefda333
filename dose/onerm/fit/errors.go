package fit

import (
	"errors"
	"fmt"

	"example.org/posology/units/field"
)

// ErrNoConvergence: no least sum of squares was found, or the form has no value, or no
// slope, where the search stands. It comes inside a [*field.Error], as
// [onerm.ErrNotFalling] does.
var ErrNoConvergence = errors.New("fit: no convergence")

var (
	errTooFew    = fmt.Errorf("fit: too few sets for the form: %w", field.ErrOutOfRange)
	errSingular  = fmt.Errorf("fit: the parameters cannot be told apart: %w", field.ErrConflict)
	errNotFinite = fmt.Errorf("%w: not a finite number", ErrNoConvergence)
)
