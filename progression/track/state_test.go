package track_test

import (
	"encoding/json"
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/progression/track"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// TestIntervalsWiden: the farther ahead, the wider, for the level and for a reading; and
// the higher the level, the wider.
func TestIntervalsWiden(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, readings := anySeries(t)
		m.Firm = rapid.SampledFrom([]float64{0, 3}).Draw(t, "firm")
		s := run(t, m, track.State{}, readings).State()
		w := s.Likelihood(m).Width(m)
		last := s.Before.Day
		if !s.Now(m).Known() || s.Now(m).Free[1] != 0 {
			if f, err := s.Forecast(m, last+1); err != nil || f.Known() && m.Kind != track.LocalLevel {
				t.Errorf("a slope of which nothing is known: %+v, %v", f, err)
			}
			return
		}
		before := 0.0
		for _, days := range []units.Day{0, 1, 2, 7, 30, 180, 366} {
			f, err := s.Forecast(m, last+days)
			if err != nil {
				t.Fatal(err)
			}
			level, inner := width(t, f.Belief, 0.9, w), width(t, f.Belief, 0.5, w)
			r, err := f.ReadingInterval(0.9, w, 1)
			if err != nil {
				t.Fatal(err)
			}
			low, _ := r.Min()
			high, _ := r.Max()
			if level < before*(1-1e-12) || inner >= level || high-low <= level {
				t.Errorf("%d days ahead: %v after %v, half of it %v, a reading %v", days, level, before, inner, high-low)
			}
			before = level
		}
	})
}

func width(t failer, b track.Belief, level units.Fraction, w track.Width) float64 {
	t.Helper()
	r, err := b.Interval(level, w)
	if err != nil {
		t.Fatal(err)
	}
	low, _ := r.Min()
	high, _ := r.Max()
	return high - low
}

// TestStateRoundTrip: a state is stored as JSON and read back to the same, and goes on
// alike.
func TestStateRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, readings := anySeries(t)
		want := run(t, m, track.State{}, readings).State()
		for _, v := range []struct{ in, out any }{{want, new(track.State)}, {m, new(track.Model)}} {
			text, err := json.Marshal(v.in)
			if err != nil {
				t.Fatal(err)
			}
			if err := field.Decode(text, v.out, field.Strict); err != nil {
				t.Fatal(err)
			}
			switch out := v.out.(type) {
			case *track.State:
				if *out != want || out.Validate() != nil {
					t.Errorf("%+v, want %+v", *out, want)
				}
			case *track.Model:
				if *out != m || out.Validate() != nil {
					t.Errorf("%+v, want %+v", *out, m)
				}
			}
		}
	})
}

// TestOnlineAllocatesNothing: one reading more costs no memory.
func TestOnlineAllocatesNothing(t *testing.T) {
	m := track.StrengthModel()
	var s track.State
	r := track.Reading{Day: first, Value: 3, Variance: 0.001}
	if n := testing.AllocsPerRun(100, func() {
		var err error
		if s, err = s.Seen(m, r); err != nil {
			t.Fatal(err)
		}
		r.Day += 3
	}); n != 0 {
		t.Errorf("%v allocations a reading", n)
	}
}

// TestRunAgain: a track that is run again answers for the new series alone, and a
// bad series leaves it empty.
func TestRunAgain(t *testing.T) {
	all := run(t, nileModel(), track.State{}, nile(t, nil))
	m := track.Model{Kind: track.LinearTrend, Noise: 1}
	short := []track.Reading{{Day: first, Value: 1}, {Day: first + 2, Value: 5}}
	if err := all.Run(m, track.State{}, short); err != nil || all.Len() != 2 {
		t.Fatal(all.Len(), err)
	}
	within(t, "slope through two points", all.Smoothed(0).Slope, 2, 1e-12)
	within(t, "its variance", all.Smoothed(0).SlopeVar, 2.0/4, 1e-12)
	if b := all.Smoothed(2); b != (track.Belief{}) {
		t.Errorf("beyond the end: %+v", b)
	}
	if err := all.Run(m, track.State{}, []track.Reading{short[1], short[0]}); !errors.Is(err, field.ErrConflict) || all.Len() != 0 {
		t.Errorf("%d days, %v", all.Len(), err)
	}
	var none *track.Track
	if err := none.Run(m, track.State{}, short); !errors.Is(err, field.ErrMissing) || none.Len() != 0 || none.Width() != (track.Width{}) {
		t.Errorf("%v", err)
	}
}

// TestHalved: half of a slope is left after twelve weeks, and what is still to come is
// bounded.
func TestHalved(t *testing.T) {
	m := track.StrengthModel()
	s := track.State{Before: track.Belief{Day: first, Level: 3, Slope: 0.004, LevelVar: 1e-4, SlopeVar: 1e-8}}
	f, err := s.Forecast(m, first+84)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "slope", f.Slope, 0.002, 1e-12)
	near(t, "gain", f.Level-3, 0.004*(1-0.5)/(1-m.Keep), 1e-12)
	if len(f.Reasons) != 1 || math.Abs(m.Keep-math.Exp2(-1.0/84)) > 1e-15 {
		t.Errorf("%+v", f)
	}
}

// TestUnits: in other units of the values all is the same, but for the likelihood, which
// moves by the logarithm of the unit for each reading that was foreseen.
func TestUnits(t *testing.T) {
	m, readings := nileModel(), nile(t, nil)
	want := run(t, m, track.State{}, readings)
	for _, unit := range []float64{1e-6, 1e6} {
		n, scaled := m, make([]track.Reading, len(readings))
		n.Noise, n.Level = m.Noise*unit*unit, m.Level*unit*unit
		for i, r := range readings {
			r.Value *= unit
			scaled[i] = r
		}
		got := run(t, n, track.State{}, scaled)
		within(t, "likelihood", got.State().Likelihood(n).Diffuse, want.State().Likelihood(m).Diffuse-99*math.Log(unit), 1e-9)
		within(t, "smoothed", got.Smoothed(50).Level/unit, want.Smoothed(50).Level, 1e-9)
	}
}
