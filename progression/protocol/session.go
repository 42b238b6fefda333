package protocol

import (
	"fmt"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A SchemeSet is one set of a scheme. Either Reps or AsMany says how long it goes.
type SchemeSet struct {
	Reps      int            `json:"reps,omitzero"`       // repetitions, 1 to 12
	AsMany    bool           `json:"as_many,omitzero"`    // as many as possible
	Share     units.Fraction `json:"share,omitzero"`      // of the base; 0 where RM, Adjusted or a fixed step decides
	RM        int            `json:"rm,omitzero"`         // the load is this repetition maximum, which is not known from the base
	Adjusted  bool           `json:"adjusted,omitzero"`   // the third set's repetitions decide the mass
	ToFailure bool           `json:"to_failure,omitzero"` // ends when no further repetition can be done
	// Mass is exact and keeps the base's unit; zero where it is not known yet.
	Mass units.Marked `json:"mass,omitzero"`
	// Load is the greatest weight of the kit not above Mass; nil without a kit.
	Load *equipment.Load `json:"load,omitempty"`
}

// A SchemeSession is a scheme's sets in their order.
type SchemeSession struct {
	Scheme Scheme       `json:"scheme"`
	Base   units.Marked `json:"base"` // repetition maximum or working weight, per implement where a kit was given
	Sets   []SchemeSet  `json:"sets"`
	// Count is the number of sets where a range was printed; Sets has the fewest.
	Count   units.Range[int]  `json:"count,omitzero"`
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// Plan lays out the scheme's session for a base, which is the repetition
// maximum or working weight that [Scheme.Base] tells, in kilograms or pounds.
// With a kit, which may be nil, the base is per implement and each mass that is
// known is rounded down to a weight that exists.
//
// It returns every bad field at once: no scheme; a base at or below zero, or
// so light that a fixed step takes the last set to zero; a base without kg or
// lb; and, below "/sets/0" and so on, the [equipment.TooHeavyError] of a set
// that even the lightest weight is too heavy for.
func (s Scheme) Plan(base units.Marked, kit *equipment.Table) (SchemeSession, error) {
	l := s.layout()
	var bad field.Errors
	bad.Add("/scheme", s.check())
	bad.Add("/base", checkBase(base, l))
	if err := bad.Err(); err != nil {
		return SchemeSession{}, err
	}
	session := SchemeSession{Scheme: s, Base: base, Count: l.count, Sets: append([]SchemeSet(nil), l.sets...)}
	for i := range session.Sets {
		bad.Add(fmt.Sprintf("/sets/%d", i), session.Sets[i].weigh(base, l, i, kit))
	}
	if err := bad.Err(); err != nil {
		return SchemeSession{}, err
	}
	session.Reasons = s.reasons(l)
	return session, nil
}

func (s Scheme) reasons(l layout) []evidence.Reason {
	reasons := []evidence.Reason{
		evidence.Because("protocol.scheme", l.fact).With(evidence.Term("scheme", s.String())),
		evidence.Because("protocol.to-failure", factFailure),
	}
	if !l.count.IsZero() {
		reasons = append(reasons, evidence.Because("protocol.fewest-sets", l.fact, factPick).With(evidence.Count("count", l.count), evidence.Count("sets", len(l.sets))))
	}
	return reasons
}

func checkBase(base units.Marked, l layout) error {
	least := units.Mass(0)
	if l.step > 0 {
		least, _ = l.step.Times(len(l.sets) - 1) // a few pounds
	}
	var bad field.Errors
	bad.Refuse(base.Mass <= least, "", base, "above "+units.Marked{Mass: least, Unit: base.Unit}.String(), field.ErrOutOfRange)
	bad.Add("", checkUnit(base.Unit))
	return bad.Err()
}

func checkUnit(u units.MassUnit) error {
	switch u {
	case units.KG, units.LB:
		return nil
	case 0:
		return field.Bad(nil, "kg or lb", field.ErrMissing)
	}
	return field.Bad(u, "kg or lb", field.ErrOutOfRange)
}

// weigh gives the set at index i its mass, as far as the base tells it.
func (s *SchemeSet) weigh(base units.Marked, l layout, i int, kit *equipment.Table) error {
	mass := base.Mass
	switch {
	case s.Adjusted, s.RM != 0 && s.RM != l.rm:
		return nil
	case l.step > 0:
		down, _ := l.step.Times(i) // checkBase saw that it fits
		mass -= down
	case s.Share > 0:
		mass, _ = base.Mass.Scale(s.Share, units.Nearest) // a share of at most 1; 0.7 is a little less in binary
	}
	return s.put(units.Marked{Mass: mass, Unit: base.Unit}, kit)
}

// put sets the mass and rounds it down to the kit, if there is one.
func (s *SchemeSet) put(m units.Marked, kit *equipment.Table) error {
	s.Mass = m
	if kit == nil {
		return nil
	}
	load, err := kit.Nearest(m.Mass, equipment.RoundingRule{})
	if err != nil {
		return err
	}
	s.Load = &load
	return nil
}
