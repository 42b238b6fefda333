package record

import (
	"example.org/posology/dose"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// Phases says where the phase of the plan may lead, as known on a day: by the days that were
// planned and done in it, what its visits said, who saw the technique in it, and
// [Given.Reached]. The review is that of the same record, on that day or for the next visit.
// A phase that begins later is taken as begun on the day. The errors are those of
// [programme.PhaseExits].
func (r Record) Phases(re Review, day units.Day, standing programme.Standing) (programme.PhaseReport, error) {
	r.Began = r.began()
	first := min(r.phaseSince(), day)
	state := programme.PhaseState{
		Phase: r.Phase, First: first, Today: day, PlanFirst: min(r.Began, day), ReviewBy: re.Screening.ReviewBy, Goal: r.Goal,
		Referral: screening.No, Standing: standing, Visits: re.said(), Reached: r.Reached,
	}
	if re.Screening.Route >= screening.AskFirst {
		state.Referral = screening.Yes
	}
	for _, v := range r.Visits {
		if v.Observer != "" && v.Day >= first && v.Day <= day {
			state.Technique = dose.Observation{Who: v.Observer, Day: v.Day}
		}
	}
	for _, p := range re.Attended.Sessions {
		if p.Day < first || p.Day > day {
			continue
		}
		state.Planned++
		if p.Missed == screening.No {
			state.Done++
		}
	}
	return programme.PhaseExits(state)
}

// phaseSince is the first day of the phase, in this plan or an earlier one.
func (r Record) phaseSince() units.Day {
	first, start := r.Began, units.Day(0)
	for _, e := range r.Entries {
		phase, began := e.Given.Phase, e.Given.Began
		if e.Plan != nil && e.Plan.Week != nil { // of several, the last is the one that was begun
			phase, start = 0, 0
			if e.Plan.Week.Phase == r.Phase {
				start = e.Plan.Week.Sessions[0].Day
			}
		}
		if phase == r.Phase && !began.IsZero() {
			first = min(first, began)
		}
	}
	if start > 0 {
		first = min(first, start)
	}
	return first
}

// said is what the gates say of each visit, the most cautious exercise first.
func (re *Review) said() []rule.LoadAdvice {
	of := map[units.Day]rule.LoadAdvice{}
	for _, item := range re.Items {
		for _, v := range item.Log {
			if report, err := visit.Gates(v); err == nil {
				of[v.Day] = max(of[v.Day], report.Advice)
			}
		}
	}
	var list []rule.LoadAdvice
	for _, day := range re.Attended.Done {
		list = append(list, of[day])
	}
	return list
}
