package rule

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/progression/internal/given"
	"example.org/posology/units/evidence"
)

// Facts of this package.
const (
	factGuidance     evidence.FactID = "progression.step-2-to-10"
	factBridge       evidence.FactID = "progression.bridge"
	factSmallMuscles evidence.FactID = "progression.step-small-muscles"
	factTwoForTwo    evidence.FactID = "progression.two-for-two"
	factRepsThenLoad evidence.FactID = "progression.reps-then-load"
	factRepsOrLoad   evidence.FactID = "progression.reps-or-load"
	factOMNI         evidence.FactID = "progression.omni-below-8"
	factFourWays     evidence.FactID = "progression.four-ways"
	factTopOfRange   evidence.FactID = "progression.top-of-range"
	factSimplify     evidence.FactID = "progression.simplify"
	factShare        evidence.FactID = "progression.step.share"
	factNewcomer     evidence.FactID = "progression.step.newcomer"
	factSmallSteps   evidence.FactID = "progression.small-steps"
	factPlainSteps   evidence.FactID = "progression.plain-steps"
	factPerry        evidence.FactID = "progression.pain-gate"
	factZones        evidence.FactID = "progression.pain-zones"
	factTableKg      evidence.FactID = "progression.set-to-set-kg"
	factPercent      evidence.FactID = "progression.set-to-set-percent"
	factReserve      evidence.FactID = "progression.reserve-error"
	factReserveGap   evidence.FactID = "progression.reserve-error-between"
	factCoarse       evidence.FactID = "progression.coarse-steps"
	factNoLadder     evidence.FactID = "progression.return-no-source"
	factDetraining   evidence.FactID = "progression.detraining"
)

const (
	nscaPages = "several lay pages that cite the textbook and, for the rule, Graves and Baechle"
	abstract  = "abstract"
)

var loadFacts = []evidence.Fact{
	{ID: factGuidance, Value: "add 2 to 10 % when 1 to 2 repetitions over the target can be done", Source: "kraemer2002", Locator: abstract, Basis: evidence.Published},
	{ID: factBridge, Value: "to land on r repetitions after a step of the fraction p, first reach r + p × (30 + r)",
		Basis: evidence.Computed, From: []evidence.FactID{"onerm.epley"}},
	{ID: factSmallMuscles, Value: "exercises of small muscles take the lower end", Source: "kraemer2002", Basis: evidence.FromMemory},
	{ID: factTwoForTwo, Value: fmt.Sprintf("%[2]d visits running, each with a final set at least %[1]d repetitions past its target: the next one is heavier", twoOver, twoRunning), Source: "nscatextbook", Via: nscaPages, Basis: evidence.Secondary},
	{ID: factRepsThenLoad, Value: fmt.Sprintf("raise the repetitions with the same load until past the range, then add %v or more: the traditional form", traditionalStep), Source: "hostler2001", Basis: evidence.Published},
	{ID: factRepsOrLoad, Value: "39 untrained people, 10 weeks, leg against leg: 1RM from 52.90 to 69.05 kg with more load, from 51.67 to 66.82 kg with more repetitions, no difference", Source: "chaves2024", Locator: abstract, Basis: evidence.Published},
	{ID: factOMNI, Value: fmt.Sprintf("older adults: raise the load when the rating falls below %v of 10", given.OMNILimit), Source: "buskard2019", Basis: evidence.Published},
	{ID: factFourWays, Value: "82 people of 71.8 years, 11 weeks: rules by percentage, rating, repetitions and reserve gave the same strength and function; the rating was borne best and liked most", Source: "buskard2019", Basis: evidence.Published},
	{ID: factTopOfRange, Value: fmt.Sprintf("older adults: once %d sets of %d are reached, the load that allows only %d", topSets, topReps, bottomReps), Source: "gearhart2009", Locator: abstract, Basis: evidence.Published},
	{ID: factSimplify, Value: fmt.Sprintf("make it easier after %d or more sessions in a row below the dose; harder, one thing only, once the dose is passed again and again; weeks 1 and 2 are for learning", simplifyAfter), Source: "homeprotocol", Locator: "Table 2", Basis: evidence.Published},
	{ID: factShare, Value: fmt.Sprintf("%v of the load, for anyone", nscaShare), Source: "nscatextbook", Via: nscaPages, Basis: evidence.Secondary},
	{ID: factNewcomer, Value: "a novice and, for the smaller step, an intermediate count as newcomers", Basis: evidence.Design},
	{ID: factSmallSteps, Value: fmt.Sprintf("add %v when the final set reaches %d, %v from %d on; equal strength over 8 weeks, small steps came 4 and 2 times as often and frustrated less",
		trialSteps[0].step, trialSteps[0].from, trialSteps[1].step, trialSteps[1].from), Source: "hostler2001", Basis: evidence.Published},
	{ID: factPlainSteps, Value: fmt.Sprintf("add %v in the bench press, %v in the triceps press, at %d repetitions", trialSteps[2].step, trialSteps[3].step, trialSteps[2].from), Source: "hostler2001", Basis: evidence.Published},
}

var painFacts = []evidence.Fact{
	{ID: factPerry, Value: fmt.Sprintf("the load rises with pain below %v of 10, the full available range and the target repetitions", perryLimit), Source: "perry2005", Via: "a later report of its rule", Basis: evidence.Secondary},
	{ID: factZones, Value: "zones right after a session cut at 2 and 5 of 10; 76 people of 60 to 77 years with severe osteoarthritis of hip or knee", Source: "ageberg2010", Basis: evidence.Published},
}

var setFacts = []evidence.Fact{
	{ID: factTableKg, Value: fmt.Sprintf("target %v: %s", tableTarget, reserveText()), Source: "concurrent2024", Locator: "Table 1D", Basis: evidence.Published},
	{ID: factPercent, Value: fmt.Sprintf("change the load by %v %% for each half point that the rating is off the target", 100*perHalfPoint), Source: "helms2018", Basis: evidence.FromMemory},
	{ID: factReserve, Value: fmt.Sprintf("reserve is told to about %d repetition with 0 to %d left and missed by more than %d with 7 to 10 left", nearError, given.Countable, farError), Source: "hackett2017", Basis: evidence.Published},
	{ID: factReserveGap, Value: fmt.Sprintf("between %d and 7 in reserve the larger error is taken", given.Countable), Basis: evidence.Design, From: []evidence.FactID{factReserve}},
	{ID: factCoarse, Value: "where the next weight is further than the correction, repetitions are corrected; no rise exceeds the published 10 %, and none rests on memory", Basis: evidence.Design, From: []evidence.FactID{factGuidance}},
}

var breakFacts = []evidence.Fact{
	{ID: factNoLadder, Value: "no source gives a cut of the load by weeks off for older adults: the ladder is a choice of this module, on the cautious side", Basis: evidence.Design},
	{ID: factDetraining, Value: "103 studies: maximal force SMD -0.46 (-0.54 to -0.37) after time off, growing with it, larger over 65 and in the inactive", Source: "bosquet2013", Basis: evidence.Published},
}

// reserveText lists the rows of the table of kilograms.
func reserveText() string {
	text := ""
	for i, row := range slices.Backward(reserveRows) {
		text += fmt.Sprintf("%v in reserve %+.1f kg", between(row.low, row.high), row.change.Kilograms())
		if i > 0 {
			text += ", "
		}
	}
	return text
}

// Facts yields the facts behind this package.
func Facts() iter.Seq[evidence.Fact] {
	all := slices.Concat(loadFacts, painFacts, setFacts, breakFacts, knownFacts)
	for _, row := range stepRows {
		all = append(all, row.fact())
	}
	for _, r := range ladder {
		all = append(all, r.fact())
	}
	return slices.Values(all)
}
