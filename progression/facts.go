package progression

import (
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

// Facts of rules and visits that decisions rest on.
const (
	factGates        evidence.FactID = "progression.gates"
	factSimplify     evidence.FactID = "progression.simplify"
	factSmallMuscles evidence.FactID = "progression.step-small-muscles"
	factGuidance     evidence.FactID = "progression.step-2-to-10"
	factCoarse       evidence.FactID = "progression.coarse-steps"
	factBridge       evidence.FactID = "progression.bridge"
	factOMNI         evidence.FactID = "progression.omni-below-8"
	factReserve      evidence.FactID = "progression.reserve-error"
)

// Facts yields the facts behind [Next]. Those of rules, visits and programmes are in
// packages of their own.
func Facts() iter.Seq[evidence.Fact] { return slices.Values(nextFacts) }
