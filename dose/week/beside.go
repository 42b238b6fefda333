package week

import (
	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/guideline"
)

// besides gives what belongs beside the week and lifting does not give, and what of it
// is not begun.
func (p *planner) besides() ([]beside.Item, []beside.Barred, error) {
	return beside.Start(beside.Situation{Day: p.r.Day, Screening: p.r.Screening, Goal: p.r.Goal, Fast: p.phase() == dose.Power, Known: p.r.Known})
}

// asked adds what the plan asks for beside its sessions: of balance the most days of any
// item, of aerobic work the brisk minutes, of impacts those of a session. What is
// there without a dose is proposed.
func (w Week) asked(out *guideline.AuditedWeek) {
	kinds := map[beside.ItemKind]struct {
		field guideline.Field
		found **int
		of    func(beside.Item) int
	}{
		beside.Balance: {guideline.FieldBalanceDays, &out.BalanceDays, func(i beside.Item) int { days, _ := i.Days.Min(); return days }},
		beside.Aerobic: {guideline.FieldAerobic, &out.AerobicMinutes, beside.Item.BriskMinutes},
		beside.Impact:  {guideline.FieldImpacts, &out.Impacts, func(i beside.Item) int { return i.Sets * i.Count }},
	}
	proposed := map[guideline.Field]bool{}
	for _, item := range w.Beside {
		k, counts := kinds[item.Kind]
		switch {
		case !counts:
		case !item.Dosed():
			proposed[k.field] = true
		case *k.found == nil:
			*k.found = new(k.of(item))
		default:
			*k.found = new(max(**k.found, k.of(item)))
		}
	}
	for _, f := range []guideline.Field{guideline.FieldBalanceDays, guideline.FieldAerobic, guideline.FieldImpacts} {
		if proposed[f] {
			out.Proposed = append(out.Proposed, f)
		}
	}
}
