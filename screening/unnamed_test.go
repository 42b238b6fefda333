package screening_test

import (
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
)

// TestNotAskedIsNamed holds that what everybody is asked or measured, and was
// not, is named, and that this alone changes nothing of what may go on. CDC 2019
// screens people for falls from 65.
func TestNotAskedIsNamed(t *testing.T) {
	all := well()
	for code, leave := range map[screening.Code]func(*screening.Profile){
		"blood_pressure": func(p *screening.Profile) { p.BP = nil },
		"resting_pulse":  func(p *screening.Profile) { p.RestingPulse = 0 },
		"falls":          func(p *screening.Profile) { p.Falls = nil },
		"setting":        func(p *screening.Profile) { p.Setting = 0 },
	} {
		p := all
		leave(&p)
		o := assess(t, p)
		if len(o.Missing) != 1 || o.Missing[0].Code != code {
			t.Errorf("%s left out: missing %v", code, o.Missing)
		}
		expect(t, o, screening.NoRoute, screening.WithinLimits)
		if !o.Limits.IsZero() {
			t.Errorf("%s left out: limits %+v", code, o.Limits)
		}
		if w := screening.Words().Copy()[o.Missing[0].Reason.Code]; w.Client == "" || w.Clinician == "" {
			t.Errorf("%s has no words", code)
		}
	}
	p := all
	p.Age, p.Falls = 64, nil
	if o := assess(t, p); misses(o, "falls") {
		t.Error("a screen for falls at 64")
	}
	p.Age, p.Conditions = 65, screening.AskedFor("falls_risk")
	if o := assess(t, p); misses(o, "falls") {
		t.Error("a screen for falls of somebody known to be at risk")
	}
	p.Conditions = screening.AskedFor()
	if o := assess(t, p); !misses(o, "falls") {
		t.Error("no screen for falls at 65")
	}
	for prompt := range screening.Prompts() {
		if prompt.Code == "blood_pressure" && len(prompt.Triggers) > 0 {
			t.Errorf("the pressure is asked of everyone, and has the triggers %v", prompt.Triggers)
		}
	}
}

// TestTakenOnTheDay holds that a pressure and pulse taken on the day are no
// longer missing, unless something still waits for them.
func TestTakenOnTheDay(t *testing.T) {
	p := well()
	p.BP, p.RestingPulse = nil, 0
	c := quiet()
	if o := mustToday(t, c, assess(t, p)); !misses(o, "blood_pressure") || !misses(o, "resting_pulse") {
		t.Errorf("not taken: missing %v", o.Missing)
	}
	c.BP, c.RestingPulse = pressure(130, 80), 64
	if o := mustToday(t, c, assess(t, p)); len(o.Missing) != 0 {
		t.Errorf("taken: missing %v", o.Missing)
	}
	p.Conditions = screening.AskedFor("hypertension")
	if o := mustToday(t, c, assess(t, p)); !misses(o, "blood_pressure") || o.Meanwhile != screening.LightSupervised {
		t.Errorf("held for the pressure: %v, missing %v", o.Meanwhile, o.Missing)
	}
}

// TestReviewByAlways holds that every assessment has a day by which it is
// renewed: 12 months on, or sooner where a clearance ends.
func TestReviewByAlways(t *testing.T) {
	for code, p := range holding() {
		if o := assess(t, p); o.ReviewBy != monthsAgo(t, -12) {
			t.Errorf("%s: review by %v", code, o.ReviewBy)
		}
	}
	late, early := clearance("pacemaker"), clearance("pacemaker")
	late.Expires, early.Expires = visit+90, visit+40
	for _, both := range [][]screening.Clearance{{late, early}, {early, late}} {
		p := well()
		p.Conditions, p.Clearances = screening.AskedFor("pacemaker"), both
		if o := assess(t, p); o.ReviewBy != visit+40 {
			t.Errorf("review by %v, want the earlier of two ends", o.ReviewBy)
		}
	}
	p := well()
	p.Day = units.Must(units.ParseDay("9999-06-01"))
	if o := assess(t, p); o.ReviewBy != p.Day {
		t.Errorf("at the end of the calendar: %v", o.ReviewBy)
	}
}

// TestPastReview holds that nobody trains on an assessment past its day.
func TestPastReview(t *testing.T) {
	o := assess(t, well())
	c := quiet()
	c.Day = o.ReviewBy
	if got := mustToday(t, c, o); got.Plan != screening.AsPlanned {
		t.Errorf("on the last day: %v", got.Plan)
	}
	for _, stored := range []units.Day{monthsAgo(t, -12), monthsAgo(t, -24)} { // a later one is none of Assess
		o.ReviewBy = stored
		c.Day = monthsAgo(t, -12) + 1
		got := mustToday(t, c, o)
		expect(t, got, screening.AskFirst, screening.Nothing)
		if f, ok := finding(got, "screening.assessment-lapsed"); got.Plan != screening.SettleFirst || !ok || !f.Open {
			t.Errorf("past it: %v, %+v", got.Plan, f)
		}
	}
}
