package exercise

import (
	"slices"
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A rung is one row of the standard table. Its place in the ladder gives the
// easier and the harder step.
type rung struct {
	id      ID
	name    string
	aliases []string
	pattern Pattern
	how     string

	muscles string // the listed exercise whose muscles these are
	nearest bool   // the list lacks this exercise; muscles is the nearest it has

	hold       body.Hold
	with       []Implement // empty: the usual one for the hold
	oneSided   bool
	turns      bool // the sides take turns within the set
	otherRests bool // of one-sided work: the other arm or leg
	lifts      bool // the body or a long limb is most of what is lifted

	seat      bool         // a chair stands behind
	handsBusy bool         // no hand is left to hold on with, though the hold leaves one
	demands   body.Demands // beside those of holding a weight
	chosen    bool         // the demands are our own cautious choice, not plain to see

	count counting
	first firstWeight
	warn  []warning         // beside those that hold by rule
	facts []evidence.FactID // further facts
}

// A ladder is a row of variants, easiest first.
type ladder struct {
	below ID // what the first rung is a harder variant of, where two ladders part
	rungs []rung
}

// heldWeight is what any weight in the hand demands, unless the lap or the
// hips bear it (fact exercise.held-weight).
var heldWeight = body.DemandSet(body.WristResisted, body.ElbowResisted, body.ShoulderResisted)

var standard = sync.OnceValue(func() Catalogue { return units.Must(Catalogue{}.With(exercises()...)) })

// Standard returns the catalogue of this module. It is made for dumbbells and
// adults over 50, and holds what else clinics and gyms have: every ladder begins
// with a movement without weight, so that unloaded practice, and a lightest
// weight that is too heavy, always have an answer. Dumbbells alone offer no
// vertical pull: that takes a machine, a cable or a bar to hang from.
func Standard() Catalogue { return standard() }

func exercises() []Exercise {
	var list []Exercise
	for _, l := range ladders() {
		for i, r := range l.rungs {
			e := r.exercise()
			if i == 0 {
				e.Easier = l.below
			} else {
				e.Easier = l.rungs[i-1].id
			}
			if i+1 < len(l.rungs) {
				e.Harder = l.rungs[i+1].id
			}
			list = append(list, e)
		}
	}
	return list
}

func (r rung) exercise() Exercise {
	e := Exercise{
		ID: r.id, Name: r.name, Aliases: r.aliases, Pattern: r.pattern, How: r.how,
		Hold: r.hold, Implements: r.implements(), OneSided: r.oneSided, Alternating: r.turns, Demands: r.allDemands(), Needs: neededBy(r.id),
		MovesBody: r.lifts || r.hold == body.Unloaded, HandsBusy: r.handsBusy, OtherRests: r.otherRests, Seat: r.seat,
		Measure: countings[r.count].measure,
		Count:   countings[r.count].count, CountFact: countings[r.count].fact,
		FirstMass: firstWeights[r.first].mass, FirstMassFact: firstWeights[r.first].fact,
		Heaviest: slices.Contains(r.facts, factHeaviest),
		Facts:    r.allFacts(),
	}
	e.MovedShare, e.MovedShareFact = movedBy(r.id)
	for _, m := range find(r.muscles) {
		e.Muscles = append(e.Muscles, Work{m.muscle, m.role, r.workFact(m.muscle)})
	}
	for _, w := range r.allWarnings() {
		e.Warnings = append(e.Warnings, warnings[w].reason())
	}
	return e
}

func (r rung) implements() []Implement {
	if r.with == nil {
		return inHold[r.hold][:1]
	}
	return r.with
}

// allWarnings lists the row's warnings and those that hold by rule: pain ends
// any exercise; a weight is taken from chair height and a bar from its rack
// wherever the exercise does not ask for a lift from the floor; on the floor a
// weight lies within reach; and a band is looked over.
func (r rung) allWarnings() []warning {
	all := append([]warning{painEnds}, r.warn...)
	switch {
	case r.hold == body.OnBand:
		all = append(all, bandCheck)
	case r.demands.Has(body.FloorTransfer) && inHand(r.hold) && r.hold != body.OnBar:
		all = append(all, floorReach)
	case r.demands.Has(body.PickUpFromFloor):
	case r.hold == body.OnBar:
		all = append(all, rackHeight)
	case inHand(r.hold):
		all = append(all, chairHeight)
	}
	return all
}

// inHand reports whether the hands take the weight up.
func inHand(h body.Hold) bool {
	switch h {
	case body.OneHand, body.OneEachHand, body.BothHandsOnOne, body.OnBar:
		return true
	}
	return false
}

// weighsOnHands reports whether the demands of a weight in the hand hold.
func (r rung) weighsOnHands() bool { return inHand(r.hold) && !r.borne() }

// borne reports whether the body bears the weight and the hands only steady it.
func (r rung) borne() bool { return slices.Contains(r.facts, factBorne) }

func (r rung) allDemands() body.Demands {
	if !r.weighsOnHands() {
		return r.demands
	}
	return r.demands.Union(heldWeight)
}

// allFacts lists the facts behind demands and all else that is not a number.
func (r rung) allFacts() []evidence.FactID {
	facts := []evidence.FactID{r.demandFact()}
	if r.weighsOnHands() {
		facts = append(facts, factHeldWeight)
	}
	switch {
	case r.hold == body.Unloaded:
		facts = append(facts, factMovesBodyUnloaded)
	case r.lifts && r.pattern == Hinge:
		facts = append(facts, factMovesBodyHinge)
	case r.lifts:
		facts = append(facts, factMovesBody)
	}
	if r.oneSided {
		facts = append(facts, factPerSide)
	}
	if slices.Equal(r.with, handWeights) {
		facts = append(facts, factKettlebell)
	}
	if _, some := byHeight[r.id]; some {
		facts = append(facts, factHeights)
	}
	for i, t := range neededBy(r.id) {
		if i == 0 {
			facts = append(facts, factServes)
		}
		facts = append(facts, t.fact())
	}
	return append(facts, r.facts...)
}

func (r rung) workFact(m body.Muscle) evidence.FactID {
	if r.nearest {
		return evidence.FactID("exercise." + string(r.id) + "." + m.String())
	}
	return listedFact(r.muscles, m)
}

func (r rung) demandFact() evidence.FactID {
	return evidence.FactID("exercise." + string(r.id) + ".demands")
}
