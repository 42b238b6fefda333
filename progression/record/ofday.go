package record

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/units"
)

// A dayOf is what the last decision for a day says of an exercise that is so for the day's check alone.
type dayOf struct {
	after *dose.Prescription // what its course goes on from; nil: it stands in for another
	asked bool               // something is asked for of it, on that day alone
}

// daysOf are the exercises that the check of a day made lighter, replaced or left out, and what
// stood in for them, by the last decision for that day.
type daysOf map[turn]dayOf

func (r Record) daysOf() daysOf {
	days, seen := daysOf{}, map[units.Day]bool{}
	for _, e := range slices.Backward(r.Entries) {
		if seen[e.Day] {
			continue
		}
		seen[e.Day] = true
		for _, item := range e.Items {
			d := &item.Decision
			if d.After == nil {
				continue
			}
			days[turn{item.Exercise, e.Day}] = dayOf{d.After, d.Next != nil && d.Instead == ""}
			if d.Instead != "" {
				days[turn{d.Instead, e.Day}] = dayOf{asked: true}
			}
		}
	}
	return days
}

// out reports whether a day's check left an exercise out, or put another in its place.
func (days daysOf) out(id exercise.ID, day units.Day) bool {
	of := days[turn{id, day}]
	return of.after != nil && !of.asked
}

// goesOn is inForce, without what is asked for on its day alone.
func (l *log) goesOn(id exercise.ID, day units.Day) (*line, bool) {
	for _, a := range slices.Backward(l.asked[id]) {
		if a.from <= day && !l.daysOf[turn{id, a.from}].asked {
			return a, a.until == 0 || day <= a.until
		}
	}
	return nil, false
}

// course returns the visits of an exercise that goes on from what was asked for, with those at
// which the day's check left it out, since the last that was no such day.
func (l *log) course(id exercise.ID, asked *line, begins bool) []progression.Visit {
	list := l.logged[id].visits
	if begins { // its dose is gone on from, as of a visit with nothing done
		list = append(slices.Clip(list), progression.Visit{Day: asked.from, Plan: asked.plan})
	}
	since := units.Day(0)
	for _, v := range list {
		if v.After == nil {
			since = v.Day
		}
	}
	out := slices.DeleteFunc(slices.Clone(l.logged[id].out), func(v progression.Visit) bool { return v.Day <= since })
	if len(out) == 0 {
		return list
	}
	list = slices.Concat(list, out)
	slices.SortStableFunc(list, func(a, b progression.Visit) int { return int(a.Day - b.Day) })
	return list
}
