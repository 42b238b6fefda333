package record

import (
	"cmp"
	"errors"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// lookFirst are the reasons of a stop that somebody has to look at: what was done went badly, and
// nothing easier was there. All others end by themselves; the comment of the package has the table.
var lookFirst = []evidence.ReasonCode{recurring, "progression.eased", "progression.too-much", "progression.below-three"}

const (
	recurring      evidence.ReasonCode = "progression.recurring"
	staysStopped   evidence.ReasonCode = "progression.stays-stopped"
	otherStopped   evidence.ReasonCode = "progression.other-stopped"
	medicalAbsence evidence.ReasonCode = "progression.medical-absence"
	harderRow                          = "harder-variant" // of progression
)

// Waits reports whether the exercise was stopped, or gave way, until somebody has looked at it, and why. What is
// so for a day's check alone never does: it stops nothing, and what hurt again gives way on any day.
func (i Decided) Waits() (why evidence.Reason, waits bool) {
	d := i.Decision
	codes := lookFirst
	if d.Instead != "" {
		codes = lookFirst[:1]
	}
	at := slices.IndexFunc(d.Reasons, func(why evidence.Reason) bool { return slices.Contains(codes, why.Code) || why.Code == staysStopped })
	if at < 0 || d.Action != progression.StopExercise && d.Instead == "" {
		return why, false
	}
	return d.Reasons[at], true
}

// stops are the exercises that kept decisions stopped until somebody has looked, and the first
// decision that nobody is known on a day to have looked after.
func (r Record) stops(day units.Day) map[exercise.ID]Entry {
	open := map[exercise.ID]Entry{}
	for _, e := range r.Entries {
		for _, item := range e.Items {
			_, there := open[item.Exercise]
			if _, waits := item.Waits(); waits && !there && !r.lookedAfter(e, item.Exercise, day) {
				open[item.Exercise] = e
			}
		}
	}
	return open
}

// lookedAfter reports whether an exercise begins anew after a decision, up to a day, by a look no
// earlier than the last visit that the decision knew.
func (r Record) lookedAfter(e Entry, id exercise.ID, day units.Day) bool {
	return slices.ContainsFunc(r.Asked[min(max(0, e.Rests.Asked), len(r.Asked)):], func(a Asked) bool {
		return a.Exercise == id && a.From <= day && a.Looked != nil && a.Looked.Day >= r.lastOf(e)
	})
}

// lastOf is the day of the last visit that an entry knew.
func (r Record) lastOf(e Entry) units.Day {
	if n := min(e.Rests.Visits, len(r.Visits)); n > 0 {
		return r.Visits[n-1].Day
	}
	return 0
}

// saysStopped says that an exercise stays stopped, itself or as one that could come in another's place.
func saysStopped(code evidence.ReasonCode, name string, by Entry) evidence.Reason {
	return evidence.Because(code, "progression.refer", "progression.variant").With(evidence.Term("exercise", name), evidence.Day("day", cmp.Or(by.Decided, by.Day)))
}

// keepStops puts a stop in place of every dose of an exercise that was stopped until somebody has
// looked, whatever was logged since, and keeps it from taking another's place; an easier one may
// still take its own. It reports whether a harder variant was taken away: it is then decided again.
func (r Record) keepStops(l *log, items []Decided, courses []progression.Course, day units.Day) (again bool) {
	stops := r.stops(day)
	for i := range items {
		d := &items[i].Decision
		by, held := stops[d.Instead]
		ex, _ := l.catalogue.Get(d.Instead)
		switch {
		case held && d.Change == progression.HarderVariant:
			courses[i].Policy.Without, again = slices.Concat(courses[i].Policy.Without, []string{harderRow}), true
		case held:
			why := slices.DeleteFunc(slices.Clone(d.Reasons), func(why evidence.Reason) bool { return why.Code == "progression.instead" })
			*d = progression.Decision{Action: progression.StopExercise, Gates: d.Gates, Queries: d.Queries, Reasons: append(why, saysStopped(otherStopped, ex.Name, by))}
		}
		if next := courses[i].Request.Exercise.Harder; slices.Contains(courses[i].Policy.Without, harderRow) && !slices.Contains(r.Policy.Without, harderRow) {
			ex, _ := l.catalogue.Get(next)
			d.Reasons = append(slices.Clip(d.Reasons), saysStopped(otherStopped, ex.Name, stops[next]))
		}
		if by, held = stops[items[i].Exercise]; held {
			items[i].keepStop(by, r.lastOf(by))
		}
	}
	if why := r.awayIll(); why != nil {
		for i := range items {
			d := &items[i].Decision
			*d = progression.Decision{Action: progression.StopAndRefer, Gates: d.Gates, Queries: d.Queries, Reasons: []evidence.Reason{*why}}
		}
	}
	return again
}

// keepStop stops an exercise again that was stopped by an entry which knew the log up to a day.
func (i *Decided) keepStop(by Entry, known units.Day) {
	d := &i.Decision
	easier := d.Action == progression.ChangeVariant && d.Change == progression.NoChange
	_, waits := i.Waits()
	switch {
	case d.Action == progression.StopAndRefer:
		return
	case !easier && d.Next != nil || d.Action == progression.StopExercise && !waits:
		*d = progression.Decision{Action: progression.StopExercise, Gates: d.Gates, Queries: d.Queries, Reasons: []evidence.Reason{saysStopped(staysStopped, i.Name, by)}}
	}
	if n := len(i.Log); n > 0 && i.Log[n-1].Day > known && len(i.Log[n-1].Sets) > 0 {
		d.Reasons = append(slices.Clip(d.Reasons), evidence.Because("progression.done-stopped", "progression.refer").With(evidence.Day("day", i.Log[n-1].Day)))
	}
}

// awayIll is why nothing goes on since a decision was told that days missed had a medical cause,
// nil once an assessment has followed: to train all the same takes the place of none.
func (r Record) awayIll() *evidence.Reason {
	for _, e := range r.Entries {
		if e.Given.Profile.Day != r.Profile.Day {
			continue
		}
		for _, item := range e.Items {
			if j := slices.IndexFunc(item.Decision.Reasons, func(why evidence.Reason) bool { return why.Code == medicalAbsence }); j >= 0 {
				return &item.Decision.Reasons[j]
			}
		}
	}
	return nil
}

// without plans a week without what waits for somebody's look, and says so of it.
func (l *log) without(request week.Request, stops map[exercise.ID]Entry) (week.Week, error) {
	for ex := range l.catalogue.All() {
		if _, held := stops[ex.ID]; held {
			request.Without = append(request.Without, ex.ID)
		}
	}
	w, err := week.Plan(request)
	says := func(id exercise.ID) evidence.Reason {
		ex, _ := l.catalogue.Get(id)
		return saysStopped(otherStopped, ex.Name, stops[id])
	}
	if bad := new(field.Error); errors.As(err, &bad) && bad.Path == "/without" {
		return w, &dose.ConstraintError{Constraint: says(request.Without[0]), Err: dose.ErrNoDose}
	}
	for _, out := range w.LeftOut {
		for i, why := range out.Reasons {
			if id := slices.IndexFunc(request.Without, func(id exercise.ID) bool {
				return slices.Contains(why.Args, evidence.ID("exercise", id))
			}); id >= 0 && why.Code == "dose.not-wanted" {
				out.Reasons[i] = says(request.Without[id])
			}
		}
	}
	return w, err
}
