package progression

import (
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/units/evidence"
)

// stillLooking reports whether the load goes on being looked for: it was, no
// weight was too much, and every set left more than can be counted.
func (n *now) stillLooking() bool {
	if !n.bearsMore() {
		return false
	}
	if plan := &n.last().Plan; visit.Searches(plan) && n.seen.Base == plan.Load.Each() && !visit.Searches(n.before) {
		return false // a trial that was not taken up: back to the dose before it
	}
	return n.seen.Finding && !n.seen.Tried && n.withinLimits() && n.seen.Visit.Met() && n.mayTry() > 0
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

func (n *now) goesOnFinding() bool { return n.stillLooking() && !n.alone() }

// foundMore reports whether a heavier weight than the planned one was done while the
// load was looked for.
func (n *now) foundMore() bool { return n.seen.Base > n.last().Plan.Load.Each() }

func (n *now) foundEasy() bool { return n.foundMore() && n.goesOnFinding() }

// findOn goes on looking for the load, from the heaviest weight that was done so.
func (n *now) findOn() choice {
	s := n.step
	s.Count, s.UpTo, s.Steps, s.Lowering, s.Pausing = min(n.bottom(), s.Count), 0, n.mayTry(), 0, 0
	return choice{step: s, why: []evidence.Reason{because("progression.find-on")}}
}

// found goes on from the heaviest weight that was done.
func (n *now) found() choice {
	s := n.step
	s.Count, s.Lowering, s.Pausing = min(n.bottom(), n.seen.Reps), 0, 0
	return choice{step: s, why: []evidence.Reason{because("progression.found").With(evidence.Mass("load", s.Load))}}
}

func (n *now) triedInVain() bool { return n.seen.Tried && n.seen.Gates.Advice == rule.Raise }

func (n *now) resumes() bool { return visit.Searches(&n.last().Plan) && !visit.Searches(n.before) }

// tries reports whether the next weight may be tried, which nothing done shows.
func (n *now) tries() bool {
	return n.seen.Gates.Advice == rule.Raise && n.mayTry() > 0 && !n.alone()
}

// try looks for the load again.
func (n *now) try() choice {
	c := n.findOn()
	c.why = append(n.jump.beyondPublished(), c.why...)
	return c
}
