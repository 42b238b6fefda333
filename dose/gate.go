package dose

import (
	"example.org/posology/dose/internal/demand"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// gate returns the constraint of screening that bars the exercise altogether,
// nil if none does. Who has to be seen hears that before anything that is overdue.
func gate(r *Request) error {
	switch o := &r.Screening; {
	case o.Route >= screening.SameDay:
		return r.barred(ErrNoDose, outcomeReason("dose.no-dose", o), evidence.Because("dose.free-by-being-seen"))
	case r.Day > o.ReviewBy:
		why := evidence.Because("dose.review-overdue", factReviewed).With(evidence.Day("review", o.ReviewBy), evidence.Day("day", r.Day))
		return r.barred(ErrNoDose, why, evidence.Because("dose.free-by-assessment"))
	case o.Meanwhile == screening.Nothing:
		return r.barred(ErrNoDose, outcomeReason("dose.no-dose-yet", o), evidence.Because("dose.free-by-answer"))
	case o.Meanwhile == screening.UnloadedPractice && loaded(r):
		return r.barred(errUnloadedOnly, outcomeReason("dose.unloaded-only", o), evidence.Because("dose.free-by-answer"))
	case r.Screening.Setting < o.Limits.LeastSetting && loaded(r):
		why := evidence.Because("dose.setting").With(evidence.Term("setting", r.Screening.Setting.String()), evidence.Term("least", o.Limits.LeastSetting.String()))
		return r.barred(errSetting, why, evidence.Because("dose.free-by-setting").With(evidence.Term("least", o.Limits.LeastSetting.String())))
	}
	if r.barsBrief() {
		return r.barred(errUnloadedOnly, evidence.Because("dose.brief-unloaded", factBrief), evidence.Because("dose.free-by-sessions"))
	}
	if clash := demand.Clashes(&r.Screening, &r.Exercise, r.Side); clash != 0 {
		return r.barred(errDemand, evidence.Because("dose.demand").With(evidence.Term("demands", clash.String())), evidence.Because("dose.free-by-variant"))
	}
	return nil
}

func loaded(r *Request) bool { return r.Exercise.Hold != body.Unloaded }

// outcomeReason gives the route and the gravest finding, by which the reader
// can trace why.
func outcomeReason(code evidence.ReasonCode, o *screening.Outcome) evidence.Reason {
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
