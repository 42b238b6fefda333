package protocol

import (
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A layout is a scheme's sets as printed.
type layout struct {
	rm    int              // repetition maximum that fractions are shares of
	count units.Range[int] // of sets, where a range was printed; the layout has the fewest
	sets  []SchemeSet      // without masses
	step  units.Mass       // by which each set is lighter than the one before, where the fractions say nothing
	fact  evidence.FactID
	gives adjustments
}

// Adjustable sets, in their order of use.
const (
	thirdSet  = 3
	fourthSet = 4
)

// steady returns sets of the same repetitions at the given shares, of which
// the ones at the whole repetition maximum go to failure.
func steady(reps int, shares ...units.Fraction) []SchemeSet {
	var sets []SchemeSet
	for _, share := range shares {
		sets = append(sets, SchemeSet{Reps: reps, Share: share, ToFailure: share == 1})
	}
	return sets
}

// adjustable returns two sets that lead up and two with as many repetitions as
// possible, the last with a mass decided by the third.
func adjustable(first, second int) []SchemeSet {
	return []SchemeSet{{Reps: first, Share: 0.5}, {Reps: second, Share: 0.75}, {AsMany: true, Share: 1, ToFailure: true}, {AsMany: true, Adjusted: true, ToFailure: true}}
}

// rising returns a set at each repetition maximum.
func rising(maxima ...int) []SchemeSet {
	var sets []SchemeSet
	for _, rm := range maxima {
		sets = append(sets, SchemeSet{Reps: rm, RM: rm, ToFailure: true})
	}
	return sets
}

// tenSets are ten sets of ten whose loads a step tells; the first is at the 10RM.
func tenSets() []SchemeSet {
	sets := make([]SchemeSet, tens)
	for i := range sets {
		sets[i] = SchemeSet{Reps: tens, ToFailure: i == 0}
	}
	return sets
}

const tens = 10 // sets and repetitions of the original Oxford form

// poundStep is the small fixed step of the original Oxford form.
const poundStep = units.Pound

var layouts = [...]layout{
	DeLorme:             {rm: 10, fact: factDeLorme, sets: steady(10, 0.5, 0.75, 1)},
	OxfordThreeSet:      {rm: 10, fact: factOxfordThree, sets: steady(10, 1, 0.75, 0.5)},
	OxfordTenSetPound:   {rm: 10, fact: factOxfordTen, sets: tenSets(), step: poundStep},
	OxfordTenSetTenth:   {rm: 10, fact: factOxfordTenth, sets: steady(tens, 1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1)},
	MacQueenHypertrophy: {rm: 10, fact: factBulk, sets: steady(10, 1, 1, 1), count: units.Must(units.Between(3, 4))},
	MacQueenPower:       {rm: 10, fact: factPower, sets: rising(10, 8, 6, 4), count: units.Must(units.Between(4, 5))},
	DAPRE:               {rm: 6, fact: factDAPRE, sets: adjustable(10, 6), gives: adjustments{dapreFourth, dapreNext}},
	APRE10:              {rm: 10, fact: factAPRE, sets: adjustable(12, 10), gives: adjustments{apre10, apre10}},
	APRE6:               {rm: 6, fact: factAPRE, sets: adjustable(10, 6), gives: adjustments{apre6, apre6}},
	APRE3:               {rm: 3, fact: factAPRE, sets: adjustable(6, 3), gives: adjustments{apre3, apre3}},
}
