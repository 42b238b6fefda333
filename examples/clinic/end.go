package main

import (
	"errors"
	"slices"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
)

// ofEnd are whom the papers of the last day are for.
var ofEnd = []string{"client", "file", "doctor"}

// end says goodbye, by the record as it leaves it, so that the papers come again.
func end(s *session) error {
	if !ended(*s.r) {
		if err := s.close(); err != nil {
			return err
		}
	}
	r := *s.r
	r.Asked = slices.Clone(r.Asked)
	for i := range r.Asked { // as it was on the last day
		if a := &r.Asked[i]; a.Until == s.day && wasDone(r, a.Exercise) {
			a.Until = 0
		}
	}
	re, err := r.Assess(max(s.day, lastVisit(r)+1))
	if err != nil {
		return err
	}
	re = command.Told(re, s.day)
	report, err := r.Phases(re, s.day, programme.PlanStands)
	if err != nil {
		return err
	}
	return inTurn(func() error { return s.goodbye(re, report) }, s.keep)
}

// close asks what the goodbye rests on, and ends what is asked for.
func (s *session) close() error {
	_, _, err := s.lookBack(record.Record.Assess)
	if errors.Is(err, errDecided) {
		s.takeBack(s.r.Entries[len(s.r.Entries)-1])
	} else if err != nil {
		return err
	}
	for _, a := range inForce(*s.r, s.day) {
		s.drop(a.Exercise, s.day)
	}
	return s.reached()
}

// goodbye writes the papers of the last day, for the file with what the phase came to.
func (s *session) goodbye(re record.Review, report programme.PhaseReport) error {
	if s.wanted.JSON {
		return command.JSON(s.out, struct {
			Review record.Review         `json:"review"`
			Phases programme.PhaseReport `json:"phases"`
			Along  programme.Discharge   `json:"along"`
		}{re, report, programme.TakeAlong()})
	}
	all, err := papers.Discharge(*s.r, re)
	if err = errors.Join(err, s.print(s.day, func() ([]papers.Paper, error) { return all, nil })); err != nil {
		return err
	}
	client := s.wanted.Reader == "client"
	for _, p := range all {
		if client && (p.Name == "discharge" || p.Name == "glucose") || !client && p.Name == "discharge-letter" {
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
