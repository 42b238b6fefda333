package record

import (
	"fmt"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Decided is one exercise: its log and what becomes of it.
type Decided struct {
	Exercise exercise.ID          `json:"exercise"`
	Name     string               `json:"name"`
	Side     body.Side            `json:"side"`
	Day      units.Day            `json:"day"`           // of the visit that is decided on
	Log      []progression.Visit  `json:"log,omitempty"` // of the exercise, the oldest first; empty: never done yet
	Decision progression.Decision `json:"decision"`
}

func (i Decided) prescribed() bool { return i.Decision.Next != nil }

// Next decides on every exercise that is asked for, for the visit of a day, which
// is that of the last visit or later. It is [Record.Assess] on that day, without
// what is said of attendance, dates and the week to come. What was asked for and never
// done yet goes on as of a visit at which nothing was.
func (r Record) Next(day units.Day) ([]Decided, error) {
	l, err := r.read()
	if err != nil {
		return nil, err
	}
	review, err := r.assess(&l, day, day)
	return review.Items, err
}

// decide asks for all exercises at once, so that at most two loads rise.
func (r Record) decide(l *log, request week.Request, w *week.Week, day, next units.Day, sessions []programme.PlannedSession) ([]Decided, error) {
	var usual *screening.Outcome
	if check, _ := r.check(next); check != nil {
		_, o, err := r.screened(next)
		if err != nil {
			return nil, err
		}
		usual = &o
	}
	items, courses := slices.Grow([]Decided(nil), len(r.Exercises)), make([]progression.Course, 0, len(r.Exercises))
	for _, id := range r.Exercises {
		ex, _ := l.catalogue.Get(id)
		item := l.item(ex, next)
		c := r.course(l, ex, item, request, sessions)
		asked, _ := l.goesOn(id, day)
		begins := asked != nil && r.waitsToBegin(item.Log, asked)
		if begins {
			item.Side, c.Request.Side = asked.plan.Side, asked.plan.Side
		}
		c.Usual, c.Log = usual, l.course(id, asked, begins)
		items, courses = append(items, item), append(courses, c)
	}
	for {
		decisions, err := progression.NextAll(courses)
		if err != nil {
			return nil, r.places(l).of(err)
		}
		for i, d := range decisions {
			items[i].Decision = d
		}
		if r.keepStops(l, items, courses, next) {
			continue
		}
		if w == nil || r.Minutes == 0 || !r.holdsSets(l, items, courses, *w) {
			return r.sayHeld(items, courses), nil
		}
	}
}

// item is an exercise with its log, for the visit of a day; nothing is decided yet.
func (l *log) item(ex exercise.Exercise, day units.Day) Decided {
	item := Decided{Exercise: ex.ID, Name: ex.Name, Side: body.Both, Day: day, Log: l.logged[ex.ID].visits}
	if n := len(item.Log); n > 0 {
		item.Side = item.Log[n-1].Plan.Side
	}
	return item
}

// left are the exercises that were done and are not asked for on a day.
func (l *log) left(day units.Day) (list []Decided) {
	for _, ex := range l.exercises {
		if _, asked := l.goesOn(ex.ID, day); !asked && len(l.logged[ex.ID].visits) > 0 {
			item := l.item(ex, day)
			item.Decision.Action = progression.StopExercise
			list = append(list, item)
		}
	}
	return list
}

// setRows are the rows of progression that add a set.
var setRows = []string{"sets-first", "extra-set"}

// holdsSets takes away the sets that were to be added and make the session longer than
// the minutes given, the last one first, but none of a pull where pushes would outnumber
// the pulls; it reports whether there was one: it is then decided again without.
func (r Record) holdsSets(l *log, items []Decided, courses []progression.Course, w week.Week) bool {
	some := false
	trial := slices.Clone(items)
	take := func(i int) {
		if c := trial[i].Decision.Change; c != progression.MoreSets && c != progression.ExtraSet {
			return
		}
		next := *trial[i].Decision.Next
		next.Sets--
		trial[i].Decision.Next, trial[i].Decision.Change = &next, progression.NoChange
		courses[i].Policy.Without = slices.Concat(courses[i].Policy.Without, setRows)
		some = true
	}
	for range 2 { // a pull only once no push is the more for it
		for i := range slices.Backward(trial) {
			if w.With(doses(trial), r.Minutes).Sessions[0].Minutes <= r.Minutes {
				return some
			}
			if !l.catalogue.Pattern(trial[i].Exercise).Pulls() || l.pushes(trial) < 0 {
				take(i)
			}
		}
	}
	return some
}

// pushes is how many more sets of pushes than of pulls there are.
func (l *log) pushes(items []Decided) (more int) {
	for _, p := range doses(items) {
		switch pattern := l.catalogue.Pattern(p.Exercise); {
		case pattern.Pushes():
			more += p.Sets
		case pattern.Pulls():
			more -= p.Sets
		}
	}
	return more
}

// sayHeld says where a set was not added for want of minutes.
func (r Record) sayHeld(items []Decided, courses []progression.Course) []Decided {
	for i := range items {
		d := &items[i].Decision
		if d.Next == nil || slices.Equal(courses[i].Policy.Without, r.Policy.Without) || !slices.Contains(courses[i].Policy.Without, setRows[0]) {
			continue
		}
		d.Reasons = append(slices.Clip(d.Reasons), evidence.Because("dose.fewer-sets", "dose.change-between-exercises", "dose.walking-pace", "dose.warm-up").With(
			evidence.Count("sets", d.Next.Sets), evidence.Count("whole", max(d.Next.Sets+1, d.Next.BuildTo)), evidence.Minutes("minutes", r.Minutes)))
	}
	return items
}

// doses are those that were decided on.
func doses(items []Decided) []dose.Prescription {
	var list []dose.Prescription
	for _, item := range items {
		if item.prescribed() {
			list = append(list, *item.Decision.Next)
		}
	}
	return list
}

// places are where the parts of the courses stand in the record.
func (r Record) places(l *log) moves {
	m := moves{}
	for i, id := range r.Exercises {
		at := fmt.Sprintf("/%d", i)
		m[at], m[at+"/request"] = "", ""
		for from, to := range inRequest {
			m[at+"/request"+from] = to
		}
		for k, p := range l.logged[id].parts {
			p.places(m, fmt.Sprintf("%s/log/%d", at, k))
		}
		m[fmt.Sprintf("%s/log/%d", at, len(l.logged[id].visits))] = path("asked", l.asked[id][len(l.asked[id])-1].at) // where it waits to begin
	}
	return m
}

func (r Record) course(l *log, ex exercise.Exercise, item Decided, w week.Request, sessions []programme.PlannedSession) progression.Course {
	return progression.Course{
		Day: item.Day, Absence: r.absence(), BodyMass: r.BodyMass, Policy: r.Policy, Sessions: sessions, Catalogue: l.catalogue,
		Curve: l.curve(ex.ID, item.Side),
		Request: dose.Request{
			Day: item.Day, Screening: w.Screening, Exercise: ex, Side: item.Side, Goal: w.Goal, Estimates: w.Estimates,
			Phase: w.Phase, Technique: w.Technique(ex.ID), Kit: w.Kit, Brief: w.Brief, Guideline: w.Guideline, Known: w.Known,
		},
	}
}

// absence is whether days missed since the last visit had a medical cause: once a decision
// was told so, until a visit or an assessment of another day.
func (r Record) absence() screening.Answer {
	for _, e := range slices.Backward(r.Entries) {
		switch {
		case e.Rests.Visits != len(r.Visits) || e.Given.Profile.Day != r.Profile.Day:
			return r.Absence
		case e.Given.Absence == screening.Yes:
			return screening.Yes
		}
	}
	return r.Absence
}

// daysFrom moves the days of the plan to the week from a day on, or from the return of who is away on the
// first of them, without those on which the person is away.
func (r Record) daysFrom(day units.Day) ([]units.Day, error) {
	var bad field.Errors
	bad.Add("/day", r.near(day))
	if len(r.Days) == 0 {
		bad.Add("/days", field.Bad(nil, "the days of the plan's first week", field.ErrMissing))
	}
	days := slices.Clone(r.Days)
	for i, d := range days {
		weeks := max(0, int(day-d)+weekDays-1) / weekDays
		var err error
		days[i], err = d.Plus(weeks * weekDays)
		bad.Add(path("days", i), err)
	}
	if err := bad.Err(); err != nil {
		return days, err
	}
	if until := r.awayUntil(slices.Min(days)); until > 0 {
		back, err := until.Plus(1)
		if err != nil {
			return days, field.At("/away", err)
		}
		return r.daysFrom(back)
	}
	return slices.DeleteFunc(days, func(d units.Day) bool { return r.awayUntil(d) > 0 }), nil
}

// rested is the first day from a day on that keeps the distance from the last visit.
func (r Record) rested(day units.Day) units.Day {
	if n := len(r.Visits); n > 0 && !r.Brief {
		return max(day, r.Visits[n-1].Day+week.DaysBetween)
	}
	return day
}

// near refuses a day that is none, or too far behind the last visit and the plan.
func (r Record) near(day units.Day) error {
	last := units.Day(0)
	for _, d := range r.Days {
		last = max(last, d)
	}
	for _, v := range r.Visits {
		last = max(last, v.Day)
	}
	if day.Check() == nil && last > 0 && day-last > dose.MostMissed {
		return field.Bad(day, fmt.Sprintf("a day at most %d days after %s, the last of the visits and the plan's days", dose.MostMissed, last), field.ErrOutOfRange)
	}
	return day.Check()
}
