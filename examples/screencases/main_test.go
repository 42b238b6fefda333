package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/posology/examples/internal/cases"
	"example.org/posology/screening"
	"example.org/posology/testdata/programtest"
)

func TestPublishedTable(t *testing.T) {
	status, out, errs := programtest.Run(run)
	if status != 0 || errs != "" || !strings.HasPrefix(out, "(invented people;") || !strings.HasSuffix(out, "\nCases: 26. Answers compared: 208. Disagreements: 0.\n") {
		t.Errorf("status %d, %q, %q", status, out, errs)
	}
}

const invented = "testdata/invented-cases.csv"

func TestInventedTable(t *testing.T) {
	status, out, errs := programtest.Run(run, invented)
	if status != 0 || errs != "" {
		t.Errorf("status %d\n%s%s", status, out, errs)
	}
}

// The invented table leaves none of the codes out that it was made for: those
// of the digest and of the lists that the library added when it was written.
func TestInventedTableIsWhole(t *testing.T) {
	data, err := os.ReadFile(invented)
	if err != nil {
		t.Fatal(err)
	}
	table, err := cases.Read(data)
	if err != nil {
		t.Fatal(err)
	}
	used := map[screening.Code]bool{}
	for _, c := range table {
		if c.Source == "" {
			t.Errorf("%s says nothing of its reasons", c.ID)
		}
		for _, list := range []screening.Checklist{c.Profile.Diseases, c.Profile.Symptoms, c.Profile.Conditions, c.Profile.RedFlags} {
			for _, code := range list.Present {
				used[code] = true
			}
		}
	}
	published, err := os.ReadFile("../../testdata/published/screening.json")
	if err != nil {
		t.Fatal(err)
	}
	for term := range screening.Codes() {
		listed := term.Kind == screening.Disease || term.Kind == screening.Symptom || term.Kind == screening.Condition || term.Kind == screening.RedFlag
		if listed && !used[term.Code] && bytes.Contains(published, []byte(`"`+string(term.Code)+`"`)) {
			t.Errorf("no case for %s", term.Code)
		}
	}
	if len(used) < 110 {
		t.Errorf("only %d codes in use", len(used))
	}
}

func file(t *testing.T, text string) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "cases.csv")
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	return name
}

const header = "id,inputs,expected,source\n"

func TestStatuses(t *testing.T) {
	good := `A,"{""age"":60}","{""acsm_branch"":""N1""}",invented` + "\n"
	wrong := `B,"{""age"":60}","{""acsm_branch"":""N2"",""red_flag"":""none""}",invented` + "\n"
	bad := `C,"{""conditions"":[""gout_of_the_moon""]}",{},invented` + "\n"
	tests := []struct {
		name, text, out, errs string
		status                int
	}{
		{"all agree", header + good, "Cases: 1. Answers compared: 1. Disagreements: 0.\n", "", 0},
		{"one disagrees", header + good + wrong, "B: acsm_branch: got N1, want N2\nCases: 2. Answers compared: 3. Disagreements: 1.\n", "", 1},
		{"an unknown code", header + good + wrong + bad, "B: acsm_branch: got N1, want N2", "/C/inputs/conditions/0", 2},
		{"only a bad row", header + bad, "", "/C/inputs/conditions/0", 2},
		{"nothing", "", "", "/header", 2},
		{"no rows", header, "", "/rows", 2},
	}
	for _, tt := range tests {
		status, out, errs := programtest.Run(run, file(t, tt.text))
		if status != tt.status || !strings.HasPrefix(out, tt.out) || !strings.Contains(errs, tt.errs) || (errs == "") != (tt.status < 2) {
			t.Errorf("%s: status %d, %q, %q; want %d, %q, %q", tt.name, status, out, errs, tt.status, tt.out, tt.errs)
		}
	}
	for _, args := range [][]string{{filepath.Join(t.TempDir(), "none.csv")}, {"a", "b"}, {"-nonsense"}} {
		if status, _, errs := programtest.Run(run, args...); status != 2 || errs == "" {
			t.Errorf("%v: status %d, %q; want 2 and a word why", args, status, errs)
		}
	}
}
