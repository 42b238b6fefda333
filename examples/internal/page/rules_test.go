package page

import (
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/body"
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

// Every caution of a condition has words of its own.
func TestCautionsHaveWords(t *testing.T) {
	found := map[screening.Code]bool{}
	for term := range screening.Codes() {
		if term.Kind != screening.Condition {
			continue
		}
		o, err := screening.Assess(screening.Profile{Day: 20000, Age: 70, Sex: body.Female, Training: body.Novice, Setting: screening.InClinic, Wanted: screening.Light,
			Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(term.Code)})
		if err != nil {
			t.Fatal(err)
		}
		for _, code := range o.Rules.Cautions {
			if found[code] = true; cautions[code] == "" {
				t.Errorf("%s has no words", code)
			}
		}
	}
	if len(found) != len(cautions) {
		t.Errorf("%d words for %d", len(cautions), len(found))
	}
}
