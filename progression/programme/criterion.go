package programme

import (
	"fmt"
	"slices"

	"example.org/posology/dose/guideline"
	"example.org/posology/dose/week"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// latestVisits is how many visits in a row must neither have eased nor referred.
const latestVisits = 2

// A phaseLook is a state with the days that are counted from it.
type phaseLook struct {
	PhaseState
	plan    week.Dates
	settled units.Day // the first review of the phase itself
}

func (s PhaseState) look() (phaseLook, error) {
	phase, err := week.DatesOf(s.Phase, s.First, 0)
	if err != nil {
		return phaseLook{}, err
	}
	if s.PlanFirst.IsZero() {
		s.PlanFirst = s.First
	}
	plan, err := week.DatesOf(s.Phase, s.PlanFirst, s.ReviewBy)
	return phaseLook{s, plan, phase.Review}, field.At("/plan", err)
}

// due says the dates of the plan, and which have come.
func (l phaseLook) due() []evidence.Reason {
	dates := evidence.Because("progression.plan-dates", factTwoWeeks, factRetest, factExpiry).With(
		evidence.Day("review", l.plan.Review), evidence.Day("retest", l.plan.Retest), evidence.Day("expires", l.plan.Expires))
	return append([]evidence.Reason{dates}, Due(l.plan, l.Today)...)
}

// Due says which dates of a plan have come. A review and a re-test are due on their
// day, and a plan has expired after it; a date that is not given never comes.
func Due(plan week.Dates, today units.Day) []evidence.Reason {
	var list []evidence.Reason
	if !plan.Review.IsZero() && today >= plan.Review {
		list = append(list, evidence.Because("progression.review-due", factTwoWeeks).With(evidence.Day("review", plan.Review)))
	}
	if !plan.Retest.IsZero() && today >= plan.Retest {
		list = append(list, evidence.Because("progression.retest-due", factRetest).With(evidence.Day("retest", plan.Retest)))
	}
	if plan.Expired(today) {
		list = append(list, evidence.Because("progression.plan-expired", factExpiry).With(evidence.Day("expires", plan.Expires)))
	}
	return list
}

func (l phaseLook) exit(row exitRow) ExitAnswer {
	a := ExitAnswer{Exit: row.to, May: true}
	for _, c := range row.criteria {
		answer := l.criterion(c)
		a.Criteria = append(a.Criteria, answer)
		a.May = a.May && answer.Holds == CriterionMet
	}
	return a
}

// criterion answers one criterion; for a value that is no criterion it says "not known".
func (l phaseLook) criterion(c Criterion) CriterionAnswer {
	h, why := CriterionNotKnown, evidence.Reason{}
	switch c {
	case criterionHappened:
		h, why = l.happened()
	case criterionReferral:
		h, why = l.referral()
	case criterionPlan:
		h, why = l.inForce()
	case criterionTime:
		h, why = l.lasted()
	case criterionSessions:
		h, why = l.sessions()
	case criterionTechnique:
		h, why = l.technique()
	case criterionVisits:
		h, why = l.visits()
	case criterionPower:
		h, why = l.power()
	case criterionGoal:
		h, why = l.goal()
	}
	return CriterionAnswer{c, h, []evidence.Reason{why.With(evidence.Term("holds", h.String()))}}
}

// said is the text of a value, "not known" for one that is not given.
func said(v fmt.Stringer) string {
	if text := v.String(); text != "" {
		return text
	}
	return CriterionNotKnown.String()
}

// metIf is Met or NotMet.
func metIf(met bool) CriterionState {
	if met {
		return CriterionMet
	}
	return CriterionNotMet
}

// answered is CriterionMet for the good answer, CriterionNotKnown for unknown, else CriterionNotMet.
func answered(a, good screening.Answer) CriterionState {
	if a == screening.Unknown {
		return CriterionNotKnown
	}
	return metIf(a == good)
}

func (l phaseLook) happened() (CriterionState, evidence.Reason) {
	why := evidence.Because("progression.exit-happened", factExits, factHappenings).With(evidence.Term("standing", said(l.Standing)))
	switch l.Standing {
	case 0, AskWhatHappened:
		return CriterionNotKnown, why
	}
	return metIf(l.Standing == PlanStands), why
}

func (l phaseLook) referral() (CriterionState, evidence.Reason) {
	return answered(l.Referral, screening.No), evidence.Because("progression.exit-referral", factExits).With(evidence.Term("referral", l.Referral.String()))
}

func (l phaseLook) inForce() (CriterionState, evidence.Reason) {
	return metIf(l.Today <= l.plan.Expires), evidence.Because("progression.exit-plan", factExits, factExpiry).With(evidence.Day("expires", l.plan.Expires))
}

func (l phaseLook) lasted() (CriterionState, evidence.Reason) {
	why := evidence.Because("progression.exit-time", factExitTime, factTwoWeeks).With(evidence.Day("since", l.First), evidence.Day("settled", l.settled))
	return metIf(l.Today >= l.settled), why
}

func (l phaseLook) sessions() (CriterionState, evidence.Reason) {
	why := evidence.Because("progression.exit-sessions", factExitSessions).With(
		evidence.Count("done", l.Done), evidence.Count("planned", l.Planned), evidence.Count("least", fewPlanned), evidence.Share("full", fullShare))
	if l.Planned < fewPlanned {
		return CriterionNotKnown, why
	}
	return metIf(nearlyAll(l.Done, l.Planned)), why
}

// technique counts only if it was seen since the phase began.
func (l phaseLook) technique() (CriterionState, evidence.Reason) {
	if !l.Technique.Made() || l.Technique.Day < l.First {
		return CriterionNotKnown, evidence.Because("progression.exit-technique-not-seen", factExitTechnique)
	}
	return CriterionMet, evidence.Because("progression.exit-technique", factExitTechnique).With(evidence.Text("who", l.Technique.Who), evidence.Day("day", l.Technique.Day))
}

// visits takes a visit that is missing from the list for one not recorded.
func (l phaseLook) visits() (CriterionState, evidence.Reason) {
	latest := slices.Concat(make([]rule.LoadAdvice, latestVisits), l.Visits)[len(l.Visits):]
	texts := make([]string, len(latest))
	for i, a := range latest {
		texts[i] = said(a)
	}
	why := evidence.Because("progression.exit-visits", factExitVisits).With(evidence.Count("visits", latestVisits), evidence.Terms("said", texts...))
	switch {
	case slices.Max(latest) >= rule.Ease:
		return CriterionNotMet, why
	case slices.Contains(latest, 0):
		return CriterionNotKnown, why
	}
	return CriterionMet, why
}

func (l phaseLook) power() (CriterionState, evidence.Reason) {
	why := evidence.Because("progression.exit-power", factExits).With(evidence.Term("goal", said(l.Goal)))
	if l.Goal == 0 {
		return CriterionNotKnown, why
	}
	return metIf(l.Goal == guideline.Power), why
}

func (l phaseLook) goal() (CriterionState, evidence.Reason) {
	return answered(l.Reached, screening.Yes), evidence.Because("progression.exit-goal", factExits).With(evidence.Term("reached", l.Reached.String()))
}
