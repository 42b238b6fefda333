package progression

import (
	"strings"

	"example.org/posology/dose"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// repsMayRise reports whether the dose was done and nothing stands against more
// load but repetitions, technique that nobody saw, or effort that nobody noted.
func (n *next) repsMayRise() bool {
	for _, g := range n.seen.gates.Gates {
		unseen := g.Gate == GateTechnique && !given.Yes(n.seen.v.FormLost)
		unrated := g.Gate == GateEffort && n.unrated()
		if g.Advice != rule.Raise && g.Gate != GateReps && !unseen && !unrated {
			return false
		}
	}
	return n.seen.v.met()
}

// unrated reports whether the effort of a set was not recorded, on a scale that
// the gate or the policy's rule can go by.
func (n *next) unrated() bool {
	if !n.counts() {
		return !n.seen.rated()
	}
	for _, g := range n.seen.gates.Gates {
		if g.Gate == GateEffort && g.Advice == rule.Raise {
			return false
		}
	}
	return !n.seen.known
}

// hint says what would let the exercise go on where it was not recorded.
func (n *next) hint() {
	if len(n.seen.v.Sets) == 0 {
		return
	}
	v := n.seen.v
	if n.unrated() {
		n.because("progression.note-effort", factGates)
	}
	if !painTold(v.Pain) {
		n.because("progression.note-pain", factGates)
	}
	if v.RangeLost == screening.Unknown {
		n.because("progression.note-range", factGates)
	}
	if v.Moment == nil {
		n.because("progression.note-signs", factGates)
	}
	if !v.Observer.Made() && !given.Yes(v.FormLost) {
		n.because("progression.show-technique", factGates)
	}
}

// painTold reports whether all that the pain model asks for was recorded.
func painTold(p *screening.Pain) bool {
	return p != nil && p.Kind != screening.PainKindUnknown && p.Usual != nil && p.During != nil && p.After != nil &&
		(p.NextMorning != nil || p.SettledNextMorning != screening.Unknown) && p.WeeklyTrend != screening.TrendUnknown
}

// deciding names the gates that keep the dose, those of repetitions last.
func (n *next) deciding() string {
	var names []string
	for _, g := range n.seen.gates.Gates {
		if g.Advice != rule.Raise {
			names = append(names, g.Gate.String())
		}
	}
	if len(names) == 0 {
		return "the reserve asked for, or the end of the range"
	}
	return strings.Join(names, ", ")
}

// noteJump never lets a step beyond the published size pass in silence.
func (n *next) noteJump() {
	if n.jump.Within {
		return
	}
	code := evidence.Code("progression.step-in-hand")
	if most, _ := rule.StepShare().Max(); n.jump.share() > most {
		code = "progression.large-step"
	}
	n.d.because(evidence.Because(code, factGuidance, factSmallMuscles).
		With("share", n.jump.External).With("moved", movedText(n.jump.Moved)).With("from", n.jump.From))
}

func movedText(share units.Fraction) string {
	if share == 0 {
		return "not known"
	}
	return share.String()
}

// noteRange says that more repetitions than the guideline's are a bridge, and
// which weight would make them needless.
func (n *next) noteRange(p dose.Prescription) {
	top, _ := n.out.Span.Max()
	if !n.counts() || p.Count <= top || p.Mode == dose.WithoutLoad {
		return
	}
	most, _ := rule.StepShare().Max()
	upTo, err := rule.Plus(p.Load.Each, most)
	if err != nil {
		return
	}
	n.d.because(evidence.Because("progression.above-range", factBridgeTop, factGuidance).
		With("count", p.Count).With("range", n.out.Span).With("goal", n.c.Request.Goal).With("from", p.Load.Each).With("up to", upTo))
}
