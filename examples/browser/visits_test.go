package browser_test

import (
	"testing"

	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units/body"
)

// visits are the papers of invented people, by a name for each visit.
func visits(t *testing.T) map[string][]papers.Paper {
	t.Helper()
	all := map[string][]papers.Paper{}
	add := func(name string, list []papers.Paper, err error) {
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		all[name] = list
	}
	for name, change := range map[string]func(*record.Record){
		"first":   func(*record.Record) {},
		"insulin": func(r *record.Record) { r.Profile.Answers["insulin_or_secretagogue"] = screening.Yes },
		"hip-and-fall": func(r *record.Record) {
			r.Profile.Falls = &screening.FallsScreen{Fell: screening.Yes}
			r.Profile.Conditions = screening.AskedFor("total_hip_replacement")
			r.Profile.Events = []screening.Event{{Code: "total_hip_replacement", Day: r.Profile.Day - 60, Side: body.Right}}
		},
		"held": func(r *record.Record) { r.Profile.Symptoms = screening.AskedFor("dizziness_or_syncope") },
	} {
		r := programtest.Decoded(t, demo.VillageHall())
		change(&r)
		list, err := papers.From(r, r.LastDay())
		add(name, list, err)
	}
	for name, data := range map[string][]byte{"review": demo.HomeReview(), "review-pain": demo.HomeReviewRefer()} {
		r := programtest.Decoded(t, data)
		list, err := papers.From(r, r.Review)
		add(name, list, err)
		last, err := r.Assess(r.Review)
		if err != nil {
			t.Fatal(err)
		}
		list, err = papers.Discharge(r, last)
		add(name+"-last", list, err)
	}
	return all
}
