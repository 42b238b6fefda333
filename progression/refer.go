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

// referred returns what somebody else has to look at first: an event since the
// assessment that ends the plan, or any visit that ended so and was not looked at and
// followed by an assessment.
func (c *Course) referred() []evidence.Reason {
	if ended := c.Request.Screening.Ended; len(ended) > 0 {
		return []evidence.Reason{because("progression.plan-ended").With(evidence.ID("event", ended[0]))}
	}
	h := c.history()
	if v, why := h.Refers(); v != nil {
		code := map[bool]evidence.ReasonCode{false: "progression.referred", true: "progression.looked-at"}[v.LookedAt.Made()]
		return append(why, because(code).With(evidence.Day("day", v.Day), evidence.Text("who", v.LookedAt.Who)))
	}
	return nil
}

// refer prescribes nothing.
func (d Decision) refer(why ...evidence.Reason) Decision {
	d.because(why...)
	d.Action, d.Change, d.Next = StopAndRefer, NoChange, nil
	return d
}

// barred answers what screening, kit or setting rules out.
func (n *now) barred(d Decision, err *dose.ConstraintError) (Decision, error) {
	d.because(err.Constraint)
	d.because(err.Free...)
	switch {
	case errors.Is(err, dose.ErrNoDose) && n.c.Request.Screening.Plan == screening.SettleFirst:
		d.because(because("progression.settle-first"))
	case err.Constraint.Code == "dose.review-overdue":
		d.because(because("progression.assess-anew"))
	case errors.Is(err, dose.ErrNoDose):
		d.Action = StopAndRefer
		return d, nil
	default:
		return n.standIn(d, n.c.Request, false)
	}
	d.Action = HoldDose
	return d, nil
}

// easedRequest is that of the day, for a session that is lighter in any case.
func (n *now) easedRequest() dose.Request {
	r := n.c.Request
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
