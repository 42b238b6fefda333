package progression

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// missed returns the rung for the days since the last visit with any set, and whether it
// changes anything. An absence with a medical cause that an assessment has
// followed begins anew; without one it is an [ErrMedicalCause].
func (n *next) missed() (rule.Return, bool, error) {
	days := int(n.c.Day - n.trained)
	if days <= given.Week {
		return rule.Return{}, false, nil
	}
	if given.Yes(n.c.Absence) && n.c.Request.Screening.Day > n.trained {
		back := rule.Return{Anew: true, Basis: evidence.Design}
		back.Reasons = []evidence.Reason{evidence.Because("progression.return-assessed", factMedical).With("days", days)}
		return back, true, nil
	}
	back, err := rule.ReturnAfter(days, n.c.Absence)
	var bad field.Errors
	if errors.As(err, &bad) {
		return rule.Return{}, false, field.New("/absence", n.c.Absence, fmt.Sprintf("%s, since %d days have passed", bad[0].Allowed, days), bad[0].Err)
	}
	return back, true, err
}

// lastDone returns the day of the last visit with any set, of the first visit
// where there was none.
func (c *Course) lastDone() units.Day {
	for i := len(c.Log) - 1; i > 0; i-- {
		if len(c.Log[i].Sets) > 0 {
			return c.Log[i].Day
		}
	}
	return c.Log[0].Day
}

// anew begins as for somebody who begins: familiarisation from the lightest
// weight.
func (n *next) anew(s *dose.Step) error {
	r := n.f.Request()
	r.Phase, r.Estimates, r.Performed, r.Done = dose.Familiarise, nil, nil, nil
	if err := n.reframe(r); err != nil {
		return err
	}
	*s = dose.Step{Load: min(n.lightest(), s.Load), Last: s.Last, Count: n.bottom(), Sets: 1}
	lighter := s.Load < s.Last
	if lighter && !n.alone() && n.seesTechnique() && n.seen.gates.Advice < rule.Ease && !n.dayIsLighter() {
		s.Steps = 1
	}
	return nil
}

// reframe takes another frame.
func (n *next) reframe(r dose.Request) error {
	f, err := dose.NewFrame(r)
	if err != nil {
		return field.At("/request", err)
	}
	n.f, n.out = f, f.Outline()
	return nil
}

func (n *next) bottom() int {
	low, _ := n.out.Span.Min()
	return max(1, low)
}

// seesTechnique reports whether somebody saw the technique at the last visit and
// found nothing amiss.
func (n *next) seesTechnique() bool { return n.seen.v.technique().Advice == rule.Raise }

// A lessening is a reason to make the dose easier.
type lessening struct {
	step  dose.Step
	some  bool // anything speaks for less
	lower bool // no lighter weight and no fewer sets are left: an easier variant
}

// less joins all that speaks for an easier dose: days missed, a
// limit, a day that is lighter, a weight that was too heavy, three visits below
// the dose, and the gates.
func (n *next) less(s dose.Step, back rule.Return, missed bool) (lessening, error) {
	l := lessening{step: s}
	if missed {
		l.some = true
		n.d.because(back.Reasons...)
		if err := n.comeBack(&l.step, back); err != nil {
			return l, err
		}
	}
	if s.Load > n.most {
		l.some = true
		n.d.because(evidence.Because("progression.above-limit", factLimit).With("load", s.Load).With("most", n.most))
	}
	if n.dayIsLighter() {
		l.some = true
		n.because("progression.lighter-day", factGates)
	}
	switch {
	case missed && back.Anew && l.step.Load < n.seen.base:
		// what was too much is far below already
	case n.tooHeavy():
		l.some = true
		n.because("progression.too-much", factTooMuch)
		l.lower = l.step.Load <= n.lightest() || !n.simplify(&l.step)
	case n.below3():
		l.some = true
		n.because("progression.below-three", factSimplify)
		l.lower = !n.simplify(&l.step)
	}
	if err := n.attended(&l); err != nil {
		return l, err
	}
	if n.seen.gates.Advice >= rule.Ease { // what was referred then has been looked at since
		l.some = true
		again, err := n.easedAlready()
		if err != nil {
			return l, err
		}
		if again {
			l.lower = true
			n.because("progression.recurring", factVariant)
		}
		n.because("progression.eased", factGates)
		if !n.counts() {
			l.step.Count = min(l.step.Count, n.bottom())
		}
		return l, n.lighten()
	}
	return l, nil
}

// attended takes a set away where half of the planned sessions or fewer were done, so
// that the plan fits, unless something else takes one: down to one.
func (n *next) attended(l *lessening) error {
	a, err := programme.Attendance(n.c.Sessions, n.c.Day)
	if err != nil || a.Advice < rule.Ease {
		return err
	}
	l.some = true
	n.d.because(a.Reasons...)
	if n.seen.gates.Advice < rule.Ease && !n.dayIsLighter() {
		l.step.Sets = min(l.step.Sets, max(1, n.last().Plan.Sets-1))
	}
	return nil
}

// tooHeavy reports whether the load could not be lifted at all, or not as often
// as the range begins with even to failure.
func (n *next) tooHeavy() bool {
	if given.Yes(n.last().Unable) {
		return true
	}
	able := float64(n.seen.reps)
	if n.counts() {
		able += float64(n.seen.v.leastLeft(0)) // what was not recorded may have been nothing
	}
	return len(n.seen.v.Sets) > 0 && able < float64(min(n.bottom(), n.last().Plan.Count))
}

// left returns the least that any set of the last visit left: as planned then where
// it was not recorded, which hides no other set that left less.
func (n *next) left() units.RIR { return n.seen.v.leastLeft(n.last().Plan.Reserve.Least) }

// spare returns by how many repetitions more than asked for today were left at the
// last visit, below nought where fewer were.
func (n *next) spare() int { return int(math.Floor(float64(n.left() - n.out.Reserve.Least))) }

// comeBack begins anew, or cuts load and sets by the rung. A weight whose next
// lighter one is further than the cut stays, with fewer repetitions, as long as
// they stay in the range; where nothing is lighter the lightest stays, with fewer
// repetitions than the range if need be.
func (n *next) comeBack(s *dose.Step, back rule.Return) error {
	if back.Anew {
		return n.anew(s)
	}
	each, err := back.Each(s.Load)
	if err != nil {
		return err
	}
	if s.Sets, err = back.Count(s.Sets); err != nil {
		return err
	}
	for w := s.Load; w > each && n.counts(); w = n.below(w) {
		count := n.repsAfter(w, back.Load)
		cut, err := back.Each(w)
		if err != nil {
			return err
		}
		if lighter := n.below(w); lighter < cut && count >= n.bottom() {
			s.Load, s.Count = w, min(s.Count, count)
			n.d.because(evidence.Because("progression.reps-for-load", factCoarse).With("count", s.Count))
			return nil
		} else if lighter >= w { // nothing is: fewer repetitions, below the range if need be
			s.Load, s.Count = w, max(1, min(s.Count, n.bottom(), count))
			return nil
		}
	}
	s.Load, s.Count = max(each, min(n.lightest(), s.Load)), min(s.Count, n.bottom())
	return nil
}

// repsAfter returns how many repetitions of a weight, the last or a lighter one,
// leave the reserve asked for once strength has fallen to a share, by the more
// cautious equation.
func (n *next) repsAfter(each units.Mass, strength units.Fraction) int {
	lighter, err := each.Share(n.seen.base)
	if err != nil {
		return 0
	}
	able := float64(n.seen.reps) + float64(min(n.left(), rule.Countable))
	fewest := able
	for _, r := range cautious {
		now, err := r.Fraction(able)
		if err != nil {
			continue // more repetitions than the equation knows; the other one tells
		}
		reps, err := r.Reps(now * lighter / strength)
		if now*lighter >= strength || err != nil {
			reps = 0 // a lift so near the maximum is none any more
		}
		fewest = min(fewest, reps)
	}
	return int(math.Floor(fewest - float64(n.out.Reserve.Least)))
}

// below3 reports whether the last visits, as many as the rule asks for, were
// below one and the same dose: what was made easier begins anew.
func (n *next) below3() bool {
	plan, below := n.last().Plan, 0
	for i := len(n.c.Log) - 1; i >= 0; i-- {
		v := &n.c.Log[i]
		if slices.Contains(n.doubtful, i) || !v.below() || v.Plan.Load.Each != plan.Load.Each || v.Plan.Sets != plan.Sets {
			break
		}
		below++
	}
	a, err := rule.Simplify(below)
	return err == nil && a.Advice == rule.Ease
}

// below reports whether a visit stayed below its dose: too few sets or none, fewer
// repetitions than the range begins with, or nearer to failure than planned. A
// visit in which the load was looked for has no dose to stay below.
func (v *Visit) below() bool {
	if searches(&v.Plan) {
		return false
	}
	low, _ := v.Plan.Span.Min()
	return v.done() < v.Plan.Sets || v.fewest() < min(low, v.Plan.Count) || v.countsReserve() && v.leastLeft(v.Plan.Reserve.Least) < v.Plan.Reserve.Least
}

// simplify takes the next lighter weight, or a set fewer, and reports whether
// there was either.
func (n *next) simplify(s *dose.Step) bool {
	if lighter := n.below(s.Load); lighter < s.Load {
		s.Load, s.Count = lighter, n.bottom()
		return true
	}
	s.Sets--
	return s.Sets >= 1
}

// easedAlready reports whether one of the three visits before the last one spoke
// for less too.
func (n *next) easedAlready() (bool, error) {
	log := n.c.Log[:len(n.c.Log)-1]
	for _, v := range log[max(0, len(log)-recurring):] {
		if g, err := Gates(v); err != nil || g.Advice >= rule.Ease {
			return true, err
		}
	}
	return false, nil
}

const recurring = 3 // visits

// lighten takes the frame of a lighter session.
func (n *next) lighten() error {
	r := n.f.Request()
	r.Screening.Limits = r.Screening.Limits.Join(screening.LighterSession())
	return n.reframe(r)
}

// fit keeps the count within what the last visit showed, for the reserve that is
// asked for today. Where more is to be left undone than was planned then, and
// fewer than the bottom of the range would remain, the weight goes down.
func (n *next) fit(s dose.Step) dose.Step {
	beyond := n.seen.beyondCounting() && n.out.Reserve.Least <= rule.Countable
	if s.Load < n.seen.base || !n.counts() || beyond {
		return s // nothing to fit to: more is left than is asked for, or can be counted
	}
	plan := n.last().Plan
	reps := n.seen.reps
	if len(n.seen.v.Sets) == 0 {
		reps = plan.Count
	}
	tighter := n.out.Reserve.Least > plan.Reserve.Least || n.spare() < -rule.NearError // or nearer to failure than telling it errs
	allowed := reps + n.spare()
	low, lighter := n.bottom(), n.below(s.Load)
	switch {
	case allowed >= s.Count:
		return s
	case tighter && allowed < low && lighter < s.Load:
		n.d.because(evidence.Because("progression.lighter-for-reserve", factFit).With("reserve", n.out.Reserve).With("from", s.Load).With("to", lighter))
		s.Load, s.Count = lighter, min(low, s.Count)
		return s
	case tighter && allowed < low:
		s.Count = max(1, allowed)
	case max(allowed, low) >= s.Count:
		return s
	default:
		s.Count = max(allowed, low)
	}
	n.d.because(evidence.Because("progression.fewer-reps", factFit).With("count", s.Count).With("reserve", n.out.Reserve))
	return s
}
