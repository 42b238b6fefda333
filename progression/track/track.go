package track

import (
	"fmt"
	"math"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Track is what a whole series of readings shows, day by day. The zero value is
// ready; run again, it uses its memory again. It is not for use by several goroutines at
// once.
type Track struct {
	model Model
	state State
	days  []units.Day
	// Of a local level, mean and variance of each day, filtered and smoothed.
	level, variance, smooth, smoothVar []float64
	// Of a model with a slope, the same as beliefs.
	filtered, smoothed []Belief
}

// Run reads a series that goes on from a state, the zero one for a beginning, and
// looks back from its end. The days must not fall; within a day the order changes
// nothing but the last digits. It takes time in proportion to the number of readings and, run
// again on as many, no memory. Every bad field is named ("/readings/7/variance"), up to
// a thousand, and no reading is a [field.ErrMissing]; then t is empty.
func (t *Track) Run(m Model, from State, readings []Reading) error {
	if t == nil {
		return field.New("", nil, "a track", field.ErrMissing)
	}
	t.empty()
	if err := m.checkSeries(from, readings); err != nil {
		return err
	}
	t.model, t.state = m, from
	if m.Kind == LocalLevel {
		t.walk(readings)
		t.walkBack()
		return nil
	}
	for i, r := range readings {
		t.state.add(m, r)
		if i+1 == len(readings) || readings[i+1].Day != r.Day {
			t.days = append(t.days, r.Day)
			t.filtered = append(t.filtered, t.state.Now(m))
		}
	}
	t.lookBack()
	return nil
}

func (t *Track) empty() {
	*t = Track{
		days: t.days[:0], level: t.level[:0], variance: t.variance[:0], smooth: t.smooth[:0], smoothVar: t.smoothVar[:0],
		filtered: t.filtered[:0], smoothed: t.smoothed[:0],
	}
}

const mostErrors = 1000

// checkSeries returns every bad field of what is to be run.
func (m Model) checkSeries(from State, readings []Reading) error {
	var bad field.Errors
	bad.Add("/model", m.Validate())
	bad.Add("/from", from.Validate())
	bad.Refuse(len(readings) == 0, "/readings", nil, "one reading or more", field.ErrMissing)
	last := from.Before.Day
	for i, r := range readings {
		if r.Day >= last && m.check(r) == nil {
			last = r.Day
			continue
		}
		bad.Add(fmt.Sprintf("/readings/%d", i), m.takes(last, r))
		if len(bad) >= mostErrors {
			break
		}
	}
	return bad.Err()
}

// walk is the way forward of a local level. The first day may begin the level; from
// then on all is two numbers.
func (t *Track) walk(readings []Reading) {
	m, i := t.model, 0
	for ; i < len(readings) && readings[i].Day == readings[0].Day; i++ {
		t.state.add(m, readings[i])
	}
	now, past := t.state.Now(m), t.state.Likelihood(m)
	t.grow(len(readings) - i + 1)
	t.days[0], t.level[0], t.variance[0] = now.Day, now.Level, now.LevelVar
	day, level, variance, product, n := now.Day, now.Level, now.LevelVar, 1.0, 1
	for ; i < len(readings); n++ {
		r, from := readings[i], i
		variance += float64(float64(daysFrom(day, r.Day)) * m.Level)
		day = r.Day
		for i++; i < len(readings) && readings[i].Day == day; i++ {
		}
		value, own := r.Value, r.Variance+m.Noise+m.Day
		if i-from > 1 || i == len(readings) { // several, or the last, which stays open
			past.Diffuse -= math.Log(product) / 2
			product = 1
			t.state = State{Before: Belief{Day: day, Level: level, LevelVar: variance}, Past: past}
			for _, r := range readings[from:i] {
				t.state.add(m, r)
			}
			value, own = t.state.Mean, t.state.meanVar(m)
			past.within(t.state)
		}
		v, f := value-level, variance+own
		gain, square := variance/f, v*v/f
		level += float64(gain * v)
		variance = gain * own
		t.days[n], t.level[n], t.variance[n] = day, level, variance
		past.Readings++
		past.Squares += square
		past.Diffuse -= (ln2Pi + square) / 2
		product *= f // one logarithm serves many days
		if product > 1e100 || product < 1e-100 {
			past.Diffuse -= math.Log(product) / 2
			product = 1
		}
	}
	t.grow(n)
}

// grow makes room for so many days of a local level.
func (t *Track) grow(n int) {
	t.days = slices.Grow(t.days[:0], n)[:n]
	for _, list := range []*[]float64{&t.level, &t.variance, &t.smooth, &t.smoothVar} {
		*list = slices.Grow((*list)[:0], n)[:n]
	}
}

// Len returns how many days were read.
func (t *Track) Len() int {
	if t == nil {
		return 0
	}
	return len(t.days)
}

// State returns what is known at the end, to go on from.
func (t *Track) State() State {
	if t == nil {
		return State{}
	}
	return t.state
}

// Width returns how wide intervals are after the whole series, for the interval of any of its
// days and of a look ahead from its end.
func (t *Track) Width() Width {
	if t == nil {
		return Width{}
	}
	return t.state.Likelihood(t.model).Width(t.model)
}

// Filtered returns what was known on the day at place i, from 0, after its readings.
// It is the zero value for a place outside the series.
func (t *Track) Filtered(i int) Belief {
	switch {
	case i < 0 || i >= t.Len():
		return Belief{}
	case t.model.Kind == LocalLevel:
		return Belief{Day: t.days[i], Level: t.level[i], LevelVar: t.variance[i]}
	}
	return t.filtered[i]
}

// Smoothed returns what is known of that day after the whole series.
func (t *Track) Smoothed(i int) Belief {
	switch {
	case i < 0 || i >= t.Len():
		return Belief{}
	case t.model.Kind == LocalLevel:
		return Belief{Day: t.days[i], Level: t.smooth[i], LevelVar: t.smoothVar[i]}
	}
	return t.smoothed[i]
}

// place returns the place of the last day that is day or earlier, -1 if none is.
func (t *Track) place(day units.Day) int {
	i, found := slices.BinarySearch(t.days, day)
	if !found {
		i--
	}
	return i
}
