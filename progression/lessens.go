package progression

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/internal/told"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// An ask is what a row of lessens asks for. Asks are joined, whatever their order.
type ask uint8

const (
	comeBack       ask = 1 << iota // load and sets by the rung of the days missed, or from the start
	lighterWeight                  // the next lighter one, or an easier variant
	simpler                        // the next lighter weight, a set fewer, or an easier variant
	lighterSession                 // a set fewer if there is one to spare, two more in reserve
	setTaken                       // a set is taken away by something else
	fewerSets                      // no more than a set below those that the plan builds up to
	easierVariant
)

// A lessening is a row of [lessens].
type lessening struct {
	name  string
	when  string // as the docs print it
	does  string
	asks  ask
	codes []evidence.ReasonCode
	holds func(*now) bool
	says  func(*now) []evidence.Reason
}

// lessens is all that makes a dose easier, or keeps it from being made harder: every
// row that holds, joined.
var lessens = [...]lessening{
	{"missed", "more than a week since the last set", "load and sets by the ladder, or anew", comeBack, codes("progression.return", "progression.return-kept", "progression.return-anew", "progression.return-assessed", "progression.reps-for-load", "progression.set-for-load"),
		func(n *now) bool { return n.back != nil }, (*now).saysBack},
	{"above-limit", "the last weight lies above a limit", "the heaviest below it", 0, codes("progression.above-limit"),
		func(n *now) bool { return n.seen.Base > n.most }, func(n *now) []evidence.Reason {
			return []evidence.Reason{because("progression.above-limit").With(evidence.Mass("load", n.seen.Base), evidence.Mass("most", n.most))}
		}},
	{"few-for-limit", "the last count lies below the least of screening", "a lighter weight, or an easier variant", 0, codes("progression.few-for-limit"),
		func(n *now) bool { return n.step.Count < n.atLeast(1) }, only("progression.few-for-limit")},
	{"lighter-day", "the day's check asks for a lighter session", "as the check says", setTaken, codes("progression.lighter-day"),
		(*now).dayIsLighter, only("progression.lighter-day")},
	{"too-heavy", "the weight could not be lifted, or in some set too seldom even to failure", "a lighter weight, or an easier variant", lighterWeight, codes("progression.too-much", "progression.easier-variant"),
		func(n *now) bool { return n.tooHeavy() && !n.beginsLighter() }, only("progression.too-much")},
	{"too-few", "the lightest weight allows too few repetitions in reserve", "an easier variant", easierVariant, codes("progression.too-few", "progression.easier-variant"),
		func(n *now) bool { return n.fitted.few && !n.tooHeavy() }, only("progression.too-few")},
	{"below-three", "three visits in a row below the dose", "fewer repetitions, a lighter weight, a set fewer, or an easier variant; none but the first where only a reserve beyond counting fell short", simpler, codes("progression.below-three", "progression.fewer-reps", "progression.easier-variant"),
		func(n *now) bool { return !n.tooHeavy() && n.below3() && !n.beginsLighter() && !n.leftEnough() }, only("progression.below-three")},
	{"attendance", "half of the planned sessions or fewer were done", "a set fewer than the plan builds up to, one at least", fewerSets, codes("progression.attendance-low"),
		func(n *now) bool { return n.attended.Advice >= rule.Ease }, func(n *now) []evidence.Reason { return n.attended.Reasons }},
	{"recurring", "a visit that eases, within three after another", "an easier variant", easierVariant, codes("progression.recurring", "progression.easier-variant"),
		func(n *now) bool { return n.recurring }, only("progression.recurring")},
	{"eased", "a gate on the last visit eases", "a lighter session", lighterSession | setTaken, codes("progression.eased"),
		func(n *now) bool { return n.seen.Gates.Advice >= rule.Ease }, only("progression.eased")},
}

// only gives one reason, without values.
func only(code evidence.ReasonCode) func(*now) []evidence.Reason {
	return func(*now) []evidence.Reason { return []evidence.Reason{because(code)} }
}

func (n *now) saysBack() []evidence.Reason {
	f, err := n.comeBack(n.same(&n.last().Plan))
	code := told.InPlace(f.one, f.fell && f.step.Count < n.last().Plan.Count)
	if err != nil || code == "" { // the error comes with the step
		return n.back.Reasons
	}
	return append(slices.Clip(n.back.Reasons), because(code).With(evidence.Count("count", f.step.Count)))
}

// easier is the dose that everything asks for together, in the frame that it is
// dosed in; without a dose, an easier variant is asked for.
type easier struct {
	in      *now
	step    dose.Step
	why     []evidence.Reason // of a count that fell with it
	variant bool
}

// lessen does what the rows ask for.
func (n *now) lessen(asks ask) (easier, error) {
	e := easier{in: n, step: n.same(&n.last().Plan)}
	e.step.Count = min(e.step.Count, n.step.Count) // after a trial no more than before it
	if asks&comeBack != 0 {
		f, err := n.comeBack(e.step)
		if err != nil {
			return e, err
		}
		e.step = f.step
	}
	switch {
	case asks&lighterWeight != 0:
		e.variant = e.step.Load <= n.lightest() || !n.simplify(&e.step)
	case asks&simpler != 0 && n.simplerCount() > 0:
		e.step.Count = min(e.step.Count, n.simplerCount())
		e.why = n.saysFewer(e.step.Count)
	case asks&simpler != 0:
		e.variant = !n.simplify(&e.step)
	}
	if asks&fewerSets != 0 {
		most := n.target()
		if asks&setTaken == 0 { // else the frame takes it
			most = max(1, most-1)
		}
		e.step.Sets = min(e.step.Sets, most)
	}
	e.variant = e.variant || asks&easierVariant != 0
	if asks&lighterSession == 0 {
		return e, nil
	}
	if !n.counts() {
		e.step.Count = min(e.step.Count, n.bottom())
		if e.step.Sets == 1 && e.step.Count == n.last().Plan.Count && e.step.Load == n.last().Plan.Load.Each() { // no set to spare, and no reserve to ask for
			e.step.Load = n.below(e.step.Load)
			e.variant = e.variant || e.step.Load == n.last().Plan.Load.Each()
		}
	}
	var err error
	e.in, err = n.in(eased(n.f.Request()))
	return e, err
}

// tooHeavy reports whether the load could not be lifted at all, or in some set, by its
// own repetitions and reserve together, not often enough even to failure. With the lightest
// weight little is enough: its count fits what can be done. Where the body moves, an
// easier variant is near.
func (n *now) tooHeavy() bool {
	if given.Yes(n.last().Unable) {
		return true
	}
	least := min(n.atLeast(farFloor), n.last().Plan.Count)
	if n.onlyLighter(n.seen.Base) {
		least = min(least, n.atLeast(leastAtLightest+1))
	}
	return n.h.CameTo(n.seen.Visit, least)
}

// onlyLighter reports whether a weight is the lightest, of an exercise of which no
// easier variant is as near as a lighter weight.
func (n *now) onlyLighter(each units.Mass) bool {
	return each <= n.lightest() && n.counts() && !n.c.Request.Exercise.MovesBody
}

// below3 reports whether the last visits, as many as the rule asks for, were
// below one and the same dose: what was made easier begins again.
func (n *now) below3() bool {
	plan, below := &n.last().Plan, 0
	for i := len(n.c.Log) - 1; i >= 0; i-- {
		v := &n.c.Log[i]
		if slices.Contains(n.clean.Without, i) || !n.tooLittle(v) || v.Plan.Load.Each() != plan.Load.Each() || v.Plan.Sets != plan.Sets {
			break
		}
		below++
	}
	if below == 0 {
		return false
	}
	a, err := rule.Simplify(below)
	return err == nil && a.Advice == rule.Ease
}

// tooLittle reports whether a visit stayed below its dose. With fewer of the lightest
// weight than the range begins with, less in reserve is no reason for an easier variant.
func (n *now) tooLittle(v *visit.Visit) bool {
	low, _ := v.Plan.Span.Min()
	few := v.Plan.Count < low && n.onlyLighter(v.Plan.Load.Each())
	return v.Below() && (!few || v.Done() < v.Plan.Sets || n.h.CameTo(v, leastAtLightest+1))
}

// simplerCount is the count that leaves the reserve asked where all sets were done and
// only ended nearer to failure; 0: a set would be worth nothing, or something else was
// amiss.
func (n *now) simplerCount() int {
	plan := &n.last().Plan
	if !n.counts() || !n.seen.Known || n.seen.Visit.Done() < plan.Sets || n.seen.Reps < min(n.bottom(), plan.Count) {
		return 0
	}
	if count := min(n.nearest(toRise), n.fitted.step.Count, plan.Count-1); count >= n.atLeast(leastCount) && n.fitted.step.Load == n.seen.Base {
		return count
	}
	return 0
}

// leftEnough reports whether the last visit fell short only of a reserve beyond counting, and
// by so little that it is no failure, once the count can fall no more.
func (n *now) leftEnough() bool {
	v := n.seen.Visit
	return n.counts() && n.simplerCount() == 0 && n.seen.Known && n.seen.Left >= calmLeft && !v.Plan.Reserve.Countable && v.Done() >= v.Plan.Sets && n.seen.Reps >= v.Plan.Count
}

// simplify takes the next lighter weight, no oftener than was asked of the heavier, or a set
// fewer, and reports whether there was either.
func (n *now) simplify(s *dose.Step) bool {
	if lighter := n.below(s.Load); lighter < s.Load {
		s.Load, s.Count = lighter, min(n.bottom(), max(s.Count, n.leastOf(lighter)))
		return true
	}
	s.Sets--
	return s.Sets >= 1
}

const (
	recurring = 3 // visits
	calmLeft  = 3 // repetitions left by every set, as a novice begins with: no set was a failure
)
