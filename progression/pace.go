package progression

import (
	"example.org/posology/dose"
	"example.org/posology/units/evidence"
)

// Seconds of a repetition that bridge where repetitions cannot. With two up, a
// lowering of four makes the six that did best in older adults, and a pause of
// two the eight up to which the pace matters little for growth.
const (
	slowLowering = 4.0
	longPause    = 2.0
)

// What bridges to the next weight where repetitions and the kit cannot comes one
// thing at a time. The order depends on the exercise and the kit alone, so that
// nothing that speaks for caution brings a set more.

func (n *now) lowersQuickly() bool { return n.counts() && n.step.Lowering < slowLowering }

func (n *now) slower() choice {
	s := n.step
	s.Lowering = slowLowering
	return n.bridgeBy(s, "progression.slower")
}

func (n *now) pausesBriefly() bool { return n.counts() && n.step.Pausing < longPause }

func (n *now) pause() choice {
	s := n.step
	s.Pausing = longPause
	return n.bridgeBy(s, "progression.pause")
}

// bridgeBy takes a slower pace, with the repetitions that fill a set as long.
func (n *now) bridgeBy(s dose.Step, code evidence.ReasonCode) choice {
	was, lifting := &n.step, n.out.Tempo.Lifting
	seconds := float64(was.Count) * (was.Lowering + was.Pausing + lifting)
	s.Count = min(was.Count, max(n.bottom(), int(seconds/(s.Lowering+s.Pausing+lifting))))
	return choice{step: s, why: []evidence.Reason{because(code)}}
}

func (n *now) mayHaveExtraSet() bool { return n.step.Sets < n.f.MostSets() && n.beyondReach() }

func (n *now) extraSet() choice {
	s := n.step
	s.Count = min(n.bottom(), s.Count)
	s.Sets++
	return choice{step: s, why: []evidence.Reason{because("progression.extra-set")}}
}

// kitEnds says that nothing heavier is there.
func (n *now) kitEnds() choice {
	code := evidence.ReasonCode("progression.kit-ends")
	if n.step.Load == 0 { // no weight would change that
		code = "progression.ladder-ends"
	}
	return n.stay(append(n.noVariant(), because(code))...)
}

// tooFar says that nothing shows the next weight, or that it was tried in vain.
func (n *now) tooFar() choice {
	next := evidence.Mass("next", n.jump.To.Each())
	if n.vain && !n.counts() {
		return n.stay(append(n.noVariant(), because("progression.tried-lately").With(next, evidence.Count("visits", feelEvery)))...)
	}
	return n.stay(append(n.noVariant(), because("progression.too-far").With(next, evidence.Share("share", n.jump.share())))...)
}
