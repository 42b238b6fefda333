package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units/field"
)

func TestPapers(t *testing.T) {
	for _, reader := range []string{"client", "file", "doctor"} {
		status, got, errs := programtest.Run(run, "-for", reader)
		if status != 0 || errs != "" {
			t.Fatalf("-for %s: status %d, %s", reader, status, errs)
		}
		programtest.Golden(t, "golden-"+reader+".txt", got)
		if !strings.Contains(got, "invented") {
			t.Errorf("-for %s does not say that the case is invented", reader)
		}
		for i, line := range strings.Split(got, "\n") {
			if len([]rune(line)) > page.Width+10 {
				t.Errorf("-for %s line %d is %d columns wide", reader, i+1, len([]rune(line)))
			}
		}
	}
	status, got, _ := programtest.Run(run)
	_, file, _ := programtest.Run(run, "-for", "file")
	if status != 0 || got != file {
		t.Error("without flags the paper for the file is not printed")
	}
}

// The JSON decodes into the library's own types and encodes to the same bytes.
func TestJSONRoundTrip(t *testing.T) {
	status, first, errs := programtest.Run(run, "-json")
	if status != 0 {
		t.Fatal(errs)
	}
	var result record.Plan
	if err := field.Decode([]byte(first), &result, field.Strict); err != nil {
		t.Fatal(err)
	}
	var second bytes.Buffer
	if err := command.JSON(&second, result); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(first, second.String()); diff != "" {
		t.Error(diff)
	}
}

func TestBadCases(t *testing.T) {
	const systolic = `"systolic": 146`
	tests := []struct{ name, old, new, want string }{
		{"not a number", systolic, `"systolic": NaN`, "/profile/bp/systolic"},
		{"too much for a mass", `"8 kg"`, `"1` + strings.Repeat("0", 300) + ` kg"`, "/kit/dumbbells/4/mass"},
		{"an exponent", `"8 kg"`, `"1e300 kg"`, "/kit/dumbbells/4/mass"},
		{"repetitions below nought", `"reps": 8`, `"reps": -8`, "/tests/0/reps"},
		{"a bare mass for two dumbbells", `, "stated": "per hand", "reps": 7`, `, "reps": 7`, "/tests/2/stated"},
		{"a key twice", systolic, systolic + `, "systolic": 120`, "/profile/bp/systolic"},
		{"an unknown field", systolic, systolic + `, "pulse": 70`, "/profile/bp/pulse"},
		{"a mass without a unit", `"8 kg"`, `"8"`, "/kit/dumbbells/4/mass"},
		{"no days", `"days": ["2026-11-30", "2026-12-01", "2026-12-02", "2026-12-04"]`, `"days": []`, "/days"},
		{"an unknown condition", `"osteoporosis"]`, `"osteoporoses"]`, "/profile/conditions/present/1"},
	}
	for _, tt := range tests {
		status, out, errs := programtest.Run(run, "-case", programtest.Edited(t, "case.json", demo.VillageHall(), tt.old, tt.new))
		if status != 1 || out != "" || !strings.Contains(errs, tt.want) {
			t.Errorf("%s: status %d, %q; want 1 and %s", tt.name, status, errs, tt.want)
		}
	}
	truncated := filepath.Join(t.TempDir(), "case.json")
	if err := os.WriteFile(truncated, demo.VillageHall()[:400], 0o644); err != nil {
		t.Fatal(err)
	}
	if status, _, errs := programtest.Run(run, "-case", truncated); status != 1 || !strings.Contains(errs, "/profile") {
		t.Errorf("truncated: status %d, %q", status, errs)
	}
	if status, _, _ := programtest.Run(run, "-case", filepath.Join(t.TempDir(), "none.json")); status != 1 {
		t.Errorf("no such file: status %d, want 1", status)
	}
	for _, args := range [][]string{{"-for", "nobody"}, {"-nonsense"}, {"extra"}} {
		if status, _, errs := programtest.Run(run, args...); status != 2 || errs == "" {
			t.Errorf("%v: status %d, %q; want 2 and a word why", args, status, errs)
		}
	}
}

// Unstable angina gets no plan and says where to go; unanswered lists are not
// waved through.
func TestNoPlan(t *testing.T) {
	const conditions = `"present": ["hypertension_treated", "osteoporosis"]`
	tests := []struct{ name, old, new, route, client string }{
		{"unstable angina", conditions, `"present": ["unstable_chd"]`, "Route: emergency", "emergency"},
		{"symptoms not asked", `"symptoms": {"asked": true}`, `"symptoms": {"asked": false}`, "Route: ask first", "list of signs"},
	}
	for _, tt := range tests {
		file := programtest.Edited(t, "case.json", demo.VillageHall(), tt.old, tt.new)
		status, record, errs := programtest.Run(run, "-case", file)
		if status != 0 || !strings.Contains(record, tt.route) || !strings.Contains(record, "NO DOSE") || strings.Contains(record, "FIRST WEEK") {
			t.Errorf("%s: status %d %s\n%s", tt.name, status, errs, record)
		}
		_, client, _ := programtest.Run(run, "-case", file, "-for", "client")
		if !strings.Contains(client, tt.client) || strings.Contains(client, "WHAT YOU DO EACH TIME") {
			t.Errorf("%s, for the client:\n%s", tt.name, client)
		}
		if status, _, errs := programtest.Run(run, "-case", file, "-for", "doctor"); status != 0 {
			t.Errorf("%s, for the doctor: %s", tt.name, errs)
		}
	}
}
