package progression

import (
	"math"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/dose/week"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// strength is what the log and the tests have shown: of two sides that work each by
// itself the one that shows less, in either of two respects. It is the zero value
// where no repetitions are counted. Loads go by all visits; for counts those are passed
// over at which the dose was done and no reserve was told, or the count would fall from
// visit to visit of somebody who never tells it.
func (c *Course) strength(tests []onerm.Estimate) (forLoads, forCounts strength.Ability) {
	r := &c.Request
	if r.Exercise.Measure != exercise.Repetitions {
		return strength.Ability{}, strength.Ability{}
	}
	if !r.Exercise.OneSided || r.Side != body.Both {
		forLoads, forCounts = c.strengthOf(tests, r.Side)
		return c.ruledBy(forLoads), c.ruledBy(forCounts)
	}
	left, leftCounts := c.strengthOf(tests, body.Left)
	right, rightCounts := c.strengthOf(tests, body.Right)
	return c.ruledBy(weaker(left, right)), c.ruledBy(weaker(leftCounts, rightCounts))
}

// weaker is what both sides have shown.
func weaker(a, b strength.Ability) strength.Ability {
	if !a.Known() || !b.Known() {
		return strength.Ability{}
	}
	a.Log, a.Variance = min(a.Log, b.Log), max(a.Variance, b.Variance)
	a.AtLeast, a.Untold = a.AtLeast && b.AtLeast, a.Untold || b.Untold
	return a
}

// ruledBy lets the load rise without a reserve told where the policy's rule goes by
// rating, and every set of the last visit was rated low enough for it.
func (c *Course) ruledBy(a strength.Ability) strength.Ability {
	sets := c.Log[len(c.Log)-1].Sets
	if c.Policy.Rule != rule.NameOMNIBelow8 || len(sets) == 0 {
		return a
	}
	answer, err := rated(sets)
	a.Untold = a.Untold && (err != nil || answer.Advice != rule.Raise)
	return a
}

// tests are those of the exercise and hold that a dose may rest on.
func (c *Course) tests() []onerm.Estimate {
	r := &c.Request
	if len(r.Estimates) == 0 || r.Exercise.MovesBody {
		return nil
	}
	own := slices.DeleteFunc(slices.Clone(r.Estimates), func(e onerm.Estimate) bool {
		return e.Exercise != r.Exercise.ID || e.Hold != r.Exercise.Hold
	})
	usable, _ := week.Request{Day: c.Day, Screening: r.Screening, Estimates: own}.Usable()
	return usable.Estimates
}

// strengthOf folds the tests and visits of a side, each on its day.
func (c *Course) strengthOf(tests []onerm.Estimate, side body.Side) (a, counts strength.Ability) {
	r, after := &c.Request, units.Day(0)
	if s := r.Performed; s != nil && len(r.Estimates) == 0 {
		a = c.seen(a, 1, 0, []setlog.Set{*s})
		counts = a
	}
	test := func(until units.Day) {
		for i := range tests {
			if e := &tests[i]; e.Day > after && e.Day <= until && (e.Side == side || e.Side == body.Both) {
				a, counts = a.Tested(*e), counts.Tested(*e)
			}
		}
		after = until
	}
	for i := range c.Log {
		v := &c.Log[i]
		test(v.Day)
		same, then := counts == a, c.after(a, v, side)
		a = then
		if !same {
			then = c.after(counts, v, side)
		}
		if !then.Untold || given.Yes(v.Unable) || len(v.Sets) > 0 && !v.Met() {
			counts = then
		}
	}
	test(c.Day)
	return a, counts
}

// after is what is known after a visit. Nothing done, where nothing says why, shows no
// more than the dose done as asked would have: else what was done badly would be better
// left out. Nor does a weight that was felt in vain: it tells as much as one not felt.
func (c *Course) after(a strength.Ability, v *visit.Visit, side body.Side) strength.Ability {
	var room [8]setlog.Set
	sets := room[:0]
	for i := range v.Sets {
		if s := &v.Sets[i]; (side == body.Both || s.Side == side || s.Side == body.Both) && !v.InVain(*s) {
			sets = append(sets, *s)
		}
	}
	load := v.Plan.Load.Each()
	switch {
	case given.Yes(v.Unable):
		return a.Unable(c.lifted(load))
	case len(sets) > 0:
		felt, rated := c.felt(v, sets), c.byRating(a, v, sets)
		a = c.seen(a, v.Plan.Sets, v.Plan.Reserve.Least, sets)
		a.Log = max(a.Log, rated)
		if felt.Known() && !felt.Untold {
			a.Log = max(a.Log, felt.Log)
		}
		return a
	}
	asked := setlog.Set{Hold: v.Plan.Hold, Load: load, Reps: v.Plan.Count}
	if v.Plan.Hold.Implements() > 1 {
		asked.Stated = body.PerHand
	}
	return c.seen(a, v.Plan.Sets, v.Plan.Reserve.Least, []setlog.Set{asked}) // untold: never more than is known
}

// byRating is the logarithm after sets that were rated low enough for the policy's rule,
// by their repetitions alone: without it whoever rates would never be seen to grow
// stronger.
func (c *Course) byRating(a strength.Ability, v *visit.Visit, sets []setlog.Set) float64 {
	if c.Policy.Rule != rule.NameOMNIBelow8 {
		return math.Inf(-1)
	}
	low := slices.DeleteFunc(slices.Clone(sets), func(s setlog.Set) bool {
		return s.Effort.Scale() != units.ScaleOMNI || s.Effort.Number() >= rule.OMNILimit
	})
	for i := range low {
		low[i].Effort = units.Must(units.InReserve(0))
	}
	if len(low) == 0 {
		return math.Inf(-1)
	}
	return c.seen(a, v.Plan.Sets, 0, low).Log
}

// felt is what the sets show in which the next weight was felt. It counts in full: it
// was felt since lighter sets, of which no more than so much is read, could not show it.
func (c *Course) felt(v *visit.Visit, sets []setlog.Set) (a strength.Ability) {
	for i := range sets {
		if f := v.Plan.Feel; f != nil && visit.Each(sets[i]) == f.Load.Each() {
			b := c.seen(strength.Ability{}, 1, v.Plan.Reserve.Least, []setlog.Set{sets[i]})
			if !a.Known() || b.Log > a.Log {
				a = b
			}
		}
	}
	return a
}

// seen is [strength.Ability.Seen], where the body is lifted too of all that is moved.
func (c *Course) seen(a strength.Ability, asked int, reserve units.RIR, sets []setlog.Set) strength.Ability {
	if c.Request.Exercise.MovesBody {
		for i := range sets {
			s := &sets[i]
			s.Load, s.Hold, s.Stated = c.lifted(visit.Each(*s)), body.OneHand, 0
		}
	}
	return a.Seen(asked, reserve, sets...)
}

// lifted is what a weight comes to with the part of the body that moves, at least, and
// the weight alone where that is not known: then a step seems larger than it is. What
// is never loaded counts as 1 kg.
func (c *Course) lifted(each units.Mass) units.Mass {
	if !c.Request.Exercise.MovesBody {
		return each
	}
	held, err := c.Request.Exercise.Hold.Total(each)
	if err != nil {
		return each
	}
	if all := held + c.moved(); all > 0 {
		return all
	}
	return units.Kilogram
}

// moved returns the part of the body that is lifted, at least, 0 if not known.
func (c *Course) moved() units.Mass {
	low, ok := c.Request.Exercise.MovedShare.Min()
	if !ok {
		return 0
	}
	m, err := c.BodyMass.Scale(low, units.Down)
	if err != nil {
		return 0
	}
	return m
}

// allows returns the most repetitions of a weight that the chance allows with the
// reserve asked for today, within every limit; false where nothing is known. Where the
// body moves too, of a weight that was done what was done with it tells more than what
// is known of the body, which is little: the count goes on from it.
func (n *now) allows(each units.Mass) (int, bool) {
	if !n.c.Request.Exercise.MovesBody {
		return n.f.Allows(each, n.lastFor(each))
	}
	if each <= n.seen.Base {
		return 0, false
	}
	count, ok := n.mostBy(n.strength, each)
	if each > n.most {
		count = 0
	}
	return min(count, n.bridgeEnd()), ok
}

// counted is allows for the count of a weight that is taken. A count that was done stays
// where no reserve was told, as far as what was told before allows it, and where the
// policy's rule took a rating for it one more may come.
func (n *now) counted(each units.Mass) (int, bool) {
	count, ok := n.allows(each)
	if !ok || count < 1 || each != n.seen.Base {
		return count, ok
	}
	count = max(count, n.kept())
	if n.strength == n.forCounts || n.f.Request().Screening.Limits.NoBreathHolding {
		return count, ok
	}
	plan := &n.last().Plan
	held := plan.Count - int(math.Ceil(float64(max(0, n.out.Reserve.Least-plan.Reserve.Least))))
	if most, told := n.mostBy(n.forCounts, each); told {
		held = min(held, most)
	} else if n.c.Policy.Rule == rule.NameOMNIBelow8 && !n.strength.Untold {
		held++
	}
	return max(count, held), true
}

// lastFor returns the load from which a weight is looked at: the last one, or itself
// where it was lifted.
func (n *now) lastFor(each units.Mass) units.Mass {
	if each > n.seen.Base && n.lifted(each) {
		return each
	}
	return n.seen.Base
}

// mostBy returns the most repetitions by what is known alone.
func (n *now) mostBy(a strength.Ability, each units.Mass) (int, bool) {
	return a.Most(strength.Prospect{Load: n.c.lifted(each), Last: n.c.lifted(n.lastFor(each)), Reserve: n.out.Reserve.Least, Missed: n.f.Request().Missed}, n.f.Chance())
}

// near reports whether what is known of strength comes near a weight, so that it can be
// tried.
func (n *now) near(each units.Mass) bool {
	one, ok := n.strength.OneRM()
	if !ok {
		return !n.counts()
	}
	share, err := n.c.lifted(each).Share(one)
	return err == nil && share*nearlyAll <= 1
}

const nearlyAll units.Fraction = 0.95 // of a weight, from which on it may be tried
