package track

import (
	"math"
	"strconv"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Belief is what is known of level and slope on a day: a normal distribution. Its
// variances are the model's, before the factor of [Width].
type Belief struct {
	Day        units.Day `json:"day,omitzero"`
	Level      float64   `json:"level"`
	Slope      float64   `json:"slope,omitzero"` // a day
	LevelVar   float64   `json:"level_var"`
	Covariance float64   `json:"covariance,omitzero"`
	SlopeVar   float64   `json:"slope_var,omitzero"`
	// NoLevel: nothing is known of the level yet.
	NoLevel bool `json:"no_level,omitzero"`
	// Free is what one unit of a slope of which nothing is known adds to level and
	// slope; zeros where it is known.
	Free [2]float64 `json:"free,omitzero"`
}

// Known reports whether a level is known, with a variance that is no infinity.
func (b Belief) Known() bool { return !b.NoLevel && b.Free[0] == 0 && b.Day != 0 }

// after returns b so many days on.
func (b Belief) after(g gap, day units.Day) Belief {
	carried := b.Covariance + float64(g.reach*b.SlopeVar)
	return Belief{
		Day: day, NoLevel: b.NoLevel,
		Level:      b.Level + float64(g.reach*b.Slope),
		Slope:      g.keep * b.Slope,
		LevelVar:   b.LevelVar + float64(g.reach*(b.Covariance+carried)) + g.level,
		Covariance: float64(g.keep*carried) + g.both,
		SlopeVar:   float64(float64(g.keep*g.keep)*b.SlopeVar) + g.slope,
		Free:       [2]float64{b.Free[0] + float64(g.reach*b.Free[1]), g.keep * b.Free[1]},
	}
}

// seeing returns b after a value with a variance was seen of the level, where
// nothing in it is unknown.
func (b Belief) seeing(value, variance float64) Belief {
	v, f := value-b.Level, b.LevelVar+variance
	level, slope := b.LevelVar/f, b.Covariance/f
	b.Level += float64(level * v)
	b.Slope += float64(slope * v)
	b.SlopeVar = math.Max(0, b.SlopeVar-float64(slope*b.Covariance))
	b.Covariance = b.Covariance * variance / f
	b.LevelVar = b.LevelVar * variance / f
	return b
}

// A State is what a series of readings has shown so far: what was known before the
// readings of the latest day, and these in sum. The zero value has seen nothing. One
// whose Before is given begins with that instead of nothing.
//
// It is for one model; asked with another it answers for that, from that day on.
type State struct {
	Before Belief  `json:"before,omitzero"` // before the readings of its day
	Weight float64 `json:"weight,omitzero"` // sum of 1/variance of the day's readings
	Mean   float64 `json:"mean,omitzero"`   // their weighted mean
	// Within is the weighted sum of the squares about that mean, Logs the sum of the
	// logarithms of the variances, Count how many readings the day has.
	Within float64 `json:"within,omitzero"`
	Logs   float64 `json:"logs,omitzero"`
	Count  int     `json:"count,omitzero"`
	// Past is the likelihood of the days before.
	Past Likelihood `json:"past,omitzero"`
}

// Validate returns every bad field of s at once.
func (s State) Validate() error {
	var bad field.Errors
	b := s.Before
	if b.Day != 0 {
		bad.Add("/before/day", b.Day.Check())
	}
	for _, v := range []struct {
		path  string
		value float64
		least float64
	}{
		{"/before/level", b.Level, -mostValue}, {"/before/slope", b.Slope, -mostValue}, {"/before/level_var", b.LevelVar, 0},
		{"/before/slope_var", b.SlopeVar, 0}, {"/before/free/0", b.Free[0], 0}, {"/before/free/1", b.Free[1], 0},
		{"/weight", s.Weight, 0}, {"/mean", s.Mean, -mostValue}, {"/within", s.Within, 0}, {"/past/squares", s.Past.Squares, 0},
	} {
		if !(v.value >= v.least && v.value <= mostValue) {
			bad.Add(v.path, field.Bad(v.value, "a number from "+strconv.FormatFloat(v.least, 'g', -1, 64)+" to 1e150", field.ErrOutOfRange))
		}
	}
	if !(b.Covariance*b.Covariance <= (1+slack)*b.LevelVar*b.SlopeVar) {
		bad.Add("/before/covariance", field.Bad(b.Covariance, "one that the two variances allow", field.ErrConflict))
	}
	if s.Count < 0 || s.Past.Begun < 0 || s.Past.Readings < s.Past.Begun {
		bad.Add("/count", field.Bad(s.Count, "0 or more, here and in what is past", field.ErrOutOfRange))
	}
	if (s.Weight > 0) != (s.Count > 0) {
		bad.Add("/weight", field.Bad(s.Weight, "above 0 where readings are counted, and only there", field.ErrConflict))
	}
	if x := s.Logs + s.Past.Diffuse; x-x != 0 {
		bad.Add("/past/diffuse", field.Bad(x, "a finite number, with the logarithms of the day", field.ErrOutOfRange))
	}
	return bad.Err()
}

// slack is what rounding may add to a correlation of one.
const slack = 1e-9

// Seen returns what is known after one reading more. Its day must be that of the
// last one or later: the order within a day changes nothing but the last digits. An
// earlier day is a [field.ErrConflict], other errors name a field of the model
// ("/model/kind"), of s ("/state/mean") or of the reading ("/reading/value"); s stays as it was.
func (s State) Seen(m Model, r Reading) (State, error) {
	if err := m.Validate(); err != nil {
		return s, field.At("/model", err)
	}
	if err := s.Validate(); err != nil {
		return s, field.At("/state", err)
	}
	if err := m.takes(s.Before.Day, r); err != nil {
		return s, field.At("/reading", err)
	}
	s.add(m, r)
	return s, nil
}

// takes returns what is wrong with a reading after that day.
func (m Model) takes(last units.Day, r Reading) error {
	if err := m.check(r); err != nil {
		return err
	}
	if r.Day < last {
		return field.New("/day", r.Day, last.String()+" or later", field.ErrConflict)
	}
	return nil
}

// add counts a reading that was checked.
func (s *State) add(m Model, r Reading) {
	if r.Day != s.Before.Day {
		s.turn(m, r.Day)
	}
	variance := r.Variance + m.Noise
	weight := 1 / variance
	total := s.Weight + weight
	from := r.Value - s.Mean
	s.Mean += float64(weight / total * from)
	s.Within += float64(float64(weight*s.Weight/total*from) * from)
	s.Weight = total
	s.Logs += math.Log(variance)
	s.Count++
}

// turn ends the day and begins another.
func (s *State) turn(m Model, day units.Day) {
	switch {
	case s.Before.Day == 0:
		*s = State{Before: Belief{Day: day, NoLevel: true, SlopeVar: m.FirstSlope}}
		if m.Kind != LocalLevel && m.FirstSlope == 0 {
			s.Before.Free[1] = 1
		}
	default:
		*s = State{Past: s.Likelihood(m), Before: s.Now(m).after(m.gap(daysFrom(s.Before.Day, day)), day)}
	}
}

// meanVar returns the variance of the mean of the day's readings.
func (s State) meanVar(m Model) float64 { return 1/s.Weight + m.Day }

// Now returns what is known after all readings of s.
func (s State) Now(m Model) Belief {
	switch {
	case s.Count == 0:
		return s.Before
	case s.Before.NoLevel || s.Before.Free[0] != 0:
		return s.Before.first(s.Mean, s.meanVar(m))
	}
	return s.Before.seeing(s.Mean, s.meanVar(m))
}
