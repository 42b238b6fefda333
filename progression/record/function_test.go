package record_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/choice"
	"example.org/posology/progression/record"
	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// stood is a chair stand of a day.
func stood(day units.Day, how function.HowDone, value string) choice.Tried {
	r := function.Result{Test: function.ChairStand30, Day: day, How: how, Protocol: "seat 45 cm"}
	if value != "" {
		r.Value = units.Must(function.ParseAmount(value))
	}
	return choice.Tried{Result: r}
}

func ofStands(t *testing.T, list []choice.Tested) choice.Tested {
	t.Helper()
	i := slices.IndexFunc(list, func(k choice.Tested) bool { return k.Test == function.ChairStand30 })
	if i < 0 {
		t.Fatalf("no chair stand among %+v", list)
	}
	return list[i]
}

// Tests of function are stored, those that are no number too; the plan has the result at the
// start, the review that and the present one, with the difference and whether it is real.
func TestFunctionAtStartAndReview(t *testing.T) {
	r := read(t, review)
	r.Tasks = []choice.Task{choice.Garden}
	start, day := r.Profile.Day, r.LastDay()
	first, err := r.Assess(day)
	if err != nil || len(first.Chosen) != 2 || len(first.Tested) != 2 || first.Tested[1].Last != nil {
		t.Fatalf("without results: %+v, %v", first.Tested, err)
	}
	r.Function = []choice.Tried{stood(start, function.UsedArms, "9 reps"), stood(start, function.Done, "11 reps")}
	for _, tt := range []struct {
		now   choice.Tried
		shown function.Shown
		way   function.Position
	}{
		{stood(day, function.Done, "16 reps"), function.Real, function.Better},
		{stood(day, function.Done, "12 reps"), function.WithinLearning, function.Better},
		{stood(day, function.Done, "7 reps"), function.Real, function.Worse},
		{stood(day, function.Unable, ""), function.NotShown, function.Worse},
		{stood(day, function.Stopped, ""), function.NotShown, function.Worse},
	} {
		now := r
		now.Function = append(slices.Clone(r.Function[1:]), tt.now)
		back, err := record.Decode([]byte(encoded(t, now)), field.Strict)
		if err != nil {
			t.Fatal(err)
		}
		re, err := back.Assess(day)
		if err != nil {
			t.Fatal(err)
		}
		k := ofStands(t, re.Tested)
		if k.First.Value.String() != "11 reps" || k.Last.How != tt.now.How || k.Change.Shown != tt.shown || k.Change.Direction != tt.way {
			t.Errorf("%s %s: %+v", tt.now.How, tt.now.Value, k.Change)
		}
		before, err := back.Assess(day - 1)
		if err == nil && ofStands(t, before.Tested).Change != nil {
			t.Error("a result of a day that was still to come")
		}
	}
}

// An entry rests on the results that there were; results come in the order of their days.
func TestFunctionReplaysAndIsChecked(t *testing.T) {
	r := withTasks(t, choice.Stairs)
	day := r.LastDay()
	without, err := r.Decide(day)
	if err != nil || without.Plan.Tested != nil {
		t.Fatalf("%+v, %v", without.Plan.Tested, err)
	}
	r.Entries, r.Function = append(r.Entries, without), append(r.Function, stood(day, function.UsedArms, ""))
	with, err := r.Decide(day)
	if err != nil || ofStands(t, with.Plan.Tested).Last.How != function.UsedArms {
		t.Fatalf("%+v, %v", with.Plan.Tested, err)
	}
	r.Entries, r.Function = append(r.Entries, with), append(r.Function, stood(day, function.Done, "8 reps"))
	back, err := record.Decode([]byte(encoded(t, r)), field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	for _, again := range back.Replay() {
		if again.Err != nil {
			t.Error(again.Err)
		}
	}
	for path, bad := range map[string]func(*record.Record){
		"/function/1/day":              func(r *record.Record) { r.Function[1].Day-- },
		"/function/0/how":              func(r *record.Record) { r.Function[0].How = 0 },
		"/entries/1/rests_on/function": func(r *record.Record) { r.Entries[1].Rests.Function = 3 },
		"/function/1/value":            func(r *record.Record) { r.Function[1].Value = function.Amount{} },
		"/function/0/test":             func(r *record.Record) { r.Function[0].Test = 0 },
	} {
		changed, err := record.Decode([]byte(encoded(t, r)), field.Strict)
		if err != nil {
			t.Fatal(err)
		}
		bad(&changed)
		if err := changed.Validate(); err == nil || !strings.Contains(err.Error(), path) {
			t.Errorf("%v, want an error at %s", err, path)
		}
	}
}
