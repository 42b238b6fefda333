package strength

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/internal/say"
	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Facts behind what is known of a person, and the chance that doses keep to.
const (
	factAbility       evidence.FactID = "onerm.ability"
	factCredit        evidence.FactID = "onerm.ability.credit"
	factSeen          evidence.FactID = "onerm.ability.seen"
	factSpread        evidence.FactID = "onerm.ability.spread"
	factLost          evidence.FactID = "onerm.ability.lost"
	factTimeOff       evidence.FactID = "onerm.time-off"
	factChanceReserve evidence.FactID = "onerm.chance.reserve"
	factChanceFinish  evidence.FactID = "onerm.chance.finish"

	factTestAge evidence.FactID = "dose.test-age"
	factQueried evidence.FactID = "dose.queried-tests"

	// Of package onerm.
	factTestAgain      evidence.FactID = "onerm.anchor.test"
	factTestAgainOlder evidence.FactID = "onerm.anchor.test-older"
	factOpenSets       evidence.FactID = "onerm.open.sets"
	factReserveBias    evidence.FactID = "onerm.reserve.bias"
	factReserveNear    evidence.FactID = "onerm.reserve.near"
	factReserveFar     evidence.FactID = "onerm.reserve.far"
)

// Facts yields the facts behind what is known of strength, and which tests count.
func Facts() iter.Seq[evidence.Fact] {
	return slices.Values(slices.Concat(abilityFacts(), testFacts()))
}

func testFacts() []evidence.Fact {
	return []evidence.Fact{
		{ID: factTestAge, Value: fmt.Sprintf("a test of strength is used for %s at most, and none from before an event that ends it", say.Weeks(given.TestDays)),
			Basis: evidence.Design, From: []evidence.FactID{"dose.retest"}},
		{ID: factQueried, Value: fmt.Sprintf("tests of strength are asked about and not used with a weight that the kit does not make, where one is %v times another of the exercise, side and hold or more, and where two of one day have intervals that do not overlap", given.AboutTwice), Basis: evidence.Design},
	}
}

func abilityFacts() []evidence.Fact {
	percent := func(share float64) units.Fraction { return units.Fraction(share) }
	tests := []evidence.FactID{factTestAgain, factTestAgainOlder}
	simulated := []evidence.FactID{factAbility, factCredit, factSeen, factSpread}
	return []evidence.Fact{
		{ID: factAbility, Value: fmt.Sprintf("what is known of a person's strength is kept, and dosed from, on one equation, %v: it has no end, and from 3.5 repetitions on load rises less with each than by Brzycki", dosing), Basis: evidence.Design, From: []evidence.FactID{dosing.Fact(), onerm.Brzycki.Fact()}},
		{ID: factCredit, Value: fmt.Sprintf("beyond those done so many repetitions are read as were told in reserve and %d more, up to %d told; above that %d. Where every set that was asked for was told above %d the visit shows a lower bound. Nothing else is taken from people's telling too few", toldShort, toldMost, toldMost+toldShort, toldFar), Basis: evidence.Design, From: []evidence.FactID{factReserveBias, factReserveNear}},
		{ID: factSeen, Value: fmt.Sprintf("the best set of a visit, or a test, lies around the state with a standard deviation of %v (the day's, and one to two repetitions of telling in about 13); from visit to visit the state drifts by %v; after the first it is known to %v. All three go by what was planned", percent(seenSD), percent(driftSD), percent(firstSD)), Basis: evidence.Design, From: append(tests, factReserveNear, factReserveFar)},
		{ID: factSpread, Value: fmt.Sprintf("strength varies by %v from day to day, and a person's curve by %v for each unit of the logarithm of load", percent(daySD), percent(curveSD)), Basis: evidence.Design, From: append(tests, factOpenSets)},
		{ID: factTimeOff, Value: "11 men of 65 to 77 years (6 had growth hormone while they trained): of a gain of 40.4 % in 24 weeks 29.9 % was gone after 12 weeks off", Source: "taaffe1997", Basis: evidence.Published, Locator: "abstract"},
		{ID: factLost, Value: fmt.Sprintf("while away %.2f %% of strength is lost a week", lostAWeek*100), Basis: evidence.Computed, From: []evidence.FactID{factTimeOff}},
		{ID: factChanceReserve, Value: fmt.Sprintf("a count done to its end leaves less than the reserve asked less one in at most %v of sets; a policy may choose %v to %v. In simulated beginners with few dumbbells half of %v held many back, and twice of it brought 5 to 7 %% of sets to failure for little", usualReserve, leastChance, mostReserve, usualReserve), Basis: evidence.Design, From: simulated},
		{ID: factChanceFinish, Value: fmt.Sprintf("one more than the count cannot be done in at most %v of sets, so that about 2 %% are not finished; a policy may choose %v to %v", usualFinish, leastChance, mostFinish), Basis: evidence.Design, From: simulated},
	}
}
