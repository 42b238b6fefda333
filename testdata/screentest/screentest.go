package screentest

import (
	"slices"

	"example.org/posology/screening"
)

// Codes lists the codes of some kinds.
func Codes(kinds ...screening.Kind) []screening.Code {
	var list []screening.Code
	for term := range screening.Codes() {
		if slices.Contains(kinds, term.Kind) {
			list = append(list, term.Code)
		}
	}
	return list
}
