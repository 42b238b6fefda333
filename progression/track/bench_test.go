package track_test

import (
	"testing"

	"example.org/posology/progression/track"
	"example.org/posology/units"
)

// walk makes a series on a daily grid: a level that moves, and uniform errors, by
// splitmix64 (Steele, Lea and Flood 2014), so that other languages can make the same.
func walk(n int) []track.Reading {
	s := uint64(20260104)
	uniform := func() float64 {
		s += 0x9E3779B97F4A7C15
		z := s
		z = (z ^ z>>30) * 0xBF58476D1CE4E5B9
		z = (z ^ z>>27) * 0x94D049BB133111EB
		return float64((z^z>>31)>>11)*0x1p-53 - 0.5
	}
	list, level := make([]track.Reading, n), 1000.0
	for i := range list {
		list[i] = track.Reading{Day: 1 + units.Day(i), Value: level + float64(425*uniform())}
		level += 132 * uniform()
	}
	return list
}

// From a prior of 10⁷ on the first day, filter and smoother of a million days end where
// a plain loop in C does (the numbers are its).
func TestMillion(t *testing.T) {
	readings := walk(1_000_000)
	from := track.State{Before: track.Belief{Day: 1, LevelVar: 1e7}}
	all := run(t, nileModel(), from, readings)
	for i, want := range map[int][2]float64{0: {1002.58086, 4030.53277}, 500_000: {19447.5201, 2326.75687}, 999_999: {26165.3682, 4032.15794}} {
		near(t, "smoothed", all.Smoothed(i).Level, want[0], 5e-9)
		near(t, "variance", all.Smoothed(i).LevelVar, want[1], 5e-9)
	}
	within(t, "likelihood", all.State().Likelihood(nileModel()).Diffuse, -6383754.249641, 1e-5)
	if n := testing.AllocsPerRun(1, func() {
		if err := all.Run(nileModel(), from, readings); err != nil {
			t.Fatal(err)
		}
	}); n != 0 {
		t.Errorf("%v allocations when run again", n)
	}
}

func BenchmarkTrack_million(b *testing.B) {
	readings, from, all := walk(1_000_000), track.State{Before: track.Belief{Day: 1, LevelVar: 1e7}}, new(track.Track)
	b.ReportAllocs()
	for b.Loop() {
		if err := all.Run(nileModel(), from, readings); err != nil {
			b.Fatal(err)
		}
	}
}

// One reading more of the model for strength.
func BenchmarkState_Seen(b *testing.B) {
	m, s, r := track.StrengthModel(), track.State{}, track.Reading{Day: 1, Value: 3, Variance: 0.0013}
	b.ReportAllocs()
	for b.Loop() {
		var err error
		if s, err = s.Seen(m, r); err != nil {
			b.Fatal(err)
		}
		if r.Day += 3; r.Day > 3_000_000 {
			s, r.Day = track.State{}, 1
		}
	}
}

// Three years of one exercise.
func BenchmarkTrack_strength(b *testing.B) {
	var readings []track.Reading
	for i, r := range walk(312) {
		readings = append(readings, track.Reading{Day: 1 + units.Day(7*i/2), Value: r.Value / 1000, Variance: 0.0013})
	}
	all := new(track.Track)
	b.ReportAllocs()
	for b.Loop() {
		if err := all.Run(track.StrengthModel(), track.State{}, readings); err != nil {
			b.Fatal(err)
		}
	}
}
