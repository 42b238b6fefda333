package progression

import (
	"errors"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// Seconds of a repetition that bridge where repetitions cannot. With two up, a
// lowering of four makes the six that did best in older adults, and a pause of
// two the eight up to which the pace matters little for growth.
const (
	slowLowering = 4.0
	longPause    = 2.0
)

// carryOn decides where nobody else has to look first.
func (n *next) carryOn(back rule.Return, missed bool) (Decision, error) {
	l, err := n.less(n.same(n.last().Plan), back, missed)
	if err != nil {
		return Decision{}, err
	}
	plan := n.beforeTrial()
	s := n.same(plan)
	switch {
	case l.lower:
		n.because("progression.easier-variant", factVariant)
		return n.standIn(n.easedRequest(), true)
	case l.some:
		return n.dose(EaseOff, NoChange, n.fit(l.step))
	case len(n.seen.v.Sets) == 0:
		n.because("progression.nothing-done", factGates)
		return n.dose(Hold, NoChange, n.fit(s))
	case n.c.Request.Screening.Meanwhile > screening.WithinLimits:
		n.because("progression.ask-first", factAskFirst)
		return n.dose(Hold, NoChange, n.fit(s))
	case programme.Expired(n.c.Plan, n.c.Day):
		return n.dose(Hold, NoChange, n.fit(s))
	case n.mayAddSet():
		return n.addSet(s)
	case n.out.Phase == dose.Maintain && !(n.again && n.mayRaise()):
		n.because("progression.maintain", factKeepUp)
		return n.dose(Hold, NoChange, n.fit(s))
	case s.Load > n.last().Plan.Load.Each:
		return n.found(s)
	case n.mayRaise() && !n.barredAlone(*n.jump):
		return n.raise(s)
	case n.stillLooking() && !n.alone():
		return n.find(s, n.mayTry())
	case n.seen.tried && n.seen.gates.Advice == rule.Raise:
		n.because("progression.tried", factFindOn)
		return n.dose(Hold, NoChange, n.fit(s))
	case searches(&n.last().Plan) && !searches(&plan):
		n.because("progression.resumed", factFindOn)
		return n.dose(Hold, NoChange, n.fit(s))
	case n.waitsForSomebody():
		return n.byOneself(s)
	case n.seen.gates.Advice == rule.Raise:
		return n.harder(s)
	}
	return n.moreReps(s)
}

// same is the dose of a plan again, with the weight to go on from.
func (n *next) same(plan dose.Prescription) dose.Step {
	s := dose.Step{Load: n.seen.base, Last: n.seen.base, Count: plan.Count, Sets: n.last().Plan.Sets, UpTo: n.upTo()}
	if n.counts() {
		s.Lowering, s.Pausing = plan.Tempo.Lowering, plan.Tempo.Pausing
	}
	s.Count = min(s.Count, s.UpTo)
	if n.out.Phase == dose.Maintain {
		s.Sets = min(s.Sets, n.out.Sets)
	}
	if s.Load < n.last().Plan.Load.Each {
		s.Count = n.bottom()
	}
	return s
}

// beforeTrial returns the last plan, and after a trial the one with the same load
// before it, if there is one.
func (n *next) beforeTrial() dose.Prescription {
	trial := n.last().Plan
	if !searches(&trial) || len(n.seen.v.Sets) == 0 {
		return trial
	}
	for _, v := range slices.Backward(n.c.Log[:len(n.c.Log)-1]) {
		if !searches(&v.Plan) && v.Plan.Load.Each == n.seen.base {
			return v.Plan
		}
	}
	return trial
}

// moreReps takes one repetition more where nothing but repetitions, technique
// that nobody saw, or effort that nobody noted stands against more load, and as
// much was left as is asked for today; else the same dose.
func (n *next) moreReps(s dose.Step) (Decision, error) {
	n.hint()
	if n.unrated() {
		top, _ := n.out.Span.Max()
		s.UpTo = min(s.UpTo, max(top, s.Count))
	}
	more := min(n.seen.reps+n.stepInReps(), s.UpTo)
	if fitted := n.fit(s); fitted != s || !n.repsMayRise() || more <= s.Count || n.counts() && n.spare() < 0 {
		n.d.because(evidence.Because("progression.hold", factGates).With("gate", n.deciding()))
		return n.dose(Hold, NoChange, fitted)
	}
	s.Count = more
	n.d.because(evidence.Because("progression.more-reps", factOneMore, factEasyStep, factBridgeTop).With("aim", s.Count).With("top", s.UpTo))
	return n.dose(Progress, MoreReps, s)
}

// stepInReps is two where every set left more than can be counted, else one; of
// seconds and metres it is five.
func (n *next) stepInReps() int {
	switch {
	case !n.counts():
		return paceStep
	case n.seen.beyondCounting():
		return easyStep
	}
	return 1
}

const (
	easyStep = 2 // repetitions
	paceStep = 5 // seconds or metres
)

// stillLooking reports whether the load goes on being looked for: it was, no
// weight was too much, and every set left more than can be counted.
func (n *next) stillLooking() bool {
	if !n.bearsMore() {
		return false
	}
	if before := n.beforeTrial(); searches(&n.last().Plan) && n.seen.base == n.last().Plan.Load.Each && !searches(&before) {
		return false // a trial that was not taken up: back to the dose before it
	}
	return n.seen.finding && !n.seen.tried && n.withinLimits() && n.seen.v.met() && n.mayTry() > 0
}

// bearsMore reports whether nothing but repetitions stands against more load.
func (n *next) bearsMore() bool {
	for _, g := range n.seen.gates.Gates {
		if g.Gate <= GateEffort && g.Advice != rule.Raise {
			return false
		}
	}
	return true
}

// withinLimits reports whether there is a next weight that no limit forbids.
func (n *next) withinLimits() bool { return n.jump != nil && n.jump.To.Each <= n.most }

// find goes on looking for the load, from the heaviest weight that was done so.
func (n *next) find(s dose.Step, steps int) (Decision, error) {
	s.Count, s.UpTo, s.Steps, s.Lowering, s.Pausing = min(n.bottom(), s.Count), 0, steps, 0, 0
	n.because("progression.find-on", factFindOn, factTry)
	return n.dose(Progress, FindLoad, s)
}

// mayAddSet reports whether a set is still to come before anything else is made
// harder: those that the plan builds up to, or in familiarisation begins with.
func (n *next) mayAddSet() bool {
	target := n.out.BuildTo
	if n.out.Phase == dose.Familiarise || n.out.Phase == dose.Maintain {
		target = n.out.Sets
	}
	for _, g := range n.seen.gates.Gates {
		if g.Advice != rule.Raise && g.Gate != GateReps {
			return false
		}
	}
	return !searches(&n.last().Plan) && !n.stillLooking() && n.last().Plan.Sets < target && n.seen.v.met()
}

// addSet adds one, unless room has to be made for a larger reserve first.
func (n *next) addSet(s dose.Step) (Decision, error) {
	if fitted := n.fit(s); fitted != s {
		n.d.because(evidence.Because("progression.hold", factGates).With("gate", n.deciding()))
		return n.dose(Hold, NoChange, fitted)
	}
	n.because("progression.one-more-set", factSetsFirst)
	s.Sets++
	return n.dose(Progress, MoreSets, s)
}

// found goes on from the heaviest weight that was done while the load was looked
// for, and goes on looking if nothing ended it.
func (n *next) found(s dose.Step) (Decision, error) {
	if n.stillLooking() && !n.alone() {
		return n.find(s, n.mayTry())
	}
	n.d.because(evidence.Because("progression.found", factFindOn).With("load", s.Load))
	s.Count, s.Lowering, s.Pausing = min(n.bottom(), n.seen.reps), 0, 0
	return n.dose(Progress, FindLoad, s)
}

// harder bridges to the next weight, of which nothing shows yet that it can be
// done.
func (n *next) harder(s dose.Step) (Decision, error) {
	switch {
	case n.jump != nil && n.jump.To.Each > n.most:
		n.d.because(evidence.Because("progression.limit", factLimit).With("next", n.jump.To.Each).With("most", n.most))
		return n.withinRange(s)
	case n.mayTry() > 0 && !n.alone():
		n.noteJump()
		return n.find(s, n.mayTry())
	case n.counts() && (n.seen.reps < s.UpTo || n.spare() < 0), !n.counts() && n.unrated():
		return n.moreReps(s)
	case n.out.Phase == dose.Familiarise:
		n.because("progression.familiarising", factFamiliarising)
		return n.dose(Hold, NoChange, n.fit(s))
	case !n.unattended && n.jump != nil && n.needed <= float64(n.bridgeEnd())+float64(rule.Countable-rule.NearError):
		n.d.because(evidence.Because("progression.more-reserve", factShown).With("reps", n.seen.reps).With("next", n.jump.To.Each))
		return n.dose(Hold, NoChange, n.fit(s))
	}
	return n.bridge(s)
}

// mayRaise reports whether the next weight is shown, lies within every limit,
// and was not just tried in vain.
func (n *next) mayRaise() bool {
	return n.withinLimits() && n.seen.gates.Advice == rule.Raise && !n.seen.tried && (n.counts() && n.shown() || n.again)
}

// withinRange adds repetitions up to the guideline's range alone.
func (n *next) withinRange(s dose.Step) (Decision, error) {
	s.UpTo, _ = n.out.Span.Max()
	s.Count = min(s.Count, s.UpTo)
	return n.moreReps(s)
}

// raise takes the next weight, at the bottom of the range.
func (n *next) raise(s dose.Step) (Decision, error) {
	if n.waits == loadWaits {
		n.because("progression.two-rise", factTwoRises)
		return n.dose(Hold, NoChange, n.fit(s))
	}
	next := n.jump
	n.further()
	if n.again && n.jump == next {
		n.d.because(evidence.Because("progression.done-before", factDoneBefore).With("next", n.jump.To.Each))
	} else {
		n.d.because(evidence.Because("progression.shown", factShown, factReserve).
			With("reps", n.seen.reps).With("surely", surely(n.seen.left)).With("next", n.jump.To.Each).With("count", n.bottom()))
	}
	n.noteJump()
	n.d.Rise = n.jump
	s.Load, s.Count, s.UpTo, s.Lowering, s.Pausing = n.jump.To.Each, min(n.bottom(), s.Count), 0, 0, 0
	return n.dose(Progress, MoreLoad, s)
}

// further takes the furthest weight that is shown too and lies within the
// published size of a step, where the next one is smaller: fine steps, or a body
// that moves with the weight.
func (n *next) further() {
	most, _ := rule.StepShare().Max()
	for to := n.beyond(*n.jump); to != nil; to = n.beyond(*to) {
		need, ok := toFailureBefore(n.wanted(), to.share(), n.c.Curve)
		shown := ok && n.able() >= need-rounding
		if !shown || to.share() > most || to.To.Each > n.most || n.lifted(to.To.Each) || n.barredAlone(*to) {
			return
		}
		n.jump = to
	}
}

// bridge makes harder what repetitions and the kit cannot, one thing at a time.
// The order depends on the exercise and the kit alone, so that nothing that
// speaks for caution brings a set more.
func (n *next) bridge(s dose.Step) (Decision, error) {
	again := s
	again.Count = min(n.bottom(), s.Count)
	switch {
	case n.counts() && s.Lowering < slowLowering:
		again.Lowering = slowLowering
		again.Count = n.asLong(s, again)
		n.because("progression.slower", factSlower)
		return n.dose(Progress, SlowerLowering, again)
	case n.counts() && s.Pausing < longPause:
		again.Pausing = longPause
		again.Count = n.asLong(s, again)
		n.because("progression.pause", factPause)
		return n.dose(Progress, LongerPause, again)
	case n.unattended:
		return n.dose(Hold, NoChange, n.fit(s))
	case s.Sets < n.f.MostSets() && n.beyondReach():
		again.Sets++
		n.because("progression.extra-set", factExtraSet)
		return n.dose(Progress, ExtraSet, again)
	}
	if d, done, err := n.variant(s); done || err != nil {
		return d, err
	}
	n.standsInTheWay()
	return n.dose(Hold, NoChange, n.fit(s))
}

// asLong returns the repetitions that fill a set of the same length at a slower
// pace.
func (n *next) asLong(was, is dose.Step) int {
	lifting := n.out.Tempo.Lifting
	seconds := float64(was.Count) * (was.Lowering + was.Pausing + lifting)
	return min(was.Count, max(n.bottom(), int(seconds/(is.Lowering+is.Pausing+lifting))))
}

// standsInTheWay says why nothing can be made harder.
func (n *next) standsInTheWay() {
	if n.jump == nil {
		n.because("progression.kit-ends", factKitEnds)
		return
	}
	n.d.because(evidence.Because("progression.too-far", factKitEnds).With("next", n.jump.To.Each).With("share", n.jump.share()))
}

// variant offers the harder exercise, if there is one that can be dosed.
func (n *next) variant(s dose.Step) (Decision, bool, error) {
	id := n.c.Request.Exercise.Harder
	if id == "" || n.c.Policy.KeepExercise {
		return Decision{}, false, nil
	}
	ex, ok := n.c.catalogue().Get(id)
	if !ok {
		return Decision{}, false, nil
	}
	p, err := n.first(ex, n.c.Request)
	var barred *dose.ConstraintError
	switch {
	case errors.As(err, &barred):
		n.d.because(evidence.Because("progression.no-variant", factVariant).With("exercise", ex.Name))
		return Decision{}, false, nil
	case err != nil:
		return Decision{}, false, err
	case n.waits == newWaits:
		n.d.because(evidence.Because("progression.variant-waits", factOneNew).With("exercise", ex.Name))
		d, err := n.dose(Hold, NoChange, n.fit(s))
		return d, true, err
	}
	n.d.Change = HarderVariant
	return n.replace(ex, p), true, nil
}
