package week_test

import (
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/week"
)

// A week refuses the records of somebody else too, and another day's check.
func TestMisuseOfAWeek(t *testing.T) {
	for path, spoil := range map[string]func(r *week.Request){
		"/estimates/0/key":                     func(r *week.Request) { r.Estimates[0].Key = "p2" },
		"/performed/0/key":                     func(r *week.Request) { r.Performed = []setlog.Set{doneBy("p2", row(t))} },
		"/screening/today":                     func(r *week.Request) { r.Screening = checked(t, firstDay-3) },
		"/screening/setting":                   func(r *week.Request) { r.Screening.Setting = 0 },
		"/screening/limits/lighten/fewer_sets": func(r *week.Request) { r.Screening.Limits.Lighten.FewerSets = -3 },
		"/screening/who/training":              func(r *week.Request) { r.Screening.Who.Training = 0 },
	} {
		r := weekOf(0)
		r.Screening = checked(t, firstDay)
		r.Estimates = []onerm.Estimate{estimateOf(t, row(t), 6, 8, 2)}
		firstWeek(t, r)
		spoil(&r)
		if _, err := week.Plan(r); len(paths(err)) != 1 || paths(err)[0] != path {
			t.Errorf("%v, want %s", err, path)
		}
	}
}

// An analysis without screening says so in every dose.
func TestWaiverIsRepeated(t *testing.T) {
	if p := prescribe(t, row(t)); !has(p.Reasons, "dose.waived") {
		t.Errorf("%+v", p.Reasons)
	}
	for _, item := range firstWeek(t, weekOf(0)).Sessions[0].Items {
		if !has(item.Reasons, "dose.waived") {
			t.Errorf("%s: %+v", item.Exercise, item.Reasons)
		}
	}
	r := row(t)
	r.Screening = assessed(t, firstDay)
	if p := prescribe(t, r); has(p.Reasons, "dose.waived") {
		t.Errorf("of an assessment: %+v", p.Reasons)
	}
}
