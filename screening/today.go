package screening

import (
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Today returns the outcome of an assessment tightened by the day's check. It
// is never looser than o, which it leaves as it is. What was to be asked today
// and was not counts as yes: fever and what is new, of everyone; glucose, and a
// low that needed help, of those on insulin or a secretagogue; ketones at a high
// glucose; the rest of a record of pain that was begun.
//
// The errors are those of [Check.Validate], and an [units.ErrMissing] or
// [units.ErrConflict] for an outcome that came from no assessment, from a later
// day, or from another day's check.
func Today(c Check, o Outcome) (Outcome, error) {
	var bad units.FieldErrors
	bad.Add("/check", c.Validate())
	bad.Add("/outcome", c.fits(o))
	if len(bad) > 0 {
		return Outcome{}, bad
	}
	out := o
	out.Today = c.Day
	out.Findings = slices.Clone(o.Findings)
	out.Missing = slices.Clone(o.Missing)
	c.newSigns(&out)
	c.checks(&out)
	if !o.ReviewBy.IsZero() && c.Day > o.ReviewBy {
		out.add(evidence.Because(lapsedCode, clearanceFact).With("day", o.ReviewBy), askNoLoad)
	}
	out.Findings = slices.DeleteFunc(out.Findings, func(f Finding) bool { return f.Reason.Code == nothingCode })
	out.close()
	return out, nil
}

// fits reports what keeps c from being applied to o.
func (c Check) fits(o Outcome) error {
	switch {
	case !o.Screened():
		return units.Field("", nil, "an outcome of Assess", units.ErrMissing)
	case o.Waived != "":
		return units.Field("/waived", o.Waived, "an outcome of Assess: a waiver is for no person", units.ErrConflict)
	case c.Day < o.Day:
		return units.Field("/day", o.Day, "the day of the check or before", units.ErrConflict)
	case o.Today != 0 && o.Today != c.Day:
		return units.Field("/today", o.Today, "the assessment's own outcome, not one of another day's check", units.ErrConflict)
	}
	return nil
}

// newSigns reports symptoms and red flags since the last visit.
func (c Check) newSigns(o *Outcome) {
	if !c.New.Asked {
		o.addUnasked(askNew, c.Setting)
	}
	for _, it := range inOrder(c.New.appendItems(nil)) {
		e, variant := it.effect.inSetting(c.Setting, it.balance), plainly
		if it.held != Yes {
			e, variant = e.softened(), unsurely
			o.ask(Question{it.code, it.reason(unsurely)})
		}
		o.add(it.reason(variant), e)
	}
}

// checks reports the session-day checks: those met, and those that would be
// met if what is not known were so.
func (c Check) checks(o *Outcome) {
	if slices.Contains(o.EachDay, askGlucose) && c.InsulinOrSecretagogue == Unknown {
		c.InsulinOrSecretagogue = Yes
	}
	met := SessionDay(c, Profile{})
	o.Rules.SessionDay = o.Rules.SessionDay.join(met)
	for _, code := range met.Reasons {
		e := find(code)
		o.add(e.reason(plainly), e.effect.inSetting(c.Setting, e.balance))
	}
	for _, code := range SessionDay(c.worst(), Profile{}).Reasons {
		if slices.Contains(met.Reasons, code) {
			continue
		}
		e := find(code)
		o.ask(askFor(c.wouldSettle(code), code))
		o.add(e.reason(unsurely), e.effect.softened().inSetting(c.Setting, e.balance))
	}
	if c.InsulinOrSecretagogue == Yes && c.Glucose.IsZero() {
		e := find(askGlucose)
		o.ask(askFor(askGlucose, askInsulin))
		o.add(e.reason(unsurely), e.effect.inSetting(c.Setting, e.balance))
	}
}

// worst returns c with the worst answer to what was to be asked and was not.
func (c Check) worst() Check {
	if c.Febrile == Unknown {
		c.Febrile = Yes
	}
	if c.InsulinOrSecretagogue == Unknown && !c.Glucose.IsZero() {
		c.InsulinOrSecretagogue = Yes
	}
	if c.SevereLow == Unknown && c.InsulinOrSecretagogue == Yes {
		c.SevereLow = Yes
	}
	if c.Ketones == KetonesUnknown && c.highGlucose() != "" {
		c.Ketones = LargeKetones
	}
	if c.Pain != nil {
		worst := c.Pain.worst()
		c.Pain = &worst
	}
	return c
}

func (p Pain) worst() Pain {
	most := 10.0
	if p.During == nil {
		p.During = &most
	}
	if p.After == nil {
		p.After = &most
	}
	if p.SettledNextMorning == Unknown {
		p.SettledNextMorning = No
	}
	if p.WeeklyTrend == TrendUnknown {
		p.WeeklyTrend = RisingPain
	}
	return p
}

// wouldSettle is the question whose answer would settle whether a check is met.
func (c Check) wouldSettle(code Code) Code {
	switch code {
	case glucoseBelowEat:
		return askInsulin
	case glucoseVeryLow:
		if c.InsulinOrSecretagogue == Unknown {
			return askInsulin
		}
		return askSevereLow
	case ketonesHigh:
		return askKetones
	case feverToday:
		return feverToday
	}
	return askPain
}
