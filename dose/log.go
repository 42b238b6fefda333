package dose

import "log/slog"

// LogValue gives the dose in a line of a log: exercise, side, load, sets and
// count. The reasons belong in the record.
func (p Prescription) LogValue() slog.Value {
	list := []slog.Attr{slog.String("exercise", string(p.Exercise)), slog.String("side", p.Side.String()), slog.String("mode", p.Mode.String())}
	if p.Load.Each() > 0 {
		list = append(list, slog.String("load", p.Load.Marked().String()), slog.String("hold", p.Hold.String()))
	}
	return slog.GroupValue(append(list, slog.Int("sets", p.Sets), slog.Int("count", p.Count), slog.String("measure", p.Measure.String()))...)
}
