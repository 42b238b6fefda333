package track

import (
	"fmt"
	"iter"
	"math"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// TrendKind says how a level moves. The zero value is "not given".
type TrendKind uint8

// Kinds of trend.
const (
	LocalLevel  TrendKind = iota + 1 // "local level": a random walk; forecasts are flat
	LinearTrend                      // "linear trend": with a slope that is a random walk
	DampedTrend                      // "damped trend": with a slope of which a share is kept each day
)

var trendKinds = field.NewVocabulary[TrendKind]("kind of trend", "", "local level", "linear trend", "damped trend")

// TrendKinds yields every kind of trend.
func TrendKinds() iter.Seq[TrendKind] { return trendKinds.All() }

// String returns the name, such as "damped trend".
func (k TrendKind) String() string { return trendKinds.Text(k) }

// MarshalText writes what String returns.
func (k TrendKind) MarshalText() ([]byte, error) { return trendKinds.Marshal(k) }

// UnmarshalText reads what MarshalText writes.
func (k *TrendKind) UnmarshalText(text []byte) error { return trendKinds.Unmarshal(text, k) }

// A Model says how a level moves and how it is read. Variances are in the square
// of the unit of the values; those of Level and Slope are of one day's step. The
// zero value is "not given".
//
// From one day to the next the level gains the slope and a step of variance Level,
// the slope keeps the share Keep of itself (all of it in a linear trend) and gains a
// step of variance Slope.
type Model struct {
	Kind  TrendKind `json:"kind"`
	Level float64   `json:"level,omitzero"` // variance of a day's step of the level, 0 or more
	Slope float64   `json:"slope,omitzero"` // variance of a day's step of the slope, 0 or more; 0 in a local level
	// Keep is the share of the slope that is left after a day, 0.5 to 0.9999, of a
	// damped trend alone.
	Keep float64 `json:"keep,omitzero"`
	// FirstSlope is the variance of the slope before anything was read, about 0;
	// 0 where nothing is known of it.
	FirstSlope float64 `json:"first_slope,omitzero"`
	Day        float64 `json:"day,omitzero"`   // variance that the readings of one day share, 0 or more
	Noise      float64 `json:"noise,omitzero"` // variance of each reading beside its own, 0 or more
	// Firm is how many readings the belief is worth that all these variances are
	// right, 0 to 1000. 0: they are taken as they are.
	Firm float64 `json:"firm,omitzero"`
}

const (
	leastKeep, mostKeep = 0.5, 0.9999
	mostFirm            = 1000
	mostValue           = 1e150 // of values and variances: their squares are still numbers
)

// Validate returns every bad field of m at once.
func (m Model) Validate() error {
	var bad field.Errors
	bad.Add("", trendKinds.Check("/kind", m.Kind))
	for _, v := range []struct {
		path  string
		value float64
	}{{"/level", m.Level}, {"/slope", m.Slope}, {"/first_slope", m.FirstSlope}, {"/day", m.Day}, {"/noise", m.Noise}} {
		bad.Add(v.path, checkVariance(v.value))
	}
	if !(m.Firm >= 0 && m.Firm <= mostFirm) {
		bad.Add("/firm", field.Bad(m.Firm, fmt.Sprintf("0 to %d readings", mostFirm), field.ErrOutOfRange))
	}
	if m.Kind == LocalLevel && m.Slope != 0 {
		bad.Add("/slope", field.Bad(m.Slope, "0 in a local level", field.ErrConflict))
	}
	if m.Kind == LocalLevel && m.FirstSlope != 0 {
		bad.Add("/first_slope", field.Bad(m.FirstSlope, "0 in a local level", field.ErrConflict))
	}
	switch {
	case m.Kind == DampedTrend && !(m.Keep >= leastKeep && m.Keep <= mostKeep):
		bad.Add("/keep", field.Bad(m.Keep, fmt.Sprintf("%v to %v", leastKeep, mostKeep), field.ErrOutOfRange))
	case m.Kind != DampedTrend && m.Keep != 0:
		bad.Add("/keep", field.Bad(m.Keep, "nothing without damping", field.ErrConflict))
	}
	return bad.Err()
}

func checkVariance(v float64) error {
	if !(v >= 0 && v <= mostValue) {
		return field.Bad(v, "a variance, 0 to 1e150", field.ErrOutOfRange)
	}
	return nil
}

// The numbers of [StrengthModel]. Standard deviations are of logarithms, and so shares.
const (
	daySD       = 0.042  // of strength from day to day
	walkSD      = 0.008  // of a day's step of the level: 0.015 from visit to visit at two a week
	slopeSD     = 0.0001 // of a day's step of the slope
	firstSlope  = 0.004  // of the slope before anything is known: 60 days of it are a gain of a quarter
	fadingWeeks = 12     // after which half of the slope is left
	firmly      = 6      // readings that the belief in these numbers is worth
)

// StrengthModel returns the model for the logarithm of a 1RM in an exercise that is
// trained: a damped trend whose slope halves in twelve weeks, as mean gains did in
// people over 65. How fast level and slope move is this module's own design.
func StrengthModel() Model {
	return Model{
		Kind: DampedTrend, Level: walkSD * walkSD, Slope: slopeSD * slopeSD,
		Keep: math.Exp2(-1.0 / (7 * fadingWeeks)), FirstSlope: firstSlope * firstSlope, Day: daySD * daySD, Firm: firmly,
	}
}

// A gap is what some days do to level and slope: the matrix [1 reach; 0 keep], and
// the variances that come on top.
type gap struct{ reach, keep, level, both, slope float64 }

// then returns what g and after it h do.
func (g gap) then(h gap) gap {
	carried := g.both + float64(h.reach*g.slope)
	return gap{
		reach: g.reach + float64(h.reach*g.keep),
		keep:  g.keep * h.keep,
		level: g.level + float64(h.reach*(g.both+carried)) + h.level,
		both:  float64(carried*h.keep) + h.both,
		slope: float64(float64(h.keep*h.keep)*g.slope) + h.slope,
	}
}

// day returns what one day does.
func (m Model) day() gap {
	g := gap{reach: 1, keep: 1, level: m.Level, slope: m.Slope}
	switch m.Kind {
	case DampedTrend:
		g.keep = m.Keep
	case LocalLevel:
		g.reach, g.keep = 0, 0
	}
	return g
}

// gap returns what so many days do, from 0. Doubling has sums of positive numbers
// alone, so that nothing cancels.
func (m Model) gap(days int) gap {
	if m.Kind == LocalLevel {
		return gap{level: float64(days) * m.Level}
	}
	all, power := gap{keep: 1}, m.day()
	for ; days > 0; days >>= 1 {
		if days&1 == 1 {
			all = all.then(power)
		}
		power = power.then(power)
	}
	return all
}

// days is how many days lie from one to another.
func daysFrom(from, to units.Day) int { return int(int64(to) - int64(from)) }
