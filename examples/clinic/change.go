package main

import (
	"cmp"
	"errors"
	"fmt"
	"reflect"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/units/evidence"
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
	var list []named
	for _, a := range inForce(*s.r, ever) {
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
	case len(s.ends) == 0 && begins.Exercise == "" && !changed(before, s.r.Given):
		return s.keep()
	}
	s.changes = true
	return s.decide(func(re record.Review) error {
		if begins.Exercise == "" {
			return nil
		}
		return s.beginAnew(re, begins)
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

// news reports whether a person has trained, was assessed or checked, or somebody looked or told of something, since a decision.
func news(r record.Record, e record.Entry) bool {
	n := e.Rests
	return len(r.Visits) > n.Visits || len(r.Checks) > n.Checks || len(r.Happened) > n.Happened || len(r.Looked) > n.Looked || changed(e.Given, r.Given)
}

// heard reports whether anything but visits is new since the last decision.
func (s *session) heard() bool {
	n := len(s.r.Entries)
	if n == 0 {
		return false
	}
	last := s.r.Entries[n-1]
	last.Rests.Visits = len(s.r.Visits)
	return news(*s.r, last)
}

func (s *session) goal() error {
	goal, err := asking.OneOf(s.Desk, "goal", fmt.Sprintf("What is the training for now? Nothing: as before, %s.", s.r.Goal), guideline.Goals(), false)
	s.r.Goal = cmp.Or(goal, s.r.Goal)
	return err
}

// wished asks for an exercise that begins, and returns what was asked for of it last. What is done
// in its place ends, if it can begin. Where it, or that, waits for somebody's look it asks who has
// looked: to begin it is no way round.
func (s *session) wished() (last record.Asked, err error) {
	err = s.Ask("begins", "Which exercise begins, if any?", "its name, or nothing", func(answer string) error {
		if answer == "" {
			return nil
		}
		ex, err := s.lookUp(answer)
		if err == nil && s.isAsked(ex.ID) {
			return fmt.Errorf("%s is asked for already", ex.ID)
		}
		return put(&last.Exercise)(ex.ID, err)
	})
	id := last.Exercise
	if err != nil || id == "" {
		return last, err
	}
	last = lastAsked(*s.r, id)
	instead, waits := s.standIns(id)
	if last.Looked = nil; waits {
		who, err := s.looker("anew_"+string(id), fmt.Sprintf("%s, or what is done in its place, was stopped or changed until somebody has looked at it.", id))
		if err != nil || who == "" {
			return last, cmp.Or(err, fmt.Errorf("%s was stopped or changed, and nobody has looked at it: it does not begin", id))
		}
		last.Looked = &dose.Observation{Who: who, Day: s.day}
	}
	next, why, err := s.firstOf(last, max(s.day, lastVisit(*s.r)+1))
	for _, a := range instead {
		if err == nil && why == "" && next.Exercise == id {
			s.ends = append(s.ends, a, id) // where the decision that put it there is taken back, it is not made again
			page.Wrap(s.said, "", fmt.Sprintf("%s ends: it was done in the place of %s.", a, id))
		}
	}
	return last, err
}

// standIns are what is done in the place of an exercise that is not asked for, by plans and
// decisions, and whether somebody has to look at it or at what came in its place: it was stopped, or
// gave way when it went badly more than once. What is wanted by name stands in for nothing.
func (s *session) standIns(id exercise.ID) (list []exercise.ID, wait bool) {
	instead, waits := map[exercise.ID]exercise.ID{}, map[exercise.ID]bool{}
	for _, e := range s.r.Entries {
		if e.Plan != nil && e.Plan.Week != nil {
			for _, out := range e.Plan.Week.LeftOut {
				instead[out.Exercise] = out.Instead
			}
		}
		for _, item := range e.Items {
			d := item.Decision
			instead[item.Exercise] = cmp.Or(d.Instead, instead[item.Exercise])
			waits[item.Exercise] = d.Action == progression.StopExercise || d.Instead != "" && slices.ContainsFunc(d.Reasons, func(r evidence.Reason) bool { return r.Code == "progression.recurring" })
		}
	}
	for seen := map[exercise.ID]bool{}; id != "" && !seen[id]; id = instead[id] {
		if seen[id], wait = true, wait || waits[id]; s.isAsked(id) && !slices.Contains(s.r.Exercises, id) {
			list = append(list, id)
		}
	}
	return list, wait
}

// isAsked reports whether an exercise is asked for, from whichever day on.
func (s *session) isAsked(id exercise.ID) bool {
	return slices.ContainsFunc(inForce(*s.r, ever), func(a record.Asked) bool { return a.Exercise == id })
}
