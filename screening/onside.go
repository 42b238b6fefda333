package screening

import (
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Demands that one arm, or one leg, is kept from while the other goes on. Of every other
// the side makes no difference.
var (
	ofArms = body.DemandSet(body.ShoulderResisted, body.ElbowResisted, body.WristResisted, body.FirmGrip, body.Overhead, body.OverFace)
	ofLegs = body.DemandSet(body.HipResisted, body.KneeResisted, body.AnkleResisted)
)

var ofLimb = map[body.Region]body.Demands{
	body.Shoulder: ofArms, body.Elbow: ofArms, body.WristHand: ofArms, body.Hip: ofLegs, body.Knee: ofLegs, body.AnkleFoot: ofLegs,
}

// Avoided returns the demands that work of a side may not make, of both sides, or of one
// that is not given, those of either.
func (l Limits) Avoided(side body.Side) body.Demands {
	switch side {
	case body.Left:
		return l.Avoid.Union(l.AvoidLeft)
	case body.Right:
		return l.Avoid.Union(l.AvoidRight)
	}
	return l.Avoid.Union(l.AvoidLeft).Union(l.AvoidRight)
}

// bothSides returns l with what is kept from the left and from the right in Avoid alone,
// so that the same limits are always written alike.
func (l Limits) bothSides() Limits {
	l.Avoid = l.Avoid.Union(l.AvoidLeft.Both(l.AvoidRight))
	l.AvoidLeft &^= l.Avoid
	l.AvoidRight &^= l.Avoid
	return l
}

// onSide returns limits that come from one place with what the arm or the leg there is to
// avoid kept from its side alone. Of both sides, or of one not given, they stay as they are.
func (l Limits) onSide(place body.Region, side body.Side) Limits {
	own := ofLimb[place].Both(l.Avoid)
	switch side {
	case body.Left:
		l.Avoid, l.AvoidLeft = l.Avoid&^own, l.AvoidLeft.Union(own)
	case body.Right:
		l.Avoid, l.AvoidRight = l.Avoid&^own, l.AvoidRight.Union(own)
	}
	return l
}

func ofOneSide(avoid body.Demands) error {
	if other := avoid &^ (ofArms | ofLegs); other != 0 {
		return field.Bad(uint64(other), "demands of one arm or leg: "+ofArms.Union(ofLegs).String(), field.ErrUnknown)
	}
	return nil
}

// inOneArm are conditions that spare an arm: the one in which their events say they are.
var inOneArm = map[Code]bool{"shoulder_replacement": true, "rotator_cuff_repair": true, "pacemaker": true, "icd": true}

// itsSide returns what follows from an entry with what it spares of the arms kept from one
// side, where all events of it were on that side.
func (p *Profile) itsSide(e *entry, follows effect) effect {
	var side body.Side
	for _, event := range p.Events {
		switch {
		case !inOneArm[e.code] || !event.is(e.code):
		case side != 0 && side != event.Side || event.Side == 0:
			return follows
		default:
			side = event.Side
		}
	}
	follows.limits = follows.limits.onSide(body.Shoulder, side)
	return follows
}
