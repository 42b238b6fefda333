package function_test

import (
	"testing"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Each test takes its plausible range, and nothing just outside it.
func TestPlausibleRange(t *testing.T) {
	for test := range function.Tests() {
		low, high := test.Plausible()
		step := 0.01
		if u := test.Unit(); u == function.Reps || u == function.Points || u == function.Level {
			step = 1
		}
		for _, c := range []struct {
			value float64
			ok    bool
		}{
			{low.Number(), true}, {low.Number() + step, true}, {high.Number(), true}, {high.Number() - step, true},
			{low.Number() - step, false}, {high.Number() + step, false},
		} {
			r := done(test, units.Must(function.NewAmount(c.value, test.Unit())).String())
			err := r.Validate()
			if c.ok && err != nil {
				t.Errorf("%v, %v: %v", test, r.Value, err)
			}
			if !c.ok {
				wants(t, err, "/value", field.ErrOutOfRange)
			}
		}
	}
}

func TestValidate(t *testing.T) {
	with := func(r function.Result, change func(*function.Result)) function.Result {
		change(&r)
		return r
	}
	stands, grip, walk := done(function.ChairStand30, "12 reps"), done(function.Grip, "30 kg"), done(function.Walk4m, "4 s")
	for _, test := range []struct {
		name     string
		r        function.Result
		path     string
		category error
	}{
		{"no test", function.Result{}, "/test", field.ErrMissing},
		{"no such test", function.Result{Test: 99}, "/test", field.ErrOutOfRange},
		{"no day in the calendar", with(stands, func(r *function.Result) { r.Day = -1 }), "/day", field.ErrOutOfRange},
		{"how not given", with(stands, func(r *function.Result) { r.How = 0 }), "/how", field.ErrMissing},
		{"no such how", with(stands, func(r *function.Result) { r.How = 99 }), "/how", field.ErrOutOfRange},
		{"done without value", with(stands, func(r *function.Result) { r.Value = function.Amount{} }), "/value", field.ErrMissing},
		{"unable with value", with(stands, func(r *function.Result) { r.How = function.Unable }), "/value", field.ErrConflict},
		{"refused with value", with(stands, func(r *function.Result) { r.How = function.Refused }), "/value", field.ErrConflict},
		{"stopped with a slip", with(stands, func(r *function.Result) { r.How, r.Value = function.Stopped, amt("99 reps") }), "/value", field.ErrOutOfRange},
		{"half a stand", with(stands, func(r *function.Result) { r.Value = amt("1.5 reps") }), "/value", field.ErrOutOfRange},
		{"another unit", with(stands, func(r *function.Result) { r.Value = amt("12 s") }), "/value", field.ErrConflict},
		{"arms in a walk", with(walk, func(r *function.Result) { r.How, r.Value = function.UsedArms, function.Amount{} }), "/how", field.ErrConflict},
		{"walk in no time", with(walk, func(r *function.Result) { r.Value = amt("0 s") }), "/value", field.ErrOutOfRange},
		{"walk in less than none", with(walk, func(r *function.Result) { r.Value = amt("-1 s") }), "/value", field.ErrOutOfRange},
		{"walk too fast", with(walk, func(r *function.Result) { r.Value = amt("0.99 s") }), "/value", field.ErrOutOfRange},
		{"walk too slow", with(walk, func(r *function.Result) { r.Value = amt("200.01 s") }), "/value", field.ErrOutOfRange},
		{"grip without side", with(grip, func(r *function.Result) { r.Side = 0 }), "/side", field.ErrMissing},
		{"grip, no such side", with(grip, func(r *function.Result) { r.Side = 9 }), "/side", field.ErrOutOfRange},
		{"grip, no such hand", with(grip, func(r *function.Result) { r.Hand = 9 }), "/hand", field.ErrOutOfRange},
		{"grip, hand of both", with(grip, func(r *function.Result) { r.Side, r.Hand = body.Both, function.Dominant }), "/hand", field.ErrConflict},
		{"stands with side", with(stands, func(r *function.Result) { r.Side = body.Left }), "/side", field.ErrConflict},
		{"stands with hand", with(stands, func(r *function.Result) { r.Hand = function.Dominant }), "/hand", field.ErrConflict},
		{"trials of what was not done", with(grip, func(r *function.Result) {
			r.How, r.Value, r.Trials = function.Refused, function.Amount{}, []function.Amount{amt("30 kg")}
		}), "/trials", field.ErrConflict},
		{"a slip among trials", with(grip, func(r *function.Result) { r.Trials = []function.Amount{amt("30 kg"), amt("300 kg")} }), "/trials/1", field.ErrOutOfRange},
		{"trials of two units", with(walk, func(r *function.Result) { r.Trials = []function.Amount{amt("4 s"), amt("1 m/s")} }), "/trials/1", field.ErrConflict},
		{"not the best trial", with(grip, func(r *function.Result) { r.Trials = []function.Amount{amt("30 kg"), amt("31 kg")} }), "/value", field.ErrConflict},
		{"two trials without a rule", with(stands, func(r *function.Result) { r.Trials = []function.Amount{r.Value, r.Value} }), "/trials", field.ErrConflict},
	} {
		t.Run(test.name, func(t *testing.T) {
			wants(t, test.r.Validate(), test.path, test.category)
			_, err := test.r.Score()
			wants(t, err, test.path, test.category)
		})
	}
	if err := with(grip, func(r *function.Result) { r.Day, r.How, r.Side = -1, 0, 0 }).Validate(); err == nil || len(err.(field.Errors)) != 3 {
		t.Errorf("want three bad fields at once, got %v", err)
	}
}

func TestBest(t *testing.T) {
	for _, test := range []struct {
		of     function.Test
		trials []function.Amount
		want   string
	}{
		{function.Grip, []function.Amount{amt("30 kg"), amt("32.5 kg"), amt("31 kg")}, "32.5 kg"},
		{function.Walk4m, []function.Amount{amt("4.5 s"), amt("4.2 s"), amt("4.9 s")}, "4.2 s"},
		{function.Walk3m, []function.Amount{amt("0.8 m/s"), amt("0.9 m/s"), amt("0.7 m/s")}, "0.9 m/s"},
		{function.Walk8ft, []function.Amount{amt("3 s"), amt("3 s")}, "3 s"},
		{function.TimedUpAndGo, []function.Amount{amt("9 s")}, "9 s"},
	} {
		if got, err := function.Best(test.of, test.trials...); err != nil || got != amt(test.want) {
			t.Errorf("%v %v: %v, %v, want %s", test.of, test.trials, got, err, test.want)
		}
	}
	_, err := function.Best(function.Grip)
	wants(t, err, "", field.ErrMissing)
	_, err = function.Best(0, amt("9 s"))
	wants(t, err, "", field.ErrMissing)
}

// Zero stands are a score; unable, arms used, refused and stopped are results
// without one.
func TestScore(t *testing.T) {
	for _, test := range []struct {
		r    function.Result
		want string
	}{
		{done(function.ChairStand30, "0 reps"), "0 reps"},
		{done(function.Grip, "0 kg"), "0 kg"},
		{done(function.TimedUpAndGo, "9.5 s"), "9.5 s"},
		{done(function.Walk4m, "5 s"), "0.8 m/s"},
		{done(function.Walk3m, "3.75 s"), "0.8 m/s"},
		{done(function.Walk8ft, "3.048 s"), "0.8 m/s"},
		{done(function.Walk4m, "5.000001 s"), "0.799999 m/s"},
		{done(function.Walk4m, "0.9 m/s"), "0.9 m/s"},
		{function.Result{Test: function.ChairStand30, How: function.UsedArms, Value: amt("9 reps")}, ""},
		{function.Result{Test: function.ChairStand30, How: function.Unable}, ""},
		{function.Result{Test: function.Walk4m, How: function.Refused}, ""},
		{function.Result{Test: function.FiveSitToStands, How: function.Stopped, Value: amt("40 s")}, ""},
	} {
		got, err := test.r.Score()
		if err != nil || got.Value.String() != test.want || got.Reason.Code == "" || len(got.Reason.Facts) == 0 {
			t.Errorf("%v %v %v: %v, %v, want %q", test.r.Test, test.r.How, test.r.Value, got, err, test.want)
		}
	}
	r := done(function.Grip, "31 kg")
	r.Trials = []function.Amount{amt("30 kg"), amt("31 kg")}
	if got, err := r.Score(); err != nil || len(got.Reason.Facts) != 2 {
		t.Errorf("trials: %v, %v", got, err)
	}
}
