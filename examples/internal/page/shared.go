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

// Shared returns what the given list of every item holds, so that a paper says it
// once; [Only] returns what a list holds beside that.
func Shared(items []dose.Prescription, list func(dose.Prescription) []evidence.Reason) []evidence.Reason {
	return InAll(items, list, holds)
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
