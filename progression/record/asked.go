package record

import (
	"errors"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func (r Record) readAsked(l *log) error {
	var bad field.Errors
	l.asked, l.daysOf = map[exercise.ID][]*line{}, r.daysOf()
	l.kit = r.Kit.Once(r.Kit)
	kits := r.kits(l.kit)
	for i, a := range r.Asked {
		at := path("asked", i)
		ex, err := l.catalogue.Lookup(string(a.Exercise))
		if err != nil {
			bad.Add(at+"/exercise", err)
			continue
		}
		before := l.asked[ex.ID]
		if len(before) == 0 {
			l.exercises = append(l.exercises, ex)
		}
		if n := len(before); n > 0 && a.From <= before[n-1].from {
			bad.Add(at+"/from", field.Bad(a.From, "a day after "+before[n-1].from.String()+", when the dose before it began", field.ErrConflict))
		}
		p, err := a.prescription(ex, kits)
		bad.Add(at, err)
		l.asked[ex.ID] = append(before, &line{a.From, a.Until, p, i})
	}
	return bad.Err()
}

// kits are the present kit, and then those that were there when something was decided: what
// was asked for stays in the record when its weight is gone.
func (r Record) kits(now equipment.Kit) []equipment.Kit {
	list := []equipment.Kit{now}
	for i := range slices.Backward(r.Entries) {
		if kit := r.Entries[i].Given.Kit; !kit.Equal(list[len(list)-1]) {
			list = append(list, kit.Once(kit))
		}
	}
	return list
}

// AskedOn returns what is asked for on a day, in the order in which it was first, and of
// which exercises nothing is asked for all the same: those that the last decision has no
// dose for, or that of before where the last one is for a later day, unless they were begun
// anew since, and those that wait for somebody's look. Where a decision has no dose at all, all that was never done waits too.
// What is so for the day's check alone ([progression.Decision.After]) is so on that day, and not from then on.
func (r Record) AskedOn(day units.Day) (list []Asked, paused map[exercise.ID]bool) {
	days := r.daysOf()
	for _, a := range r.Asked {
		if a.From > day || a.From < day && days[turn{a.Exercise, a.From}].asked {
			continue
		}
		if i := slices.IndexFunc(list, func(b Asked) bool { return b.Exercise == a.Exercise }); i >= 0 {
			list[i] = a
		} else {
			list = append(list, a)
		}
	}
	list = slices.DeleteFunc(list, func(a Asked) bool { return a.Until != 0 && a.Until < day })
	paused = map[exercise.ID]bool{}
	since := len(r.Asked)
	for _, e := range slices.Backward(r.Entries) {
		from := min(max(0, e.Rests.Asked), since)
		for _, a := range r.Asked {
			paused[a.Exercise] = paused[a.Exercise] || e.pauses(a.Exercise, day, r.Asked[from:since])
		}
		if since = from; e.Day <= day {
			break
		}
	}
	for id := range r.stops(day) {
		paused[id] = true
	}
	return list, paused
}

// pauses reports whether an entry has no dose of an exercise on a day, and no line after it begins it anew.
func (e Entry) pauses(id exercise.ID, day units.Day, after []Asked) bool {
	goes := func(i Decided) bool {
		if i.Decision.After != nil && (day != e.Day || i.Decision.Instead != "") {
			return day != e.Day || i.Exercise != id
		}
		return i.prescribed()
	}
	none := len(e.Items) > 0 && !slices.ContainsFunc(e.Items, goes)
	held := none || slices.ContainsFunc(e.Items, func(i Decided) bool { return i.Exercise == id && !goes(i) })
	return held && !slices.ContainsFunc(after, func(a Asked) bool { return a.Exercise == id && (a.Looked != nil || !none) })
}

// AskedFrom returns the line of a dose that is asked for from a day on.
func AskedFrom(p dose.Prescription, from units.Day) Asked {
	a := Asked{
		From: from, Exercise: p.Exercise, Side: p.Side, Load: p.Load.Each(), Sets: p.Sets, Count: p.Count, Span: p.Span, Finding: p.Finding, Pausing: p.Tempo.Pausing,
	}
	if p.Hold == body.OneEachHand {
		a.Stated = body.PerHand
	}
	if p.Measure == exercise.Repetitions {
		a.Reserve, a.Uncounted = &p.Reserve.Least, !p.Reserve.Countable
	}
	if p.Feel != nil {
		a.Feel = &Felt{p.Feel.Load.Each(), p.Feel.Count}
	}
	a.Fast = p.Tempo.Fast
	if p.Tempo.Lowering > usualLowering {
		a.Lowering = p.Tempo.Lowering
	}
	return a
}

// usualLowering and usualLifting are the seconds of a repetition that is neither slow
// nor paused (dose.tempo), fastLifting those of one that goes up fast (dose.tempo-fast).
const (
	usualLowering = 2
	usualLifting  = 2
	fastLifting   = 1
)

// prescription writes out what was asked for. Why it was is not known here.
func (a Asked) prescription(ex exercise.Exercise, kits []equipment.Kit) (dose.Prescription, error) {
	p := dose.Prescription{
		Exercise: ex.ID, Name: ex.Name, Hold: ex.Hold, Side: a.Side, OneSided: ex.OneSided, Mode: dose.Continued,
		Sets: a.Sets, BuildTo: a.Sets, Measure: ex.Measure, Count: a.Count, Span: a.Span, Finding: a.Finding,
	}
	var bad field.Errors
	bad.Add("/from", a.From.Check())
	if a.Until != 0 && a.Until < a.From {
		bad.Add("/until", field.Bad(a.Until, a.From.String()+" or later", field.ErrConflict))
	}
	if a.Looked != nil {
		bad.Add("/looked", a.checkLooked())
	}
	if a.Side == 0 {
		p.Side = body.Both
	}
	if ex.Measure == exercise.Repetitions {
		p.Tempo = dose.Tempo{Lowering: max(a.Lowering, usualLowering), Pausing: a.Pausing, Lifting: usualLifting, Fast: a.Fast}
		if a.Fast {
			p.Tempo.Lifting = fastLifting
		}
		if a.Reserve == nil {
			bad.Add("/reserve", field.Bad(nil, "the repetitions that were to be left undone", field.ErrMissing))
		} else {
			p.Reserve = dose.Reserve{Least: *a.Reserve, Countable: !a.Uncounted}
			if p.Reserve.IsZero() {
				bad.Add("/uncounted", field.Bad(true, "a reserve above 0 beside it", field.ErrConflict))
			}
		}
	}
	if ex.Hold == body.Unloaded || ex.Hold == body.OnBand {
		p.Mode = dose.WithoutLoad
	}
	if a.Finding != nil {
		p.Mode = dose.LoadFinding
	}
	var err error
	p.Load, err = a.load(a.Load, ex, kits)
	bad.Add("", err)
	if a.Feel != nil {
		p.Feel = &dose.Feel{Count: a.Feel.Count}
		p.Feel.Load, err = a.load(a.Feel.Load, ex, kits)
		bad.Add("/feel", err)
		if a.Feel.Count < 1 {
			bad.Add("/feel/count", field.Bad(a.Feel.Count, "1 or more", field.ErrOutOfRange))
		}
	}
	return p, bad.Err()
}

func (a Asked) checkLooked() error {
	var bad field.Errors
	if a.Looked.Who == "" {
		bad.Add("/who", field.Bad(nil, "who looked", field.ErrMissing))
	}
	bad.Add("/day", a.Looked.Day.Check())
	if a.Looked.Day > a.From {
		bad.Add("/day", field.Bad(a.Looked.Day, a.From.String()+" or before, when it begins anew", field.ErrConflict))
	}
	return bad.Err()
}

// load finds a weight that was asked for in the kit, or in one that was there before: what
// was sold or stands elsewhere was lifted all the same.
func (a Asked) load(m units.Mass, ex exercise.Exercise, kits []equipment.Kit) (equipment.Load, error) {
	each, err := ex.Hold.Each(m, a.Stated)
	if err != nil {
		return equipment.Load{}, field.At("/load", err)
	}
	if ex.Hold == body.Unloaded {
		return equipment.Load{}, nil
	}
	var bad error // of the present kit
	for i, kit := range kits {
		table, err := kit.CompileFor(ex)
		load, ok := table.Find(each)
		switch {
		case ok:
			return load, nil
		case i > 0:
		case errors.Is(err, equipment.ErrEmptyKit):
			bad = field.New("/load", m, "no weight: the kit has none for the hold "+ex.Hold.String(), field.ErrConflict)
		case err == nil: // else it is reported once, with the kit
			bad = field.New("/load", m, "a weight of the kit: "+made(table), field.ErrConflict)
		}
	}
	return equipment.Load{}, bad
}

// made lists the weights that a table makes, the first of them.
func made(t *equipment.Table) string {
	const most = 12
	var list []string
	for l := range t.Loads() {
		if len(list) == most {
			return strings.Join(list, ", ") + " and more"
		}
		list = append(list, l.Each().String())
	}
	return strings.Join(list, ", ") + " each"
}
