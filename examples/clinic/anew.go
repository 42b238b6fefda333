package main

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/units"
)

// stopped asks of each exercise that was stopped whether somebody has looked at it: a
// stop stays, however often it is decided on, until a person takes it away. It then
// begins as on a first visit, with no more than was asked for last.
func (s *session) stopped(re record.Review) error {
	for _, item := range re.Items {
		if item.Decision.Action != progression.StopExercise || len(item.Log) == 0 {
			continue
		}
		who, err := s.looker("anew_"+string(item.Exercise), item.Name+" is stopped, until somebody has looked at it, so that it may begin anew, as on a first visit.")
		if err != nil {
			return err
		}
		if who != "" {
			last := lastAsked(*s.r, item.Exercise)
			last.Looked = &dose.Observation{Who: who, Day: s.day}
			if err := s.beginAnew(re, last); err != nil {
				return err
			}
		}
	}
	return nil
}

// belonging asks, where a new plan begins or after an assessment that the last decision knew
// nothing of, which exercise begins that would now be chosen and is not asked for: one at a time.
func (s *session) belonging(re record.Review) error {
	n := len(s.r.Entries)
	if n < 2 || re.Coming == nil {
		return nil
	}
	if was := s.r.Entries[n-2]; (was.Plan != nil || was.Given.Began == s.r.Began) && reflect.DeepEqual(was.Given.Profile, s.r.Profile) {
		return nil
	}
	chosen := choice.Choose(choice.Wish{Tasks: s.r.Tasks, Goal: s.r.Goal, Screening: re.Screening, Kit: s.r.Kit, Tried: s.r.Function})
	var list []named
	for _, w := range chosen.Wanted {
		there, _ := s.standIns(w.Exercise)
		if len(there) == 0 && !slices.ContainsFunc(s.r.Asked, func(a record.Asked) bool { return a.Exercise == w.Exercise }) {
			list = append(list, named(w.Exercise))
		}
	}
	if len(list) == 0 {
		return nil
	}
	one, err := asking.OneOf(s.Desk, "begin", "The plan goes on with its exercises. Of those that would be chosen for this person now, which one begins, if any?", slices.Values(list), false)
	if err != nil {
		return err
	}
	if one != "" {
		return s.beginAnew(re, record.Asked{Exercise: exercise.ID(one)})
	}
	fmt.Fprintln(s.said)
	page.Wrap(s.said, "", fmt.Sprintf("The plan goes on without what would be chosen for this person now: %s.", strings.ReplaceAll(strings.Trim(fmt.Sprint(list), "[]"), " ", ", ")))
	return nil
}

// A named exercise is asked for by its ID.
type named exercise.ID

func (n named) String() string { return string(n) }

// beginAnew asks for the first dose of an exercise from the visit on that was decided for,
// which is no more than what was asked for last, and keeps who looked at one that was
// stopped. The page of the decision is printed by then, and this says so; the papers in
// files have it.
func (s *session) beginAnew(re record.Review, last record.Asked) error {
	next, why, err := s.firstOf(last, re.Next)
	if err != nil || why != "" {
		page.Wrap(s.said, "", why)
		return err
	}
	asked := record.AskedFrom(*next, re.Next)
	asked.Looked = last.Looked
	s.askFor(asked)
	fmt.Fprintln(s.said)
	page.Wrap(s.said, "", fmt.Sprintf("%s begins anew on %s, with %s. It is not on the page above, but on the papers of -html and of show: show it.", next.Name, page.Day(re.Next), page.Amount(*next)))
	s.sayLooked(re.Next)
	_, err = s.reprint(re)
	return err
}

// firstOf is the first dose of an exercise that begins on a day, and why it does not: nothing can be
// dosed, or what can in its place is there, or it is more than what was asked for last, if anything.
func (s *session) firstOf(last record.Asked, day units.Day) (next *dose.Prescription, why string, err error) {
	next, err = s.r.Anew(last.Exercise, last.Looked != nil, day)
	switch before := last.Sets > 0; {
	case err != nil:
	case next == nil:
		why = fmt.Sprintf("%s cannot begin: nothing of it can be dosed now.", last.Exercise)
	case next.Exercise != last.Exercise && (before || s.isAsked(next.Exercise)):
		why = fmt.Sprintf("%s cannot begin: what can be dosed in its place now is %s.", last.Exercise, next.Exercise)
	case before && (next.Sets*next.Count > last.Sets*last.Count || next.Load.Each() > last.Load):
		why = fmt.Sprintf("%s does not begin: its first dose, %s, is more than what was asked for last, and there is nothing less.", last.Exercise, page.Amount(*next))
	}
	return next, why, err
}

// lastAsked is what was asked for last of an exercise, its name alone where nothing was.
func lastAsked(r record.Record, id exercise.ID) record.Asked {
	for _, a := range slices.Backward(r.Asked) {
		if a.Exercise == id {
			return a
		}
	}
	return record.Asked{Exercise: id}
}
