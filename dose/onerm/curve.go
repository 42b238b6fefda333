package onerm

import (
	"fmt"
	"math"
	"slices"

	"example.org/posology/dose/onerm/internal/bend"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Curve is one person's load–repetition curve in one exercise, as package fit
// finds it, or [NewCurve] makes it of its numbers. It is a [Relation]. The zero
// value is "not given": its methods return a [field.ErrMissing]. It falls
// strictly over the repetitions studied and rises nowhere. It ends at 30, or where
// a line reaches zero.
type Curve struct{ data CurveData }

var _ Relation = Curve{}

// bend returns the form with its numbers.
func (c Curve) bend() bend.Bend {
	return bend.Bend{Form: bend.Form(c.data.Form), Shape: c.data.Shape, Floor: c.data.Floor}
}

// OneRM returns the 1RM: the load at one repetition, to the nearest nanogram.
func (c Curve) OneRM() units.Mass { return c.data.OneRM }

// Data returns all the numbers of the curve, its form and how it came about.
func (c Curve) Data() CurveData {
	d := c.data
	d.Covariance, d.Reasons = slices.Clone(d.Covariance), slices.Clone(d.Reasons)
	return d
}

// Studied returns the repetitions to failure of the points, from the fewest to
// the most. Beyond them the curve is only the form, and the form may be wrong.
func (c Curve) Studied() units.Range[float64] { return c.data.Studied }

// Covariance returns that of the logarithm of the 1RM, the logarithm of the
// shape and, for a form with a floor, the logit of the floor.
func (c Curve) Covariance() [][]float64 {
	m, n := c.data.matrix(), c.data.Form.Parameters()
	rows := make([][]float64, n)
	for i := range rows {
		rows[i] = slices.Clone(m[i][:n])
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
	m := c.data.matrix()
	se := func(i int) float64 { return math.Sqrt(m[i][i]) }
	return StandardError{
		OneRM: units.Fraction(se(0)),
		Shape: c.data.Shape * se(1),
		Floor: units.Fraction(c.data.Floor * (1 - c.data.Floor) * se(2)),
	}
}

// String says what the curve is.
func (c Curve) String() string {
	if c.data.Form == 0 {
		return ""
	}
	if c.data.Sets == 1 {
		return c.data.Form.String() + " through 1 set"
	}
	return fmt.Sprintf("%s through %d sets", c.data.Form, c.data.Sets)
}

// check returns an error for a curve that is not given, or reps that it has no
// value at.
func (c Curve) check(reps float64) error {
	if c.data.Form == 0 {
		return field.New("/curve", nil, "a curve that was fitted, or made of its numbers", field.ErrMissing)
	}
	if err := bend.CheckReps(reps); err != nil {
		return field.At("/reps", err)
	}
	if math.IsNaN(c.bend().At(reps).Share) {
		return field.New("/reps", reps, fmt.Sprintf("below %.4g repetitions, where the line comes to nothing", c.data.Shape+1), field.ErrOutOfRange)
	}
	return nil
}

// Fraction returns the share of the 1RM that can be lifted reps times, to
// failure. Reps outside 1 to 30, or beyond the end of a line, are a
// [field.ErrOutOfRange]; outside [Curve.Studied] the curve extrapolates.
func (c Curve) Fraction(reps float64) (units.Fraction, error) {
	if err := c.check(reps); err != nil {
		return 0, err
	}
	return units.Fraction(math.Exp(c.bend().At(reps).Share)), nil
}

// Reps returns how often a share of the 1RM can be lifted, to failure. A share
// that belongs to fewer than 1 or more than 30 repetitions is a
// [field.ErrOutOfRange].
func (c Curve) Reps(share units.Fraction) (float64, error) {
	if err := c.check(1); err != nil {
		return 0, err
	}
	reps := c.bend().Reps(float64(share))
	for _, end := range [...]float64{1, bend.MaxReps} { // the ends belong to it, rounding or not
		if math.Abs(reps-end) < 1e-9 {
			reps = end
		}
	}
	if !bend.Reps().Contains(reps) {
		return 0, field.New("/fraction", float64(share), c.shareText(), field.ErrOutOfRange)
	}
	return reps, nil
}

// shareText says which shares have an inverse.
func (c Curve) shareText() string {
	least := math.Exp(c.bend().At(bend.MaxReps).Share)
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
	return c.data.OneRM.Scale(share, units.Nearest)
}

// RepsAt returns how often a load can be lifted to failure. Errors are those of
// [Curve.Reps].
func (c Curve) RepsAt(load units.Mass) (float64, error) {
	if err := c.check(1); err != nil {
		return 0, err
	}
	reps, err := c.Reps(units.Fraction(float64(load) / float64(c.data.OneRM)))
	if err != nil {
		return 0, field.New("/load", load, c.shareText(), field.ErrOutOfRange)
	}
	return reps, nil
}
