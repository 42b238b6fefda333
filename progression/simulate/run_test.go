package simulate_test

import (
	"encoding/json"
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose"
	"example.org/posology/dose/onerm"
	"example.org/posology/progression"
	"example.org/posology/progression/simulate"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

func typical(kg float64) simulate.Trainee {
	return simulate.Typical(units.Must(units.Kilograms(kg)))
}

func TestRunIsReproducible(t *testing.T) {
	s := beginner(t, "biceps-curl", dumbbells(1, 2, 3, 4, 5, 6))
	a, b, c := runOf(t, typical(8), s, 3), runOf(t, typical(8), s, 3), runOf(t, typical(8), s, 4)
	text := func(v []simulate.Lived) string { return string(units.Must(json.Marshal(v))) }
	if text(a) != text(b) {
		t.Error("the same source gave two runs")
	}
	if text(a) == text(c) {
		t.Error("another source gave the same run")
	}
	if len(a) != 32 {
		t.Errorf("%d visits, want 16 weeks of 2", len(a))
	}
}

// Without growth, noise and error, strength is what was given, every day.
func TestStrengthWithoutChance(t *testing.T) {
	tr := simulate.Trainee{OneRM: 10 * units.Kilogram}
	for _, v := range runOf(t, tr, beginner(t, "one-arm-dumbbell-row", dumbbells(2, 4, 6)), 1) {
		if v.Strength != tr.OneRM {
			t.Fatalf("%v on %v", v.Strength, v.Day)
		}
	}
	tr.Gain, tr.DaySD = simulate.FirstYear(), 0
	s := beginner(t, "one-arm-dumbbell-row", dumbbells(2, 4, 6))
	s.Weeks = 52
	visits := runOf(t, tr, s, 1)
	want := 10 * math.Pow(52.5, math.Log(1.4)/math.Log(52)) // 51.5 weeks at the last of two visits a week, at the reference dose
	last := visits[len(visits)-1]
	if got := last.Strength.Kilograms(); got < 10*1.2 || got > want || last.Usual != last.Strength {
		t.Errorf("%v kg after a year, at most %v", got, want)
	}
}

// A trainee who always misses is never trained; one whose sets always slip has
// every set asked about or within what looking for the load may reach.
func TestMisses(t *testing.T) {
	tr := typical(10)
	tr.Missed = 1
	for _, v := range runOf(t, tr, beginner(t, "one-arm-dumbbell-row", dumbbells(2, 4, 6)), 1) {
		if !v.Missed || len(v.Done.Sets) > 0 {
			t.Fatalf("%+v", v)
		}
	}
	tr.Missed, tr.Slips = 0, 1
	queries := 0
	for _, v := range runOf(t, tr, beginner(t, "one-arm-dumbbell-row", dumbbells(2, 4, 6)), 1) {
		queries += len(v.Decision.Queries)
	}
	if queries == 0 {
		t.Error("no slip was asked about")
	}
}

// Somebody for whom the lightest weight is too heavy does nothing with it.
func TestTooHeavyToLift(t *testing.T) {
	visits := runOf(t, typical(3), beginner(t, "one-arm-dumbbell-row", dumbbells(4, 6)), 1)
	if n := len(visits[0].Done.Sets); n != 0 {
		t.Errorf("%d sets with more than the maximum", n)
	}
}

// A sign ends the run with a referral, and a run ends where the exercise is changed.
func TestRunEnds(t *testing.T) {
	tr := typical(10)
	tr.Signs = 1
	visits := runOf(t, tr, beginner(t, "one-arm-dumbbell-row", dumbbells(2, 4)), 1)
	last := visits[len(visits)-1].Decision
	if len(visits) != 2 || last.Action != progression.StopAndRefer || last.Next != nil {
		t.Errorf("%d visits, %v", len(visits), last.Action)
	}
	tr.Signs, tr.Pain = 0, 1
	visits = runOf(t, tr, beginner(t, "one-arm-dumbbell-row", dumbbells(2, 4)), 1)
	last = visits[len(visits)-1].Decision
	if len(visits) != 3 || last.Action != progression.ChangeVariant {
		t.Errorf("%d visits, %v", len(visits), last.Action)
	}
}

func TestRunRefuses(t *testing.T) {
	tr := simulate.Trainee{DaySD: 0.3, Gain: simulate.LogGain{Percent: 1, Weeks: 1}, Reserve: alike(-6, 6), Early: -1, Missed: -1, Slips: 2, Pain: 2, Signs: 2, Unseen: 2, FormLost: 2}
	s := beginner(t, "biceps-curl", dumbbells(2))
	s.Policy.MostReps, s.Start, s.BodyMass, s.Weeks, s.Familiarise, s.Days = -1, 0, -1, 0, -1, []int{3, 2}
	_, err := simulate.Run(tr, s, nil)
	var all field.Errors
	if !errors.As(err, &all) {
		t.Fatalf("%v", err)
	}
	var got []string
	for _, f := range all {
		got = append(got, f.Path)
	}
	want := []string{
		"/trainee/one_rm", "/trainee/gain/weeks", "/trainee/day_sd", "/trainee/reserve/near/more", "/trainee/reserve/near/sd",
		"/trainee/reserve/midway/more", "/trainee/reserve/midway/sd", "/trainee/reserve/far/more", "/trainee/reserve/far/sd",
		"/trainee/early", "/trainee/missed", "/trainee/slips", "/trainee/pain", "/trainee/signs", "/trainee/unseen", "/trainee/form_lost",
		"/setup/policy/most_reps", "/setup/start", "/setup/body_mass", "/setup/weeks", "/setup/familiarise", "/setup/days", "/src",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	s = beginner(t, "biceps-curl", dumbbells(2))
	s.Request.Screening.Who.Age = 0
	if _, err := simulate.Run(typical(5), s, rand.NewPCG(1, 1)); err == nil {
		t.Error("a request without an age was taken")
	}
	s = beginner(t, "biceps-curl", dumbbells())
	var barred *dose.ConstraintError
	if _, err := simulate.Run(typical(5), s, rand.NewPCG(1, 1)); !errors.As(err, &barred) {
		t.Errorf("no dumbbell: %v", err)
	}
}

func TestJSON(t *testing.T) {
	tr := typical(8)
	s := beginner(t, "biceps-curl", dumbbells(2, 4))
	var tr2 simulate.Trainee
	var s2 simulate.Setup
	if err := field.Decode(units.Must(json.Marshal(tr)), &tr2, field.Strict); err != nil {
		t.Fatal(err)
	}
	if err := field.Decode(units.Must(json.Marshal(s)), &s2, field.Strict); err != nil {
		t.Fatal(err)
	}
	tr2.Curve = onerm.Epley // a relation is no data
	run := runOf(t, tr, s, 1)
	text := units.Must(json.Marshal(run))
	if diff := cmp.Diff(string(text), string(units.Must(json.Marshal(runOf(t, tr2, s2, 1))))); diff != "" {
		t.Error(diff)
	}
	var back []simulate.Lived
	if err := field.Decode(text, &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(text), string(units.Must(json.Marshal(back)))); diff != "" {
		t.Error(diff)
	}
	var m simulate.Misjudgement
	for _, bad := range []string{`{"what":1}`, `{"weeks":1,"weeks":2,"more":1,"more":2,"one_rm":"1 kg","one_rm":"1 kg","week":1,"week":2}`} {
		if field.Decode([]byte(bad), &tr2, field.Strict) == nil || field.Decode([]byte(bad), &s2, field.Strict) == nil || field.Decode([]byte(bad), &m, field.Strict) == nil || field.Decode([]byte(bad), &back[0], field.Strict) == nil {
			t.Errorf("%s was read", bad)
		}
	}
}

// A trainee-week is a week of one exercise on two days.
func BenchmarkRun(b *testing.B) {
	s := beginner(b, "one-arm-dumbbell-row", dumbbells(2, 4, 6, 10))
	tr := typical(10)
	weeks := 0
	for seed := uint64(0); b.Loop(); seed++ {
		runOf(b, tr, s, seed)
		weeks += s.Weeks
	}
	b.ReportMetric(float64(weeks)/float64(b.Elapsed().Milliseconds()+1), "weeks/ms")
}

// A screening that comes to the same each year does not end a run after one.
func TestRunGoesOnPastTheReview(t *testing.T) {
	s := beginner(t, "biceps-curl", dumbbells(2, 3, 4, 5, 6))
	s.Weeks = 60
	visits := runOf(t, typical(8), s, 1)
	end := visits[len(visits)-1]
	if end.Done.Day <= s.Request.Screening.ReviewBy || end.Decision.Next == nil {
		t.Errorf("the last visit is of %v, after review by %v: %v", end.Done.Day, s.Request.Screening.ReviewBy, end.Decision.Action)
	}
}
