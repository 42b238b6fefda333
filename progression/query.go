package progression

import (
	"math"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/setlog"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// slips are the multiples of the planned load that a slip makes of it: total
// for per hand and the reverse, pounds for kilograms and the reverse.
var slips = [...]float64{2, 1 / 2., perKilogram, 1 / perKilogram}

const (
	perKilogram = 2.2 // pounds, as people reckon
	aboutSlip   = 0.05
)

// queried reports whether the load of a set is doubtful: not of the kit, or
// about a slip's multiple of the planned one. A weight that looking for the
// load may reach from the planned one is not.
func (v *Visit) queried(s setlog.Set, t *equipment.Table) (evidence.Reason, bool) {
	m, plan := each(s), v.Plan.Load.Each
	if m == plan {
		return evidence.Reason{}, false
	}
	if _, ok := t.Find(m); !ok {
		return because("progression.not-in-kit").With("load", m), true
	}
	if plan == 0 || v.reaches(m, t) {
		return evidence.Reason{}, false
	}
	ratio := float64(m) / float64(plan)
	for _, slip := range slips {
		if math.Abs(ratio-slip) <= aboutSlip*slip {
			return because("progression.slip").With("load", m).With("planned", plan), true
		}
	}
	return evidence.Reason{}, false
}

// reaches reports whether looking for the load may reach m from the plan of v.
func (v *Visit) reaches(m units.Mass, t *equipment.Table) bool {
	f, top := v.Plan.Finding, v.Plan.Load.Each
	if f == nil || m < top {
		return false
	}
	for range f.MaxSteps {
		if gap, ok := t.Next(top); ok && (f.Ceiling == 0 || gap.To.Each <= f.Ceiling) {
			top = gap.To.Each
		}
	}
	return m <= top
}

// withoutQueried returns the sets of v whose load is not doubtful, and the others.
func (v *Visit) withoutQueried(place int, t *equipment.Table) ([]setlog.Set, []Query) {
	var doubtful []Query
	var kept []setlog.Set
	for i, s := range v.Sets {
		why, bad := v.queried(s, t)
		if bad && doubtful == nil {
			kept = append(kept, v.Sets[:i]...)
		}
		if bad {
			doubtful = append(doubtful, Query{place, i, each(s), why})
		} else if doubtful != nil {
			kept = append(kept, s)
		}
	}
	if doubtful == nil {
		kept = v.Sets
	}
	return kept, doubtful
}

// clean returns the log without the sets that are doubtful, the places of the
// visits that had any, and the doubtful sets of the last one. Where nobody watched
// a visit at which form was kept, by the person's own word, somebody's look within
// the four weeks before holds. The caller's log stays as it is; passed visits of it
// are not looked at.
func (c *Course) clean(t *equipment.Table, passed int) (log []Visit, places []int, doubtful []Query) {
	log, asked, mine := c.Log, c.Request.Technique, false
	var seen dose.Observation
	change := func() {
		if !mine {
			log, mine = slices.Clone(log), true
		}
	}
	for i := range log {
		var sets []setlog.Set
		if sets, doubtful = log[i].withoutQueried(passed+i, t); doubtful != nil {
			change()
			log[i].Sets, places = sets, append(places, i)
		}
		v := &log[i]
		if asked.Made() && asked.Day <= v.Day && asked.Day > seen.Day {
			seen = asked
		}
		switch {
		case v.looked():
			seen = v.Observer
		case v.FormLost == screening.No && seen.Made() && seen.Day <= v.Day && int(v.Day-seen.Day) <= knownDays:
			change()
			log[i].Observer = seen
		}
	}
	return log, places, doubtful
}

// done returns what is known to have been done, where a limit on the share of a
// maximum may rest on it: the sets of the log whose load is not doubtful.
func (c *Course) done() []setlog.Set {
	list := slices.Clip(c.Request.Done)
	if c.Request.Screening.Limits.MaxFraction <= 0 {
		return list
	}
	table, err := c.Request.Kit.Compile(c.Request.Exercise.Hold)
	if err != nil {
		return list // the frame says what is wrong with it
	}
	for i := range c.Log {
		sets, _ := c.Log[i].withoutQueried(i, table)
		for _, s := range sets {
			s.Day = c.Log[i].Day
			list = append(list, s)
		}
	}
	return list
}
