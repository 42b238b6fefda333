package record_test

import (
	"testing"

	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Ledger and words are made once, and nobody who holds them can change them for others.
func TestLedgerAndWordsAreShared(t *testing.T) {
	ledger, words := units.Must(record.Ledger()), units.Must(record.Words())
	*ledger = evidence.Ledger{}
	words.Copy()["dose.waived"] = evidence.Wording{}
	if _, ok := units.Must(record.Ledger()).Fact("onerm.epley"); !ok {
		t.Error("the ledger was overwritten")
	}
	if w, ok := units.Must(record.Words()).Wording("dose.waived"); !ok || w.Clinician == "" {
		t.Error("the words were overwritten")
	}
	calls := func() { _, _ = record.Ledger(); _, _ = record.Words() }
	if n := testing.AllocsPerRun(100, calls); n > 1 {
		t.Errorf("%v allocations a call: something is made anew", n)
	}
}

// Whatever a first visit and a review say comes down to facts that the ledger
// holds; none is lost.
func TestEveryReasonIsExplained(t *testing.T) {
	ledger := units.Must(record.Ledger())
	told := 0
	first := read(t, visit)
	plan, err := first.Start(first.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	reasons := plan.Reasons()
	later := read(t, review)
	items, err := later.Next(later.Review)
	if err != nil {
		t.Fatal(err)
	}
	for _, item := range items {
		reasons = append(reasons, item.Decision.Reasons...)
	}
	for _, reason := range reasons {
		for i, e := range ledger.Explain(reason.Facts...) {
			if !e.Known || e.Fact.Source != "" && e.Source.Citation == "" || e.Basis == 0 {
				t.Errorf("%s, line %d: %v", reason.Code, i, e)
			}
			told++
		}
	}
	if told < 100 {
		t.Errorf("%d lines", told)
	}
}

func BenchmarkLedger(b *testing.B) {
	for b.Loop() {
		_, _ = record.Ledger()
	}
}

func BenchmarkWords(b *testing.B) {
	for b.Loop() {
		_, _ = record.Words()
	}
}

// The first call in a program is of the size of this.
func BenchmarkLedgerAnew(b *testing.B) {
	ledger := units.Must(record.Ledger())
	for b.Loop() {
		_, _ = evidence.NewLedger(ledger.All())
	}
}

func BenchmarkExplain(b *testing.B) {
	ledger := units.Must(record.Ledger())
	for b.Loop() {
		_ = ledger.Explain("onerm.interval.6 to 10", "onerm.lower-of-two")
	}
}
