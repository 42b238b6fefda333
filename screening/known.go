package screening

import (
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

// isKnown reports whether an item is a known disease of the preparticipation
// rule, or stands for one; what is from memory only if asked for.
func (it item) isKnown(memory bool) bool {
	return it.kind == Disease || it.known != nil && (memory || !it.known.memory)
}

// knownIn yields the known diseases among items that are held at least as
// surely as given.
func knownIn(items []item, atLeast Answer, memory bool) iter.Seq[item] {
	return func(yield func(item) bool) {
		for _, it := range items {
			if it.isKnown(memory) && it.held.Severity() >= atLeast.Severity() && !yield(it) {
				return
			}
		}
	}
}

// count counts what is yielded.
func count(items iter.Seq[item]) int {
	n := 0
	for range items {
		n++
	}
	return n
}

// appendDiabetes adds diabetes where only a consequence of it was told: its
// kidneys and eyes are nobody else's.
func appendDiabetes(items []item) []item {
	implied := item{entry: find(anyDiabetes), held: No}
	for _, it := range items {
		if slices.Contains(diabetesCodes, it.code) && it.held == Yes {
			return items
		}
		if slices.Contains(diabetesSigns, it.code) {
			implied.by = append(implied.by, it.code)
			if it.held.Severity() > implied.held.Severity() {
				implied.held = it.held
			}
		}
	}
	if implied.by == nil {
		return items
	}
	return append(items, implied)
}

// appendNamed adds the codes of which a clearance may name any to lift the item.
func (it item) appendNamed(codes []Code) []Code {
	if it.by == nil {
		return append(append(codes, it.code), it.named...)
	}
	return append(append(codes, it.by...), diabetesCodes...)
}

// appendNeeded adds the codes of which a clearance may name any to answer the need
// of a branch.
func (it item) appendNeeded(codes []Code) []Code {
	codes = it.appendNamed(codes)
	if it.known != nil {
		codes = append(codes, it.known.diseases...)
	}
	return codes
}

// room is for the codes of an item, which are few.
type room [8]Code

// knownFacts are the facts behind those that stand on no list of diseases.
func knownFacts(diseases iter.Seq[item]) []evidence.FactID {
	var facts []evidence.FactID
	for it := range diseases {
		fact := knownFact
		if it.known != nil && it.known.memory {
			fact = recalledFact
		}
		if it.kind != Disease && !slices.Contains(facts, fact) {
			facts = append(facts, fact)
		}
	}
	return facts
}
