package record

import (
	"cmp"
	"fmt"
	"reflect"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Validate returns every bad field of r by itself at once. What is bad only for
// a day that is decided on, [Record.Start] and the others report.
func (r Record) Validate() error {
	_, err := r.read()
	return err
}

// read writes the record out, and returns every bad field at once.
func (r Record) read() (log, error) {
	var bad field.Errors
	switch {
	case r.Version == 0:
		bad.Add("/version", field.Bad(nil, allowedVersion, field.ErrMissing))
	case r.Version != Version:
		bad.Add("/version", field.Bad(r.Version, allowedVersion, ErrVersion))
	}
	bad.Add("/profile", r.Profile.Validate())
	bad.Add("/join", r.Join.Validate())
	before := units.Day(0)
	for i, c := range r.Checks {
		bad.Add(path("checks", i), c.Validate())
		if i == 0 || !measuredAgain(r.Checks[i-1], c) {
			bad.Add(path("checks", i)+"/day", later(c.Day, before))
		}
		before = max(before, c.Day)
	}
	kit := r.Kit.Validate()
	bad.Add("/kit", kit)
	bad.Add("/policy", r.Policy.Validate())
	bad.Add("/beside", r.Beside.Validate())
	if r.BodyMass < 0 {
		bad.Add("/body_mass", field.Bad(r.BodyMass, "0 kg or more", field.ErrOutOfRange))
	}
	bad.Add("/began", given(r.Began))
	bad.Add("/review", given(r.Review))
	bad.Add("/days", oneWeek(r.Days))
	bad.Add("", r.checkAway())
	plain := r
	if kit != nil { // said once
		plain.Kit = equipment.Kit{}
	}
	catalogue, err := plain.Catalogue()
	bad.Add("", err)
	if err != nil {
		catalogue = exercise.Standard()
	}
	for i, s := range r.Tests {
		bad.Add(path("tests", i), checkTest(s, r.Profile.Key, catalogue))
	}
	bad.Add("", r.checkFunction())
	bad.Add("", r.checkPractised())
	bad.Add("", r.checkLooked())
	l := log{catalogue: catalogue}
	bad.Add("", r.readCurves(&l))
	bad.Add("", r.readAsked(&l))
	bad.Add("", r.checkVisits(&l))
	bad.Add("", r.checkDone(&l))
	if len(bad) == 0 {
		bad.Add("", r.checkLogged(&l))
	}
	for i, e := range r.Entries {
		bad.Add(path("entries", i), e.check(r))
	}
	return l, bad.Err()
}

// oneWeek refuses days that no week has, if there are any.
func oneWeek(days []units.Day) error {
	var bad field.Errors
	for i, day := range days {
		bad.Add(fmt.Sprintf("/%d", i), day.Check())
	}
	if len(bad) == 0 && len(days) > 0 && slices.Max(days)-slices.Min(days) >= weekDays {
		return field.Bad(slices.Max(days), "days within seven days of the first, "+slices.Min(days).String(), field.ErrOutOfRange)
	}
	return bad.Err()
}

// checkAway asks for times away that end, one after the other.
func (r Record) checkAway() error {
	var bad field.Errors
	before := units.Day(0)
	for i, a := range r.Away {
		at := path("away", i)
		bad.Add(at+"/from", a.From.Check())
		bad.Add(at+"/from", later(a.From, before))
		switch err := a.Until.Check(); {
		case err != nil:
			bad.Add(at+"/until", err)
		case a.Until < a.From || a.Until-a.From > dose.MostMissed:
			bad.Add(at+"/until", field.Bad(a.Until, fmt.Sprintf("%s or later, by at most %d days", a.From, dose.MostMissed), field.ErrOutOfRange))
		}
		before = max(before, a.Until)
	}
	return bad.Err()
}

// awayUntil is the last day of the time away that holds a day, none where the person is there.
func (r Record) awayUntil(day units.Day) units.Day {
	for _, a := range r.Away {
		if a.From <= day && day <= a.Until {
			return a.Until
		}
	}
	return 0
}

// given checks a day that need not be given.
func given(day units.Day) error {
	if day.IsZero() {
		return nil
	}
	return day.Check()
}

// later asks for a day after the one before it in its list.
func later(day, before units.Day) error {
	if day.Check() == nil && before != 0 && day <= before {
		return field.Bad(day, "a day after "+before.String()+", the one before it", field.ErrConflict)
	}
	return nil
}

// treatFirst is a low of glucose that is measured again on the same day once it is treated.
const treatFirst screening.Code = "glucose_52_69_treat_first"

// measuredAgain reports whether a check is the one before it with further readings: of
// glucose, where that one asks to treat a low, and of the others once, after a rest.
func measuredAgain(before, c screening.Check) bool {
	more := before
	treated := !c.GlucoseAgain.IsZero() && slices.Contains(screening.SessionDay(before, screening.Profile{}).Reasons, treatFirst)
	if treated {
		more.GlucoseAgain = c.GlucoseAgain
	}
	more.BPAgain, more.RestingPulseAgain, more.SpO2Again = cmp.Or(more.BPAgain, c.BPAgain), cmp.Or(more.RestingPulseAgain, c.RestingPulseAgain), cmp.Or(more.SpO2Again, c.SpO2Again)
	return reflect.DeepEqual(more, c) && (treated || !reflect.DeepEqual(before, c))
}

func checkTest(s setlog.Set, key body.Key, c exercise.Catalogue) error {
	if err := checkSet(s, key); err != nil {
		return err
	}
	_, err := c.Lookup(string(s.Exercise))
	return field.At("/exercise", err)
}

// checkFunction asks for results in the order of their days.
func (r Record) checkFunction() error {
	var bad field.Errors
	before := units.Day(0)
	for i, t := range r.Function {
		bad.Add(path("function", i), t.Validate())
		if t.Day.Check() == nil && t.Day < before {
			bad.Add(path("function", i)+"/day", field.Bad(t.Day, before.String()+" or later, since the one before is of that day", field.ErrConflict))
		}
		before = max(before, t.Day)
	}
	return bad.Err()
}

// checkSet refuses a bad set, and one of another person.
func checkSet(s setlog.Set, key body.Key) error {
	if err := s.Validate(); err != nil {
		return err
	}
	return field.At("/person", key.Matches(s.Key))
}

// checkVisits asks for visits in order, and for exceptions of what was asked for.
func (r Record) checkVisits(l *log) error {
	var bad field.Errors
	before := units.Day(0)
	l.visited = map[units.Day]bool{}
	for i, v := range r.Visits {
		at := path("visits", i)
		bad.Add(at+"/day", v.Day.Check())
		bad.Add(at+"/day", later(v.Day, before))
		before = max(before, v.Day)
		l.visited[v.Day] = true
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

// checkDone asks every set to be of a visit, and of an exercise that was asked
// for then.
func (r Record) checkDone(l *log) error {
	var bad field.Errors
	l.done, l.days = map[turn][]int{}, map[exercise.ID]int{}
	for i, s := range r.Done {
		at := path("done", i)
		if err := checkSet(s, r.Profile.Key); err != nil {
			bad.Add(at, err)
			continue
		}
		if !l.visited[s.Day] {
			bad.Add(at+"/day", field.Bad(s.Day, "the day of one of the visits", field.ErrConflict))
			continue
		}
		key := turn{s.Exercise, s.Day}
		if len(l.done[key]) == 0 {
			l.days[s.Exercise]++
		}
		l.done[key] = append(l.done[key], i)
		if _, ok := l.inForce(s.Exercise, s.Day); ok {
			continue
		}
		_, err := l.catalogue.Lookup(string(s.Exercise))
		if err == nil {
			err = field.Bad(s.Exercise, "an exercise that was asked for on that day", field.ErrConflict)
		}
		bad.Add(at+"/exercise", err)
	}
	return bad.Err()
}

// checkLogged writes the visits of each exercise out, and holds their sets against
// what was asked for.
func (r Record) checkLogged(l *log) error {
	var bad field.Errors
	l.logged = map[exercise.ID]logged{}
	for _, ex := range l.exercises {
		l.logged[ex.ID] = r.visits(l, ex.ID)
		for i, p := range l.logged[ex.ID].parts {
			if err := l.logged[ex.ID].visits[i].Check(); err != nil {
				places := moves{}
				p.places(places, "/visit")
				bad.Add("", places.of(field.At("/visit", err)))
			}
		}
	}
	l.hurtElsewhere()
	return moves{}.of(bad.Err())
}

// Catalogue returns the exercises that the record is read with: the standard
// ones, its own, and those of the bands, seats and steps of its kit; beside them, where one
// that was asked for is gone, those of the kits that its entries were decided with, which no
// kit that lacks them doses.
func (r Record) Catalogue() (exercise.Catalogue, error) {
	c := exercise.Standard()
	if len(r.Own) > 0 {
		var err error
		if c, err = c.With(r.Own...); err != nil {
			return c, field.At("/own", err)
		}
	}
	fit, err := r.Kit.Fit(c)
	if err != nil {
		return fit, field.At("/kit", err)
	}
	return r.withGone(c, fit), nil
}

// withGone adds what was asked for with a band, seat or step that is gone: below all that it
// stood above, and leading to nothing harder.
func (r Record) withGone(plain, fit exercise.Catalogue) exercise.Catalogue {
	gone := func(a Asked) bool {
		_, there := fit.Get(a.Exercise)
		return !there
	}
	if !slices.ContainsFunc(r.Asked, gone) {
		return fit
	}
	for _, kit := range r.kits(r.Kit)[1:] {
		was, err := kit.Fit(plain)
		if err != nil {
			continue
		}
		var list []exercise.Exercise
		for ex := range was.All() {
			if _, there := fit.Get(ex.ID); !there {
				ex.Harder = ""
				list = append(list, ex)
			}
		}
		if more, err := fit.With(list...); err == nil {
			fit = more
		}
	}
	return fit
}
