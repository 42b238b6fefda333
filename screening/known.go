package screening

import (
	"slices"

	"example.org/posology/units/evidence"
)

// isKnown reports whether an item is a known disease of the preparticipation
// rule, or stands for one; what is from memory only if asked for.
func (it item) isKnown(memory bool) bool {
	k, ok := knownDiseases[it.code]
	return it.kind == Disease || ok && (memory || !k.memory)
}

// knownIn returns the known diseases among items that are held at least as
// surely as given.
func knownIn(items []item, atLeast Answer, memory bool) []item {
	var list []item
	for _, it := range items {
		if it.isKnown(memory) && it.held.Severity() >= atLeast.Severity() {
			list = append(list, it)
		}
	}
	return list
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

// namedBy are the codes that lift the item if a clearance names one of them.
func (it item) namedBy() []Code {
	if it.by == nil {
		return []Code{it.code}
	}
	return slices.Concat(it.by, diabetesCodes)
}

// neededBy are the codes that answer the need of a branch if a clearance names one
// of them.
func (it item) neededBy() []Code {
	return slices.Concat(it.namedBy(), knownDiseases[it.code].diseases)
}

// knownFacts are the facts behind those that stand on no list of diseases.
func knownFacts(diseases []item) []evidence.FactID {
	var facts []evidence.FactID
	for _, it := range diseases {
		fact := knownFact
		if knownDiseases[it.code].memory {
			fact = recalledFact
		}
		if it.kind != Disease && !slices.Contains(facts, fact) {
			facts = append(facts, fact)
		}
	}
	return facts
}
