package record

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/strength"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Review is all that follows from a record on a day.
type Review struct {
	Note      string            `json:"note"`
	Client    string            `json:"client"`
	Task      string            `json:"task"`
	Tasks     []choice.Task     `json:"tasks,omitempty"`
	Day       units.Day         `json:"day"`             // of the review
	Next      units.Day         `json:"next"`            // of the visit that is decided on
	Profile   screening.Profile `json:"profile"`         // as it was answered at the assessment, without clearances that have ended since
	Today     *screening.Check  `json:"today,omitempty"` // the day's check, if there was one
	Screening screening.Outcome `json:"screening"`
	InForce   week.Dates        `json:"in_force"`          // the days that the plan is held to: [Record.Dates]
	Overdue   []evidence.Reason `json:"overdue,omitempty"` // which of them are over
	Expired   bool              `json:"expired,omitzero"`  // so that a new plan is to be made
	Unused    []strength.Unused `json:"unused,omitempty"`  // tests on which no dose rests
	// Chosen are the tests of the tasks as they are chosen now, Tested what came of them.
	Chosen []choice.TaskTest `json:"chosen,omitempty"`
	Tested []choice.Tested   `json:"tested,omitempty"`
	Items  []Decided         `json:"items"`
	// Left are the exercises that were done and are asked for no more, such as those in whose place
	// another came: what hurt or showed in them still counts.
	Left []Decided `json:"left,omitempty"`
	// Alarms are what somebody has to look at before anything goes on, Told what follows from
	// all that was told since the assessment.
	Alarms   []Alarm                     `json:"alarms,omitempty"`
	Told     []programme.HappeningAnswer `json:"told,omitempty"`
	Attended AttendanceReport            `json:"attended"`
	Coming   *Coming                     `json:"coming,omitempty"` // nil: nothing can be planned for now
	// Beside is what to keep as [Given.Beside] from here on: the steps that what was
	// practised before this day led to. It is as it was where nothing can be planned.
	Beside beside.Known `json:"beside,omitzero"`
}

// Coming is the week of the next visit.
type Coming struct {
	Days   []units.Day   `json:"days"`             // none after the plan in force has ended
	Beside []beside.Item `json:"beside,omitempty"` // from the steps that the record keeps, else as it is begun
	Begun  bool          `json:"begun,omitzero"`   // all of Beside is as it is begun, since the record keeps no step and nothing that was practised
	// NotBeside is what of it is not begun.
	NotBeside []beside.Barred   `json:"not_beside,omitempty"`
	Reasons   []evidence.Reason `json:"reasons,omitempty"`
}

// Assess looks back on a day, and decides on every exercise that is asked for:
// for that day, if its check was made, else for the first day of the plan from
// then on that lies [week.DaysBetween] days after the last visit or later, unless the plan is
// one of a few minutes on each day: once the sets of a day are done, ask for the day after it. The day is no more
// than [dose.MostMissed] days after the last of the visits and of the days of the plan. What cannot be dosed is part of the review; bad fields are
// [field.Errors] at the record's places.
func (r Record) Assess(day units.Day) (Review, error) {
	l, err := r.read()
	if err != nil {
		return Review{}, err
	}
	next := day
	if check, _ := r.check(day); check == nil && day.Check() == nil && len(r.Days) > 0 {
		days, err := r.daysFrom(r.rested(day))
		if err != nil {
			return Review{}, err
		}
		next = slices.Min(days)
	}
	return r.assess(&l, day, next)
}

// assess looks back on a day, and decides for the visit of another.
func (r Record) assess(l *log, day, next units.Day) (Review, error) {
	if err := r.underway(day); err != nil {
		return Review{}, err
	}
	attended, err := r.attended(l, day)
	if err != nil {
		return Review{}, err
	}
	r.Exercises, r.Began = l.inForceAll(day), r.began()
	from := day
	if next > day { // else somebody came
		from = r.rested(day)
	}
	if r.Days, err = r.daysFrom(from); err != nil {
		return Review{}, err
	}
	first, request, err := r.plan(l, next, attended.Answer.Advice == rule.Ease, nil)
	if err != nil {
		return Review{}, err
	}
	re := Review{Note: r.Note, Client: r.Client, Task: r.Task, Tasks: r.Tasks, Day: day, Next: next, Profile: first.Profile, Today: first.Today, Screening: first.Screening, Attended: attended}
	tests := r.tests(first.Screening)
	re.Chosen, re.Tested = tests.Tests, r.tested(tests, first.Screening, day)
	if re.InForce, err = r.dates(r.phase(first.Week), first.Screening, day); err != nil {
		return Review{}, err
	}
	re.Overdue = re.InForce.Overdue(day)
	request, re.Unused = request.Usable()
	if re.Items, err = r.decide(l, request, first.Week, day, next, attended.Sessions); err != nil {
		return Review{}, err
	}
	re.Left = l.left(day)
	if re.Alarms, re.Told, err = r.stands(day); err != nil {
		return Review{}, err
	}
	re.heed()
	if re.Expired = re.InForce.Expired(day); re.Expired {
		re.stop() // nobody goes on by it
	}
	re.Coming, re.Beside = r.coming(re, first.Week), r.Beside
	if re.Coming == nil || len(r.Practised) == 0 {
		return re, nil
	}
	_, usual, _ := r.screened(day) // the record is valid; what the day's check bars is not lost for good
	known, moved, err := r.movedOn(day, usual)
	if err != nil {
		return Review{}, err
	}
	re.Beside = r.keep(known)
	sayMoved(re.Coming.Beside, moved)
	return re, nil
}

// underway asks for a day, for something asked for, and for visits up to the day.
func (r Record) underway(day units.Day) error {
	var bad field.Errors
	bad.Add("/day", r.near(day))
	if len(r.Asked) == 0 {
		bad.Add("/asked", field.Bad(nil, "what was asked for, a line or more", field.ErrMissing))
	}
	if len(r.Visits) == 0 {
		bad.Add("/visits", field.Bad(nil, "a visit or more", field.ErrMissing))
	}
	for i, v := range r.Visits {
		if day.Check() == nil && v.Day > day {
			bad.Add(path("visits", i)+"/day", field.Bad(v.Day, day.String()+", the day of the review, or before", field.ErrConflict))
		}
	}
	for i, l := range r.Looked {
		if day.Check() == nil && l.Day > day {
			bad.Add(path("looked", i)+"/day", field.Bad(l.Day, day.String()+", the day of the review, or before", field.ErrConflict))
		}
	}
	return bad.Err()
}

// stop puts a hold in place of what was decided, except where somebody is to be
// seen: by a plan that has ended nobody goes on.
func (re *Review) stop() {
	for i := range re.Items {
		if d := &re.Items[i].Decision; d.Action != progression.StopAndRefer {
			*d = progression.Decision{Action: progression.HoldDose, Gates: d.Gates, Queries: d.Queries, Reasons: re.Overdue}
		}
	}
}

// coming is the week from the review on, if anything is prescribed for it.
func (r Record) coming(re Review, w *week.Week) *Coming {
	if w == nil || !slices.ContainsFunc(re.Items, Decided.prescribed) {
		return nil
	}
	c := &Coming{Beside: w.Beside, NotBeside: w.NotBeside, Reasons: w.With(doses(re.Items), r.Minutes).Reasons}
	c.Begun = len(r.Beside.InForce)+len(r.Practised) == 0
	for _, s := range w.Sessions {
		if ends := re.InForce.Expires; ends.IsZero() || s.Day <= ends {
			c.Days = append(c.Days, s.Day)
		}
	}
	return c
}

// Dates returns the days that the plan in force is held to, as known on a day: those of
// its phase from its first session on. A review moves none of them, and a test of strength
// the next one alone: as far from that test as the plan asks for the first. Where the
// record keeps no phase it is the one that is looked at soonest. A record whose answers or
// first session cannot be used is an error at their places.
func (r Record) Dates(day units.Day) (week.Dates, error) {
	if err := day.Check(); err != nil {
		return week.Dates{}, field.At("/day", err)
	}
	_, outcome, err := r.screened(day)
	if err != nil {
		return week.Dates{}, err
	}
	r.Began = r.began()
	return r.dates(r.phase(nil), outcome, day)
}

func (r Record) dates(phase dose.Phase, o screening.Outcome, day units.Day) (week.Dates, error) {
	d, err := week.DatesOf(phase, r.Began, o.ReviewBy)
	if err != nil {
		return d, field.At("/began", err)
	}
	last := r.Began
	for _, s := range r.Tests {
		if s.Day <= day {
			last = max(last, s.Day)
		}
	}
	d.Retest += last - r.Began
	return d, nil
}

// phase is that of the plan in force: as the record has it, or as the week does.
func (r Record) phase(w *week.Week) dose.Phase {
	switch {
	case r.Phase != 0:
		return r.Phase
	case w != nil:
		return w.Phase
	}
	return dose.Familiarise // the one that is looked at soonest
}

// began is the day of the first session under the plan in force.
func (r Record) began() units.Day {
	if !r.Began.IsZero() || len(r.Days) == 0 {
		return r.Began
	}
	return slices.Min(r.Days)
}

// Reasons returns the reasons of the whole review, in order.
func (re Review) Reasons() []evidence.Reason {
	all := append(append(ofOutcome(re.Screening), ofUnused(re.Unused)...), re.Overdue...)
	for _, s := range re.Alarms {
		all = append(all, s.Reasons...)
	}
	all = append(all, re.Attended.Answer.Reasons...)
	for _, s := range re.Attended.Short {
		if s.Why != nil {
			all = append(all, *s.Why)
		}
	}
	for _, k := range re.Chosen {
		all = append(all, k.Reasons...)
	}
	all = append(all, ofTested(re.Tested)...)
	var doses []evidence.Reason
	for _, item := range re.Items {
		d := item.Decision
		all = append(all, d.Reasons...)
		for _, v := range item.Log {
			all = append(all, Bodily(v)...)
		}
		for _, g := range d.Gates {
			all = append(all, g.Reasons...)
		}
		for _, j := range []*progression.Jump{d.Rise, d.Jump} {
			if j != nil {
				all = append(all, j.Reasons...)
			}
		}
		if d.Next != nil {
			doses = append(append(doses, d.Next.Cautions...), d.Next.Reasons...)
		}
	}
	all = append(all, doses...)
	if re.Coming != nil {
		all = append(append(all, re.Coming.Reasons...), ofBeside(re.Coming.Beside, re.Coming.NotBeside)...)
	}
	return all
}

// Bodily returns what hurt, showed or was lost at a visit, so far that less or
// nothing follows from it.
func Bodily(v progression.Visit) []evidence.Reason {
	report, err := visit.Gates(v)
	if err != nil {
		return nil // it was decided on, so it has no bad field
	}
	var list []evidence.Reason
	for _, g := range report.Gates {
		if g.Gate <= visit.GateRange && g.Advice >= rule.Ease {
			list = append(list, g.Reasons...)
		}
	}
	return list
}
