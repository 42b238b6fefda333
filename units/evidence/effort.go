package evidence

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units"
)

// ratingFacts tell how each value of the RIR-based scale in package units is
// known. Whole ratings follow RIR = 10 − rating.
var ratingFacts = map[float64]Fact{
	5:   {Source: "zourdos2021", Basis: Published},
	6:   {Source: "zourdos2016", Basis: FromMemory, Locator: "the scale's table"},
	7:   {Source: "zourdos2021", Basis: Published},
	7.5: {Source: "zourdos2016", Basis: FromMemory, Locator: "the scale's table"},
	8:   {Source: "zourdos2016", Basis: FromMemory, Locator: "the scale's table"},
	8.5: {Source: "zourdos2016", Basis: FromMemory, Locator: "the scale's table"},
	9:   {Source: "zourdos2016", Basis: Published, Locator: "abstract"},
	9.5: {Source: "zourdos2016", Basis: FromMemory, Locator: "the scale's table"},
	10:  {Source: "zourdos2016", Basis: Published, Locator: "abstract"},
}

// fiveOrSix is what is remembered of 5 beside what was read, and of 6.
var fiveOrSix = Fact{ID: "units.rpe-5-or-6", Source: "zourdos2016", Basis: FromMemory, Locator: "the scale's table",
	Value: "ratings of 5 and 6 stand in one row, for 4 to 6 in reserve; a later text has 5 alone, and goes before it"}

// RatingFact names the fact behind a rating of the RIR-based scale.
func RatingFact(rating float64) FactID { return FactID(fmt.Sprintf("units.rpe-%v", rating)) }

// UnitFacts yields the facts behind package units, which cannot name its own.
func UnitFacts() iter.Seq[Fact] {
	var list []Fact
	for rating, rir := range units.Ratings() {
		f := ratingFacts[rating]
		f.ID = RatingFact(rating)
		f.Value = fmt.Sprintf("a rating of %v stands for %v in reserve", rating, rir)
		list = append(list, f)
	}
	return slices.Values(append(list, fiveOrSix))
}
