package letter

import (
	"strings"
	"testing"

	"example.org/posology/screening"
)

// Every code that is asked about is known, and is asked about once.
func TestTopicsAreKnown(t *testing.T) {
	seen := map[screening.Code]bool{}
	for _, topic := range topics {
		for _, code := range topic.about {
			_, ok := screening.LookUp(code)
			if seen[code] || !ok && code != together && !strings.HasPrefix(string(code), "flags-chronic-") {
				t.Errorf("%s: known %v, twice %v", code, ok, seen[code])
			}
			seen[code] = true
		}
	}
}
