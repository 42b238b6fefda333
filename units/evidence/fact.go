package evidence

import (
	"fmt"
	"iter"

	"example.org/posology/units"
)

// FactID names a fact: the package, a dot and a name, such as "onerm.epley".
type FactID string

// A Fact is one statement with its provenance.
type Fact struct {
	ID      FactID   `json:"id"`
	Value   string   `json:"value"`            // what is stated, with units, in our own words
	Source  SourceID `json:"source,omitzero"`  // empty for common practice and design
	Via     string   `json:"via,omitzero"`     // through what it was read, where not in the source itself
	Locator string   `json:"locator,omitzero"` // page, table or section, where known
	Basis   Basis    `json:"basis"`            // how it is known here
	From    []FactID `json:"from,omitempty"`   // what it was computed from or chosen after
}

// A Ledger holds facts by their IDs, in the order added. The zero value is
// empty and ready to use.
type Ledger struct {
	order []FactID
	facts map[FactID]Fact
}

// NewLedger returns a ledger of the given facts. It reports every fact that
// has no ID, value or basis, that stands twice, that names a source unknown to
// [Source], that has no source though its basis asks for one, that is computed
// from nothing, or that rests on a fact not in the ledger.
func NewLedger(facts ...iter.Seq[Fact]) (*Ledger, error) {
	l := &Ledger{facts: map[FactID]Fact{}}
	var bad units.FieldErrors
	for _, some := range facts {
		for f := range some {
			bad.Add("/"+string(f.ID), l.add(f))
		}
	}
	for _, id := range l.order {
		for _, from := range l.facts[id].From {
			if _, ok := l.facts[from]; !ok {
				bad.Add("/"+string(id)+"/from", units.Field("", from, "the ID of a fact in the ledger", units.ErrUnknown))
			}
		}
	}
	return l, bad.Err()
}

func (l *Ledger) add(f Fact) error {
	if _, twice := l.facts[f.ID]; twice {
		return units.Field("/id", f.ID, "an ID of its own", units.ErrDuplicate)
	}
	l.order = append(l.order, f.ID)
	l.facts[f.ID] = f
	return f.check()
}

func (f Fact) check() error {
	var bad units.FieldErrors
	if f.ID == "" {
		bad.Add("/id", units.Field("", nil, "package.name", units.ErrMissing))
	}
	if f.Value == "" {
		bad.Add("/value", units.Field("", nil, "what is stated", units.ErrMissing))
	}
	bad.Add("/basis", f.Basis.Check())
	if _, known := LookUp(f.Source); f.Source != "" && !known {
		bad.Add("/source", units.Field("", f.Source, "the ID of a listed source", units.ErrUnknown))
	}
	switch f.Basis {
	case Published, Secondary:
		if f.Source == "" {
			bad.Add("/source", units.Field("", nil, "the source of a fact that is "+f.Basis.String(), units.ErrMissing))
		}
	case Computed:
		if len(f.From) == 0 {
			bad.Add("/from", units.Field("", nil, "the facts that it was computed from", units.ErrMissing))
		}
	}
	if f.Basis == Secondary && f.Via == "" {
		bad.Add("/via", units.Field("", nil, "where a secondary fact was read", units.ErrMissing))
	}
	return bad.Err()
}

// All yields the facts in the order added.
func (l *Ledger) All() iter.Seq[Fact] {
	return func(yield func(Fact) bool) {
		for _, id := range l.order {
			if !yield(l.facts[id]) {
				return
			}
		}
	}
}

// Fact returns the fact with the given ID, and whether there is one.
func (l *Ledger) Fact(id FactID) (Fact, bool) {
	f, ok := l.facts[id]
	return f, ok
}

// Basis returns how well the fact is known once what it was computed from is
// counted: a computed fact takes the weakest basis among its inputs. An
// unknown ID is an [units.ErrUnknown], a fact that rests on itself an
// [units.ErrConflict].
func (l *Ledger) Basis(id FactID) (Basis, error) { return l.basis(id, map[FactID]Basis{}) }

// basis keeps what it found in known; BasisUnknown marks a fact still open.
func (l *Ledger) basis(id FactID, known map[FactID]Basis) (Basis, error) {
	f, ok := l.facts[id]
	found, met := known[id]
	switch {
	case !ok:
		return BasisUnknown, units.Field("/"+string(id), nil, "the ID of a fact in the ledger", units.ErrUnknown)
	case met && found == BasisUnknown:
		return BasisUnknown, units.Field("/"+string(id), fmt.Sprint(f.From), "facts that do not rest on each other in a ring", units.ErrConflict)
	case met:
		return found, nil
	case f.Basis != Computed:
		return f.Basis, nil
	}
	known[id] = BasisUnknown
	weakest := Computed
	for _, from := range f.From {
		b, err := l.basis(from, known)
		if err != nil {
			return BasisUnknown, err
		}
		weakest = Weaker(weakest, b)
	}
	known[id] = weakest
	return weakest, nil
}
