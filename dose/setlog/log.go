package setlog

import (
	"fmt"
	"log/slog"

	"example.org/posology/units/field"
)

// LogValue gives the set in a line of a log: exercise, side, day, load and repetitions.
// Whose it is, and how hard it was called, are left out.
func (s Set) LogValue() slog.Value {
	return slog.GroupValue(slog.String("exercise", string(s.Exercise)), slog.String("side", s.Side.String()), slog.String("day", s.Day.String()),
		slog.String("load", s.Load.String()), slog.Int("reps", s.Reps))
}

// LogValue gives the place of the row and its bad fields as [field.Errors.LogValue] does,
// without what stands in them.
func (e *RowError) LogValue() slog.Value {
	e = field.OrZero(e)
	var bad field.Errors
	bad.Add("", e.Err)
	return slog.StringValue(fmt.Sprintf("line %d, column %d: %v", e.Line, e.Column, bad.LogValue()))
}
