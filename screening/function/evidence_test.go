package function_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

func TestFacts(t *testing.T) {
	ledger, err := evidence.NewLedger(function.Facts())
	if err != nil {
		t.Fatal(err)
	}
	for n := range function.Norms() {
		f, ok := ledger.Fact(n.Fact)
		if !ok || f.Basis != n.Basis || f.Source != n.Source || !strings.Contains(f.Value, n.Value.String()) {
			t.Errorf("%s: %+v", n.Fact, f)
		}
	}
	for f := range function.Facts() {
		if !strings.HasPrefix(string(f.ID), "function.") || strings.ContainsAny(string(f.ID), " _") {
			t.Errorf("ID %q", f.ID)
		}
	}
	first := slices.Collect(function.Facts())
	for i, f := range slices.Collect(function.Facts()) {
		if f.ID != first[i].ID {
			t.Fatalf("the order of the facts changes at %s", f.ID)
		}
	}
	for stop := range len(first) {
		n := 0
		for range function.Facts() {
			if n++; n > stop {
				break // a caller may stop anywhere
			}
		}
	}
}

// Every reason that can be met has words without an open slot, and facts.
func TestReasonsHaveWordsAndFacts(t *testing.T) {
	words, ledger := function.Words().Copy(), units.Must(evidence.NewLedger(function.Facts()))
	met := map[evidence.ReasonCode]bool{}
	for _, r := range everyReason(t) {
		met[r.Code] = true
		for _, text := range []string{words.Client(r), words.Clinician(r)} {
			if strings.ContainsAny(text, "{}") {
				t.Errorf("%s: %q", r.Code, text)
			}
		}
		if words[r.Code].Clinician == "" || len(r.Facts) == 0 {
			t.Errorf("%s: words %q, facts %v", r.Code, words[r.Code], r.Facts)
		}
		for _, id := range r.Facts {
			if _, ok := ledger.Fact(id); !ok {
				t.Errorf("%s: no fact %q", r.Code, id)
			}
		}
	}
	for code, w := range words {
		if !met[code] {
			t.Errorf("%s was not met", code)
		}
		for _, word := range []string{"safe", "cleared", "failed", "frail", "non-responder"} {
			if strings.Contains(strings.ToLower(w.Client), word) {
				t.Errorf("%s tells the client %q", code, w.Client)
			}
		}
	}
}

// everyReason plays through all tests, ages and ways that a test may go.
func everyReason(t *testing.T) (all []evidence.Reason) {
	for test := range function.Tests() {
		low, high := test.Plausible()
		values := []function.Amount{low, high, units.Must(function.NewAmount(float64(int((low.Number()+high.Number())/2)), test.Unit()))}
		for _, n := range slices.Collect(function.Norms()) {
			if n.Measure == test.Measure() && n.Statistic.Kind() == function.Figure && n.Value.Unit() == test.Unit() {
				values = append(values, n.Value)
			}
		}
		for _, age := range []body.Age{40, 58, 61, 66, 85} {
			for _, value := range values {
				r := done(test, value.String())
				if r.Validate() != nil {
					continue
				}
				all = append(all, units.Must(r.Score()).Reason)
				for _, s := range compare(t, r, body.Male, age) {
					all = append(all, s.Reasons...)
				}
			}
			for _, before := range values[:3] {
				all = append(all, changes(t, test, before, age)...)
			}
		}
	}
	arms := with(done(function.ChairStand30, "3 reps"), func(r *function.Result) { r.How = function.UsedArms })
	all = append(all, units.Must(arms.Score()).Reason)
	all = append(all, change(t, arms, arms, body.Male, 66).Reasons...)
	stood := done(arms.Test, "9 reps")
	all = append(append(all, change(t, arms, stood, body.Male, 66).Reasons...), change(t, stood, arms, body.Male, 66).Reasons...)
	for _, s := range compare(t, arms, 0, 66) {
		all = append(all, s.Reasons...)
	}
	for _, how := range []function.HowDone{function.Unable, function.Refused} {
		b := battery("10", "10", "10", walked(function.Walk4m, "4"), "10")
		all = append(all, units.Must(b.Score()).Reasons...)
		b.Tandem, b.Walk.How, b.Walk.Value = function.Stand{How: how}, how, function.Amount{}
		all = append(all, units.Must(b.Score()).Reasons...)
	}
	return all
}

// changes are the reasons for small and large changes both ways.
func changes(t *testing.T, test function.Test, before function.Amount, age body.Age) (all []evidence.Reason) {
	for _, step := range []float64{0, 1, 3} {
		b := done(test, before.String())
		a := b
		a.Value = units.Must(function.NewAmount(before.Number()+step, test.Unit()))
		if a.Validate() == nil {
			all = append(all, change(t, b, a, body.Male, age).Reasons...)
			all = append(all, change(t, a, b, body.Female, age).Reasons...)
		}
	}
	return all
}
