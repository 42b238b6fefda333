package progression

import (
	"example.org/posology/progression/internal/told"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

const (
	bigHeld  units.Fraction = 0.5 // of the weight held
	bigMoved units.Fraction = 0.1 // of all that is moved, where that is known
)

// big reports a step that is taken only with somebody beside.
func (j *Jump) big() bool {
	if j.Moved > 0 {
		return j.Moved > bigMoved
	}
	return j.External <= 0 || j.External > bigHeld
}

// alone reports whether nobody is at hand.
func (n *now) alone() bool { return n.c.Request.Screening.Setting < screening.WithHelper }

// barredAlone reports whether the step is not taken since nobody is at hand.
func (n *now) barredAlone(j *Jump) bool {
	return n.alone() && (n.bigUnknown(j) || n.aboveLifted(j))
}

// bigUnknown reports a big step to a weight that the log does not show itself.
func (n *now) bigUnknown(j *Jump) bool {
	return j.big() && !(n.again && j.To.Each() == n.jump.To.Each())
}

// aboveLifted reports a step to more over head or face than was lifted before.
func (n *now) aboveLifted(j *Jump) bool {
	demands := n.c.Request.Exercise.Demands
	return (demands.Has(body.Overhead) || demands.Has(body.OverFace)) && j.To.Each() > n.h.Heaviest()
}

// waitsForSomebody reports whether a heavier weight would be taken or tried, were
// there somebody beside.
func (n *now) waitsForSomebody() bool {
	if !n.alone() || n.seen.Tried || !n.bearsMore() || !n.withinLimits() {
		return false
	}
	return n.mayTry() > 0 && (n.seen.Gates.Advice == rule.Raise || n.stillLooking()) || n.mayRaise() && n.barredAlone(n.jump) || n.seen.Gates.Advice == rule.Raise && n.jump.over(feelShare) && n.near(n.strength, n.jump.To.Each())
}

// saysBeside says what waits for somebody: it goes on without the weight, with
// repetitions, then at a slower pace. No set and no harder variant takes its place.
func (n *now) saysBeside() evidence.Reason {
	code := evidence.ReasonCode("progression.look-beside")
	switch {
	case n.bigUnknown(n.jump):
		code = "progression.step-beside"
	case n.aboveLifted(n.jump):
		code = "progression.above-beside"
	}
	return because(code).With(evidence.Mass("next", n.jump.To.Each()), evidence.Share("share", n.jump.External), told.Moved("moved", n.jump.Moved))
}
