package visit

import (
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Summary is what a visit showed, without the sets that are queried.
type Summary struct {
	Visit   *Visit     // with the sets at base alone, for reading: it may be the log's own
	Base    units.Mass // per implement, to go on from
	Reps    int        // of the weakest set
	Left    units.RIR  // the least that any set left; 0 where not known
	Known   bool       // the reserve of every set was recorded
	Finding bool       // the load was being looked for
	Tried   bool       // a heavier weight was, and it was too much
	Gates   GateReport
}

// A Trial is what a weight that is tried has to leave.
type Trial struct {
	Least units.RIR // the reserve asked for today
	// Floor is how many repetitions it has to have allowed with Least.
	Floor int
	Most  units.Mass // per implement: no heavier one counts as found
	Rated bool       // a rating below 8 on the scale omni does too, as the policy has it
}

// InVain reports whether a set of the visit felt the next weight, and came neither to
// what was asked nor to an end by its reserve.
func (v *Visit) InVain(s setlog.Set) bool {
	v = field.OrZero(v)
	f := v.Plan.Feel
	if f == nil || given.Each(s) != f.Load.Each() || s.Reps >= f.Count {
		return false
	}
	told, known := given.Told(s.Effort)
	return !known || told < v.Plan.Reserve.Least
}

// Read returns what the visit showed, which has to be a good one, as [Visit.Check] takes
// it; without a visit or a table it is a [field.ErrMissing] or what Check says.
func (v *Visit) Read(asked Trial, t *equipment.Table) (Summary, error) {
	if v == nil {
		return Summary{}, v.Check()
	}
	if t == nil {
		return Summary{}, field.New("/kit", nil, "a table of what it makes", field.ErrMissing)
	}
	r, f := Summary{Base: v.Plan.Load.Each(), Finding: v.Plan.Finding != nil}, v.Plan.Feel
	if r.Finding || f != nil {
		v = v.With(v.Sets) // of which some is left out
	}
	if r.Visit = v; f != nil { // tells of strength, and nothing of the dose
		v.Sets = v.SetsWith(func(m units.Mass) bool { return m != f.Load.Each() })
		v.Plan.Sets = max(1, v.Plan.Sets-1)
	}
	if given.Searches(&v.Plan) {
		r.findBase(asked, t, v.MayFind())
	} else if lightest, ok := v.lightest(); ok {
		r.Base = min(r.Base, lightest)
	}
	if r.Finding { // a first dose, of which nothing was known
		v.Plan.Reserve.Least = min(v.Plan.Reserve.Least, asked.Least)
	}
	if len(v.Sets) > 0 {
		r.Reps = v.fewest()
		r.Left, r.Known = v.Reserve()
	}
	var err error
	r.Gates, err = v.gates()
	return r, err
}

// MayFind reports whether nothing but effort or repetitions stands against a
// heavier weight: without that, what was tried beyond the plan does not count.
func (v *Visit) MayFind() bool {
	v = field.OrZero(v)
	events, err := v.events()
	return err == nil && max(events.Advice, v.pain().Advice, v.rangeOfMovement().Advice, v.Technique().Advice) == rule.Raise
}

// lightest returns the least load of any set.
func (v *Visit) lightest() (units.Mass, bool) {
	least, some := units.MaxMass, false
	for i := range v.Sets {
		s := &v.Sets[i]
		each, _ := s.Hold.Each(s.Load, s.Stated)
		least, some = min(least, each), true
	}
	return least, some
}

// findBase takes the heaviest weight that ended as it should, up to the first
// that did not, and leaves the sets with it; without climb the planned one.
func (r *Summary) findBase(asked Trial, t *equipment.Table, climb bool) {
	at := r.Visit.SetsWith(func(m units.Mass) bool { return m == r.Base })
	gap, ok := t.Next(r.Base)
	for climb && ok && gap.To.Each() <= asked.Most {
		sets := r.Visit.SetsWith(func(m units.Mass) bool { return m == gap.To.Each() })
		if len(sets) == 0 {
			break
		}
		if !r.Visit.With(sets).held(asked) {
			r.Tried = true
			break
		}
		at, r.Base = sets, gap.To.Each()
		r.Visit.Plan.Load = gap.To
		gap, ok = t.Next(r.Base)
	}
	r.Visit.Sets = at
	r.Visit.Plan.Sets = max(1, min(r.Visit.Plan.Sets, r.Visit.Done()))
}

// SetsWith returns the sets with a load that is wanted.
func (v *Visit) SetsWith(wanted func(each units.Mass) bool) []setlog.Set {
	v = field.OrZero(v)
	var list []setlog.Set
	for i := range v.Sets {
		s := &v.Sets[i]
		if each, _ := s.Hold.Each(s.Load, s.Stated); wanted != nil && wanted(each) {
			list = append(list, *s)
		}
	}
	return list
}

// With returns v with other sets.
func (v *Visit) With(sets []setlog.Set) *Visit {
	v = field.OrZero(v)
	other := *v
	other.Sets = sets
	return &other
}

// held reports whether a weight that was tried was done on every side, each set with
// what repetitions and reserve have to come to together, or with the count asked for
// where no reserve is counted.
func (v *Visit) held(asked Trial) bool {
	switch {
	case v.Done() == 0:
		return false
	case !v.countsReserve(), asked.Rated && v.ratedLow():
		return v.fewest() >= v.Plan.Count
	}
	return !slices.ContainsFunc(v.Sets, func(s setlog.Set) bool {
		left, known := given.Told(s.Effort)
		return !known || float64(s.Reps)+float64(left) < float64(asked.Floor)+float64(asked.Least)
	})
}

// ratedLow reports whether every set was rated below 8 of 10 on the scale omni.
func (v *Visit) ratedLow() bool {
	return len(v.Sets) > 0 && !slices.ContainsFunc(v.Sets, func(s setlog.Set) bool {
		return s.Effort.Scale() != units.ScaleOMNI || s.Effort.Number() >= given.OMNILimit
	})
}

// BeyondCounting reports whether every set left more than can be counted, or was
// Rated as easy where nothing is counted.
func (r *Summary) BeyondCounting() bool {
	r = field.OrZero(r)
	v := field.OrZero(r.Visit)
	if v.Plan.Measure == exercise.Repetitions {
		return r.Known && r.Left > given.Countable
	}
	return len(v.Sets) > 0 && !slices.ContainsFunc(v.Sets, func(s setlog.Set) bool { return !ratedEasy(s.Effort) })
}

// AllRated reports whether every set was rated on some scale.
func (r *Summary) AllRated() bool {
	v := field.OrZero(field.OrZero(r).Visit)
	return !slices.ContainsFunc(v.Sets, func(s setlog.Set) bool { return s.Effort.IsZero() })
}

// ratedEasy reports a rating that stands for more in reserve than can be counted, or
// lies below 8 of 10 on the scale omni: what is counted in seconds or metres has
// nothing else to go by.
func ratedEasy(e units.Effort) bool {
	least, known := given.Told(e)
	return known && least > given.Countable || e.Scale() == units.ScaleOMNI && e.Number() < given.OMNILimit
}
