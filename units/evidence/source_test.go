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
	"example.org/posology/units/field"
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
	text, err := os.ReadFile("sources.tsv")
	if err != nil {
		t.Fatal(err)
	}
	rows := 0
	for line := range strings.Lines(string(text)) {
		if line != "\n" && !strings.HasPrefix(line, "#") {
			rows++
		}
	}
	if len(seen) != rows || rows < 200 {
		t.Errorf("%d sources of %d rows: a row has four cells, and the third is \"seen\" or empty", len(seen), rows)
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
// from says, except where another source is named.
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
			if text == "" || text == "5" && basis == evidence.FromMemory {
				continue // a row that was read decides for 5
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

// Each rating of package units has its fact; the only other is what is remembered
// of 5 beside what was read.
func TestUnitFactsCoverTheRatings(t *testing.T) {
	want := map[evidence.FactID]bool{"units.rpe-5-or-6": true}
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

// The whole ratings that were seen, and where: 9 and 10 in the abstract of the
// 2016 study, 5 and 7 in the 2021 study. The rest follow from memory.
func TestUnitFactsState(t *testing.T) {
	ledger := units.Must(evidence.NewLedger(evidence.UnitFacts()))
	for _, test := range []struct {
		id     evidence.FactID
		value  string
		source evidence.SourceID
		basis  evidence.Basis
	}{
		{"units.rpe-5", "a rating of 5 stands for 5 in reserve", "zourdos2021", evidence.Published},
		{"units.rpe-5-or-6", "ratings of 5 and 6 stand in one row, for 4 to 6 in reserve; a later text has 5 alone, and goes before it", "zourdos2016", evidence.FromMemory},
		{"units.rpe-7", "a rating of 7 stands for 3 in reserve", "zourdos2021", evidence.Published},
		{"units.rpe-8.5", "a rating of 8.5 stands for 1 to 2 in reserve", "zourdos2016", evidence.FromMemory},
		{"units.rpe-9", "a rating of 9 stands for 1 in reserve", "zourdos2016", evidence.Published},
		{"units.rpe-10", "a rating of 10 stands for 0 in reserve", "zourdos2016", evidence.Published},
	} {
		f, _ := ledger.Fact(test.id)
		if f.Value != test.value || f.Source != test.source || f.Basis != test.basis {
			t.Errorf("%s: %q, %s, %v, want %q, %s, %v", test.id, f.Value, f.Source, f.Basis, test.value, test.source, test.basis)
		}
	}
	if _, err := ledger.Basis("units.rpe-4"); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("a rating of 4 has a fact: %v", err)
	}
}
