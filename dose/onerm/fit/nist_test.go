package fit_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"example.org/posology/dose/onerm/fit"
	"example.org/posology/testdata/fieldtest"
)

const published = "../../../testdata/published/"

// observations reads a data set: y and the predictors, a slice each.
func observations(t testing.TB, name string) (y []float64, x [][]float64) {
	t.Helper()
	names, rows := fieldtest.Table(t, published+"nist-"+name+".csv", ',')
	x = make([][]float64, len(names)-1)
	for _, row := range rows {
		y = append(y, fieldtest.Number(t, row[0]))
		for j, text := range row[1:] {
			x[j] = append(x[j], fieldtest.Number(t, text))
		}
	}
	return y, x
}

// A certificate is what is certified of a data set.
type certificate struct {
	at, se         []float64
	start1, start2 []float64
	other          map[string]float64
}

func certified(t testing.TB, name string) certificate {
	t.Helper()
	c := certificate{other: map[string]float64{}}
	_, rows := fieldtest.Table(t, published+"nist-certified.csv", ',')
	for _, row := range rows {
		switch {
		case row[0] != name:
		case row[4] == "":
			c.other[row[2]] = fieldtest.Number(t, row[3])
		default:
			c.at = append(c.at, fieldtest.Number(t, row[3]))
			c.se = append(c.se, fieldtest.Number(t, row[4]))
			if row[5] != "" {
				c.start1 = append(c.start1, fieldtest.Number(t, row[5]))
				c.start2 = append(c.start2, fieldtest.Number(t, row[6]))
			}
		}
	}
	if len(c.at) == 0 {
		t.Fatalf("nothing certified of %s", name)
	}
	return c
}

// digits is how many significant digits got has of want, 15 at most.
func digits(got, want float64) float64 {
	return min(15, -math.Log10(math.Abs(got-want)/math.Abs(want)))
}

// compare fails where the solution has fewer than the given digits, and returns
// the fewest that a parameter, and a standard error, has.
func compare(t *testing.T, got fit.Solution, c certificate, least float64) (at, se float64) {
	t.Helper()
	at, se = 15, 15
	for j := range c.at {
		a, s := digits(got.At[j], c.at[j]), digits(got.SE[j], c.se[j])
		if !(a >= least) || !(s >= least) {
			t.Errorf("b%d = %.12g ± %.12g, want %.12g ± %.12g", j, got.At[j], got.SE[j], c.at[j], c.se[j])
		}
		at, se = min(at, a), min(se, s)
	}
	if d := digits(got.RSS, c.other["RSS"]); !(d >= least) {
		t.Errorf("RSS %.12g, want %.12g", got.RSS, c.other["RSS"])
	}
	return at, se
}

// models are the functions of the nonlinear sets.
var models = map[string]func(b []float64, x float64) float64{
	"misra1a": func(b []float64, x float64) float64 { return b[0] * (1 - math.Exp(-b[1]*x)) },
	"boxbod":  func(b []float64, x float64) float64 { return b[0] * (1 - math.Exp(-b[1]*x)) },
	"thurber": func(b []float64, x float64) float64 {
		return (b[0] + x*(b[1]+x*(b[2]+x*b[3]))) / (1 + x*(b[4]+x*(b[5]+x*b[6])))
	},
	"chwirut2": func(b []float64, x float64) float64 { return math.Exp(-b[0]*x) / (b[1] + b[2]*x) },
}

// slopes are the derivatives of two of them; the others are differenced.
var slopes = map[string]func(b []float64, x float64) []float64{
	"misra1a": saturation, "boxbod": saturation,
}

func saturation(b []float64, x float64) []float64 {
	e := math.Exp(-b[1] * x)
	return []float64{1 - e, b[0] * x * e}
}

func nonlinear(t testing.TB, name string, start []float64, analytic bool) fit.Problem {
	y, x := observations(t, name)
	p := fit.Problem{Start: start, Size: len(y), Residuals: func(into, at []float64) {
		for i := range y {
			into[i] = models[name](at, x[0][i]) - y[i]
		}
	}}
	if analytic {
		p.Jacobian = func(columns [][]float64, at []float64) {
			for i := range y {
				for j, d := range slopes[name](at, x[0][i]) {
					columns[j][i] = d
				}
			}
		}
	}
	return p
}

// TestNonlinear: parameters, standard errors and sum of squares to six digits,
// from both published starts, with differenced and analytic derivatives.
func TestNonlinear(t *testing.T) {
	for name := range models {
		c := certified(t, name)
		for k, start := range [][]float64{c.start1, c.start2} {
			for _, analytic := range []bool{false, true} {
				if analytic && slopes[name] == nil {
					continue
				}
				t.Run(fmt.Sprintf("%s/start%d/analytic=%v", name, k+1, analytic), func(t *testing.T) {
					got, err := fit.Least(nonlinear(t, name, start, analytic))
					if err != nil {
						t.Fatal(err)
					}
					at, se := compare(t, got, c, 6)
					if d := digits(got.SD, c.other["residual_sd"]); !(d >= 6) {
						t.Errorf("residual deviation %v, want %v", got.SD, c.other["residual_sd"])
					}
					t.Logf("%d steps; digits: parameters %.1f, standard errors %.1f", got.Steps, at, se)
				})
			}
		}
	}
}

// TestLinear: the same for the linear sets, by one QR. Longley's predictors
// leave 1e5 of the precision unused; the rest must be there.
func TestLinear(t *testing.T) {
	for _, test := range []struct {
		name      string
		intercept bool
		degree    int
		digits    float64 // what a float64 leaves, rounded down
	}{
		{"norris", true, 1, 11}, {"noint1", false, 1, 13}, {"pontius", true, 2, 10}, {"longley", true, 1, 9},
	} {
		t.Run(test.name, func(t *testing.T) {
			y, x := observations(t, test.name)
			var columns [][]float64
			if test.intercept {
				columns = append(columns, powers(x[0], 0))
			}
			for _, c := range x {
				for d := 1; d <= test.degree; d++ {
					columns = append(columns, powers(c, d))
				}
			}
			got, err := fit.Linear(columns, y)
			if err != nil {
				t.Fatal(err)
			}
			at, se := compare(t, got, certified(t, test.name), test.digits)
			t.Logf("digits: parameters %.1f, standard errors %.1f", at, se)
		})
	}
}

func powers(x []float64, degree int) []float64 {
	p := make([]float64, len(x))
	for i, v := range x {
		p[i] = math.Pow(v, float64(degree))
	}
	return p
}

// TestLeastErrors: each way in which a search ends without a solution.
func TestLeastErrors(t *testing.T) {
	one := func(f func(x float64) float64) func(into, at []float64) {
		return func(into, at []float64) {
			for i := range into {
				into[i] = f(at[0])
			}
		}
	}
	for name, test := range map[string]struct {
		p    fit.Problem
		want error
	}{
		"fewer points than parameters": {fit.Problem{Start: []float64{1, 1}, Size: 1, Residuals: one(math.Sqrt)}, fit.ErrTooFew},
		"no value at the start":        {fit.Problem{Start: []float64{-1}, Size: 2, Residuals: one(math.Sqrt)}, fit.ErrNotFinite},
		"no slope at the start":        {fit.Problem{Start: []float64{0}, Size: 2, Residuals: one(math.Sqrt)}, fit.ErrNotFinite},
		"falls for ever":               {fit.Problem{Start: []float64{1}, Size: 2, Residuals: one(func(x float64) float64 { return 1 + 1/(1+math.Log1p(math.Abs(x))) })}, fit.ErrNoConvergence},
		"a parameter without effect": {fit.Problem{Start: []float64{1, 1}, Size: 3, Residuals: func(into, at []float64) {
			for i := range into {
				into[i] = at[0] - float64(i)
			}
		}}, fit.ErrSingular},
	} {
		if _, err := fit.Least(test.p); !errors.Is(err, test.want) {
			t.Errorf("%s: %v, want %v", name, err, test.want)
		}
	}
	same := []float64{1, 2, 3}
	if _, err := fit.Linear([][]float64{same, same}, same); !errors.Is(err, fit.ErrSingular) {
		t.Errorf("two columns alike: %v", err)
	}
	if err := fit.Inverse([][]float64{same, same}); !errors.Is(err, fit.ErrSingular) {
		t.Errorf("inverse of two columns alike: %v", err)
	}
}
