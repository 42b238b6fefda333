package told

import (
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

var reasons = Reasons()

// Because is the reason of a code.
func Because(code evidence.ReasonCode) evidence.Reason { return reasons.Because(code) }

// Hints say what of a visit would let the exercise go on, had it been recorded; unrated: the effort of
// a set was not.
func Hints(v *visit.Visit, counts, unrated bool) (list []evidence.Reason) {
	say := func(code evidence.ReasonCode, missing bool) {
		if missing {
			list = append(list, Because(code))
		}
	}
	say("progression.note-effort", counts && unrated)
	say("progression.rate-effort", !counts && unrated)
	say("progression.note-pain", !given.PainTold(v.Pain))
	say("progression.note-range", v.RangeLost == screening.Unknown)
	say("progression.note-signs", v.Moment == nil)
	say("progression.show-technique", !v.Observer.Made() && !given.Yes(v.FormLost))
	return list
}

// Hold names the gates that keep the dose, those of repetitions last.
func Hold(gates []visit.GateAnswer) evidence.Reason {
	var names []string
	for _, g := range gates {
		if g.Advice != rule.Raise {
			names = append(names, g.Gate.String())
		}
	}
	if len(names) == 0 {
		names = []string{"effort"} // of what has no reserve, not rated
	}
	return Because("progression.hold").With(evidence.Terms("gate", names...))
}

// Step says how large a step beyond the published size is, in the hand and of all that is moved; share
// is the one of them that counts.
func Step(external, moved, share units.Fraction, from units.Mass) []evidence.Reason {
	code := evidence.ReasonCode("progression.step-in-hand")
	if most, _ := rule.StepShare().Max(); share > most {
		code = "progression.large-step"
	}
	return []evidence.Reason{Because(code).With(evidence.Share("share", external), Moved("moved", moved), evidence.Mass("from", from))}
}
