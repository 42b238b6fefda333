package fit

import (
	"math"

	"gonum.org/v1/gonum/mathext"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// levelRange is the levels at which intervals are given.
var levelRange = units.Must(units.Between[units.Fraction](0.5, 0.99))

// student returns the number that Student's t with so many degrees of freedom
// stays within, on both sides, with the given probability.
func student(level units.Fraction, freedom int) float64 {
	nu := float64(freedom)
	x := mathext.InvRegIncBeta(nu/2, 0.5, 1-float64(level))
	return math.Sqrt(nu * (1 - x) / x)
}

// deviation is the standard error of the logarithm of the load of a further set
// at reps: of the curve there, and of the set itself.
func (c Curve) deviation(reps float64) float64 {
	t := c.at(reps)
	slopes := [3]float64{1, t.byShape, t.byFloor}
	variance := float64(c.noise * c.noise)
	for i, a := range slopes {
		for j, b := range slopes {
			variance += float64(a * b * c.covariance[i][j])
		}
	}
	return math.Sqrt(max(0, variance)) // rounding may leave less than nought of nothing
}

// half is half the width of an interval of the logarithm of the load.
func (c Curve) half(reps float64, level units.Fraction) (float64, error) {
	var bad field.Errors
	bad.Add("", c.check(reps))
	if !levelRange.Contains(level) {
		bad.Add("/level", field.Bad(float64(level), "0.5 to 0.99", field.ErrOutOfRange))
	}
	if err := bad.Err(); err != nil {
		return 0, err
	}
	return student(level, c.freedom) * c.deviation(reps), nil
}

// LoadWithin returns the interval that the load of a further set of reps to
// failure, on another day, lies within with the given probability, 0.5 to 0.99:
// a prediction interval by Student's t on the logarithm of the load. It is for
// the form being right. The lower end is rounded down, the upper up. Besides
// those of [Curve.Fraction] there is an [field.ErrOverflow] for an end that
// fits no mass.
func (c Curve) LoadWithin(reps float64, level units.Fraction) (units.Range[units.Mass], error) {
	half, err := c.half(reps, level)
	if err != nil {
		return units.Range[units.Mass]{}, err
	}
	share := c.at(reps).share
	low, _ := c.oneRM.Scale(units.Fraction(math.Exp(share-half)), units.Down) // fits if the upper end does
	high, err := c.oneRM.Scale(units.Fraction(math.Min(math.Exp(share+half), math.MaxFloat64)), units.Up)
	if err != nil {
		return units.Range[units.Mass]{}, field.At("/reps", err)
	}
	return units.Between(low, high)
}

// OneRMWithin returns the interval that a test of the 1RM on another day lies
// within with the given probability: [Curve.LoadWithin] at one repetition.
func (c Curve) OneRMWithin(level units.Fraction) (units.Range[units.Mass], error) {
	return c.LoadWithin(1, level)
}

// RepsWithin returns the interval that the repetitions to failure of a further
// set with load lie within with the given probability: the interval of the load
// over the steepness of the curve, on the logarithm of the repetitions. An end
// below 1 means that the load may not go up at all. Besides the errors of
// [Curve.RepsAt] there is an [field.ErrOverflow].
func (c Curve) RepsWithin(load units.Mass, level units.Fraction) (units.Range[float64], error) {
	reps, err := c.RepsAt(load)
	if err != nil {
		return units.Range[float64]{}, err
	}
	half, err := c.half(reps, level)
	if err != nil {
		return units.Range[float64]{}, err
	}
	half /= -c.at(reps).byReps * reps
	low, high := reps*math.Exp(-half), reps*math.Exp(half)
	if !finite([]float64{low, high}) {
		return units.Range[float64]{}, field.New("/load", load, "a load whose repetitions can be told", field.ErrOverflow)
	}
	return units.Between(low, high)
}
