package progression

import (
	"example.org/posology/dose"
	"example.org/posology/progression/rule"
	"example.org/posology/units/evidence"
)

// repsFirst reports whether repetitions come before anything else: a gate keeps the
// load, or the range is not worked through.
func (n *now) repsFirst() bool {
	return n.seen.Gates.Advice != rule.Raise || n.counts() && (n.seen.Reps < n.step.UpTo || n.spare() < 0) || !n.counts() && n.unrated()
}

func (n *now) moreRepsHolds() bool { return n.repsFirst() && n.more(n.step).aim > 0 }

func (n *now) addReps() choice { return n.more(n.step).add(n) }

func (n *now) hold() choice { return n.more(n.step).keep(n) }

// withinRange ends repetitions at the guideline's range alone.
func (n *now) withinRange() dose.Step {
	s := n.step
	s.UpTo, _ = n.out.Span.Max()
	s.Count = min(s.Count, s.UpTo)
	return s
}

func (n *now) limitedReps() bool { return n.limited() && n.more(n.withinRange()).aim > 0 }

func (n *now) addRepsToLimit() choice { return n.atLimit(n.more(n.withinRange()).add(n)) }

func (n *now) holdAtLimit() choice { return n.atLimit(n.more(n.withinRange()).keep(n)) }

func (n *now) atLimit(c choice) choice {
	c.why = append([]evidence.Reason{n.saysLimit()}, c.why...)
	return c
}

// nextReps are the repetitions that come next.
type nextReps struct {
	fit
	aim int // more than before; 0: no more
}

// more takes one repetition more where nothing but repetitions, technique that
// nobody saw, or effort that nobody noted stands against more load, and as much was
// left as is asked for today; else the same dose.
func (n *now) more(s dose.Step) nextReps {
	if n.unrated() {
		top, _ := n.out.Span.Max()
		s.UpTo = min(s.UpTo, max(top, s.Count))
	}
	more := min(n.seen.Reps+n.stepInReps(), s.UpTo)
	if fitted := n.fit(s); fitted.step != s || !n.repsMayRise() || more <= s.Count || n.counts() && n.spare() < 0 {
		return nextReps{fit: fitted}
	}
	return nextReps{fit{step: s}, more}
}

// add takes more repetitions, and says what would let the exercise go on.
func (r nextReps) add(n *now) choice {
	r.step.Count = r.aim
	return choice{step: r.step, why: append(n.hints(), because("progression.more-reps").With(evidence.Count("aim", r.aim), evidence.Count("top", r.step.UpTo)))}
}

// keep takes no more, and says what keeps the dose.
func (r nextReps) keep(n *now) choice {
	return choice{step: r.step, why: append(append(n.hints(), r.why...), n.saysHold())}
}

// stepInReps is two where every set left more than can be counted, else one; of
// seconds and metres it is five.
func (n *now) stepInReps() int {
	switch {
	case !n.counts():
		return paceStep
	case n.seen.BeyondCounting():
		return easyStep
	}
	return 1
}

const (
	easyStep = 2 // repetitions
	paceStep = 5 // seconds or metres
)
