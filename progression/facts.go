package progression

import (
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

// Facts of the rules that gates and decisions rest on.
const (
	factPerry        evidence.FactID = "progression.pain-gate"
	factTopOfRange   evidence.FactID = "progression.top-of-range"
	factSimplify     evidence.FactID = "progression.simplify"
	factSmallMuscles evidence.FactID = "progression.step-small-muscles"
	factRepsThenLoad evidence.FactID = "progression.reps-then-load"
	factGuidance     evidence.FactID = "progression.step-2-to-10"
	factZones        evidence.FactID = "progression.pain-zones"
	factCoarse       evidence.FactID = "progression.coarse-steps"
	factBridge       evidence.FactID = "progression.bridge"
	factOMNI         evidence.FactID = "progression.omni-below-8"
	factReserve      evidence.FactID = "progression.reserve-error"
)

const (
	factGates   evidence.FactID = "progression.gates"
	factOneMore evidence.FactID = "progression.one-more"
)

var gateFacts = []evidence.Fact{
	{ID: factGates, Value: "events, pain, range, technique, effort, repetitions, in this order; any may keep, ease or refer, only all together raise, and what is not known keeps", Basis: evidence.Design, From: []evidence.FactID{factPerry, factZones}},
	{ID: factOneMore, Value: "one repetition more than in the weakest set, up to the top of the range", Basis: evidence.Design, From: []evidence.FactID{factRepsThenLoad}},
}

// Facts yields the facts behind the gates and [Next]. Those of the rules and of
// programmes are in packages rule and programme.
func Facts() iter.Seq[evidence.Fact] { return slices.Values(slices.Concat(gateFacts, nextFacts)) }
