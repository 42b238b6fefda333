package dose

// Categories that a caller knows by the code of the constraint.
var (
	ErrUnloadedOnly  = errUnloadedOnly
	ErrSetting       = errSetting
	ErrDemand        = errDemand
	ErrNothingToHold = errNothingToHold
	ErrNotThere      = errNotThere
)
