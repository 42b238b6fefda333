package told

import (
	"slices"

	"example.org/posology/units/evidence"
)

// LeftOut drops what says how a return begins from the reasons of what is left out.
func LeftOut(list []evidence.Reason) []evidence.Reason {
	return slices.DeleteFunc(list, func(r evidence.Reason) bool {
		return r.Code == "progression.return" || r.Code == "progression.return-anew" || r.Code == "progression.reps-for-load"
	})
}

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
