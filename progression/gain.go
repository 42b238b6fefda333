package progression

import (
	"math"

	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A MeanGain is a mean gain in strength of a meta-analysis.
type MeanGain struct {
	Lift        string          `json:"lift"`
	Percent     float64         `json:"percent"`     // of the strength at the start
	Uncertainty float64         `json:"uncertainty"` // as printed behind the mean; of what kind was not seen
	Fact        evidence.FactID `json:"fact"`
}

var meanGains = [...]MeanGain{
	{"leg press", 29, 2, factPeterson},
	{"chest press", 24, 2, factPeterson},
	{"knee extension", 33, 3, factPetersonTwo},
	{"lat pull", 25, 2, factPetersonTwo},
}

// MeanGains returns the mean gains of 47 trials with people from 50 years
// (Peterson 2010), in a list of the caller's own. The trials' mean length was
// not seen, so they tell no rate.
func MeanGains() []MeanGain { return append([]MeanGain(nil), meanGains[:]...) }

// A GainRange is how far the gains of people in one programme lay apart.
type GainRange struct {
	Lift  string          `json:"lift"`
	Weeks int             `json:"weeks"`
	Mean  float64         `json:"mean"` // kg
	SE    float64         `json:"se"`   // kg
	Min   float64         `json:"min"`  // kg; below nought: weaker than before
	Max   float64         `json:"max"`  // kg
	Fact  evidence.FactID `json:"fact"`
}

var gainRanges = [...]GainRange{
	{"leg press", 12, 33, 2, -36, 87, factRanges},
	{"leg press", 24, 50, 3, -28, 145, factRanges},
	{"leg extension", 12, 20, 1, -22, 56, factRanges},
	{"leg extension", 24, 29, 2, -19, 60, factRanges},
}

// GainRanges returns the gains of older men and women after 12 and 24 weeks
// (Churchward-Venne 2015), in a list of the caller's own. The reason says what
// they do not show: that people differ in how they respond could hardly be told
// from noise, and nobody is to be labelled by it.
func GainRanges() ([]GainRange, evidence.Reason) {
	return append([]GainRange(nil), gainRanges[:]...), evidence.Because("progression.response-noise", factEveryone, factNoise)
}

// GainRate returns the mean gain in kg a week between two rows of one lift; a
// zero from is the start. The second twelve weeks give half the first. Rows of
// two lifts, or not in their order, are an [field.ErrConflict].
func GainRate(from, to GainRange) (float64, error) {
	if from.Lift != "" && from.Lift != to.Lift || to.Weeks <= from.Weeks {
		return 0, field.New("/to", to.Weeks, "a later week of the same lift", field.ErrConflict)
	}
	rate := (to.Mean - from.Mean) / float64(to.Weeks-from.Weeks)
	if math.IsNaN(rate) || math.IsInf(rate, 0) {
		return 0, field.New("/to", to.Mean, "finite gains", field.ErrOutOfRange)
	}
	return rate, nil
}

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
