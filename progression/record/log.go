package record

import (
	"cmp"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// A line is what was asked for, written out.
type line struct {
	from, until units.Day
	plan        dose.Prescription
	at          int // place among what was asked
}

// A turn is one exercise on one day.
type turn struct {
	exercise exercise.ID
	day      units.Day
}

// A log is the record written out, by exercise in the order first asked for.
type log struct {
	catalogue exercise.Catalogue
	kit       equipment.Kit // compiled once
	exercises []exercise.Exercise
	curves    map[work]onerm.Curve
	asked     map[exercise.ID][]*line
	visited   map[units.Day]bool
	done      map[turn][]int      // places of the sets
	days      map[exercise.ID]int // on which there are sets
	logged    map[exercise.ID]logged
	daysOf    daysOf
}

// inForce returns what was asked for on a day.
func (l *log) inForce(id exercise.ID, day units.Day) (*line, bool) {
	if l.daysOf[turn{id, day}].asked {
		for _, a := range l.asked[id] {
			if a.from == day {
				return a, true
			}
		}
	}
	return l.goesOn(id, day)
}

// A logged exercise has its visits, the oldest first, and where in the record their parts stand.
type logged struct {
	visits []progression.Visit
	parts  []parts
	out    []progression.Visit // at which the day's check left it out
}

// parts are the places of a visit's.
type parts struct {
	visit, asked int
	sets         []int
}

// visits returns the visits at which the exercise was done, or something was
// noted of it alone.
func (r Record) visits(l *log, id exercise.ID) logged {
	list := logged{visits: make([]progression.Visit, 0, l.days[id]), parts: make([]parts, 0, l.days[id])}
	for i, day := range r.Visits {
		asked, ok := l.inForce(id, day.Day)
		if !ok {
			continue
		}
		noted, apart := day.Noted, false
		for _, b := range day.But {
			if b.Exercise == id {
				noted, apart = noted.but(b.Noted), true
			}
		}
		sets, of := l.done[turn{id, day.Day}], l.daysOf[turn{id, day.Day}]
		if len(sets) == 0 && !apart {
			if l.daysOf.out(id, day.Day) {
				list.out = append(list.out, progression.Visit{Day: day.Day, Plan: *of.after, After: of.after})
			}
			continue
		}
		v := noted.visit(day.Day, asked.plan)
		if of.asked {
			v.After = of.after
		}
		v.LookedAt, v.Sets = r.lookAt(func(l Look) bool { return i < l.Visits }), slices.Grow(v.Sets, len(sets))
		for _, at := range sets {
			v.Sets = append(v.Sets, r.Done[at])
		}
		list.visits, list.parts = append(list.visits, v), append(list.parts, parts{i, asked.at, sets})
	}
	return list
}

// places add where the parts of the visit stand.
func (p parts) places(m moves, at string) {
	m[at] = path("visits", p.visit)
	m[at+"/plan"] = path("asked", p.asked)
	for i, set := range p.sets {
		m[at+path("sets", i)] = path("done", set)
	}
}

// but returns n with what the exception gives in its place.
func (n Noted) but(e Noted) Noted {
	if e.PainFree || e.Pain != nil {
		n.PainFree, n.Pain = e.PainFree, e.Pain
	}
	n.Moment, n.Observer = cmp.Or(e.Moment, n.Moment), cmp.Or(e.Observer, n.Observer)
	n.RangeLost, n.FormLost, n.Unwell = cmp.Or(e.RangeLost, n.RangeLost), cmp.Or(e.FormLost, n.FormLost), cmp.Or(e.Unwell, n.Unwell)
	n.SorenessDays = max(n.SorenessDays, e.SorenessDays)
	return n
}

func (n Noted) visit(day units.Day, p dose.Prescription) progression.Visit {
	v := progression.Visit{
		Day: day, Plan: p, Moment: n.Moment, Pain: n.Pain, RangeLost: n.RangeLost, FormLost: n.FormLost,
		SorenessDays: n.SorenessDays, Unwell: n.Unwell,
	}
	if n.PainFree {
		none := 0.0
		v.Pain = &screening.Pain{Kind: screening.OrdinaryPain, Usual: &none, During: &none, After: &none, NextMorning: &none, WeeklyTrend: screening.StablePain}
	}
	if n.Observer != "" {
		v.Observer = dose.Observation{Who: n.Observer, Day: day}
	}
	return v
}

// inForceAll returns what is asked for on a day.
func (l *log) inForceAll(day units.Day) []exercise.ID {
	var list []exercise.ID
	for _, ex := range l.exercises {
		if _, ok := l.goesOn(ex.ID, day); ok {
			list = append(list, ex.ID)
		}
	}
	return list
}
