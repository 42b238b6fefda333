package progression

import (
	"example.org/posology/progression/rule"
	"example.org/posology/units/evidence"
)

// withinLimits reports whether there is a next weight that no limit forbids.
func (n *now) withinLimits() bool { return n.jump != nil && n.jump.To.Each() <= n.most }

// mayRaise reports whether the next weight is shown, lies within every limit,
// and was not just tried in vain.
func (n *now) mayRaise() bool {
	return n.withinLimits() && n.seen.Gates.Advice == rule.Raise && !n.seen.Tried && (n.counts() && n.shown() || n.again)
}

func (n *now) rises() bool { return n.mayRaise() && !n.barredAlone(*n.jump) }

func (n *now) riseWaits() bool { return n.waits == loadWaits && n.rises() }

// raise takes the next weight, at the bottom of the range.
func (n *now) raise() choice {
	j := n.furthest()
	why := because("progression.shown").With(
		evidence.Count("reps", n.seen.Reps), evidence.Number("surely", surely(n.seen.Left)), evidence.Mass("next", j.To.Each()), evidence.Count("count", n.bottom()))
	if n.again && j == n.jump {
		why = because("progression.done-before").With(evidence.Mass("next", j.To.Each()))
	}
	s := n.step
	s.Load, s.Count, s.UpTo, s.Lowering, s.Pausing = j.To.Each(), min(n.bottom(), s.Count), 0, 0, 0
	return choice{step: s, why: append([]evidence.Reason{why}, j.beyondPublished()...), rise: j}
}

// furthest returns the step to the furthest weight that is shown too and lies within
// the published size of a step, where the next one is smaller: fine steps, or a body
// that moves with the weight.
func (n *now) furthest() *Jump {
	most, _ := rule.StepShare().Max()
	last := n.jump
	for to := n.beyond(*last); to != nil; to = n.beyond(*to) {
		need, ok := toFailureBefore(n.wanted(), to.share(), n.c.Curve)
		shown := ok && n.able() >= need-rounding
		if !shown || to.share() > most || to.To.Each() > n.most || n.lifted(to.To.Each()) || n.barredAlone(*to) {
			break
		}
		last = to
	}
	return last
}

// limited reports whether a limit forbids the next weight, which nothing else does.
func (n *now) limited() bool {
	return n.seen.Gates.Advice == rule.Raise && n.jump != nil && n.jump.To.Each() > n.most
}

func (n *now) saysLimit() evidence.Reason {
	return because("progression.limit").With(evidence.Mass("next", n.jump.To.Each()), evidence.Mass("most", n.most))
}

// nearlyShown reports whether more left in reserve would show the next weight.
func (n *now) nearlyShown() bool {
	return !n.waitsForSomebody() && n.jump != nil && n.needed <= float64(n.bridgeEnd())+float64(rule.Countable-rule.NearError)
}

func (n *now) waitForReserve() choice {
	return n.stay(because("progression.more-reserve").With(evidence.Count("reps", n.seen.Reps), evidence.Mass("next", n.jump.To.Each())))
}
