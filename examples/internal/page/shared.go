package page

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/units/evidence"
)

// Cautions and Reasons are the lists of a prescription that papers print.
func Cautions(item dose.Prescription) []evidence.Reason { return item.Cautions }

// Reasons returns why the dose is what it is.
func Reasons(item dose.Prescription) []evidence.Reason { return item.Reasons }

// Shared returns what the given list of at least n items holds, in the order
// met, so that a paper says it once; [Only] returns what a list holds beside that.
func Shared(items []dose.Prescription, n int, list func(dose.Prescription) []evidence.Reason) []evidence.Reason {
	var all []evidence.Reason
	for _, item := range items {
		for _, r := range list(item) {
			having := 0
			for _, other := range items {
				if holds(list(other), r) {
					having++
				}
			}
			if having >= n && !holds(all, r) {
				all = append(all, r)
			}
		}
	}
	return all
}

// Only returns the reasons of list that shared does not hold.
func Only(list, shared []evidence.Reason) []evidence.Reason {
	return slices.DeleteFunc(slices.Clone(list), func(r evidence.Reason) bool { return holds(shared, r) })
}

func holds(list []evidence.Reason, r evidence.Reason) bool {
	return slices.ContainsFunc(list, func(s evidence.Reason) bool { return Same(s, r) })
}

// Same reports whether two reasons say the same with the same values.
func Same(a, b evidence.Reason) bool {
	return a.Code == b.Code && slices.Equal(a.Args, b.Args) && slices.Equal(a.Facts, b.Facts)
}
