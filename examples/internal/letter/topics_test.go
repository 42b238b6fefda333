package letter

import (
	"testing"

	"example.org/posology/screening"
)

// Every code that is asked about is known, and is asked about once.
func TestTopicsAreKnown(t *testing.T) {
	seen := map[screening.Code]bool{}
	for _, topic := range topics {
		for _, code := range topic.about {
			_, ok := screening.LookUp(code)
			if seen[code] || !ok && code != together && code != "flags-chronic-past" {
				t.Errorf("%s: known %v, twice %v", code, ok, seen[code])
			}
			seen[code] = true
		}
	}
}
