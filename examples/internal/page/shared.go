package page

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/units/evidence"
)

// Shared returns the cautions and reasons that every item holds, so that a paper says them
// once; [Only] returns what a list holds beside them.
func Shared(items []dose.Prescription) []evidence.Reason {
	return append(InAll(items, func(d dose.Prescription) []evidence.Reason { return d.Cautions }, holds),
		InAll(items, func(d dose.Prescription) []evidence.Reason { return d.Reasons }, holds)...)
}

// InAll returns what the lists of all items hold, in the order of the first.
func InAll[I, T any](items []I, list func(I) []T, holds func([]T, T) bool) []T {
	if len(items) == 0 {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(list(items[0])), func(t T) bool {
		return slices.ContainsFunc(items, func(other I) bool { return !holds(list(other), t) })
	})
}

// Only returns the reasons of list that shared does not hold.
func Only(list, shared []evidence.Reason) []evidence.Reason {
	return slices.DeleteFunc(slices.Clone(list), func(r evidence.Reason) bool { return holds(shared, r) })
}

func holds(list []evidence.Reason, r evidence.Reason) bool {
	return slices.ContainsFunc(list, func(s evidence.Reason) bool {
		return s.Code == r.Code && slices.Equal(s.Args, r.Args) && slices.Equal(s.Facts, r.Facts)
	})
}
