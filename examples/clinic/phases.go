package main

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// reached asks whether the goal is reached, where a phase has one.
func (s *session) reached() (screening.Answer, error) {
	if s.r.Phase <= dose.Familiarise {
		return screening.Unknown, nil
	}
	return s.YesNo("reached", fmt.Sprintf("Can they do what they wanted (%s)?", page.Quoted(s.r.Task)))
}

// phases says where the phase may lead.
func (s *session) phases(re record.Review, standing programme.Standing, reached screening.Answer) (programme.PhaseReport, error) {
	r := *s.r
	first := r.Began
	for _, e := range r.Entries { // an earlier plan of the same phase
		if e.Given.Phase == r.Phase && !e.Given.Began.IsZero() {
			first = min(first, e.Given.Began)
		}
	}
	state := programme.PhaseState{
		Phase: r.Phase, First: first, Today: s.day, PlanFirst: r.Began, ReviewBy: re.Screening.ReviewBy, Goal: r.Goal,
		Referral: screening.No, Standing: standing, Visits: said(re), Reached: reached,
	}
	if re.Screening.Route >= screening.AskFirst {
		state.Referral = screening.Yes
	}
	for _, v := range r.Visits {
		if v.Observer != "" && v.Day >= first {
			state.Technique = dose.Observation{Who: v.Observer, Day: v.Day}
		}
	}
	for _, p := range re.Attended.Sessions {
		if p.Day < first || p.Day > s.day {
			continue
		}
		state.Planned++
		if p.Missed == screening.No {
			state.Done++
		}
	}
	return programme.PhaseExits(state)
}

// said is what the gates say of each visit, the most cautious exercise first.
func said(re record.Review) []rule.LoadAdvice {
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

// choices are the phases that may begin.
func choices(r programme.PhaseReport) []dose.Phase {
	var list []dose.Phase
	for _, exit := range r.Open {
		if phase, ok := exit.Phase(); ok {
			list = append(list, phase)
		}
	}
	return list
}
