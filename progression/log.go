package progression

import "log/slog"

// LogValue gives the decision in a line of a log: action, change, the next dose as
// [example.org/posology/dose.Prescription.LogValue] gives it, and how many reasons there are.
func (d Decision) LogValue() slog.Value {
	list := []slog.Attr{slog.String("action", d.Action.String()), slog.String("change", d.Change.String()), slog.Int("reasons", len(d.Reasons))}
	if d.Instead != "" {
		list = append(list, slog.String("instead", string(d.Instead)))
	}
	if d.Next != nil {
		list = append(list, slog.Attr{Key: "next", Value: d.Next.LogValue()})
	}
	return slog.GroupValue(list...)
}
