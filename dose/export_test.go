package dose

import (
	"example.org/posology/dose/strength"
	"example.org/posology/units/field"
)

// Categories that a caller knows by the code of the constraint.
var (
	ErrUnloadedOnly  = errUnloadedOnly
	ErrSetting       = errSetting
	ErrDemand        = errDemand
	ErrNothingToHold = errNothingToHold
	ErrNotThere      = errNotThere
)

// Ability returns what is known of strength in the exercise, side and hold: that of
// the request, else what [Frame.Estimate] or, without one, the performed set shows.
// The zero value knows nothing.
func (f *Frame) Ability() strength.Ability { return field.OrZero(f).ability }
