package progression

import (
	"fmt"
	"iter"
	"slices"

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
	factComposite    evidence.FactID = "progression.pain-composite"
	factTableKg      evidence.FactID = "progression.set-to-set-kg"
	factPercent      evidence.FactID = "progression.set-to-set-percent"
	factReserve      evidence.FactID = "progression.reserve-error"
	factReserveGap   evidence.FactID = "progression.reserve-error-between"
	factCoarse       evidence.FactID = "progression.coarse-steps"
	factNoLadder     evidence.FactID = "progression.return-no-source"
	factDetraining   evidence.FactID = "progression.detraining"
	factRamp         evidence.FactID = "progression.athletes-ramp"
	factRampNumbers  evidence.FactID = "progression.athletes-ramp-numbers"
	factCovid        evidence.FactID = "progression.covid"
	factCovidEffort  evidence.FactID = "progression.covid-effort"
	factCovidAssess  evidence.FactID = "progression.covid-assess"
	factNoDeload     evidence.FactID = "progression.no-deload"
	factWeekOff      evidence.FactID = "progression.week-off"
	factRogerson     evidence.FactID = "progression.deload-athletes"
	factBell         evidence.FactID = "progression.deload-coaches"
	factOMNIMap      evidence.FactID = "progression.omni-leg-press"
	factMapDrifts    evidence.FactID = "progression.map-drifts"
	factOMNI65       evidence.FactID = "progression.omni-65-percent"
	factCR10         evidence.FactID = "progression.cr10"
	factDrift        evidence.FactID = "progression.cr10-drift"
	factBorgWomen    evidence.FactID = "progression.borg-young-women"
	factCardiac      evidence.FactID = "progression.cardiac-stages"
	factPeterson     evidence.FactID = "progression.mean-gain"
	factPetersonTwo  evidence.FactID = "progression.mean-gain-knee-and-pull"
	factRanges       evidence.FactID = "progression.gain-ranges"
	factEveryone     evidence.FactID = "progression.gain-everyone"
	factNoise        evidence.FactID = "progression.response-noise"
	factFirstYear    evidence.FactID = "progression.log-weeks"
	factSixthYear    evidence.FactID = "progression.log-weeks-sixth-year"
	factGates        evidence.FactID = "progression.gates"
	factOneMore      evidence.FactID = "progression.one-more"
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
	{ID: factOMNI, Value: fmt.Sprintf("older adults: raise the load when the rating falls below %v of 10", omniRaise), Source: "buskard2019", Basis: evidence.Published},
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
	{ID: factComposite, Value: "raise in the lowest zone, settled, not rising, full range and target met; ease above 5, unsettled, rising or range lost; else hold", Basis: evidence.Design, From: []evidence.FactID{factZones, factPerry}},
}

var setFacts = []evidence.Fact{
	{ID: factTableKg, Value: fmt.Sprintf("target %v: %s", tableTarget, reserveText()), Source: "concurrent2024", Locator: "Table 1D", Basis: evidence.Published},
	{ID: factPercent, Value: fmt.Sprintf("change the load by %v %% for each half point that the rating is off the target", 100*perHalfPoint), Source: "helms2018", Basis: evidence.FromMemory},
	{ID: factReserve, Value: fmt.Sprintf("reserve is told to about %d repetition with 0 to %d left and missed by more than %d with 7 to 10 left", nearError, countable, farError), Source: "hackett2017", Basis: evidence.Published},
	{ID: factReserveGap, Value: fmt.Sprintf("between %d and 7 in reserve the larger error is taken", countable), Basis: evidence.Design, From: []evidence.FactID{factReserve}},
	{ID: factCoarse, Value: "where the next weight is further than the correction, repetitions are corrected; no rise exceeds the published 10 %, and none rests on memory", Basis: evidence.Design, From: []evidence.FactID{factGuidance}},
}

var breakFacts = []evidence.Fact{
	{ID: factNoLadder, Value: "no source gives a cut of the load by weeks off for older adults: the ladder is a choice of this module, on the cautious side", Basis: evidence.Design},
	{ID: factDetraining, Value: "103 studies: maximal force SMD -0.46 (-0.54 to -0.37) after time off, growing with it, larger over 65 and in the inactive", Source: "bosquet2013", Basis: evidence.Published},
	{ID: factRamp, Value: "college athletes after 2 or more weeks off: limits for the first 2 to 4 weeks", Source: "caterisano2019", Basis: evidence.Published},
	{ID: factRampNumbers, Value: fmt.Sprintf("volume cut by %v in weeks 1 to 4, at most %v sessions in weeks 1 and 2, sets × repetitions × fraction of 1RM within %v", rampCuts, rampMost, rampRelative), Source: "caterisano2019", Basis: evidence.FromMemory},
	{ID: factCovid, Value: fmt.Sprintf("after covid-19 with symptoms: at least %d days without symptoms, then at least %d days at very low effort; for no other illness was such a number found", symptomFree, veryLow), Source: "salman2021", Basis: evidence.Published},
	{ID: factCovidEffort, Value: fmt.Sprintf("phases of at least %d days at %v, %v and %v on the scale from 6 to 20", phaseDays, phaseEfforts[0], phaseEfforts[1], phaseEfforts[2]), Source: "salman2021", Via: "later summaries", Basis: evidence.Secondary},
	{ID: factCovidAssess, Value: "a severe course, symptoms that last, or signs from the heart are assessed first", Source: "salman2021", Basis: evidence.Published},
	{ID: factNoDeload, Value: "nothing was found on planned lighter weeks in older adults: none by default; pain, soreness and stalled repetitions decide", Basis: evidence.Design},
	{ID: factWeekOff, Value: "a full week off brought no benefit and slightly less strength of the legs", Source: "coleman2024", Basis: evidence.FromMemory},
	{ID: factRogerson, Value: deloads[0].text(), Source: "rogerson2024", Basis: evidence.Published},
	{ID: factBell, Value: deloads[1].text(), Source: "bell2022", Basis: evidence.Published},
}

var mapFacts = []evidence.Fact{
	{ID: factOMNIMap, Value: "mean share of 1RM and SD at ratings of 4, 6 and 8 of 10, the same people before and after 12 weeks", Source: "gearhart2009", Locator: "congress abstract", Basis: evidence.Published},
	{ID: factMapDrifts, Value: "after 12 weeks of training ratings of 4, 6 and 8 stood for 24.2, 19.4 and 14.0 points more of the 1RM: a fixed map is wrong over time", Basis: evidence.Computed, From: []evidence.FactID{factOMNIMap}},
	{ID: factOMNI65, Value: "ratings after 4 and 12 repetitions at 65 % of 1RM: they depend on the repetitions, not on the load alone", Source: "robertson2003", Basis: evidence.Published},
	{ID: factCR10, Value: "ratings of 3 to 6 stand for 40 to 70 % of 1RM", Source: "buckley2011", Basis: evidence.Published},
	{ID: factDrift, Value: fmt.Sprintf("the rating rises by %v in %v repetitions from %v; above %v after %d the load is too heavy for %v", cr10Drift.Points, cr10Drift.Reps, cr10Drift.From, cr10Drift.TooHeavy, cr10Drift.FirstReps, cr10Drift.For), Source: "buckley2011", Basis: evidence.Published},
	{ID: factBorgWomen, Value: "mean rating and SD at 40, 57 and 70 % of 1RM", Source: "cotter2017", Basis: evidence.Published},
	{ID: factCardiac, Value: "four stages with ratings, shares of 1RM and repetitions; the 15 of the third rating is inferred from a print cut short", Source: "cardiacrehab2021", Locator: "Table 4", Basis: evidence.Published},
}

var gateFacts = []evidence.Fact{
	{ID: factGates, Value: "events, pain, range, technique, effort, repetitions, in this order; any may keep, ease or refer, only all together raise, and what is not known keeps", Basis: evidence.Design, From: []evidence.FactID{factPerry, factZones}},
	{ID: factOneMore, Value: "one repetition more than in the weakest set, up to the top of the range", Basis: evidence.Design, From: []evidence.FactID{factRepsThenLoad}},
}

var gainFacts = []evidence.Fact{
	{ID: factPeterson, Value: fmt.Sprintf("47 trials, 1079 people from 50 years: %s %v %%, %s %v %%", meanGains[0].Lift, meanGains[0].Percent, meanGains[1].Lift, meanGains[1].Percent), Source: "peterson2010", Locator: abstract, Basis: evidence.Published},
	{ID: factPetersonTwo, Value: fmt.Sprintf("%s %v %%, %s %v %%; which share belongs to which is from memory in one reading", meanGains[2].Lift, meanGains[2].Percent, meanGains[3].Lift, meanGains[3].Percent), Source: "peterson2010", Locator: abstract, Basis: evidence.FromMemory},
	{ID: factRanges, Value: "gains in kg at 12 and 24 weeks, mean, SE and range; the minus signs of the minima were lost in what was read and put back", Source: "churchwardvenne2015", Basis: evidence.Published},
	{ID: factEveryone, Value: "every participant improved in at least one outcome", Source: "churchwardvenne2015", Basis: evidence.Published},
	{ID: factNoise, Value: "102 trials, 3784 people: real differences between people in the response could hardly be told from noise", Source: "steele2026", Locator: "abstract of the preprint", Basis: evidence.Published},
	{ID: factFirstYear, Value: fmt.Sprintf("14,690 people of 48 (11) years, once a week, single sets: strength grows with the logarithm of the weeks, by %v to %v %% in the first year and 50 to 60 %% by the sixth", firstYearLow, firstYearHigh), Source: "steele2022", Basis: evidence.Published},
	{ID: factSixthYear, Value: fmt.Sprintf("40 %% at %v weeks give 58 %% at 313", weeksAYear), Basis: evidence.Computed, From: []evidence.FactID{factFirstYear}},
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

func (d Deload) text() string {
	if d.Days.Mean > 0 {
		return fmt.Sprintf("%d %s: %v (SD %v) days every %v (%v) weeks", d.People, d.Who, d.Days.Mean, d.Days.SD, d.Every.Mean, d.Every.SD)
	}
	return fmt.Sprintf("%d %s: %v days every %v weeks", d.People, d.Who, d.DaysRange, d.EveryWeek)
}

// Facts yields the facts behind this package.
func Facts() iter.Seq[evidence.Fact] {
	return func(yield func(evidence.Fact) bool) {
		all := slices.Concat(loadFacts, painFacts, setFacts, breakFacts, mapFacts, gateFacts, nextFacts, gainFacts)
		all = append(all, phaseFacts...)
		for _, row := range stepRows {
			all = append(all, row.fact())
		}
		for _, r := range ladder {
			all = append(all, r.fact())
		}
		for _, f := range all {
			if !yield(f) {
				return
			}
		}
	}
}
