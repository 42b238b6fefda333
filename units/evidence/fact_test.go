package evidence_test

import (
	"encoding/json"
	"errors"
	"slices"
	"testing"

	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// sound is a fact without fault; tests spoil one field of it at a time.
func sound(id evidence.FactID) evidence.Fact {
	return evidence.Fact{ID: id, Value: "a kettle holds 1.7 L", Basis: evidence.CommonPractice}
}

func TestLedgerReportsEachFault(t *testing.T) {
	tests := []struct {
		name     string
		spoil    func(*evidence.Fact)
		path     string
		category error
	}{
		{"no ID", func(f *evidence.Fact) { f.ID = "" }, "//id", field.ErrMissing},
		{"no value", func(f *evidence.Fact) { f.Value = "" }, "/kettle.volume/value", field.ErrMissing},
		{"no basis", func(f *evidence.Fact) { f.Basis = 0 }, "/kettle.volume/basis", field.ErrMissing},
		{"basis beyond the last", func(f *evidence.Fact) { f.Basis = evidence.Design + 1 }, "/kettle.volume/basis", field.ErrOutOfRange},
		{"source not listed", func(f *evidence.Fact) { f.Source = "nobody1900" }, "/kettle.volume/source", field.ErrUnknown},
		{"published without source", func(f *evidence.Fact) { f.Basis = evidence.Published }, "/kettle.volume/source", field.ErrMissing},
		{"secondary without source", func(f *evidence.Fact) { f.Basis, f.Via = evidence.Secondary, "a review" }, "/kettle.volume/source", field.ErrMissing},
		{"secondary without via", func(f *evidence.Fact) { f.Basis, f.Source = evidence.Secondary, "zourdos2016" }, "/kettle.volume/via", field.ErrMissing},
		{"computed from nothing", func(f *evidence.Fact) { f.Basis = evidence.Computed }, "/kettle.volume/from", field.ErrMissing},
		{"rests on a stranger", func(f *evidence.Fact) { f.From = []evidence.FactID{"cup.volume"} }, "/kettle.volume/from", field.ErrUnknown},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			f := sound("kettle.volume")
			test.spoil(&f)
			_, err := evidence.NewLedger(slices.Values([]evidence.Fact{f}))
			var bad field.Errors
			if !errors.As(err, &bad) || len(bad) != 1 {
				t.Fatalf("NewLedger: %v, want one bad field", err)
			}
			if bad[0].Path != test.path || !errors.Is(bad[0], test.category) {
				t.Errorf("NewLedger: %v, want %v at %s", bad[0], test.category, test.path)
			}
		})
	}
}

func TestLedgerReportsAllFaultsAtOnce(t *testing.T) {
	empty := evidence.Fact{}
	alone := evidence.Fact{ID: "cup.volume", Basis: evidence.Computed}
	_, err := evidence.NewLedger(slices.Values([]evidence.Fact{empty, alone}), slices.Values([]evidence.Fact{alone}))
	var bad field.Errors
	if !errors.As(err, &bad) {
		t.Fatalf("NewLedger: %v, want field errors", err)
	}
	var got []string
	for _, f := range bad {
		got = append(got, f.Path)
	}
	want := []string{"//id", "//value", "//basis", "/cup.volume/value", "/cup.volume/from", "/cup.volume/id"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("paths of the bad fields (-want +got):\n%s", diff)
	}
}

func TestLedgerRefusesAFactTwice(t *testing.T) {
	one := slices.Values([]evidence.Fact{sound("kettle.volume")})
	_, err := evidence.NewLedger(one, one)
	if !errors.Is(err, field.ErrDuplicate) {
		t.Errorf("NewLedger of a fact given twice: %v, want %v", err, field.ErrDuplicate)
	}
}

func TestLedgerKeepsOrderAndFacts(t *testing.T) {
	facts := []evidence.Fact{sound("c.x"), sound("a.x"), sound("b.x")}
	facts[0].From = []evidence.FactID{"b.x"} // named before it is listed
	ledger, err := evidence.NewLedger(slices.Values(facts[:1]), slices.Values(facts[1:]))
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(facts, slices.Collect(ledger.All())); diff != "" {
		t.Errorf("All (-want +got):\n%s", diff)
	}
	for f := range ledger.All() {
		if f.ID != "c.x" {
			t.Errorf("All went on after the caller stopped, to %s", f.ID)
		}
		break
	}
	if f, ok := ledger.Fact("a.x"); !ok || f.ID != "a.x" {
		t.Errorf(`Fact("a.x") = %v, %v`, f, ok)
	}
	if f, ok := ledger.Fact("d.x"); ok {
		t.Errorf(`Fact("d.x") = %v, want none`, f)
	}
}

func TestZeroLedgerIsEmpty(t *testing.T) {
	var zero evidence.Ledger
	if got := slices.Collect(zero.All()); len(got) != 0 {
		t.Errorf("All of the zero ledger: %v", got)
	}
	if _, err := zero.Basis("a.x"); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("Basis in the zero ledger: %v, want %v", err, field.ErrUnknown)
	}
}

// on returns a computed fact that rests on others.
func on(id evidence.FactID, from ...evidence.FactID) evidence.Fact {
	return evidence.Fact{ID: id, Value: "worked out", Basis: evidence.Computed, From: from}
}

func known(id evidence.FactID, b evidence.Basis) evidence.Fact {
	return evidence.Fact{ID: id, Value: "stated", Source: "zourdos2016", Via: "a review", Basis: b}
}

func TestBasisOfComputedFactIsItsWeakest(t *testing.T) {
	ledger, err := evidence.NewLedger(slices.Values([]evidence.Fact{
		known("published", evidence.Published), known("secondary", evidence.Secondary),
		known("practice", evidence.CommonPractice), known("memory", evidence.FromMemory), known("design", evidence.Design),
		on("one", "published"), on("two", "published", "secondary"), on("turned", "secondary", "published"),
		on("trade", "secondary", "practice"), on("believed", "practice", "memory", "one"),
		on("chosen", "memory", "design"), on("far", "two", "one"), on("farther", "far", "believed"),
	}))
	if err != nil {
		t.Fatal(err)
	}
	for id, want := range map[evidence.FactID]evidence.Basis{
		"published": evidence.Published, "design": evidence.Design,
		"one": evidence.Published, "two": evidence.Secondary, "turned": evidence.Secondary,
		"trade": evidence.CommonPractice, "believed": evidence.FromMemory, "chosen": evidence.Design,
		"far": evidence.Secondary, "farther": evidence.FromMemory,
	} {
		if got, err := ledger.Basis(id); got != want || err != nil {
			t.Errorf("Basis(%q) = %v, %v, want %v", id, got, err, want)
		}
	}
}

func TestBasisOfRingsIsAConflict(t *testing.T) {
	ledger, err := evidence.NewLedger(slices.Values([]evidence.Fact{
		on("itself", "itself"), on("hen", "egg"), on("egg", "hen"),
		known("corn", evidence.Published), on("farm", "corn", "hen"),
	}))
	if err != nil {
		t.Fatal(err)
	}
	for _, id := range []evidence.FactID{"itself", "hen", "egg", "farm"} {
		if got, err := ledger.Basis(id); got != 0 || !errors.Is(err, field.ErrConflict) {
			t.Errorf("Basis(%q) = %v, %v, want %v", id, got, err, field.ErrConflict)
		}
	}
}

// A long chain is no ring.
func TestBasisOfLongChains(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 60).Draw(t, "length")
		bottom := rapid.SampledFrom([]evidence.Basis{evidence.Published, evidence.FromMemory, evidence.Design}).Draw(t, "bottom")
		name := func(i int) evidence.FactID { return evidence.FactID(rune('a' + i)) }
		facts := []evidence.Fact{known(name(0), bottom)}
		for i := 1; i < n; i++ {
			facts = append(facts, on(name(i), name(i-1)))
		}
		ledger, err := evidence.NewLedger(slices.Values(facts))
		if err != nil {
			t.Fatal(err)
		}
		if got, err := ledger.Basis(name(n - 1)); got != bottom || err != nil {
			t.Errorf("Basis at the end of a chain of %d = %v, %v, want %v", n, got, err, bottom)
		}
	})
}

// A fact that rests on a stranger has no basis, though its ledger is returned
// beside the error.
func TestBasisOfUnfoundedFact(t *testing.T) {
	ledger, err := evidence.NewLedger(slices.Values([]evidence.Fact{on("cup.volume", "kettle.volume")}))
	if err == nil {
		t.Fatal("NewLedger took a fact that rests on a stranger")
	}
	if got, err := ledger.Basis("cup.volume"); got != 0 || !errors.Is(err, field.ErrUnknown) {
		t.Errorf("Basis = %v, %v, want %v", got, err, field.ErrUnknown)
	}
}

func TestFactJSON(t *testing.T) {
	f := evidence.Fact{ID: "kettle.volume", Value: "1.7 L", Source: "zourdos2016", Via: "a review", Locator: "p. 3",
		Basis: evidence.Secondary, From: []evidence.FactID{"kettle.height"}}
	text, err := json.Marshal(f)
	if err != nil {
		t.Fatal(err)
	}
	want := `{"id":"kettle.volume","value":"1.7 L","source":"zourdos2016","via":"a review","locator":"p. 3","basis":"secondary","from":["kettle.height"]}`
	if string(text) != want {
		t.Errorf("Marshal = %s, want %s", text, want)
	}
	var back evidence.Fact
	if err := field.Decode(text, &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(f, back); diff != "" {
		t.Errorf("round trip (-want +got):\n%s", diff)
	}
}
