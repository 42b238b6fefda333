package progression_test

import (
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A limit on the share of a maximum holds where no estimate is given: what was done
// bounds it. Three sets of 12 with 5 kg and three left show about 6.7 kg at the
// least, so 40 % is 2.7 kg: neither the row nor what takes its place has 4 kg.
func TestNextKeepsAShareWithoutAnEstimate(t *testing.T) {
	for _, share := range []units.Fraction{.2, .4} {
		c := rowCourse(t, 4, 5, 6)
		done(&c, 5*kilo, 12, 3)
		c.Request.Screening.Limits.MaxFraction = share
		d := nextOf(t, c)
		if d.Next != nil && d.Next.Load.Each() > 0 {
			t.Errorf("%v: %v, %s %v, %+v", share, d.Action, d.Next.Exercise, d.Next.Load.Each(), d.Reasons)
		}
	}
	// 80 % is 5.3 kg: 5 kg go on, 6 kg do not come.
	c := rowCourse(t, 4, 5, 6)
	done(&c, 5*kilo, 12, 3)
	c.Request.Screening.Limits.MaxFraction = .8
	if d := nextOf(t, c); d.Next == nil || d.Next.Load.Each() != 5*kilo || !hasReason(d, "progression.limit") {
		t.Errorf("%v, %+v", d.Action, d.Reasons)
	}
	// A queried set shows nothing, and an effort that nobody noted neither.
	for name, spoil := range map[string]func(s *setlog.Set){
		"queried":    func(s *setlog.Set) { s.Load = 20 * kilo },
		"no effort":  func(s *setlog.Set) { s.Effort = units.Effort{} },
		"light sets": func(s *setlog.Set) { s.Load = 4 * kilo },
	} {
		c := rowCourse(t, 4, 5, 6)
		done(&c, 5*kilo, 12, 3)
		c.Request.Screening.Limits.MaxFraction = .7
		for i := range last(&c).Sets {
			spoil(&last(&c).Sets[i])
		}
		if d := nextOf(t, c); d.Next != nil && d.Next.Load.Each() >= 4*kilo {
			t.Errorf("%s: %v, %v", name, d.Action, d.Next.Load.Each())
		}
	}
}

// What takes the place of an exercise is allowed no more, in each implement and in
// all, than the exercise that it replaces.
func TestNextBoundsAVariantByTheOther(t *testing.T) {
	for _, tt := range []struct {
		ceiling units.Mass
		doses   bool
	}{{8 * kilo, true}, {4 * kilo, false}} { // a pair of 3 kg is 6 kg
		c := bridged(t) // with a row of one hand; the harder one takes a pair
		c.Request.Kit = dumbbells(3)
		done(&c, 3*kilo, 20, 8) // as of somebody who lifts more once
		set := setlog.Set{Day: firstDay, Exercise: c.Request.Exercise.ID, Side: body.Both, Hold: c.Request.Exercise.Hold, Load: 2 * tt.ceiling, Reps: 1, Effort: units.Must(units.InReserve(0))}
		e, err := onerm.FromSet(set, c.Request.Exercise, body.Person{Age: 66, Sex: body.Female, Training: body.Novice})
		if err != nil {
			t.Fatal(err)
		}
		c.Request.Estimates = []onerm.Estimate{e}
		c.Request.Screening.Limits.MaxFraction = units.Must(tt.ceiling.Share(dosetest.LowEnd(e)))
		d := nextOf(t, c)
		if (d.Change == progression.HarderVariant) != tt.doses {
			t.Errorf("%v: %v, %v, %+v", tt.ceiling, d.Action, d.Change, d.Reasons)
		}
	}
}

// Under a limit on the share of a maximum whoever knows less gives no more: without a
// set, without reserves told, and without what was known at first where that is no lower
// than what came after (see beganHigh). A test that is lower is among the spoilings.
func TestShareKnowingLess(t *testing.T) {
	neverMore(t, func(t *rapid.T, p *client) {
		p.share = units.Fraction(between(t, "a share", 2, 9)) / 10
	}, func(t *rapid.T, p *client) (string, bool) {
		log := p.course.Log
		v, beganHigh := &log[between(t, "a visit", 0, len(log)-1)], p.beganHigh()
		switch between(t, "not known", 0, 3) {
		case 0:
			p.course.Request.Estimates = nil
			return "less known", beganHigh
		case 1:
			p.course.Request.Performed = nil
			return "less known", beganHigh
		case 2:
			return "less known", leaveOut(t, v)
		default:
			good := allGood(*v) // else what was bad is no longer known
			for i := range v.Sets {
				good = good && v.Sets[i].Effort.Scale() == units.ScaleRIR && v.Sets[i].Effort.Number() >= 1
				v.Sets[i].Effort = units.Effort{}
			}
			return "less known", good
		}
	})
}

// beganHigh reports whether what was known at first, from a test or from a set done
// before, is no less than what the first visit shows, and no visit shows more than the one
// before. Only then is it worse not to know it: a low one holds back what visits show, and
// a high one too where a low visit lies between, since it makes the next count for less.
func (p *client) beganHigh() bool {
	r := &p.course.Request
	first, bodies := strength.Ability{}, r.Exercise.MovesBody
	for _, e := range r.Estimates {
		first = first.Tested(e)
	}
	if s := r.Performed; s != nil {
		seen := strength.Ability{}.Seen(1, 0, *s)
		if first.Known() && seen.Log > first.Log { // without the test it counts
			return false
		}
		first = seen
	}
	for _, side := range []body.Side{body.Both, body.Left, body.Right} {
		least := first.Log
		for i := range p.course.Log {
			v := &p.course.Log[i]
			var sets []setlog.Set
			for _, s := range v.Sets {
				if side == body.Both || s.Side == side || s.Side == body.Both {
					sets = append(sets, s)
				}
			}
			if len(sets) == 0 { // reads as the dose done as asked
				sets = []setlog.Set{{Hold: body.OneHand, Load: v.Plan.Load.Each(), Reps: v.Plan.Count}}
			}
			shows := strength.Ability{}.Seen(1, v.Plan.Reserve.Least, sets...)
			if bodies || v.Plan.Feel != nil || v.Unable == screening.Yes || shows.Log > least {
				return false
			}
			least = shows.Log
		}
	}
	return true
}
