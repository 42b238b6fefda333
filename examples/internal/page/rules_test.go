package page

import (
	"testing"

	"example.org/posology/screening"
)

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
