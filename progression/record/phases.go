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
// A phase that begins later is taken as begun on the day, and what was in another phase in
// between does not count. The errors are those of [Record.Validate] and [programme.PhaseExits].
func (r Record) Phases(re Review, day units.Day, standing programme.Standing) (programme.PhaseReport, error) {
	l, err := r.read()
	if err != nil {
		return programme.PhaseReport{}, err
	}
	r.Began = r.began()
	first := min(r.phaseSince(), day)
	state := programme.PhaseState{
		Phase: r.phase(nil), First: first, Today: day, PlanFirst: min(r.Began, day), ReviewBy: re.Screening.ReviewBy, Goal: r.Goal,
		Referral: screening.No, Standing: standing, Visits: r.said(l), Reached: r.Reached,
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

// phaseSince is the first day of the phase: in this plan, or an earlier one where no other
// phase lies between.
func (r Record) phaseSince() units.Day {
	first := units.Day(0)
	for _, e := range r.Entries {
		phase, began := e.begun()
		switch {
		case phase != r.phase(nil):
			first = 0
		case e.Plan != nil || first == 0: // of several plans, the last is the one that was begun
			first = began
		case began > 0:
			first = min(first, began)
		}
	}
	if first == 0 {
		return r.Began
	}
	return min(first, r.Began)
}

// begun is the phase that an entry is for, and its first day, 0 where it has none.
func (e Entry) begun() (dose.Phase, units.Day) {
	switch {
	case e.Plan == nil:
		return Record{Given: e.Given}.phase(nil), e.Given.Began
	case e.Plan.Week == nil || len(e.Plan.Week.Sessions) == 0:
		return 0, 0
	}
	return e.Plan.Week.Phase, e.Plan.Week.Sessions[0].Day
}

// said is what the gates say of each visit, the most cautious exercise first; of what was
// dropped since, too.
func (r Record) said(l log) []rule.LoadAdvice {
	of := map[units.Day]rule.LoadAdvice{}
	for _, ex := range l.logged {
		for _, v := range ex.visits {
			if report, err := visit.Gates(v); err == nil {
				of[v.Day] = max(of[v.Day], report.Advice)
			}
		}
	}
	var list []rule.LoadAdvice
	for _, v := range r.Visits {
		list = append(list, of[v.Day])
	}
	return list
}
