package evidence_test

import (
	"encoding/csv"
	"errors"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

func TestSources(t *testing.T) {
	id := regexp.MustCompile(`^[a-z][a-z0-9_]*$`)
	doi := regexp.MustCompile(`^10\.\d{4,9}/\S+$`)
	seen := map[evidence.SourceID]bool{}
	for s := range evidence.Sources() {
		switch {
		case !id.MatchString(string(s.ID)):
			t.Errorf("source ID %q, want lower-case letters, digits and underscores", s.ID)
		case seen[s.ID]:
			t.Errorf("source %s stands twice", s.ID)
		case strings.TrimSpace(s.Citation) != s.Citation || s.Citation == "":
			t.Errorf("source %s: citation %q", s.ID, s.Citation)
		case s.DOI != "" && !doi.MatchString(s.DOI):
			t.Errorf("source %s: DOI %q", s.ID, s.DOI)
		case s.DOISeen && s.DOI == "":
			t.Errorf("source %s: a DOI was seen but is not given", s.ID)
		}
		seen[s.ID] = true
		if got, ok := evidence.LookUp(s.ID); !ok || got != s {
			t.Errorf("LookUp(%q) = %v, %v", s.ID, got, ok)
		}
	}
	if len(seen) == 0 {
		t.Fatal("no sources")
	}
	if got, ok := evidence.LookUp("nobody1900"); ok || got != (evidence.Source{}) {
		t.Errorf(`LookUp("nobody1900") = %v, %v`, got, ok)
	}
	for range evidence.Sources() {
		break // a caller may stop
	}
}

// bases are the words of the published tables.
var bases = map[string]evidence.Basis{"text": evidence.Published, "secondary": evidence.Secondary, "memory": evidence.FromMemory}

var inputRating = regexp.MustCompile(`\bRPE (\d+(?:\.\d)?)(?:-(\d+))?`)

// No rating is claimed to be better known than the table that it was copied
// from says, save where another source is named.
func TestUnitFactsKeepTheTablesBasis(t *testing.T) {
	ledger, err := evidence.NewLedger(evidence.UnitFacts())
	if err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile("../../testdata/published/rir-from-rpe.csv")
	if err != nil {
		t.Fatal(err)
	}
	r := csv.NewReader(strings.NewReader(string(text)))
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	column := func(name string) int { return slices.Index(rows[0], name) }
	checked := 0
	for _, row := range rows[1:] {
		basis, ok := bases[row[column("known")]]
		if !ok {
			t.Errorf("%s: known %q", row[0], row[column("known")])
		}
		m := inputRating.FindStringSubmatch(row[column("note")])
		if m == nil {
			t.Errorf("%s: no rating in the note %q", row[0], row[column("note")])
			continue
		}
		for _, text := range m[1:] {
			if text == "" {
				continue
			}
			checked++
			checkRating(t, ledger, text, basis, row[column("source")])
		}
	}
	if checked < 9 {
		t.Errorf("checked %d ratings, want 9 or more", checked)
	}
}

func checkRating(t *testing.T, ledger *evidence.Ledger, text string, basis evidence.Basis, source string) {
	t.Helper()
	rating, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	f, ok := ledger.Fact(evidence.RatingFact(rating))
	if !ok {
		t.Errorf("a rating of %v has no fact", rating)
		return
	}
	if evidence.Weaker(f.Basis, basis) != f.Basis {
		t.Errorf("rating %v: %v, but the table says %v", rating, f.Basis, basis)
	}
	if s, _ := evidence.LookUp(f.Source); !strings.HasPrefix(source, strings.SplitN(s.Citation, " ", 2)[0]) {
		t.Errorf("rating %v: source %q, but the table says %q", rating, s.Citation, source)
	}
}

// Each rating of package units has its fact, and there are no others.
func TestUnitFactsCoverTheRatings(t *testing.T) {
	want := map[evidence.FactID]bool{}
	for rating := range units.Ratings() {
		want[evidence.RatingFact(rating)] = true
	}
	for f := range evidence.UnitFacts() {
		if !want[f.ID] {
			t.Errorf("%s belongs to no rating, or stands twice", f.ID)
		}
		if f.Source == "" || f.Basis != evidence.Published && f.Basis != evidence.FromMemory {
			t.Errorf("%s: source %q, basis %v", f.ID, f.Source, f.Basis)
		}
		delete(want, f.ID)
	}
	for id := range want {
		t.Errorf("%s has no fact", id)
	}
	for range evidence.UnitFacts() {
		break // a caller may stop
	}
}

func TestUnitFactsState(t *testing.T) {
	ledger := units.Must(evidence.NewLedger(evidence.UnitFacts()))
	f, _ := ledger.Fact("units.rpe-8.5")
	if want := "a rating of 8.5 stands for 1 to 2 repetitions in reserve"; f.Value != want || f.Basis != evidence.FromMemory {
		t.Errorf("units.rpe-8.5: %q, %v, want %q, from memory", f.Value, f.Basis, want)
	}
	if _, err := ledger.Basis("units.rpe-4"); !errors.Is(err, units.ErrUnknown) {
		t.Errorf("a rating of 4 has a fact: %v", err)
	}
}
