package track

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Facts behind the model and the errors of tests.
const (
	factModel      evidence.FactID = "track.model"
	factFading     evidence.FactID = "track.fading"
	factErrors     evidence.FactID = "track.errors"
	factFirm       evidence.FactID = "track.firm"
	factDetectable evidence.FactID = "track.detectable"
	factWorthwhile evidence.FactID = "track.worthwhile"
	factPercent    evidence.FactID = "track.percent"
	factRetest     evidence.FactID = "track.retest"
	factLearned    evidence.FactID = "track.learned"
	factOlder      evidence.FactID = "track.reliability.older"
	factPhillips   evidence.FactID = "track.reliability.seventies"
	factLevinger   evidence.FactID = "track.reliability.fifties"
	factUsual      evidence.FactID = "track.reliability"
	factBench      evidence.FactID = "track.reliability.bench-press"
	factCurl       evidence.FactID = "track.reliability.leg-curl"
	factPress      evidence.FactID = "track.reliability.leg-press"
	factExtension  evidence.FactID = "track.reliability.leg-extension"

	// of other packages
	testAgain  evidence.FactID = "onerm.anchor.test"
	abilityFor evidence.FactID = "onerm.ability.seen"
	setError   evidence.FactID = "onerm.error.set"
	gainRanges evidence.FactID = "progression.gain-ranges"
)

// Facts yields every fact behind this package. They rest on facts of packages onerm
// and rule, which a ledger must hold too.
func Facts() iter.Seq[evidence.Fact] {
	return slices.Values(slices.Concat(modelFacts(), testFacts()))
}

func modelFacts() []evidence.Fact {
	percent := func(share float64) units.Fraction { return units.Fraction(share) }
	return []evidence.Fact{
		{ID: factModel, Value: fmt.Sprintf("strength varies by %v from day to day; its level steps by %v a day, its slope by %v; before anything was read the slope is 0 give or take %v a day", percent(daySD), percent(walkSD), percent(slopeSD), percent(firstSlope)), Basis: evidence.Design, From: []evidence.FactID{testAgain, abilityFor, gainRanges}},
		{ID: factFading, Value: fmt.Sprintf("a slope halves in %d weeks: mean gains of the second twelve weeks were 17 of 33 kg and 9 of 20 kg", fadingWeeks), Basis: evidence.Computed, From: []evidence.FactID{gainRanges}},
		{ID: factErrors, Value: fmt.Sprintf("within one person, beside the day, a measured 1RM errs by %v and an estimate by %v; what equation and person share is left out, and added back where repetitions to failure differ by more than %d from those that a track is mostly read from", percent(testSD), percent(toldSD), alike), Basis: evidence.Design, From: []evidence.FactID{setError, abilityFor}},
		{ID: factFirm, Value: fmt.Sprintf("that all these are off by a common factor is learned; that it is 1 is believed as if seen in %d readings", firmly), Basis: evidence.Design, From: []evidence.FactID{factModel}},
	}
}

func testFacts() []evidence.Fact {
	const abstract = "abstract"
	list := []evidence.Fact{
		{ID: factDetectable, Value: "the smallest change that shows between means of k and n tests: z·√(1/k + 1/n) typical errors, which are the standard deviation of differences over √2, or that between people times √(1 − their correlation)", Source: "hopkins2000", Basis: evidence.FromMemory},
		{ID: factWorthwhile, Value: fmt.Sprintf("the smallest worthwhile change: %v of the standard deviation between people", worthwhile), Source: "hopkins2000", Via: "a text on statistics of change (which one was not recorded)", Basis: evidence.Secondary},
		{ID: factPercent, Value: "errors of strength are shares, and are worked with as logarithms: the logarithm of one and the typical error is the standard deviation", Basis: evidence.CommonPractice},
		{ID: factRetest, Value: "the 1RM of 39 untrained young adults before training and again around the first session, both legs each; open data", Source: "hammarstrom2020", Basis: evidence.Published},
		{ID: factOlder, Value: "men of 60 to 87 years, 116 of them: a 1RM varies by 4.2 to 9.0 %; leg extension rose by 6.6 % to the second test and by 3.4 % to the third, other lifts by up to 2.3 %", Source: "schroeder2007", Basis: evidence.Published, Locator: abstract},
		{ID: factPhillips, Value: "47 people of 75 years: the bench press varies by 4.7 to 7.3 %; women's leg press rose by 3.6 % from the second test to the third", Source: "phillips2004", Basis: evidence.Published, Locator: abstract},
		{ID: factLevinger, Value: "53 untrained people of 51 years: typical errors of 2.2 to 10.1 %; the leg press rose by 1.6 %", Source: "levinger2009", Basis: evidence.Published, Locator: abstract},
		{ID: factUsual, Value: fmt.Sprintf("an older beginner's 1RM, where nothing nearer is known: a typical error of %v, and %v learned from the first test to the second", units.Fraction(usualError), units.Fraction(usualRise)), Basis: evidence.Design, From: []evidence.FactID{factOlder, factPhillips, factLevinger, factRetest}},
		{ID: factLearned, Value: "what the second test of a beginner is higher by is taken off a gain over the first, and is held to be as uncertain as it is large where a track reads a first test", Basis: evidence.Design, From: []evidence.FactID{factRetest, factOlder}},
	}
	for _, r := range reliabilities {
		if r.People == young {
			list = append(list, evidence.Fact{ID: r.Fact, Value: fmt.Sprintf("%s, %s: typical error %v, the second test %v above the first", r.Name, r.People, r.Typical, r.Rise), Basis: evidence.Computed, From: []evidence.FactID{factRetest, factPercent}})
		}
	}
	return list
}
