package main

import (
	"cmp"
	"errors"
	"fmt"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/week"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// review looks back and decides for the next visit.
func review(s *session) error {
	standing, err := s.happened()
	if err != nil {
		return err
	}
	if len(s.r.Visits) == 0 { // nothing to decide on
		page.Wrap(s.said, "", s.due())
		return s.keep()
	}
	if err := s.away(); err != nil {
		return err
	}
	return s.decide(func(re record.Review) error {
		phases, err := s.r.Phases(re, s.day, standing)
		if len(choices(phases)) > 0 {
			fmt.Fprintf(s.said, "\nThe phase %s may be left: week %s begins the next one.\n", s.r.Phase, s.person.Name)
		}
		return err
	})
}

// happened asks what happened since the last assessment, and who has looked at what stands.
func (s *session) happened() (programme.Standing, error) {
	kinds, asked, err := asking.SeveralOf(s.Desk, "new", "Is anything new since the last time?", programme.HappeningKinds())
	if err == nil {
		err = s.keepHappened(kinds...)
	}
	if err != nil {
		return 0, err
	}
	stands, err := s.r.Alarms(s.day)
	if err != nil {
		return 0, err
	}
	if len(stands) > 0 && stands[0].Open {
		if err := s.lookedAt(stands); err != nil {
			return 0, err
		}
	}
	switch {
	case s.stand() != "":
		return programme.ReviewBefore, nil
	case asked:
		return programme.PlanStands, nil
	}
	return programme.AskWhatHappened, nil
}

// keepHappened keeps what happened, once a day, and asks after a fall what sends to be seen today.
func (s *session) keepHappened(kinds ...programme.HappeningKind) error {
	for len(kinds) > 0 {
		one := programme.Happening{Kind: kinds[0], Day: s.day}
		if kinds = kinds[1:]; slices.Contains(s.r.Happened, one) {
			continue
		}
		s.r.Happened = append(s.r.Happened, one)
		if one.Kind != programme.Fall {
			continue
		}
		for _, ask := range []struct {
			key, text, what string
			kind            programme.HappeningKind
		}{
			{"fall_head", "The fall: was the head hit, even lightly?", "the head was hit", programme.HeadKnock},
			{"fall_out", "Did they pass out, or is some of it not remembered?", "they passed out", programme.Faint},
		} {
			switch is, err := s.YesNo(ask.key, ask.text); {
			case err != nil:
				return err
			case is == screening.Yes, is == screening.Unknown && s.r.Profile.Conditions.Of("anticoagulant") != screening.No: // who may bleed
				kinds = append(kinds, ask.kind)
			case is == screening.Unknown:
				page.Wrap(s.said, "", fmt.Sprintf("Of the fall told on %s it is not known whether %s.", page.Day(s.day), ask.what))
			}
		}
	}
	return nil
}

// decide decides for the next visit, and asks for what comes of it. What is said of the review stands behind its paper.
func (s *session) decide(say func(record.Review) error) error {
	if err := s.besides(); err != nil {
		return err
	}
	re, again, err := s.lookBack(forNext)
	if err != nil {
		return err
	}
	entry, err := s.r.Decide(re.Next)
	if err != nil {
		return err
	}
	entry.Decided = s.day
	re = command.Told(re, s.day)
	s.r.Entries = append(s.r.Entries, entry)
	s.demand(entry)
	for _, a := range again {
		a.From = re.Next
		s.askFor(a)
	}
	if re.Coming != nil {
		s.r.Review = re.InForce.Review
		s.keepBeside(re.Coming.Beside)
	}
	return inTurn(
		func() error { return s.reviewed(re) },
		func() error { return say(re) },
		func() error { return s.stopped(re) },
		func() error { return s.belonging(re) },
		s.keep,
	)
}

var errDecided = errors.New("the next visit was decided for already, and log comes first")

// lookBack reviews for the next visit: the one of this day, if its check was made
// and nothing was logged of it, else that of the next day of the plan. What is new since the
// decision for it (see [news]), what stands, and all of it being paused take that decision back.
// What was never done yet comes back as it was, where nothing but visits is new; else it is decided on too, since
// it may be too much by what was found. It asks why many days have passed.
func (s *session) lookBack(assess func(record.Record, units.Day) (record.Review, error)) (re record.Review, again []record.Asked, err error) {
	day, heard := max(s.day, lastVisit(*s.r)+1), s.heard()
	if n := len(s.r.Entries); n > 0 && len(s.r.Entries[n-1].Items) > 0 && s.r.Entries[n-1].Day >= day {
		last := s.r.Entries[n-1]
		if stands, err := s.r.Alarms(s.day); err != nil || len(stands) == 0 && !s.changes && !news(*s.r, last) && !idle(*s.r, last.Day) && stale(*s.r, s.day) == "" {
			return re, nil, errors.Join(err, fmt.Errorf("%w: that of %s", errDecided, last.Day))
		}
		s.takeBack(last)
	}
	for _, id := range s.ends {
		s.drop(id, day-1)
	}
	if heard {
		s.taken = slices.DeleteFunc(s.taken, func(a record.Asked) bool {
			a.From = max(lastVisit(*s.r), lastAsked(*s.r, a.Exercise).From) + 1
			switch {
			case slices.Contains(s.ends, a.Exercise):
			case a.From >= day:
				return false // no day is left on which it was asked for before
			default:
				s.r.Asked = append(s.r.Asked, a)
			}
			return true
		})
	}
	again = slices.Clone(s.taken)
	for _, a := range inForce(*s.r, day-1) {
		if !heard && !wasDone(*s.r, a.Exercise) {
			s.drop(a.Exercise, day-1)
			a.Until = 0 // of an earlier look on the same day
			again = append(slices.DeleteFunc(again, func(b record.Asked) bool { return b.Exercise == a.Exercise }), a)
		}
	}
	again = slices.DeleteFunc(again, func(a record.Asked) bool { return slices.Contains(s.ends, a.Exercise) })
	if n := len(s.r.Entries); s.r.Absence != screening.Yes || n == 0 || len(s.r.Visits) != s.r.Entries[n-1].Rests.Visits || s.r.Profile.Day != s.r.Entries[n-1].Given.Profile.Day {
		s.r.Absence = screening.Unknown // a yes stands until a visit or another assessment, a no for its day alone
	}
	re, err = assess(*s.r, day)
	var bad *field.Error
	if errors.As(err, &bad) && bad.Path == "/absence" {
		s.r.Absence = screening.No
		if re, err = assess(*s.r, day); err == nil && s.isMissed(re.Next) && s.isMissed(s.day) { // of days to come nobody knows yet
			medical, stop := s.Plainly("absence", fmt.Sprintf("Something was not done for a while, the last visit was on %s. Was illness or another medical cause behind it?", page.Day(lastVisit(*s.r))))
			if stop != nil {
				return re, again, stop
			}
			if medical != screening.No {
				s.r.Absence = screening.Yes
			}
			if medical == screening.Unknown {
				page.Wrap(s.said, "", "Why something was not done is not known: it counts as a medical cause, which is the more careful.")
			}
			re, err = assess(*s.r, day)
		}
	}
	return re, again, err
}

// isMissed reports whether on a day the last visit lies more than a week back, or something
// that was asked for at it: what is stopped or paused, nobody missed who came.
func (s *session) isMissed(day units.Day) bool {
	asked, paused := s.r.AskedOn(day)
	return lastVisit(*s.r) < day-7 || slices.ContainsFunc(asked, func(a record.Asked) bool {
		return !paused[a.Exercise] && wasDone(*s.r, a.Exercise) && !slices.ContainsFunc(s.r.Done, func(d setlog.Set) bool {
			return d.Exercise == a.Exercise && d.Day >= day-7
		})
	})
}

// unheard is the check of this day of which the last decision does not know, nil where there is none.
func (s *session) unheard() *screening.Check {
	if n := len(s.r.Entries); n > 0 && len(s.r.Checks) <= s.r.Entries[n-1].Rests.Checks {
		return nil
	}
	return s.ofToday()
}

// takeBack takes back what was decided for a day that has not come, where something is new:
// it is decided again. What was asked for and never done comes back with it, and who looked at what was stopped stays.
func (s *session) takeBack(e record.Entry) {
	asked := s.r.Asked[min(e.Rests.Asked, len(s.r.Asked)):]
	s.r.Asked = s.r.AsOf(e).Asked
	for _, a := range asked {
		if a.Until = 0; a.Looked != nil && a.Looked.Day >= lastVisit(*s.r) {
			if a.From = max(a.Looked.Day, lastVisit(*s.r)+1); a.From < e.Day && lastAsked(*s.r, a.Exercise).From < a.From {
				s.r.Asked = append(s.r.Asked, a)
			}
		} else if !dosed(e, a.Exercise) && !wasDone(*s.r, a.Exercise) {
			s.taken = append(s.taken, a)
		}
	}
}

// forNext reviews on a day, for the visit that comes next from then on.
func forNext(r record.Record, day units.Day) (record.Review, error) {
	re, err := r.Assess(day)
	if err == nil && re.Next != day {
		return r.Assess(re.Next)
	}
	return re, err
}

// wasDone reports whether an exercise was done, or something noted of it, at a visit.
func wasDone(r record.Record, id exercise.ID) bool {
	return slices.ContainsFunc(r.Done, func(s setlog.Set) bool { return s.Exercise == id }) ||
		slices.ContainsFunc(r.Visits, func(v record.TrainingDay) bool {
			return slices.ContainsFunc(v.But, func(b record.Exception) bool { return b.Exercise == id })
		})
}

func lastVisit(r record.Record) units.Day {
	if n := len(r.Visits); n > 0 {
		return r.Visits[n-1].Day
	}
	return 0
}

// demand asks for every dose that was decided on, and for no exercise any more in whose place another came.
func (s *session) demand(e record.Entry) {
	for _, item := range e.Items {
		if item.Decision.Instead != "" && item.Decision.After == nil {
			s.drop(item.Exercise, e.Day-1)
		}
		if next := item.Decision.Next; next != nil {
			s.askFor(record.AskedFrom(*next, e.Day))
		}
	}
}

// drop makes a day the last on which an exercise is asked for, if it did not end before: of what is so for a
// day alone, the line that goes on behind it too.
func (s *session) drop(id exercise.ID, day units.Day) {
	list := inForce(*s.r, day)
	at := slices.IndexFunc(list, func(a record.Asked) bool { return a.Exercise == id })
	for i := range slices.Backward(s.r.Asked) {
		if a := &s.r.Asked[i]; a.Exercise == id {
			if a.Until = max(a.From, min(day, cmp.Or(a.Until, day))); at < 0 || a.From <= list[at].From {
				return
			}
		}
	}
}

// askFor adds a line, unless the one in force says the same and nobody had to look.
func (s *session) askFor(a record.Asked) {
	for _, b := range inForce(*s.r, a.From) {
		if b.Exercise == a.Exercise {
			if b.From = a.From; a.Looked == nil && same(a, b) {
				return
			}
		}
	}
	s.r.Asked = append(s.r.Asked, a)
}

// beginWeek begins the first week, or a new plan for those who have trained.
func beginWeek(s *session) error {
	if len(s.r.Visits) > 0 {
		return renew(s)
	}
	switch n := len(s.r.Entries); {
	case n == 0 || s.r.Entries[n-1].Plan == nil:
		return errors.New("visit comes first")
	case s.stand() != "":
		return errors.New(s.due())
	case len(s.r.Asked) > 0:
		return errors.New("the week was begun already: log comes next")
	case changed(s.r.Entries[n-1].Given, s.r.Given) || slices.Min(s.r.Days) < s.day:
		return errors.New("the plan is older than what was told since, or its days have begun: visit comes again")
	case s.r.Entries[n-1].Plan.Week == nil:
		return cmp.Or(s.planned(*s.r.Entries[n-1].Plan, s.day), errors.New("there is no week to begin: the paper says why, and what would free it"))
	default:
		plan := *s.r.Entries[n-1].Plan
		s.inForce(*plan.Week)
		return inTurn(func() error { return s.planned(plan, s.day) }, s.keep)
	}
}

// inForce asks for what a first week asks for.
func (s *session) inForce(w week.Week) {
	s.r.Days = nil
	for _, one := range w.Sessions {
		s.r.Days = append(s.r.Days, one.Day)
	}
	s.r.Began, s.r.Phase, s.r.Review = w.Sessions[0].Day, w.Phase, w.Review
	s.keepBeside(w.Beside)
	for _, item := range w.Sessions[0].Items {
		s.r.Asked = append(s.r.Asked, record.AskedFrom(item, s.r.Began))
	}
}

// renew begins a new plan: its days run from now on, and where the phase may be left the next one can begin.
func renew(s *session) error {
	standing, err := s.happened()
	if err != nil {
		return err
	}
	re, _, err := s.lookBack(forNext)
	if errors.Is(err, errDecided) {
		return s.move(err)
	}
	if err != nil {
		return err
	}
	if err := s.reached(); err != nil {
		return err
	}
	phases, err := s.r.Phases(re, s.day, standing)
	if err != nil {
		return err
	}
	if next := choices(phases); len(next) > 0 {
		phase, err := asking.OneOf(s.Desk, "phase", "Does the next phase begin? Nothing: this one goes on.", slices.Values(next), false)
		if err != nil {
			return err
		}
		if phase != 0 {
			s.r.Phase, s.r.Reached = phase, screening.Unknown // the goal is that of the phase
		}
	}
	before := s.r.Days
	err = inTurn(
		func() error { return s.kit("Which weights are there now? Nothing: as before.", false) },
		func() error {
			return s.days("On which days, from the first week of the new plan on? Nothing: as before.", false)
		},
	)
	if err != nil {
		return err
	}
	s.r.Began = max(slices.Min(s.r.Days), s.day) // no day is dropped for the end of the plan before
	if re, err := forNext(*s.r, max(s.day, lastVisit(*s.r)+1)); err == nil && re.Coming != nil && (s.r.Phase == dose.Maintain || !slices.Equal(s.r.Days, before)) {
		for _, d := range s.r.Days {
			if !slices.ContainsFunc(re.Coming.Days, func(kept units.Day) bool { return (kept-d)%aWeek == 0 }) {
				page.Wrap(s.said, "", fmt.Sprintf("No session falls on %s: the plan goes on without that day.", page.Day(d)))
			}
		}
		s.r.Days = re.Coming.Days
	}
	if s.r.Began = slices.Min(s.r.Days); s.r.Began < s.day { // the same days of the week go on
		s.r.Began = re.Next
	}
	return s.decide(func(record.Review) error {
		if len(choices(phases)) > 0 {
			return nil
		}
		return s.phaseStays(phases)
	})
}
