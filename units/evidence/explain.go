package evidence

import (
	"fmt"
	"strings"
)

// An Explanation is one line of what is behind a number: a fact, how well it is
// known, and who says so.
type Explanation struct {
	Fact  Fact `json:"fact"`           // with its ID alone where the ledger does not hold it
	Known bool `json:"known"`          // the ledger holds it
	Depth int  `json:"depth,omitzero"` // 0 for a fact that was asked for, else 1 more than the fact before it that derives from it
	// Basis is how well it is known once what it was computed from is counted, as
	// [Ledger.Basis] says; not given where that cannot be told.
	Basis  Basis  `json:"basis,omitzero"`
	Source Source `json:"source,omitzero"` // zero where the fact names none
}

// Explain returns the facts with the given IDs, such as those of a reason, and
// below each what it derives from, every fact once. An ID that is not in the ledger
// has a line too, so that nothing is lost.
func (l *Ledger) Explain(ids ...FactID) []Explanation {
	return l.explain(nil, map[FactID]bool{}, 0, ids)
}

func (l *Ledger) explain(lines []Explanation, told map[FactID]bool, depth int, ids []FactID) []Explanation {
	for _, id := range ids {
		if told[id] {
			continue
		}
		told[id] = true
		f, known := l.Fact(id)
		f.ID = id
		line := Explanation{Fact: f, Known: known, Depth: depth}
		line.Basis, _ = l.Basis(id) // an error is a fact that is not known: told by its own line
		line.Source, _ = LookUp(f.Source)
		lines = l.explain(append(lines, line), told, depth+1, f.From)
	}
	return lines
}

// mostIndent is how many steps a line is indented at most: no facts derive as deep.
const mostIndent = 50

// String prints the explanation on one line, indented by its depth, up to 50: ID, value,
// basis, source, how it was read there and where, and the DOI, marked where it
// was not seen.
func (e Explanation) String() string {
	id := strings.Repeat("  ", min(max(e.Depth, 0), mostIndent)) + string(e.Fact.ID) + ": "
	if !e.Known {
		return id + "not in this ledger"
	}
	known := e.Fact.Basis.String()
	if e.Fact.Basis == Computed && e.Basis != 0 {
		known += ", no better known than " + e.Basis.String()
	}
	parts := []string{known}
	for _, p := range []struct{ form, text string }{
		{"%s", e.Source.Citation}, {"through %s", e.Fact.Via}, {"%s", e.Fact.Locator}, {"doi:%s", e.Source.DOI},
	} {
		if p.text != "" {
			parts = append(parts, fmt.Sprintf(p.form, p.text))
		}
	}
	if e.Source.DOI != "" && !e.Source.DOISeen {
		parts = append(parts, "a DOI that was not seen")
	}
	return id + e.Fact.Value + " (" + strings.Join(parts, "; ") + ")"
}
