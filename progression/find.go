package progression

import (
	"slices"

	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/internal/told"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

const (
	mostTries = 4 // steps up at one visit, of which the frame leaves two where they are large
	triedReps = 6 // repetitions of a weight that is tried, at least
)

// mayTry returns how many steps up may be tried from the present weight, each
// only while it is clearly easy: none unless every set left more than can be
// counted, and none to a weight of which what is known comes nowhere near. What
// counts no repetitions is tried one step at a time.
func (n *now) mayTry() int {
	if n.jump == nil || n.vain || n.h.Declined(n.seen.Base, feelEvery) || !n.seen.BeyondCounting() && !n.ratedTwice() {
		return 0
	}
	if !n.counts() {
		return 1
	}
	if !n.near(n.strength, n.jump.To.Each()) && !n.firstSearch() {
		return 0
	}
	steps, to := 1, n.jump
	for steps < mostTries {
		from := to.To.Each()
		if to = n.beyond(to); to == nil || n.lifted(to.To.Each()) || !n.easilyShows(from, to.To.Each()) {
			break // it shows itself, was tried in vain, or is too far from the one before
		}
		steps++
	}
	return steps
}

// easilyShows reports whether a weight that was clearly easy when it was tried comes
// near another.
func (n *now) easilyShows(from, to units.Mass) bool {
	share, err := n.h.WithBody(to).Share(n.h.WithBody(from))
	return err == nil && share*nearlyAll <= 1+units.Fraction(triedReps+easiest)/epleyReps
}

// stillLooking reports whether the load goes on being looked for: it was, no
// weight was too much, and every set left more than can be counted.
func (n *now) stillLooking() bool {
	return n.bearsMore() && n.lookedFor() && !n.seen.Tried && n.withinLimits() && n.seen.Visit.Met() && n.mayTry() > 0
}

// lookedFor reports whether the load was to be found, at the last visit or at one whose
// sets were with the lightest weight or came near the next one, and since which every set
// left more than can be counted: the search waited. With the lightest weight it begins
// again at the end of the range.
func (n *now) lookedFor() bool {
	if n.seen.Finding || !n.counts() {
		return n.seen.Finding
	}
	for i := len(n.c.Log) - 1; i >= 0; i-- {
		v := &n.c.Log[i]
		if i == len(n.c.Log)-calmVisits && history.LeftEasily(v, n.seen.Base) && n.searchesAnew() {
			return true
		}
		if !history.LeftEasily(v, n.seen.Base) || v.Plan.Finding == nil && v.Plan.Load.Each() != n.seen.Base {
			return false
		}
		if v.Plan.Finding != nil {
			return n.cameNear(v) || n.seen.Base <= n.lightest()
		}
	}
	return false
}

// searchesAnew reports whether a range with the lightest weight is at its end, after calm
// visits and with no search lately.
func (n *now) searchesAnew() bool {
	lately := n.c.Log[max(0, len(n.c.Log)-feelEvery):]
	return n.seen.Base <= n.lightest() && n.seen.Reps >= n.step.UpTo && n.calm() && !slices.ContainsFunc(lately, func(v visit.Visit) bool { return given.Searches(&v.Plan) })
}

// firstSearch reports whether no weight but the lightest was ever tried: as on the first
// day of a search, nothing then tells how near the next one is.
func (n *now) firstSearch() bool {
	return n.seen.Base <= n.lightest() && history.LeftEasily(n.last(), n.seen.Base) && n.lookedFor()
}

// cameNear reports whether a set of a visit with the present weight by itself came near
// the next one.
func (n *now) cameNear(v *visit.Visit) bool {
	return n.jump != nil && slices.ContainsFunc(v.Sets, func(s setlog.Set) bool {
		alone := setlog.Set{Hold: body.OneHand, Load: n.h.WithBody(n.seen.Base), Reps: s.Reps, Effort: s.Effort}
		return given.Each(s) == n.seen.Base && n.near(strength.Ability{}.Seen(1, v.Plan.Reserve.Least, alone), n.jump.To.Each())
	})
}

// bearsMore reports whether nothing but repetitions stands against more load.
func (n *now) bearsMore() bool {
	for _, g := range n.seen.Gates.Gates {
		if g.Gate <= visit.GateEffort && g.Advice != rule.Raise {
			return false
		}
	}
	return true
}

func (n *now) goesOnFinding() bool { return n.stillLooking() && !n.alone() && n.waits != findWaits }

// foundMore reports whether a heavier weight than the planned one was done while the
// load was looked for.
func (n *now) foundMore() bool { return n.seen.Base > n.last().Plan.Load.Each() }

func (n *now) foundEasy() bool { return n.foundMore() && n.goesOnFinding() }

// findOn goes on looking for the load, from the heaviest weight that was done so.
func (n *now) findOn() choice {
	s := n.fitted.step
	s.Count, s.UpTo, s.Steps, s.Lowering, s.Pausing = min(n.bottom(), s.Count), 0, n.mayTry(), 0, 0
	why := []evidence.Reason{because("progression.find-on")}
	if n.goesDown() { // what is known bears less than the set that was easy
		why = append(why, n.saysFit(n.fitted)...)
	}
	return choice{step: s, why: why}
}

// found goes on from the heaviest weight that was done.
func (n *now) found() choice {
	s := n.step
	s.Count, s.Lowering, s.Pausing = min(s.Count, n.last().Plan.Count), 0, 0 // the search began with few
	if count, ok := n.allows(s.Load); ok {
		s.Count = min(s.Count, n.countOf(count, n.bottom()))
	}
	return choice{step: s, why: []evidence.Reason{because("progression.found").With(evidence.Mass("load", s.Load))}}
}

func (n *now) triedInVain() bool { return n.seen.Tried && n.seen.Gates.Advice == rule.Raise }

func (n *now) resumes() bool { return given.Searches(&n.last().Plan) && !given.Searches(n.before) }

// saysDeclined asks why a weight that was to be tried or felt was not, where what was done
// was easy enough for it and no other is taken, and says later on that this is missing.
func (n *now) saysDeclined(change Change) []evidence.Reason {
	switch {
	case n.jump == nil || n.gate(visit.GatePain).Advice != rule.Raise || change == MoreLoad || change == FindLoad || !n.seen.BeyondCounting() || !n.h.Declined(n.seen.Base, feelEvery):
		return nil
	case n.h.Declined(n.seen.Base, 1):
		return []evidence.Reason{because("progression.not-tried").With(evidence.Count("visits", feelEvery))}
	}
	return []evidence.Reason{because("progression.try-missing").With(evidence.Mass("next", n.jump.To.Each()), evidence.Count("visits", feelEvery))}
}

// tries reports whether the next weight may be tried, of an exercise in which none can
// be felt.
func (n *now) tries() bool {
	return n.seen.Gates.Advice == rule.Raise && (!n.counts() || n.c.Request.Exercise.MovesBody) && n.mayTry() > 0 && !n.alone() && n.waits != findWaits && !n.goesDown()
}

// try looks for the load again.
func (n *now) try() choice {
	c := n.findOn()
	c.why = append(n.jump.beyondPublished(), c.why...)
	return c
}

const (
	leastFelt                = 3    // lifts of a weight that is felt, as likely as not
	feelEvery                = 8    // visits from one feel to the next
	feelAgain units.Fraction = 0.06 // that strength lies higher after one in vain
)

// feels reports whether the next weight may be felt: a far one, of which what is known
// comes near, not soon after the last time, and only with more strength after one in
// vain.
func (n *now) feels() bool {
	if n.waits == findWaits || n.seen.Gates.Advice != rule.Raise || !n.seen.Known || n.seen.Left < n.out.Reserve.Least || !n.withinLimits() || !n.jump.over(feelShare) || n.step.Sets < 2 || n.seen.Tried || n.h.Declined(n.seen.Base, feelEvery) {
		return false
	}
	next := n.jump.To.Each()
	if n.likely(next) < leastFelt {
		return false
	}
	for i := len(n.c.Log) - 1; i >= 0; i-- {
		v, lately := &n.c.Log[i], len(n.c.Log)-i < feelEvery
		if v.Plan.Feel == nil {
			if lately && history.Lifts(v, next) {
				return false // it was lifted, and did not show itself
			}
			continue
		}
		vain := v.Plan.Feel.Load.Each() == next && !slices.ContainsFunc(v.Sets, func(s setlog.Set) bool {
			return given.Each(s) == next && !v.InVain(s)
		})
		if lately || vain && n.likely(next+units.Mass(float64(next)*float64(feelAgain))) < leastFelt {
			return false
		}
		break
	}
	_, can := n.f.Feelable(n.seen.Base)
	return can
}

// likely is how many lifts of a weight, none in reserve, what is known of strength makes
// as likely as not. The strictest chance would leave none to be felt of a far weight, and
// whoever is beside watches.
func (n *now) likely(each units.Mass) int {
	one, ok := n.strength.OneRM()
	share, err := one.Share(n.h.WithBody(each))
	if !ok || err != nil {
		return 0
	}
	return int(max(0, share-1) * epleyReps)
}

// toFeel is how often the next weight is felt: one lift fewer than would show it. With two
// fewer nothing could.
func (n *now) toFeel() int { return max(1, n.floor(n.jump)-1) }

// feel asks for one set of the next weight, ended by its reserve.
func (n *now) feel() choice {
	s := n.fitted.step
	s.Feel = n.toFeel()
	return choice{step: s, why: append(n.jump.beyondPublished(), append([]evidence.Reason{because("progression.feel").With(evidence.Mass("next", n.jump.To.Each()), evidence.Count("count", s.Feel))}, n.saysFit(n.fitted)...)...)}
}

// calm reports whether the last two visits were done with the present weight and
// without trouble.
func (n *now) calm() bool { return len(n.clean.Asked) == 0 && n.h.Calm(n.seen.Base, calmVisits) }

const calmVisits = history.AskedAgain // in a row, with no doubtful set

// ratedTwice reports whether the last two visits went through the range of what counts
// no repetitions with the present weight, every set rated as less than hard.
func (n *now) ratedTwice() bool {
	return !n.counts() && n.h.RatedEasy(n.seen.Base, calmVisits) && n.calm()
}

// longEasy reports whether, with somebody there, up to double the weight may be taken without
// a trial, which was neither in vain nor left untried within eight visits, all clearly easy:
// whoever tries nothing would else never carry more.
func (n *now) longEasy(j *Jump) bool {
	return !n.alone() && j.External > 0 && j.External <= 1 && !n.h.Declined(n.seen.Base, feelEvery) && n.h.LongEasy(n.seen.Base, feelEvery)
}

// lifted reports whether the last eight visits have a set with a weight.
func (n *now) lifted(each units.Mass) bool { return n.h.Lifted(each, feelEvery) }

const (
	bigHeld  units.Fraction = 0.5 // of the weight held
	bigMoved units.Fraction = 0.1 // of all that is moved, where that is known
)

// big reports a step that is taken only with somebody beside.
func (j *Jump) big() bool {
	if j.Moved > 0 {
		return j.Moved > bigMoved
	}
	return j.External <= 0 || j.External > bigHeld
}

// alone reports whether nobody is at hand.
func (n *now) alone() bool { return n.c.Request.Screening.Setting < screening.WithHelper }

// barredAlone reports whether the step is not taken since nobody is at hand.
func (n *now) barredAlone(j *Jump) bool { return n.alone() && (n.bigUnknown(j) || n.aboveLifted(j)) }

// bigUnknown reports a big step to a weight that the log does not show itself.
func (n *now) bigUnknown(j *Jump) bool {
	return j.big() && !(n.again && j.To.Each() == n.jump.To.Each())
}

// aboveLifted reports a step to more over head or face than was lifted before.
func (n *now) aboveLifted(j *Jump) bool {
	demands := n.c.Request.Exercise.Demands
	return (demands.Has(body.Overhead) || demands.Has(body.OverFace)) && j.To.Each() > n.h.Heaviest()
}

// waitsForSomebody reports whether a heavier weight would be taken or tried, were
// there somebody beside.
func (n *now) waitsForSomebody() bool {
	if !n.alone() || n.seen.Tried || !n.bearsMore() || !n.withinLimits() {
		return false
	}
	return n.mayTry() > 0 && (n.seen.Gates.Advice == rule.Raise || n.stillLooking()) || n.mayRaise() && n.barredAlone(n.jump) || n.seen.Gates.Advice == rule.Raise && n.jump.over(feelShare) && n.near(n.strength, n.jump.To.Each())
}

// saysBeside says what waits for somebody: it goes on without the weight, with
// repetitions, then at a slower pace. No set and no harder variant takes its place.
func (n *now) saysBeside() evidence.Reason {
	code := evidence.ReasonCode("progression.look-beside")
	switch {
	case n.bigUnknown(n.jump):
		code = "progression.step-beside"
	case n.aboveLifted(n.jump):
		code = "progression.above-beside"
	}
	return because(code).With(evidence.Mass("next", n.jump.To.Each()), evidence.Share("share", n.jump.External), told.Moved("moved", n.jump.Moved))
}
