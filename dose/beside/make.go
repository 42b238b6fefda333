package beside

import (
	"example.org/posology/dose/guideline"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// make writes the item of a step, with what is said of it: of a harder one only where
// nothing stands against it.
func (s *Situation) make(t *track, at, met int, more ...evidence.Reason) Item {
	from := t.steps[at-1]
	if from.move == &walk && s.found(sparedFeet...) {
		from.move = &sitting
	}
	most, why := s.ceiling(t)
	i := Item{
		Kind: t.kind, Track: t.id, Step: at, Met: met, Move: from.id, Name: from.name, Sets: from.sets, Count: from.count, Seconds: from.seconds,
		Minutes: from.minutes, Brisk: from.brisk, Hands: from.hands, Effort: from.effort, Height: from.height, Force: from.force,
	}
	i.Reasons = append(i.Reasons, evidence.Because("beside.do-"+evidence.ReasonCode(from.id), from.facts...))
	switch t.kind {
	case Balance:
		s.balance(&i)
	case Aerobic:
		s.aerobic(&i)
	case Impact:
		s.impact(&i, from)
	case Power:
		s.power(&i)
	}
	switch {
	case at < most:
		i.because(harder(t, from, t.steps[at]))
	case why != nil:
		more = append(append(more, *why), freed(why.Code)...)
	}
	i.Reasons = append(append(i.Reasons, more...), evidence.Because("beside.filled", factFilled).With(evidence.ID("track", t.id), evidence.Count("step", at), evidence.Count("of", len(t.steps))))
	return i
}

// harder says when the next step comes, and what it is.
func harder(t *track, from, to step) evidence.Reason {
	days := evidence.Count("days", t.days)
	switch {
	case t.kind == Balance:
		return evidence.Because("beside.harder-balance", factMoveOn).With(days)
	case t.kind == Power:
		return evidence.Because("beside.harder-power", factMoveOn).With(days)
	case t.kind == Aerobic && to.brisk > from.brisk:
		return evidence.Because("beside.harder-pace", factMoveOn, factPace).With(days)
	case t.kind == Aerobic:
		return evidence.Because("beside.harder-minutes", factMoveOn, factPace).With(days)
	case to.move != from.move:
		return evidence.Because("beside.harder-kind", factImpactSteps).With(days)
	}
	return evidence.Because("beside.harder-impact", factImpactSteps).With(days, evidence.Count("more", impactSet), evidence.Count("most", mostImpacts))
}

// pause keeps the place of an item and takes its dose away.
func (s *Situation) pause(t *track, at int, why evidence.Reason) Item {
	from := t.steps[at-1]
	return Item{Kind: t.kind, Track: t.id, Step: at, Paused: true, Move: from.id, Name: from.name, Reasons: append([]evidence.Reason{why}, freed("beside.not-now")...)}
}

func (s *Situation) balance(i *Item) {
	row := s.balanceRow()
	i.Days = row.BalanceDays
	if i.Seconds > 0 {
		i.because(evidence.Because("beside.hold", factHold).With(evidence.Count("tries", i.Sets), evidence.Seconds("seconds", i.Seconds)))
	} else {
		i.because(evidence.Because("beside.repeat", factHold).With(evidence.Count("tries", i.Sets), evidence.Count("count", i.Count)))
	}
	i.because(weekly(i.Days, row, guideline.FieldBalanceDays))
	i.because(evidence.Because("beside.balance-minutes", factMinutes).With(evidence.Minutes("minutes", i.Minutes)))
	i.because(map[Holding]evidence.Reason{
		BothHandsOn: evidence.Because("beside.both-hands", factSupport), OneHandOn: evidence.Because("beside.one-hand", factSupport),
		HandsNear: evidence.Because("beside.hands-free", factSupport),
	}[i.Hands])
	if s.Known.Stands == nil {
		i.because(evidence.Because("beside.not-looked", factStart))
	}
	if s.unsteady() {
		i.Company = i.Hands != BothHandsOn
		i.Aim = units.AtLeast(fallsMinutes)
		i.because(evidence.Because("beside.falls-minutes", factFallsHours).With(evidence.Minutes("aim", fallsMinutes)))
	}
	if i.Company {
		i.because(evidence.Because("beside.company", factCompany))
	}
	i.because(evidence.Because("beside.stop-balance", factTrouble))
}

// balanceRow is that of the WHO for who is 65 or unsteady, else the British one.
func (s *Situation) balanceRow() guideline.Recommendation {
	if s.Screening.Who.Age >= whoAge || s.unsteady() {
		return rowOf(whoRow)
	}
	return rowOf(britishRow)
}

func (s *Situation) aerobic(i *Item) {
	row := rowOf(whoRow)
	if s.Screening.Who.Age < whoAge {
		row = rowOf(whoAdults)
	}
	i.Days, i.Aim = units.AtLeast(aerobicDays), row.Aerobic
	i.because(evidence.Because("beside.walk", factWalkStart).With(evidence.Minutes("minutes", i.Minutes), evidence.Count("bouts", i.Sets), evidence.Count("days", aerobicDays)))
	switch {
	case i.Brisk == i.Sets:
		i.because(evidence.Because("beside.all-brisk", factTalk).With(evidence.Count("bouts", i.Sets)))
	case i.Brisk > 0:
		i.because(evidence.Because("beside.brisk", factTalk).With(evidence.Count("brisk", i.Brisk), evidence.Count("bouts", i.Sets)))
	default:
		i.because(evidence.Because("beside.easy-pace", factTalk))
	}
	if i.Brisk > 0 {
		i.because(evidence.Because("beside.cadence", factCadence).With(evidence.Count("steps", briskSteps)))
	}
	if i.Move == walk.id && (s.unsteady() || s.Screening.Limits.Avoid.Has(body.FreeStanding)) {
		i.because(evidence.Because("beside.hold-on", factLimits))
	}
	i.because(evidence.Because("beside.aerobic-aim", factOf(row, guideline.FieldAerobic)).With(evidence.Count("aim", i.Aim), evidence.Count("brisk", i.BriskMinutes())))
	i.because(evidence.Because("beside.stop-aerobic", factTrouble))
}

func (s *Situation) impact(i *Item, from step) {
	row := rowOf(boneRow)
	i.Days, i.Amount, i.Rest = units.AtLeast(impactDays), units.Exactly(i.Sets*i.Count), impactRest
	i.Company = from.move != &stamps
	if i.Sets > 1 {
		i.because(evidence.Because("beside.impacts", factImpactSteps).With(evidence.Count("sets", i.Sets), evidence.Count("count", i.Count), evidence.Seconds("rest", i.Rest), evidence.Count("days", impactDays)))
	} else {
		i.because(evidence.Because("beside.impacts-once", factImpactSteps).With(evidence.Count("count", i.Count), evidence.Count("days", impactDays)))
	}
	if i.Height > 0 {
		i.because(evidence.Because("beside.height", from.facts...).With(evidence.Quantity("height", i.Height, "cm")))
	}
	if i.Hands == OneHandOn {
		i.because(evidence.Because("beside.one-hand", factSupport))
	} else {
		i.because(evidence.Because("beside.hands-free", factSupport))
	}
	if i.Company {
		i.because(evidence.Because("beside.company", factImpactSteps))
	}
	i.because(evidence.Because("beside.force", from.facts...).With(evidence.Tenths("force", i.Force)))
	i.because(evidence.Because("beside.impact-row", factOf(row, guideline.FieldImpacts)).With(evidence.Count("impacts", row.Impacts)))
	i.because(evidence.Because("beside.no-promise", factJumpsAlone, factLiftingWith))
	i.because(evidence.Because("beside.stop-impact", factTrouble))
}

func (s *Situation) power(i *Item) {
	row := rowOf(powerRow)
	i.Days, i.Slower = row.Days, slower
	if i.Sets > 0 {
		i.Rest = powerRest
		i.because(evidence.Because("beside.rises", factRises).With(evidence.Count("sets", i.Sets), evidence.Count("count", i.Count), evidence.Seconds("rest", i.Rest)))
		i.because(weekly(i.Days, row, guideline.FieldDays))
	} else {
		i.Load, _ = s.band()
		i.because(evidence.Because("beside.power-load", factOf(row, guideline.FieldLoad), factPowerLoad).With(evidence.Share("band", i.Load)))
	}
	i.because(evidence.Because("beside.slower", factSlower).With(evidence.Share("slower", i.Slower)))
	if i.Sets > 0 {
		i.because(evidence.Because("beside.stop-power", factTrouble))
	} else {
		i.because(evidence.Because("beside.stop-lifts", factTrouble))
	}
}

// band is the row's load as far as the limits let it; false where they leave none of it.
func (s *Situation) band() (units.Range[units.Fraction], bool) {
	row := rowOf(powerRow).Load
	if most := s.Screening.Limits.MaxFraction; most > 0 {
		return row.Intersect(units.AtMost(most))
	}
	return row, true
}

func (i *Item) because(r evidence.Reason) { i.Reasons = append(i.Reasons, r) }

func weekly(n units.Range[int], row guideline.Recommendation, f guideline.Field) evidence.Reason {
	return evidence.Because("beside.days", factOf(row, f)).With(evidence.Count("days", n), evidence.ID("row", row.ID))
}
