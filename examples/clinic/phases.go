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
	first := since(r)
	state := programme.PhaseState{
		Phase: r.Phase, First: first, Today: s.day, PlanFirst: min(r.Began, s.day), ReviewBy: re.Screening.ReviewBy, Goal: r.Goal,
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

// since is the first day of the phase, in this plan or an earlier one.
func since(r record.Record) units.Day {
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

// phaseStays says which criteria keep the next phase from beginning.
func (s *session) phaseStays(report programme.PhaseReport) error {
	words, err := record.Words()
	if err != nil {
		return err
	}
	text := fmt.Sprintf("The phase %s goes on.", s.r.Phase)
	for _, exit := range report.Exits {
		if _, leads := exit.Exit.Phase(); !leads || exit.May {
			continue
		}
		text += fmt.Sprintf(" To %s:", exit.Exit)
		for _, c := range exit.Criteria {
			for _, why := range c.Reasons {
				if c.Holds != programme.CriterionMet {
					text += " " + words.Clinician(why)
				}
			}
		}
	}
	fmt.Fprintln(s.said)
	page.Wrap(s.said, "", text)
	return nil
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
