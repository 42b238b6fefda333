package choice_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// tried is a result on the nth day, of a test or of a trial.
func tried(n int, how function.HowDone, value string, of any) choice.Tried {
	t := choice.Tried{Result: function.Result{Day: firstDay + units.Day(n), How: how}}
	switch of := of.(type) {
	case function.Test:
		if t.Test = of; of == function.Grip {
			t.Side = body.Both
		}
	case choice.TaskTrial:
		t.Trial = of
	}
	if value != "" {
		t.Value = units.Must(function.ParseAmount(value))
	}
	return t
}

func trialOf(t *testing.T, text string) (is choice.TaskTrial) {
	t.Helper()
	if err := is.UnmarshalText([]byte(text)); err != nil {
		t.Fatal(err)
	}
	return is
}

// results puts results beside the tests of a woman of 72.
func results(t *testing.T, c choice.Chosen, done ...choice.Tried) []choice.Tested {
	t.Helper()
	all, err := c.Results(done, body.Person{Age: 72, Sex: body.Female, Training: body.Novice})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// Start, now, difference and whether the change is real, by the figures that package
// function holds: the chair stand of Gill 2022 (abstract, detectable change 2.5), the
// learning of Rikli and Jones 1999; of a trial none is real.
func TestResults(t *testing.T) {
	stairs := choice.Choose(choice.Wish{Tasks: []choice.Task{choice.Stairs}, Screening: found(screening.InGroup)})
	stairs.Tests = append(stairs.Tests, choice.TaskTest{Trial: trialOf(t, "lifting the load from knee height and walking with it")})
	time, load := stairs.Tests[0].Trial, stairs.Tests[len(stairs.Tests)-1].Trial
	for _, tt := range []struct {
		name  string
		done  []choice.Tried
		shown function.Shown
		way   function.Position
		says  string
	}{
		{"real", []choice.Tried{tried(0, function.Done, "9 reps", function.ChairStand30), tried(42, function.Done, "14 reps", function.ChairStand30)}, function.Real, function.Better, "9 reps on 2026-11-30, 14 reps on 2027-01-11"},
		{"not shown", []choice.Tried{tried(0, function.Done, "9 reps", function.ChairStand30), tried(42, function.Done, "7 reps", function.ChairStand30)}, function.NotShown, function.Worse, "a difference of -2 reps"},
		{"held against the first", []choice.Tried{tried(0, function.Done, "9 reps", function.ChairStand30), tried(42, function.Done, "11 reps", function.ChairStand30), tried(84, function.Done, "13 reps", function.ChairStand30)}, function.Real, function.Better, "9 reps on 2026-11-30, 13 reps on 2027-02-22"},
		{"arms at first", []choice.Tried{tried(0, function.UsedArms, "6 reps", function.ChairStand30), tried(42, function.Done, "4 reps", function.ChairStand30)}, function.NotShown, function.Better, "used arms, 6 reps on 2026-11-30, 4 reps on"},
		{"no longer able", []choice.Tried{tried(0, function.Done, "9 reps", function.ChairStand30), tried(42, function.Unable, "", function.ChairStand30)}, function.NotShown, function.Worse, "less far than before"},
		{"a trial", []choice.Tried{tried(0, function.Done, "9.5 s", time), tried(42, function.Done, "8 s", time)}, function.NotShown, function.Better, "a difference of -1.5 s (better). No detectable change is held"},
		{"a trial that was stopped", []choice.Tried{tried(0, function.Done, "9.5 s", time), tried(42, function.Stopped, "", time)}, function.NotShown, function.Worse, "done before, stopped now (worse)"},
		{"a slower trial", []choice.Tried{tried(0, function.Done, "8 s", time), tried(42, function.Done, "9.5 s", time)}, function.NotShown, function.Worse, "(worse)"},
		{"a heavier load", []choice.Tried{tried(0, function.Done, "4 kg", load), tried(42, function.Done, "6 kg", load)}, function.NotShown, function.Better, "a difference of 2 kg (better)"},
		{"the same", []choice.Tried{tried(0, function.Done, "8 s", time), tried(42, function.Done, "8 s", time)}, function.NotShown, function.Equal, "(equal)"},
		{"refused", []choice.Tried{tried(0, function.Done, "8 s", time), tried(42, function.Refused, "", time)}, function.NotShown, 0, "(not ordered)"},
	} {
		all := results(t, stairs, tt.done...)
		at := slices.IndexFunc(all, func(k choice.Tested) bool { return k.Last != nil })
		got := all[at]
		if got.Change == nil || got.Change.Shown != tt.shown || got.Change.Direction != tt.way || !strings.Contains(clinician(got), tt.says) {
			t.Errorf("%s: %+v\n%s", tt.name, got.Change, clinician(got))
		}
		if got.Test != 0 && got.Last.How != function.Done {
			unscored := slices.ContainsFunc(got.Reasons, func(r evidence.Reason) bool { return r.Code == "function.not-scored" })
			if len(got.Against) > 0 || !unscored {
				t.Errorf("%s: beside norms %+v, said to be no number: %v", tt.name, got.Against, unscored)
			}
		}
		if len(all) != len(stairs.Tests) || got.First.Day != firstDay || got.Last.Day != tt.done[len(tt.done)-1].Day {
			t.Errorf("%s: %d results, first %+v, last %+v", tt.name, len(all), got.First, got.Last)
		}
		roundTrip(t, all)
	}
}

// A client reads numbers, but no kilograms, which would be read as a weight to take, and
// not how it went where it was no number.
func TestWhatClientsReadOfTests(t *testing.T) {
	stairs := trialOf(t, "time up and down the same stairs")
	for _, tt := range []struct {
		done []choice.Tried
		want string
	}{
		{[]choice.Tried{tried(0, function.Done, "8 s", stairs)}, "time up and down the same stairs: 8 s on 2026-11-30."},
		{[]choice.Tried{tried(0, function.Done, "9.5 s", stairs), tried(42, function.Done, "8 s", stairs)}, "time up and down the same stairs: 9.5 s on 2026-11-30, 8 s on 2027-01-11."},
		{[]choice.Tried{tried(0, function.Done, "21 kg", function.Grip)}, ""},
		{[]choice.Tried{tried(0, function.Done, "18 kg", function.Grip), tried(42, function.Done, "21 kg", function.Grip)}, ""},
		{[]choice.Tried{tried(0, function.Unable, "", stairs)}, ""},
		{[]choice.Tried{tried(0, function.Unable, "", stairs), tried(42, function.Done, "8 s", stairs)}, ""},
	} {
		if got := choice.Words().Client(results(t, choice.Chosen{}, tt.done...)[0].Reasons[0]); got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
}

func clinician(k choice.Tested) string {
	words := function.Words().Copy()
	for code, text := range choice.Words().Copy() {
		words[code] = text
	}
	var texts []string
	for _, r := range k.Reasons {
		texts = append(texts, words.Clinician(r))
	}
	return strings.Join(texts, "\n")
}

func roundTrip(t *testing.T, all []choice.Tested) {
	t.Helper()
	text, err := json.Marshal(all)
	if err != nil {
		t.Fatal(err)
	}
	var back []choice.Tested
	if err := field.Decode(text, &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	if again := units.Must(json.Marshal(back)); string(again) != string(text) {
		t.Errorf("%s", cmp.Diff(string(text), string(again)))
	}
}

// Every test and trial of every choice: without a result it says so; what is no number is
// never better than one; each reason has words and facts.
func TestEveryTestHasAnAnswer(t *testing.T) {
	ledger := units.Must(evidence.NewLedger(evidence.UnitFacts(), guideline.Facts(), choice.Facts(), function.Facts()))
	values := map[function.Unit]string{function.Reps: "9 reps", function.Seconds: "9.5 s", function.Kilograms: "9 kg", function.Points: "9 points"}
	for _, r := range everyRequest() {
		c := choice.Choose(r)
		for _, k := range results(t, c) {
			if k.Last != nil || len(k.Reasons) != 1 || k.Reasons[0].Code != "choice.untested" {
				t.Fatalf("%s: %+v", name(r), k)
			}
		}
		if r.Goal != 1 || r.Screening.Setting != screening.InGroup {
			continue // neither decides on tests
		}
		for _, k := range c.Tests {
			for how := range function.EveryHowDone() {
				for _, turned := range []bool{false, true} {
					pair := pairOf(k, how, values, turned)
					if pair[0].Validate() != nil || pair[1].Validate() != nil {
						continue // arms where there is nothing to rise from
					}
					got := results(t, choice.Chosen{Tests: []choice.TaskTest{k}}, pair...)[0]
					if worse := how != function.Done && how != function.Refused; worse && got.Change.Direction != map[bool]function.Position{false: function.Worse, true: function.Better}[turned] {
						t.Errorf("%v%v: %s after %s: %s", k.Test, k.Trial, pair[1].How, pair[0].How, got.Change.Direction)
					}
					for _, why := range got.Reasons {
						if len(why.Facts) == 0 {
							t.Errorf("%s has no fact", why.Code)
						}
						for _, id := range why.Facts {
							if _, ok := ledger.Fact(id); !ok {
								t.Errorf("%s: no fact %s", why.Code, id)
							}
						}
					}
					if strings.ContainsAny(clinician(got), "{}") {
						t.Error(clinician(got))
					}
				}
			}
		}
	}
}

// pairOf is a number and then how it went, or turned.
func pairOf(k choice.TaskTest, how function.HowDone, values map[function.Unit]string, turned bool) []choice.Tried {
	var of any = k.Test
	units := []function.Unit{k.Test.Unit()}
	if k.Trial != 0 {
		of, units = k.Trial, []function.Unit{function.Seconds, function.Kilograms}
	}
	var pair []choice.Tried
	for _, u := range units {
		number, other := tried(0, function.Done, values[u], of), tried(42, how, "", of)
		if how == function.Done {
			other = tried(42, how, values[u], of)
		}
		pair = []choice.Tried{number, other}
		if turned {
			number.Day, other.Day = other.Day, number.Day
			pair = []choice.Tried{other, number}
		}
		if number.Validate() == nil {
			break
		}
	}
	return pair
}

// What was not made alike is not compared, sides stand apart, and a test that is not chosen
// any more keeps its results.
func TestResultsThatAreNotAlike(t *testing.T) {
	shopping := choice.Choose(choice.Wish{Tasks: []choice.Task{choice.Shopping}, Screening: found(screening.InGroup)})
	left, right := tried(0, function.Done, "17 kg", function.Grip), tried(0, function.Done, "19 kg", function.Grip)
	left.Side, right.Side = body.Left, body.Right
	later := left
	later.Day, later.Protocol = later.Day+42, "another dynamometer"
	left.Protocol = "the clinic's dynamometer"
	all := results(t, shopping, left, right, later, tried(1, function.Done, "11 s", function.TimedUpAndGo))
	var sides []string
	for _, k := range all {
		sides = append(sides, k.Side.String())
	}
	if len(all) != 4 || all[1].Side != body.Left || all[2].Side != body.Right || all[3].Test != function.TimedUpAndGo || all[0].Last != nil {
		t.Fatalf("%d results, of %q", len(all), sides)
	}
	if k := all[1]; k.Change != nil || k.First != nil || !strings.Contains(clinician(k), "not compared") || len(k.Against) == 0 {
		t.Errorf("%+v\n%s", k.Change, clinician(k))
	}
	bags := trialOf(t, "carrying the shopping over 10 m")
	light, heavy := tried(0, function.Done, "12 s", bags), tried(42, function.Done, "13 s", bags)
	light.Protocol, heavy.Protocol = "4 kg", "8 kg"
	if k := results(t, shopping, light, heavy)[0]; k.Change != nil || !strings.Contains(clinician(k), "not compared") {
		t.Errorf("two loads: %s", clinician(k))
	}
}

func TestBadResults(t *testing.T) {
	time, load := trialOf(t, "time up and down the same stairs"), trialOf(t, "standing up from a chair with the load")
	with := func(r choice.Tried, change func(*choice.Tried)) choice.Tried { change(&r); return r }
	good := tried(0, function.Done, "9 s", time)
	for _, tt := range []struct {
		name, path string
		is         choice.Tried
	}{
		{"no test and no trial", "/0/test", choice.Tried{Result: function.Result{Day: firstDay, How: function.Done}}},
		{"no day", "/0/day", with(good, func(r *choice.Tried) { r.Day = 0 })},
		{"no day of a test", "/0/day", with(tried(0, function.Done, "9 reps", function.ChairStand30), func(r *choice.Tried) { r.Day = 0 })},
		{"no trial of that number", "/0/trial", with(good, func(r *choice.Tried) { r.Trial = 99 })},
		{"a test beside a trial", "/0/test", with(good, func(r *choice.Tried) { r.Test = function.Grip })},
		{"a side of a trial", "/0/side", with(good, func(r *choice.Tried) { r.Side = body.Left })},
		{"a hand of a trial", "/0/hand", with(good, func(r *choice.Tried) { r.Hand = function.Dominant })},
		{"single trials", "/0/trials", with(good, func(r *choice.Tried) { r.Trials = []function.Amount{r.Value} })},
		{"how it went not told", "/0/how", with(good, func(r *choice.Tried) { r.How = 0 })},
		{"arms on stairs", "/0/how", with(good, func(r *choice.Tried) { r.How = function.UsedArms })},
		{"no value", "/0/value", tried(0, function.Done, "", time)},
		{"another unit", "/0/value", tried(0, function.Done, "9 kg", time)},
		{"no time at all", "/0/value", tried(0, function.Done, "0 s", time)},
		{"half an hour", "/0/value", tried(0, function.Done, "1800 s", time)},
		{"more than a person", "/0/value", tried(0, function.Done, "101 kg", load)},
		{"a value of who was unable", "/0/value", tried(0, function.Unable, "9 s", time)},
		{"a bad test", "/0/value", tried(0, function.Done, "9 kg", function.ChairStand30)},
	} {
		if _, err := (choice.Chosen{}).Results([]choice.Tried{tt.is}, body.Person{Age: 72}); err == nil || !strings.Contains(err.Error(), tt.path) {
			t.Errorf("%s: %v, want an error at %s", tt.name, err, tt.path)
		}
	}
	if err := tried(0, function.UsedArms, "6 kg", load).Validate(); err != nil {
		t.Errorf("arms while standing up: %v", err)
	}
	if all := results(t, choice.Chosen{}, good); len(all) != 1 || len(all[0].Against) != 0 {
		t.Errorf("%+v", all)
	}
}
