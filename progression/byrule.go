package progression

import (
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// over returns how far beyond the top of the range the policy's rule asks for.
func (n *now) over() int {
	top, _ := n.out.Span.Max()
	return n.c.Policy.Rule.Past(top)
}

// byRule, a part of looking, lets the policy's rule answer for the gate of repetitions, and the rule
// that goes by rating for that of effort too.
func (n *now) byRule() error {
	if err := n.byPain(); err != nil {
		return err
	}
	name := n.c.Policy.Rule
	if name == 0 || len(n.seen.Visit.Sets) == 0 || n.seen.Base <= 0 {
		return nil
	}
	a, err := n.ask(name)
	if err != nil {
		return err
	}
	if n.seen.Visit.Met() {
		n.answer(visit.GateReps, a)
	}
	if name == rule.NameOMNIBelow8 && n.gate(visit.GateEffort).Advice == rule.Keep && !n.seen.Known {
		n.answer(visit.GateEffort, a)
	}
	return nil
}

// gate is what a gate says; the report has every one, in order.
func (n *now) gate(g visit.Gate) *visit.GateAnswer { return &n.seen.Gates.Gates[g-1] }

// answer lets a ruling speak for a gate.
func (n *now) answer(g visit.Gate, a rule.Ruling) {
	n.gate(g).Advice, n.gate(g).Reasons = a.Advice, a.Reasons
	n.seen.Gates.Join()
}

// byPain lets the policy's rule answer for pain that the model lets be and that
// only keeps the load.
func (n *now) byPain() error {
	p := n.seen.Visit.Pain
	if n.c.Policy.Pain != rule.NamePainGate || p == nil || p.Kind != screening.OrdinaryPain || p.During == nil || p.After == nil || p.NextMorning == nil || p.WeeklyTrend == 0 {
		return nil
	}
	if n.gate(visit.GatePain).Advice != rule.Keep || len(n.seen.Visit.HurtElsewhere) > 0 || screening.SorenessLasts(n.seen.Visit.SorenessDays) {
		return nil
	}
	a, err := rule.PainGate(max(*p.During, *p.After), n.seen.Visit.RangeLost, screening.No) // the target has its own gate
	if err == nil {
		n.answer(visit.GatePain, a)
	}
	return err
}

// ask puts the last visit to a rule. The target is the top of the guideline's
// range, or lower where the rule would ask for more than bridging ever does.
func (n *now) ask(name rule.Name) (rule.Ruling, error) {
	top, _ := n.out.Span.Max()
	top = min(top, n.bridgeEnd()-n.over())
	sets := n.seen.Visit.Sets
	switch name {
	case rule.NameOverTarget:
		return rule.OverTarget(n.seen.Base, top, n.seen.Reps)
	case rule.NameTwoForTwo:
		return rule.TwoForTwo(top, n.h.LastSets(n.seen.Base))
	case rule.NameRepsThenLoad:
		return rule.RepsThenLoad(n.seen.Base, units.Must(units.Between(min(n.bottom(), top), top)), n.seen.Visit.LastReps())
	case rule.NameTopOfRange:
		reps := make([]int, len(sets))
		for i, s := range sets {
			reps[i] = s.Reps
		}
		return rule.TopOfRange(reps)
	}
	hardest, all := history.Hardest(n.seen.Visit.Sets)
	if !all {
		return rule.Ruling{Rule: name, Advice: rule.Keep, Reasons: []evidence.Reason{because("progression.no-rating")}}, nil
	}
	return rule.OMNIBelow8(hardest)
}
