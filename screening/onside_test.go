package screening_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var ofALimb = rapid.SliceOfDistinct(rapid.SampledFrom([]body.Demand{
	body.Overhead, body.OverFace, body.FirmGrip, body.ShoulderResisted, body.ElbowResisted, body.WristResisted, body.HipResisted, body.KneeResisted, body.AnkleResisted,
}), func(d body.Demand) body.Demand { return d })

// What is avoided on both sides is as tight as what is avoided on one, and on each in turn;
// joined, every side is kept from all that either of two keeps it from.
func TestAvoidedOnASide(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) screening.Limits {
			return screening.Limits{
				Avoid:     body.DemandSet(ofALimb.Draw(t, name)...),
				AvoidLeft: body.DemandSet(ofALimb.Draw(t, name+", left")...), AvoidRight: body.DemandSet(ofALimb.Draw(t, name+", right")...),
			}
		}
		l, m := draw("one"), draw("other")
		j, k := l.Join(m), m.Join(l)
		for side := range body.Sides() {
			if j.Avoided(side) != l.Avoided(side).Union(m.Avoided(side)) {
				t.Fatalf("%v: %v and %v: %v", side, l.Avoided(side), m.Avoided(side), j.Avoided(side))
			}
			if got := l.Avoided(side); got&^l.Avoided(body.Both) != 0 || l.Avoid&^got != 0 {
				t.Fatalf("%v: %v of %+v", side, got, l)
			}
		}
		if !j.AsTightAs(k) || !k.AsTightAs(j) || j.Avoid != k.Avoid || j.AvoidLeft != k.AvoidLeft || !j.AsTightAs(l) || !l.AsTightAs(l) {
			t.Fatalf("%+v and %+v: %+v, the other way %+v", l, m, j, k)
		}
		left, right := l.Avoided(body.Left), l.Avoided(body.Right)
		if is := l.AsTightAs(m); is != (m.Avoided(body.Left)&^left == 0 && m.Avoided(body.Right)&^right == 0) {
			t.Fatalf("%+v as tight as %+v: %v", l, m, is)
		}
		if l.IsZero() != (l.Avoided(body.Both) == 0) || l.Avoided(0) != l.Avoided(body.Both) {
			t.Fatalf("%+v limits nothing: %v", l, l.IsZero())
		}
	})
}

// What a place spares is spared on its side, where there is an arm or a leg of which the
// other goes on; without a side, and of all else, on both.
func TestSparedOnItsSide(t *testing.T) {
	shoulder := body.DemandSet(body.ShoulderResisted, body.Overhead)
	event := func(code screening.Code, ago units.Day, region body.Region) func(*screening.Profile, body.Side) {
		return func(p *screening.Profile, s body.Side) {
			p.Events = []screening.Event{{Code: code, Day: visit - ago, Region: region, Side: s}}
		}
	}
	restriction := func(r screening.Restriction) func(*screening.Profile, body.Side) {
		return func(p *screening.Profile, s body.Side) {
			r.Side = s
			p.Restrictions = []screening.Restriction{r}
		}
	}
	for name, tt := range map[string]struct {
		on   func(*screening.Profile, body.Side)
		own  body.Demands // of one side
		both body.Demands // whatever the side
	}{
		"pacemaker":            {event("pacemaker", 28, 0), shoulder, 0},
		"defibrillator":        {event("icd", 28, 0), shoulder, 0},
		"shoulder replaced":    {event("shoulder_replacement", 400, 0), shoulder, 0},
		"cuff sewn":            {event("rotator_cuff_repair", 28, 0), shoulder, 0},
		"hip replaced":         {event("total_hip_replacement", 30, 0), 0, body.DemandSet(body.DeepKneeBend)},
		"wrist broken":         {event("fracture", 56, body.WristHand), body.DemandSet(body.WristResisted, body.FirmGrip), body.DemandSet(body.FloorTransfer)},
		"neck broken, so said": {event("fracture", 300, body.Neck), 0, body.DemandSet(body.LoadedSpinalFlex, body.SpinalTwist, body.PickUpFromFloor)},
		"knee hurts": {func(p *screening.Profile, s body.Side) {
			p.Conditions = screening.AskedFor("pain_made_worse_by_training")
			p.Sites = []screening.Site{{Code: "pain_made_worse_by_training", Region: body.Knee, Side: s}}
		}, body.DemandSet(body.KneeResisted), body.DemandSet(body.DeepKneeBend, body.SingleLegStance, body.Impact, body.FloorTransfer)},
		"no overhead": {restriction(screening.Restriction{Region: body.Shoulder, Avoid: body.DemandSet(body.Overhead, body.Impact)}), body.DemandSet(body.Overhead), body.DemandSet(body.Impact)},
		"no weight on a hand": {restriction(screening.Restriction{Region: body.WristHand, NonWeightBearing: true}),
			body.DemandSet(body.WristResisted, body.FirmGrip), body.DemandSet(body.FloorTransfer, body.FreeStanding, body.SingleLegStance, body.DeepKneeBend, body.Impact)},
		"no weight on a foot": {restriction(screening.Restriction{Region: body.AnkleFoot, NonWeightBearing: true}),
			0, body.DemandSet(body.HipResisted, body.KneeResisted, body.AnkleResisted, body.FloorTransfer, body.FreeStanding, body.SingleLegStance, body.DeepKneeBend, body.Impact)},
		"a back has no side": {restriction(screening.Restriction{Region: body.LowerBack, Avoid: body.DemandSet(body.Overhead)}), 0, body.DemandSet(body.Overhead)},
		"an arm has no knee": {restriction(screening.Restriction{Region: body.Elbow, Avoid: body.DemandSet(body.KneeResisted)}), 0, body.DemandSet(body.KneeResisted)},
	} {
		for _, side := range []body.Side{0, body.Both, body.Left, body.Right} {
			p := blank()
			tt.on(&p, side)
			want := screening.Limits{Avoid: tt.both.Union(tt.own)}
			switch side {
			case body.Left:
				want = screening.Limits{Avoid: tt.both, AvoidLeft: tt.own}
			case body.Right:
				want = screening.Limits{Avoid: tt.both, AvoidRight: tt.own}
			}
			if l := assess(t, p).Limits; l.Avoid != want.Avoid || l.AvoidLeft != want.AvoidLeft || l.AvoidRight != want.AvoidRight {
				t.Errorf("%s, %q: avoid %v, left %v, right %v", name, side, l.Avoid, l.AvoidLeft, l.AvoidRight)
			}
		}
	}
}

// Of two events on different sides, or one of which the side is not known, both arms are spared.
func TestTwoEventsOfOneArmEach(t *testing.T) {
	for _, other := range []body.Side{0, body.Both, body.Right} {
		p := blank()
		p.Events = []screening.Event{{Code: "shoulder_replacement", Day: visit - 400, Side: body.Left}, {Code: "shoulder_replacement", Day: visit - 900, Side: other}}
		for range 2 {
			if l := assess(t, p).Limits; !l.Avoid.Has(body.ShoulderResisted) || l.AvoidLeft != 0 {
				t.Errorf("the other %q: %+v", other, l)
			}
			slices.Reverse(p.Events)
		}
	}
}

// A surgeon's limit on one leg is one that was set.
func TestALimitOnOneLegIsSet(t *testing.T) {
	p := blank()
	p.Conditions = screening.AskedFor("total_hip_replacement")
	p.Events = []screening.Event{{Code: "total_hip_replacement", Day: visit - 400, Side: body.Left}}
	p.Answers = map[screening.Code]screening.Answer{"replacement_limited": screening.Yes}
	p.Restrictions = []screening.Restriction{{Author: "a surgeon", Day: visit - 100, Region: body.Hip, Side: body.Left, Avoid: body.DemandSet(body.HipResisted)}}
	f, _ := finding(assess(t, p), "screening.replacement_limited")
	if p.Restrictions[0].Side = 0; f.Route != screening.Tell {
		both, _ := finding(assess(t, p), "screening.replacement_limited")
		t.Errorf("on the left %v, on both %v", f.Route, both.Route)
	}
}

// Whatever was told and of which sides: not known keeps either side from no less; what is kept
// from neither side with the sides told is not kept from both; on one side alone that side is
// kept from as much as if no side were known; and the order says nothing.
func TestSidesTold(t *testing.T) {
	r, freed := rand.New(rand.NewPCG(50, 7)), 0
	for range 4000 {
		p := randomProfile(r)
		c := checkFor(r, assess(t, p))
		limits := func() screening.Limits { return mustToday(t, c, assess(t, p)).Limits }
		set := func(side body.Side) {
			for i := range p.Events {
				p.Events[i].Side = side
			}
			for i := range p.Sites {
				p.Sites[i].Side = side
			}
			for i := range p.Restrictions {
				p.Restrictions[i].Side = side
			}
			if c.Pain != nil {
				c.Pain.Side = side
			}
		}
		told := limits()
		slices.Reverse(p.Events)
		slices.Reverse(p.Sites)
		slices.Reverse(p.Restrictions)
		if again := limits(); !again.AsTightAs(told) || !told.AsTightAs(again) {
			t.Fatalf("in another order %+v, was %+v", again, told)
		}
		set(0)
		none := limits()
		if !none.AsTightAs(told) || told.Avoided(body.Both) != none.Avoided(body.Both) {
			t.Fatalf("told %+v, not known %+v", told, none)
		}
		for side, other := range map[body.Side]body.Side{body.Left: body.Right, body.Right: body.Left, body.Both: body.Both} {
			set(side)
			one := limits()
			if !none.AsTightAs(one) || one.Avoided(side) != none.Avoided(side) {
				t.Fatalf("%v: %+v, not known %+v", side, one, none)
			}
			if one.Avoided(other) != none.Avoided(other) {
				freed++
			}
		}
	}
	if freed < 500 {
		t.Errorf("the other side was freed %d times", freed)
	}
}

// Pain of the day that spreads spares an arm or a leg on its side alone, and a back on both.
func TestPainOfTheDayOnItsSide(t *testing.T) {
	for region, freed := range map[body.Region]body.Demand{body.Knee: body.KneeResisted, body.Elbow: body.ElbowResisted, body.LowerBack: 0} {
		for _, side := range []body.Side{0, body.Both, body.Left, body.Right} {
			c := quiet()
			c.Pain = &screening.Pain{Kind: screening.SpreadingPain, Site: region, Side: side}
			l := mustToday(t, c, assess(t, blank())).Limits
			ofOne := freed != 0 && (side == body.Left || side == body.Right)
			if d := freed; d != 0 && (l.Avoided(body.Left).Has(d) != (side != body.Right) || l.Avoided(body.Right).Has(d) != (side != body.Left)) || (l.AvoidLeft|l.AvoidRight != 0) != ofOne {
				t.Errorf("%v, %v: %+v", region, side, l)
			}
		}
	}
}

// What heals is spared until it has: an agreement to train frees neither the arm of a new
// device nor a new shoulder early, where later it keeps the same, and ends nothing sooner.
func TestAnAgreementHealsNothing(t *testing.T) {
	for _, code := range []screening.Code{"pacemaker", "icd", "shoulder_replacement"} {
		for _, effort := range []screening.Intensity{screening.Light, screening.Moderate, screening.Vigorous} {
			p := blank()
			p.Conditions = screening.AskedFor(code)
			p.Events = []screening.Event{{Code: code, Day: visit - 35, Side: body.Left}}
			p.Clearances = []screening.Clearance{{Who: "doctor A", Day: visit - 7, Scope: []screening.Code{code}, Intensity: effort}}
			o := assess(t, p)
			if l := o.Limits; !l.AvoidLeft.Has(body.ShoulderResisted) || !l.AvoidLeft.Has(body.Overhead) || l.Avoid != 0 || o.Meanwhile != screening.WithinLimits {
				t.Errorf("%s, %v: %v, avoid %v, left %v", code, effort, o.Meanwhile, l.Avoid, l.AvoidLeft)
			}
		}
	}
}
