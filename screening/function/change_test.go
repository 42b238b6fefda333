package function_test

import (
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// later is r eight weeks on, with another value.
func later(r function.Result, value string) function.Result {
	r.Day = units.Must(r.Day.Plus(56))
	r.Value = amt(value)
	return r
}

func change(t *testing.T, before, after function.Result, sex body.Sex, age body.Age) function.ChangeAnswer {
	t.Helper()
	v, err := function.ChangeBetween(before, after, sex, age)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// At, just under and just over each detectable change, for the better and for
// the worse, with and without practice.
func TestChange(t *testing.T) {
	const real, not, learning = function.Real, function.NotShown, function.WithinLearning
	for _, test := range []struct {
		test          function.Test
		before, after string
		try           uint8 // of the first result
		sex           body.Sex
		age           body.Age
		want          function.Shown
		code          evidence.ReasonCode
	}{
		// Timed up and go, 45 to 70: the larger of 1.10 and 1.14 s decides.
		{function.TimedUpAndGo, "10 s", "8.86 s", 2, body.Male, 66, not, "function.change.not-shown"},
		{function.TimedUpAndGo, "10 s", "8.85 s", 2, body.Male, 66, real, "function.change.real-better"},
		{function.TimedUpAndGo, "10 s", "8.87 s", 2, body.Male, 66, not, "function.change.not-shown"},
		{function.TimedUpAndGo, "10 s", "11.15 s", 2, body.Male, 70, real, "function.change.real-worse"},
		{function.TimedUpAndGo, "10 s", "5 s", 2, body.Male, 71, not, "function.change.none-published"},
		// Grip, from 65: 3.2 kg in men, 2.4 in women, 2.9 for a sex not given.
		{function.Grip, "30 kg", "33.2 kg", 0, body.Male, 65, not, "function.change.not-shown"},
		{function.Grip, "30 kg", "33.3 kg", 0, body.Male, 65, real, "function.change.real-better"},
		{function.Grip, "20 kg", "22.4 kg", 0, body.Female, 65, not, "function.change.not-shown"},
		{function.Grip, "20 kg", "22.5 kg", 0, body.Female, 65, real, "function.change.real-better"},
		{function.Grip, "20 kg", "17.1 kg", 0, 0, 65, not, "function.change.not-shown"},
		{function.Grip, "20 kg", "17.0 kg", 0, 0, 65, real, "function.change.real-worse"},
		{function.Grip, "20 kg", "30 kg", 0, body.Female, 64, not, "function.change.none-published"},
		// Walk: 0.18 m/s; from times too.
		{function.Walk4m, "0.8 m/s", "0.98 m/s", 0, body.Female, 70, not, "function.change.not-shown"},
		{function.Walk4m, "0.8 m/s", "0.981 m/s", 0, body.Female, 70, real, "function.change.real-better"},
		{function.Walk4m, "5 s", "4 s", 0, body.Female, 70, real, "function.change.real-better"},
		{function.Walk4m, "5 s", "1 m/s", 0, body.Female, 70, real, "function.change.real-better"},
		// Five stands: 2.5 s, in women only.
		{function.FiveSitToStands, "14 s", "11.4 s", 0, body.Female, 72, real, "function.change.real-better"},
		{function.FiveSitToStands, "14 s", "11.5 s", 0, body.Female, 72, not, "function.change.not-shown"},
		{function.FiveSitToStands, "14 s", "9 s", 0, body.Male, 72, not, "function.change.none-published"},
		// Chair stands: 2.5, and a practice effect of up to 0.8 from the first try.
		{function.ChairStand30, "10 reps", "10 reps", 1, body.Female, 58, not, "function.change.not-shown"},
		{function.ChairStand30, "10 reps", "11 reps", 1, body.Female, 58, learning, "function.change.within-learning"},
		{function.ChairStand30, "10 reps", "12 reps", 1, body.Female, 58, not, "function.change.not-shown"},
		{function.ChairStand30, "10 reps", "13 reps", 1, body.Female, 58, not, "function.change.learning-taken-off"},
		{function.ChairStand30, "10 reps", "13 reps", 0, body.Female, 58, not, "function.change.learning-taken-off"},
		{function.ChairStand30, "10 reps", "14 reps", 1, body.Female, 58, real, "function.change.real-better"},
		{function.ChairStand30, "10 reps", "11 reps", 2, body.Female, 58, not, "function.change.not-shown"},
		{function.ChairStand30, "10 reps", "12 reps", 2, body.Female, 58, not, "function.change.not-shown"},
		{function.ChairStand30, "10 reps", "13 reps", 2, body.Female, 58, real, "function.change.real-better"},
		{function.ChairStand30, "10 reps", "9 reps", 1, body.Female, 58, not, "function.change.not-shown"},
		{function.ChairStand30, "10 reps", "7 reps", 1, body.Female, 58, real, "function.change.real-worse"},
		// No detectable change was published.
		{function.PhysicalPerformance, "4 points", "12 points", 0, body.Female, 75, not, "function.change.none-published"},
		{function.FrailtyLevel, "5 level", "3 level", 0, body.Female, 75, not, "function.change.none-published"},
	} {
		before := done(test.test, test.before)
		before.Try = test.try
		after := later(before, test.after)
		if test.try > 0 {
			after.Try++
		}
		v := change(t, before, after, test.sex, test.age)
		if v.Shown != test.want || v.Reasons[0].Code != test.code {
			t.Errorf("%v, %s to %s, try %d, %v %d: %v, %s, want %v, %s", test.test, test.before, test.after, test.try, test.sex, test.age, v.Shown, v.Reasons[0].Code, test.want, test.code)
		}
		if v.Low.IsZero() != (test.code == "function.change.none-published") {
			t.Errorf("%v, %s to %s: interval %v to %v", test.test, test.before, test.after, v.Low, v.High)
		}
	}
}

func TestChangeIsExplained(t *testing.T) {
	v := change(t, done(function.Grip, "30 kg"), later(done(function.Grip, "30 kg"), "36 kg"), body.Male, 70)
	if v.Difference != amt("6 kg") || v.Low != amt("2.8 kg") || v.High != amt("9.2 kg") || v.Direction != function.Better || v.Basis != evidence.Published {
		t.Errorf("%v (%v to %v), %v, %v", v.Difference, v.Low, v.High, v.Direction, v.Basis)
	}
	const want = "grip: a difference of 6 kg (2.8 kg to 9.2 kg) against a detectable change of 3.2 kg (Japan 2021, published): real, for the better."
	if got := function.Words().Clinician(v.Reasons[0]); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	if len(v.Detectable) != 3 || len(v.Important) != 2 || !v.Important[0].Reached || v.Important[1].Reached {
		t.Errorf("yardsticks %v, %v", v.Detectable, v.Important)
	}
	// Known from memory: the basis says so, and a caution too.
	v = change(t, done(function.FiveSitToStands, "14 s"), later(done(function.FiveSitToStands, "14 s"), "11 s"), body.Female, 70)
	if v.Basis != evidence.FromMemory || len(v.Reasons) != 4 || v.Reasons[1].Code != "function.caution.from-memory" {
		t.Errorf("%v, %v", v.Basis, v.Reasons)
	}
	// Important changes are reached at their value, detectable ones above it.
	v = change(t, done(function.Grip, "30 kg"), later(done(function.Grip, "30 kg"), "35 kg"), body.Male, 70)
	if !v.Important[0].Reached {
		t.Errorf("5.0 kg reached: %v", v.Important)
	}
	v = change(t, done(function.Grip, "30 kg"), later(done(function.Grip, "30 kg"), "33.2 kg"), body.Male, 70)
	if d := v.Detectable; !d[0].Reached || d[1].Reached || d[2].Applies || !d[2].Reached {
		t.Errorf("2.9, 3.2 and 2.4 kg at 3.2 kg: %v", d)
	}
	// A practice effect rests on this module's own rule.
	v = change(t, done(function.ChairStand30, "10 reps"), later(done(function.ChairStand30, "10 reps"), "11 reps"), body.Male, 70)
	if v.Basis != evidence.Design {
		t.Errorf("basis %v", v.Basis)
	}
	if got := function.Words().Client(v.Reasons[0]); got != "Knowing the test may have helped a little. No clear change yet." {
		t.Errorf("client reads %q", got)
	}
}

func TestChangeWithoutTwoScores(t *testing.T) {
	before := done(function.ChairStand30, "3 reps")
	for _, tt := range []struct {
		was, is function.HowDone
		want    function.Position
		code    string
	}{
		{function.Done, function.Unable, function.Worse, "got-less-far"},
		{function.Unable, function.Done, function.Better, "got-further"},
		{function.Unable, function.UsedArms, function.Better, "got-further"},
		{function.UsedArms, function.Done, function.Better, "got-further"},
		{function.Done, function.Stopped, function.Worse, "got-less-far"},
		{function.Stopped, function.Unable, function.Worse, "got-less-far"},
		{function.Unable, function.Unable, function.Equal, "not-both-done"},
		{function.UsedArms, function.UsedArms, 0, "not-both-done"},
		{function.UsedArms, function.Stopped, 0, "not-both-done"},
		{function.Done, function.Refused, 0, "not-both-done"},
		{function.Refused, function.Unable, 0, "not-both-done"},
	} {
		b, a := before, later(before, "3 reps")
		if b.How = tt.was; b.How != function.Done {
			b.Value = function.Amount{}
		}
		if a.How = tt.is; a.How != function.Done {
			a.Value = function.Amount{}
		}
		v := change(t, b, a, body.Female, 80)
		if v.Shown != function.NotShown || string(v.Reasons[0].Code) != "function.change."+tt.code || !v.Difference.IsZero() || v.Direction != tt.want {
			t.Errorf("%s, then %s: %+v", tt.was, tt.is, v)
		}
	}
}

// What is no number is never better than one, and the order is one: it turns with the
// two, and what is further than a third is further than all below that.
func TestOrderOfHowItWent(t *testing.T) {
	turned := map[function.Position]function.Position{0: 0, function.Equal: function.Equal, function.Better: function.Worse, function.Worse: function.Better}
	for a := range function.EveryHowDone() {
		if want := function.Worse; a != function.Done && a != function.Refused && a.Order(function.Done) != want {
			t.Errorf("%s is %q beside a number", a, a.Order(function.Done))
		}
		for b := range function.EveryHowDone() {
			if b.Order(a) != turned[a.Order(b)] {
				t.Errorf("%s and %s: %q and %q", a, b, a.Order(b), b.Order(a))
			}
			for c := range function.EveryHowDone() {
				if a.Order(b) == function.Better && b.Order(c) == function.Better && a.Order(c) != function.Better {
					t.Errorf("%s, %s, %s", a, b, c)
				}
			}
		}
	}
	if function.HowDone(0).Order(function.Done) != 0 || function.Done.Order(0) != 0 {
		t.Error("what was not given has an order")
	}
}

func TestChangeRefuses(t *testing.T) {
	for _, test := range []struct {
		name     string
		before   function.Result
		change   func(*function.Result) // of the second
		path     string
		category error
	}{
		{"test", done(function.TimedUpAndGo, "9 s"), func(r *function.Result) { r.Test = function.FiveSitToStands }, "/after/test", field.ErrConflict},
		{"course", done(function.Walk4m, "4 s"), func(r *function.Result) { r.Test = function.Walk3m }, "/after/test", field.ErrConflict},
		{"side", done(function.Grip, "30 kg"), func(r *function.Result) { r.Side = body.Left }, "/after/side", field.ErrConflict},
		{"hand", with(done(function.Grip, "30 kg"), func(r *function.Result) { r.Hand = function.Dominant }), func(r *function.Result) { r.Hand = function.NonDominant }, "/after/hand", field.ErrConflict},
		{"protocol", with(done(function.Grip, "30 kg"), func(r *function.Result) { r.Protocol = "hydraulic" }), func(r *function.Result) { r.Protocol = "spring" }, "/after/protocol", field.ErrConflict},
		{"trials", with(done(function.Grip, "30 kg"), func(r *function.Result) { r.Trials = []function.Amount{r.Value} }), func(r *function.Result) { r.Trials = []function.Amount{r.Value, r.Value} }, "/after/trials", field.ErrConflict},
		{"try", with(done(function.Grip, "30 kg"), func(r *function.Result) { r.Try = 2 }), func(r *function.Result) { r.Try = 2 }, "/after/try", field.ErrConflict},
		{"order", done(function.Grip, "30 kg"), func(r *function.Result) { r.Day -= 57 }, "/after/day", field.ErrConflict},
		{"no first day", with(done(function.Grip, "30 kg"), func(r *function.Result) { r.Day = 0 }), func(r *function.Result) { r.Day = 9 }, "/before/day", field.ErrMissing},
		{"no second day", done(function.Grip, "30 kg"), func(r *function.Result) { r.Day = 0 }, "/after/day", field.ErrMissing},
		{"bad second", done(function.Grip, "30 kg"), func(r *function.Result) { r.Value = amt("999 kg") }, "/after/value", field.ErrOutOfRange},
		{"bad first", with(done(function.Grip, "30 kg"), func(r *function.Result) { r.How = 0 }), func(r *function.Result) { r.How = function.Done }, "/before/how", field.ErrMissing},
	} {
		t.Run(test.name, func(t *testing.T) {
			after := test.before
			if after.Day != 0 {
				after = later(after, after.Value.String())
			}
			test.change(&after)
			_, err := function.ChangeBetween(test.before, after, body.Male, 70)
			wants(t, err, test.path, test.category)
		})
	}
	_, err := function.ChangeBetween(function.Result{}, function.Result{}, 9, 0)
	for path, category := range map[string]error{"/before/test": field.ErrMissing, "/after/test": field.ErrMissing, "/sex": field.ErrOutOfRange, "/age": field.ErrMissing} {
		wants(t, err, path, category)
	}
}

func with(r function.Result, change func(*function.Result)) function.Result {
	change(&r)
	return r
}

// The same day and one protocol stated are let pass; the protocol is told.
func TestChangeLetsPass(t *testing.T) {
	before := done(function.Grip, "30 kg")
	after := before
	after.Protocol = "hydraulic"
	after.Hand = function.Dominant
	v := change(t, before, after, body.Male, 70)
	if last := v.Reasons[len(v.Reasons)-1]; last.Code != "function.change.protocol-not-stated" || v.Direction != function.Equal {
		t.Errorf("%v, %v", last, v.Direction)
	}
	before.Protocol = "hydraulic"
	v = change(t, before, after, body.Male, 70)
	if last := v.Reasons[len(v.Reasons)-1]; last.Code == "function.change.protocol-not-stated" {
		t.Errorf("%v", last)
	}
}

// Swapping the two results turns the difference round, and a larger change for
// the better is never less shown than a smaller one.
func TestChangeLaws(t *testing.T) {
	shown := map[function.Shown]int{function.WithinLearning: 0, function.NotShown: 1, function.Real: 2}
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, 40)
		a, b := n.Draw(t, "first"), n.Draw(t, "second")
		sex, age := rapid.SampledFrom([]body.Sex{0, body.Female, body.Male}).Draw(t, "sex"), body.Age(rapid.IntRange(50, 99).Draw(t, "age"))
		test := rapid.SampledFrom([]function.Test{function.ChairStand30, function.Grip, function.ArmCurl30}).Draw(t, "test")
		of := func(v int) function.Result {
			r := done(test, units.Must(function.NewAmount(float64(v), test.Unit())).String())
			r.Try = 0
			return r
		}
		judge := func(a, b int) function.ChangeAnswer {
			return units.Must(function.ChangeBetween(of(a), of(b), sex, age))
		}
		there, back := judge(a, b), judge(b, a)
		if there.Difference.Number() != -back.Difference.Number() {
			t.Fatalf("%v and back %v", there.Difference, back.Difference)
		}
		if b > a && shown[judge(a, b+1).Shown] < shown[there.Shown] {
			t.Fatalf("%d to %d is %v, to %d %v", a, b, there.Shown, b+1, judge(a, b+1).Shown)
		}
		if there.Shown == function.Real && !(there.Low.Number() > 0 || there.High.Number() < 0) {
			t.Fatalf("real, but the interval %v to %v holds nought", there.Low, there.High)
		}
	})
}
