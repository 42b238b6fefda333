package main

import (
	"strings"
	"testing"

	"example.org/posology/examples/internal/demo"
	"example.org/posology/testdata/programtest"
)

// What is printed of tests and assessments of other days.
func TestDates(t *testing.T) {
	const (
		test  = `{"day": "2026-11-25", "exercise": "seated-one-arm-row", "side": "right", "hold": "one hand", "load": "4 kg", "reps": 8, "effort": "rir 2"}`
		tests = `"tests": [`
		bp    = `"bp": {`
		days  = `"days": ["2026-11-30", "2026-12-01", "2026-12-02", "2026-12-04"]`
	)
	on := func(day string) string { return strings.Replace(test, "2026-11-25", day, 1) }
	with := func(mass string) string { return strings.Replace(test, "4 kg", mass, 1) }
	check := func(day string) string {
		return `"checks": [{"day": "` + day + `", "new": {"asked": true}, "setting": "in a group", "febrile": "no", "unwell": "no"}], "days": ["` + day + `"]`
	}
	for _, tt := range []struct {
		name         string
		edits        []string
		file, client string
	}{
		{"a test of a day to come", []string{tests, tests + on("2027-11-25") + ", "}, "Not used: of 2027-11-25, after 2026-11-25", "a day that is still to come"},
		{"a test of three years ago", []string{tests, tests + on("2023-11-25") + ", "}, "Not used: of 2023-11-25, more than 84 days before", "a while ago"},
		{"tests before an operation", []string{bp, `"events": [{"code": "operation", "day": "2026-11-20"}], ` + bp, tests, tests + on("2026-11-10") + ", "}, "Not used: of 2026-11-10; an event ended", "Something has changed since your last test"},
		{"tests of one day that disagree", []string{tests, tests + with("8 kg") + ", "}, "tests of that day give", "tell different stories"},
		{"a weight that the kit does not make", []string{tests, tests + with("97 kg") + ", "}, "the kit does not make 97 kg", "a weight that is not here"},
		{"an assessment that has lapsed", []string{days, check("2028-01-10")}, "NO DOSE", "FOR NOW"},
	} {
		text := strings.NewReplacer(tt.edits...).Replace(string(demo.VillageHall()))
		path := programtest.Edited(t, "case.json", []byte(text), tt.edits[1], tt.edits[1])
		for reader, want := range map[string]string{"file": tt.file, "client": tt.client} {
			status, got, errs := programtest.Run(run, "-case", path, "-for", reader)
			if flat := strings.Join(strings.Fields(got), " "); status != 0 || !strings.Contains(flat, want) {
				t.Errorf("%s, for the %s: status %d, %s, no %q", tt.name, reader, status, errs, want)
			}
		}
	}
}
