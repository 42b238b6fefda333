package screentest

import (
	"slices"
	"sync"

	"example.org/posology/screening"
)

// terms are those of screening, made once: the laws ask for their codes at every draw.
var terms = sync.OnceValue(func() []screening.Term { return slices.Collect(screening.Codes()) })

// Codes lists the codes of some kinds.
func Codes(kinds ...screening.Kind) []screening.Code {
	var list []screening.Code
	for _, term := range terms() {
		if slices.Contains(kinds, term.Kind) {
			list = append(list, term.Code)
		}
	}
	return list
}
