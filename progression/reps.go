package progression

import (
	"math"

	"example.org/posology/dose"
	"example.org/posology/progression/rule"
	"example.org/posology/units/evidence"
)

// A fit is a step with what was changed in it, and why.
type fit struct {
	step dose.Step
	why  []evidence.Reason
}

// leastCount are the fewest repetitions that a weight is kept for, where there is a
// lighter one.
const leastCount = 3

// fit keeps the count to what the chance allows. A weight that allows too few goes
// down, unless it is the lightest.
func (n *now) fit(s dose.Step) fit {
	from := s
	most, known := n.allows(s.Load)
	for n.counts() && known && most < min(leastCount, s.Count) {
		lighter := n.below(s.Load)
		if lighter >= s.Load {
			break
		}
		s.Load = lighter
		most, known = n.allows(lighter)
	}
	if s.Load == n.seen.Base {
		if most, known = n.counted(s.Load); !known {
			most, known = s.Count, true
		}
		most = min(most, n.nearest())
	}
	if !n.counts() || !known || s.Load == from.Load && most >= s.Count {
		return fit{step: from}
	}
	if s.Load < from.Load {
		s.Count = min(s.Count, n.countOf(most, n.bottom()))
		return fit{s, []evidence.Reason{because("progression.lighter-for-reserve").With(
			evidence.Reserve("reserve", n.out.Reserve.Least, n.out.Reserve.Countable), evidence.Mass("from", from.Load), evidence.Mass("to", s.Load))}}
	}
	s.Count = max(1, most)
	return fit{s, []evidence.Reason{because("progression.fewer-reps").With(evidence.Count("count", s.Count), evidence.Reserve("reserve", n.out.Reserve.Least, n.out.Reserve.Countable))}}
}

// nearest is the count that the set of the last visit which came nearest to failure
// leaves for the reserve asked less one: what the chance allows rests on the best set.
func (n *now) nearest() int {
	least, more := math.MaxInt, 1.0 // people tell one too few
	if n.out.Reserve.Least > n.last().Plan.Reserve.Least {
		more = 0 // and no more than was shown where more is to be left
	}
	for i := range n.seen.Visit.Sets {
		s := &n.seen.Visit.Sets[i]
		if !n.counts() {
			break
		}
		if left, err := s.Effort.RIR(); err == nil {
			told, _ := left.Min()
			least = min(least, int(math.Floor(float64(s.Reps)+float64(told-n.out.Reserve.Least)+more)))
		}
	}
	return least
}

// bridgeEnd returns where bridging by repetitions ends.
func (n *now) bridgeEnd() int {
	top, _ := n.out.Span.Max()
	if !n.counts() || n.out.Phase == dose.Familiarise {
		return top
	}
	end := bridgeTop
	if most, ok := n.c.Request.Exercise.Count.Max(); ok {
		end = min(end, most)
	}
	if n.c.Policy.MostReps > 0 {
		end = min(end, n.c.Policy.MostReps)
	}
	return max(top, end)
}

// upTo returns the end of the range to work through: the guideline's where the next
// weight is shown, where a limit forbids it, or where the policy's rule asks no
// further; else where bridging ends.
func (n *now) upTo() int {
	top, _ := n.out.Span.Max()
	switch {
	case n.jump == nil:
		return n.bridgeEnd()
	case n.jump.To.Each() > n.most, n.shown() && !n.barredAlone(*n.jump):
		return min(n.bridgeEnd(), top+n.over())
	}
	return n.bridgeEnd()
}

// repsFirst reports whether repetitions come before anything else: a gate keeps the
// load, or the range is not worked through.
func (n *now) repsFirst() bool {
	return n.seen.Gates.Advice != rule.Raise || n.counts() && (n.seen.Reps < n.step.UpTo || n.seen.Left < n.out.Reserve.Least) || !n.counts() && n.unrated()
}

func (n *now) moreRepsHolds() bool { return n.repsFirst() && n.more() > 0 }

func (n *now) limitedReps() bool { return n.limited() && n.more() > 0 }

// more returns the count that comes next where nothing but repetitions, technique that
// nobody saw, or effort that nobody noted stands against more load: what the chance
// allows; 0: no more than now.
func (n *now) more() int {
	top, _ := n.out.Span.Max()
	end := n.step.UpTo
	if n.unrated() { // nor more than one step at a time: nothing says how hard it was
		end = min(end, max(top, n.step.Count))
		if n.counts() {
			end = min(end, n.seen.Reps+1)
		}
	}
	aim, known := n.counted(n.step.Load)
	if !known {
		aim = n.seen.Reps + paceStep
		if n.counts() {
			aim = n.seen.Reps + 1
		}
	}
	if aim = min(aim, end, n.nearest()); aim <= n.step.Count || !n.repsMayRise() {
		return 0
	}
	return aim
}

const paceStep = 5 // seconds or metres

// addReps takes more repetitions, and says what would let the exercise go on.
func (n *now) addReps() choice {
	s := n.step
	s.Count = n.more()
	return choice{step: s, why: append(n.hints(), because("progression.more-reps").With(evidence.Count("aim", s.Count), evidence.Count("top", s.UpTo)))}
}

// hold takes no more, and says what keeps the dose.
func (n *now) hold() choice {
	if n.seen.Gates.Advice == rule.Raise && !n.unrated() {
		return n.stay(because("progression.as-allowed").With(evidence.Count("count", n.fitted.step.Count), evidence.Mass("load", n.fitted.step.Load)))
	}
	return n.stay(append(n.hints(), n.saysHold())...)
}

func (n *now) addRepsToLimit() choice { return n.atLimit(n.addReps()) }

func (n *now) holdAtLimit() choice { return n.atLimit(n.hold()) }

func (n *now) atLimit(c choice) choice {
	c.why = append([]evidence.Reason{n.saysLimit()}, c.why...)
	return c
}
