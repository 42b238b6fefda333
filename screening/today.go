package screening

import (
	"slices"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Today returns the outcome of an assessment tightened by the day's check. It
// is never looser than o, which it leaves as it is. What was to be asked today
// and was not counts as yes: fever and what is new, of everyone; glucose, and a
// low that needed help, of those on insulin or a secretagogue; ketones at a high
// glucose; the rest of a record of pain that was begun.
//
// The outcome is for the setting of the check: with more company nothing that was
// screened is loosened, and with less the person is assessed again.
//
// The errors are those of [Check.Validate], a [field.ErrMissing] or
// [field.ErrConflict] for an outcome that came from no assessment, from a later
// day, or from another day's check, and a [field.ErrConflict] for less company.
func Today(c Check, o Outcome) (Outcome, error) {
	var bad field.Errors
	bad.Add("/check", c.Validate())
	bad.Add("/outcome", c.fits(o))
	if c.Setting.company() < o.Setting {
		bad.Add("/check/setting", c.lessCompany(o))
	}
	if len(bad) > 0 {
		return Outcome{}, bad
	}
	out := o.Tightest()
	out.Today, out.Setting = c.Day, c.Setting.company()
	out.TestsFrom = max(o.TestsFrom, testsFrom(c.Events, Checklist{}, c.Day))
	out.Findings = slices.Clone(o.Findings)
	out.Missing = slices.Clone(o.Missing)
	out.Ended = slices.Clone(o.Ended)
	c.newSigns(&out)
	c.toldToday(&out)
	c.happened(&out)
	c.checks(&out)
	c.lists(&out)
	c.untaken(&out)
	c.ownState(&out)
	c.lapses(&out)
	c.taken(&out)
	out.Findings = slices.DeleteFunc(out.Findings, func(f Finding) bool { return f.Reason.Code == nothingCode })
	out.close()
	out.Plan = out.dayPlan()
	if out.Meanwhile > o.Meanwhile {
		out.Plan = max(out.Plan, Lighter) // less goes on than was planned for
	}
	return out, nil
}

// lapses holds whose assessment was to be renewed before the day, until it is.
func (c Check) lapses(o *Outcome) {
	if c.Day > o.ReviewBy {
		o.addOpen(byRule(evidence.Because(lapsedCode, renewalFact).With(evidence.Day("day", o.ReviewBy))), askNothing)
	}
}

// taken drops the questions for a pressure and pulse that the day has brought,
// unless something is held until the assessment has them.
func (c Check) taken(o *Outcome) {
	o.Missing = slices.DeleteFunc(o.Missing, func(q Question) bool {
		brought := q.Code == askPressure && c.BP != nil || q.Code == askPulse && c.RestingPulse > 0
		return brought && !slices.ContainsFunc(o.Findings, func(f Finding) bool {
			return f.Code == q.Code && !f.Known || f.Code == pressureUntaken && q.Code == askPressure
		})
	})
}

// dayPlan is what becomes of the session: what only waits for an answer or a
// second reading is settled first.
func (o *Outcome) dayPlan() DayPlan {
	plan := AsPlanned
	for i := range o.Findings {
		switch f := &o.Findings[i]; {
		case f.Route == Emergency:
			return HelpNow
		case f.Meanwhile == Nothing && f.Open:
			plan = max(plan, SettleFirst)
		case f.Meanwhile == Nothing:
			plan = NotToday
		case f.Limits.Lighten != Lighten{}:
			plan = max(plan, Lighter)
		}
	}
	return plan
}

// fits reports what keeps c from being applied to o.
func (c Check) fits(o Outcome) error {
	switch {
	case o.Route == 0 && o.Meanwhile == 0:
		return field.Bad(nil, "an outcome of Assess", field.ErrMissing)
	case !o.Screened():
		return o.Validate()
	case o.Waived != "":
		return field.New("/waived", o.Waived, "an outcome of Assess: a waiver is for no person", field.ErrConflict)
	case c.Day < o.Day:
		return field.New("/day", o.Day, "the day of the check or before", field.ErrConflict)
	case o.Today != 0 && o.Today != c.Day:
		return field.New("/today", o.Today, "the assessment's own outcome, not one of another day's check", field.ErrConflict)
	}
	return nil
}

// lessCompany says that the person was screened for company that is not there.
func (c Check) lessCompany(o Outcome) error {
	got := c.Setting.String()
	if c.Setting == 0 {
		got = "not given, which counts as alone"
	}
	return field.Bad(got, o.Setting.String()+", as screened, or more company; else assess anew for that setting", field.ErrConflict)
}

// newSigns reports symptoms and red flags since the last visit.
func (c Check) newSigns(o *Outcome) {
	if !c.New.Asked {
		o.addUnasked(askNew, c.Setting)
	}
	for _, it := range inOrder(c.New.appendItems(nil)) {
		e := it.effect.inSetting(c.Setting, it.balance)
		if it.held == Yes {
			o.add(it.finding(plainly), e)
			continue
		}
		o.ask(it.unsure())
		o.addOpen(it.finding(unsurely), e.softened())
	}
}

// toldToday ends the day on which the assessment heard of a late low, as the day on which
// the check hears of one.
func (c Check) toldToday(o *Outcome) {
	if c.Day == o.Day && slices.ContainsFunc(o.Findings, func(f Finding) bool { return f.Code == lateLow && f.Known }) {
		e := find(lateLow)
		o.add(e.finding(plainly), e.effect.inSetting(c.Setting, e.balance))
	}
}

// happened reports events since the assessment: they end clearances, estimates
// and the plan, and may be a condition by themselves.
func (c Check) happened(o *Outcome) {
	for _, e := range c.Events {
		then := askNoLoad
		if e.Code == fallen { // a simple one is the physiotherapist's to look at
			then = lookNoLoad
		}
		reason := evidence.Because(happenedCode, eventFact, find(e.Code).factID()).With(evidence.Text("event", find(e.Code).meaning))
		o.add(finding(e.Code, plainly, reason), then.inSetting(c.Setting, e.Code == fallen))
		if !slices.Contains(o.Ended, e.Code) {
			o.Ended = append(o.Ended, e.Code)
		}
	}
	happened := Profile{Day: c.Day, Events: c.Events}
	for _, it := range inOrder(happened.appendEvents(nil)) {
		o.add(it.finding(plainly), it.effect.inSetting(c.Setting, it.balance))
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
		o.addRead(e, plainly, e.effect.inSetting(c.Setting, e.balance), c)
	}
	for _, code := range SessionDay(c.worst(), Profile{}).Reasons {
		if slices.Contains(met.Reasons, code) {
			continue
		}
		e := find(code)
		o.ask(askFor(c.wouldSettle(code), code))
		if code == ketonesHigh && c.stripsAway() {
			e = find(noStrips)
			o.add(e.finding(plainly), e.effect)
			continue
		}
		o.addOpen(e.finding(unsurely), e.effect.softened().inSetting(c.Setting, e.balance))
	}
}

// lists reports what the day's pressure meets on the lists of contraindications,
// with the clearances still in force, and at its lower edge: the same reading is
// never looser on a later day than at the screening.
func (c Check) lists(o *Outcome) {
	a := assessment{out: *o, p: Profile{
		Day: c.Day, Setting: c.Setting, BP: c.BP, BPAgain: c.BPAgain, RestingPulse: c.RestingPulse, RestingPulseAgain: c.RestingPulseAgain,
		Clearances: o.Clearances, Events: c.Events,
	}}
	a.read()
	a.measured()
	a.askClearance()
	*o = a.out
}

// stripsAway reports whether ketones cannot be tested in a person known to take
// nothing that can cause a low: then the team is asked and light work goes on.
func (c Check) stripsAway() bool { return c.NoKetoneStrips && c.InsulinOrSecretagogue == No }

// untaken asks for what every day must bring and this one did not.
func (c Check) untaken(o *Outcome) {
	each := slices.Clone(o.EachDay)
	if c.InsulinOrSecretagogue == Yes { // what is found twice stands once
		each = append(each, askGlucose)
	}
	taken := map[Code]bool{
		askGlucose: !c.Glucose.IsZero(), askPressure: c.BP != nil, askPulse: c.RestingPulse > 0, askSaturation: c.SpO2 > 0,
		askWeight: c.Weight != nil, worsening: c.Worsening != Unknown,
	}
	for _, code := range each {
		if taken[code] || code == askGlucose && c.InsulinOrSecretagogue == No {
			continue
		}
		e := find(code)
		o.ask(askFor(code, ""))
		o.addOpen(e.finding(unsurely), e.effect.softened().inSetting(c.Setting, e.balance))
	}
}

// ownState reports what stands in no published check of the day: heart failure,
// effort at a high pressure, pain that the model is not for, soreness, illness.
func (c Check) ownState(o *Outcome) {
	meet := func(met bool, code Code) {
		if met {
			e := find(code)
			o.add(e.finding(plainly), e.effect.inSetting(c.Setting, e.balance))
		}
	}
	failing := c.heartFailure((&Profile{}).found())
	o.Rules.HeartFailure = o.Rules.HeartFailure.join(failing)
	for _, code := range failing.Reasons {
		meet(true, code)
	}
	if bp := last(c.BP, c.BPAgain); bp != nil && bp.Systolic > exertionSystolic {
		o.addRead(find(exertionHigh), plainly, find(exertionHigh).effect, c)
	}
	if c.Pain != nil {
		o.Rules.Pain = PainModel(*c.Pain)
		c.painElsewhere(o)
	}
	if c.Pain != nil && c.Pain.Kind == 0 {
		e := find(askPainKind)
		o.ask(askFor(askPainKind, ""))
		o.addOpen(e.finding(unsurely), e.effect)
	}
	meet(c.SpO2 > 0 && c.SpO2 < spo2Severe && c.SpO2Again >= spo2Floor, saturationPassed)
	meet(SorenessLasts(c.SorenessDays), sorenessLasting)
	meet(c.Unwell == Yes, unwellToday)
}

// painElsewhere reports pain that the model is not for. Of pain that spreads the
// place is spared, if it is known, of an arm or a leg on its side; any sign of a serious cause is asked for each day.
func (c Check) painElsewhere(o *Outcome) {
	e := find(otherPain[c.Pain.Kind])
	switch site := c.Pain.Site; {
	case o.MayBeFracture(*c.Pain):
		e = find(otherPain[SpinePain])
		o.add(e.finding(lesserKind), *e.lesser)
	case e == nil:
	case e.sited != nil && site != 0 && site != body.WholeBody:
		o.add(e.finding(itsPlace), e.sited.with(Limits{Avoid: sparing(site)}.onSide(site, c.Pain.Side)))
	default:
		o.add(e.finding(plainly), e.effect)
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
	if c.Ketones == 0 && c.BloodKetones == nil && c.highGlucose() != "" {
		c.Ketones = LargeKetones
	}
	if c.Pain != nil {
		worst := c.Pain.worst()
		c.Pain = &worst
	}
	return c
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
