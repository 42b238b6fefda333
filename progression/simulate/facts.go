package simulate

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

// Facts of this package.
const (
	factFirstYear evidence.FactID = "progression.log-weeks"
	factSixthYear evidence.FactID = "progression.log-weeks-sixth-year"
	factPower     evidence.FactID = "progression.power-of-weeks"
	factTrials    evidence.FactID = "progression.trials-against-none"
	factLegs      evidence.FactID = "progression.legs-one-or-three-sets"
	factLoad      evidence.FactID = "progression.gain-by-load"
	factReserve   evidence.FactID = "progression.gain-by-reserve"
	factFar       evidence.FactID = "progression.gain-far-from-failure"
	factSets      evidence.FactID = "progression.gain-by-sets"
	factSetsUsed  evidence.FactID = "progression.gain-by-sets-used"
	factNoLoad    evidence.FactID = "progression.gain-without-load"
	factVisit     evidence.FactID = "progression.visit-of-two"
	factOff       evidence.FactID = "progression.twelve-weeks-off"
	factLoss      evidence.FactID = "progression.loss-a-week"
	factKept      evidence.FactID = "progression.kept-a-week"
	factRegain    evidence.FactID = "progression.regain"
	factSpread    evidence.FactID = "progression.spread-of-gains"
	factSame      evidence.FactID = "progression.no-spread-of-gains"
	factTelling   evidence.FactID = "progression.reserve-told-simulated"
	factPeople    evidence.FactID = "progression.people-simulated"
	factRestTakes evidence.FactID = "progression.rest-takes"
	factLeftTakes evidence.FactID = "progression.reserve-spares"
	factTires     evidence.FactID = "progression.tiring-simulated"
	factHome      evidence.FactID = "progression.attendance-at-home"
	factAlone     evidence.FactID = "progression.alone-ends-earlier"
	factAtHome    evidence.FactID = "progression.home-simulated"
	factWorks     evidence.FactID = "progression.visit-that-works"
)

// Values that nothing but a fact prints.
const (
	slopeOld = 0.020 // in logarithms, for each ten points of the 1RM
	logGain  = 0.25
)

var gainFacts = []evidence.Fact{
	{ID: factFirstYear, Value: fmt.Sprintf("14,690 people of 48 (11) years, once a week, single sets: strength grows with the logarithm of the weeks, by %v to %v %% in the first year and 50 to 60 %% by the sixth", firstYearLow, firstYearHigh), Source: "steele2022", Basis: evidence.Published},
	{ID: factSixthYear, Value: fmt.Sprintf("40 %% at %v weeks give 58 %% at 313", weeksAYear), Basis: evidence.Computed, From: []evidence.FactID{factFirstYear}},
	{ID: factPower, Value: fmt.Sprintf("strength as a power of the weeks, %.3f at the reference dose of %v %% of the 1RM, two to three sets, twice a week: 24 %% at 12 weeks; counted from a first week", FirstYear().exponent(), 100*referenceShare), Basis: evidence.Design, From: []evidence.FactID{factFirstYear}},
	{ID: factTrials, Value: "an extraction of 78 randomised trials of training against none, 36 with people of 50 and over on average; open data", Source: "steele2023", Basis: evidence.Published},
	{ID: factLegs, Value: "the 1RM of 34 untrained young adults before, during and after 12 weeks, one leg with one set, the other with three; open data", Source: "hammarstrom2020", Basis: evidence.Published},
	{ID: factLoad, Value: fmt.Sprintf("26 trials with people of 50 and over: the gain, in logarithms, rises by %.3f (0.001 to 0.042) for each ten points of the 1RM, %.2f of a gain of %v; used from %v to %v %%, flat above", slopeOld, perShare/10, logGain, 100*leastShare, 100*mostShare), Basis: evidence.Computed, From: []evidence.FactID{factTrials}},
	{ID: factNoLoad, Value: fmt.Sprintf("below %v %% of the 1RM the gain falls in a straight line to none without load", 100*leastShare), Basis: evidence.Design, From: []evidence.FactID{factLoad}},
	{ID: factReserve, Value: "41 people of 60 to 77 years, 12 weeks at 40 % of the 1RM: 23.5 % to failure, 23.3 % near it, 21.3 % with few repetitions", Source: "bergamasco2022", Locator: "abstract", Basis: evidence.Published},
	{ID: factFar, Value: fmt.Sprintf("the share of the gain by what is left: %v with %v left, in straight lines between them and flat beyond; one other trial, in which load and count differ too, lost half and more far from failure", reserveGain, reserveAt), Basis: evidence.Design, From: []evidence.FactID{factReserve}},
	{ID: factSets, Value: "31 untrained young adults, 12 weeks, leg against leg: one set gave 0.92, 0.90 and 0.85 of the gain of three, in logarithms", Basis: evidence.Computed, From: []evidence.FactID{factLegs}},
	{ID: factSetsUsed, Value: fmt.Sprintf("one, two and three sets give %v of the gain, the best of a visit first: below the young, since one set over three was 0.74 in older women", setGain), Basis: evidence.Design, From: []evidence.FactID{factSets}},
	{ID: factVisit, Value: fmt.Sprintf("each visit stands for %v week of two visits: once a week then gives about 0.8 of the gain, three times 1.1", perVisit), Basis: evidence.Design, From: []evidence.FactID{factPower}},
}

var lossFacts = []evidence.Fact{
	{ID: factOff, Value: "11 men of 65 to 77 years: 29.9 % of a gain of 40.4 % was lost in 12 weeks off", Source: "taaffe1997", Locator: "abstract", Basis: evidence.Published},
	{ID: factLoss, Value: fmt.Sprintf("%v %% of the trained strength a week, in logarithms", 100*lossAWeek), Basis: evidence.Computed, From: []evidence.FactID{factOff}},
	{ID: factKept, Value: fmt.Sprintf("nothing is lost within %d days of a visit, nor of the strength before all training", daysKept), Basis: evidence.Design, From: []evidence.FactID{factLoss}},
	{ID: factRegain, Value: fmt.Sprintf("what was lost comes back %d times as fast at the reference dose: 16 weeks off were made up in 8 by ten people of 63 to 68 years", regainTimes), Basis: evidence.Design, From: []evidence.FactID{factLoss}},
}

var peopleFacts = []evidence.Fact{
	{ID: factSpread, Value: "36 trials with people of 50 and over: the change of the trained is spread wider than that of the controls by 6.6 to 8.6 % of the strength at the start, about 0.28 of the mean gain", Basis: evidence.Computed, From: []evidence.FactID{factTrials}},
	{ID: factSame, Value: "102 trials: no wider spread after training, once the mean is allowed for", Source: "steele2026", Basis: evidence.Published},
	{ID: factTelling, Value: fmt.Sprintf("more left than told, on average and SD: %v and %v told %v, %v and %v told %v, %v and %v told %v; no measurement at this age",
		usualTelling.Near.More, usualTelling.Near.SD, anchors[0], usualTelling.Midway.More, usualTelling.Midway.SD, anchors[1], usualTelling.Far.More, usualTelling.Far.SD, anchors[2]),
		Basis: evidence.Design, From: []evidence.FactID{"progression.reserve-error"}},
	{ID: factPeople, Value: fmt.Sprintf("people who differ: growth lognormal with an SD of %v of its mean, %v to %v from day to day, telling shifted by an SD of %v and %v to %v times as wide, five curves, %v of the visits missed",
		growthSpread, lowDaySD, highDaySD, tellingShift, tellingNarrow, tellingWide, missedTenth), Basis: evidence.Design, From: []evidence.FactID{factSpread, factSame, factTelling}},
	{ID: factWorks, Value: fmt.Sprintf("a visit that works: %d sets or more, at least half of all at %v %% of the true 1RM or more or with %d or fewer left, none above %d repetitions; growth knows no such edge", workSets, 100*workShare, workLeft, workReps), Basis: evidence.Design},
}

var tiringFacts = []evidence.Fact{
	{ID: factRestTakes, Value: "knee extension at 80 % to failure, nine people of 36 years: 10.8, 5.6 and 4.8 repetitions a minute apart, 9.4, 7.0 and 6.4 three minutes apart", Source: "kneeextension2007", Locator: "abstract", Basis: evidence.Published},
	{ID: factLeftTakes, Value: "six sets of the bench press: speed fell by 22 % where they ended at failure, 9 % at one left, 6 % at three", Source: "refalo2023b", Locator: "abstract", Basis: evidence.Published},
	{ID: factTires, Value: fmt.Sprintf("a set to failure takes %v of the repetitions of the next after %v seconds, %v more with each set, and %v of that with %v left; nobody has counted it below failure", restTakes, restAt, eachMore, leftTakes, leftAt), Basis: evidence.Design, From: []evidence.FactID{factRestTakes, factLeftTakes}},
}

var homeFacts = []evidence.Fact{
	{ID: factHome, Value: "21 trials, people of 60 and over: 67 % (47 to 97) of the sessions alone at home were done", Source: "manas2021", Locator: "abstract", Basis: evidence.Published},
	{ID: factAlone, Value: "45 trained adults, told to go to failure at the same load: 125 seconds alone, 147 watched, about two repetitions", Source: "steelealone", Basis: evidence.Published},
	{ID: factAtHome, Value: fmt.Sprintf("alone at home %v (SD %v, within %v to %v) of the visits are missed, nobody watches, and sets end %d repetitions earlier", homeMissed, homeMissedSD, homeLeast, homeMost, aloneEarly), Basis: evidence.Design, From: []evidence.FactID{factHome, factAlone}},
}

// Facts yields the facts behind virtual trainees: their growth and its loss, how they
// differ, tire, and train alone.
func Facts() iter.Seq[evidence.Fact] {
	return slices.Values(slices.Concat(gainFacts, lossFacts, peopleFacts, tiringFacts, homeFacts))
}
