package visit

import (
	"math"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/internal/given"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Doubt is a set that was not used, because its load is doubtful: ask.
type Doubt struct {
	Visit  int             `json:"visit"` // place in the log, from 0
	Set    int             `json:"set"`   // place in the visit, from 0
	Load   units.Mass      `json:"load"`  // per implement, as logged
	Reason evidence.Reason `json:"reason"`
}

// slips are the multiples of the planned load that a slip makes of it: total
// for per hand and the reverse, pounds for kilograms and the reverse.
var slips = [...]float64{2, 1 / 2., perKilogram, 1 / perKilogram}

const (
	perKilogram = 2.2 // pounds, as people reckon
	aboutSlip   = 0.05
)

// queried reports whether a load other than the planned one is doubtful: not of the kit, or
// about a slip's multiple of the planned one. A weight that looking for the
// load may reach from the planned one is not.
func (v *Visit) queried(m units.Mass, t *equipment.Table) (evidence.Reason, bool) {
	plan := v.Plan.Load.Each()
	if _, ok := t.Find(m); !ok {
		return because("progression.not-in-kit").With(evidence.Mass("load", m)), true
	}
	if plan == 0 || v.reaches(m, t) {
		return evidence.Reason{}, false
	}
	ratio := float64(m) / float64(plan)
	for _, slip := range slips {
		if math.Abs(ratio-slip) <= aboutSlip*slip {
			return because("progression.slip").With(evidence.Mass("load", m), evidence.Mass("planned", plan)), true
		}
	}
	return evidence.Reason{}, false
}

// reaches reports whether looking for the load may reach m from the plan of v, or
// feeling the next weight does.
func (v *Visit) reaches(m units.Mass, t *equipment.Table) bool {
	if feel := v.Plan.Feel; feel != nil && m == feel.Load.Each() {
		return true
	}
	f, top := v.Plan.Finding, v.Plan.Load.Each()
	if f == nil || m < top {
		return false
	}
	for range f.MaxSteps {
		if gap, ok := t.Next(top); ok && (f.Ceiling == 0 || gap.To.Each() <= f.Ceiling) {
			top = gap.To.Each()
		}
	}
	return m <= top
}

// WithoutQueried returns the sets of v whose load is not doubtful, and the others.
func (v *Visit) WithoutQueried(place int, t *equipment.Table) ([]setlog.Set, []Doubt) {
	v = field.OrZero(v)
	var doubtful []Doubt
	var kept []setlog.Set
	plan := v.Plan.Load.Each()
	for i := range v.Sets {
		s := &v.Sets[i]
		m, _ := s.Hold.Each(s.Load, s.Stated)
		if m != plan {
			if why, bad := v.queried(m, t); bad {
				if doubtful == nil {
					kept = append(kept, v.Sets[:i]...)
				}
				doubtful = append(doubtful, Doubt{place, i, m, why})
				continue
			}
		}
		if doubtful != nil {
			kept = append(kept, *s)
		}
	}
	if doubtful == nil {
		kept = v.Sets
	}
	return kept, doubtful
}

// Less reports whether a set, whatever its load, shows less than was asked: nearer to
// failure, or fewer repetitions than what was left makes up for or the range begins with.
func (v *Visit) Less(s setlog.Set) bool {
	v = field.OrZero(v)
	told, known := given.Told(s.Effort)
	if asked := v.Plan.Reserve.Least; v.countsReserve() && known {
		return told < asked || v.fellShort(&s) || float64(s.Reps)+float64(told) < float64(v.Plan.Count)+float64(asked)
	}
	return s.Reps < v.Plan.Count
}
