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

// Everything that the falls rule has looked at has words of its own, and nothing else has.
func TestLookedAtHasWords(t *testing.T) {
	all := screening.Falls(screening.Profile{Falls: &screening.FallsScreen{Fell: screening.Yes}}).LookAt
	for _, code := range all {
		if _, term := screening.LookUp(code); term || looked[code] == "" {
			t.Errorf("%s: a term %v, in words %q", code, term, looked[code])
		}
	}
	if len(all) != len(looked) {
		t.Errorf("%d words for %d", len(looked), len(all))
	}
}
