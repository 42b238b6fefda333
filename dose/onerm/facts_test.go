package onerm_test

import (
	"strings"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/units/evidence"
)

func TestWordsAndFacts(t *testing.T) {
	ledger, err := evidence.NewLedger(evidence.UnitFacts(), onerm.Facts())
	if err != nil {
		t.Fatal(err)
	}
	words, used := onerm.Words(), map[evidence.Code]bool{}
	for _, e := range everyEstimate(t) {
		for _, r := range e.estimate.Reasons {
			used[r.Code] = true
			client, clinician := words.Client(r), words.Clinician(r)
			if words[r.Code].Clinician == "" || strings.ContainsAny(client+clinician, "{}") {
				t.Errorf("%s reads %q, %q", r.Code, client, clinician)
			}
			for _, id := range r.Facts {
				if _, ok := ledger.Fact(id); !ok {
					t.Errorf("%s names no fact: %q", r.Code, id)
				}
			}
			if len(r.Facts) == 0 {
				t.Errorf("%s has no fact", r.Code)
			}
		}
	}
	for code := range words {
		if !used[code] {
			t.Errorf("wording %s is never used", code)
		}
	}
	for f := range onerm.Formulas() {
		for _, id := range []evidence.FactID{f.Fact(), f.Fact() + ".range"} {
			if _, ok := ledger.Fact(id); !ok {
				t.Errorf("%v: no fact %q", f, id)
			}
		}
	}
	want := map[evidence.FactID]evidence.Basis{
		"onerm.epley": evidence.FromMemory, "onerm.brzycki": evidence.FromMemory, "onerm.lander": evidence.Secondary,
		"onerm.lombardi": evidence.Published, "onerm.lombardi.name": evidence.FromMemory, "onerm.mayhew": evidence.FromMemory,
		"onerm.mayhew.range": evidence.Secondary, "onerm.oconner": evidence.FromMemory, "onerm.wathen": evidence.FromMemory,
		"onerm.adams": evidence.FromMemory, "onerm.kemmler2006": evidence.Published, "onerm.kemmler2006.range": evidence.Published,
		"onerm.studied.classical": evidence.FromMemory, "onerm.interval.6-10": evidence.Design, "onerm.interval.1": evidence.Design,
	}
	for id, basis := range want {
		if got, err := ledger.Basis(id); got != basis {
			t.Errorf("%s: basis %v, want %v (%v)", id, got, basis, err)
		}
	}
	// Stops half way without harm.
	for range onerm.Facts() {
		break
	}
}

// TestFactsState: the facts print the numbers that the code uses.
func TestFactsState(t *testing.T) {
	want := map[evidence.FactID]string{
		"onerm.epley":              "1RM = load·(1 + r/30)",
		"onerm.brzycki":            "1RM = load·36/(37 − 1·r)",
		"onerm.lander":             "1RM = load·100/(101.3 − 2.67123·r)",
		"onerm.lombardi":           "1RM = load·r^0.1",
		"onerm.mayhew":             "1RM = load·100/(52.2 + 41.9·e^(−0.055·r))",
		"onerm.adams":              "1RM = load·1/(1 − 0.02·r)",
		"onerm.kemmler2006":        "1RM = load·(0.988 + 0.0104·r + 0.0019·r² − 0.0000584·r³)",
		"onerm.studied.classical":  "the classical equations are used at 1 to 10 repetitions to failure",
		"onerm.interval.1":         "1 repetitions to failure: ± 8 % when done to failure, none with 1 to 3 in reserve, ± 15 % for novices; measured",
		"onerm.interval.2-5":       "2-5 repetitions to failure: ± 10 % when done to failure, ± 12 % with 1 to 3 in reserve, −10 to +20 % for novices; good",
		"onerm.interval.11-15":     "11-15 repetitions to failure: ± 20 % when done to failure, ± 25 % with 1 to 3 in reserve, −20 to +30 % for novices; poor",
		"onerm.interval.6-10":      "6-10 repetitions to failure: ± 12 % when done to failure, ± 15 % with 1 to 3 in reserve, −12 to +25 % for novices; fair",
		"onerm.interval.16-20":     "16-20 repetitions to failure: ± 25 % when done to failure, none with 1 to 3 in reserve, none for novices; very poor",
		"onerm.reserve.limit":      "a reserve above 5 is not used",
		"onerm.kemmler2006.choice": "Kemmler 2006 is asked for trained women from 55 years, on a stack, at 3 to 20 repetitions to failure; for a sex not given, up to 10",
	}
	for f := range onerm.Facts() {
		if text, ok := want[f.ID]; ok && f.Value != text {
			t.Errorf("%s: %q, want %q", f.ID, f.Value, text)
		}
		delete(want, f.ID)
	}
	if len(want) > 0 {
		t.Errorf("facts that are missing: %v", want)
	}
}
