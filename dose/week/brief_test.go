package week_test

import (
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Four exercises of 30 s with 30 s of rest on each day (the trial's abstract, row
// ses-08): ours are that many, that long and without a weight, on every day offered.
func TestBriefWeek(t *testing.T) {
	r := weekOf(0, 1, 2, 3, 4, 5, 6)
	r.Brief = true
	w := firstWeek(t, r)
	if len(w.Sessions) != 7 {
		t.Errorf("%d days", len(w.Sessions))
	}
	s := w.Sessions[0]
	if len(s.Items) != 4 || s.WarmUp != 0 || s.Minutes > 5 {
		t.Errorf("%d exercises, %d minutes of warm-up, %d in all", len(s.Items), s.WarmUp, s.Minutes)
	}
	for _, item := range s.Items {
		if item.Hold != body.Unloaded || item.Sets != 1 || item.BuildTo != 1 || item.Rest != units.Exactly(30) || !has(item.Reasons, "dose.brief") {
			t.Errorf("%+v", item)
		}
		if seconds := item.Seconds(); seconds > 30 {
			t.Errorf("%s takes %v s", item.Exercise, seconds)
		}
	}
	for code, want := range map[evidence.ReasonCode]bool{"dose.brief-days": true, "choice.brief": true, "dose.days-between": false, "dose.minutes": false, "dose.brief-alone": false} {
		if has(w.Reasons, code) != want {
			t.Errorf("%s: %v", code, !want)
		}
	}
	r.Minutes = 2
	if few := firstWeek(t, r); few.Sessions[0].Minutes > 2 || len(few.Sessions[0].Items) != 2 {
		t.Errorf("%d exercises in %d minutes", len(few.Sessions[0].Items), few.Sessions[0].Minutes)
	}
	r.Minutes, r.Exercises = 0, []exercise.ID{"goblet-squat", "dumbbell-floor-press"}
	named := firstWeek(t, r)
	if len(named.LeftOut) != 2 || !has(named.LeftOut[0].Reasons, "dose.brief-unloaded") || named.LeftOut[0].Instead != "sit-to-stand" {
		t.Errorf("%+v", named.LeftOut)
	}
}

// Who comes little is offered a few minutes a day, and given nothing of it.
func TestBriefIsOffered(t *testing.T) {
	r := weekOf(0, 2, 4)
	usual := firstWeek(t, r)
	r.ComesLittle = true
	w := firstWeek(t, r)
	if has(usual.Reasons, "dose.brief-offer") || !has(w.Reasons, "dose.brief-offer") {
		t.Errorf("offered to who comes: %v, to who comes little: %v", has(usual.Reasons, "dose.brief-offer"), has(w.Reasons, "dose.brief-offer"))
	}
	if len(w.Sessions) != len(usual.Sessions) || has(w.Reasons, "dose.brief-days") || w.Sessions[0].WarmUp == 0 {
		t.Errorf("switched on: %+v", w.Sessions)
	}
	r.Brief = true
	if has(firstWeek(t, r).Reasons, "dose.brief-offer") {
		t.Error("offered to who has it")
	}
}
