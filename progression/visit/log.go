package visit

import "log/slog"

// LogValue gives day, exercise and how many sets were done in a line of a log. What was
// noted, and who saw it, are left out.
func (v Visit) LogValue() slog.Value {
	return slog.GroupValue(slog.String("day", v.Day.String()), slog.String("exercise", string(v.Plan.Exercise)), slog.Int("sets", len(v.Sets)))
}
