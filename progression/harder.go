package progression

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// A row is a row of [harder].
type row struct {
	name   string
	when   string // as the docs print it
	change Change // NoChange: the dose stays
	codes  []evidence.ReasonCode
	holds  func(*now) bool
	choose func(*now) choice
}

// A choice is what becomes of the dose.
type choice struct {
	step dose.Step
	why  []evidence.Reason
	rise *Jump // that the step takes
	new  *offer
}

// harder is what makes a dose harder, or why it stays, where nothing lessens it: the
// first row that holds. A [Policy] may take some away: see [row.mayGo].
var harder = [...]row{
	{"nothing-done", "no set was done, or every one is doubtful", NoChange, codes("progression.nothing-done"), (*now).nothingDone, stays("progression.nothing-done")},
	{"ask-first", "somebody is to be asked before more than light and supervised work", NoChange, codes("progression.ask-first"), (*now).asksFirst, stays("progression.ask-first")},
	{"plan-expired", "the plan has expired", NoChange, codes("progression.plan-expired"), (*now).expired, stays()},
	{"day-over", "the last plan was its day's alone", NoChange, codes("progression.goes-on"), func(n *now) bool { return n.dayOver > 0 }, stays()},
	{"sets-first", "a set is to come that the plan builds up to", MoreSets, codes("progression.one-more-set"), (*now).mayAddSet, (*now).addSet},
	{"maintain", "maintenance, and the next weight was not done before", NoChange, codes("progression.maintain"), (*now).maintains, stays("progression.maintain")},
	{"found-easy", "a heavier weight was found, and is still clearly easy", FindLoad, codes("progression.find-on"), (*now).foundEasy, (*now).findOn},
	{"found", "a heavier weight was found", FindLoad, codes("progression.found"), (*now).foundMore, (*now).found},
	{"two-rises", "the next weight is shown, and two other loads rise", NoChange, codes("progression.two-rise"), (*now).riseWaits, stays("progression.two-rise")},
	{"next-weight", "the chance allows the next weight, or its own sets or two visits without a count of repetitions show it", MoreLoad, codes("progression.shown", "progression.done-before", "progression.rated-twice", "progression.large-step", "progression.step-in-hand"), (*now).rises, (*now).raise},
	{"find-on", "the load is looked for, and every set was clearly easy", FindLoad, codes("progression.find-on"), (*now).goesOnFinding, (*now).findOn},
	{"tried", "a heavier weight was tried and was too much", NoChange, codes("progression.tried"), (*now).triedInVain, stays("progression.tried")},
	{"resumed", "a trial is over: back to the dose before it", NoChange, codes("progression.resumed"), (*now).resumes, stays("progression.resumed")},
	{"limit-reps", "a limit forbids the next weight, and repetitions may rise within the range", MoreReps, codes("progression.limit", "progression.more-reps", "progression.more-of-it"), (*now).limitedReps, atLimit((*now).addReps)},
	{"limit", "a limit forbids the next weight", NoChange, codes("progression.limit", "progression.hold", "progression.as-allowed", "progression.set-nearest"), (*now).limited, atLimit((*now).hold)},
	{"feel", "the next weight is far, and it may be felt", FindLoad, codes("progression.large-step", "progression.feel"), (*now).feels, (*now).feel},
	{"try", "the next weight may be tried", FindLoad, codes("progression.large-step", "progression.step-in-hand", "progression.find-on"), (*now).tries, (*now).try},
	{"more-reps", "the chance allows more repetitions, and they may rise", MoreReps, codes("progression.more-reps", "progression.more-of-it"), (*now).moreRepsHolds, (*now).addReps},
	{"hold", "a gate keeps the dose, or the chance allows no more yet", NoChange, codes("progression.hold", "progression.as-allowed", "progression.set-nearest"), (*now).repsFirst, (*now).hold},
	{"familiarising", "movements are still learnt", NoChange, codes("progression.familiarising"), (*now).familiarises, stays("progression.familiarising")},
	{"more-reserve", "the present weight could show the next one", NoChange, codes("progression.more-reserve", "progression.once-more"), (*now).nearlyShown, (*now).waitForReserve},
	{"slower", "lowering is quicker than four seconds", SlowerLowering, codes("progression.slower"), (*now).lowersQuickly, bridgesBy(slowLowering, 0, "progression.slower")},
	{"pause", "the pause is shorter than two seconds", LongerPause, codes("progression.pause"), (*now).pausesBriefly, bridgesBy(0, longPause, "progression.pause")},
	{"beside", "a heavier weight waits for somebody at hand", NoChange, codes("progression.look-beside", "progression.step-beside", "progression.above-beside"), (*now).waitsForSomebody, stays()},
	{"extra-set", "the next weight can be neither shown nor felt, and the guideline has room", ExtraSet, codes("progression.extra-set"), (*now).mayHaveExtraSet, (*now).extraSet},
	{"variant-waits", "there is a harder variant, and enough exercises are new", NoChange, codes("progression.variant-waits"), (*now).variantWaits, (*now).waitForVariant},
	{"harder-variant", "there is a harder variant that can be dosed", HarderVariant, codes("progression.instead"), (*now).variantOffered, (*now).takeVariant},
	{"kit-ends", "the kit has nothing heavier", NoChange, codes("progression.no-variant", "progression.kit-ends", "progression.ladder-ends"), func(n *now) bool { return n.jump == nil }, (*now).kitEnds},
	{"too-far", "none of these", NoChange, codes("progression.no-variant", "progression.too-far", "progression.tried-lately"), func(*now) bool { return true }, (*now).tooFar},
}

// beside is where the rows begin before which is said what waits for somebody.
var beside = slices.IndexFunc(harder[:], func(r row) bool { return r.name == "limit-reps" })

func codes(list ...evidence.ReasonCode) []evidence.ReasonCode { return list }

// stays keeps the dose, within what the last visit showed.
func stays(codes ...evidence.ReasonCode) func(*now) choice {
	return func(n *now) choice {
		var why []evidence.Reason
		for _, code := range codes {
			why = append(why, because(code))
		}
		return n.stay(why...)
	}
}

func (n *now) stay(why ...evidence.Reason) choice {
	return choice{step: n.fitted.step, why: append(why, n.saysFit(n.fitted)...)}
}

// harden returns the first row that holds and was not taken away.
func (n *now) harden() (*row, choice) {
	for i := range harder {
		r := &harder[i]
		if !r.holds(n) || n.c.Policy.without(r.name) {
			continue
		}
		c := r.choose(n)
		if i >= beside && n.waitsForSomebody() {
			c.why = append([]evidence.Reason{n.saysBeside()}, c.why...)
		}
		c.why = append(c.why, n.saysDeclined(r.change)...)
		return r, c
	}
	return nil, choice{} // the last row always holds
}

// mayGo reports whether a policy may take the row away: one that makes harder, except
// found, which writes down what was lifted already, so that no later row makes a
// second thing harder on top of it.
func (r *row) mayGo() bool { return r.change != NoChange && r.name != "found" }

// removable are the names of the rows that a policy may take away.
func removable() []string {
	var names []string
	for i := range harder {
		if harder[i].mayGo() {
			names = append(names, harder[i].name)
		}
	}
	return names
}

func (n *now) nothingDone() bool {
	return n.dayOver == 0 && len(n.seen.Visit.Sets) == 0 || n.clean.Open == 1
}

func (n *now) asksFirst() bool { return n.c.Request.Screening.Meanwhile > screening.WithinLimits }

func (n *now) expired() bool { return n.c.Plan.Expired(n.c.Day) }

// mayAddSet reports whether a set is still to come before anything else is made
// harder: those that the plan builds up to, or in familiarisation begins with.
func (n *now) mayAddSet() bool {
	return n.bearsMore() && n.setsCome() && n.seen.Visit.Met() && !n.goesDown()
}

// setsCome reports whether there are such sets, of a dose that is not looked for any
// more. It asks for nothing that was done: no weight comes because a set did not.
func (n *now) setsCome() bool { return n.last().Plan.Finding == nil && n.last().Plan.Sets < n.target() }

// target is how many sets the plan builds up to, or begins with.
func (n *now) target() int {
	if n.out.Phase == dose.Familiarise || n.out.Phase == dose.Maintain {
		return n.out.Sets
	}
	return n.out.BuildTo
}

func (n *now) addSet() choice {
	s := n.fitted.step
	s.Sets++
	return choice{step: s, why: append([]evidence.Reason{because("progression.one-more-set")}, n.saysFit(n.fitted)...)}
}

func (n *now) maintains() bool { return n.out.Phase == dose.Maintain && !(n.again && n.mayRaise()) }

// familiarises reports whether all but what the range and the kit allow waits for
// the review.
func (n *now) familiarises() bool { return n.out.Phase == dose.Familiarise }

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

func (n *now) pausesBriefly() bool { return n.counts() && n.step.Pausing < longPause }

// bridgesBy takes a slower pace, with the repetitions that fill a set as long.
func bridgesBy(lowering, pausing float64, code evidence.ReasonCode) func(*now) choice {
	return func(n *now) choice {
		s, lifting := n.step, n.out.Tempo.Lifting
		seconds := float64(s.Count) * (s.Lowering + s.Pausing + lifting)
		s.Lowering, s.Pausing = max(s.Lowering, lowering), max(s.Pausing, pausing)
		s.Count = min(s.Count, max(n.bottom(), int(seconds/(s.Lowering+s.Pausing+lifting))))
		return choice{step: s, why: []evidence.Reason{because(code)}}
	}
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
