package onerm

import (
	"fmt"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Facts behind measured accuracy, levels and combinations.
const (
	factOpenSets   evidence.FactID = "onerm.open.sets"
	factOpenNear   evidence.FactID = "onerm.open.near"
	factOpenMid    evidence.FactID = "onerm.open.mid"
	factOpenFar    evidence.FactID = "onerm.open.far"
	factOpenBench  evidence.FactID = "onerm.open.bench"
	factOpenRank   evidence.FactID = "onerm.open.rank"
	factFewPeople  evidence.FactID = "onerm.open.people"
	factFloors     evidence.FactID = "onerm.open.floors"
	factMismatch   evidence.FactID = "onerm.open.mismatch"
	factSlip       evidence.FactID = "onerm.reserve.slip"
	factTired      evidence.FactID = "onerm.tired"
	factTableLevel evidence.FactID = "onerm.interval.level"
	factDayError   evidence.FactID = "onerm.error.day"
	factSetError   evidence.FactID = "onerm.error.set"
	factShared     evidence.FactID = "onerm.error.shared"
	factUnfit      evidence.FactID = "onerm.unfit"
)

// measuredFacts are what was worked out from the open data, and the choices
// that rest on it.
func measuredFacts() []evidence.Fact {
	sets := []evidence.FactID{factOpenSets, practisedFormula.Fact()}
	percent := func(share float64) units.Fraction { return units.Fraction(share) }
	return []evidence.Fact{
		{ID: factOpenSets, Value: "60 sets of the bench press to failure at 90, 80 and 70 % of a measured 1RM, in one visit and over several, by ten trained lifters (two records are probably one person) of 22 to 33 years; open data, Apache License 2.0", Source: "mitter2024", Basis: evidence.Published},
		{ID: factOpenNear, Value: fmt.Sprintf("O'Conner up to %d repetitions there: 37 sets, root mean square error %v, bias −0.7 %%, the least of the classical equations; Epley +3.9, Brzycki +1.5 %%", openNearReps, percent(openNear)), Basis: evidence.Computed, From: sets},
		{ID: factOpenRank, Value: fmt.Sprintf("of the classical equations O'Conner tells best there how often a load of 75 %% of the 1RM or more is lifted: of a set of somebody new the repetitions lie within a standard deviation of %v (bias, people and sets together, on logarithms), by Brzycki and Adams of %v", percent(openRank), percent(openRankNext)), Basis: evidence.Computed, From: []evidence.FactID{factOpenSets, practisedFormula.Fact(), Brzycki.Fact(), Adams.Fact()}},
		{ID: factFewPeople, Value: "errors that were measured in few people make intervals by Student's t with one degree of freedom fewer than people, times √(1 + 1/people): sets of one person share most of their error", Basis: evidence.Design, From: []evidence.FactID{factOpenSets}},
		{ID: factOpenMid, Value: fmt.Sprintf("O'Conner at 11 to 15 repetitions there: 17 sets, root mean square error %v, bias −4.6 %%", percent(openMid)), Basis: evidence.Computed, From: sets},
		{ID: factOpenFar, Value: fmt.Sprintf("O'Conner at 16 to 20 repetitions there: 5 sets, root mean square error %v", percent(openFar)), Basis: evidence.Computed, From: sets},
		{ID: factFloors, Value: fmt.Sprintf("no 95 %% interval of one set is narrower than ± %v up to 10 repetitions, ± %v at 11 to 15, ± %v above", percent(floorNear), percent(floorMid), percent(floorFar)), Basis: evidence.Design, From: sets},
		{ID: factOpenBench, Value: "errors by repetitions: the measured ones, but no less than the least half-widths and than the band before", Basis: evidence.Design, From: []evidence.FactID{factOpenNear, factOpenMid, factOpenFar, factFloors, factSlip, factFewPeople}},
		{ID: factMismatch, Value: "people and sets that an accuracy was not measured in keep the interval table's margin where it is wider", Basis: evidence.Design, From: []evidence.FactID{factColumns}},
		{ID: factSlip, Value: fmt.Sprintf("beside a measured accuracy a reserve counts as told with a standard deviation of %v repetition, %v with more than %d", slipNear, slipFar, wideReserve), Basis: evidence.Design, From: []evidence.FactID{factReserveNear, factReserveFar}},
		{ID: factTired, Value: fmt.Sprintf("a set done after others reads lower: by %v at 80 %% and by %v at 70 %% of the 1RM in the open data; the upper end moves up by that, by the latter above 10 repetitions", percent(tiredNear), percent(tiredFar)), Basis: evidence.Computed, From: sets},
		{ID: factTableLevel, Value: fmt.Sprintf("the interval table is a proposal for about %v; other levels, %v to %v, move its ends as those of normally distributed errors", tableLevel, leastLevel, mostLevel), Basis: evidence.Design, From: []evidence.FactID{factColumns}},
		{ID: factDayError, Value: fmt.Sprintf("an estimate's error that sets of one day share counts with a standard deviation of %v; nine pairs of one visit give 1.6 %%, and the smaller figure leaves more that sets do not average away", percent(dayError)), Basis: evidence.Design, From: sets},
		{ID: factSetError, Value: fmt.Sprintf("an estimate's error that is each set's own has a standard deviation of %v", percent(setError)), Basis: evidence.Computed, From: sets},
		{ID: factShared, Value: "what is left of an estimate's error is shared by all sets of a person, and more sets do not lessen it", Basis: evidence.Design, From: []evidence.FactID{factDayError, factSetError}},
		{ID: factUnfit, Value: fmt.Sprintf("a set that lies farther from the others than %v of sets would is named", unfitLevel), Basis: evidence.Design, From: []evidence.FactID{factDayError, factSetError}},
		{ID: factPractised, Value: fmt.Sprintf("in practised people O'Conner gives the best estimate from %d repetitions to failure on; the lower end stays with Epley and Brzycki, and the lower of these ties load and repetition maxima", practisedLeast), Basis: evidence.Design, From: []evidence.FactID{factMeneses, factOlderTrained, factOpenNear, factOpenRank}},
		{ID: factMeneses, Value: "16 trained men at 8 to 12RM: of six equations O'Conner was the best, or one of the two best, in bench press, front raise and knee extension", Source: "meneses2013", Basis: evidence.Published},
		{ID: factOlderTrained, Value: "at 10 repetitions equations made in trained older people multiply the load by 1.22 to 1.30, O'Conner by 1.25, Epley and Brzycki by 1.33", Basis: evidence.Computed, From: []evidence.FactID{Kemmler2006.Fact(), factCubics, Epley.Fact(), Brzycki.Fact(), OConner.Fact()}},
	}
}
