package fit

import (
	"fmt"
	"math"
	"slices"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Curve is one person's load–repetition curve in one exercise, as [Fit] found
// it. It is a [onerm.Relation]. The zero value is "not given": its methods
// return an [field.ErrMissing]. It falls strictly over the repetitions studied and
// rises nowhere. It ends at 30, or where a line comes to nothing.
type Curve struct {
	shape
	oneRM units.Mass
	// covariance of the logarithm of the 1RM, that of the shape, and the logit
	// of the floor
	covariance [3][3]float64
	freedom    int     // degrees of freedom of Student's t
	noise      float64 // standard error of a further set, as a share of its load
	sets       int
	studied    units.Range[float64]
	days       units.Range[units.Day]
	alone      bool
	reasons    []evidence.Reason
}

var _ onerm.Relation = Curve{}

// falls reports whether the curve falls as much as a person's can: within the
// limits from one repetition to ten, and still at the most repetitions studied,
// where it is flattest.
func (c Curve) falls() bool {
	fall := c.fall()
	most, _ := c.studied.Max()
	return fall >= leastFall && fall <= mostFall && -c.at(most).byReps >= leastSlope
}

// OneRM returns the 1RM: the load at one repetition, to the nearest nanogram.
func (c Curve) OneRM() units.Mass { return c.oneRM }

// Form returns the form.
func (c Curve) Form() Form { return c.form }

// Shape returns the number that the form calls k, m, p or c.
func (c Curve) Shape() float64 { return c.shape.shape }

// Floor returns the share of the 1RM that the load tends to, 0 for a form
// without a floor.
func (c Curve) Floor() units.Fraction { return units.Fraction(c.floor) }

// Sets returns how many points the curve was fitted to.
func (c Curve) Sets() int { return c.sets }

// Alone reports whether the population prior was left out.
func (c Curve) Alone() bool { return c.alone }

// Freedom returns the degrees of freedom of Student's t in the intervals.
func (c Curve) Freedom() int { return c.freedom }

// Noise returns the standard error of a further set, as a share of its load.
func (c Curve) Noise() units.Fraction { return units.Fraction(c.noise) }

// Days returns the first and the last day of the points that have one.
func (c Curve) Days() units.Range[units.Day] { return c.days }

// Reasons returns how the curve came about, in a fresh slice.
func (c Curve) Reasons() []evidence.Reason { return slices.Clone(c.reasons) }

// Studied returns the repetitions to failure of the points, from the fewest to
// the most. Beyond them the curve is only the form, and the form may be wrong.
func (c Curve) Studied() units.Range[float64] { return c.studied }

// Covariance returns that of the logarithm of the 1RM, the logarithm of the
// shape and, for a form with a floor, the logit of the floor.
func (c Curve) Covariance() [][]float64 {
	n := c.form.Parameters()
	rows := make([][]float64, n)
	for i := range rows {
		rows[i] = slices.Clone(c.covariance[i][:n])
	}
	return rows
}

// A StandardError is that of each parameter, worked out to first order.
type StandardError struct {
	OneRM units.Fraction `json:"one_rm"` // as a share of the 1RM
	Shape float64        `json:"shape"`  // in the shape's own unit
	Floor units.Fraction `json:"floor"`  // as a share of the 1RM; 0 for a form without a floor
}

// StandardError returns the standard errors of the parameters.
func (c Curve) StandardError() StandardError {
	se := func(i int) float64 { return math.Sqrt(c.covariance[i][i]) }
	return StandardError{
		OneRM: units.Fraction(se(0)),
		Shape: c.shape.shape * se(1),
		Floor: units.Fraction(c.floor * (1 - c.floor) * se(2)),
	}
}

// String says what the curve is.
func (c Curve) String() string {
	if c.form == FormUnknown {
		return ""
	}
	return fmt.Sprintf("%s through %s", c.form, sets(c.sets))
}

// check returns an error for a curve that is not given, or reps that it has no
// value at.
func (c Curve) check(reps float64) error {
	if c.form == FormUnknown {
		return field.New("/curve", nil, "a curve made by Fit", field.ErrMissing)
	}
	if err := checkReps(reps); err != nil {
		return field.At("/reps", err)
	}
	if math.IsNaN(c.at(reps).share) {
		return field.New("/reps", reps, fmt.Sprintf("below %.4g repetitions, where the line comes to nothing", c.shape.shape+1), field.ErrOutOfRange)
	}
	return nil
}

// Fraction returns the share of the 1RM that can be lifted reps times, to
// failure. Reps outside 1 to 30, or beyond the end of a line, are an
// [field.ErrOutOfRange]; outside [Curve.Studied] the curve extrapolates.
func (c Curve) Fraction(reps float64) (units.Fraction, error) {
	if err := c.check(reps); err != nil {
		return 0, err
	}
	return units.Fraction(math.Exp(c.at(reps).share)), nil
}

// Reps returns how often a share of the 1RM can be lifted, to failure. A share
// that belongs to fewer than 1 or more than 30 repetitions is an
// [field.ErrOutOfRange].
func (c Curve) Reps(share units.Fraction) (float64, error) {
	if err := c.check(1); err != nil {
		return 0, err
	}
	reps := c.shape.reps(float64(share))
	for _, end := range [...]float64{1, maxReps} { // the ends belong to it, rounding or not
		if math.Abs(reps-end) < 1e-9 {
			reps = end
		}
	}
	if !repsRange.Contains(reps) {
		return 0, field.New("/fraction", float64(share), c.shareText(), field.ErrOutOfRange)
	}
	return reps, nil
}

// shareText says which shares have an inverse.
func (c Curve) shareText() string {
	least := math.Exp(c.at(maxReps).share)
	if math.IsNaN(least) {
		least = 0
	}
	return fmt.Sprintf("a share between about %.4g and 1 of the 1RM", least)
}

// Load returns the load that can be lifted reps times to failure, to the
// nearest nanogram. Errors are those of [Curve.Fraction].
func (c Curve) Load(reps float64) (units.Mass, error) {
	share, err := c.Fraction(reps)
	if err != nil {
		return 0, err
	}
	return c.oneRM.Scale(share, units.Nearest)
}

// RepsAt returns how often a load can be lifted to failure. Errors are those of
// [Curve.Reps].
func (c Curve) RepsAt(load units.Mass) (float64, error) {
	if err := c.check(1); err != nil {
		return 0, err
	}
	reps, err := c.Reps(units.Fraction(float64(load) / float64(c.oneRM)))
	if err != nil {
		return 0, field.New("/load", load, c.shareText(), field.ErrOutOfRange)
	}
	return reps, nil
}
