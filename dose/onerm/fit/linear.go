package fit

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
)

// A triangle is the factored matrix of a linear least-squares problem, its
// columns scaled to length one first: that alone takes the condition number of
// a polynomial in large numbers from 1e13 to 1e2.
type triangle struct {
	qr    mat.QR
	scale []float64 // length of each column, 1 for one of zeros
	rows  int
}

// worst is the condition number beyond which columns count as dependent.
const worst = 1e14

// factor takes a matrix apart that is given by its columns. Below it stand rows
// that hold damp on their diagonal, if damp is given.
func factor(columns [][]float64, damp []float64) *triangle {
	n := len(columns[0])
	f := &triangle{scale: make([]float64, len(columns)), rows: n + len(damp)}
	a := mat.NewDense(f.rows, len(columns), nil)
	for j, c := range columns {
		f.scale[j] = norm(c)
		if f.scale[j] == 0 {
			f.scale[j] = 1
		}
		for i, x := range c {
			a.Set(i, j, x/f.scale[j])
		}
		if damp != nil {
			a.Set(n+j, j, damp[j]/f.scale[j])
		}
	}
	f.qr.Factorize(a)
	return f
}

// solve returns the x for which columns·x comes closest to y. Dependent
// columns are an errSingular.
func (f *triangle) solve(y []float64) ([]float64, error) {
	right := mat.NewVecDense(f.rows, nil)
	for i, v := range y {
		right.SetVec(i, v)
	}
	var x mat.VecDense
	if err := f.qr.SolveVecTo(&x, false, right); err != nil || !(f.qr.Cond() < worst) {
		return nil, errSingular
	}
	for j, s := range f.scale {
		x.SetVec(j, x.AtVec(j)/s)
	}
	return x.RawVector().Data, nil
}

// inverse returns (AᵀA)⁻¹, the covariance of a solution for errors of one.
func (f *triangle) inverse() (*mat.SymDense, error) {
	p := len(f.scale)
	var r mat.Dense
	f.qr.RTo(&r)
	upper := mat.NewTriDense(p, mat.Upper, nil)
	for i := range p {
		for j := i; j < p; j++ {
			upper.SetTri(i, j, r.At(i, j))
		}
	}
	if err := upper.InverseTri(upper); err != nil || !(f.qr.Cond() < worst) {
		return nil, errSingular
	}
	var square mat.SymDense
	square.SymOuterK(1, upper)
	for i := range p {
		for j := i; j < p; j++ {
			square.SetSym(i, j, square.At(i, j)/f.scale[i]/f.scale[j])
		}
	}
	return &square, nil
}

// norm returns the length of x.
func norm(x []float64) float64 { return math.Sqrt(dot(x, x)) }

func dot(x, y []float64) float64 {
	sum := 0.0
	for i, v := range x {
		sum += float64(v * y[i])
	}
	return sum
}

// finite reports whether x holds numbers only.
func finite(x []float64) bool {
	return !slices.ContainsFunc(x, func(v float64) bool { return math.IsNaN(v) || math.IsInf(v, 0) })
}
