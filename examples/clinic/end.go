package main

import (
	"errors"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
)

// ofEnd are whom the papers of the last day are for.
var ofEnd = []string{"client", "file", "doctor"}

// end says goodbye: nothing is asked for from then on.
func end(s *session) error {
	re, _, err := s.lookBack(record.Record.Assess)
	if errors.Is(err, errDecided) {
		last := s.r.Entries[len(s.r.Entries)-1]
		then := s.r.AsOf(last)
		then.Function = s.r.Function // tested since, for the letter
		re, err = then.Assess(last.Day)
		s.takeBack(last)
	}
	if err != nil {
		return err
	}
	re = command.Told(re, s.day)
	reached, err := s.reached()
	if err != nil {
		return err
	}
	report, err := s.phases(re, programme.PlanStands, reached)
	if err != nil {
		return err
	}
	for _, a := range inForce(*s.r, s.day) {
		s.drop(a.Exercise, s.day)
	}
	if err := s.goodbye(re, report); err != nil {
		return err
	}
	return s.keep()
}

// goodbye writes the papers of the last day: the client's, the letter, and for the file
// the letter with what the phase came to.
func (s *session) goodbye(re record.Review, report programme.PhaseReport) error {
	if s.wanted.JSON {
		return command.JSON(s.out, struct {
			Review record.Review         `json:"review"`
			Phases programme.PhaseReport `json:"phases"`
			Along  programme.Discharge   `json:"along"`
		}{re, report, programme.TakeAlong()})
	}
	all, err := papers.Discharge(*s.r, re)
	if err == nil {
		err = s.print(s.day, func() ([]papers.Paper, error) { return all, nil })
	}
	if err != nil {
		return err
	}
	name := "discharge-letter"
	if s.wanted.Reader == "client" {
		name = "discharge"
	}
	for _, p := range all {
		if p.Name == name || p.Name == "glucose" && s.wanted.Reader == "client" {
			err = errors.Join(err, p.Text(s.out))
		}
	}
	if err != nil || s.wanted != command.ForFile {
		return err
	}
	return s.criteria(report)
}

// criteria says to the clinician whether the phase has led here.
func (s *session) criteria(report programme.PhaseReport) error {
	p, err := page.New(s.out)
	if err != nil {
		return err
	}
	p.Heading("For the file: the phase that is left")
	p.Clinicians("- ", report.Reasons[:1]) // without its dates, which are over
	for _, exit := range report.Exits {
		p.Line("To %s:", exit.Exit)
		for _, c := range exit.Criteria {
			p.Clinicians("- ", c.Reasons)
		}
	}
	return p.Close()
}
