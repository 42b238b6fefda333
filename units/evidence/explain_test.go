package evidence_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A reason's facts come each with its source and with what it derives from; a fact
// that is missing is named.
func TestExplain(t *testing.T) {
	facts := []evidence.Fact{
		on("far", "two", "seen"), on("two", "seen", "believed"),
		{ID: "seen", Value: "stated", Source: "zourdos2016", Locator: "abstract", Basis: evidence.Published},
		{ID: "believed", Value: "held", Source: "zourdos2021", Basis: evidence.FromMemory},
	}
	ledger := units.Must(evidence.NewLedger(slices.Values(facts)))
	seen, _ := evidence.LookUp("zourdos2016")
	var got []string
	for _, e := range ledger.Explain(evidence.Because("x", "far", "lost", "seen").Facts...) {
		got = append(got, fmt.Sprintf("%d %s %v %s %s", e.Depth, e.Fact.ID, e.Known, e.Basis, e.Source.ID))
		if e.Fact.ID == "seen" && (e.Source != seen || !strings.Contains(e.String(), "    seen: stated (published; "+seen.Citation+"; abstract")) {
			t.Errorf("the source is lost: %v", e)
		}
		if e.Fact.ID == "far" && e.String() != "far: worked out (computed, no better known than from memory)" {
			t.Errorf("%q", e)
		}
		if e.Fact.ID == "lost" && e.String() != "lost: not in this ledger" {
			t.Errorf("%q", e)
		}
	}
	want := []string{"0 far true from memory ", "1 two true from memory ", "2 seen true published zourdos2016", "2 believed true from memory zourdos2021", "0 lost false  "}
	if !slices.Equal(want, got) {
		t.Errorf("got  %q\nwant %q", got, want)
	}
	var zero evidence.Ledger
	if e := zero.Explain("a.x"); len(e) != 1 || e[0].Known || e[0].Fact.ID != "a.x" {
		t.Errorf("in an empty ledger: %v", e)
	}
	if e := ledger.Explain(); e != nil {
		t.Errorf("nothing is explained by %v", e)
	}
}

// Whatever rests on whatever, rings among it: every fact that can be reached has
// one line, the first below the one that names it, and the call ends.
func TestExplainReachesAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const n = 8
		id := func(i int) evidence.FactID { return evidence.FactID(fmt.Sprintf("f.%d", i)) }
		from := map[evidence.FactID][]evidence.FactID{}
		var facts []evidence.Fact
		for i := range n {
			for _, j := range rapid.SliceOfN(rapid.IntRange(0, n+1), 0, 3).Draw(t, "from") { // the last two are in no ledger
				from[id(i)] = append(from[id(i)], id(j))
			}
			facts = append(facts, evidence.Fact{ID: id(i), Value: "x", Basis: evidence.Design, From: from[id(i)]})
		}
		ledger, _ := evidence.NewLedger(slices.Values(facts))
		lines := ledger.Explain(id(0))
		told := map[evidence.FactID]bool{}
		for i, e := range lines {
			if told[e.Fact.ID] || e.Known != (e.Fact.Value == "x") || i > 0 && e.Depth > lines[i-1].Depth+1 || (e.Depth == 0) != (i == 0) {
				t.Fatalf("line %d: %+v", i, e)
			}
			told[e.Fact.ID] = true
		}
		var reach func(at evidence.FactID, seen map[evidence.FactID]bool)
		reach = func(at evidence.FactID, seen map[evidence.FactID]bool) {
			if !seen[at] {
				seen[at] = true
				for _, f := range from[at] {
					reach(f, seen)
				}
			}
		}
		all := map[evidence.FactID]bool{}
		reach(id(0), all)
		if len(all) != len(told) {
			t.Fatalf("told %d of %d", len(told), len(all))
		}
	})
}

// Nobody changes a ledger through what it hands out or was made of.
func TestLedgerStaysAsItIs(t *testing.T) {
	facts := []evidence.Fact{on("a.x", "b.x"), known("b.x", evidence.Published)}
	ledger := units.Must(evidence.NewLedger(slices.Values(facts)))
	facts[0].From[0] = "c.x"
	f, _ := ledger.Fact("a.x")
	f.From[0] = "d.x"
	for f := range ledger.All() {
		if len(f.From) > 0 {
			f.From[0] = "e.x"
		}
	}
	ledger.Explain("a.x")[0].Fact.From[0] = "f.x"
	if f, _ := ledger.Fact("a.x"); f.From[0] != "b.x" {
		t.Errorf("now rests on %s", f.From[0])
	}
}

// However deep an explanation says that it stands, its line can be read.
func TestExplanationOfAnyDepth(t *testing.T) {
	const says = "x: not in this ledger"
	for depth, want := range map[int]string{math.MinInt: says, -1: says, 0: says, 2: "    " + says, math.MaxInt: strings.Repeat("  ", 50) + says} {
		if got := (evidence.Explanation{Fact: evidence.Fact{ID: "x"}, Depth: depth}).String(); got != want {
			t.Errorf("%d: %q", depth, got)
		}
	}
}
