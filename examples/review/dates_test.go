package main

import (
	"strings"
	"testing"

	"example.org/posology/examples/internal/demo"
	"example.org/posology/testdata/programtest"
)

// Dates run from the plan in force: what is over stands first, and of a plan that
// has ended nothing goes on.
func TestDates(t *testing.T) {
	const review = "2027-03-09"
	at := func(day string) []string {
		return []string{review, day, `"minutes": 45`, `"minutes": 45, "absence": "no"`}
	}
	for _, tt := range []struct {
		name               string
		edits              []string
		file, client, none string
	}{
		{"the test of strength", at("2027-03-12"), "Strength was to be tested again by 2027-02-23", "It is time to see again how strong you are", "by 2027-03-16"},
		{"the review", at("2027-03-17"), "The plan was to be looked at by 2027-03-16", "time that we look at your plan", "Nobody goes on"},
		{"the plan", at("2027-04-10"), "The plan was to be followed no longer than 2027-03-30", "This plan has had its time", "Take "},
		{"a plan renewed", append(at("2027-04-10"), `"review": "`, `"began": "2027-03-30", "review": "`), "IN SHORT", "YOUR DAYS", "IN SHORT Overdue"},
	} {
		text := strings.NewReplacer(tt.edits...).Replace(string(demo.HomeReview()))
		path := programtest.Edited(t, "case.json", []byte(text), tt.edits[1], tt.edits[1])
		for reader, want := range map[string]string{"file": tt.file, "client": tt.client, "doctor": "LETTER"} {
			got := flat(printed(t, "-case", path, "-for", reader))
			if !strings.Contains(got, want) || strings.Contains(got, tt.none) {
				t.Errorf("%s, for the %s: no %q, or %q, in\n%s", tt.name, reader, want, tt.none, got)
			}
		}
	}
}

// Few visits are met kindly, and nobody is praised for them.
func TestFewVisits(t *testing.T) {
	few := strings.ReplaceAll(string(demo.HomeReview()), "2027-03-09", "2027-03-30")
	few = strings.Replace(few, `"minutes": 45`, `"minutes": 45, "absence": "no"`, 1)
	got := flat(printed(t, "-case", programtest.Edited(t, "case.json", []byte(few), `"absence"`, `"absence"`), "-for", "client"))
	if strings.Contains(got, "Well done") || !strings.Contains(got, "Thank you for every one of them") || !strings.Contains(got, "we keep it short") {
		t.Error(got)
	}
}
