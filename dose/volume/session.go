package volume

import (
	"fmt"
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
	bad.Refuse(rating.IsZero(), "/rating", nil, scale, field.ErrMissing)
	bad.Refuse(!rating.IsZero() && rating.Scale() != units.ScaleCR10, "/rating", rating, scale, field.ErrConflict)
	bad.Refuse(!(minutes >= 0 && minutes <= maxSession), "/minutes", minutes, "0 to 1440 minutes", field.ErrOutOfRange)
	if len(bad) > 0 {
		return 0, bad
	}
	return rating.Number() * minutes, nil
}

// Spread is how evenly load is spread over days.
type Spread struct {
	Days     int     `json:"days"`
	Weekly   float64 `json:"weekly"`   // the sum, in the unit of the daily loads
	Mean     float64 `json:"mean"`     // a day
	SD       float64 `json:"sd"`       // of the days
	Monotony float64 `json:"monotony"` // mean ÷ SD
	Strain   float64 `json:"strain"`   // sum × monotony
	// EqualSessions says that all days with load had the same: then monotony
	// depends on nothing but how many they were, and says nothing of the load.
	EqualSessions bool `json:"equal_sessions,omitzero"`
}

// maxDaily keeps sums and squares finite.
const maxDaily = 1e12

// SpreadOf returns monotony and strain of daily loads, rest days as zeros
// among them (Foster 1998); a week has seven. Foster's abstract and those who
// repeat his formula do not say which standard deviation they divide by, so both
// are returned: that of a sample, which divides by n - 1, and that of a population,
// which divides by n. No days are a [field.ErrMissing]; loads below zero or above
// 10^12 a [field.ErrOutOfRange]. One day, or days that all have the same load, have
// no monotony: that is a [field.ErrConflict].
func SpreadOf(daily []float64) (sample, population Spread, err error) {
	if err := checkDaily(daily); err != nil {
		return Spread{}, Spread{}, err
	}
	n := float64(len(daily))
	weekly, squares := 0.0, 0.0
	for _, x := range daily {
		weekly += x
	}
	mean := weekly / n
	for _, x := range daily {
		squares += float64((x - mean) * (x - mean))
	}
	both := [2]Spread{}
	for i, by := range []float64{n - 1, n} {
		one := Spread{Days: len(daily), Weekly: weekly, Mean: mean, SD: math.Sqrt(squares / by), EqualSessions: equalSessions(daily)}
		if one.Monotony, err = monotony(mean, one.SD); err != nil {
			return Spread{}, Spread{}, err
		}
		one.Strain = weekly * one.Monotony
		both[i] = one
	}
	return both[0], both[1], nil
}

func checkDaily(daily []float64) error {
	var bad field.Errors
	bad.Refuse(len(daily) == 0, "/daily", nil, "the load of each day, 0 for rest", field.ErrMissing)
	for i, x := range daily {
		bad.Refuse(!(x >= 0 && x <= maxDaily), fmt.Sprintf("/daily/%d", i), x, "0 to 10^12", field.ErrOutOfRange)
	}
	bad.Refuse(len(bad) == 0 && slices.Min(daily) == slices.Max(daily), "/daily", fmt.Sprintf("%d equal", len(daily)), "two days or more, not all with the same load", field.ErrConflict)
	return bad.Err()
}

// equalSessions reports whether all loads above zero are the same.
func equalSessions(daily []float64) bool {
	highest := slices.Max(daily)
	return !slices.ContainsFunc(daily, func(x float64) bool { return x != 0 && x != highest })
}

// monotony returns mean ÷ SD of daily loads.
func monotony(mean, sd float64) (float64, error) {
	ratio := mean / sd
	if sd == 0 || math.IsInf(ratio, 0) {
		return 0, field.Bad(fmt.Sprintf("%v ÷ %v", mean, sd), "a deviation above 0", field.ErrConflict)
	}
	return ratio, nil
}
