package track

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat"

	"example.org/posology/units/field"
)

// Diagnostics say whether what was not foreseen of each day looks like mere noise
// (Durbin and Koopman 2012, section 2.12): they are of the standardized one-step
// errors, which under the model are normal, alike, and do not hang together.
type Diagnostics struct {
	Days     int     `json:"days"` // whose errors were looked at: those that begin nothing
	Skewness float64 `json:"skewness"`
	Kurtosis float64 `json:"kurtosis"` // beyond the 3 of a normal distribution
	// Normality is about chi-squared with 2 degrees of freedom.
	Normality float64 `json:"normality"`
	// Together is Ljung and Box's: about chi-squared with Lags degrees of freedom, less
	// one for each variance beyond one that was estimated.
	Together float64 `json:"together"`
	Lags     int     `json:"lags"`
	// Later is the sum of squares of the last Third days over that of the first: about F
	// with as many degrees of freedom each.
	Later float64 `json:"later"`
	Third int     `json:"third"`
}

// Diagnose looks at what was not foreseen in a series that begins with nothing known.
// Lags, from 1 to below the days looked at, is up to how many days with readings apart
// errors are compared. Fewer than four such days are a [field.ErrOutOfRange]; other errors are
// those of [Track.Run].
func Diagnose(m Model, readings []Reading, lags int) (Diagnostics, error) {
	if err := m.checkSeries(State{}, readings); err != nil {
		return Diagnostics{}, err
	}
	e := m.unforeseen(readings)
	d := Diagnostics{Days: len(e), Lags: lags, Third: len(e) / 3}
	var bad field.Errors
	bad.Refuse(len(e) < 4, "/readings", len(e), "4 days or more beyond those that begin level and slope", field.ErrOutOfRange)
	bad.Refuse(lags < 1 || lags >= max(2, len(e)), "/lags", lags, fmt.Sprintf("1 to %d", max(1, len(e)-1)), field.ErrOutOfRange)
	if err := bad.Err(); err != nil {
		return Diagnostics{}, err
	}
	n := float64(len(e))
	second, third, fourth := stat.Moment(2, e, nil), stat.Moment(3, e, nil), stat.Moment(4, e, nil)
	d.Skewness, d.Kurtosis = third/(second*math.Sqrt(second)), fourth/(second*second)-3
	d.Normality = n * (d.Skewness*d.Skewness/6 + d.Kurtosis*d.Kurtosis/24)
	mean := stat.Mean(e, nil)
	for k := 1; k <= lags; k++ {
		sum := 0.0
		for i := k; i < len(e); i++ {
			sum += float64((e[i] - mean) * (e[i-k] - mean))
		}
		r := sum / (n * second)
		d.Together += n * (n + 2) * r * r / (n - float64(k))
	}
	d.Later = squares(e[len(e)-d.Third:]) / squares(e[:d.Third])
	return d, nil
}

func squares(x []float64) float64 {
	sum := 0.0
	for _, v := range x {
		sum += float64(v * v)
	}
	return sum
}

// unforeseen returns the standardized errors of the days, but for those that begin
// level or slope.
func (m Model) unforeseen(readings []Reading) (list []float64) {
	var s State
	for i, r := range readings {
		s.add(m, r)
		if b := s.Before; (i+1 == len(readings) || readings[i+1].Day != r.Day) && !b.NoLevel && b.Free[0] == 0 {
			list = append(list, (s.Mean-b.Level)/math.Sqrt(b.LevelVar+s.meanVar(m)))
		}
	}
	return list
}
