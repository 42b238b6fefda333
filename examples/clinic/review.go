package main

import (
	"errors"
	"fmt"
	"reflect"
	"slices"
	"time"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/week"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// review looks back and decides for the next visit.
func review(s *session) error {
	report, goOn, err := s.news()
	if err != nil || !goOn {
		return err
	}
	return s.decide(func(re record.Review) error {
		phases, err := s.phases(re, report.Standing, screening.Unknown)
		if len(choices(phases)) > 0 {
			fmt.Fprintf(s.said, "\nThe phase %s may be left: week %s begins the next one.\n", s.r.Phase, s.person.Name)
		}
		return err
	})
}

// news asks what happened since the last assessment. Where the plan does not stand,
// it says so, keeps what was told, and nothing is decided.
func (s *session) news() (report programme.HappeningReport, goOn bool, err error) {
	kinds, asked, err := asking.SeveralOf(s.Desk, "new", "Is anything new since the last time?", programme.HappeningKinds())
	if err != nil {
		return report, false, err
	}
	told := programme.Happenings{List: before(*s.r)}
	if asked {
		told.Asked = s.day
	}
	var looked dose.Observation
	for _, kind := range kinds {
		code, isEvent := kind.Code()
		if isEvent {
			s.event(screening.Event{Code: code, Day: s.day})
		} else if looked.Who == "" {
			if looked.Who, err = s.Text("looked", fmt.Sprintf("Who has looked at this since (%s)?", kind), "a name, or nothing", false); err != nil {
				return report, false, err
			}
			looked.Day = s.day
		}
		h := programme.Happening{Kind: kind, Day: s.day}
		if looked.Who != "" {
			h.Reviewed = looked
		}
		told.List = append(told.List, h)
	}
	outcome, err := screening.Assess(s.r.Profile, s.r.Join)
	if err != nil {
		return report, false, err
	}
	if report, err = told.Review(outcome, s.day); err != nil || report.Standing < programme.ReviewBefore {
		return report, err == nil, err
	}
	return report, false, s.halt(report)
}

// before lists what was told at earlier checks.
func before(r record.Record) []programme.Happening {
	var list []programme.Happening
	for _, c := range r.Checks {
		for _, e := range c.Events {
			for kind := range programme.HappeningKinds() {
				if code, ok := kind.Code(); ok && code == e.Code {
					list = append(list, programme.Happening{Kind: kind, Day: e.Day, Unassessed: assessed(r, e)})
				}
			}
		}
	}
	return list
}

// assessed says whether an assessment has not heard of an event.
func assessed(r record.Record, e screening.Event) screening.Answer {
	if slices.Contains(r.Profile.Events, e) {
		return screening.No
	}
	return screening.Yes
}

func unassessed(h programme.Happening) bool { return h.Unassessed == screening.Yes }

// event notes an event in the check of the day.
func (s *session) event(e screening.Event) {
	if n := len(s.r.Checks); n == 0 || s.r.Checks[n-1].Day != s.day {
		s.r.Checks = append(s.r.Checks, screening.Check{Day: s.day, Setting: s.r.Profile.Setting})
	}
	c := &s.r.Checks[len(s.r.Checks)-1]
	c.Events = append(c.Events, e)
}

// halt says why nothing goes on, and keeps what was told.
func (s *session) halt(report programme.HappeningReport) error {
	p, err := page.New(s.said)
	if err != nil {
		return err
	}
	p.Heading("Nothing is decided")
	p.Note(s.r.Note)
	p.Clinicians("- ", report.Reasons)
	for _, h := range report.Happenings {
		p.Clinicians("- ", h.Reasons)
	}
	if report.Standing == programme.PlanEnded {
		p.Say("- ", fmt.Sprintf("Assess again first: ask %s, then test and week.", s.person.Name))
	}
	if err := p.Close(); err != nil {
		return err
	}
	return s.keep()
}

// decide decides for the next visit, and asks for what comes of it. What is said of the
// review stands behind its paper.
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
		s.r.Asked = append(s.r.Asked, a)
	}
	if re.Coming != nil {
		s.r.Review = re.InForce.Review
		s.keepBeside(re.Coming.Beside)
	}
	if err := s.reviewed(re); err != nil {
		return err
	}
	err = inTurn(
		func() error { return say(re) },
		func() error { return s.stopped(re) },
		func() error { return s.belonging(re) },
	)
	if err != nil {
		return err
	}
	return s.keep()
}

var errDecided = errors.New("the next visit was decided for already, and log comes first")

// lookBack reviews for the next visit: the one of this day, if its check was made
// and nothing was logged of it, else that of the next day of the plan. A check of this day
// that the decision for it did not know takes that decision back. What was asked
// for and never done yet, there is nothing to decide on: it comes back, to be asked for
// again. Where so many days have passed that it matters, it asks why.
func (s *session) lookBack(assess func(record.Record, units.Day) (record.Review, error)) (re record.Review, again []record.Asked, err error) {
	day := max(s.day, lastVisit(*s.r)+1)
	if n := len(s.r.Entries); n > 0 && len(s.r.Entries[n-1].Items) > 0 && s.r.Entries[n-1].Day >= day {
		if s.unheard() == nil {
			return re, nil, fmt.Errorf("%w: that of %s", errDecided, s.r.Entries[n-1].Day)
		}
		s.takeBack()
	}
	again = slices.Clone(s.taken)
	for _, a := range inForce(*s.r, day-1) {
		if !wasDone(*s.r, a.Exercise) {
			s.drop(a.Exercise, day-1)
			a.Until = 0 // of an earlier look on the same day
			again = append(again, a)
		}
	}
	s.r.Absence = screening.Unknown
	re, err = assess(*s.r, day)
	var bad *field.Error
	if errors.As(err, &bad) && bad.Path == "/absence" {
		s.r.Absence, err = s.YesNo("absence", fmt.Sprintf("Something was not done for a while, the last visit was on %s. Was illness or another medical cause behind it?", page.Day(lastVisit(*s.r))))
		if err == nil {
			re, err = assess(*s.r, day)
		}
	}
	return re, again, err
}

// unheard is the check of this day of which the last decision does not know, nil where
// there is none.
func (s *session) unheard() *screening.Check {
	heard, n := 0, len(s.r.Checks)
	if e := len(s.r.Entries); e > 0 {
		heard = s.r.Entries[e-1].Rests.Checks
	}
	if n <= heard || s.r.Checks[n-1].Day != s.day {
		return nil
	}
	return &s.r.Checks[n-1]
}

// takeBack takes back what the last decision asks for, of which nothing was done yet, and
// keeps what is asked for beside it.
func (s *session) takeBack() {
	last := s.r.Entries[len(s.r.Entries)-1]
	was := s.r.AsOf(last).Asked
	for _, a := range s.r.Asked[len(was):] {
		a.Until = 0
		if !slices.ContainsFunc(papers.Doses(record.Review{Items: last.Items}), func(p dose.Prescription) bool { return same(record.AskedFrom(p, a.From), a) }) {
			s.taken = append(s.taken, a)
		}
	}
	s.r.Asked = was
}

// forNext reviews on a day, for the visit that comes next from then on.
func forNext(r record.Record, day units.Day) (record.Review, error) {
	re, err := r.Assess(day)
	if err != nil {
		return re, err
	}
	if re.Next != day {
		return r.Assess(re.Next)
	}
	return re, nil
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

// demand asks for every dose that was decided on, and for no exercise any more in
// whose place another came.
func (s *session) demand(e record.Entry) {
	for _, item := range e.Items {
		if item.Decision.Instead != "" {
			s.drop(item.Exercise, e.Day-1)
		}
		if next := item.Decision.Next; next != nil {
			s.askFor(record.AskedFrom(*next, e.Day))
		}
	}
}

// drop makes a day the last on which an exercise is asked for.
func (s *session) drop(id exercise.ID, day units.Day) {
	for i := range slices.Backward(s.r.Asked) {
		if a := &s.r.Asked[i]; a.Exercise == id {
			a.Until = max(a.From, day)
			return
		}
	}
}

// askFor adds a line, unless the one in force says the same.
func (s *session) askFor(a record.Asked) {
	for _, b := range inForce(*s.r, a.From) {
		if b.Exercise == a.Exercise {
			if b.From = a.From; same(a, b) {
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
	case len(s.r.Asked) > 0:
		return errors.New("the week was begun already: log comes next")
	case !reflect.DeepEqual(s.r.Entries[n-1].Given.Profile, s.r.Profile) || slices.Min(s.r.Days) < s.day:
		return errors.New("the plan is older than the assessment, or its days have begun: visit comes again")
	case s.r.Entries[n-1].Plan.Week == nil:
		if err := s.planned(*s.r.Entries[n-1].Plan, s.day); err != nil {
			return err
		}
		return errors.New("there is no week to begin: the paper says why, and what would free it")
	default:
		plan := *s.r.Entries[n-1].Plan
		s.inForce(*plan.Week)
		if err := s.planned(plan, s.day); err != nil {
			return err
		}
		return s.keep()
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

// renew begins a new plan: its days run from now on, and where the phase may be left
// the next one can begin.
func renew(s *session) error {
	report, goOn, err := s.news()
	if err != nil || !goOn {
		return err
	}
	re, _, err := s.lookBack(forNext)
	if err != nil {
		return err
	}
	reached, err := s.reached()
	if err != nil {
		return err
	}
	phases, err := s.phases(re, report.Standing, reached)
	if err != nil {
		return err
	}
	if next := choices(phases); len(next) > 0 {
		phase, err := asking.OneOf(s.Desk, "phase", "Does the next phase begin? Nothing: this one goes on.", slices.Values(next), false)
		if err != nil {
			return err
		}
		if phase != 0 {
			s.r.Phase = phase
		}
	}
	before := s.r.Days
	if err := s.days("On which days, from the first week of the new plan on? Nothing: as before.", false); err != nil {
		return err
	}
	if slices.Min(s.r.Days) <= re.Next && slices.Equal(weekdays(s.r.Days), weekdays(before)) {
		s.r.Days = before // what was planned on them before is not forgotten
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

// weekdays are the days of the week of days.
func weekdays(days []units.Day) []time.Weekday {
	var list []time.Weekday
	for _, d := range days {
		list = append(list, d.Weekday())
	}
	slices.Sort(list)
	return list
}
