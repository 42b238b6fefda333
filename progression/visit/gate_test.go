package visit_test

import (
	"encoding/json"
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression/internal/visittest"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

var (
	gatesOf   = visittest.Gates
	signCodes = visittest.Signs
	goodVisit = visittest.Good
	score     = visittest.Score
)

type failer = fieldtest.T

// One thing at a time stands against more load. Pain: the pain-monitoring model
// (Thomee 1997, Silbernagel 2007: up to 5 of 10, settled by the next morning, no
// week worse) with the lowest zone of Ageberg 2010; full range: Perry 2005. That
// unknown technique permits repetitions and no load is common practice without a
// source. Order and joining are this module's design.
func TestOneGateDecides(t *testing.T) {
	tests := []struct {
		name  string
		spoil func(v *visit.Visit)
		gate  visit.Gate
		says  rule.LoadAdvice
		aim   int
	}{
		{"nothing", func(*visit.Visit) {}, 0, rule.Raise, 12},
		{"chest pain on effort", func(v *visit.Visit) { v.Moment.Signs = []screening.Code{"chest_symptom"} }, visit.GateEvents, rule.Refer, 0},
		{"a session ended for a sign", func(v *visit.Visit) { v.Moment.Signs = []screening.Code{"feels_sick"} }, visit.GateEvents, rule.Refer, 0},
		{"a set ended for a sign", func(v *visit.Visit) { v.Moment.Signs = []screening.Code{"leg_cramp"} }, visit.GateEvents, rule.Ease, 0},
		{"pain above 5 at the time", func(v *visit.Visit) { v.Moment.Pain = score(5.5) }, visit.GateEvents, rule.Ease, 0},
		{"signs not asked", func(v *visit.Visit) { v.Moment = nil }, visit.GateEvents, rule.Keep, 10},
		{"pain above 5", func(v *visit.Visit) { v.Pain.During = score(5.5) }, visit.GatePain, rule.Ease, 0},
		{"pain of 3", func(v *visit.Visit) { v.Pain.During = score(3) }, visit.GatePain, rule.Keep, 10},
		{"unsettled", func(v *visit.Visit) { v.Pain.NextMorning = score(2) }, visit.GatePain, rule.Ease, 0},
		{"rising", func(v *visit.Visit) { v.Pain.WeeklyTrend = screening.RisingPain }, visit.GatePain, rule.Ease, 0},
		{"spreading", func(v *visit.Visit) { v.Pain.Kind = screening.SpreadingPain }, visit.GatePain, rule.Refer, 0},
		{"of a kind not given", func(v *visit.Visit) { v.Pain.Kind = 0 }, visit.GatePain, rule.Keep, 10},
		{"pain in another exercise", func(v *visit.Visit) { v.HurtElsewhere = []string{"shoulder press"} }, visit.GatePain, rule.Keep, 10},
		{"pain above 5, and in another", func(v *visit.Visit) { v.HurtElsewhere, v.Pain.During = []string{"shoulder press"}, score(5.5) }, visit.GatePain, rule.Ease, 0},
		{"pain not asked", func(v *visit.Visit) { v.Pain = nil }, visit.GatePain, rule.Keep, 10},
		{"range lost", func(v *visit.Visit) { v.RangeLost = screening.Yes }, visit.GateRange, rule.Ease, 0},
		{"range not known", func(v *visit.Visit) { v.RangeLost = 0 }, visit.GateRange, rule.Keep, 10},
		{"form lost", func(v *visit.Visit) { v.FormLost = screening.Yes }, visit.GateTechnique, rule.Keep, 10},
		{"nobody looked", func(v *visit.Visit) { v.Observer = dose.Observation{} }, visit.GateTechnique, rule.Keep, 12},
		{"form not known", func(v *visit.Visit) { v.FormLost = 0 }, visit.GateTechnique, rule.Keep, 12},
		{"nearer to failure", func(v *visit.Visit) { v.Sets[2].Effort = units.Must(units.InReserve(2)) }, visit.GateEffort, rule.Keep, 10},
		{"between two counts", func(v *visit.Visit) { v.Sets[3].Effort = units.Must(units.RPE(7.5)) }, visit.GateEffort, rule.Keep, 10},
		{"effort not recorded", func(v *visit.Visit) { v.Sets[0].Effort = units.Effort{} }, visit.GateEffort, rule.Keep, 10},
		{"a scale without reserve", func(v *visit.Visit) { v.Sets[1].Effort = units.Must(units.OMNI(6)) }, visit.GateEffort, rule.Keep, 10},
		{"below the range", func(v *visit.Visit) { v.Sets[1].Reps = 7 }, visit.GateReps, rule.Keep, 10},
		{"ended by the reserve, below the count", func(v *visit.Visit) {
			for i := range v.Sets {
				v.Sets[i].Reps = 8
			}
			v.FormLost = 0
		}, visit.GateTechnique, rule.Keep, 10},
		{"another load", func(v *visit.Visit) { v.Sets[1].Load = 8 * units.Kilogram }, visit.GateReps, rule.Keep, 10},
		{"a side with a set fewer", func(v *visit.Visit) { v.Sets = v.Sets[:3] }, visit.GateReps, rule.Keep, 10},
	}
	for _, tt := range tests {
		v := goodVisit()
		tt.spoil(&v)
		r := gatesOf(t, v)
		if r.Advice != tt.says || r.Aim != tt.aim {
			t.Errorf("%s: %v, aim %d; want %v, %d", tt.name, r.Advice, r.Aim, tt.says, tt.aim)
		}
		for i, g := range r.Gates {
			if g.Gate != visit.Gate(i+1) || len(g.Reasons) != 1 || (g.Advice == rule.Raise) != (g.Gate != tt.gate) {
				t.Errorf("%s: gate %d is %v: %v, %v", tt.name, i+1, g.Gate, g.Advice, g.Reasons)
			}
		}
		for _, why := range append(r.Reasons, reasonsOf(r)...) {
			if said := visit.Words().Clinician(why); said == "" || strings.ContainsAny(said, "{}") {
				t.Errorf("%s: %s says %q", tt.name, why.Code, said)
			}
		}
		if len(r.Gates) != 6 {
			t.Errorf("%s: %d gates", tt.name, len(r.Gates))
		}
	}
}

func reasonsOf(r visit.GateReport) []evidence.Reason {
	var list []evidence.Reason
	for _, g := range r.Gates {
		list = append(list, g.Reasons...)
	}
	return list
}

// Osteoarthritis with usual pain up to 5 may progress: this module's policy. No
// pain at all needs no kind.
func TestGatePainThatMayProgress(t *testing.T) {
	v := goodVisit()
	v.Pain = &screening.Pain{Kind: screening.OrdinaryPain, Usual: score(4), During: score(5), After: score(4), NextMorning: score(4),
		WeeklyTrend: screening.StablePain, Osteoarthritis: screening.Yes}
	if r := gatesOf(t, v); r.Advice != rule.Raise {
		t.Errorf("%v, want raise", r.Advice)
	}
	v.Pain = &screening.Pain{Usual: score(0), During: score(0), After: score(0), NextMorning: score(0), WeeklyTrend: screening.StablePain}
	if r := gatesOf(t, v); r.Advice != rule.Raise {
		t.Errorf("no pain of whatever kind: %v, want raise", r.Advice)
	}
}

// A carry has no reserve; nothing done is nothing known; each set of both sides
// counts for each.
func TestGateSets(t *testing.T) {
	v := goodVisit()
	v.Plan.Measure, v.Plan.Reserve = exercise.Metres, dose.Reserve{}
	for i := range v.Sets {
		v.Sets[i].Effort = units.Effort{}
	}
	if r := gatesOf(t, v); r.Advice != rule.Raise {
		t.Errorf("metres: %v, want raise", r.Advice)
	}
	v = goodVisit()
	v.Sets = nil
	if r := gatesOf(t, v); r.Advice != rule.Keep || r.Gates[4].Advice != rule.Keep || r.Gates[5].Advice != rule.Keep || r.Aim != 10 {
		t.Errorf("nothing done: %+v", r)
	}
	v = goodVisit()
	v.Sets = v.Sets[:2]
	v.Sets[0].Side, v.Sets[1].Side = body.Both, body.Both
	if r := gatesOf(t, v); r.Advice != rule.Raise {
		t.Errorf("both sides at once: %v", r.Advice)
	}
	v = goodVisit()
	v.Plan.Side, v.Sets = body.Right, v.Sets[2:]
	if r := gatesOf(t, v); r.Advice != rule.Raise {
		t.Errorf("one side planned and done: %v", r.Advice)
	}
}

// spoilers make one thing of a visit worse or unknown.
var spoilers = []func(t *rapid.T, v *visit.Visit){
	func(t *rapid.T, v *visit.Visit) {
		if v.Moment != nil {
			signs := append(slices.Clone(v.Moment.Signs), rapid.SampledFrom(signCodes()).Draw(t, "sign"))
			v.Moment = &screening.Moment{Signs: signs, Pain: v.Moment.Pain}
		}
	},
	func(t *rapid.T, v *visit.Visit) {
		if v.Pain != nil && v.Pain.During != nil {
			p := *v.Pain
			p.During = score(min(10, *p.During+float64(rapid.IntRange(1, 6).Draw(t, "more pain"))))
			v.Pain = &p
		}
	},
	func(t *rapid.T, v *visit.Visit) {
		if v.Pain != nil {
			p := *v.Pain
			p.WeeklyTrend = screening.RisingPain
			v.Pain = &p
		}
	},
	func(t *rapid.T, v *visit.Visit) { // nobody knows of which kind it was
		if v.Pain != nil {
			p := *v.Pain
			p.Kind = 0
			v.Pain = &p
		}
	},
	func(t *rapid.T, v *visit.Visit) { v.RangeLost = screening.Yes },
	func(t *rapid.T, v *visit.Visit) { v.FormLost = screening.Yes },
	func(t *rapid.T, v *visit.Visit) { v.Observer = dose.Observation{} },
	func(t *rapid.T, v *visit.Visit) {
		i := rapid.IntRange(0, len(v.Sets)-1).Draw(t, "set")
		v.Sets[i].Reps = max(1, v.Sets[i].Reps-rapid.IntRange(1, 5).Draw(t, "fewer"))
	},
	func(t *rapid.T, v *visit.Visit) {
		i := rapid.IntRange(0, len(v.Sets)-1).Draw(t, "set")
		if left := v.Sets[i].Effort.Number(); !v.Sets[i].Effort.IsZero() && left >= 1 {
			v.Sets[i].Effort = units.Must(units.InReserve(left - 1))
		}
	},
	func(t *rapid.T, v *visit.Visit) {
		v.Sets[rapid.IntRange(0, len(v.Sets)-1).Draw(t, "set")].Effort = units.Effort{}
	},
}

func drawGateVisit(t *rapid.T) visit.Visit {
	v := goodVisit()
	v.Pain.During = score(float64(rapid.IntRange(0, 10).Draw(t, "pain")))
	v.Pain.WeeklyTrend = screening.Trend(rapid.IntRange(0, 3).Draw(t, "trend"))
	v.RangeLost = screening.Answer(rapid.IntRange(0, 2).Draw(t, "range"))
	v.FormLost = screening.Answer(rapid.IntRange(0, 2).Draw(t, "form"))
	for i := range v.Sets {
		v.Sets[i].Reps = rapid.IntRange(7, 14).Draw(t, "reps")
		v.Sets[i].Effort = units.Must(units.InReserve(float64(rapid.IntRange(1, 5).Draw(t, "reserve"))))
	}
	return v
}

// The law: one thing worse, or no longer known, never makes the advice less
// cautious and never raises the aim; and a rise needs every gate.
func TestGatesMonotone(t *testing.T) {
	changed := 0
	rapid.Check(t, func(t *rapid.T) {
		v := drawGateVisit(t)
		was := gatesOf(t, v)
		rapid.SampledFrom(spoilers).Draw(t, "worse")(t, &v)
		is := gatesOf(t, v)
		if is.Advice < was.Advice || is.Aim > was.Aim {
			t.Fatalf("worse: %v, aim %d; before %v, aim %d", is.Advice, is.Aim, was.Advice, was.Aim)
		}
		all := !slices.ContainsFunc(is.Gates, func(g visit.GateAnswer) bool { return g.Advice != rule.Raise })
		if all != (is.Advice == rule.Raise) {
			t.Fatalf("%v with %+v", is.Advice, is.Gates)
		}
		if is.Advice != was.Advice {
			changed++
		}
	})
	if changed == 0 {
		t.Error("nothing was ever made worse")
	}
}

func TestGatesRefuse(t *testing.T) {
	bad := goodVisit()
	bad.Plan.Sets, bad.Plan.Count = 0, 13
	bad.Sets[0].Reps = 0
	bad.Sets[1].Exercise, bad.Sets[1].Hold = "goblet-squat", body.BothHandsOnOne
	bad.Moment.Pain = score(11)
	bad.Pain.During = score(-1)
	_, err := visit.Gates(bad)
	var all field.Errors
	if !errors.As(err, &all) {
		t.Fatalf("%v", err)
	}
	var got []string
	for _, f := range all {
		got = append(got, f.Path)
	}
	want := []string{"/plan/sets", "/plan/count", "/sets/0/reps", "/sets/1/exercise", "/sets/1/hold", "/moment/pain", "/pain/during"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	for name, spoil := range map[string]func(v *visit.Visit){
		"/plan/count":  func(v *visit.Visit) { v.Plan.Span = units.AtLeast(8) },
		"/sets/3/side": func(v *visit.Visit) { v.Plan.Side, v.Sets = body.Right, append(v.Sets[2:], v.Sets[2], v.Sets[0]) },
		"/sets/0/side": func(v *visit.Visit) { v.Plan.OneSided, v.Sets = false, v.Sets[:1] },
	} {
		v := goodVisit()
		spoil(&v)
		if err := v.Validate(); err == nil || !strings.Contains(err.Error(), name) {
			t.Errorf("%v, want %s", err, name)
		}
	}
}

func TestGatesJSON(t *testing.T) {
	v := goodVisit()
	r := gatesOf(t, v)
	text := units.Must(json.Marshal(r))
	var back visit.GateReport
	if err := field.Decode(text, &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(text), string(units.Must(json.Marshal(back)))); diff != "" {
		t.Error(diff)
	}
	text = units.Must(json.Marshal(v))
	var again visit.Visit
	if err := field.Decode(text, &again, field.Strict); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(units.Must(json.Marshal(r))), string(units.Must(json.Marshal(gatesOf(t, again))))); diff != "" {
		t.Error(diff)
	}
	for _, text := range []string{`{"range":1}`, `{"plan":{},"plan":{}}`} {
		if field.Decode([]byte(text), &again, field.Strict) == nil || field.Decode([]byte(text), &back, field.Strict) == nil {
			t.Errorf("%s was read", text)
		}
	}
	for g := visit.Gate(0); g < 9; g++ {
		name, err := g.MarshalText()
		var same visit.Gate
		if valid := g <= visit.GateReps; valid != (err == nil) || valid && (same.UnmarshalText(name) != nil || same != g || g.String() != string(name)) {
			t.Errorf("gate %d: %q, %v", g, name, err)
		}
	}
}

func BenchmarkGates(b *testing.B) {
	v := goodVisit()
	b.ReportAllocs()
	for b.Loop() {
		gatesOf(b, v)
	}
}
