package screening

import "log/slog"

// LogValue gives the outcome in a line of a log: route, what may go on, the days,
// and how much was found or is missing. Whose it is and what was found are left
// out: that belongs in the record.
func (o Outcome) LogValue() slog.Value {
	list := []slog.Attr{
		slog.String("route", o.Route.String()), slog.String("meanwhile", o.Meanwhile.String()), slog.String("day", o.Day.String()),
		slog.String("review_by", o.ReviewBy.String()), slog.Int("findings", len(o.Findings)), slog.Int("missing", len(o.Missing)),
	}
	if o.Today != 0 {
		list = append(list, slog.String("today", o.Today.String()), slog.String("plan", o.Plan.String()))
	}
	if o.Waived != "" {
		list = append(list, slog.Bool("waived", true))
	}
	return slog.GroupValue(list...)
}
