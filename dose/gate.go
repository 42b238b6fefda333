package dose

import (
	"slices"

	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// gate returns the constraint of screening that bars the exercise altogether,
// nil if none does. Who has to be seen hears that before anything that is overdue.
func gate(r *Request) error {
	switch o := r.Screening; {
	case o.Route >= screening.SameDay:
		return r.barred(ErrNoDose, outcomeReason("dose.no-dose", o), evidence.Because("dose.free-by-being-seen"))
	case r.Day > o.ReviewBy:
		why := evidence.Because("dose.review-overdue", factReviewed).With(evidence.Day("review", o.ReviewBy), evidence.Day("day", r.Day))
		return r.barred(ErrNoDose, why, evidence.Because("dose.free-by-assessment"))
	case o.Meanwhile == screening.Nothing:
		return r.barred(ErrNoDose, outcomeReason("dose.no-dose-yet", o), evidence.Because("dose.free-by-answer"))
	case o.Meanwhile == screening.UnloadedPractice && loaded(r):
		return r.barred(ErrUnloadedOnly, outcomeReason("dose.unloaded-only", o), evidence.Because("dose.free-by-answer"))
	case r.Screening.Setting < o.Limits.LeastSetting && loaded(r):
		why := evidence.Because("dose.setting").With(evidence.Term("setting", r.Screening.Setting.String()), evidence.Term("least", o.Limits.LeastSetting.String()))
		return r.barred(ErrSetting, why, evidence.Because("dose.free-by-setting").With(evidence.Term("least", o.Limits.LeastSetting.String())))
	}
	if r.barsBrief() {
		return r.barred(ErrUnloadedOnly, evidence.Because("dose.brief-unloaded", factBrief), evidence.Because("dose.free-by-sessions"))
	}
	if clash := clashes(r); clash != 0 {
		return r.barred(ErrDemand, evidence.Because("dose.demand").With(evidence.Term("demands", clash.String())), evidence.Because("dose.free-by-variant"))
	}
	return nil
}

func loaded(r *Request) bool { return r.Exercise.Hold != body.Unloaded }

// outcomeReason gives the route and the gravest finding, by which the reader
// can trace why.
func outcomeReason(code evidence.ReasonCode, o screening.Outcome) evidence.Reason {
	why := evidence.Because(code).With(evidence.Term("route", o.Route.String()), evidence.Term("meanwhile", o.Meanwhile.String()))
	if len(o.Findings) == 0 {
		return why.With(evidence.Term("finding", "none"))
	}
	return why.With(evidence.ID("finding", o.Findings[0].Reason.Code))
}

func (r *Request) barred(category error, why evidence.Reason, free ...evidence.Reason) error {
	why = why.With(evidence.ID("exercise", r.Exercise.ID))
	return &ConstraintError{Exercise: r.Exercise.ID, Constraint: why, Free: free, Instead: r.Exercise.Easier, Err: category}
}

// straining is what unloaded practice leaves out: it is at everyday effort.
var straining = body.DemandSet(body.AbdominalPressure)

// clashes returns what the exercise demands and the limits rule out. Where support
// is needed, a free hand serves; without one a chair behind or somebody beside does, but
// not on one leg.
func clashes(r *Request) body.Demands {
	limits := r.Screening.Limits
	avoid := limits.Avoid
	if r.Screening.Meanwhile == screening.UnloadedPractice {
		avoid = avoid.Union(straining)
	}
	if limits.LowImpact {
		avoid = avoid.Union(body.DemandSet(body.Impact))
	}
	if r.chairCounts() {
		avoid &^= body.DemandSet(body.FreeStanding)
	}
	if limits.Support && !handFree(r.Exercise.Hold) {
		avoid = avoid.Union(body.DemandSet(body.SingleLegStance))
		if !r.Exercise.Seat && r.Screening.Setting < screening.WithHelper {
			avoid = avoid.Union(body.DemandSet(body.FreeStanding))
		}
	}
	return r.Exercise.Demands.Both(avoid.Union(bodyOnArms(r)))
}

// steadied are findings of people who may fall and do not faint: alone, a chair behind
// serves them.
var steadied = []screening.Code{"falls_risk", "frailty", "frailty_dose"}

// chairCounts reports whether standing alone is ruled out for nothing but such findings,
// and the exercise has a chair behind.
func (r *Request) chairCounts() bool {
	if !r.Exercise.Seat {
		return false
	}
	some := false
	for _, f := range r.Screening.Findings {
		if !f.Limits.Avoid.Has(body.FreeStanding) {
			continue
		}
		if !slices.Contains(steadied, f.Code) {
			return false
		}
		some = true
	}
	return some
}

// bodyOnArms returns the arm work that a limit on mass rules out for exercises
// without a weight: there the arms carry a share of the body that nobody weighed.
func bodyOnArms(r *Request) body.Demands {
	var ruledOut body.Demands
	for _, limit := range r.Screening.Limits.Masses {
		if demand, some := limit.Region.Resisted(); some && !loaded(r) && ofArm(limit.Region) && binds(limit, r) {
			ruledOut = ruledOut.Union(body.DemandSet(demand))
		}
	}
	return ruledOut
}

func handFree(h body.Hold) bool { return h == body.OneHand || h == body.OnLimb || h == body.Unloaded }

// binds reports whether the limit is on work that the exercise does.
func binds(limit screening.MassLimit, r *Request) bool {
	otherSide := r.Exercise.OneSided && r.Side != body.Both && limit.Side != body.Both && limit.Side != r.Side
	if otherSide {
		return false
	}
	demand, some := limit.Region.Resisted()
	return !some || r.Exercise.Demands.Has(demand)
}

func ofArm(region body.Region) bool {
	return region == body.Shoulder || region == body.Elbow || region == body.WristHand
}
