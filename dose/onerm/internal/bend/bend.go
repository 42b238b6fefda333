package bend

import (
	"fmt"
	"math"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Form numbers the forms as onerm.Form does, which says what they are.
type Form uint8

// Forms, without a type so that they are numbers of onerm.Form too.
const (
	Unknown = iota
	Hyperbola
	Line
	Power
	ExponentialFloor
	HyperbolaFloor
)

// MaxReps ends the curves: a set of more says little about strength. It is this
// module's choice, below the poles of the published lines.
const MaxReps = 30

var repsRange = units.Must(units.Between(1.0, MaxReps))

// Reps returns the repetitions over which curves are fitted and evaluated.
func Reps() units.Range[float64] { return repsRange }

// CheckReps returns an error for repetitions outside [Reps].
func CheckReps(reps float64) error {
	if repsRange.Contains(reps) {
		return nil
	}
	return field.Bad(reps, fmt.Sprintf("%v repetitions", repsRange), field.ErrOutOfRange)
}

// Pivot is the repetitions at which the fall of a curve is stated.
const Pivot = 10

// Limits of the fall from one repetition to [Pivot], as a difference of
// logarithms: outside, ten repetitions would be done with over 99.9 % of the 1RM,
// or with less than about a tenth of it.
const LeastFall, MostFall = 0.001, 2.25

// LeastSlope is the least that one repetition must cost at the most repetitions
// studied, as a share of the load; below, a curve has come to its floor.
const LeastSlope = 0.00001

// A base is a curve that falls from 1 at one repetition.
type base struct {
	// at returns the value and its derivatives by the logarithm of the shape and
	// by r. What lies outside the curve gives a value that is not positive.
	at func(r, shape float64) (value, byShape, byReps float64)
	// reps is the inverse of the value.
	reps func(value, shape float64) float64
	// shape is the shape with which the value at Pivot repetitions is v.
	shape func(v float64) float64
}

// forms is the table of forms: a base, and whether it falls to a floor. Each is
// written so that little is lost for a curve that is nearly flat.
var forms = [...]struct {
	base
	floor bool
	text  string // the equation, for facts
}{
	Hyperbola:        {hyperbola, false, "load = 1RM/(1 + (r − 1)/k)"},
	Line:             {line, false, "load = 1RM·(1 − (r − 1)/m)"},
	Power:            {power, false, "load = 1RM·r^(−p)"},
	ExponentialFloor: {exponential, true, "load = 1RM·(a + (1 − a)·e^(−c·(r − 1)))"},
	HyperbolaFloor:   {hyperbola, true, "load = 1RM·(a + (1 − a)/(1 + (r − 1)/k))"},
}

// HasFloor reports whether the form falls to a floor.
func (f Form) HasFloor() bool { return forms[f].floor }

// Equation returns the form in a line, for facts.
func (f Form) Equation() string { return forms[f].text }

var hyperbola = base{
	at: func(r, k float64) (float64, float64, float64) {
		steep := 1 / (k + r - 1)
		return 1 - float64((r-1)*steep), k * (r - 1) * steep * steep, -k * steep * steep
	},
	reps:  func(v, k float64) float64 { return 1 + float64(k*(1-v))/v },
	shape: func(v float64) float64 { return (Pivot - 1) * v / (1 - v) },
}

var line = base{
	at: func(r, m float64) (float64, float64, float64) {
		return 1 - (r-1)/m, (r - 1) / m, -1 / m
	},
	reps:  func(v, m float64) float64 { return 1 + float64(m*(1-v)) },
	shape: func(v float64) float64 { return (Pivot - 1) / (1 - v) },
}

var power = base{
	at: func(r, p float64) (float64, float64, float64) {
		v := math.Pow(r, -p)
		return v, -p * math.Log(r) * v, -p * v / r
	},
	reps:  func(v, p float64) float64 { return math.Pow(v, -1/p) },
	shape: func(v float64) float64 { return -math.Log(v) / math.Ln10 },
}

var exponential = base{
	at: func(r, c float64) (float64, float64, float64) {
		v := math.Exp(-c * (r - 1))
		return v, -c * (r - 1) * v, -c * v
	},
	reps:  func(v, c float64) float64 { return 1 - math.Log(v)/c },
	shape: func(v float64) float64 { return -math.Log(v) / (Pivot - 1) },
}

// A Bend is a form, which must be one, with its numbers; the floor is 0 where the
// form has none.
type Bend struct {
	Form         Form
	Shape, Floor float64
}

// A Tangent is the logarithm of a curve's share of the 1RM with its derivatives:
// by the logarithm of the shape, by the logit of the floor, by repetitions.
type Tangent struct{ Share, ByShape, ByFloor, ByReps float64 }

// At returns the curve at r; outside the curve it is not a number.
func (b Bend) At(r float64) Tangent {
	v, byShape, byReps := forms[b.Form].at(r, b.Shape)
	rest := 1 - b.Floor
	share := b.Floor + float64(rest*v)
	if !(share > 0) {
		nan := math.NaN()
		return Tangent{nan, nan, nan, nan}
	}
	return Tangent{
		Share:   math.Log(share),
		ByShape: rest * byShape / share,
		ByFloor: b.Floor * rest * (1 - v) / share,
		ByReps:  rest * byReps / share,
	}
}

// Reps is the inverse of the share; what has none gives NaN or a number outside.
func (b Bend) Reps(share float64) float64 {
	v := (share - b.Floor) / (1 - b.Floor)
	if !(v > 0) && b.Form != Line {
		return math.NaN()
	}
	return forms[b.Form].reps(v, b.Shape)
}

// Fall is by how much the logarithm of the load falls from one repetition to [Pivot].
func (b Bend) Fall() float64 { return -b.At(Pivot).Share }

// Falls reports whether the curve falls as much as a person's can: within the
// limits from one repetition to ten, and still at the most repetitions studied,
// where it is flattest.
func (b Bend) Falls(most float64) bool {
	fall := b.Fall()
	return fall >= LeastFall && fall <= MostFall && -b.At(most).ByReps >= LeastSlope
}

// WithFall returns the form with the given floor that falls by the given amount.
func WithFall(f Form, fall, floor float64) Bend {
	v := (math.Exp(-fall) - floor) / (1 - floor)
	return Bend{f, forms[f].shape(v), floor}
}
