package visit

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

// Facts of this package, and of the rules that gates rest on.
const (
	factGates        evidence.FactID = "progression.gates"
	factOneMore      evidence.FactID = "progression.one-more"
	factHurt         evidence.FactID = "progression.hurt-in-another"
	factQueries      evidence.FactID = "progression.queries"
	factPerry        evidence.FactID = "progression.pain-gate"
	factTopOfRange   evidence.FactID = "progression.top-of-range"
	factRepsThenLoad evidence.FactID = "progression.reps-then-load"
	factZones        evidence.FactID = "progression.pain-zones"
	factOMNI         evidence.FactID = "progression.omni-below-8"
)

var visitFacts = []evidence.Fact{
	{ID: factGates, Value: "events, pain, range, technique, effort, repetitions, in this order; any may keep, ease or refer, only all together raise, and what is not known keeps", Basis: evidence.Design, From: []evidence.FactID{factPerry, factZones}},
	{ID: factOneMore, Value: "one repetition more than in the weakest set, up to the top of the range", Basis: evidence.Design, From: []evidence.FactID{factRepsThenLoad}},
	{ID: factHurt, Value: "pain that eases or stops an exercise holds the others of that visit of the same kind of movement (presses and other pushes; rows and pulls from above; squats, lunges and steps; else the same pattern) at the next one: no more weight, sets or repetitions, and no less in reserve", Basis: evidence.Design, From: []evidence.FactID{factZones}},
	{ID: factQueries, Value: fmt.Sprintf("a load that the kit does not make, or within %v %% of 2, ½, %v or 1/%v times the planned one, is asked about and not used, except that what was lighter counts for what it shows against the dose; where a visit has no other sets the load waits for two visits", 100*aboutSlip, perKilogram, perKilogram), Basis: evidence.Design},
}

// Facts yields the facts behind this package.
func Facts() iter.Seq[evidence.Fact] { return slices.Values(visitFacts) }
