package progression_test

import (
	"encoding/json"
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

const kilo = units.Kilogram

func hasReason(d progression.Decision, code evidence.ReasonCode) bool {
	return slices.ContainsFunc(d.Reasons, func(r evidence.Reason) bool { return r.Code == code })
}

// done sets what every set of the last visit was.
func done(c *progression.Course, each units.Mass, reps int, left float64) {
	v := last(c)
	v.Plan.Load = held(each)
	v.Sets = slices.Clone(v.Sets)
	for i := range v.Sets {
		v.Sets[i].Load, v.Sets[i].Reps, v.Sets[i].Effort = each, reps, units.Must(units.InReserve(left))
	}
}

// Each row changes one thing of a course that would be raised from 4 to 4.25 kg.
var nextRows = []struct {
	name   string
	spoil  func(c *progression.Course)
	action progression.Action
	change progression.Change
	load   units.Mass // of the next dose; 0: none, or of another exercise
	sets   int
	count  int
	why    evidence.ReasonCode
}{
	{"all gates, a small step", func(*progression.Course) {}, progression.Progress, progression.MoreLoad, 4*kilo + kilo/4, 3, 6, "progression.shown"},
	// 15 to failure, told once, allow 5 with 4.25 kg, one below the fewest, and 7 with 4 kg.
	{"one below the top", func(c *progression.Course) { done(c, 4*kilo, 11, 3) }, progression.HoldDose, progression.NoChange, 4 * kilo, 3, 7, "progression.as-allowed"},
	{"eight, clearly easy once", func(c *progression.Course) { last(c).Plan.Count = 8; done(c, 4*kilo, 8, 6) }, progression.HoldDose, progression.NoChange, 4 * kilo, 3, 8, "progression.as-allowed"}, // which stays
	{"a set is still to come", func(c *progression.Course) { last(c).Plan.Sets = 2; last(c).Sets = last(c).Sets[:4] }, progression.Progress, progression.MoreSets, 4 * kilo, 3, 8, "progression.one-more-set"},
	{"technique lost", func(c *progression.Course) { last(c).FormLost = screening.Yes }, progression.HoldDose, progression.NoChange, 4 * kilo, 3, 8, "progression.hold"},
	{"technique seen by nobody: repetitions, no load", func(c *progression.Course) { seenLongAgo(c); done(c, 4*kilo, 12, 6) }, progression.Progress, progression.MoreReps, 4 * kilo, 3, 11, "progression.more-reps"},
	{"pain of 3", func(c *progression.Course) { last(c).Pain.During = score(3) }, progression.HoldDose, progression.NoChange, 4 * kilo, 3, 8, "progression.hold"},
	{"pain of 6", func(c *progression.Course) { last(c).Pain.During = score(6) }, progression.EaseOff, progression.NoChange, 4 * kilo, 2, 6, "progression.eased"},
	{"a lighter day", func(c *progression.Course) { c.Request.Screening.Limits = screening.LighterSession() }, progression.EaseOff, progression.NoChange, 4 * kilo, 2, 6, "progression.lighter-day"},
	{"a limit on mass", func(c *progression.Course) {
		last(c).Plan.Count = 12
		c.Request.Screening.Limits.Masses = []screening.MassLimit{{Region: body.WholeBody, Side: body.Both, Max: 4 * kilo, Author: "a surgeon"}}
	}, progression.HoldDose, progression.NoChange, 4 * kilo, 3, 8, "progression.limit"},
	{"a limit below the last load", func(c *progression.Course) {
		c.Request.Screening.Limits.Masses = []screening.MassLimit{{Region: body.WholeBody, Side: body.Both, Max: 3 * kilo, Author: "a surgeon"}}
	}, progression.EaseOff, progression.NoChange, 2 * kilo, 3, 10, "progression.above-limit"},
	{"ten days missed, a coarse kit: repetitions instead of load", func(c *progression.Course) { c.Day, c.Absence = firstDay+10, screening.No }, progression.EaseOff, progression.NoChange, 4 * kilo, 2, 6, "progression.return"},
	{"ten days missed, a fine kit", func(c *progression.Course) {
		c.Day, c.Absence, c.Request.Kit = firstDay+10, screening.No, dumbbells(3.8, 4, 4.25)
	}, progression.EaseOff, progression.NoChange, 3800 * units.Gram, 2, 8, "progression.return"},
	{"seven weeks missed", func(c *progression.Course) { c.Day, c.Absence = firstDay+49, screening.No }, progression.EaseOff, progression.NoChange, 2 * kilo, 1, 8, "progression.return"},
	{"nine weeks missed", func(c *progression.Course) { c.Day, c.Absence = firstDay+63, screening.No }, progression.EaseOff, progression.NoChange, 2 * kilo, 1, 8, "progression.return-anew"},
	{"ten days ill", func(c *progression.Course) { c.Day, c.Absence = firstDay+10, screening.Yes }, progression.StopAndRefer, progression.NoChange, 0, 0, 0, "progression.medical-absence"},
	{"ten days ill and assessed since", func(c *progression.Course) {
		c.Day, c.Absence, c.Request.Screening.Day = firstDay+10, screening.Yes, firstDay+9
	}, progression.EaseOff, progression.NoChange, 2 * kilo, 1, 8, "progression.return-assessed"},
	{"a fall since", func(c *progression.Course) { c.Request.Screening.Ended = []screening.Code{"fall"} }, progression.StopAndRefer, progression.NoChange, 0, 0, 0, "progression.plan-ended"},
	{"a sign that ended the session", func(c *progression.Course) { last(c).Moment.Signs = []screening.Code{"feels_sick"} }, progression.StopAndRefer, progression.NoChange, 0, 0, 0, "progression.referred"},
	{"chest pain", func(c *progression.Course) { last(c).Pain.Kind = screening.ChestPain }, progression.StopAndRefer, progression.NoChange, 0, 0, 0, "progression.referred"},
	{"nothing may go on", func(c *progression.Course) { c.Request.Screening.Meanwhile = screening.Nothing }, progression.StopAndRefer, progression.NoChange, 0, 0, 0, "dose.no-dose-yet"},
	{"a reading to take again first", func(c *progression.Course) {
		c.Request.Screening.Meanwhile, c.Request.Screening.Plan = screening.Nothing, screening.SettleFirst
	}, progression.HoldDose, progression.NoChange, 0, 0, 0, "progression.settle-first"},
	{"unloaded practice only", func(c *progression.Course) { c.Request.Screening.Meanwhile = screening.UnloadedPractice }, progression.ChangeVariant, progression.NoChange, 0, 1, 10, "progression.instead"},
	{"maintenance", func(c *progression.Course) { c.Request.Phase = dose.Maintain }, progression.HoldDose, progression.NoChange, 4 * kilo, 2, 8, "progression.maintain"},
	{"nothing done", func(c *progression.Course) { last(c).Sets = nil }, progression.HoldDose, progression.NoChange, 4 * kilo, 3, 10, "progression.nothing-done"},
	{"one set of 11", func(c *progression.Course) { last(c).Sets[4].Reps = 11 }, progression.Progress, progression.MoreLoad, 4*kilo + kilo/4, 3, 6, "progression.shown"},
	{"the weaker side leads", func(c *progression.Course) {
		for _, left := range []int{0, 1, 4} {
			last(c).Sets[left].Reps = 11
		}
	}, progression.HoldDose, progression.NoChange, 4 * kilo, 3, 7, "progression.as-allowed"},
	{"total logged for one hand", func(c *progression.Course) { done(c, 4*kilo, 12, 3); last(c).Sets[0].Load = 8 * kilo }, progression.HoldDose, progression.NoChange, 4 * kilo, 3, 8, "progression.not-in-kit"},
	{"pounds for kilograms", func(c *progression.Course) {
		c.Request.Kit = dumbbells(2, 4, 4.25, 8.8)
		last(c).Sets[0].Load = 8800 * units.Gram
	}, progression.HoldDose, progression.NoChange, 4 * kilo, 3, 8, "progression.slip"},
	{"with a lighter weight than planned", func(c *progression.Course) {
		done(c, 3*kilo, 12, 3)
		last(c).Plan.Load = held(4 * kilo)
		c.Request.Kit = dumbbells(3, 4, 4.25)
	}, progression.EaseOff, progression.NoChange, 3 * kilo, 3, 8, "progression.hold"},
}

func TestNextRows(t *testing.T) {
	for _, tt := range nextRows {
		t.Run(tt.name, func(t *testing.T) {
			c := rowCourse(t, 2, 4, 4.25, 6)
			tt.spoil(&c)
			d := nextOf(t, c)
			if d.Action != tt.action || d.Change != tt.change || !hasReason(d, tt.why) {
				t.Fatalf("%v, %v, %+v; want %v, %v, %s", d.Action, d.Change, d.Reasons, tt.action, tt.change, tt.why)
			}
			if d.Next == nil {
				if tt.sets != 0 {
					t.Fatal("no dose")
				}
				return
			}
			got := []int64{int64(d.Next.Load.Each()), int64(d.Next.Sets), int64(d.Next.Count)}
			if diff := cmp.Diff([]int64{int64(tt.load), int64(tt.sets), int64(tt.count)}, got); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// A second visit in a row that hurts ends in an easier variant.
func TestNextTwiceEased(t *testing.T) {
	c := rowCourse(t, 2, 4, 4.25)
	last(&c).Pain.During = score(7)
	second := *last(&c)
	second.Day += 3
	c.Log, c.Day = append(c.Log, second), second.Day+3
	d := nextOf(t, c)
	if d.Action != progression.ChangeVariant || d.Instead == "" || d.Next == nil || d.Next.Exercise != d.Instead || !hasReason(d, "progression.easier-variant") {
		t.Errorf("%v, %v, %+v", d.Action, d.Instead, d.Reasons)
	}
	// Where nothing easier can be dosed, the exercise is left out.
	c.Catalogue = units.Must(exercise.Catalogue{}.With(alone(c.Request.Exercise)))
	c.Request.Exercise = alone(c.Request.Exercise)
	d = nextOf(t, c)
	if d.Action != progression.StopExercise || d.Next != nil || !hasReason(d, "progression.left-out") {
		t.Errorf("%v, %+v", d.Action, d.Reasons)
	}
}

// alone returns the exercise without variants.
func alone(ex exercise.Exercise) exercise.Exercise {
	ex.Easier, ex.Harder = "", ""
	return ex
}

// Three visits in a row below the dose: the next lighter weight; at the lightest
// and one set, an easier variant.
func TestNextSimplifies(t *testing.T) {
	for _, tt := range []struct {
		each   units.Mass
		sets   int
		action progression.Action
		load   units.Mass
		now    int
	}{{4 * kilo, 3, progression.EaseOff, 2 * kilo, 3}, {2 * kilo, 3, progression.EaseOff, 2 * kilo, 2}, {2 * kilo, 1, progression.ChangeVariant, 0, 0}} {
		c := rowCourse(t, 2, 4, 6)
		last(&c).Plan.Sets = tt.sets
		last(&c).Sets = last(&c).Sets[:2]
		last(&c).Sets = slices.Concat(slices.Repeat(last(&c).Sets[:1], tt.sets), slices.Repeat(goodVisit().Sets[2:3], tt.sets))
		done(&c, tt.each, 6, 2)
		one := *last(&c)
		for range 2 {
			if d := nextOf(t, c); hasReason(d, "progression.below-three") {
				t.Errorf("after %d visits: %v", len(c.Log), d.Action)
			}
			one.Day += 3
			c.Log, c.Day = append(c.Log, one), one.Day+3
		}
		d := nextOf(t, c)
		if d.Action != tt.action || !hasReason(d, "progression.below-three") {
			t.Errorf("%v × %d: %v, %+v", tt.each, tt.sets, d.Action, d.Reasons)
		}
		if tt.now > 0 && (d.Next.Load.Each() != tt.load || d.Next.Sets != tt.now) {
			t.Errorf("%v × %d: %v × %d", tt.each, tt.sets, d.Next.Load.Each(), d.Next.Sets)
		}
	}
}

func TestSession(t *testing.T) {
	a, b, c := rowCourse(t, 4, 4.5), rowCourse(t, 4, 4.25), rowCourse(t, 4, 4.25)
	done(&a, 4*kilo, 16, 3)
	a.Log[0].Plan.Span, a.Log[0].Plan.Count = units.Must(units.Between(8, 16)), 16
	list, err := progression.NextAll([]progression.Course{a, b, c})
	if err != nil {
		t.Fatal(err)
	}
	if list[0].Change != progression.NoChange || list[1].Change != progression.MoreLoad || list[2].Change != progression.MoreLoad {
		t.Errorf("%v, %v, %v", list[0].Change, list[1].Change, list[2].Change)
	}
	if list[0].Action != progression.HoldDose || !hasReason(list[0], "progression.two-rise") || list[0].Next.Load.Each() != 4*kilo {
		t.Errorf("%v, %+v", list[0].Action, list[0].Reasons)
	}
	b.Day, c.Log = 0, nil
	list, err = progression.NextAll([]progression.Course{a, b, c})
	if list != nil {
		t.Errorf("bad input still gives %d decisions", len(list))
	}
	if err == nil || !strings.Contains(err.Error(), "/1/day") || !strings.Contains(err.Error(), "/2/log") {
		t.Errorf("%v", err)
	}
}

func TestNextRefuses(t *testing.T) {
	c := rowCourse(t, 4, 6)
	c.Day = firstDay - 1
	c.BodyMass = -1
	c.Policy = progression.Policy{Rule: rule.NameSimplify, MostReps: 21}
	v := c.Log[0]
	v.Plan.Exercise, v.Plan.Hold, v.Plan.Side, v.Day, v.SorenessDays = "goblet-squat", body.BothHandsOnOne, body.Left, firstDay-2, 31
	v.Sets = nil
	c.Log = append(c.Log, v)
	_, err := progression.Next(c)
	var all field.Errors
	if !errors.As(err, &all) {
		t.Fatalf("%v", err)
	}
	var got []string
	for _, f := range all {
		got = append(got, f.Path)
	}
	want := []string{"/log/1/soreness_days", "/log/1/day", "/log/1/observer/day", "/log/1/plan/exercise", "/log/1/plan/hold", "/log/1/plan/side", "/day", "/body_mass", "/policy/rule", "/policy/most_reps"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	for path, spoil := range map[string]func(c *progression.Course){
		"/absence":                               func(c *progression.Course) { c.Day = firstDay + 8 },
		"/log":                                   func(c *progression.Course) { c.Log = nil },
		"/log/0/day":                             func(c *progression.Course) { c.Log[0].Day = 0 },
		"/request/screening/who/age":             func(c *progression.Course) { c.Request.Screening.Who.Age = 0 },
		"/request/screening/limits/min_reserve":  func(c *progression.Course) { c.Request.Screening.Limits.MinReserve = units.RIR(math.NaN()) },
		"/request/screening/limits/max_fraction": func(c *progression.Course) { c.Request.Screening.Limits.MaxFraction = -0.4 },
		"/request/screening":                     func(c *progression.Course) { c.Request.Screening = screening.Outcome{} },
	} {
		c := rowCourse(t, 4, 6)
		spoil(&c)
		if _, err := progression.Next(c); err == nil || !strings.Contains(err.Error(), path) {
			t.Errorf("%v, want %s", err, path)
		}
	}
}

func TestNextJSON(t *testing.T) {
	c := rowCourse(t, 2, 4, 6)
	d := nextOf(t, c)
	var again progression.Course
	if err := field.Decode(units.Must(json.Marshal(c)), &again, field.Strict); err != nil {
		t.Fatal(err)
	}
	text := units.Must(json.Marshal(d))
	if diff := cmp.Diff(string(text), string(units.Must(json.Marshal(nextOf(t, again))))); diff != "" {
		t.Error(diff)
	}
	var back progression.Decision
	if err := field.Decode(text, &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(text), string(units.Must(json.Marshal(back)))); diff != "" {
		t.Error(diff)
	}
	for _, bad := range []string{`{"action":"go"}`, `{"change":1,"change":2}`, `{"what":1}`} {
		if field.Decode([]byte(bad), &back, field.Strict) == nil || field.Decode([]byte(bad), &again, field.Strict) == nil {
			t.Errorf("%s was read", bad)
		}
	}
	for a := progression.Action(0); a < 9; a++ {
		name, err := a.MarshalText()
		var same progression.Action
		if valid := a <= progression.StopAndRefer; valid != (err == nil) || valid && (same.UnmarshalText(name) != nil || same != a || a.String() != string(name)) {
			t.Errorf("action %d: %q, %v", a, name, err)
		}
	}
	for a := progression.Change(0); a < 12; a++ {
		name, err := a.MarshalText()
		var same progression.Change
		if valid := a <= progression.HarderVariant; valid != (err == nil) || valid && (same.UnmarshalText(name) != nil || same != a || a.String() != string(name)) {
			t.Errorf("change %d: %q, %v", a, name, err)
		}
	}
}

// Every reason of the rows has words, and those that speak to a client do so
// without numbers of the evidence.
func TestNextWords(t *testing.T) {
	words := units.Must(evidence.NewLexicon(allWords(), dose.Words().Copy(), week.Words().Copy())).Copy()
	for _, tt := range nextRows {
		c := rowCourse(t, 2, 4, 4.25, 6)
		tt.spoil(&c)
		for _, r := range nextOf(t, c).Reasons {
			if words[r.Code].Clinician == "" {
				t.Errorf("%s has no words", r.Code)
			}
			if strings.ContainsAny(words.Client(r), "{}%") || strings.ContainsAny(words.Clinician(r), "{}") {
				t.Errorf("%s: %q, %q", r.Code, words.Client(r), words.Clinician(r))
			}
		}
	}
}

func BenchmarkNext(b *testing.B) {
	for name, kit := range map[string][]float64{"raise": {2, 4, 4.25, 6}, "bridge": {2, 4, 6, 10}} {
		b.Run(name, func(b *testing.B) {
			c := rowCourse(b, kit...)
			b.ReportAllocs()
			for b.Loop() {
				nextOf(b, c)
			}
		})
	}
}
