package screening_test

import (
	"math/rand/v2"
	"testing"

	"example.org/posology/screening"
)

// TestLaterDayNotLooser holds that a pressure or pulse found on a later day leads
// at least as far as the same at the screening: AHA 2007 (Williams 2007) has a
// doctor decide first above 160/100 mmHg on any day, and Willey 2003 bars above
// 170 mmHg. The day rule's own answer stays as published.
func TestLaterDayNotLooser(t *testing.T) {
	r := rand.New(rand.NewPCG(50, 4))
	for range usualCases / 4 {
		p := blank()
		p.Setting = screening.Setting(r.IntN(5))
		systolic := 60 + r.IntN(150)
		p.BP, p.RestingPulse = pressure(systolic, max(20, systolic*(40+r.IntN(40))/100)), 20+r.IntN(120)
		if chance(r, 2) {
			p.BPAgain, p.RestingPulseAgain = pressure(max(60, systolic-r.IntN(30)), 58), 20+r.IntN(120)
		}
		if chance(r, 3) {
			c := clearance("hypertension_gt_160_100")
			c.Intensity = screening.Intensity(2 + r.IntN(3))
			p.Clearances = []screening.Clearance{c}
		}
		at := assess(t, p)
		c := quiet()
		c.Setting = p.Setting
		c.BP, c.BPAgain, c.RestingPulse, c.RestingPulseAgain = p.BP, p.BPAgain, p.RestingPulse, p.RestingPulseAgain
		p.BP, p.BPAgain, p.RestingPulse, p.RestingPulseAgain = nil, nil, 0, 0
		c.Day = visit + 1
		later := mustToday(t, c, assess(t, p))
		if later.Meanwhile < at.Meanwhile || later.Route < at.Route || !later.Limits.AsTightAs(at.Limits) {
			t.Fatalf("%v, again %v, pulse %d: at the screening %v, %v, %+v; later %v, %v, %+v", c.BP, c.BPAgain, c.RestingPulse,
				at.Route, at.Meanwhile, at.Limits, later.Route, later.Meanwhile, later.Limits)
		}
		if want := screening.SessionDay(c, screening.Profile{}); later.Rules.SessionDay.Plan != want.Plan {
			t.Fatalf("%v: the day rule says %v, want %v", c.BP, later.Rules.SessionDay.Plan, want.Plan)
		}
	}
}

// TestSaidOnce holds that what was found at the screening and is found again on
// the same day is one finding.
func TestSaidOnce(t *testing.T) {
	p := blank()
	p.BP, p.RestingPulse = pressure(186, 104), 108
	c := quiet()
	c.BP, c.RestingPulse = p.BP, p.RestingPulse
	said := map[string]bool{}
	for _, f := range mustToday(t, c, assess(t, p)).Findings {
		text := screening.Words().Clinician(f.Reason)
		if said[text] {
			t.Errorf("said twice: %s", text)
		}
		said[text] = true
	}
}

// TestLaterDayAgreed holds that what a doctor agreed to at the screening goes on
// on a later day, until it runs out or something happens.
func TestLaterDayAgreed(t *testing.T) {
	p := blank()
	given := clearance("hypertension_gt_160_100")
	given.Expires = visit + 10
	p.Clearances = []screening.Clearance{given}
	o := assess(t, p)
	c := quiet()
	c.BP, c.BPAgain, c.Day = pressure(165, 95), pressure(165, 95), visit+10
	agreed := mustToday(t, c, o)
	expect(t, agreed, screening.Tell, screening.WithinLimits)
	if misses(agreed, "clearance") {
		t.Error("an agreement in force is asked for")
	}
	c.Day = visit + 11
	if got := mustToday(t, c, o); got.Meanwhile < screening.LightSupervised || !misses(got, "clearance") {
		t.Errorf("run out: %v, missing %v", got.Meanwhile, got.Missing)
	}
	c.Day, c.Events = visit+5, []screening.Event{{Code: "hospital_stay", Day: visit + 1}}
	if got := mustToday(t, c, o); got.Meanwhile < screening.LightSupervised {
		t.Errorf("after a stay in hospital: %v", got.Meanwhile)
	}
	c = quiet()
	c.BP, c.BPAgain, c.Day = pressure(165, 95), pressure(165, 95), visit+11
	if got := mustToday(t, c, o); got.Plan != screening.Lighter {
		t.Errorf("less goes on than was planned for: %v", got.Plan)
	}
	if len(o.Clearances) != 1 || o.Clearances[0].Who != given.Who {
		t.Errorf("the outcome keeps the clearances %+v, want the one in force", o.Clearances)
	}
}
