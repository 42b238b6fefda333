package main

import (
	"errors"
	"fmt"
	"io"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/units"
)

// end says goodbye: nothing is asked for from then on.
func end(s *session) error {
	re, _, err := s.lookBack()
	if errors.Is(err, errDecided) {
		last := s.r.Entries[len(s.r.Entries)-1]
		re, err = s.r.AsOf(last).Assess(last.Day)
	}
	if err != nil {
		return err
	}
	reached, err := s.reached()
	if err != nil {
		return err
	}
	report, err := s.phases(re, programme.PlanStands, reached)
	if err != nil {
		return err
	}
	for _, a := range inForce(*s.r, re.Next) {
		s.drop(a.Exercise, s.day)
	}
	if s.wanted.JSON {
		if err := command.JSON(s.out, programme.TakeAlong()); err != nil {
			return err
		}
		return s.keep()
	}
	if err := goodbye(s.out, *s.r, s.day); err != nil {
		return err
	}
	if err := s.criteria(report); err != nil {
		return err
	}
	return s.keep()
}

// criteria says to the clinician whether the phase has led here.
func (s *session) criteria(report programme.PhaseReport) error {
	p, err := page.New(s.said)
	if err != nil {
		return err
	}
	p.Heading("For the file: the phase that is left")
	p.Clinicians("- ", report.Reasons)
	for _, exit := range report.Exits {
		for _, c := range exit.Criteria {
			p.Clinicians("- ", c.Reasons)
		}
	}
	return p.Close()
}

// goodbye is the paper that a person takes along.
func goodbye(w io.Writer, r record.Record, day units.Day) error {
	p, err := page.New(w)
	if err != nil {
		return err
	}
	p.Line("FOR YOU, TO TAKE ALONG")
	p.Line("%s", page.Day(day))
	p.Note(r.Note)
	p.Task("What you wanted to be able to do, in your own words", r.Task, r.Tasks)
	p.Heading("What you did")
	p.Say("", fmt.Sprintf("You have trained on %d days, from %s to %s.", len(r.Visits), page.Day(r.Visits[0].Day), page.Day(lastVisit(r))))
	catalogue, err := r.Catalogue()
	if err != nil {
		return err
	}
	for _, a := range last(r) {
		ex, err := catalogue.Lookup(string(a.Exercise))
		if err != nil {
			return err
		}
		p.Say("- ", ex.Name+": "+fromTo(firstOf(r, a.Exercise), a, ex)+".")
	}
	p.Heading("How to go on")
	p.Clients("- ", programme.TakeAlong().Reasons)
	p.Para(page.NoDevice)
	return p.Close()
}

// last is what was asked for at the end, but for what was paused then.
func last(r record.Record) []record.Asked {
	until, held := units.Day(0), paused(r)
	for _, a := range r.Asked {
		until = max(until, a.Until)
	}
	return slices.DeleteFunc(inForce(r, until), func(a record.Asked) bool { return held[a.Exercise] })
}

func firstOf(r record.Record, id exercise.ID) record.Asked {
	for _, a := range r.Asked {
		if a.Exercise == id {
			return a
		}
	}
	return record.Asked{}
}

// fromTo says what was asked for first and last.
func fromTo(a, b record.Asked, ex exercise.Exercise) string {
	if a.From == b.From {
		return amount(b, ex)
	}
	return "at first " + amount(a, ex) + ", now " + amount(b, ex)
}
