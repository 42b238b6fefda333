package main

import (
	"errors"
	"fmt"
	"os"

	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// logDiary logs the days of a diary that was typed in, of the exercises that were decided
// on last, and asks what a diary does not say of a pain.
func (s *session) logDiary() error {
	from, v, err := s.decided()
	if err != nil {
		return err
	}
	file, err := os.Open(s.diary)
	if err != nil {
		return err
	}
	defer file.Close()
	sets, days, err := v.ReadDiary(file)
	if err != nil {
		return fmt.Errorf("%s:\n%w", s.diary, err)
	}
	for _, d := range days {
		if d.Day < from || d.Day > s.day || d.Day <= lastVisit(*s.r) {
			return fmt.Errorf("%s: %s is no day of this sheet: it is for days from %s to %s that were not logged yet", s.diary, d.Day, max(from, lastVisit(*s.r)+1), s.day)
		}
		if d.Pain != nil {
			if err := s.ofPain(d.Pain, d.Day); err != nil {
				return err
			}
		}
	}
	if len(sets) == 0 {
		return errNothing
	}
	s.r.Done, s.r.Visits = append(s.r.Done, sets...), append(s.r.Visits, days...)
	return s.logged()
}

// decided is the day from which the last decision holds, and what its papers are made of.
func (s *session) decided() (units.Day, papers.Visit, error) {
	if len(s.r.Entries) == 0 {
		return 0, papers.Visit{}, errors.New("nothing was decided yet, so that there is no diary: visit comes first")
	}
	last := s.r.Entries[len(s.r.Entries)-1]
	if last.Plan != nil {
		return s.r.Began, papers.OfPlan(*last.Plan), nil
	}
	re, err := command.Kept(*s.r, last)
	if err != nil {
		return last.Day, papers.Visit{}, err
	}
	also, err := s.also(last)
	return last.Day, papers.OfReview(re, also...), err
}

// ofPain asks what a pain was and where.
func (s *session) ofPain(pain *screening.Pain, day units.Day) (err error) {
	if pain.Kind, err = asking.OneOf(s.Desk, "pain_kind", "Of which kind was the pain of "+day.String()+"?", screening.PainKinds(), false); err != nil {
		return err
	}
	pain.Site, err = asking.OneOf(s.Desk, "pain_site", "Where?", body.Regions(), false)
	return err
}
