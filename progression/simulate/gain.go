package simulate

import (
	"math"

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
// per cent a week there. It is a description of many people, no promise to one. The
// errors are [field.ErrOutOfRange] at /weeks and /percent of g, and at /at.
func (g LogGain) At(at float64) (percent, rate float64, err error) {
	var bad field.Errors
	if !(g.Weeks > 1) || math.IsInf(g.Weeks, 0) {
		bad.Add("/weeks", field.Bad(g.Weeks, "above 1 week", field.ErrOutOfRange))
	}
	if !(math.Abs(g.Percent) <= mostPercent) {
		bad.Add("/percent", field.Bad(g.Percent, "within 1000 %", field.ErrOutOfRange))
	}
	if !(at >= 1) || math.IsInf(at, 0) {
		bad.Add("/at", field.Bad(at, "1 week or more", field.ErrOutOfRange))
	}
	if err := bad.Err(); err != nil {
		return 0, 0, err
	}
	b := g.Percent / math.Log(g.Weeks)
	return b * math.Log(at), b / at, nil
}

const mostPercent = 1000

// exponent returns the power of the weeks that strength grows with: a gain in
// logarithms, so that a stronger answer to training is the same share of each week.
func (g LogGain) exponent() float64 {
	if g == (LogGain{}) {
		return 0
	}
	return math.Log1p(g.Percent/100) / math.Log(g.Weeks)
}

// times returns the gain of somebody whose strength grows so many times as fast.
func (g LogGain) times(factor float64) LogGain {
	g.Percent = min(100*math.Expm1(factor*math.Log1p(g.Percent/100)), mostPercent)
	return g
}
