package main

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
)

// given returns a person with what a way out asks for, answered or written for the best.
func given(p screening.Profile, way screening.WayOut) (screening.Profile, bool) {
	p.Answers = maps.Clone(p.Answers)
	switch {
	case way.With == screening.AnAnswer:
		found := false
		for _, list := range []*screening.Checklist{&p.Diseases, &p.Symptoms, &p.RedFlags, &p.Conditions} {
			if slices.Contains(list.Unsure, way.Ask) {
				found = true
				list.Unsure = slices.DeleteFunc(slices.Clone(list.Unsure), func(c screening.Code) bool { return c == way.Ask })
			}
		}
		if !found {
			p.Answers[way.Ask] = screening.No
		}
		return p, true
	case way.With == screening.AReading && way.Ask == "blood_pressure":
		p.BP = &screening.BloodPressure{Systolic: 128, Diastolic: 78}
		return p, true
	case way.With == screening.AClearance:
		c := screening.Clearance{Who: "Dr A, invented", Day: p.Day, Intensity: screening.Vigorous}
		for term := range screening.Codes() {
			if term.Kind == screening.Disease || term.Kind == screening.Symptom || term.Kind == screening.Condition || term.Kind == screening.Reading {
				c.Scope = append(c.Scope, term.Code)
			}
		}
		p.Clearances = []screening.Clearance{c}
		return p, true
	}
	return p, false // an operation that heals, a look, an illness that is treated
}

// What is said to free most frees strictly, once it is there, or says what else it needs.
func TestWhatFreesMostFrees(t *testing.T) {
	d, tried := draws(2026, 1), 0
	for range 4000 {
		p, o, err := d.screened(screening.JoinPolicy{})
		if err != nil {
			t.Fatal(err)
		}
		better, can := given(p, o.Frees)
		if !can || strings.Contains(page.FreesMost(o), "without this too") {
			continue
		}
		after, err := screening.Assess(better)
		if err != nil {
			continue // the drawing does not allow it
		}
		if tried++; after.Meanwhile > o.Meanwhile || after.Meanwhile == o.Meanwhile && after.Route >= o.Route {
			t.Errorf("%s: %v, %v became %v, %v", page.FreesMost(o), o.Meanwhile, o.Route, after.Meanwhile, after.Route)
		}
	}
	if tried < 500 {
		t.Errorf("%d people were freed", tried)
	}
}
