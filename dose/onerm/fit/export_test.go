package fit

import (
	"math"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/internal/bend"
)

// Why the solver stopped, closer than the categories tell.
var ErrTooFew, ErrSingular, ErrNotFinite = errTooFew, errSingular, errNotFinite

// FormFact names the fact that states a form.
var FormFact = formFact

// A Problem is a least-squares problem for the tests: residuals at parameters.
type Problem struct {
	Start     []float64
	Size      int
	Residuals func(into, at []float64)
	Jacobian  func(columns [][]float64, at []float64)
}

// A Solution is what the solver returns, the standard errors worked out with
// the residual variance.
type Solution struct {
	At, SE  []float64
	RSS, SD float64
	Steps   int
}

func report(at []float64, rss float64, n int, variance func(j int) float64, steps int) Solution {
	s := Solution{At: at, RSS: rss, Steps: steps, SD: math.Sqrt(rss / float64(n-len(at)))}
	for j := range at {
		s.SE = append(s.SE, s.SD*math.Sqrt(variance(j)))
	}
	return s
}

// timid is a first damping so large that the first step does not leap to where
// a function is flat, as it does from BoxBOD's first start.
const timid = 100

// Least is the solver for nonlinear problems.
func Least(p Problem) (Solution, error) {
	s, err := least(problem{p.Start, p.Size, p.Residuals, p.Jacobian, timid})
	if err != nil {
		return Solution{}, err
	}
	return report(s.at, s.rss, p.Size, func(j int) float64 { return s.cov.At(j, j) }, s.steps), nil
}

// Linear is the linear solver: columns and y.
func Linear(columns [][]float64, y []float64) (Solution, error) {
	f := factor(columns, nil)
	at, err := f.solve(y)
	if err != nil {
		return Solution{}, err
	}
	inverse, err := f.inverse()
	if err != nil {
		return Solution{}, err
	}
	rss := 0.0
	for i, v := range y {
		for j, c := range columns {
			v -= float64(c[i] * at[j])
		}
		rss += float64(v * v)
	}
	return report(at, rss, len(y), func(j int) float64 { return inverse.At(j, j) }, 0), nil
}

// PopulationMean and PopulationSD are the prior on the logarithm of the fall.
var PopulationMean, PopulationSD = population.mean, population.sd

// FloorMean and FloorSD are the prior on the logit of the floor.
var FloorMean, FloorSD = populationFloor.mean, populationFloor.sd

// Whiten returns x whitened.
func Whiten(x []float64, ends []int) []float64 {
	y := append([]float64(nil), x...)
	whiten(y, ends)
	return y
}

// A Special is a published equation that a form contains.
type Special struct {
	Formula           onerm.Formula
	Shape, Documented float64
	Share             func(r float64) float64
}

// Specials lists them, with the shape as the comments of the forms print it.
func Specials() []Special {
	documented := map[onerm.Formula]float64{
		onerm.Epley: 31, onerm.OConner: 41, onerm.Brzycki: 36, onerm.Lander: 36.92, onerm.Adams: 49,
		onerm.Lombardi: 0.1, onerm.Mayhew: 0.055, onerm.Wathen: 0.075,
	}
	var list []Special
	for _, s := range specials {
		b := bend.Bend{Form: s.form, Shape: s.shape, Floor: s.floor}
		list = append(list, Special{s.formula, s.shape, documented[s.formula], func(r float64) float64 { return math.Exp(b.At(r).Share) }})
	}
	return list
}

// Inverse returns what stands in the way of a covariance.
func Inverse(columns [][]float64) error {
	_, err := factor(columns, nil).inverse()
	return err
}
