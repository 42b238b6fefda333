package strength_test

import (
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// The numbers in the text of a fact are those that the code goes by.
func TestFactsFollowConstants(t *testing.T) {
	want := map[evidence.FactID]string{
		"onerm.ability.spread": "strength varies by 4.2 % from day to day, and a person's curve by 6 % for each unit of the logarithm of load",
		"onerm.ability.lost":   "while away 0.75 % of strength is lost a week",
		"onerm.chance.finish":  "one more than the count cannot be done in at most 5 % of sets, so that about 2 % are not finished; a policy may choose 1 % to 10 %",
		"dose.test-age":        "a test of strength is used for twelve weeks at most, and none from before an event that ends it",
		"dose.queried-tests":   "tests of strength are asked about and not used with a weight that the kit does not make, where one is 1.9 times another of the exercise, side and hold or more, and where two of one day have intervals that do not overlap",
	}
	for f := range strength.Facts() {
		if text, ok := want[f.ID]; ok && f.Value != text {
			t.Errorf("%s: %q, want %q", f.ID, f.Value, text)
		}
		delete(want, f.ID)
	}
	if len(want) > 0 {
		t.Errorf("missing: %v", want)
	}
}

// How each is known.
func TestFactsAreKnown(t *testing.T) {
	known := map[evidence.FactID]evidence.Basis{}
	for f := range strength.Facts() {
		known[f.ID] = f.Basis
	}
	for id, basis := range map[evidence.FactID]evidence.Basis{"onerm.ability.seen": evidence.Design, "onerm.time-off": evidence.Published, "onerm.ability.lost": evidence.Computed, "onerm.chance.reserve": evidence.Design} {
		if known[id] != basis {
			t.Errorf("%s: basis %v, want %v", id, known[id], basis)
		}
	}
	for range strength.Facts() { // stops half way without harm
		break
	}
}

// The equation that doses go by is Epley's: 1RM = load·(1 + r/30).
func TestOneEquation(t *testing.T) {
	for reps := 1; reps <= 30; reps++ {
		a := strength.Ability{}.Seen(1, 0, set(reps, 0))
		got, _ := a.OneRM()
		want, err := onerm.Epley.OneRM(20*units.Kilogram, float64(reps+1))
		if diff := got - want; err != nil || diff < -units.Gram || diff > units.Gram {
			t.Errorf("%d: %v, want %v, %v", reps, got, want, err)
		}
	}
}
