package record

import "log/slog"

// LogValue gives exercise, side, day and decision in a line of a log. The log of
// the exercise is left out.
func (i Decided) LogValue() slog.Value {
	return slog.GroupValue(slog.String("exercise", string(i.Exercise)), slog.String("side", i.Side.String()), slog.String("day", i.Day.String()),
		slog.Any("decision", i.Decision))
}
