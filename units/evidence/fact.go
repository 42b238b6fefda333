package evidence

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units/field"
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
// from nothing, or that rests on a fact not in the ledger; and every sequence that is nil.
func NewLedger(facts ...iter.Seq[Fact]) (*Ledger, error) {
	l := &Ledger{facts: map[FactID]Fact{}}
	var bad field.Errors
	for i, some := range facts {
		if some == nil {
			bad.Add(fmt.Sprintf("/%d", i), field.Bad(nil, "a sequence of facts", field.ErrMissing))
			continue
		}
		for f := range some {
			bad.Add("/"+string(f.ID), l.add(f))
		}
	}
	for _, id := range l.order {
		for _, from := range l.facts[id].From {
			if _, ok := l.facts[from]; !ok {
				bad.Add("/"+string(id)+"/from", field.Bad(from, "the ID of a fact in the ledger", field.ErrUnknown))
			}
		}
	}
	return l, bad.Err()
}

func (l *Ledger) add(f Fact) error {
	if _, twice := l.facts[f.ID]; twice {
		return field.New("/id", f.ID, "an ID of its own", field.ErrDuplicate)
	}
	l.order = append(l.order, f.ID)
	f.From = slices.Clone(f.From)
	l.facts[f.ID] = f
	return f.check()
}

func (f Fact) check() error {
	var bad field.Errors
	bad.Refuse(f.ID == "", "/id", nil, "package.name", field.ErrMissing)
	bad.Refuse(f.Value == "", "/value", nil, "what is stated", field.ErrMissing)
	bad.Add("/basis", f.Basis.Check())
	if _, known := LookUp(f.Source); f.Source != "" && !known {
		bad.Add("/source", field.Bad(f.Source, "the ID of a listed source", field.ErrUnknown))
	}
	switch f.Basis {
	case Published, Secondary:
		bad.Refuse(f.Source == "", "/source", nil, "the source of a fact that is "+f.Basis.String(), field.ErrMissing)
	case Computed:
		bad.Refuse(len(f.From) == 0, "/from", nil, "the facts that it was computed from", field.ErrMissing)
	}
	bad.Refuse(f.Basis == Secondary && f.Via == "", "/via", nil, "where a secondary fact was read", field.ErrMissing)
	return bad.Err()
}

// All yields the facts in the order added.
func (l *Ledger) All() iter.Seq[Fact] {
	return func(yield func(Fact) bool) {
		l := field.OrZero(l)
		for _, id := range l.order {
			if f, _ := l.Fact(id); !yield(f) {
				return
			}
		}
	}
}

// Fact returns the fact with the given ID, and whether there is one. It is the
// caller's own.
func (l *Ledger) Fact(id FactID) (Fact, bool) {
	f, ok := field.OrZero(l).facts[id]
	f.From = slices.Clone(f.From)
	return f, ok
}

// Basis returns how well the fact is known once what it was computed from is
// counted: a computed fact takes the weakest basis among its inputs. An
// unknown ID is a [field.ErrUnknown], a fact that rests on itself a
// [field.ErrConflict].
func (l *Ledger) Basis(id FactID) (Basis, error) {
	return field.OrZero(l).basis(id, map[FactID]Basis{})
}

// basis keeps what it found in known; zero marks a fact still open.
func (l *Ledger) basis(id FactID, known map[FactID]Basis) (Basis, error) {
	f, ok := l.facts[id]
	found, met := known[id]
	switch {
	case !ok:
		return 0, field.New("/"+string(id), nil, "the ID of a fact in the ledger", field.ErrUnknown)
	case met && found == 0:
		return 0, field.New("/"+string(id), fmt.Sprint(f.From), "facts that do not rest on each other in a ring", field.ErrConflict)
	case met:
		return found, nil
	case f.Basis != Computed:
		return f.Basis, nil
	}
	known[id] = 0
	weakest := Computed
	for _, from := range f.From {
		b, err := l.basis(from, known)
		if err != nil {
			return 0, err
		}
		weakest = Weaker(weakest, b)
	}
	known[id] = weakest
	return weakest, nil
}
