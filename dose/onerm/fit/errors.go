package fit

import "errors"

// Why a curve was refused. Each comes inside a [*field.Error], as
// [onerm.ErrNotFalling] does.
var (
	// ErrTooFew: fewer sets, or fewer different repetition counts, than the form
	// has parameters.
	ErrTooFew = errors.New("fit: too few sets for the form")
	// ErrSingular: the sets do not tell the parameters apart.
	ErrSingular = errors.New("fit: the parameters cannot be told apart")
	// ErrNoConvergence: no least sum of squares was found.
	ErrNoConvergence = errors.New("fit: no convergence")
	// ErrNotFinite: the form has no value, or no slope, where the search stands.
	ErrNotFinite = errors.New("fit: not a finite number")
)
