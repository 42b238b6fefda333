package fit

import (
	"math"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/internal/bend"
	"example.org/posology/dose/onerm/internal/student"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// levelRange is the levels at which intervals are given.
var levelRange = units.Must(units.Between[units.Fraction](0.5, 0.99))

// tangentAt returns the curve at repetitions that it has a value at.
func tangentAt(c onerm.Curve, reps float64) bend.Tangent {
	return bend.Bend{Form: bend.Form(c.Data().Form), Shape: c.Data().Shape, Floor: c.Data().Floor}.At(reps)
}

// deviation is the standard error of the logarithm of the load of a further set:
// of the curve at t, and of the set itself.
func deviation(c onerm.Curve, t bend.Tangent) float64 {
	slopes := [3]float64{1, t.ByShape, t.ByFloor}
	variance := float64(c.Data().Noise * c.Data().Noise)
	for i, row := range c.Covariance() {
		for j, covariance := range row {
			variance += float64(slopes[i] * slopes[j] * covariance)
		}
	}
	return math.Sqrt(max(0, variance)) // rounding may leave less than zero of nothing
}

// halfWidth returns half the width of an interval of the logarithm of the load, and
// the curve there.
func halfWidth(c onerm.Curve, reps float64, level units.Fraction) (float64, bend.Tangent, error) {
	var bad field.Errors
	_, err := c.Fraction(reps)
	bad.Add("", err)
	bad.Refuse(!levelRange.Contains(level), "/level", float64(level), "0.5 to 0.99", field.ErrOutOfRange)
	if err := bad.Err(); err != nil {
		return 0, bend.Tangent{}, err
	}
	t := tangentAt(c, reps)
	return student.Within(float64(level), c.Data().Freedom) * deviation(c, t), t, nil
}

// LoadWithin returns the interval that the load of a further set of reps to
// failure, on another day, lies within with the given probability, 0.5 to 0.99:
// a prediction interval by Student's t on the logarithm of the load. It is for
// the form being right. The lower end is rounded down, the upper up. Besides
// those of [onerm.Curve.Fraction] there is a [field.ErrOverflow] for an end that
// fits no mass.
func LoadWithin(c onerm.Curve, reps float64, level units.Fraction) (units.Range[units.Mass], error) {
	half, t, err := halfWidth(c, reps, level)
	if err != nil {
		return units.Range[units.Mass]{}, err
	}
	low, _ := c.OneRM().Scale(units.Fraction(math.Exp(t.Share-half)), units.Down) // fits if the upper end does
	high, err := c.OneRM().Scale(units.Fraction(math.Min(math.Exp(t.Share+half), math.MaxFloat64)), units.Up)
	if err != nil {
		return units.Range[units.Mass]{}, field.At("/reps", err)
	}
	return units.Between(low, high)
}

// OneRMWithin returns the interval that a test of the 1RM on another day lies
// within with the given probability: [LoadWithin] at one repetition.
func OneRMWithin(c onerm.Curve, level units.Fraction) (units.Range[units.Mass], error) {
	return LoadWithin(c, 1, level)
}

// RepsWithin returns the interval that the repetitions to failure of a further
// set with load lie within with the given probability: the interval of the load
// over the steepness of the curve, on the logarithm of the repetitions. An end
// below 1 means that the load may not go up at all. Besides the errors of
// [onerm.Curve.RepsAt] there is a [field.ErrOverflow].
func RepsWithin(c onerm.Curve, load units.Mass, level units.Fraction) (units.Range[float64], error) {
	reps, err := c.RepsAt(load)
	if err != nil {
		return units.Range[float64]{}, err
	}
	half, t, err := halfWidth(c, reps, level)
	if err != nil {
		return units.Range[float64]{}, err
	}
	half /= -t.ByReps * reps
	low, high := reps*math.Exp(-half), reps*math.Exp(half)
	if !finite([]float64{low, high}) {
		return units.Range[float64]{}, field.New("/load", load, "a load whose repetitions can be told", field.ErrOverflow)
	}
	return units.Between(low, high)
}
