package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units/field"
)

const columns = 100

// cases are the runs whose output is kept.
var cases = []struct {
	golden string
	args   []string
}{
	{"demo", nil},
	{"one-dumbbell", []string{"-case", "../internal/demo/one-dumbbell.json"}},
	{"bone", []string{"-case", "../internal/demo/bone.json"}},
	{"class", []string{"-class"}},
}

func TestGolden(t *testing.T) {
	for _, tt := range cases {
		status, got, errs := programtest.Run(run, tt.args...)
		if status != 0 || errs != "" {
			t.Fatalf("%s: status %d, %s", tt.golden, status, errs)
		}
		programtest.Golden(t, "golden-"+tt.golden+".txt", got)
		if !strings.Contains(got, "invented") {
			t.Errorf("%s does not say that the case is invented", tt.golden)
		}
		for i, line := range strings.Split(got, "\n") {
			if n := utf8.RuneCountInString(line); n > columns {
				t.Errorf("%s line %d is %d columns wide", tt.golden, i+1, n)
			}
			if strings.HasSuffix(line, " ") || strings.ContainsAny(line, "{}") {
				t.Errorf("%s line %d: %q", tt.golden, i+1, line)
			}
		}
	}
}

// What lifting alone does not meet stands in the table.
func TestLiftingAlone(t *testing.T) {
	_, got, _ := programtest.Run(run)
	_, bone, _ := programtest.Run(run, cases[2].args...)
	for text, want := range map[string]string{got: "balance days for D (≥3)", bone: "impacts for A (≥50)"} {
		if !strings.Contains(strings.Join(strings.Fields(text), " "), want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
}

// Six guidelines, each once.
func TestSixColumns(t *testing.T) {
	for _, file := range []string{"village-hall-build", "one-dumbbell", "bone"} {
		c, err := command.Record("../internal/demo/"+file+".json", nil)
		if err != nil {
			t.Fatal(err)
		}
		r, err := audited(c)
		if err != nil {
			t.Fatal(err)
		}
		seen := map[string]bool{}
		for _, c := range r.Columns {
			seen[string(c.Guideline)] = true
		}
		if len(seen) != 6 || len(r.Columns) != 6 {
			t.Errorf("%s: %d columns, %d guidelines", file, len(r.Columns), len(seen))
		}
	}
}

// The JSON decodes into the library's own types and encodes to the same bytes.
func TestJSONRoundTrip(t *testing.T) {
	for _, tt := range cases {
		status, first, errs := programtest.Run(run, append([]string{"-json"}, tt.args...)...)
		if status != 0 {
			t.Fatal(errs)
		}
		var back any = &result{}
		if tt.golden == "class" {
			back = &classResult{}
		}
		if err := field.Decode([]byte(first), back, field.Strict); err != nil {
			t.Fatal(err)
		}
		var second bytes.Buffer
		if err := command.JSON(&second, back); err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(first, second.String()); diff != "" {
			t.Errorf("%s: %s", tt.golden, diff)
		}
		var strict result
		if err := field.Decode([]byte(first), &strict, field.Strict); (err == nil) == (tt.golden == "class") {
			t.Errorf("%s: strictly decoded: %v", tt.golden, err)
		}
	}
}

func TestBadCases(t *testing.T) {
	const systolic = `"systolic": 142`
	tests := []struct{ name, old, new, want string }{
		{"not a number", systolic, `"systolic": NaN`, "/profile/bp/systolic"},
		{"too much for a mass", `"8 kg"`, `"1` + strings.Repeat("0", 300) + ` kg"`, "/kit/dumbbells/6/mass"},
		{"an exponent", `"8 kg"`, `"1e300 kg"`, "/kit/dumbbells/6/mass"},
		{"repetitions below nought", `"reps": 8`, `"reps": -8`, "/tests/0/reps"},
		{"a bare mass for two dumbbells", `, "stated": "per hand", "reps": 7`, `, "reps": 7`, "/tests/2/stated"},
		{"a key twice", systolic, systolic + `, "systolic": 120`, "/profile/bp/systolic"},
		{"a phase twice", `"phase": "build"`, `"phase": "build", "phase": "power"`, "/phase"},
		{"an unknown field", systolic, systolic + `, "pulse": 70`, "/profile/bp/pulse"},
		{"an unknown phase", `"build"`, `"buid"`, "/phase"},
		{"a day that is none", `"who": "Instructor C", "day": "2026-12-11"`, `"who": "Instructor C", "day": "2026-02-30"`, "/seen/0/day"},
		{"no days", `["2026-12-14", "2026-12-16", "2026-12-18"]`, `[]`, "/days"},
		{"a day twice", `"2026-12-16"`, `"2026-12-14"`, "/days/1"},
		{"minutes below nought", `"minutes": 50`, `"minutes": -1`, "/minutes"},
		{"an unknown exercise", `"dumbbell-step-up",`, `"dumbbell-step-upp",`, "/seen/0/exercise"},
		{"an unknown guideline", `"phase": "build"`, `"phase": "build", "guideline": "nobody1999"`, "/guideline"},
	}
	for _, tt := range tests {
		status, out, errs := programtest.Run(run, "-case", programtest.Edited(t, "case.json", demo.VillageHallBuild(), tt.old, tt.new))
		if status != 1 || out != "" || !strings.Contains(errs, tt.want) {
			t.Errorf("%s: status %d, %q; want 1 and %s", tt.name, status, errs, tt.want)
		}
	}
	truncated := filepath.Join(t.TempDir(), "case.json")
	if err := os.WriteFile(truncated, demo.VillageHallBuild()[:500], 0o644); err != nil {
		t.Fatal(err)
	}
	for _, args := range [][]string{{"-case", truncated}, {"-case", "testdata/nothing.json"}, {"-class", "-case", truncated}} {
		if status, out, errs := programtest.Run(run, args...); status != 1 || out != "" || errs == "" {
			t.Errorf("%v: status %d, %q", args, status, errs)
		}
	}
	for _, args := range [][]string{{"-nothing"}, {"case.json"}} {
		if status, out, _ := programtest.Run(run, args...); status != 2 || out != "" {
			t.Errorf("%v: status %d, %q, want 2", args, status, out)
		}
	}
}

func TestBadClasses(t *testing.T) {
	tests := []struct{ name, old, new, want string }{
		{"a name twice", `"client": "Client G, 61, a man"`, `"client": "Client A, 67, a woman"`, "/clients/1/name"},
		{"a bad test", `"reps": 8`, `"reps": 0`, "/clients/0/tests/0/reps"},
		{"an unknown field", `"minutes": 45`, `"minutes": 45, "hall": "ours"`, "/hall"},
		{"no clients", `"clients": [`, `"clients": [], "rest": [`, "/rest"},
	}
	for _, tt := range tests {
		status, out, errs := programtest.Run(run, "-class", "-case", programtest.Edited(t, "case.json", demo.Class(), tt.old, tt.new))
		if status != 1 || out != "" || !strings.Contains(errs, tt.want) {
			t.Errorf("%s: status %d, %q; want 1 and %s", tt.name, status, errs, tt.want)
		}
	}
	nobody := programtest.Edited(t, "case.json", []byte(`{"note": "invented", "class": "none", "kit": {}, "days": ["2026-12-14"], "clients": []}`), "none", "empty")
	if status, _, errs := programtest.Run(run, "-class", "-case", nobody); status != 1 || !strings.Contains(errs, "/clients") {
		t.Errorf("nobody: status %d, %q", status, errs)
	}
}

// Unstable angina gets no week and says why; in a class the others go on.
func TestNoWeek(t *testing.T) {
	const conditions = `"present": ["hypertension_treated", "osteoporosis"]`
	const unstable = `"present": ["unstable_chd"]`
	file := programtest.Edited(t, "case.json", demo.VillageHallBuild(), conditions, unstable)
	status, got, errs := programtest.Run(run, "-case", file)
	if status != 0 || !strings.Contains(got, "NO WEEK FOR NOW") || !strings.Contains(got, "Route: emergency") || strings.Contains(got, "THE WEEK") {
		t.Errorf("status %d %s\n%s", status, errs, got)
	}
	if status, _, errs := programtest.Run(run, "-json", "-case", file); status != 0 {
		t.Errorf("as JSON: %d %s", status, errs)
	}
	status, got, errs = programtest.Run(run, "-class", "-case", programtest.Edited(t, "case.json", demo.Class(), conditions, unstable))
	if status != 0 || !strings.Contains(got, "CLIENT A, 67, A WOMAN: NOT FOR NOW") || !strings.Contains(got, "turns of") || strings.Contains(got, "\nClient A ") {
		t.Errorf("class: status %d %s\n%s", status, errs, got)
	}
}
