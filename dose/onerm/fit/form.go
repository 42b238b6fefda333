package fit

import (
	"iter"
	"math"

	"example.org/posology/units/field"
)

// Form is the form of a curve: the load W as a function of the repetitions r
// that can be done with it to failure. M is the 1RM, which here is always the
// load at one repetition, since that is what the word means: published
// equations that promise more than was lifted once (Epley 3.3 %, Mayhew 8.9 %)
// lend a form their shape, not that surplus. The zero value is "not given".
type Form uint8

// Forms. The shape of each is a positive number. The letters in brackets are
// the values with which a form is a published equation, up to its surplus.
const (
	FormUnknown Form = iota // not given

	// Hyperbola is W = M/(1 + (r − 1)/k), two parameters, shape k. It contains
	// Epley (k = 31, for 1 + r/30 is 31/30 times 1 + (r − 1)/31) and O'Conner
	// (k = 41).
	Hyperbola
	// Line is W = M·(1 − (r − 1)/m), two parameters, shape m. It contains
	// Brzycki (m = 36), Lander (m = 36.92) and Adams (m = 49). It ends at
	// r = m + 1, where nothing could be lifted.
	Line
	// Power is W = M·r^(−p), two parameters, shape p. It contains Lombardi
	// (p = 0.1).
	Power
	// ExponentialFloor is W = M·(a + (1 − a)·e^(−c·(r − 1))), three parameters,
	// shape c and floor a, the share of the 1RM that W tends to. It contains
	// Mayhew (c = 0.055, a = 0.569) and Wathen (c = 0.075, a = 0.494).
	ExponentialFloor
	// HyperbolaFloor is W = M·(a + (1 − a)/(1 + (r − 1)/k)), three parameters,
	// shape k and floor a. No equation of package onerm has this form; it
	// contains Hyperbola, as a goes to 0.
	HyperbolaFloor
)

var formNames = field.NewVocabulary[Form]("form", "", "hyperbola", "line", "power", "exponential-floor", "hyperbola-floor")

// Forms yields every form.
func Forms() iter.Seq[Form] { return formNames.All() }

// String returns the form's code, such as "hyperbola".
func (f Form) String() string { return formNames.Text(f) }

// Check returns nil if f is given.
func (f Form) Check() error { return formNames.Check("", f) }

// MarshalText writes what String returns.
func (f Form) MarshalText() ([]byte, error) { return formNames.Marshal(f) }

// UnmarshalText reads what MarshalText writes.
func (f *Form) UnmarshalText(text []byte) error { return formNames.Unmarshal(text, f) }

// Parameters returns how many parameters the form has, the 1RM among them; 0
// for no form.
func (f Form) Parameters() int {
	switch {
	case !formNames.Valid(f):
		return 0
	case forms[f].floor:
		return 3
	}
	return 2
}

// A base is a curve that falls from 1 at one repetition.
type base struct {
	// at returns the value and its derivatives by the logarithm of the shape and
	// by r. What lies outside the curve gives a value that is not positive.
	at func(r, shape float64) (value, byShape, byReps float64)
	// reps is the inverse of the value.
	reps func(value, shape float64) float64
	// shape is the shape with which the value at pivot repetitions is v.
	shape func(v float64) float64
}

// pivot is the repetitions at which the fall of a curve is stated.
const pivot = 10

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

var hyperbola = base{
	at: func(r, k float64) (float64, float64, float64) {
		steep := 1 / (k + r - 1)
		return 1 - float64((r-1)*steep), k * (r - 1) * steep * steep, -k * steep * steep
	},
	reps:  func(v, k float64) float64 { return 1 + float64(k*(1-v))/v },
	shape: func(v float64) float64 { return (pivot - 1) * v / (1 - v) },
}

var line = base{
	at: func(r, m float64) (float64, float64, float64) {
		return 1 - (r-1)/m, (r - 1) / m, -1 / m
	},
	reps:  func(v, m float64) float64 { return 1 + float64(m*(1-v)) },
	shape: func(v float64) float64 { return (pivot - 1) / (1 - v) },
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
	shape: func(v float64) float64 { return -math.Log(v) / (pivot - 1) },
}

// A shape is a form with its numbers; the floor is 0 where the form has none.
type shape struct {
	form         Form
	shape, floor float64
}

// A tangent is the logarithm of a curve's share of the 1RM with its derivatives:
// by the logarithm of the shape, by the logit of the floor, by repetitions.
type tangent struct{ share, byShape, byFloor, byReps float64 }

// at returns the curve at r; outside the curve it is not a number.
func (s shape) at(r float64) tangent {
	v, byShape, byReps := forms[s.form].at(r, s.shape)
	rest := 1 - s.floor
	share := s.floor + float64(rest*v)
	if !(share > 0) {
		nan := math.NaN()
		return tangent{nan, nan, nan, nan}
	}
	return tangent{
		share:   math.Log(share),
		byShape: rest * byShape / share,
		byFloor: s.floor * rest * (1 - v) / share,
		byReps:  rest * byReps / share,
	}
}

// reps is the inverse of the share; what has none gives NaN or a number outside.
func (s shape) reps(share float64) float64 {
	v := (share - s.floor) / (1 - s.floor)
	if !(v > 0) && s.form != Line {
		return math.NaN()
	}
	return forms[s.form].reps(v, s.shape)
}

// fall is by how much the logarithm of the load falls from one repetition to pivot.
func (s shape) fall() float64 { return -s.at(pivot).share }

// withFall returns the form with the given floor that falls by the given amount.
func withFall(f Form, fall, floor float64) shape {
	v := (math.Exp(-fall) - floor) / (1 - floor)
	return shape{f, forms[f].shape(v), floor}
}
