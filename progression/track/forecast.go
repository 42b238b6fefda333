package track

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// mostAhead is how many days ahead are foretold at most.
const mostAhead = 366

// A Forecast is what is known of a later day. It is no aim, and no promise.
type Forecast struct {
	Belief
	// Reading is the variance of one reading on that day about its level: of the day,
	// and of noise.
	Reading float64           `json:"reading,omitzero"`
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// Forecast looks ahead to a day, up to 366 after the last reading: the level goes on
// with its slope, as far as the model lets it, and is known the less the farther the
// day lies. Where nothing, or no slope, is known yet, the answer is not
// [Belief.Known]. The reading's variance leaves out what a reading has of its own.
// A day before the last one, or too far ahead, is a [field.ErrOutOfRange] for "/day".
func (s State) Forecast(m Model, day units.Day) (Forecast, error) {
	var bad field.Errors
	bad.Add("/model", m.Validate())
	bad.Add("/state", s.Validate())
	last := s.Before.Day
	if last == 0 {
		bad.Add("/state", field.Bad(nil, "a state that has seen a reading", field.ErrMissing))
	} else if n := daysFrom(last, day); n < 0 || n > mostAhead {
		bad.Add("/day", field.Bad(day, "the day of the last reading, or up to 366 days later", field.ErrOutOfRange))
	}
	if err := bad.Err(); err != nil {
		return Forecast{}, err
	}
	ahead := daysFrom(last, day)
	why := evidence.Because("track.ahead", factModel, factFading).With(evidence.Day("day", day), evidence.Days("days", ahead))
	return Forecast{Belief: s.Now(m).after(m.gap(ahead), day), Reading: m.Day + m.Noise, Reasons: []evidence.Reason{why}}, nil
}

// On returns what the whole series says of a day within it, with or without a
// reading. Another day is a [field.ErrOutOfRange].
func (t *Track) On(day units.Day) (Belief, error) {
	n := t.Len()
	if n == 0 || day < t.days[0] || day > t.days[n-1] {
		return Belief{}, field.New("/day", day, "a day from the first reading to the last", field.ErrOutOfRange)
	}
	i := t.place(day)
	if t.days[i] == day {
		return t.Smoothed(i), nil
	}
	there := t.Filtered(i).after(t.model.gap(daysFrom(t.days[i], day)), day)
	return there.smoothed(t.model.gap(daysFrom(day, t.days[i+1])), t.Smoothed(i+1)), nil
}

// Interval returns the interval that the level lies in with a probability of 0.5 to
// 0.99, in the unit of the values. A level or w out of range is a
// [field.ErrOutOfRange], b that is not [Belief.Known] a [field.ErrMissing].
func (b Belief) Interval(level units.Fraction, w Width) (units.Range[float64], error) {
	return b.interval(level, w, 0)
}

// ReadingInterval is Interval for one reading on that day, which beside the day's error
// and the model's noise has the variance given of its own.
func (f Forecast) ReadingInterval(level units.Fraction, w Width, own float64) (units.Range[float64], error) {
	if err := checkVariance(own); err != nil {
		return units.Range[float64]{}, field.At("/own", err)
	}
	return f.interval(level, w, f.Reading+own)
}

func (b Belief) interval(level units.Fraction, w Width, more float64) (units.Range[float64], error) {
	var bad field.Errors
	bad.Add("/level", checkLevel(level))
	bad.Add("/width", w.check())
	bad.Refuse(!b.Known(), "/belief", nil, "a level that is known", field.ErrMissing)
	if err := bad.Err(); err != nil {
		return units.Range[float64]{}, err
	}
	half := w.times(level) * math.Sqrt(math.Max(0, b.LevelVar)+more) // rounding may leave less than nothing
	return units.Between(b.Level-half, b.Level+half)
}

func checkLevel(level units.Fraction) error {
	if !(level >= 0.5 && level <= 0.99) {
		return field.Bad(float64(level), "0.5 to 0.99", field.ErrOutOfRange)
	}
	return nil
}

func (w Width) check() error {
	if !(w.Factor >= 0 && w.Factor <= mostValue) || !(w.Freedom >= 0 && w.Freedom <= mostValue) {
		return field.Bad(w.Factor, "a factor and degrees of freedom of 0 or more", field.ErrOutOfRange)
	}
	return nil
}

// factor is the standard deviation's.
func (w Width) factor() float64 {
	if w.Factor == 0 {
		return 1
	}
	return math.Sqrt(w.Factor)
}

// times returns how many standard deviations of the model the interval reaches to
// each side.
func (w Width) times(level units.Fraction) float64 {
	if w.Freedom == 0 {
		return w.factor() * normalWithin(level)
	}
	return w.factor() * distuv.StudentsT{Sigma: 1, Nu: w.Freedom}.Quantile((1+float64(level))/2)
}

// below returns the probability of lying below so many standard deviations of the
// model.
func (w Width) below(x float64) float64 {
	x /= w.factor()
	if w.Freedom == 0 {
		return math.Erfc(-x/math.Sqrt2) / 2
	}
	return distuv.StudentsT{Sigma: 1, Nu: w.Freedom}.CDF(x)
}

// OneRM returns what a belief of a logarithm of kg says as masses: the best guess, to the
// nearest gram, and the interval that the level lies in with a probability of 0.5 to
// 0.99, down and up to whole grams. It is the 1RM by the equation that the track was read with;
// what that equation and the person share of error is not in it. Errors are those of
// Interval, and a [field.ErrOverflow] for what fits no mass.
func (b Belief) OneRM(level units.Fraction, w Width) (units.Mass, units.Range[units.Mass], error) {
	var none units.Range[units.Mass]
	r, err := b.Interval(level, w)
	if err != nil {
		return 0, none, err
	}
	low, _ := r.Min()
	high, _ := r.Max()
	most, err := gramsUp(high)
	if err != nil {
		return 0, none, field.New("/belief", b.Level, "a logarithm of kg that fits a mass", field.ErrOverflow)
	}
	best := units.Must(units.Must(units.Kilograms(math.Exp(b.Level))).Rounded(units.Gram, units.Nearest))
	least := units.Must(units.Must(units.Kilograms(math.Exp(low))).Rounded(units.Gram, units.Down))
	within, err := units.Between(least, most)
	return best, within, err
}

func gramsUp(log float64) (units.Mass, error) {
	m, err := units.Kilograms(math.Min(math.Exp(log), math.MaxFloat64))
	if err != nil {
		return 0, err
	}
	return m.Rounded(units.Gram, units.Up)
}
