package track_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/strength"
	"example.org/posology/dose/week"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/track"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// TestEndsOfRanges: the first and the last value of each range are allowed.
func TestEndsOfRanges(t *testing.T) {
	m := track.StrengthModel()
	m.Firm = 1000
	two := []track.Reading{{Day: first, Value: 1e150, Variance: 1e-30}, {Day: first + 7, Value: -1e150, Variance: 1e150}}
	small := []track.Reading{{Day: first, Value: 3, Variance: 0.001}, {Day: first + 7, Value: 3.1, Variance: 0.001}}
	all, good := run(t, m, track.State{}, small), track.MeanTest{Mean: 1, Count: 20}
	since := func(day units.Day, margin, level units.Fraction) error {
		_, err := all.Since(day, margin, level)
		return err
	}
	change := func(r track.Reliability, level units.Fraction) error {
		_, err := track.RealChange(good, good, r, level)
		return err
	}
	sen := func(n int, level units.Fraction) error {
		x := make([]float64, n)
		for i := range x {
			x[i] = float64(i)
		}
		_, _, err := track.Sen(x, x, level)
		return err
	}
	for name, err := range map[string]error{
		"huge readings":          new(track.Track).Run(m, track.State{}, two),
		"since the first":        since(first, 0, 0.5),
		"since before the last":  since(first+6, 0.5, 0.99),
		"a reliability of 0.1 %": change(track.Reliability{Typical: 0.001}, 0.5),
		"a reliability of 50 %":  change(track.Reliability{Typical: 0.5, Rise: 0.5}, 0.99),
		"SEM of 0":               reason(track.SEM(0, 0)),
		"SEM of correlation 1":   reason(track.SEM(1, 1)),
		"MDC of 20 tests":        reason(track.MDC(0, 0.5, 1, 20)),
		"three values":           reason(track.MannKendall([]float64{1, 2, 1e150})),
		"5000 values":            reason(track.MannKendall(make([]float64, 5000))),
		"slope of three":         sen(3, 0.99),
		"errors of four days":    reason(track.Diagnose(nileModel(), nile(t, nil)[:5], 3)),
		"98 lags":                reason(track.Diagnose(nileModel(), nile(t, nil), 98)),
		"variance of three days": reason(track.MostLikely(track.Model{Kind: track.LocalLevel}, track.Unknowns{Noise: true}, nile(t, nil)[:3])),
	} {
		if err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// TestSenOfThree: of three points on a line all pairs have one slope; of so few the
// interval at 99 % has no ends.
func TestSenOfThree(t *testing.T) {
	slope, interval, err := track.Sen([]float64{3, 1, 2}, []float64{6, 2, 4}, 0.99)
	if err != nil || slope != 2 || !interval.IsZero() {
		t.Errorf("%v %v %v", slope, interval, err)
	}
	r := units.Must(track.MannKendall([]float64{5, 5, 5}))
	if r.S != 0 || r.Z != 0 || r.P != 1 || r.Variance != 0 || len(r.Ties) != 1 || r.Ties[0] != 3 {
		t.Errorf("%+v", r)
	}
}

// TestFadingFollowsItsSource: the second twelve weeks brought half of the first, in what
// the fact rests on.
func TestFadingFollowsItsSource(t *testing.T) {
	ledger := units.Must(evidence.NewLedger(onerm.Facts(), strength.Facts(), guideline.Facts(), week.Facts(), rule.Facts(), track.Facts()))
	f, _ := ledger.Fact("progression.gain-ranges")
	const source = "leg press at 12 weeks 33 (2), -36 to 87, at 24 weeks 50 (3), -28 to 145; leg extension at 12 weeks 20 (1), -22 to 56, at 24 weeks 29 (2)"
	if !strings.Contains(f.Value, source) || !strings.Contains(fact(t, "track.fading"), "17 of 33 kg and 9 of 20 kg") {
		t.Errorf("%q, %q", f.Value, fact(t, "track.fading"))
	}
	within(t, "share left after twelve weeks", math.Pow(track.StrengthModel().Keep, 84), ((50.0-33)/33+(29.0-20)/20)/2, 0.05)
}

// TestFarAndSure: on a line that does not move two sure readings years later tell the level of
// the first day better than its own reading did, though level and slope hang together by then
// but for a share of 1e-12: as in a regression with the same weights.
func TestFarAndSure(t *testing.T) {
	for _, firstSlope := range []float64{0, 1} { // of which nothing is known, or next to nothing
		m := track.Model{Kind: track.LinearTrend, FirstSlope: firstSlope}
		var readings []track.Reading
		sum, x, xx := 0.0, 0.0, 0.0
		for i, variance := range []float64{1e-6, 1e-8, 1e-8} {
			day := float64(1000 * i)
			readings = append(readings, track.Reading{Day: first + units.Day(day), Value: 3 + day/1e5, Variance: variance})
			sum, x, xx = sum+1/variance, x+day/variance, xx+day*day/variance
		}
		b := run(t, m, track.State{}, readings).Smoothed(0)
		within(t, "level", b.Level, 3, 1e-6)
		near(t, "its variance", b.LevelVar/1e-8, xx/(sum*xx-x*x)/1e-8, 0.01)
		near(t, "the slope's", b.SlopeVar/1e-14, sum/(sum*xx-x*x)/1e-14, 0.01)
	}
}

// TestNothingIsNaN: whatever is let in, of any size, comes out as numbers, with variances of 0
// or more, or beyond all numbers.
func TestNothingIsNaN(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, readings := anySeries(t)
		size := rapid.SampledFrom([]float64{1e-150, 1e-20, 1, 1e10, 1e60, 1e140})
		by := size.Draw(t, "by")
		m.Level, m.Slope, m.Day, m.Noise, m.FirstSlope = m.Level*size.Draw(t, "level by"), m.Slope*by, m.Day*by, m.Noise*by, m.FirstSlope*by
		for i := range readings {
			readings[i].Value *= size.Draw(t, "value by")
			readings[i].Variance *= by
		}
		all := run(t, m, track.State{}, readings)
		for i := range all.Len() {
			for _, b := range []track.Belief{all.Filtered(i), all.Smoothed(i)} {
				for _, v := range []float64{b.Level, b.Slope, b.LevelVar, b.Covariance, b.SlopeVar} {
					if math.IsNaN(v) {
						t.Fatalf("%+v", b)
					}
				}
				if b.LevelVar < -1e-9*by || b.SlopeVar < -1e-9*by {
					t.Fatalf("%+v", b)
				}
			}
		}
	})
}
