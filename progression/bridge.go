package progression

import (
	"math"

	"example.org/posology/dose"
	"example.org/posology/dose/onerm"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// cautious are the relations of which the more cautious answers each step.
var cautious = [...]onerm.Relation{onerm.Epley, onerm.Brzycki}

// toFailureBefore returns how many repetitions to failure with the present
// weight show that one heavier by the fraction p can be lifted after times to
// failure. It is false where no curve tells.
//
// Brzycki's equation ends before 37 repetitions and asks for fewer there than
// Epley's, so that leaving it out beyond its end loosens nothing.
func toFailureBefore(after float64, p units.Fraction, own onerm.Relation) (float64, bool) {
	if own != nil {
		if n, ok := shareBefore(own, after, p); ok && own.Studied().Contains(n) && own.Studied().Contains(after) {
			return n, true
		}
	}
	most, known := 0.0, false
	for _, r := range cautious {
		if n, ok := shareBefore(r, after, p); ok {
			most, known = max(most, n), true
		}
	}
	return most, known
}

// shareBefore inverts one relation: the share that can be lifted after times, less
// the step.
func shareBefore(r onerm.Relation, after float64, p units.Fraction) (float64, bool) {
	share, err := r.Fraction(after)
	if err != nil {
		return 0, false
	}
	n, err := r.Reps(share / (1 + p))
	return n, err == nil && n >= after
}

// surely returns the reserve that a set left at least, for a reported one: with
// the usual error of telling it, and none beyond what can be counted.
func surely(reported units.RIR) units.RIR {
	return min(max(0, reported-rule.ReserveError(reported)), rule.Countable-rule.NearError)
}

// share returns the step as a share of all that is moved, or of the weight held
// where that is not known: the larger of the two, so the more cautious.
func (j Jump) share() units.Fraction {
	if j.Moved > 0 {
		return j.Moved
	}
	return j.External
}

// wanted is what the next weight has to allow: the bottom of the range and the
// reserve, together.
func (n *now) wanted() float64 {
	return float64(n.bottom()) + float64(n.out.Reserve.Least)
}

// ahead is the step up from a weight, and what shows that it can be done.
type ahead struct {
	jump   *Jump   // nil at the top of the kit
	needed float64 // repetitions to failure that show it; infinite where nothing does
	again  bool    // sets with the next weight itself show it
	vain   bool    // they show that it could not be done
}

// above looks at the step to the next weight above each.
func (n *now) above(each units.Mass) (ahead, error) {
	a := ahead{jump: n.jump, needed: math.Inf(1)}
	if a.jump == nil || a.jump.From != each { // else it is the step that was looked at
		jump, ok, err := NextJump(n.f.Table(), each, n.moved())
		if err != nil || !ok {
			return ahead{needed: math.Inf(1)}, field.At("/body_mass", err)
		}
		a.jump = &jump
	}
	a.again, a.vain = n.recall(a.jump.To.Each())
	if p := a.jump.share(); p > 0 && n.counts() {
		if need, known := toFailureBefore(n.wanted(), p, n.c.Curve); known {
			a.needed = need
		}
	}
	return a, nil
}

// moved returns the part of the body that is lifted, at least, 0 if not known.
func (n *now) moved() units.Mass {
	low, ok := n.c.Request.Exercise.MovedShare.Min()
	if !ok {
		return 0
	}
	m, err := n.c.BodyMass.Scale(low, units.Down)
	if err != nil {
		return 0
	}
	return m
}

// repsBefore returns the repetitions that show the next weight if they leave the
// reserve that is asked for, and 0 if none can: there is no next weight or no
// curve for it.
func (n *now) repsBefore(a ahead) int {
	if math.IsInf(a.needed, 1) {
		return 0
	}
	return max(n.bottom(), wholeReps(a.needed-float64(surely(n.out.Reserve.Least))))
}

// wholeReps rounds up to whole repetitions, but for what rounding adds.
func wholeReps(reps float64) int { return int(math.Ceil(reps - rounding)) }

const rounding = 1e-9 // repetitions

// shown reports whether what was done shows that the next weight can be done: it
// was itself, not long ago, or the present one was often enough.
func (n *now) shown() bool {
	return n.again || n.able() >= n.needed-rounding
}

// able is how often the present weight can surely be lifted, to failure.
func (n *now) able() float64 { return float64(n.seen.Reps) + float64(surely(n.seen.Left)) }

// mostTries is how many steps up one load may try at one visit.
const mostTries = 2

// mayTry returns how many steps up may be tried from the present weight, each
// only while it is clearly easy: none unless every set left more than can be
// counted, and none whose first lift could be a maximum on the cautious side.
// What has no curve is tried one step at a time.
func (n *now) mayTry() int {
	if n.jump == nil || !n.seen.BeyondCounting() {
		return 0
	}
	if !n.counts() {
		return 1
	}
	if n.spare() < 0 {
		return 0
	}
	steps, to := 0, n.jump
	for steps < mostTries && to != nil && n.seen.Reps >= n.repsToTry(*to) {
		steps++
		if to = n.beyond(*to); to != nil && n.lifted(to.To.Each()) {
			break // it shows itself, or was tried in vain
		}
	}
	return steps
}

// beyond returns the step from the present weight to the one after j, nil if
// there is none.
func (n *now) beyond(j Jump) *Jump {
	gap, ok := n.f.Table().Next(j.To.Each())
	if !ok {
		return nil
	}
	gap.From, gap.Step = j.From, gap.To.Each()-j.From
	external, err := gap.Step.Share(j.From)
	if err != nil {
		return nil
	}
	gap.Share = external
	far, err := over(gap, n.moved())
	if err != nil {
		return nil
	}
	return &far
}

// repsToTry returns the repetitions after which the weight that j leads to may be
// tried if they leave more than can be counted, and more than any dose asks for
// if none do. What was tried in vain waits for four weeks.
func (n *now) repsToTry(j Jump) int {
	if n.vain {
		return math.MaxInt
	}
	return n.firstTry(j)
}

// firstTry is repsToTry of a weight that was not tried yet.
func (n *now) firstTry(j Jump) int {
	need, known := toFailureBefore(liftsAtLeast, j.share(), n.c.Curve)
	if !known || j.share() <= 0 {
		return math.MaxInt
	}
	return wholeReps(need - float64(rule.Countable-rule.NearError))
}

// beyondReach reports whether the next weight could be neither shown nor tried,
// however much is left in reserve and however little is asked for. Only then does
// an extra set come, so that it never stands in place of a weight.
func (n *now) beyondReach() bool {
	if n.jump == nil {
		return true
	}
	need, known := toFailureBefore(float64(n.bottom()), n.jump.share(), n.c.Curve)
	shown := known && need <= float64(n.bridgeEnd())+float64(rule.Countable-rule.NearError)
	return !shown && n.firstTry(*n.jump) > n.bridgeEnd() && !n.lifted(n.jump.To.Each())
}

// liftsAtLeast is how often a weight that is tried can be lifted, to failure.
const liftsAtLeast = 2

// bridgeEnd returns where bridging by repetitions ends.
func (n *now) bridgeEnd() int {
	top, _ := n.out.Span.Max()
	if !n.counts() || n.out.Phase == dose.Familiarise {
		return top
	}
	end := bridgeTop
	if most, ok := n.c.Request.Exercise.Count.Max(); ok {
		end = min(end, most)
	}
	if n.c.Policy.MostReps > 0 {
		end = min(end, n.c.Policy.MostReps)
	}
	return max(top, end)
}

// endsSooner returns what was seen with the gate of repetitions asked again where the
// range to work through ends sooner than was planned: more than can be counted was
// left, or the next weight was done before.
func (n *now) endsSooner() visit.Summary {
	r := n.seen
	low, _ := r.Visit.Plan.Span.Min()
	top, _ := r.Visit.Plan.Span.Max()
	end := n.upTo()
	if n.again {
		end = n.bottom()
	}
	if end >= top || end < low || !r.BeyondCounting() && !n.again {
		return r
	}
	r.Visit.Plan.Span, r.Visit.Plan.Count = units.Must(units.Between(low, end)), min(r.Visit.Plan.Count, end)
	r.Gates.Gates[len(r.Gates.Gates)-1] = r.Visit.Repetitions()
	r.Gates.Join()
	return r
}

// upTo returns the end of the range to work through before load is added: the
// guideline's, or what the step to the next weight asks for, to where bridging
// ends.
func (n *now) upTo() int { return n.end(n.alone()) }

// end is upTo for somebody who is alone or not: alone repetitions go on to where
// bridging ends, or until they show the next weight, since it is not tried.
func (n *now) end(alone bool) int {
	top, _ := n.out.Span.Max()
	need := n.repsBefore(n.ahead)
	if need == 0 && n.counts() {
		need = bridgeTop
	}
	switch {
	case n.jump == nil || !n.counts():
	case alone && n.barredAlone(*n.jump): // repetitions take the place of the step
		need = bridgeTop
	case n.seen.BeyondCounting() && !alone:
		need = min(need, n.repsToTry(*n.jump))
	}
	return min(n.bridgeEnd(), max(top+n.over(), need))
}
