package record

import (
	"errors"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/dose/week"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Plan is what follows from answers, tests and kit for a day: what screening
// found, what strength is known, and a week.
type Plan struct {
	Note      string            `json:"note"`
	Client    string            `json:"client"`
	Task      string            `json:"task"`
	Tasks     []choice.Task     `json:"tasks,omitempty"`
	Profile   screening.Profile `json:"profile"`         // as it was answered, without clearances that have ended since
	Today     *screening.Check  `json:"today,omitempty"` // the day's check, if there was one
	Screening screening.Outcome `json:"screening"`
	Tested    []choice.Tested   `json:"tested,omitempty"` // what came of the tests of function; none where there are no results
	Estimates []onerm.Estimate  `json:"estimates,omitempty"`
	Refused   []Refusal         `json:"refused,omitempty"`
	Week      *week.Week        `json:"week,omitempty"` // nil where there is a stop
	Stop      *Stop             `json:"stop,omitempty"`
}

// A Refusal is a test set from which no estimate follows.
type Refusal struct {
	Set    setlog.Set      `json:"set"`
	Reason evidence.Reason `json:"reason"`
}

// A Stop says why there is no week.
type Stop struct {
	Why        string            `json:"why"`
	Constraint evidence.Reason   `json:"constraint"`
	Free       []evidence.Reason `json:"free,omitempty"`
}

// Start screens, estimates strength and plans a first week, as known on a day; the
// check of that day counts, if there was one. A week that cannot be planned is part of
// the plan, and none is planned while something stands ([Record.Alarms]). Bad fields are
// [field.Errors] at the record's places.
func (r Record) Start(day units.Day) (Plan, error) {
	l, err := r.read()
	if err != nil {
		return Plan{}, err
	}
	stands, _, err := r.stands(day)
	if err != nil {
		return Plan{}, err
	}
	p, _, err := r.plan(&l, day, false, r.stops(day))
	if err == nil && len(stands) > 0 {
		p.heed(stands)
	}
	return p, err
}

// heed stops a plan while something stands, and sends the person where the strictest of it
// sends.
func (p *Plan) heed(list []Alarm) {
	p.Screening.Meanwhile, p.Week = screening.Nothing, nil
	p.Screening.Route = max(p.Screening.Route, routeOf(list))
	held := standsError(list)
	p.Stop = &Stop{Why: held.Error(), Constraint: held.Constraint}
}

// standsError is that of a week while something stands: its constraint is the first of it.
func standsError(list []Alarm) *dose.ConstraintError {
	return &dose.ConstraintError{Constraint: list[0].Reasons[0], Err: dose.ErrNoDose}
}

// Week plans the week from a day on, with the days of the plan moved into it. The day is
// at most [dose.MostMissed] days after the last of the visits and of the days of the plan.
// What was stopped until somebody has looked is not in it. Where nothing can be dosed, or something
// stands ([Record.Alarms]), the error is a [*dose.ConstraintError].
func (r Record) Week(from units.Day) (week.Week, error) {
	return r.week(from, r.stops(from))
}

// week plans a week without what was stopped.
func (r Record) week(from units.Day, stops map[exercise.ID]Entry) (week.Week, error) {
	l, err := r.read()
	if err != nil {
		return week.Week{}, err
	}
	stands, _, err := r.stands(from)
	if err != nil {
		return week.Week{}, err
	}
	if len(stands) > 0 {
		return week.Week{}, standsError(stands)
	}
	days, err := r.daysFrom(from)
	if err != nil {
		return week.Week{}, err
	}
	came, unread := r.attended(&l, from)
	r.Began, r.Days = r.began(), days // began before its days are moved
	if _, requested, err := r.requested(&l, from); err == nil {
		requested.ComesLittle = unread == nil && came.Answer.Advice == rule.Ease
		w, err := l.without(requested, stops)
		return w, inRequest.of(err)
	}
	return week.Week{}, err
}

// plan takes the record to a week without what was stopped, and returns what was asked of the
// planner too.
func (r Record) plan(l *log, day units.Day, little bool, stops map[exercise.ID]Entry) (Plan, week.Request, error) {
	p, request, err := r.requested(l, day)
	if err != nil {
		return Plan{}, request, err
	}
	request.ComesLittle = little
	w, err := l.without(request, stops)
	var barred *dose.ConstraintError
	switch {
	case errors.As(err, &barred):
		p.Stop = &Stop{barred.Error(), barred.Constraint, barred.Free}
	case err != nil:
		return Plan{}, request, inRequest.of(err)
	default:
		p.Week = &w
	}
	return p, request, nil
}

// inRequest is where the fields of a request for a week stand in the record.
var inRequest = moves{"/known": "/beside", "/performed": "/tests", "/tried": "/function", "/screening": "/profile", "/screening/who": "/profile"}

// requested screens and estimates, and returns what is asked of the planner.
func (r Record) requested(l *log, day units.Day) (Plan, week.Request, error) {
	p := Plan{Note: r.Note, Client: r.Client, Task: r.Task, Tasks: r.Tasks}
	if err := p.screen(r, day); err != nil {
		return Plan{}, week.Request{}, err
	}
	if err := p.estimate(r, l); err != nil {
		return Plan{}, week.Request{}, err
	}
	if len(r.Function) > 0 {
		p.Tested = r.tested(r.tests(p.Screening), p.Screening, day)
	}
	known, _, err := r.movedOn(day, p.Screening)
	if err != nil {
		return Plan{}, week.Request{}, err
	}
	return p, week.Request{
		Day: day, Seen: r.Seen, Screening: p.Screening, Goal: r.Goal, Phase: r.Phase, Exercises: r.Exercises, Estimates: p.Estimates, Performed: r.Tests, Kit: l.kit, Guideline: r.Guideline,
		Known: known, Tried: r.tried(day), Days: r.Days, Minutes: r.Minutes, Brief: r.Brief, Task: r.Task, Tasks: r.Tasks, Catalogue: l.catalogue,
	}, nil
}

// tests chooses the tests of function, whatever exercises are chosen.
func (r Record) tests(o screening.Outcome) choice.Chosen {
	return choice.Choose(choice.Wish{Tasks: r.Tasks, Goal: r.Goal, Screening: o, Named: true})
}

// tested puts the results up to a day beside the tests that are chosen for the person.
func (r Record) tested(of choice.Chosen, o screening.Outcome, day units.Day) []choice.Tested {
	tested, _ := of.Results(r.tried(day), o.Who) // the record is valid
	return tested
}

// tried are the tests of function up to a day.
func (r Record) tried(day units.Day) []choice.Tried {
	return slices.DeleteFunc(slices.Clone(r.Function), func(t choice.Tried) bool { return t.Day > day })
}

// screen assesses the answers, and joins the check of the day.
func (p *Plan) screen(r Record, day units.Day) error {
	answered, outcome, err := r.screened(day)
	if err != nil {
		return err
	}
	check, i := r.check(day)
	if check != nil {
		if outcome, err = screening.Today(*check, outcome); err != nil {
			return moves{"/check": path("checks", i), "/outcome": "/profile"}.of(err)
		}
	}
	p.Profile, p.Today, p.Screening = answered, check, outcome
	return nil
}

// estimate works through the test sets, which are known to be valid. A set that
// contradicts its exercise is an error; a set that the policy refuses is listed.
func (p *Plan) estimate(r Record, l *log) error {
	var bad field.Errors
	for i, set := range r.Tests {
		ex, err := l.catalogue.Lookup(string(set.Exercise))
		if err != nil {
			return field.At(path("tests", i)+"/exercise", err)
		}
		estimate, err := onerm.FromSet(set, ex, p.Screening.Who)
		if why, refused := onerm.WhyRefused(err); refused {
			p.Refused = append(p.Refused, Refusal{set, why})
			continue
		}
		bad.Add("", moves{"/set": path("tests", i), "/exercise": path("tests", i) + "/exercise", "/person": "/profile"}.of(err))
		p.Estimates = append(p.Estimates, estimate)
	}
	return bad.Err()
}

// check asks for a week with a session, or for why there is none.
func (p *Plan) check() error {
	switch {
	case (p.Week == nil) == (p.Stop == nil):
		return field.New("/week", nil, "a week, or the stop that says why there is none, and not both", field.ErrConflict)
	case p.Week != nil && len(p.Week.Sessions) == 0:
		return field.New("/week/sessions", nil, "one session or more", field.ErrMissing)
	}
	return nil
}

// Reasons returns the reasons of the whole plan, in order; of a plan without a week and
// a stop those of what was found.
func (p Plan) Reasons() []evidence.Reason {
	all := append(ofOutcome(p.Screening), ofTested(p.Tested)...)
	for _, e := range p.Estimates {
		all = append(all, e.Reasons...)
	}
	for _, refused := range p.Refused {
		all = append(all, refused.Reason)
	}
	switch {
	case p.Week != nil:
	case p.Stop != nil:
		return append(append(all, p.Stop.Constraint), p.Stop.Free...)
	default:
		return all
	}
	all = append(all, p.Week.Reasons...)
	all = append(append(all, ofUnused(p.Week.Unused)...), ofBeside(p.Week.Beside, p.Week.NotBeside)...)
	for _, first := range p.Week.Sessions[:min(1, len(p.Week.Sessions))] {
		for _, item := range first.Items {
			all = append(append(all, item.Cautions...), item.Reasons...)
		}
	}
	for _, out := range p.Week.LeftOut {
		all = append(all, out.Reasons...)
	}
	return all
}

func ofOutcome(o screening.Outcome) []evidence.Reason {
	var all []evidence.Reason
	for _, f := range o.Findings {
		all = append(all, f.Reason)
	}
	for _, q := range o.Missing {
		all = append(all, q.Reason)
	}
	return all
}

func ofTested(list []choice.Tested) []evidence.Reason {
	var all []evidence.Reason
	for _, t := range list {
		all = append(all, t.Reasons...)
	}
	return all
}

func ofUnused(list []strength.Unused) []evidence.Reason {
	var all []evidence.Reason
	for _, u := range list {
		all = append(all, u.Reason)
	}
	return all
}

func ofBeside(list []beside.Item, barred []beside.Barred) []evidence.Reason {
	var all []evidence.Reason
	for _, i := range list {
		all = append(all, i.Reasons...)
	}
	for _, b := range barred {
		all = append(append(all, b.Reasons...), b.Free...)
	}
	return all
}
