package review

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/plan"
	"example.org/posology/examples/internal/visit"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Run takes a case to its decisions. Bad fields are an error; an exercise or a
// week that cannot be dosed is part of the result.
func Run(c Case) (Result, error) {
	l, err := c.read()
	if err != nil {
		return Result{}, err
	}
	c.Exercises = nil
	for _, ex := range l.exercises {
		if _, ok := l.inForce(ex.ID, c.Review); ok {
			c.Exercises = append(c.Exercises, ex.ID)
		}
	}
	attended, err := c.attended(l)
	if err != nil {
		return Result{}, err
	}
	c.Began = c.began()
	next, err := c.coming()
	if err != nil {
		return Result{}, err
	}
	c.On = next
	planned, err := plan.Run(plan.Case(c.planned))
	if err != nil {
		return Result{}, err
	}
	first := planned.Visit
	r := Result{Note: c.Note, Client: c.Client, Task: c.Task, Day: c.Review, Next: next, Profile: c.Profile, Today: c.Today, Screening: first.Screening, Attended: attended}
	if r.InForce, err = c.phase(first).Dates(c.Began, first.Screening.ReviewBy); err != nil {
		return Result{}, field.At("/began", err)
	}
	r.Overdue = r.InForce.Overdue(c.Review)
	request, unused := plan.Request(plan.Case(c.planned), first).Usable()
	r.Unused = unused
	if r.Items, err = c.decide(l, request, next, attended.Sessions); err != nil {
		return Result{}, err
	}
	if r.Expired = r.InForce.Expired(c.Review); r.Expired {
		r.stop() // nobody goes on by it
	}
	if w := first.Week; w != nil && slices.ContainsFunc(r.Items, Item.prescribed) {
		r.Coming = &Coming{Dates: c.renewed(r.InForce, *w), Beside: w.Beside, Reasons: w.Reasons}
		for _, s := range w.Sessions {
			r.Coming.Days = append(r.Coming.Days, s.Day)
		}
	}
	return r, nil
}

// stop puts a hold in the place of what was decided, save where somebody is to be
// seen: by a plan that has ended nobody goes on.
func (r *Result) stop() {
	for i := range r.Items {
		if d := &r.Items[i].Decision; d.Action != progression.StopAndRefer {
			*d = progression.Decision{Action: progression.Hold, Gates: d.Gates, Queries: d.Queries, Reasons: r.Overdue}
		}
	}
}

// renewed returns the days that the plan is held to from this review on. A
// review does not stand in for a test of strength: that stays due where there
// was none under the plan in force.
func (c Case) renewed(was dose.Dates, w dose.Week) dose.Dates {
	is := w.Dates()
	if !slices.ContainsFunc(c.Tests, func(s setlog.Set) bool { return s.Day > c.Began }) {
		is.Retest = was.Retest
	}
	return is
}

const week = 7 // days

// phase is that of the plan in force: as the case has it, or as the week does.
func (c Case) phase(first visit.Result) dose.Phase {
	switch {
	case c.Phase != dose.PhaseUnknown:
		return c.Phase
	case first.Week != nil:
		return first.Week.Phase
	}
	return dose.Familiarise // the one that is looked at soonest
}

// began is the day of the first session under the plan in force.
func (c Case) began() units.Day {
	if !c.Began.IsZero() || len(c.Days) == 0 {
		return c.Began
	}
	return slices.Min(c.Days)
}

// coming moves the days of the plan to the week from the review on, and returns
// the day that is decided on: the first of them, or that of the day's check.
func (c *Case) coming() (units.Day, error) {
	var bad field.Errors
	days := make([]units.Day, len(c.Days))
	for i, d := range c.Days {
		weeks := max(0, int(c.Review-d)+week-1) / week
		var err error
		days[i], err = d.Plus(weeks * week)
		bad.Add(path("days", i), err)
	}
	if len(days) == 0 {
		bad.Add("/days", field.Bad(nil, "the days of the plan's first week", field.ErrMissing))
	}
	if c.Today != nil && c.Today.Day != c.Review {
		bad.Add("/today/day", field.Bad(c.Today.Day, c.Review.String()+", the day of the review", field.ErrConflict))
	}
	if err := bad.Err(); err != nil {
		return 0, err
	}
	c.Days = days
	if c.Today != nil {
		return c.Review, nil
	}
	return slices.Min(days), nil
}

// decide asks for all exercises at once, so that at most two loads rise.
func (c Case) decide(l log, r dose.WeekRequest, next units.Day, sessions []programme.PlannedSession) ([]Item, error) {
	var items []Item
	var courses []progression.Course
	var logs [][]logged
	var bad field.Errors
	for _, id := range c.Exercises {
		ex, _ := exercise.Standard().Get(id)
		visits := c.visits(l, id)
		item := Item{Exercise: id, Name: ex.Name}
		var log []progression.Visit
		for _, v := range visits {
			bad.Add("", v.at(v.Validate()))
			log = append(log, v.Visit)
		}
		if len(visits) == 0 {
			asked, _ := l.inForce(id, c.Review)
			bad.Add(path("asked", asked.at)+"/exercise", field.Bad(id, "an exercise that was done at one of the visits, or until, the day on which it was dropped", field.ErrMissing))
		}
		item.Log = log
		items, logs = append(items, item), append(logs, visits)
		courses = append(courses, c.course(ex, log, r, next, sessions))
	}
	if err := bad.Err(); err != nil {
		return nil, unique(err)
	}
	decisions, err := progression.Session(courses)
	if err != nil {
		return nil, unique(moved(err, logs))
	}
	for i, d := range decisions {
		items[i].Decision = d
	}
	return items, nil
}

func (c Case) course(ex exercise.Exercise, log []progression.Visit, r dose.WeekRequest, next units.Day, sessions []programme.PlannedSession) progression.Course {
	course := progression.Course{
		Log: log, Day: next, Absence: c.Absence, BodyMass: c.BodyMass, Policy: c.Policy, Sessions: sessions,
		Request: dose.Request{
			Day: next, Screening: r.Screening, Exercise: ex, Side: body.Both, Goal: r.Goal, Estimates: r.Estimates, Phase: r.Phase, Technique: r.Technique(ex.ID), Kit: r.Kit, Guideline: r.Guideline,
		},
	}
	if n := len(log); n > 0 {
		course.Request.Side = log[n-1].Plan.Side
	}
	return course
}

// moved turns the places of a session's errors into those of the case.
func moved(err error, logs [][]logged) error {
	var bad field.Errors
	bad.Add("", err)
	for _, f := range bad {
		var i, k int
		if _, err := fmt.Sscanf(f.Path, "/%d/log/%d", &i, &k); err == nil {
			rest := strings.TrimPrefix(f.Path, fmt.Sprintf("/%d/log/%d", i, k))
			f.Path = logs[i][k].place(rest)
		} else if parts := strings.SplitN(f.Path, "/", 3); len(parts) == 3 {
			f.Path = strings.TrimPrefix("/"+parts[2], "/request")
		}
	}
	return bad.Err()
}

// unique drops what is said of a field for the second time, as of one that all
// exercises share.
func unique(err error) error {
	var bad, kept field.Errors
	bad.Add("", err)
	for _, f := range bad {
		if !slices.ContainsFunc(kept, func(k *field.Error) bool { return k.Path == f.Path && k.Err == f.Err }) {
			kept = append(kept, f)
		}
	}
	return kept.Err()
}
