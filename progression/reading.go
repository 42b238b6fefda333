package progression

import (
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
)

// A reading is what a visit showed, without the sets that are queried.
type reading struct {
	v       Visit      // with the sets at base alone
	base    units.Mass // per implement, to go on from
	reps    int        // of the weakest set
	left    units.RIR  // the least that any set left; 0 where not known
	known   bool       // the reserve of every set was recorded
	finding bool       // the load was being looked for
	tried   bool       // a heavier weight was, and it was too much
	gates   GateReport
}

// A trial is what a weight that is tried has to leave.
type trial struct {
	least units.RIR // the reserve asked for today
	rated bool      // a rating below 8 on the scale omni does too, as the policy has it
}

// read returns what the visit showed.
func (v *Visit) read(asked trial, t *equipment.Table) (reading, error) {
	r := reading{v: *v, base: v.Plan.Load.Each, finding: v.Plan.Finding != nil}
	if searches(&v.Plan) {
		r.findBase(asked, t, v.mayFind())
	} else if lightest, ok := v.lightest(); ok {
		r.base = min(r.base, lightest)
	}
	if r.finding { // a first dose, of which nothing was known
		r.v.Plan.Reserve.Least = min(r.v.Plan.Reserve.Least, asked.least)
	}
	if len(r.v.Sets) > 0 {
		r.reps = r.v.fewest()
		r.left, r.known = r.v.reserve()
	}
	var err error
	r.gates, err = Gates(r.v)
	return r, err
}

// mayFind reports whether nothing but effort or repetitions stands against a
// heavier weight: without that, what was tried beyond the plan does not count.
func (v *Visit) mayFind() bool {
	events, err := v.events()
	return err == nil && max(events.Advice, v.pain().Advice, v.rangeOfMovement().Advice, v.technique().Advice) == rule.Raise
}

// lightest returns the least load of any set.
func (v *Visit) lightest() (units.Mass, bool) {
	least, some := units.MaxMass, false
	for _, s := range v.Sets {
		least, some = min(least, each(s)), true
	}
	return least, some
}

// findBase takes the heaviest weight that ended as it should, up to the first
// that did not, and leaves the sets with it; without climb the planned one.
func (r *reading) findBase(asked trial, t *equipment.Table, climb bool) {
	at := r.v.sets(func(m units.Mass) bool { return m == r.base })
	gap, ok := t.Next(r.base)
	for climb && ok {
		sets := r.v.sets(func(m units.Mass) bool { return m == gap.To.Each })
		if len(sets) == 0 {
			break
		}
		if !r.v.with(sets).held(asked) {
			r.tried = true
			break
		}
		at, r.base = sets, gap.To.Each
		r.v.Plan.Load = gap.To
		gap, ok = t.Next(r.base)
	}
	r.v.Sets = at
	r.v.Plan.Sets = max(1, min(r.v.Plan.Sets, r.v.done()))
}

// sets returns the sets with a load that is wanted.
func (v *Visit) sets(wanted func(each units.Mass) bool) []setlog.Set {
	var list []setlog.Set
	for _, s := range v.Sets {
		if wanted(each(s)) {
			list = append(list, s)
		}
	}
	return list
}

func (v *Visit) with(sets []setlog.Set) *Visit {
	other := *v
	other.Sets = sets
	return &other
}

// held reports whether a weight that was tried was done on every side, with the
// count asked for and the reserve.
func (v *Visit) held(asked trial) bool {
	left, known := v.reserve()
	enough := !v.countsReserve() || known && left >= asked.least || asked.rated && v.ratedLow()
	return v.done() > 0 && v.fewest() >= v.Plan.Count && enough
}

// ratedLow reports whether every set was rated below 8 of 10 on the scale omni.
func (v *Visit) ratedLow() bool {
	for _, s := range v.Sets {
		if s.Effort.Scale() != units.ScaleOMNI || s.Effort.Value() >= rule.OMNILimit {
			return false
		}
	}
	return len(v.Sets) > 0
}

// beyondCounting reports whether every set left more than can be counted, or was
// rated as easy where nothing is counted.
func (r *reading) beyondCounting() bool {
	if r.v.Plan.Measure == exercise.Repetitions {
		return r.known && r.left > rule.Countable
	}
	return len(r.v.Sets) > 0 && !slices.ContainsFunc(r.v.Sets, func(s setlog.Set) bool { return !ratedEasy(s.Effort) })
}

// rated reports whether every set was rated on some scale.
func (r *reading) rated() bool {
	return !slices.ContainsFunc(r.v.Sets, func(s setlog.Set) bool { return s.Effort.IsZero() })
}

// ratedEasy reports a rating that stands for more in reserve than can be counted, or
// lies below 8 of 10 on the scale omni: what is counted in seconds or metres has
// nothing else to go by.
func ratedEasy(e units.Effort) bool {
	left, err := e.RIR()
	least, _ := left.Min()
	return err == nil && least > rule.Countable || e.Scale() == units.ScaleOMNI && e.Value() < rule.OMNILimit
}
