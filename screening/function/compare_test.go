package function_test

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

func compare(t *testing.T, r function.Result, sex body.Sex, age body.Age) []function.NormAnswer {
	t.Helper()
	all, err := function.AgainstNorms(r, sex, age)
	if err != nil {
		t.Fatal(err)
	}
	return all
}

func code(s function.NormAnswer) evidence.ReasonCode { return s.Reasons[0].Code }

// 50 to 59: no verified norm for the stands, the curls and the walks, said by
// each body.
func TestFiftiesHaveNoNorm(t *testing.T) {
	for age := body.Age(50); age <= 60; age++ {
		for _, sex := range []body.Sex{body.Female, body.Male} {
			for _, test := range []function.Test{function.ChairStand30, function.ArmCurl30, function.TimedUpAndGo, function.Walk4m, function.FourStageBalance} {
				low, high := test.Plausible()
				value := units.Must(function.NewAmount(float64(int((low.Number()+high.Number())/2)), test.Unit()))
				all := compare(t, done(test, value.String()), sex, age)
				none := !slices.ContainsFunc(all, func(s function.NormAnswer) bool { return s.Position != function.NoNorm })
				if want := age < 60 || test == function.FourStageBalance; none != want {
					t.Errorf("%v, %v, %d: %d answers, no norm: %v", test, sex, age, len(all), none)
				}
				for _, s := range all {
					if s.Body == "" || len(s.Reasons) == 0 || s.Position == function.NoNorm && s.Norm.Fact != "" {
						t.Errorf("%v, %v, %d: %+v", test, sex, age, s)
					}
				}
			}
		}
	}
}

func TestNoNormSaysWhy(t *testing.T) {
	for _, test := range []struct {
		r    function.Result
		sex  body.Sex
		age  body.Age
		body string
		want evidence.ReasonCode
	}{
		{done(function.ChairStand30, "9 reps"), body.Male, 59, "CDC", "function.no-norm.age"},
		{done(function.ChairStand30, "9 reps"), body.Male, 95, "CDC", "function.no-norm.age"},
		{done(function.ChairStand30, "9 reps"), 0, 70, "CDC", "function.no-norm.sex"},
		{done(function.Grip, "20 kg"), body.Male, 66, "China 2020", "function.no-norm.sex"},
		{done(function.Walk4m, "5 s"), body.Male, 70, "AWGS 2019", "function.no-norm.course"},
		{done(function.FrailtyLevel, "4 level"), body.Male, 70, "", "function.no-norm"},
	} {
		own := slices.DeleteFunc(compare(t, test.r, test.sex, test.age), func(s function.NormAnswer) bool { return s.Body != test.body })
		if len(own) != 1 || own[0].Position != function.NoNorm || code(own[0]) != test.want {
			t.Errorf("%v, %v, %d: %+v, want %s", test.r.Test, test.sex, test.age, own, test.want)
		}
		if text := function.Words().Clinician(own[0].Reasons[0]); text == "" || slices.Contains([]byte(text), '{') {
			t.Errorf("%s reads %q", test.want, text)
		}
	}
}

// Each body answers for itself: 17 kg at 70 is low for AWGS and SDOC, not for
// EWGSOP2.
func TestBodiesAreNotMerged(t *testing.T) {
	all := compare(t, done(function.Grip, "17 kg"), body.Female, 70)
	for who, want := range map[string]function.Position{"EWGSOP2": function.NotFlagged, "SDOC": function.Flagged, "AWGS 2019": function.Flagged, "China 2020": function.NoNorm} {
		own := bodies(all, who)
		if len(own) != 1 || own[0].Position != want {
			t.Errorf("%s: %+v, want %v", who, own, want)
		}
	}
	dominant := done(function.Grip, "18.7 kg")
	dominant.Hand = function.NonDominant
	if own := bodies(compare(t, dominant, body.Female, 75), "Wang 2018"); len(own) != 1 || own[0].Position != function.Equal {
		t.Errorf("the other hand: %+v", own)
	}
	if own := bodies(compare(t, done(function.Grip, "18.7 kg"), body.Female, 75), "Wang 2018"); len(own) != 0 {
		t.Errorf("hand not given: %+v", own)
	}
}

// Norms printed in cm/s and a 0.8 m/s that two bodies read differently.
func TestWalkingSpeeds(t *testing.T) {
	for value, want := range map[string][2]function.Position{
		"4.99 s": {function.NotFlagged, function.NotFlagged}, "5 s": {function.Flagged, function.NotFlagged}, "5.01 s": {function.Flagged, function.Flagged},
		"0.8 m/s": {function.Flagged, function.NotFlagged},
	} {
		all := compare(t, done(function.Walk4m, value), body.Female, 70)
		if a, b := bodies(all, "EWGSOP2"), bodies(all, "SDOC"); a[0].Position != want[0] || b[0].Position != want[1] {
			t.Errorf("%s: %v, %v, want %v", value, a[0].Position, b[0].Position, want)
		}
	}
	own := bodies(compare(t, done(function.Walk4m, "1.132 m/s"), body.Female, 70), "Bohannon 2011")
	if len(own) != 1 || own[0].Position != function.Equal || len(own[0].Reasons) != 3 {
		t.Errorf("113.2 cm/s: %+v", own)
	}
}

// Whatever is not scored is not compared, and no norm reads it as passed.
func TestNotScoredIsNotCompared(t *testing.T) {
	for _, how := range []function.HowDone{function.Unable, function.UsedArms, function.Refused, function.Stopped} {
		for _, s := range compare(t, function.Result{Test: function.ChairStand30, How: how}, body.Female, 72) {
			if s.Position != function.NotScored && s.Position != function.NoNorm {
				t.Errorf("%v: %v by %s", how, s.Position, s.Body)
			}
		}
	}
}

func TestCompareErrors(t *testing.T) {
	r := done(function.Grip, "400 kg")
	_, err := function.AgainstNorms(r, 9, 0)
	wants(t, err, "/value", field.ErrOutOfRange)
	wants(t, err, "/sex", field.ErrOutOfRange)
	wants(t, err, "/age", field.ErrMissing)
	_, err = function.AgainstNorms(r, body.Male, 121)
	wants(t, err, "/age", field.ErrOutOfRange)
}

// A better result is never flagged where a worse one is not, nor worse than a
// figure that the worse one is better than.
func TestCompareIsMonotone(t *testing.T) {
	tests := slices.Collect(function.Tests())
	rapid.Check(t, func(t *rapid.T) {
		test := rapid.SampledFrom(tests).Draw(t, "test")
		sex := rapid.SampledFrom([]body.Sex{0, body.Female, body.Male}).Draw(t, "sex")
		age := body.Age(rapid.IntRange(50, 99).Draw(t, "age"))
		low, high := test.Plausible()
		draw := func(name string) float64 {
			return float64(rapid.IntRange(int(low.Number()+0.99), int(high.Number())).Draw(t, name))
		}
		a, b := draw("a"), draw("b")
		if (a < b) == test.LessIsBetter() {
			a, b = b, a
		}
		worse, better := answers(t, test, a, sex, age), answers(t, test, b, sex, age)
		for i := range worse {
			if rank(better[i].Position) < rank(worse[i].Position) {
				t.Fatalf("%v: %v is %v, the better %v is %v by %s", test, a, worse[i].Position, b, better[i].Position, worse[i].Body)
			}
		}
	})
}

func answers(t *rapid.T, test function.Test, v float64, sex body.Sex, age body.Age) []function.NormAnswer {
	r := done(test, fmt.Sprintf("%v %v", v, test.Unit()))
	all, err := function.AgainstNorms(r, sex, age)
	if err != nil {
		t.Fatal(err)
	}
	return all
}

func rank(p function.Position) int {
	return map[function.Position]int{function.Flagged: -1, function.NotFlagged: 1, function.Worse: -1, function.Better: 1}[p]
}
