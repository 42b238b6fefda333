package main

import (
	"errors"
	"fmt"
	"reflect"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
)

// change asks for what holds otherwise from now on: weights, minutes, the goal, what the
// person weighs, and an exercise that ends or begins. Nothing leaves a thing as it is. Who
// has trained is decided on again.
func change(s *session) error {
	if s.stand() != "" {
		return errors.New(s.due())
	}
	before := s.r.Given
	if err := inTurn(func() error { return s.kit("Which weights are there now? Nothing: as before.", false) }, s.minutes, s.goal, s.weighed); err != nil {
		return err
	}
	if len(s.r.Visits) == 0 {
		return s.changeUnbegun(before)
	}
	there, _ := s.r.AskedOn(ever)
	var list []named
	for _, a := range there {
		list = append(list, named(a.Exercise))
	}
	ends, _, err := asking.SeveralOf(s.Desk, "ends", "Which exercises end, if any?", slices.Values(list))
	if err != nil {
		return err
	}
	if len(ends) == len(list) {
		return errors.New("all exercises are not to end: end is the goodbye")
	}
	for _, one := range ends {
		s.ends = append(s.ends, exercise.ID(one))
	}
	begins, err := s.wished()
	switch {
	case err != nil:
		return err
	case len(s.ends) == 0 && begins == "" && !changed(before, s.r.Given):
		return s.keep()
	}
	s.changes = true
	return s.decide(func(re record.Review) error {
		if begins == "" {
			return nil
		}
		last, who, err := s.hadBefore(begins)
		if err != nil {
			return err
		}
		return s.beginAnew(re, begins, last, who)
	})
}

// changeUnbegun keeps what was changed before anybody has trained: the plan is made anew.
func (s *session) changeUnbegun(before record.Given) error {
	if err := s.exercises("Which exercises are wanted by name now? Nothing: as before.", `their names with commas between them, or "none": they are chosen for the task`); err != nil {
		return err
	}
	if changed(before, s.r.Given) {
		s.r.Asked = nil // of a week that has begun without a visit
	}
	return inTurn(s.keep, func() error { fmt.Fprintln(s.said, s.due()); return nil })
}

// changed reports whether what a decision rests on was told otherwise since.
func changed(was, is record.Given) bool {
	return !reflect.DeepEqual(was.Profile, is.Profile) || !was.Kit.Equal(is.Kit) || was.Goal != is.Goal || was.BodyMass != is.BodyMass ||
		was.Minutes != is.Minutes || !slices.Equal(was.Exercises, is.Exercises)
}

func (s *session) goal() error {
	goal, err := asking.OneOf(s.Desk, "goal", fmt.Sprintf("What is the training for now? Nothing: as before, %s.", s.r.Goal), guideline.Goals(), false)
	if goal != 0 {
		s.r.Goal = goal
	}
	return err
}

// wished asks for an exercise that begins.
func (s *session) wished() (id exercise.ID, err error) {
	err = s.Ask("begins", "Which exercise begins, if any?", "its name, or nothing", func(answer string) error {
		if answer == "" {
			return nil
		}
		ex, err := s.lookUp(answer)
		if err != nil {
			return err
		}
		there, _ := s.r.AskedOn(ever)
		if slices.ContainsFunc(there, func(a record.Asked) bool { return a.Exercise == ex.ID }) {
			return fmt.Errorf("%s is asked for already", ex.ID)
		}
		id = ex.ID
		return nil
	})
	return id, err
}

// hadBefore returns what was asked for last of an exercise that had ended, and asks who
// has looked where it was stopped: to end and to begin it is no way round that.
func (s *session) hadBefore(id exercise.ID) (last *record.Asked, who string, err error) {
	for i := range s.r.Asked {
		if s.r.Asked[i].Exercise == id {
			last = &s.r.Asked[i]
		}
	}
	stopped := false
	for _, e := range s.r.Entries {
		for _, item := range e.Items {
			if item.Exercise == id {
				stopped = item.Decision.Action == progression.StopExercise
			}
		}
	}
	if !stopped {
		return last, "", nil
	}
	if who, err = s.looker("anew_"+string(id), fmt.Sprintf("%s was stopped, until somebody has looked at it.", id)); err == nil && who == "" {
		err = fmt.Errorf("%s was stopped, and nobody has looked at it: it does not begin", id)
	}
	return last, who, err
}
