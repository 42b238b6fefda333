package fit_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/fit"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

func hasCode(code evidence.ReasonCode) func(evidence.Reason) bool {
	return func(r evidence.Reason) bool { return r.Code == code }
}

// TestFacts: with those of package onerm they make a ledger, and nothing that
// was chosen here passes for more than a choice.
func TestFacts(t *testing.T) {
	ledger, err := evidence.NewLedger(onerm.Facts(), fit.Facts())
	if err != nil {
		t.Fatal(err)
	}
	for f := range fit.Facts() {
		basis, err := ledger.Basis(f.ID)
		if err != nil || f.Basis == evidence.Published || f.Basis == evidence.Secondary {
			t.Errorf("%s: %v, %v", f.ID, basis, err)
		}
		if prior := strings.HasPrefix(string(f.ID), "fit.prior"); prior && f.ID != "fit.prior.equations" && basis != evidence.Design {
			t.Errorf("%s: %v, want design", f.ID, basis)
		}
	}
	for f := range onerm.Forms() {
		if _, ok := ledger.Fact(fit.FormFact(f)); !ok {
			t.Errorf("no fact states %v", f)
		}
	}
	if fit.FormFact(0) != "" {
		t.Errorf("fact %q", fit.FormFact(0))
	}
	for range fit.Facts() {
		break // a reader may stop early
	}
	prior, _ := ledger.Fact("fit.prior")
	t.Log(prior.Value)
}

var gap = regexp.MustCompile(`\{[a-z]+\}`)

// TestWords: every reason that Fit gives has words for the clinician, all their
// gaps filled, and facts that exist.
func TestWords(t *testing.T) {
	ledger, err := evidence.NewLedger(onerm.Facts(), fit.Facts())
	if err != nil {
		t.Fatal(err)
	}
	same := samples[0].points(6, 6, 6)
	for i := range same {
		same[i].Day = 700_000
	}
	var reasons []evidence.Reason
	for _, c := range []onerm.Curve{
		curve(t, same, fit.Options{Form: onerm.Hyperbola, Expected: 20 * units.Kilogram, ExpectedSD: 0.1}),
		curve(t, samples[0].points(3, 6, 9, 12), fit.Options{Form: onerm.Line, Alone: true}),
		curve(t, samples[0].points(3, 6, 9, 12), fit.Options{Form: onerm.ExponentialFloor}),
		units.Must(fit.ForPractised(samples[0].points(5, 9), onerm.Hyperbola)),
	} {
		reasons = append(reasons, c.Data().Reasons...)
	}
	words := fit.Words().Copy()
	for _, r := range reasons {
		for _, text := range []string{words.Clinician(r), words.Client(r)} {
			if gap.MatchString(text) {
				t.Errorf("%s: %s", r.Code, text)
			}
		}
		if words[r.Code].Clinician == "" {
			t.Errorf("no words for %s", r.Code)
		}
		for _, id := range r.Facts {
			if _, ok := ledger.Fact(id); !ok {
				t.Errorf("%s: no fact %s", r.Code, id)
			}
		}
	}
	for code := range words {
		if !slices.ContainsFunc(reasons, hasCode(code)) {
			t.Errorf("%s was not met", code)
		}
	}
}

// TestReasonText: what the clinician reads of two sets; the numbers are those of
// testdata/prior.py.
func TestReasonText(t *testing.T) {
	c := curve(t, samples[0].points(5, 10), fit.Options{Form: onerm.Hyperbola})
	i := slices.IndexFunc(c.Data().Reasons, hasCode("fit.prior"))
	got := fit.Words().Clinician(c.Data().Reasons[i])
	const want = "The shape began at the population's, 79.2 % of the 1RM at ten repetitions, and came to 78.8 %; 25.1 % of what is known of it was told by these sets."
	if got != want {
		t.Errorf("%s", got)
	}
}
