package told

import (
	"slices"

	"example.org/posology/units/evidence"
)

// Agree keeps reasons to what became of the dose: what is as much as before is not called
// easier, and what a count fell to before it fell further is not told.
func Agree(list []evidence.Reason, asMuch bool, count int) []evidence.Reason {
	list = slices.DeleteFunc(list, func(r evidence.Reason) bool {
		return r.Code == "progression.reps-for-load" && !slices.Contains(r.Args, evidence.Count("count", count))
	})
	for i := range list {
		if r := &list[i]; asMuch && r.Code == "progression.return" {
			r.Code = "progression.return-kept"
		}
	}
	return list
}
