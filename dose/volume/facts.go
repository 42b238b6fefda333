package volume

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

// Facts behind the counting of sets.
const (
	// factRoles: how muscle roles are read as direct and indirect.
	factRoles evidence.FactID = "volume.roles"
	// factPairs: a set of each side in turn is one set of the muscle group.
	factPairs evidence.FactID = "volume.pairs"
	// factLesserSide: where the sides differ, the lesser counts for the group.
	factLesserSide evidence.FactID = "volume.lesser-side"
	// factWorkingSets: only working sets count.
	factWorkingSets evidence.FactID = "volume.working-sets"
	// factRelative: relative volume.
	factRelative evidence.FactID = "volume.relative"
	// factEvenSides: both sides do as many sets.
	factEvenSides evidence.FactID = "volume.even-sides"
	// factOpposed: of two opposed movements neither goes without the other.
	factOpposed evidence.FactID = "volume.opposed"
	// factLiftingAlone: lifting does not make a week active.
	factLiftingAlone evidence.FactID = "volume.lifting-alone"
	// factDensity: volume load per minute, and mean load per repetition.
	factDensity evidence.FactID = "volume.density"
)

const viaDataPaper = "Table 2 of a data paper, Sci Data 2024 (doi 10.1038/s41597-024-03386-x)"

var ownFacts = []evidence.Fact{
	{ID: factRoles, Basis: evidence.Design,
		Value: "a prime muscle is trained directly, a synergist indirectly, a stabiliser not; the source defines direct and indirect by what was measured, not by a list of muscles"},
	{ID: factPairs, Basis: evidence.FromMemory,
		Value: "in one-sided work a set of each side counts as one set for the muscle group, not as two"},
	{ID: factLesserSide, Basis: evidence.Design, From: []evidence.FactID{factPairs},
		Value: "where the two sides did different numbers of sets, the muscle group has what the lesser side did"},
	{ID: factWorkingSets, Basis: evidence.FromMemory,
		Value: "only working sets count: warm-up sets and sets far from effort are left out in this literature; no source that was read gives one reserve that parts them"},
	{ID: factEvenSides, Basis: evidence.CommonPractice,
		Value: "the stronger side does no more than the weaker, unless that is wanted"},
	{ID: factOpposed, Basis: evidence.Design,
		Value: "where pushes are trained some pulls are asked for, and where squats are some hinges, and the other way round; no source that was read gives a ratio"},
	{ID: factLiftingAlone, Basis: evidence.CommonPractice,
		Value: "lifting alone does not meet the activity guidelines for older adults: balance work, aerobic minutes and, for bone, impact are items of their own"},
	{ID: factLoad, Basis: evidence.Published, Source: "ladlow2022", Locator: "Table 1",
		Value: "volume load is the sum over sets of repetitions × load; 3 sets of 8 at 65 kg make 1560 kg"},
	{ID: factDensity, Basis: evidence.Published, Source: "ladlow2022", Locator: "Table 1",
		Value: fmt.Sprintf("mean load is volume load ÷ repetitions, its share of 1RM is kept here to one part in %d, density is volume load ÷ minutes; the online table misprints the multiplier of a percentage as 5100", int(millionth))},
	{ID: factRelative, Basis: evidence.Published, Source: "kraft2014",
		Value: fmt.Sprintf("relative volume is sets × repetitions × share of 1RM, the share up to %d here", maxShare)},
	{ID: factSessionLoad, Basis: evidence.Secondary, Source: "foster2001", Via: viaDataPaper,
		Value: fmt.Sprintf("session load is the session's rating on a scale of 0 to 10 × its minutes, at most %d", maxSession)},
	{ID: factMonotony, Basis: evidence.Published, Source: "foster1998", Locator: "abstract",
		Value: "monotony is the mean of the daily loads of a week ÷ their standard deviation, rest days counting nought; which deviation is not said"},
	{ID: factStrain, Basis: evidence.Published, Source: "foster1998", Locator: "abstract",
		Value: "strain is the load of the week × its monotony"},
}

// Facts names the facts behind t: how sets are counted, and what is lifted.
func (t Totals) Facts() []evidence.FactID {
	return []evidence.FactID{factRoles, factPairs, factLesserSide, factWorkingSets, factLoad, factDensity}
}

// Facts names the facts behind monotony and strain.
func (s Spread) Facts() []evidence.FactID { return []evidence.FactID{factMonotony, factStrain} }

// Facts yields the facts behind this package.
func Facts() iter.Seq[evidence.Fact] {
	return slices.Values(slices.Concat(conventionFacts(), schemeFacts(), ownFacts))
}

func conventionFacts() []evidence.Fact {
	var list []evidence.Fact
	for c := range conventions.All() {
		weight := float64(indirect[c].halves) / 2
		list = append(list, evidence.Fact{ID: c.fact(), Basis: evidence.Published, Source: "pelland2024", Locator: "abstract",
			Value: fmt.Sprintf("in the %v convention an indirect set counts %v, a direct set 1", c, weight)})
	}
	return list
}

func schemeFacts() []evidence.Fact {
	var list []evidence.Fact
	for _, s := range schemes {
		list = append(list, evidence.Fact{ID: s.Fact, Basis: evidence.Published, Source: s.source, Value: s.describe() + "; " + s.Population})
	}
	return list
}
