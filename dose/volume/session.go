package volume

import (
	"errors"
	"fmt"
	"iter"
	"math"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Facts behind session load, monotony and strain.
const (
	factSessionLoad evidence.FactID = "volume.session-load"
	factMonotony    evidence.FactID = "volume.monotony"
	factStrain      evidence.FactID = "volume.strain"
)

// maxSession is the most minutes of a session: a day.
const maxSession = 24 * 60

// SessionLoad returns the load of a session, its rating times its minutes, in
// arbitrary units (Foster 2001). The rating is that of the whole session on
// the 0 to 10 scale [units.ScaleCR10], given about half an hour after it; on
// another scale it is a [field.ErrConflict], not given a [field.ErrMissing].
// Minutes beyond 0 to 1440 are a [field.ErrOutOfRange].
func SessionLoad(rating units.Effort, minutes float64) (float64, error) {
	var bad field.Errors
	const scale = "a rating on the scale cr10"
	if rating.IsZero() {
		bad.Add("/rating", field.Bad(nil, scale, field.ErrMissing))
	} else if rating.Scale() != units.ScaleCR10 {
		bad.Add("/rating", field.Bad(rating, scale, field.ErrConflict))
	}
	if !(minutes >= 0 && minutes <= maxSession) {
		bad.Add("/minutes", field.Bad(minutes, "0 to 1440 minutes", field.ErrOutOfRange))
	}
	if len(bad) > 0 {
		return 0, bad
	}
	return rating.Number() * minutes, nil
}

// Deviation is the standard deviation that monotony divides by. Foster's
// abstract and those who repeat his formula do not say which one, so it is
// always chosen.
type Deviation uint8

// Deviations.
const (
	_          Deviation = iota // not given: refused
	Sample                      // "sample": divides by n - 1
	Population                  // "population": divides by n
)

var deviations = field.NewVocabulary[Deviation]("deviation", "", "sample", "population")

// Deviations yields every deviation.
func Deviations() iter.Seq[Deviation] { return deviations.All() }

// String returns "sample" or "population", and "" for not given.
func (d Deviation) String() string { return deviations.Text(d) }

// MarshalText writes what String returns.
func (d Deviation) MarshalText() ([]byte, error) { return deviations.Marshal(d) }

// UnmarshalText reads what MarshalText writes.
func (d *Deviation) UnmarshalText(text []byte) error { return deviations.Unmarshal(text, d) }

// ErrUndefined: the deviation is zero or has no value, and so has monotony.
var ErrUndefined = errors.New("volume: monotony has no value")

// Spread is how evenly load is spread over days.
type Spread struct {
	Days      int       `json:"days"`
	Deviation Deviation `json:"deviation"`
	Weekly    float64   `json:"weekly"`   // the sum, in the unit of the daily loads
	Mean      float64   `json:"mean"`     // a day
	SD        float64   `json:"sd"`       // of the days
	Monotony  float64   `json:"monotony"` // mean ÷ SD
	Strain    float64   `json:"strain"`   // sum × monotony
	// EqualSessions says that all days with load had the same: then monotony
	// depends on nothing but how many they were, and says nothing of the load.
	EqualSessions bool `json:"equal_sessions,omitzero"`
}

// maxDaily keeps sums and squares finite.
const maxDaily = 1e12

// SpreadOf returns monotony and strain of daily loads, rest days as zeros
// among them (Foster 1998); a week has seven. No days are a
// [field.ErrMissing]; loads below zero or above 10^12 a
// [field.ErrOutOfRange]. One day, or days that all have the same load, have no
// monotony: that is an [ErrUndefined].
func SpreadOf(daily []float64, d Deviation) (Spread, error) {
	if err := checkDaily(daily, d); err != nil {
		return Spread{}, err
	}
	out := Spread{Days: len(daily), Deviation: d, EqualSessions: equalSessions(daily)}
	for _, x := range daily {
		out.Weekly += x
	}
	n := float64(len(daily))
	out.Mean = out.Weekly / n
	squares := 0.0
	for _, x := range daily {
		squares += float64((x - out.Mean) * (x - out.Mean))
	}
	if d == Sample {
		n--
	}
	out.SD = math.Sqrt(squares / n)
	var err error
	if out.Monotony, err = Monotony(out.Mean, out.SD); err != nil {
		return Spread{}, err
	}
	out.Strain = out.Weekly * out.Monotony
	return out, nil
}

func checkDaily(daily []float64, d Deviation) error {
	var bad field.Errors
	bad.Add("", deviations.Check("/deviation", d))
	if len(daily) == 0 {
		bad.Add("/daily", field.Bad(nil, "the load of each day, 0 for rest", field.ErrMissing))
	}
	for i, x := range daily {
		if !(x >= 0 && x <= maxDaily) {
			bad.Add(fmt.Sprintf("/daily/%d", i), field.Bad(x, "0 to 10^12", field.ErrOutOfRange))
		}
	}
	if len(bad) == 0 && slices.Min(daily) == slices.Max(daily) {
		bad.Add("/daily", field.Bad(fmt.Sprintf("%d equal", len(daily)), "two days or more, not all with the same load", ErrUndefined))
	}
	return bad.Err()
}

// equalSessions reports whether all loads above zero are the same.
func equalSessions(daily []float64) bool {
	highest := slices.Max(daily)
	return !slices.ContainsFunc(daily, func(x float64) bool { return x != 0 && x != highest })
}

// Monotony returns mean ÷ SD of daily loads that were summed up elsewhere. A
// deviation of zero is an [ErrUndefined]; numbers below zero, or not
// finite, are a [field.ErrOutOfRange].
func Monotony(mean, sd float64) (float64, error) {
	ratio := mean / sd
	switch {
	case !(mean >= 0 && mean <= math.MaxFloat64 && sd >= 0 && sd <= math.MaxFloat64):
		return 0, field.Bad(fmt.Sprintf("%v ÷ %v", mean, sd), "a mean and a deviation of 0 or more", field.ErrOutOfRange)
	case sd == 0 || math.IsInf(ratio, 0):
		return 0, field.Bad(fmt.Sprintf("%v ÷ %v", mean, sd), "a deviation above 0", ErrUndefined)
	}
	return ratio, nil
}
