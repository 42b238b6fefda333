package record

import (
	"errors"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/units"
)

// Anew returns what an exercise begins with on a day, as on a first visit, with one set, and where it
// was asked for before, within that: no higher count, unless screening asks for more in a set, and no
// less in reserve. The load may be more, where nothing lighter is there: whoever asks for it compares
// it. Looked says that somebody has looked at it; without, what was stopped until
// somebody has does not begin. Nil where nothing of it, or in its place, can be dosed. The errors are those
// of [Record.Week].
func (r Record) Anew(id exercise.ID, looked bool, day units.Day) (*dose.Prescription, error) {
	stops := r.stops(day)
	if looked {
		delete(stops, id)
	}
	last := r.lastAsked(id)
	r.Exercises, r.Phase, r.Minutes = []exercise.ID{id}, dose.Familiarise, 0
	w, err := r.week(day, stops)
	var barred *dose.ConstraintError
	switch {
	case errors.As(err, &barred) || err == nil && (len(w.Sessions) == 0 || len(w.Sessions[0].Items) == 0):
		return nil, nil
	case err != nil:
		return nil, err
	}
	next := &w.Sessions[0].Items[0]
	if next.Exercise != last.Exercise {
		return next, nil
	}
	o, err := r.Screening(day)
	last.bounds(next, o.Limits.LeastCount)
	return next, err
}

// lastAsked is the last line of an exercise, none where it was never asked for.
func (r Record) lastAsked(id exercise.ID) (last Asked) {
	for _, a := range r.Asked {
		if a.Exercise == id {
			last = a
		}
	}
	return last
}

// bounds keeps a dose of one set within a line, where a set has a least count.
func (a Asked) bounds(p *dose.Prescription, least int) {
	p.Count = min(p.Count, max(a.Count, least))
	if a.Reserve != nil && *a.Reserve >= p.Reserve.Least {
		p.Reserve = dose.Reserve{Least: *a.Reserve, Countable: p.Reserve.Countable && !a.Uncounted}
	}
}

// waitsToBegin reports whether the dose in force was never done, or begins anew after a look and was not
// done since: what hurt before it was looked at stops it no second time.
func (r Record) waitsToBegin(done []progression.Visit, asked *line) bool {
	n := len(done)
	return n == 0 || r.Asked[asked.at].Looked != nil && done[n-1].Day < asked.from
}
