package progression

import (
	"errors"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/strength"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// An offer is the harder variant with its first dose, if there is one.
type offer struct {
	ex    exercise.Exercise
	p     *dose.Prescription // nil: it cannot be dosed
	err   error
	there bool
}

// harderVariant looks the harder exercise up, unless it was taken away or is there already.
func (n *now) harderVariant() *offer {
	ex, ok := n.c.catalogue().Get(n.c.Request.Exercise.Harder)
	if !ok || n.c.Policy.without("harder-variant") || n.isTaken(ex.ID) {
		return &offer{}
	}
	p, err := n.first(ex, n.c.Request)
	if _, barred := errors.AsType[*dose.ConstraintError](err); barred {
		return &offer{ex: ex, there: true}
	} else if err != nil {
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

// eased is a request for a session that is lighter in any case.
func eased(r dose.Request) dose.Request {
	r.Screening.Limits = r.Screening.Limits.Join(screening.LighterSession())
	return r
}

// standIn puts the first exercise that is no harder and can be dosed in place of this one, with
// its first dose, eased with less weight too, and otherwise leaves the exercise out.
func (n *now) standIn(d Decision, r dose.Request, eased bool) (Decision, error) {
	d.Action, d.Change, d.Next = StopExercise, NoChange, nil
	for ex := range n.c.catalogue().Instead(n.c.Request.Exercise.ID) {
		if n.isTaken(ex.ID) {
			continue
		}
		p, err := n.first(ex, r)
		var barred *dose.ConstraintError
		switch {
		case errors.As(err, &barred):
			continue
		case err != nil:
			return Decision{}, err
		case eased && p.Load.Each() > 0 && p.Load.Each() >= n.seen.Base:
			continue // no less than what was too much
		case n.waits == newWaits:
			d.because(because("progression.instead-waits").With(evidence.Term("exercise", ex.Name)))
			return d, nil
		}
		return d.replace(ex, p), nil
	}
	d.because(because("progression.left-out").With(evidence.Term("exercise", n.c.Request.Exercise.Name)))
	return d, nil
}

// isTaken reports whether another exercise of the visit is it, or leads to it.
func (n *now) isTaken(id exercise.ID) bool {
	by, ok := n.taken[id]
	return ok && by != n.c.Request.Exercise.ID
}

// replace puts the first dose of another exercise in place of this one.
func (d Decision) replace(ex exercise.Exercise, p dose.Prescription) Decision {
	d.Action, d.Instead, d.Next = ChangeVariant, ex.ID, &p
	d.because(because("progression.instead").With(evidence.Term("exercise", ex.Name)))
	return d
}

// first returns the first dose of another exercise: it has to be learnt, and what
// was measured, done and seen with this one says nothing about it. It begins with
// the lightest weight; unseen, no other is looked for.
func (n *now) first(ex exercise.Exercise, r dose.Request) (dose.Prescription, error) {
	r.Bound = n.boundFor(ex, r)
	r.Exercise, r.Estimates, r.Performed, r.Done, r.Technique, r.Phase = ex, nil, nil, nil, dose.Observation{}, dose.Familiarise
	r.Ability = strength.Ability{}
	if !ex.OneSided {
		r.Side = body.Both
	}
	f, err := dose.NewFrame(r)
	if err != nil {
		return dose.Prescription{}, err
	}
	p, err := f.Prescribe()
	if err != nil || p.Mode == dose.WithoutLoad {
		return p, err
	}
	p.Load, p.Next = f.Table().Lightest(), nil
	if gap, ok := f.Table().Next(p.Load.Each()); ok {
		p.Next = &gap
	}
	return p, nil
}

// boundFor returns the most per implement of another exercise that is known to be
// allowed under a limit on the share of a maximum: no more than of this one, in each
// implement and in all. 0: none is known.
func (n *now) boundFor(ex exercise.Exercise, r dose.Request) units.Mass {
	most := r.Bound
	if n.f != nil && r.Screening.Limits.MaxFraction > 0 {
		most = max(1, n.f.Ceiling()) // 0 would be none known
	}
	all, err := r.Exercise.Hold.Total(most)
	if err != nil || most == 0 || most >= units.MaxMass {
		return 0
	}
	return max(1, min(most, all/units.Mass(max(1, ex.Hold.Implements()))))
}
