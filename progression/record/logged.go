package record

import "log/slog"

// LogValue gives exercise, side, day and decision in a line of a log. The log of
// the exercise is left out.
func (i Decided) LogValue() slog.Value {
	return slog.GroupValue(slog.String("exercise", string(i.Exercise)), slog.String("side", i.Side.String()), slog.String("day", i.Day.String()),
		slog.Any("decision", i.Decision))
}

// LogValue gives version, last day and the lengths of the lists in a line of a log.
// Whose the record is, and what was told, are left out, as in all that follow.
func (r Record) LogValue() slog.Value {
	return slog.GroupValue(slog.Int("version", r.Version), slog.String("day", r.LastDay().String()),
		slog.Int("checks", len(r.Checks)), slog.Int("tests", len(r.Tests)), slog.Int("asked", len(r.Asked)), slog.Int("visits", len(r.Visits)),
		slog.Int("done", len(r.Done)), slog.Int("entries", len(r.Entries)))
}

// LogValue gives days and lengths in a line of a log.
func (g Given) LogValue() slog.Value {
	return slog.GroupValue(slog.String("day", g.Profile.Day.String()), slog.Int("exercises", len(g.Exercises)), slog.Int("days", len(g.Days)),
		slog.String("began", g.Began.String()), slog.String("review", g.Review.String()))
}

// LogValue gives the outcome of the screening, and how much follows, in a line of a log:
// sessions, or the code of the stop.
func (p Plan) LogValue() slog.Value {
	list := []slog.Attr{slog.Any("outcome", p.Screening), slog.Int("estimates", len(p.Estimates)), slog.Int("refused", len(p.Refused))}
	if p.Week != nil {
		list = append(list, slog.Int("sessions", len(p.Week.Sessions)))
	}
	if p.Stop != nil {
		list = append(list, slog.String("stop", string(p.Stop.Constraint.Code)))
	}
	return slog.GroupValue(list...)
}

// LogValue gives the days, the outcome of the screening, and how much was decided, in a
// line of a log.
func (r Review) LogValue() slog.Value {
	return slog.GroupValue(slog.String("day", r.Day.String()), slog.String("next", r.Next.String()), slog.Any("outcome", r.Screening),
		slog.Int("items", len(r.Items)), slog.Int("overdue", len(r.Overdue)), slog.Bool("expired", r.Expired))
}

// LogValue gives day, edition, and the plan or how much was decided, in a line of a log.
func (e Entry) LogValue() slog.Value {
	list := []slog.Attr{slog.String("day", e.Day.String()), slog.String("edition", e.Edition)}
	if e.Plan != nil {
		list = append(list, slog.Any("plan", *e.Plan))
	}
	return slog.GroupValue(append(list, slog.Int("items", len(e.Items)))...)
}

// LogValue gives the day, and how many exercises something was noted of alone, in a line
// of a log.
func (d TrainingDay) LogValue() slog.Value {
	return slog.GroupValue(slog.String("day", d.Day.String()), slog.Int("but", len(d.But)))
}
