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

// knownFacts are what was found beside the rules and what nothing here acts on:
// returns after illness, lighter weeks, maps between effort and load, gains. They
// are kept for people who look things up.
var knownFacts = []evidence.Fact{
	{ID: "progression.athletes-ramp", Value: "college athletes after 2 or more weeks off: limits for the first 2 to 4 weeks", Source: "caterisano2019", Basis: evidence.Published},
	{ID: "progression.athletes-ramp-numbers", Value: "volume cut by 50, 30, 20 and 10 % in weeks 1 to 4, at most 3 and 4 sessions in weeks 1 and 2, sets × repetitions × fraction of 1RM within 11 to 30", Source: "caterisano2019", Basis: evidence.FromMemory},
	{ID: "progression.covid", Value: "after covid-19 with symptoms: at least 7 days without symptoms, then at least 14 days at very low effort; for no other illness was such a number found", Source: "salman2021", Basis: evidence.Published},
	{ID: "progression.covid-effort", Value: "phases of at least 7 days at 6 to 8, 6 to 11 and 12 to 14 on the scale from 6 to 20", Source: "salman2021", Via: "later summaries", Basis: evidence.Secondary},
	{ID: "progression.covid-assess", Value: "a severe course, symptoms that last, or signs from the heart are assessed first", Source: "salman2021", Basis: evidence.Published},
	{ID: "progression.no-deload", Value: "nothing was found on planned lighter weeks in older adults: none by default; pain, soreness and stalled repetitions decide", Basis: evidence.Design},
	{ID: "progression.week-off", Value: "a full week off brought no benefit and slightly less strength of the legs", Source: "coleman2024", Basis: evidence.FromMemory},
	{ID: "progression.deload-athletes", Value: "246 competitive strength and physique athletes: 6.4 (SD 1.7) days every 5.6 (2.3) weeks", Source: "rogerson2024", Basis: evidence.Published},
	{ID: "progression.deload-coaches", Value: "18 strength and physique coaches: 5 to 7 days every 4 to 6 weeks", Source: "bell2022", Basis: evidence.Published},

	{ID: "progression.omni-leg-press", Value: "older adults, about 64 years, leg press: mean share of 1RM and SD in % at ratings of 4, 6 and 8 of 10 were 36.84 (11.23), 54.72 (10.56) and 72.58 (12.22) before, 61.08 (14.91), 74.07 (11.14) and 86.56 (8.43) after 12 weeks of training, the same people", Source: "gearhart2009", Locator: "congress abstract", Basis: evidence.Published},
	{ID: "progression.map-drifts", Value: "after 12 weeks of training ratings of 4, 6 and 8 stood for 24.2, 19.4 and 14.0 points more of the 1RM: a fixed map is wrong over time; use ratings to hold an effort, not to infer a load", Basis: evidence.Computed, From: []evidence.FactID{"progression.omni-leg-press"}},
	{ID: "progression.omni-65-percent", Value: "young adults, ratings of 10 after 4 and 12 repetitions at 65 % of 1RM: arm curl 3.6 and 8.2 in the working muscle, 2.4 and 6.7 in the whole body; knee extension 5.1 and 9.6, 4.2 and 7.6: they depend on the repetitions, not on the load alone", Source: "robertson2003", Basis: evidence.Published},
	{ID: "progression.cr10", Value: "a younger group, after 2 repetitions: ratings of 3 to 6 stand for 40 to 70 % of 1RM", Source: "buckley2011", Basis: evidence.Published},
	{ID: "progression.cr10-drift", Value: "the rating rises by 1 in 3 to 4 repetitions from 4 to 6; above 6 after 2 the load is too heavy for 12 to 15", Source: "buckley2011", Basis: evidence.Published},
	{ID: "progression.borg-young-women", Value: "trained young women, mean rating and SD: 11.26 (1.95) at 40 %, 13.94 (1.58) at 57 %, 15.52 (2.05) at 70 % of 1RM", Source: "cotter2017", Basis: evidence.Published},
	{ID: "progression.cardiac-stages", Value: "cardiac rehabilitation, ratings from 6 to 20, shares of 1RM and repetitions: at most 11, 30 % and more, 5 to 10; 12 to 13, 30 to 50 %, 10 to 15; 14 to 15, 40 to 60 %, 8 to 15; 60 to 80 %, 8 to 10; the 15 of the third rating is inferred from a print cut short", Source: "cardiacrehab2021", Locator: "Table 4", Basis: evidence.Published},

	{ID: "progression.mean-gain", Value: "47 trials, 1079 people from 50 years: leg press 29 (2) %, chest press 24 (2) %; of what kind the uncertainty is was not seen", Source: "peterson2010", Locator: abstract, Basis: evidence.Published},
	{ID: "progression.mean-gain-knee-and-pull", Value: "knee extension 33 (3) %, lat pull 25 (2) %; which share belongs to which is from memory in one reading", Source: "peterson2010", Locator: abstract, Basis: evidence.FromMemory},
	{ID: "progression.gain-ranges", Value: "older men and women, gains in kg, mean (SE), least to most: leg press at 12 weeks 33 (2), -36 to 87, at 24 weeks 50 (3), -28 to 145; leg extension at 12 weeks 20 (1), -22 to 56, at 24 weeks 29 (2), -19 to 60; the minus signs of the minima were lost in what was read and put back", Source: "churchwardvenne2015", Basis: evidence.Published},
	{ID: "progression.gain-everyone", Value: "every participant improved in at least one outcome", Source: "churchwardvenne2015", Basis: evidence.Published},
	{ID: "progression.response-noise", Value: "102 trials, 3784 people: real differences between people in the response could hardly be told from noise: nobody is labelled by them", Source: "steele2026", Locator: "abstract of the preprint", Basis: evidence.Published},
}
