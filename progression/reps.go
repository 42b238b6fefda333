package progression

import (
	"cmp"
	"math"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/internal/told"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A fit is a step with what was changed in it.
type fit struct {
	step dose.Step
	from units.Mass // the weight before
	fell bool       // weight or count did
	few  bool       // fewer than a set is worth, and nothing lighter is left
	one  bool       // one set, in place of fewer repetitions
}

// The fewest repetitions that a weight is kept for.
const (
	leastCount      = given.WorthASet
	leastAtLightest = 3 // with the lightest weight, where there is nothing to go down to
)

// fit keeps the count to what the chance allows. A weight that allows too few goes
// down, unless it is the lightest.
func (n *now) fit(s dose.Step) fit {
	from := s
	most, known := n.fits(s)
	for n.counts() && known && most < n.leastOf(s.Load) && !n.c.Request.Exercise.MovesBody {
		lighter := n.below(s.Load)
		if lighter >= s.Load {
			break
		}
		s.Load = lighter
		most, known = n.fits(s)
	}
	few := n.counts() && known && most < n.leastOf(s.Load)
	if few && n.c.Request.Exercise.MovesBody { // of which nothing is known but how the last sets ended
		most, few = max(most, n.fewest(s.Load)), false
	}
	if !n.counts() || !known || s.Load == from.Load && most >= s.Count {
		return fit{step: from, few: few && s.Count >= n.leastOf(s.Load)}
	}
	if s.Count = max(1, most); s.Load < from.Load {
		s.Count = min(max(from.Count, n.leastOf(s.Load)), n.countOf(most, n.bottom()))
	} else if least, lighter := n.atLeast(1), n.below(s.Load); s.Count < least && least <= from.Count && lighter < s.Load {
		s.Load, s.Count = lighter, least // as the frame would have it
	}
	return fit{step: s, from: from.Load, fell: true, few: few}
}

// goesDown reports whether the weight that was done is too heavy for today's reserve.
func (n *now) goesDown() bool { return n.fitted.step.Load < n.step.Load }

// saysFit says what fell.
func (n *now) saysFit(f fit) []evidence.Reason {
	switch s := f.step; {
	case !f.fell:
		return nil
	case s.Load < f.from:
		return []evidence.Reason{because("progression.lighter-for-reserve").With(
			evidence.Reserve("reserve", n.out.Reserve.Least, n.out.Reserve.Countable), evidence.Mass("from", f.from), evidence.Mass("to", s.Load))}
	}
	return n.saysFewer(f.step.Count)
}

func (n *now) saysFewer(count int) []evidence.Reason {
	return []evidence.Reason{because("progression.fewer-reps").With(evidence.Count("count", count), evidence.Reserve("reserve", n.out.Reserve.Least, n.out.Reserve.Countable))}
}

// fits returns the most repetitions of the weight of a step: of the last one no more than
// its sets left room for.
func (n *now) fits(s dose.Step) (int, bool) {
	if s.Load != n.seen.Base {
		return n.allows(s.Load)
	}
	most, known := n.counted(s.Load)
	if !known {
		most = s.Count
	}
	near := n.nearest(toFall)
	if n.onlyLighter(s.Load) && !n.tooHeavy() {
		near = max(near, n.fewest(s.Load))
	}
	return min(most, near), true
}

// leastOf are the fewest repetitions that a set is asked for.
func (n *now) leastOf(each units.Mass) int { return n.atLeast(n.fewest(each)) }

// fewest is leastOf without screening, which asks for more and shows nothing.
func (n *now) fewest(each units.Mass) int {
	if n.onlyLighter(each) {
		return min(leastAtLightest, n.bottom())
	}
	return min(leastCount, n.bottom())
}

// atLeast is a count, no more than the range begins with and no fewer than screening asks for.
func (n *now) atLeast(few int) int {
	if n.counts() {
		few = max(few, n.c.Request.Screening.Limits.LeastCount)
	}
	return min(few, n.bottom())
}

// kept is how many repetitions stay of what was just done as asked: up to the floor, as
// many as leave the reserve by what every set told, and all of the floor where one told
// less than was asked. What was clearly easy is not taken away: all of it stays, and after
// two calm visits one more may come, up to what every set told. Days missed take theirs. 0: none.
func (n *now) kept() int {
	floor := n.atLeast(min(farFloor, cmp.Or(n.c.Policy.Floor, farFloor)))
	if n.dayOver > 0 && n.back == nil && n.out.Reserve.Least <= n.last().Plan.Reserve.Least {
		return n.step.Count // it was fitted when it was decided on
	}
	if seen := n.seen.Visit; !n.counts() || n.back != nil && n.back.Anew || seen.Done() < seen.Plan.Sets {
		return 0
	}
	least, more, need := floor, 0, n.leastOf(n.seen.Base)
	switch easy := n.seen.BeyondCounting() && n.back == nil; {
	case easy && n.calm():
		least, more = n.last().Plan.Count+1, 1
	case easy:
		least = max(floor, n.step.Count)
	}
	for i := range n.seen.Visit.Sets {
		s := &n.seen.Visit.Sets[i]
		told, known := given.Told(s.Effort)
		if each, _ := s.Hold.Each(s.Load, s.Stated); !known || each != n.seen.Base {
			return 0
		}
		if told < n.last().Plan.Reserve.Least {
			least, need = min(least, floor), floor
		}
		leaves, calm := history.Leaves(s.Reps, told, n.out.Reserve.Least), history.Leaves(s.Reps, told, calmLeft)
		if n.back != nil {
			leaves, calm = min(leaves, n.step.Count), min(calm, bridgeFar)
			leaves, calm = leaves-n.lost(leaves, n.out.Reserve.Least, n.back.Load), calm-n.lost(calm, calmLeft, n.back.Load)
		}
		if calm >= floor && floor == n.c.Request.Screening.Limits.LeastCount && !n.out.Reserve.Countable && n.out.Reserve == n.last().Plan.Reserve {
			leaves = max(leaves, floor) // see leftEnough: the count can fall no more
		}
		if least = min(least, leaves); s.Reps < n.last().Plan.Count || !given.Searches(&n.last().Plan) { // a trial asks for few
			least = min(least, s.Reps+more)
		}
	}
	if least < need {
		return 0
	}
	return least
}

// How many repetitions more than every set left by the words told a count may have. To
// rise none: the reserve asked is left. To fall two: people tell one too few, and the
// chance lets one less than the reserve asked be left.
const (
	toRise = 0
	toFall = 2
)

// nearest is the count that the set of the last visit which came nearest to failure
// leaves: what the chance allows rests on the best set.
func (n *now) nearest(more int) int {
	least := math.MaxInt
	switch {
	case n.out.Reserve.Least > n.last().Plan.Reserve.Least:
		more = 0 // than was shown or, of what was not done, was asked
		if plan := &n.last().Plan; n.counts() && len(n.seen.Visit.Sets) == 0 {
			least = history.Leaves(plan.Count, plan.Reserve.Least, n.out.Reserve.Least)
		}
	case n.c.Request.Exercise.MovesBody || !n.strength.Known():
		more = 1 // nothing else is known
	}
	for i := range n.seen.Visit.Sets {
		s := &n.seen.Visit.Sets[i]
		if !n.counts() {
			break
		}
		if told, known := given.Told(s.Effort); known {
			count := history.Leaves(s.Reps, told, n.out.Reserve.Least)
			if least = min(least, count+more); told == 0 { // which nobody misjudges; one such day takes no weight away
				least = min(least, max(count, n.fewest(n.seen.Base)))
			}
		}
	}
	return least
}

// bridgeEnd returns where bridging by repetitions ends; with the lightest weight a search begins again.
func (n *now) bridgeEnd() int {
	top, _ := n.out.Span.Max()
	if !n.counts() || n.out.Phase == dose.Familiarise {
		return top
	}
	end, ex := bridgeTop, &n.c.Request.Exercise
	if n.jump != nil && n.jump.over(feelShare) && !ex.MovesBody && n.seen.Base > n.lightest() {
		end = bridgeFar
	}
	if most, ok := ex.Count.Max(); ok && ex.CountFact != exercise.FactCountSets {
		end = min(end, most)
	}
	return max(top, min(end, cmp.Or(n.c.Policy.MostReps, end)))
}

// upTo returns the end of the range to work through: the guideline's where the next
// weight is shown, where a limit forbids it, or where the policy's rule asks no
// further; else where bridging ends.
func (n *now) upTo() int {
	top, _ := n.out.Span.Max()
	if n.jump != nil && (n.jump.To.Each() > n.most || n.shown() && !n.barredAlone(n.jump)) {
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
	atOnce := repsStep
	if n.seen.BeyondCounting() {
		atOnce = easyStep
	}
	if !known {
		aim = n.seen.Reps + 1
		if !n.counts() || atOnce == easyStep && n.weightFollows() {
			aim = n.seen.Reps + easyStep
		}
	}
	if n.counts() {
		aim = min(aim, n.step.Count+atOnce)
	}
	if aim = min(aim, end, n.nearest(toRise)); aim <= n.step.Count || !n.repsMayRise() {
		return 0
	}
	return aim
}

const (
	repsStep = 2 // repetitions more at a visit
	easyStep = 5 // likewise, while every set left more than can be counted; seconds or metres
)

// addReps takes more repetitions, and says what would let the exercise go on.
func (n *now) addReps() choice {
	s := n.step
	s.Count = n.more()
	code := evidence.ReasonCode("progression.more-reps")
	if !n.counts() { // no reserve ends it
		code = "progression.more-of-it"
	}
	return choice{step: s, why: append(n.hints(), because(code).With(evidence.Count("aim", s.Count), evidence.Count("top", s.UpTo)))}
}

// hold takes no more, and says what keeps the dose.
func (n *now) hold() choice {
	if n.seen.Gates.Advice == rule.Raise && !n.unrated() {
		return n.stay(n.saysAllowed()...)
	}
	return n.stay(append(n.hints(), told.Hold(n.seen.Gates.Gates))...)
}

// saysAllowed says whether the chance or the last sets allow no more; at a limit and the
// top of the range neither does.
func (n *now) saysAllowed() []evidence.Reason {
	s := &n.fitted.step
	most, known := n.counted(s.Load)
	switch {
	case known && most <= s.Count:
		return []evidence.Reason{because("progression.as-allowed").With(evidence.Count("count", s.Count), evidence.Mass("load", s.Load))}
	case n.limited() && s.Count >= n.step.UpTo:
		return nil
	}
	return []evidence.Reason{because("progression.set-nearest").With(evidence.Count("count", s.Count))}
}

// atLimit says which limit holds, where the weight stays and is the most.
func atLimit(chosen func(*now) choice) func(*now) choice {
	return func(n *now) choice {
		c := chosen(n)
		if !n.goesDown() {
			c.why = append([]evidence.Reason{n.saysLimit()}, c.why...)
		}
		return c
	}
}
