package review

import (
	"strconv"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A logged visit remembers where in the case its parts stand.
type logged struct {
	progression.Visit
	visit, asked int   // places in the case
	rows         []int // places of the sets
}

// visits returns the visits at which the exercise was done, or something was
// noted of it alone.
func (c Case) visits(l log, id exercise.ID) []logged {
	var list []logged
	for i, r := range c.Visits {
		asked, ok := l.inForce(id, r.Day)
		if !ok {
			continue
		}
		v := logged{visit: i, asked: asked.at}
		noted, apart := r.Noted, false
		for _, b := range r.But {
			if b.Exercise == id {
				noted, apart = noted.but(b.Noted), true
			}
		}
		v.Visit = noted.visit(r.Day, asked.plan)
		for _, s := range l.rows {
			if s.Exercise == id && s.Day == r.Day {
				v.Sets, v.rows = append(v.Sets, s.Set), append(v.rows, s.at)
			}
		}
		if len(v.Sets) > 0 || apart {
			list = append(list, v)
		}
	}
	return list
}

// but returns n with what the exception gives in its place.
func (n Noted) but(e Noted) Noted {
	if e.PainFree || e.Pain != nil {
		n.PainFree, n.Pain = e.PainFree, e.Pain
	}
	if e.Moment != nil {
		n.Moment = e.Moment
	}
	for _, a := range [...]struct {
		to  *screening.Answer
		new screening.Answer
	}{{&n.RangeLost, e.RangeLost}, {&n.FormLost, e.FormLost}, {&n.Unwell, e.Unwell}} {
		if a.new != screening.Unknown {
			*a.to = a.new
		}
	}
	if e.Observer != "" {
		n.Observer = e.Observer
	}
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

// at moves the bad fields of the visit to where they stand in the case.
func (v logged) at(err error) error {
	var bad field.Errors
	bad.Add("", err)
	for _, f := range bad {
		f.Path = v.place(f.Path)
	}
	return bad.Err()
}

// place returns where a field of the visit stands in the case. What was noted is
// checked before, where it stands.
func (v logged) place(which string) string {
	if rest, ok := strings.CutPrefix(which, "/plan"); ok {
		return path("asked", v.asked) + rest
	}
	if rest, ok := strings.CutPrefix(which, "/sets/"); ok {
		n, rest, _ := strings.Cut(rest, "/")
		if i, err := strconv.Atoi(n); err == nil && i < len(v.rows) {
			return path("sets", v.rows[i]) + "/" + rest
		}
	}
	return path("visits", v.visit) + which
}
