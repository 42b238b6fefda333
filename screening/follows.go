package screening

import (
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// spineNotSeen reports a spine of which nobody knows whether a bone of it broke, in
// osteoporosis. It is false for anybody else.
func (a *assessment) spineNotSeen(it item) bool {
	if it.question == nil {
		return false
	}
	e := find(spineNotSeen)
	f := e.finding(plainly)
	f.Exit = WayOut{Who: ThePhysio, With: ALook, Ask: it.question.code}
	a.out.addOpen(f, e.effect)
	return true
}

// dated is a way out with the day from which it ends by itself. Where the question that takes
// a look has its answer only the days are left.
func (a *assessment) dated(it item, x WayOut) WayOut {
	if x.With == ALook && a.p.settled(it.entry) {
		x.With, x.Ask = ADate, dayOf(it.code)
	}
	if x.With == ADate {
		x.From = a.p.ends(it.entry)
	}
	return x
}

// ends is the day from which what follows from a dated entry gets less, by itself; 0
// where its day is not known.
func (p *Profile) ends(e *entry) units.Day {
	dates := e.dated
	if e.finer != nil && e.finer.dated != nil && p.settled(e) {
		dates = e.finer.dated
	}
	var last units.Day
	for _, event := range p.Events {
		if event.is(e.code) {
			last = max(last, event.Day)
		}
	}
	for ; dates != nil && !last.IsZero(); dates = dates.next {
		if weeks, err := last.Plus(7 * dates.weeks); err == nil && monthsAfter(weeks, dates.months) > p.Day {
			return monthsAfter(weeks, dates.months)
		}
	}
	return 0
}

// follows is what an entry leads to, with finer questions, its place, its day, the
// policy and clearances counted in. What only matters once it is present is asked
// for only then.
func (a *assessment) follows(it item) (effect, evidence.ReasonCode) {
	e := it.entry
	follows, variant := a.itself(it)
	follows, variant = a.afterLook(it, follows, variant)
	if e.dropped && a.policy.RiskFactors != OlderList {
		follows, variant = byNewer, byNewerList
	}
	var codes room
	if hardest, ok := a.covered(it.appendNamed(codes[:0])); ok && e.released != nil && !a.p.kept(e) {
		left := follows.lifted(*e.released, hardest)
		if a.looked(it) { // never held harder than who has it, with the same agreement
			left = effect{follows.route, WithinLimits, e.released.limits}.with(Limits{MaxIntensity: hardest})
		}
		if e.finer != nil && !e.finer.explained && hardest < Vigorous { // which lifts no limit: see lifted
			left = left.with(e.finer.settled.limits)
		}
		if !left.same(follows) && left.lightens(follows) {
			a.lifted = it.appendNamed(a.lifted)
			return left, withClearance
		}
	}
	return follows, variant
}

// itself is what an entry leads to before policy and clearances.
func (a *assessment) itself(it item) (effect, evidence.ReasonCode) {
	e := it.entry
	if a.looked(it) {
		if spared, known := a.p.spared(e); known {
			return look.with(spared.limits), plainly
		}
		return *e.notKnown, plainly
	}
	follows, variant, dates := e.effect, plainly, e.dated
	if e.finer != nil && a.p.settled(e) {
		follows, variant = e.finer.settled, lookedAtOnce
		if e.finer.dated != nil {
			dates = e.finer.dated
		}
	}
	if dates != nil {
		stage, number, known := a.p.stage(e, dates)
		if stage != nil {
			follows, variant = stage.later, variant+stageVariants[number]
		}
		if !known && it.held == Yes {
			a.out.ask(askFor(dayOf(e.code), e.code))
		}
	}
	switch {
	case e.code == recentFracture:
		spared, known := a.p.fracture(e)
		if !known && it.held == Yes {
			a.out.ask(askFor(askRegion, e.code))
		}
		follows = spared
	case e.sited != nil && e.kind == Condition:
		spared, known := a.p.spared(e)
		if known {
			return spared, itsPlace
		}
		if it.held == Yes {
			a.out.ask(askFor(siteOf(e.code), e.code))
		}
	case e.lesser != nil && variant == plainly && a.isLesser(e):
		return *e.lesser, lesserKind
	case e.code == uncontrolled && a.p.pressure() != nil:
		follows = find(pressureRelative).effect
	}
	return follows, variant
}

// looked reports whether a look settles an item that is not known.
func (it item) looked() bool { return it.held != Yes && it.question == nil && it.notKnown != nil }

// looked is item.looked for this person: in heart failure no sign is settled by a look.
func (a *assessment) looked(it item) bool {
	return it.looked() && !(it.kind == Symptom && a.holds(heartFailure))
}

// isLesser reports whether nothing is beside an entry that makes it grave: of what has
// finer questions those that no clearance lifts.
func (a *assessment) isLesser(e *entry) bool {
	if e.finer != nil {
		return !a.p.kept(e)
	}
	return !slices.ContainsFunc(a.items, func(it item) bool { return slices.Contains(e.beside, it.code) })
}

// lift notes that clearances answer the need of a branch for all of the items.
func (a *assessment) lift(items []item) {
	for _, it := range items {
		a.lifted = it.appendNeeded(a.lifted)
	}
}

// same reports whether e and f have the same effect.
func (e effect) same(f effect) bool {
	return e.route == f.route && e.meanwhile == f.meanwhile && e.limits.AsTightAs(f.limits) && f.limits.AsTightAs(e.limits)
}

// lightens reports whether e holds no more than f in any respect that f does not.
func (e effect) lightens(f effect) bool {
	return e.route <= f.route && (e.meanwhile < f.meanwhile || e.meanwhile == f.meanwhile && f.limits.AsTightAs(e.limits))
}

// lifted is what is left of e where a clearance up to an effort releases it. It
// never forbids what could go on without it, for then losing it would loosen:
// one for less effort than that answers the question and lifts no limit. What is avoided
// while a wound or a new joint heals no agreement frees.
func (e effect) lifted(released effect, hardest Intensity) effect {
	switch {
	case e.meanwhile == WithinLimits && hardest == Vigorous:
		return released
	case e.meanwhile == WithinLimits:
		return effect{released.route, e.meanwhile, e.limits}
	}
	return released.with(Limits{MaxIntensity: hardest, Avoid: e.limits.Avoid})
}
