package progression

import (
	"math"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/setlog"
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
func queried(s setlog.Set, plan units.Mass, expected func(units.Mass) bool, t *equipment.Table) (evidence.Reason, bool) {
	m := each(s)
	if m == plan {
		return evidence.Reason{}, false
	}
	if _, ok := t.Find(m); !ok {
		return evidence.Because("progression.not-in-kit", factQueries).With("load", m), true
	}
	if expected(m) || plan == 0 {
		return evidence.Reason{}, false
	}
	ratio := float64(m) / float64(plan)
	for _, slip := range slips {
		if math.Abs(ratio-slip) <= aboutSlip*slip {
			return evidence.Because("progression.slip", factQueries).With("load", m).With("planned", plan), true
		}
	}
	return evidence.Reason{}, false
}

// reachable returns what looking for the load may reach from the plan of v.
func (v Visit) reachable(t *equipment.Table) func(units.Mass) bool {
	top, f := v.Plan.Load.Each, v.Plan.Finding
	if f != nil {
		for range f.MaxSteps {
			if gap, ok := t.Next(top); ok && (f.Ceiling == 0 || gap.To.Each <= f.Ceiling) {
				top = gap.To.Each
			}
		}
	}
	return func(m units.Mass) bool { return m >= v.Plan.Load.Each && m <= top && top > v.Plan.Load.Each }
}

// withoutQueried returns v without the sets whose load is doubtful, and those.
func (v Visit) withoutQueried(place int, t *equipment.Table) (Visit, []Query) {
	var doubtful []Query
	var kept []setlog.Set
	expected := v.reachable(t)
	for i, s := range v.Sets {
		why, bad := queried(s, v.Plan.Load.Each, expected, t)
		if bad && doubtful == nil {
			kept = append(kept, v.Sets[:i]...)
		}
		if bad {
			doubtful = append(doubtful, Query{place, i, each(s), why})
		} else if doubtful != nil {
			kept = append(kept, s)
		}
	}
	if doubtful != nil {
		v.Sets = kept
	}
	return v, doubtful
}
