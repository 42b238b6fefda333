package progression

import (
	"math"

	"example.org/posology/dose"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A fit is a step with what was changed in it, and why.
type fit struct {
	step dose.Step
	why  []evidence.Reason
}

// left returns the least that any set of the last visit left: as planned then where
// it was not recorded, which hides no other set that left less.
func (n *now) left() units.RIR { return n.seen.Visit.LeastLeft(n.last().Plan.Reserve.Least) }

// spare returns by how many repetitions more than asked for today were left at the
// last visit, below zero where fewer were.
func (n *now) spare() int { return int(math.Floor(float64(n.left() - n.out.Reserve.Least))) }

// fit keeps the count within what the last visit showed, for the reserve that is
// asked for today. Where more is to be left undone than was planned then, and
// fewer than the bottom of the range would remain, the weight goes down.
func (n *now) fit(s dose.Step) fit {
	beyond := n.seen.BeyondCounting() && n.out.Reserve.Least <= rule.Countable
	if s.Load < n.seen.Base || !n.counts() || beyond {
		return fit{step: s} // nothing to fit to: more is left than is asked for, or can be counted
	}
	plan := &n.last().Plan
	reps := n.seen.Reps
	if len(n.seen.Visit.Sets) == 0 {
		reps = plan.Count
	}
	tighter := n.out.Reserve.Least > plan.Reserve.Least || n.spare() < -rule.NearError // or nearer to failure than telling it errs
	allowed := reps + n.spare()
	if allowed >= s.Count {
		return fit{step: s}
	}
	low, lighter := n.bottom(), n.below(s.Load)
	switch {
	case tighter && allowed < low && lighter < s.Load:
		why := because("progression.lighter-for-reserve").With(
			evidence.Reserve("reserve", n.out.Reserve.Least, n.out.Reserve.Countable), evidence.Mass("from", s.Load), evidence.Mass("to", lighter))
		s.Load, s.Count = lighter, min(low, s.Count)
		return fit{s, []evidence.Reason{why}}
	case tighter && allowed < low:
		s.Count = max(1, allowed)
	case max(allowed, low) >= s.Count:
		return fit{step: s}
	default:
		s.Count = max(allowed, low)
	}
	return fit{s, []evidence.Reason{because("progression.fewer-reps").With(evidence.Count("count", s.Count), evidence.Reserve("reserve", n.out.Reserve.Least, n.out.Reserve.Countable))}}
}
