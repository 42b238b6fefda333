package onerm

import (
	"log/slog"

	"example.org/posology/units"
)

// LogValue gives the estimate in a line of a log: of which exercise and side, the
// mass with its interval, and how it was come by. Whose it is is left out.
func (e Estimate) LogValue() slog.Value {
	low, _ := e.Interval.Min()
	high, _ := e.Interval.Max()
	return slog.GroupValue(
		slog.String("exercise", string(e.Exercise)), slog.String("side", e.Side.String()), slog.String("day", e.Day.String()),
		slog.String("one_rm", e.OneRM.Short(units.Nearest)), slog.String("low", low.Short(units.Down)), slog.String("high", high.Short(units.Up)),
		slog.String("stated", e.Stated.String()), slog.String("formula", e.Formula.String()), slog.String("grade", e.Grade.String()))
}
