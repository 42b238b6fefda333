package fit_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/fit"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

func kg(x float64) units.Mass { return units.Must(units.Kilograms(x)) }

// A tester is a *testing.T or *testing.B or *rapid.T.
type tester interface {
	Helper()
	Errorf(string, ...any)
	Fatalf(string, ...any)
}

func curve(t tester, points []fit.Point, o fit.Options) onerm.Curve {
	t.Helper()
	c, err := fit.Fit(points, o)
	if err != nil {
		t.Fatalf("%v of %v: %v", o, points, err)
	}
	return c
}

// near fails unless got is want within a share of it.
func near(t tester, what string, got, want, share float64) {
	t.Helper()
	if !(math.Abs(got-want) <= share*math.Abs(want)) {
		t.Errorf("%s: %.12g, want %.12g", what, got, want)
	}
}

// TestAgainstR: parameters, standard errors and prediction intervals of weighted
// fits, against nls of R (testdata/curves.R).
func TestAgainstR(t *testing.T) {
	points := map[string][]fit.Point{}
	_, rows := fieldtest.Table(t, "testdata/curves-points.csv", ',')
	for _, row := range rows {
		points[row[0]] = append(points[row[0]], fit.Point{
			Load: kg(fieldtest.Number(t, row[1])), Reps: fieldtest.Number(t, row[2]), SD: units.Fraction(fieldtest.Number(t, row[3])),
		})
	}
	_, rows = fieldtest.Table(t, "testdata/curves.csv", ',')
	for _, row := range rows {
		var f onerm.Form
		if err := f.UnmarshalText([]byte(row[0])); err != nil {
			t.Fatal(err)
		}
		c := curve(t, points[row[1]], fit.Options{Form: f, Alone: true})
		got, se := c.OneRM().Kilograms(), float64(c.StandardError().OneRM)*c.OneRM().Kilograms()
		switch row[2] {
		case "k":
			got, se = c.Data().Shape, c.StandardError().Shape
		case "a":
			got, se = float64(c.Data().Floor), float64(c.StandardError().Floor)
		}
		name := row[0] + " " + row[1] + " " + row[2]
		near(t, name, got, fieldtest.Number(t, row[3]), 1e-6)
		near(t, name+" standard error", se, fieldtest.Number(t, row[4]), 1e-6)
		if float64(c.Data().Freedom) != fieldtest.Number(t, row[5]) {
			t.Errorf("%s: %d degrees of freedom, want %s", name, c.Data().Freedom, row[5])
		}
		within := units.Must(fit.LoadWithin(c, 3, 0.9))
		low, _ := within.Min()
		high, _ := within.Max()
		near(t, name+" lower end", low.Kilograms(), fieldtest.Number(t, row[6]), 1e-6)
		near(t, name+" upper end", high.Kilograms(), fieldtest.Number(t, row[7]), 1e-6)
	}
	if len(rows) != 24 {
		t.Errorf("%d rows, want 24", len(rows))
	}
}

// sample is a true curve of each form, and sets on it.
type sample struct {
	form         onerm.Form
	oneRM        float64
	shape, floor float64
}

func (s sample) load(r float64) float64 {
	base := map[onerm.Form]float64{
		onerm.Hyperbola: 1 / (1 + (r-1)/s.shape), onerm.HyperbolaFloor: 1 / (1 + (r-1)/s.shape),
		onerm.Line: 1 - (r-1)/s.shape, onerm.PowerLaw: math.Pow(r, -s.shape), onerm.ExponentialFloor: math.Exp(-s.shape * (r - 1)),
	}[s.form]
	return s.oneRM * (s.floor + (1-s.floor)*base)
}

func (s sample) points(reps ...float64) []fit.Point {
	var list []fit.Point
	for _, r := range reps {
		list = append(list, fit.Point{Load: kg(s.load(r)), Reps: r})
	}
	return list
}

var samples = []sample{
	{onerm.Hyperbola, 20, 31, 0}, {onerm.Hyperbola, 7.5, 12, 0}, {onerm.Hyperbola, 140, 90, 0},
	{onerm.Line, 20, 36, 0}, {onerm.Line, 60, 49, 0},
	{onerm.PowerLaw, 20, 0.1, 0}, {onerm.PowerLaw, 33, 0.25, 0},
	{onerm.ExponentialFloor, 20, 0.075, 0.494}, {onerm.ExponentialFloor, 20, 0.2, 0.3},
	{onerm.HyperbolaFloor, 20, 10, 0.3}, {onerm.HyperbolaFloor, 50, 4, 0.5}, {onerm.HyperbolaFloor, 50, 0.5, 0.6},
}

// TestExact: sets that lie on a curve give it back, without a prior.
func TestExact(t *testing.T) {
	for _, s := range samples {
		c := curve(t, s.points(2, 4, 6, 9, 12, 18), fit.Options{Form: s.form, Alone: true})
		name := s.form.String()
		if !c.Data().Alone || c.String() != name+" through 6 sets" {
			t.Errorf("%v, alone %v", c, c.Data().Alone)
		}
		near(t, name+" 1RM", c.OneRM().Kilograms(), s.oneRM, 1e-8)
		near(t, name+" shape", c.Data().Shape, s.shape, 1e-7)
		near(t, name+" floor", float64(c.Data().Floor), s.floor, 1e-7)
		for r := 1.0; r < 19; r++ { // the ends of an interval without width, rounded apart
			within := units.Must(fit.LoadWithin(c, r, 0.9))
			checkRange(t, within, units.Must(c.Load(r)), nil)
			low, _ := within.Min()
			high, _ := within.Max()
			if low == high {
				t.Errorf("%s at %v: both ends of the interval were rounded to %v", name, r, low)
			}
		}
		near(t, name+" load", units.Must(c.Load(5)).Kilograms(), s.load(5), 1e-8)
		near(t, name+" repetitions", units.Must(c.RepsAt(kg(s.load(7)))), 7, 1e-6)
	}
}

// TestSpecials: with the numbers that the documentation gives, a form is the
// published equation, once the load at one repetition is the 1RM.
func TestSpecials(t *testing.T) {
	seen := map[onerm.Formula]bool{}
	for _, s := range fit.Specials() {
		seen[s.Formula] = true
		for r := 1.0; r <= 20; r++ {
			want := float64(units.Must(s.Formula.Fraction(r)) / units.Must(s.Formula.Fraction(1)))
			near(t, s.Formula.String(), s.Share(r), want, 1e-12)
		}
		if math.Abs(s.Shape-s.Documented) > 0.005 {
			t.Errorf("%v: shape %v, documented %v", s.Formula, s.Shape, s.Documented)
		}
	}
	if len(seen) != 8 {
		t.Errorf("%d equations, want 8: %v", len(seen), seen)
	}
}

var anyForm = rapid.SampledFrom(slices.Collect(onerm.Forms()))

// noisy draws sets around a curve of the population, whose loads still fall.
func noisy(t *rapid.T) []fit.Point {
	n := rapid.IntRange(3, 9).Draw(t, "sets")
	top := rapid.Float64Range(2, 120).Draw(t, "1RM")
	first := rapid.IntRange(1, 6).Draw(t, "fewest")
	var points []fit.Point
	for i := range n {
		r := float64(first + 2*i)
		error := rapid.Float64Range(-0.018, 0.018).Draw(t, "error")
		points = append(points, fit.Point{
			Load: kg(top * 31 / (30 + r) * (1 + error)), Reps: r,
			SD:  units.Fraction(rapid.SampledFrom([]float64{0, 0.02, 0.08}).Draw(t, "sd")),
			Day: units.Day(rapid.IntRange(0, 3).Draw(t, "day")),
		})
	}
	return points
}

// TestDouble: each set twice, on days of its own, leaves the curve where it was
// and, once the errors are known, the standard errors over √2.
func TestDouble(t *testing.T) {
	points := samples[0].points(2, 4, 6, 9, 12, 18)
	for i := range points {
		points[i].Load += units.Mass(i%3-1) * units.Kilogram / 4
	}
	twice := append(slices.Clone(points), points...)
	for f := range onerm.Forms() {
		if f == onerm.HyperbolaFloor {
			continue // these sets have no floor
		}
		o := fit.Options{Form: f, Alone: true}
		once, double := curve(t, points, o), curve(t, twice, o)
		near(t, f.String()+" 1RM", double.OneRM().Kilograms(), once.OneRM().Kilograms(), 1e-9)
		// the variance itself is over n − p, so that it shrinks a little more
		known := math.Sqrt(float64(once.Data().Freedom) / float64(double.Data().Freedom) * 2)
		a, b := once.StandardError(), double.StandardError()
		near(t, f.String()+" standard error of the 1RM", float64(b.OneRM)/known, float64(a.OneRM)/math.Sqrt2, 1e-5)
		near(t, f.String()+" standard error of the shape", b.Shape/known, a.Shape/math.Sqrt2, 1e-5)
	}
}

// TestScaling: loads k times as heavy give a 1RM k times as heavy and the same
// shape; another order of the sets changes no bit; neither does the unit.
func TestScaling(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		points, o := noisy(t), fit.Options{Form: anyForm.Draw(t, "form")}
		c := curve(t, points, o)
		k := rapid.Float64Range(0.1, 10).Draw(t, "k")
		scaled := slices.Clone(points)
		for i := range scaled {
			scaled[i].Load = units.Must(scaled[i].Load.Scale(units.Fraction(k), units.Nearest))
		}
		s := curve(t, scaled, o)
		near(t, "1RM", s.OneRM().Kilograms(), k*c.OneRM().Kilograms(), 1e-6)
		near(t, "shape", s.Data().Shape, c.Data().Shape, 1e-5)
		near(t, "noise", float64(s.Data().Noise), float64(c.Data().Noise), 1e-6)

		shuffled := rapid.Permutation(points).Draw(t, "order")
		if again := curve(t, shuffled, o); again.OneRM() != c.OneRM() || again.Data().Shape != c.Data().Shape || again.Data().Noise != c.Data().Noise {
			t.Errorf("order changes %v to %v", c.OneRM(), again.OneRM())
		}
		pounds := slices.Clone(points)
		for i := range pounds {
			pounds[i].Load = units.Must(units.ParseMass(pounds[i].Load.Text(units.LB)))
		}
		if again := curve(t, pounds, o); again.OneRM() != c.OneRM() || again.Data().Shape != c.Data().Shape {
			t.Errorf("pounds change %v to %v", c.OneRM(), again.OneRM())
		}
	})
}

// TestIntervals: they hold the point, their ends are in order, and a higher
// level is wider. The curve falls, and Reps is the inverse of Fraction.
func TestIntervals(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := curve(t, noisy(t), fit.Options{Form: anyForm.Draw(t, "form")})
		checkCurve(t, c)
		for r := 1.0; r <= 20; r++ {
			share, err := c.Fraction(r)
			if err != nil {
				if c.Data().Form != onerm.Line || r <= c.Data().Shape {
					t.Errorf("%v at %v: %v", c, r, err)
				}
				return
			}
			near(t, "repetitions", units.Must(c.Reps(share)), r, 1e-9*math.Max(1, c.Data().Shape))
			narrow, wide := units.Must(fit.LoadWithin(c, r, 0.6)), units.Must(fit.LoadWithin(c, r, 0.95))
			if n, _ := narrow.Min(); !wide.Contains(n) {
				t.Errorf("%v wider than %v", narrow, wide)
			}
			if n, _ := narrow.Max(); !wide.Contains(n) {
				t.Errorf("%v wider than %v", narrow, wide)
			}
		}
	})
}

// checkCurve fails if a number of c is none, below zero or out of order, or
// if the curve does not fall.
func checkCurve(t tester, c onerm.Curve) {
	if c.OneRM() <= 0 || !(c.Data().Shape > 0) || !(c.Data().Floor >= 0 && c.Data().Floor < 1) || !(c.Data().Noise >= 0) || c.Data().Freedom < 1 {
		t.Errorf("curve %+v", c)
	}
	se := c.StandardError()
	for _, x := range []float64{c.Data().Shape, float64(c.Data().Noise), float64(se.OneRM), se.Shape, float64(se.Floor)} {
		if !(x >= 0) || math.IsInf(x, 0) {
			t.Errorf("curve %+v: number %v", c, x)
		}
	}
	last := units.Fraction(math.Inf(1))
	low, _ := c.Studied().Min()
	high, _ := c.Studied().Max()
	for i := range 41 {
		r := min(low+(high-low)*float64(i)/40, high)
		share, err := c.Fraction(r)
		if err != nil || !(share > 0) || share > last || share == last && low < high {
			t.Errorf("%v: share %v at %v after %v: %v", c, share, r, last, err)
		}
		last = share
		load, err := c.Load(r)
		if err != nil {
			t.Errorf("%v: load at %v: %v", c, r, err)
		}
		within, err := fit.LoadWithin(c, r, 0.9)
		checkRange(t, within, load, err)
		if load > 0 {
			reps, err := c.RepsAt(load)
			if err == nil {
				within, err := fit.RepsWithin(c, load, 0.9)
				checkRange(t, within, reps, err)
			}
		}
	}
	within, err := fit.OneRMWithin(c, 0.9)
	checkRange(t, within, c.OneRM(), err)
}

func checkRange[T float64 | units.Mass](t tester, within units.Range[T], point T, err error) {
	if err != nil {
		if !errors.Is(err, field.ErrOverflow) || !within.IsZero() {
			t.Errorf("%v beside %v", within, err)
		}
		return
	}
	low, _ := within.Min()
	high, ends := within.Max()
	if !(low >= 0) || !ends || math.IsInf(float64(high), 0) || !within.Contains(point) {
		t.Errorf("%v around %v", within, point)
	}
}

// TestSmallErrors: where the errors stated are small, sums of squares are mostly
// rounding and the search must end for all that.
func TestSmallErrors(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	for range 300 {
		for _, f := range []onerm.Form{onerm.Hyperbola, onerm.Line, onerm.PowerLaw} {
			var points []fit.Point
			for r := 2.0; r < 18; r += 3 {
				points = append(points, fit.Point{Load: kg(9000 / (30 + r) * math.Exp(0.01*random.NormFloat64())), Reps: r, SD: 0.001})
			}
			if c := curve(t, points, fit.Options{Form: f}); c.OneRM() <= 0 {
				t.Errorf("%v of %v", c, points)
			}
		}
	}
}
