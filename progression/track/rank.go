package track

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A RankTrend is what Mann and Kendall's test says of a series: whether later values
// tend to be higher, whatever their distribution.
type RankTrend struct {
	S        int     `json:"s"`              // pairs that rise less pairs that fall
	Variance float64 `json:"variance"`       // of S where there is no trend, with ties allowed for
	Z        float64 `json:"z"`              // S, moved by one towards 0, over its standard deviation
	P        float64 `json:"p"`              // two-sided, by the normal distribution: rough below ten values
	Ties     []int   `json:"ties,omitempty"` // sizes of the groups of equal values, in the order of the values
}

// mostRanked keeps the number of pairs, and their memory, within bounds.
const mostRanked = 5000

func checkValues(path string, y []float64, least, most int) error {
	if len(y) < least || len(y) > most {
		return field.New(path, len(y), fmt.Sprintf("%d to %d values", least, most), field.ErrOutOfRange)
	}
	var bad field.Errors
	for i, v := range y {
		if !(math.Abs(v) <= mostValue) {
			bad.Add(fmt.Sprintf("%s/%d", path, i), field.Bad(v, "a number within ±1e150", field.ErrOutOfRange))
		}
	}
	return bad.Err()
}

// MannKendall tests 3 to 5000 values, in the order of time, for a trend. Where all are
// equal S and Z are 0 and P is 1. Errors name the value ("/y/3").
func MannKendall(y []float64) (RankTrend, error) {
	if err := checkValues("/y", y, 3, mostRanked); err != nil {
		return RankTrend{}, err
	}
	var r RankTrend
	for i, v := range y {
		for _, w := range y[i+1:] {
			r.S += cmp.Compare(w, v)
		}
	}
	sorted := slices.Sorted(slices.Values(y))
	weight := func(n int) float64 { return float64(n) * float64(n-1) * float64(2*n+5) }
	r.Variance = weight(len(y))
	for i := 0; i < len(sorted); {
		j := i + 1
		for j < len(sorted) && sorted[j] == sorted[i] {
			j++
		}
		if j-i > 1 {
			r.Ties = append(r.Ties, j-i)
			r.Variance -= weight(j - i)
		}
		i = j
	}
	r.Variance /= 18
	r.P = 1
	if r.S != 0 {
		r.Z = float64(r.S-cmp.Compare(r.S, 0)) / math.Sqrt(r.Variance)
		r.P = math.Erfc(math.Abs(r.Z) / math.Sqrt2)
	}
	return r, nil
}

// Sen returns the median of the slopes between all pairs of points whose x differ, and
// its interval at a level of 0.5 to 0.99, from the pairs that the variance of Mann and
// Kendall's S leaves on each side (Sen 1968; Gilbert 1987). X need not be even; 3 to 5000
// points, of which two differ in x at least. Where the interval reaches beyond all pairs
// it has no end there.
func Sen(x, y []float64, level units.Fraction) (slope float64, interval units.Range[float64], err error) {
	var bad field.Errors
	bad.Add("", checkValues("/x", x, 3, mostRanked))
	bad.Add("", checkValues("/y", y, 3, mostRanked))
	bad.Add("/level", checkLevel(level))
	bad.Refuse(len(x) != len(y), "/y", len(y), "as many as x", field.ErrConflict)
	if err := bad.Err(); err != nil {
		return 0, units.Range[float64]{}, err
	}
	order := make([]int, len(x))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int { return cmp.Compare(x[i], x[j]) })
	byTime := make([]float64, len(y))
	slopes := make([]float64, 0, len(x)*(len(x)-1)/2)
	for k, i := range order {
		byTime[k] = y[i]
		for _, j := range order[k+1:] {
			if x[j] > x[i] {
				slopes = append(slopes, (y[j]-y[i])/(x[j]-x[i]))
			}
		}
	}
	if len(slopes) == 0 {
		return 0, units.Range[float64]{}, field.New("/x", nil, "points that differ in x", field.ErrConflict)
	}
	slices.Sort(slopes)
	r, err := MannKendall(byTime)
	if err != nil {
		return 0, units.Range[float64]{}, err
	}
	n := len(slopes)
	slope = (slopes[(n-1)/2] + slopes[n/2]) / 2
	c := normalWithin(level) * math.Sqrt(r.Variance)
	return slope, between(slopes, (float64(n)-c)/2, (float64(n)+c)/2), nil
}

// between returns the interval from one rank, counted from 0, to below another; ranks
// between two values are between their values.
func between(sorted []float64, low, high float64) units.Range[float64] {
	at := func(rank float64) (float64, bool) {
		if rank < 0 || rank > float64(len(sorted)-1) {
			return 0, false
		}
		i := int(rank)
		if i+1 == len(sorted) {
			return sorted[i], true
		}
		share := rank - float64(i)
		return float64((1-share)*sorted[i]) + float64(share*sorted[i+1]), true
	}
	var ends units.Range[float64]
	if from, ok := at(low - 1); ok {
		ends = units.AtLeast(from)
	}
	if to, ok := at(high); ok {
		ends, _ = ends.Intersect(units.AtMost(to))
	}
	return ends
}
