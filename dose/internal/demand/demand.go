package demand

import (
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// straining is what unloaded practice leaves out: it is at everyday effort.
var straining = body.DemandSet(body.AbdominalPressure)

// Clashes returns what the exercise demands and the limits rule out. Where support
// is needed, a free hand serves; without one a chair behind or somebody beside does, but
// not on one leg. What is avoided of the other side is none of an exercise that lets it rest.
func Clashes(o *screening.Outcome, ex *exercise.Exercise, side body.Side) body.Demands {
	limits := &o.Limits
	avoid := limits.Avoided(body.Both)
	if ex.OtherRests {
		avoid = limits.Avoided(side)
	}
	if o.Meanwhile == screening.UnloadedPractice {
		avoid = avoid.Union(straining)
	}
	if limits.LowImpact {
		avoid = avoid.Union(body.DemandSet(body.Impact))
	}
	if chairCounts(o, ex) {
		avoid &^= body.DemandSet(body.FreeStanding)
	}
	if limits.Support && !HandFree(ex.Hold) {
		avoid = avoid.Union(body.DemandSet(body.SingleLegStance))
		if !ex.Seat && o.Setting < screening.WithHelper {
			avoid = avoid.Union(body.DemandSet(body.FreeStanding))
		}
	}
	return ex.Demands.Both(avoid.Union(bodyOnArms(o, ex, side)))
}

// steadied are findings of people who may fall and do not faint: alone, a chair behind
// serves them.
var steadied = []screening.Code{"falls_risk", "frailty", "frailty_dose"}

// chairCounts reports whether standing alone is ruled out for nothing but such findings,
// and the exercise has a chair behind.
func chairCounts(o *screening.Outcome, ex *exercise.Exercise) bool {
	if !ex.Seat {
		return false
	}
	some := false
	for _, f := range o.Findings {
		if !f.Limits.Avoid.Has(body.FreeStanding) {
			continue
		}
		if !slices.Contains(steadied, f.Code) {
			return false
		}
		some = true
	}
	return some
}

// bodyOnArms returns the arm work that a limit on mass rules out for exercises
// without a weight: there the arms carry a share of the body that nobody weighed.
func bodyOnArms(o *screening.Outcome, ex *exercise.Exercise, side body.Side) body.Demands {
	var ruledOut body.Demands
	for _, limit := range o.Limits.Masses {
		if demand, some := limit.Region.Resisted(); some && ex.Hold == body.Unloaded && OfArm(limit.Region) && Binds(limit, ex, side) {
			ruledOut = ruledOut.Union(body.DemandSet(demand))
		}
	}
	return ruledOut
}

// HandFree reports whether a hold leaves a hand for a support.
func HandFree(h body.Hold) bool { return h == body.OneHand || h == body.OnLimb || h == body.Unloaded }

// Binds reports whether the limit is on work that the exercise does. One of no side is
// on either.
func Binds(limit screening.MassLimit, ex *exercise.Exercise, side body.Side) bool {
	ofOne := limit.Side == body.Left || limit.Side == body.Right
	if otherSide := ofOne && ex.OneSided && side != body.Both && limit.Side != side; otherSide && restsFor(limit.Region, ex) {
		return false
	}
	demand, some := limit.Region.Resisted()
	return !some || ex.Demands.Has(demand)
}

// restsFor reports whether one-sided work leaves the region of the other side without the
// weight. In work of a leg the other hand may hold it too; where both feet are on the
// ground the other leg bears it.
func restsFor(region body.Region, ex *exercise.Exercise) bool {
	ofLeg := ex.Demands.Both(body.DemandSet(body.HipResisted, body.KneeResisted, body.AnkleResisted)) != 0
	switch {
	case ex.OtherRests || ex.Hold == body.Unloaded:
		return true
	case OfArm(region):
		return !ofLeg && ex.Hold == body.OneHand || ex.Hold == body.OnLimb
	}
	return !ofLeg || ex.Hold == body.OnLimb || ex.Demands.Has(body.SingleLegStance)
}

// OfArm reports whether a region is of an arm.
func OfArm(region body.Region) bool {
	return region == body.Shoulder || region == body.Elbow || region == body.WristHand
}
