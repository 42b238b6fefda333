package field_test

import (
	"math"
	"time"

	"example.org/posology/units"
	"pgregory.net/rapid"
)

var (
	firstDay = units.Must(units.NewDay(1, time.January, 1))
	lastDay  = units.Must(units.NewDay(9999, time.December, 31))
)

// corners are masses at which arithmetic may break.
var corners = []units.Mass{
	0, 1, -1, 5, units.Gram, units.Pound, -units.Pound, units.Ounce, units.Kilogram,
	1 << 53, 1<<53 + 1, units.MaxMass, units.MaxMass - 1, -units.MaxMass, math.MinInt64, math.MinInt64 + 1,
}

func anyDay() *rapid.Generator[units.Day] {
	return rapid.Map(rapid.Int32Range(int32(firstDay), int32(lastDay)), func(n int32) units.Day { return units.Day(n) })
}

func anyMass() *rapid.Generator[units.Mass] {
	return rapid.OneOf(
		rapid.Map(rapid.Int64(), func(n int64) units.Mass { return units.Mass(n) }),
		rapid.SampledFrom(corners),
	)
}
