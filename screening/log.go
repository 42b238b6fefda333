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

// LogValue gives the day, and how much was brought beside answers, in a line of a log.
// Whose they are and the answers are left out.
func (p Profile) LogValue() slog.Value {
	return slog.GroupValue(slog.String("day", p.Day.String()), slog.Int("events", len(p.Events)),
		slog.Int("clearances", len(p.Clearances)), slog.Int("restrictions", len(p.Restrictions)))
}

// LogValue gives the day in a line of a log, without the answers and readings.
func (c Check) LogValue() slog.Value {
	return slog.GroupValue(slog.String("day", c.Day.String()), slog.Int("events", len(c.Events)))
}
