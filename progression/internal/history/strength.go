package history

import (
	"math"
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/dose/week"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/visit"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Strength is what the log and the tests have shown: of two sides that work each by
// itself the one that shows less, in either of two respects. It is the zero value
// where no repetitions are counted. Loads go by all visits; for counts those are passed
// over at which the dose was done and no reserve was told, or the count would fall from
// visit to visit of somebody who never tells it.
func (h *History) Strength() (forLoads, forCounts strength.Ability) {
	r, tests := h.Request, h.tests()
	if r.Exercise.Measure != exercise.Repetitions {
		return strength.Ability{}, strength.Ability{}
	}
	if !r.Exercise.OneSided || r.Side != body.Both {
		forLoads, forCounts = h.strengthOf(tests, r.Side)
		return h.ruledBy(forLoads), h.ruledBy(forCounts)
	}
	left, leftCounts := h.strengthOf(tests, body.Left)
	right, rightCounts := h.strengthOf(tests, body.Right)
	return h.ruledBy(weaker(left, right)), h.ruledBy(weaker(leftCounts, rightCounts))
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
func (h *History) ruledBy(a strength.Ability) strength.Ability {
	sets := h.Log[len(h.Log)-1].Sets
	if !h.ByRating || len(sets) == 0 {
		return a
	}
	a.Untold = a.Untold && slices.ContainsFunc(sets, ratedHard)
	return a
}

// ratedHard reports whether a set has no rating below the one under which the load rises.
func ratedHard(s setlog.Set) bool {
	return s.Effort.Scale() != units.ScaleOMNI || s.Effort.Number() >= given.OMNILimit
}

const wholeScale = 10 // of a rating, from which what is left is counted

// notBelowHard reports whether a set was not rated, or at 8 of 10 or more on the scale
// omni or by what is left on another.
func notBelowHard(s setlog.Set) bool {
	if s.Effort.Scale() == units.ScaleOMNI {
		return s.Effort.Number() >= given.OMNILimit
	}
	told, known := given.Told(s.Effort)
	return !known || float64(told) <= wholeScale-given.OMNILimit
}

// tests are those of the exercise and hold that a dose may rest on.
func (h *History) tests() []onerm.Estimate {
	r := h.Request
	if len(r.Estimates) == 0 || r.Exercise.MovesBody {
		return nil
	}
	own := slices.DeleteFunc(slices.Clone(r.Estimates), func(e onerm.Estimate) bool {
		return e.Exercise != r.Exercise.ID || e.Hold != r.Exercise.Hold
	})
	usable, _ := week.Request{Day: h.Day, Screening: r.Screening, Estimates: own}.Usable()
	return usable.Estimates
}

// strengthOf folds the tests and visits of a side, each on its day.
func (h *History) strengthOf(tests []onerm.Estimate, side body.Side) (a, counts strength.Ability) {
	r, after := h.Request, units.Day(0)
	if s := r.Performed; s != nil && len(r.Estimates) == 0 {
		a = h.seen(a, 1, 0, []setlog.Set{*s})
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
	for i := range h.Log {
		v := &h.Log[i]
		test(v.Day)
		same, then := counts == a, h.after(a, v, side)
		a = then
		if !same {
			then = h.after(counts, v, side)
		}
		if !then.Untold || given.Yes(v.Unable) || len(v.Sets) > 0 && !v.Met() {
			counts = then
		}
	}
	test(h.Day)
	return a, counts
}

// after is what is known after a visit. Nothing done, where nothing says why, shows no
// more than the dose done as asked would have: else what was done badly would be better
// left out. Nor does a weight that was felt in vain: it tells as much as one not felt.
func (h *History) after(a strength.Ability, v *visit.Visit, side body.Side) strength.Ability {
	var room [8]setlog.Set
	sets := room[:0]
	for i := range v.Sets {
		if s := &v.Sets[i]; (side == body.Both || s.Side == side || s.Side == body.Both) && (v.Plan.Feel == nil || !v.InVain(*s)) {
			sets = append(sets, *s)
		}
	}
	load := v.Plan.Load.Each()
	switch {
	case given.Yes(v.Unable):
		return a.Unable(h.WithBody(load))
	case len(sets) > 0:
		felt, rated := h.felt(v, sets), h.byRating(a, v, sets)
		a = h.seen(a, v.Plan.Sets, v.Plan.Reserve.Least, sets)
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
	return h.seen(a, v.Plan.Sets, v.Plan.Reserve.Least, []setlog.Set{asked}) // untold: never more than is known
}

// byRating is the logarithm after sets that were rated low enough for the policy's rule,
// by their repetitions alone: without it whoever rates would never be seen to grow
// stronger.
func (h *History) byRating(a strength.Ability, v *visit.Visit, sets []setlog.Set) float64 {
	if !h.ByRating {
		return math.Inf(-1)
	}
	low := slices.DeleteFunc(slices.Clone(sets), ratedHard)
	for i := range low {
		low[i].Effort = units.Must(units.InReserve(0))
	}
	if len(low) == 0 {
		return math.Inf(-1)
	}
	return h.seen(a, v.Plan.Sets, 0, low).Log
}

// felt is what the sets show in which the next weight was felt. It counts in full: it
// was felt since lighter sets, of which no more than so much is read, could not show it.
func (h *History) felt(v *visit.Visit, sets []setlog.Set) (a strength.Ability) {
	f := v.Plan.Feel
	if f == nil {
		return a
	}
	for i := range sets {
		if given.Each(sets[i]) == f.Load.Each() {
			b := h.seen(strength.Ability{}, 1, v.Plan.Reserve.Least, []setlog.Set{sets[i]})
			if !a.Known() || b.Log > a.Log {
				a = b
			}
		}
	}
	return a
}

// seen is [strength.Ability.Seen], where the body is lifted too of all that is moved.
func (h *History) seen(a strength.Ability, asked int, reserve units.RIR, sets []setlog.Set) strength.Ability {
	if h.Request.Exercise.MovesBody {
		for i := range sets {
			s := &sets[i]
			s.Load, s.Hold, s.Stated = h.WithBody(given.Each(*s)), body.OneHand, 0
		}
	}
	return a.Seen(asked, reserve, sets...)
}

// WithBody is what a weight comes to with the part of the body that moves, at least, and
// the weight alone where that is not known: then a step seems larger than it is. What
// is never loaded counts as 1 kg.
func (h *History) WithBody(each units.Mass) units.Mass {
	if !h.Request.Exercise.MovesBody {
		return each
	}
	held, err := h.Request.Exercise.Hold.Total(each)
	if err != nil {
		return each
	}
	if all := held + h.Moved(); all > 0 {
		return all
	}
	return units.Kilogram
}

// Moved returns the part of the body that is lifted, at least, 0 if not known.
func (h *History) Moved() units.Mass {
	low, ok := h.Request.Exercise.MovedShare.Min()
	if !ok {
		return 0
	}
	m, err := h.BodyMass.Scale(low, units.Down)
	if err != nil {
		return 0
	}
	return m
}

// OfMoved returns the step over the body mass that is moved and all that is held.
func OfMoved(gap equipment.Gap, moved units.Mass) (units.Fraction, error) {
	held, err := gap.To.Hold().Total(gap.From)
	if err != nil {
		return 0, err
	}
	before, err := moved.Add(held)
	if err != nil {
		return 0, err
	}
	return (gap.To.Total() - held).Share(before)
}
