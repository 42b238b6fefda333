package record_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// withTasks is a first visit, made anew, without exercises of its own.
func withTasks(t *testing.T, tasks ...choice.Task) record.Record {
	t.Helper()
	r := read(t, visit)
	r.Exercises, r.Tasks = nil, tasks
	return r
}

// The tasks are stored beside the person's own words, and decide what is chosen and
// tested; a record from before there were tasks has none.
func TestTasks(t *testing.T) {
	if old := read(t, visit); old.Tasks != nil {
		t.Errorf("tasks %v in a record that has none", old.Tasks)
	}
	r := withTasks(t, choice.Stairs, choice.Shopping)
	back, err := record.Decode([]byte(encoded(t, r)), field.Strict)
	if err != nil || !slices.Equal(back.Tasks, r.Tasks) || back.Task != r.Task {
		t.Fatalf("%v, %v: %v", back.Tasks, back.Task, err)
	}
	plan, err := back.Start(back.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	if !slices.Equal(plan.Tasks, r.Tasks) || !slices.Equal(plan.Week.Choice.Tasks, r.Tasks) || len(plan.Week.Choice.Tests) == 0 {
		t.Errorf("the plan is for %v, its tests are %v", plan.Tasks, plan.Week.Choice.Tests)
	}
	if first := plan.Week.Choice.Wanted[0].Exercise; first != "step-up" {
		t.Errorf("%s stands first, want the step for the stairs", first)
	}
	for _, tt := range []struct{ old, path string }{
		{`["climbing stairs", "climbing stairs"]`, "/tasks/1"},
		{`["climbing stares"]`, "/tasks/0"},
		{`[""]`, "/tasks/0"},
	} {
		text := strings.Replace(encoded(t, withTasks(t)), `"task":`, `"tasks": `+tt.old+`, "task":`, 1)
		bad, err := record.Decode([]byte(text), field.Strict)
		if err == nil {
			_, err = bad.Start(bad.LastDay())
		}
		if err == nil || !strings.Contains(err.Error(), tt.path) {
			t.Errorf("%s: %v, want an error at %s", tt.old, err, tt.path)
		}
	}
}

// Who came to few of the sessions gets few exercises.
func TestFewForLowAttendance(t *testing.T) {
	r := read(t, review)
	r.Exercises = nil
	day := r.LastDay()
	often, err := r.Week(day)
	if err != nil {
		t.Fatal(err)
	}
	r.Visits, r.Done = r.Visits[:1], slices.DeleteFunc(r.Done, func(s setlog.Set) bool { return s.Day != r.Visits[0].Day })
	seldom, err := r.Week(day)
	if err != nil {
		t.Fatal(err)
	}
	if n, few := len(often.Choice.Wanted), len(seldom.Choice.Wanted); n <= 5 || few != 5 {
		t.Errorf("%d exercises for who comes, %d for who comes little; want more than 5, and 5", n, few)
	}
	// A few minutes a day are proposed there, at a review too, and never begun by that.
	offer := func(r evidence.Reason) bool { return r.Code == "dose.brief-offer" }
	r.Absence = screening.No
	re, err := r.Assess(day)
	if err != nil || re.Coming == nil {
		t.Fatalf("%v: %+v", err, re.Coming)
	}
	if slices.ContainsFunc(often.Reasons, offer) || !slices.ContainsFunc(seldom.Reasons, offer) || !slices.ContainsFunc(re.Coming.Reasons, offer) {
		t.Error("a few minutes a day are offered to who comes, or not to who does not")
	}
	if begun := func(r evidence.Reason) bool { return r.Code == "dose.brief-days" }; slices.ContainsFunc(re.Coming.Reasons, begun) || slices.ContainsFunc(seldom.Reasons, begun) {
		t.Error("a few minutes a day are begun by themselves")
	}
}
