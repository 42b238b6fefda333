package onerm_test

import (
	"iter"
	"strings"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/published"
	"example.org/posology/units/evidence"
)

func TestWordsAndFacts(t *testing.T) {
	ledger, err := evidence.NewLedger(evidence.UnitFacts(), onerm.Facts(), published.Facts())
	if err != nil {
		t.Fatal(err)
	}
	words, used := onerm.Words().Copy(), map[evidence.ReasonCode]bool{}
	for _, e := range append(everyEstimate(t), otherEstimates(t)...) {
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
		if !used[code] && !strings.HasPrefix(string(code), "onerm.none-") { // those of sets without an estimate
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
		"onerm.kemmler2024-leg-flexion": evidence.Design, "onerm.kemmler2024.coefficients": evidence.Published,
		"onerm.reynolds2006-chest-press": evidence.FromMemory, "published.reynolds2006-chest-press-5rm": evidence.Published,
		"published.abadie2000-chest-press": evidence.Published, "published.macht2016": evidence.Published, "onerm.baechle-groves": evidence.FromMemory,
		"published.nsca-load-chart.12": evidence.Published, "published.nsca-textbook.12": evidence.FromMemory, "published.nsca-textbook.15": evidence.Secondary,
		"onerm.open.near": evidence.FromMemory, "onerm.open.floors": evidence.Design, "onerm.practised": evidence.Design,
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

// everyFact yields the facts of this package, then those of published.
func everyFact() iter.Seq[evidence.Fact] {
	return func(yield func(evidence.Fact) bool) {
		for _, facts := range []iter.Seq[evidence.Fact]{onerm.Facts(), published.Facts()} {
			for f := range facts {
				if !yield(f) {
					return
				}
			}
		}
	}
}

// TestFactsState: the facts print the numbers that the code uses.
func TestFactsState(t *testing.T) {
	want := map[evidence.FactID]string{
		"onerm.epley":                          "1RM = load·(1 + r/30)",
		"onerm.brzycki":                        "1RM = load·36/(37 − r)",
		"onerm.lander":                         "1RM = load·100/(101.3 − 2.67123·r)",
		"onerm.lombardi":                       "1RM = load·r^0.1",
		"onerm.mayhew":                         "1RM = load·100/(52.2 + 41.9·e^(−0.055·r))",
		"onerm.adams":                          "1RM = load·1/(1 − 0.02·r)",
		"onerm.kemmler2006":                    "1RM = load·(0.988 + 0.0104·r + 0.0019·r² − 0.0000584·r³)",
		"onerm.baechle-groves":                 "1RM = load·(1 + 0.033·r)",
		"onerm.kemmler2024-trunk-extension":    "1RM = load·(1.01565994 − 0.0130808261·r + 0.00601883266·r² − 0.0002286238·r³)",
		"onerm.reynolds2006-leg-press":         "1RM = load·100/(26.41 + 78.17·e^(−0.0569·r))",
		"published.reynolds2006-leg-press-5rm": "1RM = 1.097·load + 14.2546 kg, for 5 repetitions to failure",
		"published.braith1993-before":          "1RM = 1.554·load − 5.181 kg, for 7 to 10 repetitions to failure",
		"published.abadie2000-shoulder-press":  "1RM = 1.2·load + 1.43 lb, for 5 to 10 repetitions to failure",
		"published.roberts2024-bench-press":    "1RM = load·r^0.1 + 1.49 kg, for 4 to 10 repetitions to failure",
		"published.macht2016":                  "1RM = 1.2·load + 2.19 kg·r − 0.56 kg·biacromial breadth in cm + 9.6 kg",
		"published.nsca-textbook.15":           "15 repetitions to failure: 65 % of the 1RM",
		"onerm.open.floors":                    "no 95 % interval of one set is narrower than ± 5 % up to 10 repetitions, ± 7 % at 11 to 15, ± 10 % above",
		"onerm.interval.level":                 "the interval table is a proposal for about 95 %; other levels, 50 % to 99 %, move its ends as those of normally distributed errors",
		"onerm.studied.classical":              "the classical equations are used at 1 to 10 repetitions to failure",
		"onerm.interval.1":                     "1 repetitions to failure: ± 8 % when done to failure, none with 1 to 3 in reserve, ± 15 % for novices; measured",
		"onerm.interval.2-5":                   "2-5 repetitions to failure: ± 10 % when done to failure, ± 12 % with 1 to 3 in reserve, −10 to +20 % for novices; good",
		"onerm.interval.11-15":                 "11-15 repetitions to failure: ± 20 % when done to failure, ± 25 % with 1 to 3 in reserve, −20 to +30 % for novices; poor",
		"onerm.interval.6-10":                  "6-10 repetitions to failure: ± 12 % when done to failure, ± 15 % with 1 to 3 in reserve, −12 to +25 % for novices; fair",
		"onerm.interval.16-20":                 "16-20 repetitions to failure: ± 25 % when done to failure, none with 1 to 3 in reserve, none for novices; very poor",
		"onerm.reserve.limit":                  "a reserve above 5 is not used",
		"onerm.kemmler2006.choice":             "Kemmler 2006 is asked for trained women from 55 years, on a stack, at 3 to 20 repetitions to failure; for a sex not given, up to 10",
	}
	for f := range everyFact() {
		if text, ok := want[f.ID]; ok && f.Value != text {
			t.Errorf("%s: %q, want %q", f.ID, f.Value, text)
		}
		delete(want, f.ID)
	}
	if len(want) > 0 {
		t.Errorf("facts that are missing: %v", want)
	}
}
