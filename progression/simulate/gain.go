package simulate

import (
	"fmt"
	"iter"
	"math"
	"slices"

	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A LogGain is a gain that grows with the logarithm of the weeks, as strength
// did in 14,690 people who trained once a week with single sets (Steele 2022):
// g = b·ln(weeks).
type LogGain struct {
	Percent float64 `json:"percent"` // gain, % of the strength at the start
	Weeks   float64 `json:"weeks"`   // at which it was reached, above 1
}

// FirstYear returns the gain half-way between the published 30 and 50 % of the
// first year, from which the published 50 to 60 % of the sixth follow.
func FirstYear() LogGain { return LogGain{(firstYearLow + firstYearHigh) / 2, weeksAYear} }

const (
	firstYearLow, firstYearHigh = 30.0, 50.0 // %
	weeksAYear                  = 52.0
)

// At returns the gain in per cent at so many weeks, 1 or more, and its rate in
// per cent a week there. It is a description of many people, no promise to one.
func (g LogGain) At(weeks float64) (percent, rate float64, err error) {
	var bad field.Errors
	if !(g.Weeks > 1) || math.IsInf(g.Weeks, 0) {
		bad.Add("/weeks", field.Bad(g.Weeks, "above 1 week", field.ErrOutOfRange))
	}
	if !(math.Abs(g.Percent) <= mostPercent) {
		bad.Add("/percent", field.Bad(g.Percent, "within 1000 %", field.ErrOutOfRange))
	}
	if !(weeks >= 1) || math.IsInf(weeks, 0) {
		bad.Add("/at", field.Bad(weeks, "1 week or more", field.ErrOutOfRange))
	}
	if err := bad.Err(); err != nil {
		return 0, 0, err
	}
	b := g.Percent / math.Log(g.Weeks)
	return b * math.Log(weeks), b / weeks, nil
}

const mostPercent = 1000

const (
	factFirstYear evidence.FactID = "progression.log-weeks"
	factSixthYear evidence.FactID = "progression.log-weeks-sixth-year"
)

var gainFacts = []evidence.Fact{
	{ID: factFirstYear, Value: fmt.Sprintf("14,690 people of 48 (11) years, once a week, single sets: strength grows with the logarithm of the weeks, by %v to %v %% in the first year and 50 to 60 %% by the sixth", firstYearLow, firstYearHigh), Source: "steele2022", Basis: evidence.Published},
	{ID: factSixthYear, Value: fmt.Sprintf("40 %% at %v weeks give 58 %% at 313", weeksAYear), Basis: evidence.Computed, From: []evidence.FactID{factFirstYear}},
}

// Facts yields the facts behind the gains of virtual trainees.
func Facts() iter.Seq[evidence.Fact] { return slices.Values(gainFacts) }
