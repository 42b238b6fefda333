package screening

import (
	"slices"

	"example.org/posology/units/body"
)

// unasked is what follows from a list that was not asked: what would follow if
// every item of it were present.
var unasked = map[Code]effect{
	askDiseases:   joined(Disease).join(joined(Topic)),
	askSymptoms:   joined(Symptom).join(joined(Topic)),
	askRedFlags:   joined(RedFlag).join(joined(Topic)),
	askConditions: joined(Condition).join(joined(Topic)).avoiding(slices.Collect(body.EveryDemand())...),
	askNew:        joined(Symptom).join(joined(RedFlag)),
}

func joined(k Kind) effect {
	all := askNothing
	for i := range entries {
		if entries[i].kind == k {
			all = all.join(entries[i].effect)
		}
	}
	return all.full()
}
