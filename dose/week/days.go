package week

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/internal/say"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// checkDays asks for at least one day, each once, all within seven days.
func checkDays(days []units.Day) error {
	var bad field.Errors
	bad.Refuse(len(days) == 0, "", nil, "at least one day", field.ErrMissing)
	for i, day := range days {
		bad.Add(given.At("", i), day.Check())
		if slices.Contains(days[:i], day) {
			bad.Add(given.At("", i), field.Bad(day, "each day once", field.ErrDuplicate))
		}
	}
	if bad.Err() == nil && slices.Max(days)-slices.Min(days) >= given.Week {
		bad.Add("", field.Bad(slices.Max(days), "days within seven days of the first", field.ErrOutOfRange))
	}
	return bad.Err()
}

// days chooses as many of the days as the guideline allows, at most three,
// with two days from one session to the next, in the week after too.
// Among equals the earliest days win.
func (p *planner) days() []units.Day {
	if p.r.Brief {
		return p.inReview()
	}
	most := usualDays
	if p.phase() == dose.Maintain {
		most, _, _ = dose.MaintenanceDose()
	}
	for _, item := range p.items {
		if top, ok := item.Days.Max(); ok {
			most = min(most, top)
		}
	}
	return spread(p.inReview(), most)
}

// inReview returns the days offered, sorted, up to that by which the assessment is
// to be made again.
func (p *planner) inReview() []units.Day {
	days, last := slices.Sorted(slices.Values(p.r.Days)), p.r.Screening.ReviewBy
	return slices.DeleteFunc(days, func(d units.Day) bool { return d > last })
}

// phase returns the phase of the week: the earliest of any exercise, so that what
// is still learnt is looked at soon.
func (p *planner) phase() dose.Phase {
	phase := p.items[0].Phase
	for _, item := range p.items {
		phase = min(phase, item.Phase)
	}
	return phase
}

// spread returns the largest choice of at most n sorted days that keeps the
// distance, the earliest among equals.
func spread(days []units.Day, n int) []units.Day {
	var best []units.Day
	for set := range 1 << len(days) {
		var chosen []units.Day
		for i, day := range days {
			if set&(1<<i) != 0 {
				chosen = append(chosen, day)
			}
		}
		if len(chosen) > n || !apart(chosen) {
			continue
		}
		if len(chosen) > len(best) || len(chosen) == len(best) && slices.Compare(chosen, best) < 0 {
			best = chosen
		}
	}
	return best
}

// apart reports whether the days keep two days between sessions, round the week.
func apart(days []units.Day) bool {
	for i := 1; i < len(days); i++ {
		if days[i]-days[i-1] < DaysBetween {
			return false
		}
	}
	return len(days) < 2 || days[0]+given.Week-days[len(days)-1] >= DaysBetween
}

// weekReasons say what the week was built on and what it does not hold.
func (p *planner) weekReasons(days []units.Day) []evidence.Reason {
	list := append(p.spacing(days),
		evidence.Because("dose.dates", factTwoWeeks, factRetest, factExpiry),
		evidence.Because("dose.stop-and-ask"))
	list = slices.Concat(list, p.takenAsThere(), p.short)
	if needed := p.minutes(p.items); p.r.Minutes > 0 && needed > p.r.Minutes {
		list = append(list, evidence.Because(codeTooFew, factChange, factPace, factWarmUp).With(evidence.Minutes("minutes", p.r.Minutes), evidence.Minutes("needed", needed)))
	}
	if n := len(p.r.Days) - len(p.inReview()); n > 0 {
		list = append(list, evidence.Because("dose.days-past-review", factReviewed).With(evidence.Day("review", p.r.Screening.ReviewBy), evidence.Days("days", n)))
	}
	if p.phase() == dose.Familiarise {
		list = append(list, evidence.Because("dose.familiarise", factTwoWeeks))
	}
	if light := p.belowGoal(); light > 0 {
		code := evidence.ReasonCode("dose.week-below-goal")
		if p.phase() == dose.Familiarise {
			code = "dose.week-below-goal-learning"
		}
		list = append(list, evidence.Because(code, given.RowFacts(p.r.Screening.Who.Age)...).With(
			evidence.Count("light", light), evidence.Count("all", len(p.items)), evidence.Term("goal", p.r.Goal.String())))
	}
	least, _ := p.items[0].Days.Min()
	if len(days) < least {
		list = append(list, evidence.Because("dose.too-few-days", factsSaid(p.items[0].Reasons, "dose.days")...).With(evidence.Days("days", len(days)), evidence.Count("least", least)))
	}
	return list
}

// belowGoal counts the exercises without a weight or flagged as too light,
// where the goal is one that takes load. Loads still to be found count neither way.
func (p *planner) belowGoal() int {
	switch p.r.Goal {
	case guideline.Strength, guideline.Hypertrophy, guideline.Power, guideline.Bone:
	default:
		return 0
	}
	light := 0
	for _, item := range p.items {
		if item.Hold == body.Unloaded || slices.Contains(item.Flags, dose.BelowEffectiveDose) {
			light++
		}
	}
	return light
}

// factsSaid are the facts of the reason of a code in a list.
func factsSaid(list []evidence.Reason, code evidence.ReasonCode) []evidence.FactID {
	for _, r := range list {
		if r.Code == code {
			return r.Facts
		}
	}
	return nil
}

// takenAsThere says what the items need of which nobody asked whether it is there.
func (p *planner) takenAsThere() []evidence.Reason {
	if p.r.Kit.Things != nil {
		return nil
	}
	var needed []exercise.Thing
	for _, item := range p.items {
		ex, _ := p.r.Catalogue.Get(item.Exercise)
		needed = append(needed, ex.Needs...)
	}
	slices.Sort(needed)
	if needed = slices.Compact(needed); len(needed) == 0 {
		return nil
	}
	return []evidence.Reason{evidence.Because("dose.taken-as-there", factThere).With(evidence.Terms("things", say.Texts(needed)...))}
}
