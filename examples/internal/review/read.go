package review

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func path(list string, i int) string { return fmt.Sprintf("/%s/%d", list, i) }

// A line is what was asked for, written out.
type line struct {
	from, until units.Day
	plan        dose.Prescription
	at          int // place among what was asked
}

// A log is the case written out, by exercise in the order first asked for.
type log struct {
	exercises []exercise.Exercise
	asked     map[exercise.ID][]line
	rows      []row
}

// read writes the case out, and returns every bad field at once.
func (c Case) read() (log, error) {
	l := log{asked: map[exercise.ID][]line{}}
	var bad field.Errors
	bad.Add("/review", c.Review.Check())
	bad.Add("", c.readAsked(&l))
	bad.Add("", c.checkVisits(l))
	rows, err := c.readSets()
	bad.Add("", err)
	l.rows = rows
	if err == nil {
		bad.Add("", c.checkRows(l))
	}
	return l, bad.Err()
}

func (c Case) readAsked(l *log) error {
	var bad field.Errors
	if len(c.Asked) == 0 {
		bad.Add("/asked", field.Bad(nil, "what was asked for, a line or more", field.ErrMissing))
	}
	catalogue := exercise.Standard()
	for i, a := range c.Asked {
		ex, err := catalogue.Lookup(string(a.Exercise))
		if err != nil {
			bad.Add(path("asked", i)+"/exercise", err)
			continue
		}
		before := l.asked[ex.ID]
		if len(before) == 0 {
			l.exercises = append(l.exercises, ex)
		}
		if n := len(before); n > 0 && a.From <= before[n-1].from {
			bad.Add(path("asked", i)+"/from", field.Bad(a.From, "a day after "+before[n-1].from.String()+", when the dose before it began", field.ErrConflict))
		}
		p, err := a.prescription(ex, c.Kit)
		bad.Add(path("asked", i), err)
		l.asked[ex.ID] = append(before, line{a.From, a.Until, p, i})
	}
	return bad.Err()
}

// prescription writes out what was asked for. Why it was is not known here.
func (a Asked) prescription(ex exercise.Exercise, kit equipment.Kit) (dose.Prescription, error) {
	p := dose.Prescription{
		Exercise: ex.ID, Name: ex.Name, Hold: ex.Hold, Side: a.Side, OneSided: ex.OneSided, Mode: dose.Continued,
		Sets: a.Sets, BuildTo: a.Sets, Measure: ex.Measure, Count: a.Count, Span: a.Span, Finding: a.Finding,
	}
	var bad field.Errors
	bad.Add("/from", a.From.Check())
	if a.Until != 0 && a.Until < a.From {
		bad.Add("/until", field.Bad(a.Until, a.From.String()+" or later", field.ErrConflict))
	}
	if a.Side == body.SideUnknown {
		p.Side = body.Both
	}
	if ex.Measure == exercise.Repetitions {
		p.Tempo = dose.Tempo{Lowering: max(a.Lowering, 2), Pausing: a.Pausing, Lifting: 2}
		if a.Reserve == nil {
			bad.Add("/reserve", field.Bad(nil, "the repetitions that were to be left undone", field.ErrMissing))
		} else {
			p.Reserve = dose.Reserve{Least: *a.Reserve, Countable: true}
		}
	}
	if ex.Hold == body.Unloaded {
		p.Mode = dose.WithoutLoad
	}
	if a.Finding != nil {
		p.Mode = dose.LoadFinding
	}
	var err error
	p.Load, err = a.load(ex, kit)
	bad.Add("", err)
	return p, bad.Err()
}

// load finds the weight that was asked for in the kit.
func (a Asked) load(ex exercise.Exercise, kit equipment.Kit) (equipment.Load, error) {
	each, err := ex.Hold.Each(a.Load, a.Stated)
	if err != nil {
		return equipment.Load{}, field.At("/load", err)
	}
	if ex.Hold == body.Unloaded {
		return equipment.Load{}, nil
	}
	table, err := kit.Compile(ex.Hold)
	if errors.Is(err, equipment.ErrEmptyKit) {
		return equipment.Load{}, field.New("/load", a.Load, "no weight: the kit has none for the hold "+ex.Hold.String(), field.ErrConflict)
	}
	if err != nil {
		return equipment.Load{}, nil // reported once, with the kit
	}
	load, ok := table.Find(each)
	if !ok {
		return load, field.New("/load", a.Load, "a weight of the kit: "+made(table), field.ErrConflict)
	}
	return load, nil
}

// made lists the weights that a table makes, the first of them.
func made(t *equipment.Table) string {
	const most = 12
	var list []string
	for l := range t.Loads() {
		if len(list) == most {
			return strings.Join(list, ", ") + " and more"
		}
		list = append(list, l.Each.String())
	}
	return strings.Join(list, ", ") + " each"
}

// checkVisits asks for visits in order, on days before the review.
func (c Case) checkVisits(l log) error {
	var bad field.Errors
	if len(c.Visits) == 0 {
		bad.Add("/visits", field.Bad(nil, "a visit or more", field.ErrMissing))
	}
	before := units.Day(0)
	for i, v := range c.Visits {
		at := path("visits", i)
		bad.Add(at+"/day", v.Day.Check())
		switch {
		case v.Day.Check() != nil:
		case before != 0 && v.Day <= before:
			bad.Add(at+"/day", field.Bad(v.Day, "a day after "+before.String()+", the visit before", field.ErrConflict))
		case v.Day > c.Review:
			bad.Add(at+"/day", field.Bad(v.Day, c.Review.String()+", the day of the review, or before", field.ErrConflict))
		}
		before = max(before, v.Day)
		bad.Add(at, v.Noted.check())
		for j, b := range v.But {
			if _, ok := l.inForce(b.Exercise, v.Day); !ok {
				bad.Add(at+path("but", j)+"/exercise", field.Bad(b.Exercise, "an exercise that was asked for on that day", field.ErrUnknown))
			}
			bad.Add(at+path("but", j), b.Noted.check())
		}
	}
	return bad.Err()
}

// check reports what is bad by itself, whatever exercise it was noted of.
func (n Noted) check() error {
	var bad field.Errors
	if n.PainFree && n.Pain != nil {
		bad.Add("/pain", field.Bad("given", "no record of pain beside pain_free", field.ErrConflict))
	}
	bad.Add("", n.visit(0, dose.Prescription{Sets: 1, Count: 1, Span: units.Exactly(1)}).Validate())
	return bad.Err()
}

// inForce returns what was asked for on a day.
func (l log) inForce(id exercise.ID, day units.Day) (line, bool) {
	for _, a := range slices.Backward(l.asked[id]) {
		if a.from <= day {
			return a, a.until == 0 || day <= a.until
		}
	}
	return line{}, false
}

// readSets reads the lines of sets.
func (c Case) readSets() ([]row, error) {
	var bad field.Errors
	for i, text := range c.Sets {
		if strings.ContainsAny(text, "\r\n") {
			bad.Add(path("sets", i), field.Bad(nil, "one line", field.ErrSyntax))
		}
	}
	if len(bad) > 0 {
		return nil, bad
	}
	blank := func(text string) bool { return strings.TrimSpace(text) == "" }
	at := 0 // the line that was read last; blank ones are passed over
	for at < len(c.Sets) && blank(c.Sets[at]) {
		at++
	}
	var rows []row
	for s, err := range setlog.ReadCSV(strings.NewReader(strings.Join(c.Sets, "\n"))) {
		for at++; err == nil && blank(c.Sets[at]); at++ {
		}
		var broken *setlog.RowError
		if errors.As(err, &broken) {
			at = broken.Line - 1
			bad.Add(path("sets", at), broken.Err)
			continue
		}
		if err != nil {
			return nil, field.At("/sets", err)
		}
		rows = append(rows, row{s, at})
	}
	return rows, bad.Err()
}

// checkRows asks every set to be of a visit, and of an exercise that was asked
// for then.
func (c Case) checkRows(l log) error {
	var bad field.Errors
	for _, r := range l.rows {
		visited := slices.ContainsFunc(c.Visits, func(v Record) bool { return v.Day == r.Day })
		if !visited {
			bad.Add(path("sets", r.at)+"/day", field.Bad(r.Day, "the day of one of the visits", field.ErrConflict))
			continue
		}
		if _, ok := l.inForce(r.Exercise, r.Day); ok {
			continue
		}
		_, err := exercise.Standard().Lookup(string(r.Exercise))
		if err == nil {
			err = field.Bad(r.Exercise, "an exercise that was asked for on that day", field.ErrConflict)
		}
		bad.Add(path("sets", r.at)+"/exercise", err)
	}
	return bad.Err()
}
