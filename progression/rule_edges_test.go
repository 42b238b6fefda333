package progression_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// rate puts ratings on the scale omni in place of what was left, one for each
// set of the last visit.
func rate(c *progression.Course, ratings ...float64) {
	v := last(c)
	v.Sets = slices.Clone(v.Sets)
	for i := range v.Sets {
		v.Sets[i].Effort = units.Must(units.OMNI(ratings[min(i, len(ratings)-1)]))
	}
}

// A rule answers for the repetitions, and the one by rating for effort that was
// not told in reserve; every other gate stays as it is.
func TestNextRuleLeavesTheOtherGates(t *testing.T) {
	for name, tt := range map[string]struct {
		rule  rule.Name
		spoil func(c *progression.Course)
		rises bool
	}{
		"over the target":                    {rule.NameOverTarget, func(*progression.Course) {}, true},
		"over the target, pain of 3":         {rule.NameOverTarget, func(c *progression.Course) { last(c).Pain.During = score(3) }, false},
		"over the target, too near failure":  {rule.NameOverTarget, func(c *progression.Course) { done(c, 4*kilo, 16, 2) }, false},
		"over the target, technique lost":    {rule.NameOverTarget, func(c *progression.Course) { last(c).FormLost = screening.Yes }, false},
		"over the target, a set missing":     {rule.NameOverTarget, func(c *progression.Course) { last(c).Sets = last(c).Sets[:5] }, false},
		"over the target, not told":          {rule.NameOverTarget, func(c *progression.Course) { done(c, 4*kilo, 16, 3); unrated(c) }, false},
		"rated 7":                            {rule.NameOMNIBelow8, func(c *progression.Course) { rate(c, 7) }, true},
		"rated 8 once, at first":             {rule.NameOMNIBelow8, func(c *progression.Course) { rate(c, 8, 7) }, false},
		"rated 8 once, at last":              {rule.NameOMNIBelow8, func(c *progression.Course) { rate(c, 7, 7, 7, 7, 7, 8) }, false},
		"rated 7, pain of 3":                 {rule.NameOMNIBelow8, func(c *progression.Course) { rate(c, 7); last(c).Pain.During = score(3) }, false},
		"rated 7, technique lost":            {rule.NameOMNIBelow8, func(c *progression.Course) { rate(c, 7); last(c).FormLost = screening.Yes }, false},
		"rated 7, nobody watched":            {rule.NameOMNIBelow8, func(c *progression.Course) { rate(c, 7); seenLongAgo(c) }, false},
		"rated 7, and another rule":          {rule.NameOverTarget, func(c *progression.Course) { rate(c, 7) }, false},
		"two for two, once":                  {rule.NameTwoForTwo, func(*progression.Course) {}, false},
		"two for two, twice":                 {rule.NameTwoForTwo, func(c *progression.Course) { repeat(c, 2) }, true},
		"two for two, another weight before": {rule.NameTwoForTwo, func(c *progression.Course) { c.Log = []progression.Visit{pastVisit(*c, 3, 2*kilo, 14, 3), *last(c)} }, false},
		"two for two, another weight between": {rule.NameTwoForTwo, func(c *progression.Course) {
			c.Log = []progression.Visit{pastVisit(*c, 6, 4*kilo, 14, 3), pastVisit(*c, 3, 2*kilo, 13, 10), *last(c)} // half of the weight is easier
		}, true},
		"two for two, nothing done between": {rule.NameTwoForTwo, func(c *progression.Course) {
			c.Log = []progression.Visit{pastVisit(*c, 6, 4*kilo, 14, 3), pastVisit(*c, 3, 4*kilo, 14, 3), *last(c)}
			c.Log[1].Sets = nil
		}, true},
		"two for two, the last set before": {rule.NameTwoForTwo, func(c *progression.Course) {
			c.Log = []progression.Visit{pastVisit(*c, 3, 4*kilo, 14, 3), *last(c)}
			c.Log[0].Sets[5].Reps = 13
		}, false},
		"two for two, the last set of one side": {rule.NameTwoForTwo, func(c *progression.Course) {
			c.Log = []progression.Visit{pastVisit(*c, 3, 4*kilo, 14, 3), *last(c)}
			c.Log[0].Sets[4].Reps = 13
		}, false},
		"two for two, a set before the last": {rule.NameTwoForTwo, func(c *progression.Course) {
			c.Log = []progression.Visit{pastVisit(*c, 3, 4*kilo, 14, 3), *last(c)}
			c.Log[0].Sets[1].Reps = 13
		}, true},
		"two for two, of one set": {rule.NameTwoForTwo, func(c *progression.Course) {
			c.Request.Side, last(c).Plan.Side = body.Left, body.Left
			repeat(c, 2)
			c.Log[0].Sets = c.Log[0].Sets[:1]
			last(c).Sets = slices.Concat(last(c).Sets[:2], last(c).Sets[4:5])
		}, true},
	} {
		c := rowCourse(t, 2, 4, 4.25)
		c.Policy.Rule = tt.rule
		done(&c, 4*kilo, 14, 3)
		tt.spoil(&c)
		if d := nextOf(t, c); (d.Change == progression.MoreLoad) != tt.rises {
			t.Errorf("%s: %s, %+v", name, told(d), d.Gates)
		}
	}
}

// A rule has nothing to answer where nothing was done or nothing is held, and one
// set is enough for it.
func TestNextRuleWithoutALoad(t *testing.T) {
	for _, rule := range []rule.Name{rule.NameOverTarget, rule.NameTwoForTwo, rule.NameRepsThenLoad, rule.NameOMNIBelow8, rule.NameTopOfRange} {
		c := rowCourse(t, 4, 4.25)
		c.Policy.Rule = rule
		last(&c).Sets = nil
		if d := nextOf(t, c); d.Action != progression.HoldDose || !hasReason(d, "progression.nothing-done") {
			t.Errorf("%v, nothing done: %s", rule, told(d))
		}
		c = courseOf(t, "dead-bug", 4)
		c.Policy.Rule = rule
		done(&c, 0, 10, 3)
		if d := nextOf(t, c); d.Change != progression.MoreReps {
			t.Errorf("%v, unloaded: %s", rule, told(d))
		}
	}
	c := squatCourse(t, 4, 4.25)
	c.Policy.Rule = rule.NameOverTarget
	last(&c).Plan.Sets, last(&c).Sets = 1, last(&c).Sets[:1]
	done(&c, 4*kilo, 13, 3)
	if d := nextOf(t, c); d.Gates[5].Advice != rule.Raise || len(d.Gates[5].Reasons) == 0 || d.Gates[5].Reasons[0].Code == "progression.gate-passed" {
		t.Errorf("one set of 13: %+v", d.Gates[5])
	}
}

// Why each gate answers as it does, where several reasons keep the load alike.
func TestGateReasons(t *testing.T) {
	for _, tt := range []struct {
		name  string
		spoil func(v *progression.Visit)
		gate  visit.Gate
		why   evidence.ReasonCode
	}{
		{"unwell", func(v *progression.Visit) { v.Unwell = screening.Yes }, visit.GateEvents, "progression.unwell-then"},
		{"a fall of the pressure", func(v *progression.Visit) { v.Moment.SystolicFall = 60 }, visit.GateEvents, "progression.event"},
		{"sore", func(v *progression.Visit) { v.SorenessDays = 4 }, visit.GatePain, "progression.sore"},
		{"pain of 1, of a kind that is not given", func(v *progression.Visit) { v.Pain.Kind = 0; v.Pain.During, v.Pain.Usual = nil, nil }, visit.GatePain, "progression.gate-not-known"},
		{"no pain, of no kind", func(v *progression.Visit) {
			*v.Pain = screening.Pain{During: score(0), After: score(0), Usual: score(0), NextMorning: score(0), WeeklyTrend: screening.StablePain}
		}, visit.GatePain, "progression.gate-passed"},
		{"technique lost", func(v *progression.Visit) { v.FormLost = screening.Yes }, visit.GateTechnique, "progression.form-lost"},
		{"nobody watched", func(v *progression.Visit) { v.Observer = dose.Observation{} }, visit.GateTechnique, "progression.gate-not-known"},
		{"reserve not told", func(v *progression.Visit) { v.Sets[0].Effort = units.Effort{} }, visit.GateEffort, "progression.gate-not-known"},
		{"nothing done: reserve", func(v *progression.Visit) { v.Sets = nil }, visit.GateEffort, "progression.gate-not-known"},
		{"nothing done: repetitions", func(v *progression.Visit) { v.Sets = nil }, visit.GateReps, "progression.gate-not-known"},
		{"another load", func(v *progression.Visit) { v.Sets[1].Load = 5 * kilo }, visit.GateReps, "progression.other-load"},
		{"below the dose", func(v *progression.Visit) { v.Sets[1].Reps = 7 }, visit.GateReps, "progression.below-dose"},
	} {
		v := goodVisit()
		tt.spoil(&v)
		for _, g := range gatesOf(t, v).Gates {
			if g.Gate != tt.gate {
				continue
			}
			if len(g.Reasons) != 1 || g.Reasons[0].Code != tt.why {
				t.Errorf("%s: %+v, want %s", tt.name, g.Reasons, tt.why)
			}
			if tt.why == "progression.event" && !strings.Contains(allWords().Clinician(g.Reasons[0]), "a reading") {
				t.Errorf("%s: %q", tt.name, allWords().Clinician(g.Reasons[0]))
			}
		}
	}
	v := goodVisit()
	v.Moment.Signs = []screening.Code{"feels_sick"}
	if text := allWords().Clinician(gatesOf(t, v).Gates[0].Reasons[0]); !strings.Contains(text, "feels sick") {
		t.Errorf("%q", text)
	}
	// One set alone has repetitions too.
	c := squatCourse(t, 4, 4.25)
	last(&c).Plan.Sets, last(&c).Sets = 1, last(&c).Sets[:1]
	if g := gatesOf(t, *last(&c)).Gates[5]; g.Advice != rule.Raise {
		t.Errorf("%+v", g)
	}
}
