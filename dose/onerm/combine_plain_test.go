package onerm_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"gonum.org/v1/gonum/stat/distuv"
)

// Parts of an estimate's error from day to day and from set to set, as in the facts
// onerm.error.day and onerm.error.set, and the level of a set that does not fit.
const (
	dayPart = 0.012
	setPart = 0.018
	unfit   = 0.99
)

// plainCombined is what Combine works out of several sets, by the full table of
// their covariances: the spread of the mean, and which sets do not fit.
func plainCombined(list []onerm.Estimate) (spread float64, strangers int) {
	normal := distuv.UnitNormal
	z := normal.Quantile(1 - 0.05/2)
	n := len(list)
	weight, sigma := make([]float64, n), make([]float64, n)
	sum, best := 0.0, 0.0
	for i, e := range list {
		low, _ := e.Interval.Min()
		high, _ := e.Interval.Max()
		sigma[i] = float64(high-low) / (2 * z * float64(e.OneRM))
		weight[i] = 1 / (sigma[i] * sigma[i])
		sum += weight[i]
	}
	for i, e := range list {
		weight[i] /= sum
		best += weight[i] * float64(e.OneRM)
	}
	covariance := func(i, j int) float64 {
		part := func(k int) float64 { return min(1, sigma[k]/math.Hypot(dayPart, setPart)) }
		shared := func(k int) float64 {
			return math.Sqrt(max(0, sigma[k]*sigma[k]-part(k)*part(k)*(dayPart*dayPart+setPart*setPart)))
		}
		v := shared(i) * shared(j)
		if list[i].Day == list[j].Day {
			v += part(i) * part(j) * dayPart * dayPart
		}
		if i == j {
			v += part(i) * part(i) * setPart * setPart
		}
		return v
	}
	variance := func(w []float64) float64 {
		total := 0.0
		for i := range w {
			for j := range w {
				total += w[i] * w[j] * covariance(i, j)
			}
		}
		return total
	}
	for i, e := range list {
		contrast := make([]float64, n)
		for j := range contrast {
			contrast[j] = -weight[j] / (1 - weight[i])
		}
		contrast[i] = 1
		others := (best - weight[i]*float64(e.OneRM)) / (1 - weight[i])
		if math.Abs(float64(e.OneRM)-others)/best > normal.Quantile(1-(1-unfit)/2)*math.Sqrt(variance(contrast)) {
			strangers++
		}
	}
	return math.Sqrt(variance(weight)), strangers
}

// Combine adds up in one pass what the full table of covariances gives.
func TestCombineAgainstPlainSums(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 5))
	seen := 0
	for range 400 {
		var list []onerm.Estimate
		for range 2 + r.IntN(24) {
			s := set(1+r.IntN(9), float64(r.IntN(4)))
			s.Hold = body.OnBar
			s.Load = units.Mass(20e12 + r.Int64N(20e12))
			s.Day += units.Day(r.IntN(5))
			if e, err := onerm.FromSet(s, press(s.Hold), everyone()[0]); err == nil {
				list = append(list, e)
			}
		}
		if len(list) < 2 {
			continue
		}
		got, err := onerm.Combine(list...)
		if err != nil {
			t.Fatal(err)
		}
		spread, strangers := plainCombined(list)
		told := 0
		for _, why := range got.Reasons {
			switch {
			case why.Code == "onerm.unfit":
				told++
			case why.Code == "onerm.combined" && why.Args[2].Value() != fmt.Sprint(units.Fraction(spread)):
				t.Fatalf("spread %v, want %v", why.Args[2].Value(), units.Fraction(spread))
			}
		}
		if told != strangers {
			t.Fatalf("%d sets do not fit, want %d", told, strangers)
		}
		seen += strangers
	}
	if seen == 0 {
		t.Error("every set fits: nothing was tried")
	}
}
