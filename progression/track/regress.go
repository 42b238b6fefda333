package track

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/mat"

	"example.org/posology/units/field"
)

// A LeastSquares is a linear regression: for each predictor an effect.
type LeastSquares struct {
	Effects []float64 `json:"effects"`
	Errors  []float64 `json:"errors"`  // standard errors of the effects
	Squares float64   `json:"squares"` // residual sum of squares, weighted
	Freedom int       `json:"freedom"` // degrees of freedom that are left, 1 or more
}

// mostPredictors bounds the time that one regression takes.
const mostPredictors = 50

// condition is that of the scaled predictors beyond which they count as dependent.
const condition = 1e14

// Regress fits y by the sum of predictors times their effects, with the least squares,
// each row times its weight, above 0, where weights are given: the inverse of a
// variance that is known up to a factor. A line has two predictors, ones and the times;
// without the ones it runs through the origin. One column holds one predictor, a value
// for each row.
//
// Columns of other lengths than y are a [field.ErrConflict], as many rows as
// predictors or fewer an [ErrTooFew], predictors that depend on each other an [ErrSingular].
func Regress(columns [][]float64, y, weights []float64) (LeastSquares, error) {
	if err := checkColumns(columns, y, weights); err != nil {
		return LeastSquares{}, err
	}
	n, p := len(y), len(columns)
	a, right, scale := mat.NewDense(n, p, nil), mat.NewVecDense(n, nil), make([]float64, p)
	root := func(i int) float64 {
		if weights == nil {
			return 1
		}
		return math.Sqrt(weights[i])
	}
	for j, c := range columns { // of length one, which makes large numbers harmless
		scale[j] = math.Max(math.Sqrt(squares(c)), math.SmallestNonzeroFloat64)
		for i, v := range c {
			a.Set(i, j, v/scale[j]*root(i))
		}
	}
	for i, v := range y {
		right.SetVec(i, v*root(i))
	}
	var qr mat.QR
	qr.Factorize(a)
	var effects mat.VecDense
	if err := qr.SolveVecTo(&effects, false, right); err != nil || !(qr.Cond() < condition) {
		return LeastSquares{}, field.New("/columns", nil, "predictors that do not depend on each other", ErrSingular)
	}
	fit := LeastSquares{Freedom: n - p}
	var fitted mat.VecDense
	fitted.MulVec(a, &effects)
	right.SubVec(right, &fitted)
	fit.Squares = mat.Dot(right, right)
	var upper, inverse mat.Dense
	qr.RTo(&upper)
	if err := inverse.Inverse(upper.Slice(0, p, 0, p)); err != nil {
		return LeastSquares{}, field.New("/columns", nil, "predictors that do not depend on each other", ErrSingular)
	}
	spread := math.Sqrt(fit.Squares / float64(fit.Freedom))
	for j, s := range scale {
		fit.Effects = append(fit.Effects, effects.AtVec(j)/s)
		fit.Errors = append(fit.Errors, spread*mat.Norm(inverse.RowView(j), 2)/s)
	}
	return fit, nil
}

func checkColumns(columns [][]float64, y, weights []float64) error {
	var bad field.Errors
	bad.Add("", checkValues("/y", y, 1, mostRows))
	if len(columns) == 0 || len(columns) > mostPredictors {
		bad.Add("/columns", field.Bad(len(columns), fmt.Sprintf("1 to %d predictors", mostPredictors), field.ErrOutOfRange))
	} else if len(y) <= len(columns) {
		bad.Add("/y", field.Bad(len(y), fmt.Sprintf("%d rows or more", len(columns)+1), ErrTooFew))
	}
	if len(bad) > 0 {
		return bad
	}
	for j, c := range columns {
		path := fmt.Sprintf("/columns/%d", j)
		bad.Add("", checkValues(path, c, 1, mostRows))
		if len(c) != len(y) {
			bad.Add(path, field.Bad(len(c), fmt.Sprintf("%d values, as in y", len(y)), field.ErrConflict))
		}
	}
	if weights != nil && len(weights) != len(y) {
		bad.Add("/weights", field.Bad(len(weights), fmt.Sprintf("%d values, as in y", len(y)), field.ErrConflict))
	}
	for i, w := range weights {
		if !(w > 0 && w <= mostValue) {
			bad.Add(fmt.Sprintf("/weights/%d", i), field.Bad(w, "a weight above 0", field.ErrOutOfRange))
		}
	}
	return bad.Err()
}
