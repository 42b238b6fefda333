package progression

import (
	"example.org/posology/dose"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/internal/told"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// repsMayRise reports whether the dose was done and nothing stands against more
// load but repetitions, technique that nobody saw, or effort that nobody noted.
func (n *now) repsMayRise() bool {
	for _, g := range n.seen.Gates.Gates {
		unseen := g.Gate == visit.GateTechnique && !given.Yes(n.seen.Visit.FormLost)
		unrated := g.Gate == visit.GateEffort && n.unrated()
		if g.Advice != rule.Raise && g.Gate != visit.GateReps && !unseen && !unrated {
			return false
		}
	}
	return n.seen.Visit.Met()
}

// unrated reports whether the effort of a set was not recorded, on a scale that
// the gate or the policy's rule can go by.
func (n *now) unrated() bool {
	if !n.counts() {
		return !n.seen.AllRated()
	}
	return n.gate(visit.GateEffort).Advice != rule.Raise && !n.seen.Known
}

// hints say what would let the exercise go on where it was not recorded.
func (n *now) hints() []evidence.Reason {
	if len(n.seen.Visit.Sets) == 0 {
		return nil
	}
	v := n.seen.Visit
	var list []evidence.Reason
	for _, h := range [...]struct {
		code    evidence.ReasonCode
		missing bool
	}{
		{"progression.note-effort", n.counts() && n.unrated()},
		{"progression.rate-effort", !n.counts() && n.unrated()},
		{"progression.note-pain", !given.PainTold(v.Pain)},
		{"progression.note-range", v.RangeLost == screening.Unknown},
		{"progression.note-signs", v.Moment == nil},
		{"progression.show-technique", !v.Observer.Made() && !given.Yes(v.FormLost)},
	} {
		if h.missing {
			list = append(list, because(h.code))
		}
	}
	return list
}

// saysHold names the gates that keep the dose, those of repetitions last.
func (n *now) saysHold() evidence.Reason {
	var names []string
	for _, g := range n.seen.Gates.Gates {
		if g.Advice != rule.Raise {
			names = append(names, g.Gate.String())
		}
	}
	if len(names) == 0 {
		names = []string{"effort"} // of what has no reserve, not rated
	}
	return because("progression.hold").With(evidence.Terms("gate", names...))
}

// beyondPublished never lets a step beyond the published size pass in silence.
func (j *Jump) beyondPublished() []evidence.Reason {
	if j.Within {
		return nil
	}
	code := evidence.ReasonCode("progression.step-in-hand")
	if most, _ := rule.StepShare().Max(); j.share() > most {
		code = "progression.large-step"
	}
	return []evidence.Reason{because(code).With(evidence.Share("share", j.External), told.Moved("moved", j.Moved), evidence.Mass("from", j.From))}
}

// saysEnd says that a count fell since the range ends lower than it did.
func (n *now) saysEnd(p *dose.Prescription) []evidence.Reason {
	if p.Load.Each() != n.before.Load.Each() || p.Count != n.step.UpTo || p.Count >= n.before.Count {
		return nil
	}
	return []evidence.Reason{because("progression.range-ends").With(evidence.Count("count", p.Count))}
}

// saysRange says that more repetitions than the guideline's are a bridge, and which
// weight would make them needless.
func (n *now) saysRange(p *dose.Prescription) []evidence.Reason {
	top, _ := n.out.Span.Max()
	if !n.counts() || p.Count <= top || p.Mode == dose.WithoutLoad {
		return nil
	}
	most, _ := rule.StepShare().Max()
	upTo, err := given.Plus(p.Load.Each(), most)
	if err != nil {
		return nil
	}
	return []evidence.Reason{because("progression.above-range").With(
		evidence.Count("count", p.Count), evidence.Count("range", n.out.Span), evidence.Term("goal", n.c.Request.Goal.String()), evidence.Mass("from", p.Load.Each()), evidence.Mass("up to", upTo))}
}
