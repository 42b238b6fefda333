package main

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/guideline"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/screening"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// begin asks who somebody is, what for, and the interview.
func begin(s *session) (err error) {
	r, need := s.r, func(key, text, hint string, needed bool) (words string) {
		if err == nil {
			words, err = s.Text(key, text, hint, needed)
		}
		return words
	}
	r.Client = need("client", "How are the papers to call this person?", "such as Client A, 67, a woman", true)
	r.Note = need("note", "Is there a note for every page, such as that the person is invented?", "a line, or nothing", false)
	r.Task = need("task", "What do they want to be able to do, in their own words?", "a line", true)
	if err != nil {
		return err
	}
	if r.Tasks, _, err = asking.SeveralOf(s.Desk, "tasks", "What does that come to, the most wanted first?", choice.Tasks()); err != nil {
		return err
	}
	if r.Goal, err = asking.OneOf(s.Desk, "goal", "What is the training for?", guideline.Goals(), true); err != nil {
		return err
	}
	if r.Profile.Sex, err = asking.OneOf(s.Desk, "sex", "Is it a woman or a man? Some limits differ.", body.Sexes(), false); err != nil {
		return err
	}
	if r.Profile.Training, err = asking.OneOf(s.Desk, "training", "How far have they come with strength training?", body.Trainings(), true); err != nil {
		return err
	}
	return s.interview()
}

// ofTheDay are the questions whose answers of another day say nothing: how somebody is,
// and what was measured.
var ofTheDay = []string{
	"signs", "symptoms", "more_signs", "blood_pressure", "blood_pressure_again", "pulse", "resting_pulse_again", "today", "hurt", "pain_kind", "pain_during", "pain_after",
	"pain_settled", "pain_trend", "febrile", "hf_worsening",
}

// ofTheHour are those that are asked again on the same day, too: sugar, ketones and oxygen
// move within hours, and count as they are right before the session; of a low the last 24
// hours are others by then.
var ofTheHour = []string{"glucose", "ketones", "oxygen_saturation", "severe_low_24h"}

// dayKey is the line of the day on which the others were answered.
const dayKey = "day"

// before is what was answered last time: what still stands, and what stands if it was on
// this day and no session came in between.
func (s *session) before() (settled, today map[string]string, err error) {
	was, err := asking.Parse("what was answered before", s.person.Interview)
	if err != nil {
		return nil, nil, err
	}
	settled, today = was.All(), map[string]string{}
	isToday := settled[dayKey] == s.day.String() && lastVisit(*s.r) < s.day
	for _, key := range ofTheDay {
		if answer := settled[key]; answer != "" && isToday {
			today[key] = answer
		}
		delete(settled, key)
	}
	for _, key := range ofTheHour {
		delete(settled, key)
	}
	delete(settled, dayKey)
	if s.day >= s.r.Profile.Day+365 {
		delete(settled, "age")
	}
	return settled, today, nil
}

// interview asks, puts the answers in the place of those from before, and tells
// what comes of them.
func (s *session) interview() error {
	before, today, err := s.before()
	if err != nil {
		return err
	}
	maps.Copy(before, today)
	talk, err := s.Interview(s.day, before, nil)
	if err != nil {
		return err
	}
	p := talk.Profile()
	if p.Age == 0 {
		return errors.New("we begin with the age: nothing is written")
	}
	p.Key, p.Sex, p.Training = s.r.Profile.Key, s.r.Profile.Sex, s.r.Profile.Training
	all := s.r.Checks // and what was told in between
	if s.unheard() != nil && talk.Trains() == screening.Yes {
		s.r.Checks = all[:len(all)-1] // what was told today stands in the assessment of today
	}
	var told []screening.Event
	for _, c := range all {
		told = append(told, c.Events...)
	}
	for _, h := range s.r.Happened {
		if e, ok := h.Event(); ok {
			told = append(told, e)
		}
	}
	for _, e := range told {
		if e.Day <= p.Day && !slices.Contains(p.Events, e) {
			p.Events = append(p.Events, e)
		}
	}
	s.r.Profile, s.person.Interview = p, written(talk, s.day)
	return s.tell(talk)
}

// check asks what is asked on the day of a session: how somebody is now, and readings.
func check(s *session) error {
	settled, today, err := s.before()
	if err != nil {
		return err
	}
	settled["today"] = "yes"
	talk, err := s.Interview(s.day, today, settled)
	if err != nil {
		return err
	}
	if talk.Trains() != screening.Yes {
		return errors.New("there was no interview yet, or it ended before the day's check: ask comes first")
	}
	s.person.Interview = written(talk, s.day)
	return s.tell(talk)
}

// tell says what comes of the assessment and, for who trains today, of the day's
// check, which it keeps.
func (s *session) tell(talk interview.Interview) error {
	o, err := s.r.Screening(s.day)
	if err != nil {
		return err
	}
	if talk.Trains() == screening.Yes {
		if n := len(s.r.Checks); n > 0 && s.r.Checks[n-1].Day == s.day {
			return fmt.Errorf("a check of %s is kept already: a record keeps one a day, and what was found holds for that day", s.day)
		}
		s.r.Checks = append(s.r.Checks, talk.Check())
		if o, err = screening.Today(talk.Check(), o); err != nil {
			return err
		}
	}
	if s.wanted.Reader == "client" {
		asking.TellClient(s.said, o)
	} else {
		asking.TellClinician(s.said, o)
	}
	return s.keep()
}

// written writes an interview as a file of answers, and of which day they are.
func written(talk interview.Interview, day units.Day) string {
	var text strings.Builder
	fmt.Fprintf(&text, "%s: %s\n", dayKey, day)
	for _, g := range talk.Given() {
		fmt.Fprintf(&text, "%s: %s\n", g.Key, asking.Written(g.Reply))
	}
	return text.String()
}
