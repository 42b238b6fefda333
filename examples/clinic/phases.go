package main

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
)

// reached asks whether the goal is reached, where a phase has one.
func (s *session) reached() (err error) {
	if s.r.Reached = screening.Unknown; s.r.Phase > dose.Familiarise {
		s.r.Reached, err = s.YesNo("reached", fmt.Sprintf("Can they do what they wanted (%s)?", page.Quoted(s.r.Task)))
	}
	return err
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
