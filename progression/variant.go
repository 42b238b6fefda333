package progression

import (
	"errors"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/units/evidence"
)

// An offer is the harder variant with its first dose, if there is one.
type offer struct {
	ex    exercise.Exercise
	p     *dose.Prescription // nil: it cannot be dosed
	err   error
	there bool
}

// variant is the harder variant, looked at once and only if it comes to that.
func (n *now) variant() *offer {
	if *n.offered == nil {
		*n.offered = n.harderVariant()
	}
	return *n.offered
}

// harderVariant looks the harder exercise up, unless it was taken away or is there already.
func (n *now) harderVariant() *offer {
	ex, ok := n.c.catalogue().Get(n.c.Request.Exercise.Harder)
	if !ok || n.c.Policy.without("harder-variant") || n.isTaken(ex.ID) {
		return &offer{}
	}
	p, err := n.first(ex, n.c.Request)
	var barred *dose.ConstraintError
	switch {
	case errors.As(err, &barred):
		return &offer{ex: ex, there: true}
	case err != nil:
		return &offer{err: err}
	}
	return &offer{ex: ex, p: &p, there: true}
}

// variantOffered reports whether there is one that can be dosed, or that bad input
// keeps from being looked at.
func (n *now) variantOffered() bool { o := n.variant(); return o.p != nil || o.err != nil }

// weightFollows reports whether what has none leads to a weight, or back to it.
func (n *now) weightFollows() bool {
	return n.step.Load == 0 && n.variant().p != nil && n.variant().p.Load.Each() > 0
}

func (n *now) variantWaits() bool { return n.waits == newWaits && n.variant().p != nil }

func (n *now) waitForVariant() choice {
	return n.stay(because("progression.variant-waits").With(evidence.Term("exercise", n.variant().ex.Name)))
}

func (n *now) takeVariant() choice { return choice{new: n.variant()} }

// noVariant says that a harder variant cannot be dosed, where there is one.
func (n *now) noVariant() []evidence.Reason {
	if o := n.variant(); o.there && o.p == nil {
		return []evidence.Reason{because("progression.no-variant").With(evidence.Term("exercise", o.ex.Name))}
	}
	return nil
}
