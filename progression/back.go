package progression

import (
	"errors"
	"fmt"
	"math"

	"example.org/posology/dose"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// missed returns the rung for the days since the last visit with any set, doubtful
// or not, nil where they change nothing. An absence with a medical cause that an assessment has
// followed begins again; without one it is a [rule.ErrMedicalCause].
func (n *now) missed(trained units.Day) (*rule.Return, error) {
	days := int(n.c.Day - trained)
	if days <= given.Week {
		return nil, nil
	}
	if given.Yes(n.c.Absence) && n.c.Request.Screening.Day > trained {
		return &rule.Return{Anew: true, Basis: evidence.Design, Reasons: []evidence.Reason{because("progression.return-assessed").With(evidence.Days("days", days))}}, nil
	}
	back, err := rule.ReturnAfter(days, n.c.Absence)
	if bad, ok := errors.AsType[field.Errors](err); ok {
		err = field.New("/absence", n.c.Absence, fmt.Sprintf("%s, since %d days have passed", bad[0].Allowed, days), bad[0].Err)
	}
	return &back, err
}

// beginsLighter reports whether beginning again is lighter by itself.
func (n *now) beginsLighter() bool { return n.back != nil && n.back.Anew && n.lightest() < n.seen.Base }

// lastRung is what the ladder gives after the longest break that it answers, with a weight of
// the kit and within every limit.
func (n *now) lastRung() (dose.Step, error) {
	last := *n
	last.back = &longest
	f, err := last.comeBack(n.step)
	s := last.fit(f.step).step
	s.Load = min(s.Load, n.below(min(s.Load, n.most)+1))
	return s, err
}

var longest = units.Must(rule.ReturnAfter(rule.LongestBreak(), screening.No))

// anew begins with the lightest weight; where the last rung of the ladder has no
// heavier one, with no more repetitions.
func (n *now) anew(s dose.Step) dose.Step {
	count := n.bottom()
	if n.rung.Load <= n.lightest() {
		count = min(count, n.rung.Count)
	}
	s = dose.Step{Load: min(n.lightest(), s.Load), Last: s.Last, Count: count, Sets: 1}
	if s.Load < n.rung.Load && !n.tooHeavy() && !n.below3() && !n.alone() && n.seen.Visit.Technique().Advice == rule.Raise && n.seen.Gates.Advice < rule.Ease && !n.dayIsLighter() {
		s.Steps = 1
	}
	return s
}

// comeBack begins again, or cuts load and sets by the rung. A weight whose next
// lighter one is further than the cut stays, with fewer repetitions, as long as
// they stay in the range; where nothing is lighter the lightest stays, with fewer
// repetitions than the range if need be.
func (n *now) comeBack(s dose.Step) (fit, error) {
	if n.back.Anew {
		return fit{step: n.anew(s)}, nil
	}
	each, err := n.back.Each(s.Load)
	if err != nil {
		return fit{}, err
	}
	if s.Sets, err = n.back.Count(s.Sets); err != nil {
		return fit{}, err
	}
	had := min(s.Load, n.below(s.Load+1))
	each = min(each, n.below(each+1))
	if had < s.Load { // which is gone: another one begins with no more than the range does
		s.Count = min(s.Count, n.bottom())
	}
	for w := had; w > each && n.counts(); w = n.below(w) {
		count := n.repsAfter(w, n.back.Load)
		cut, err := n.back.Each(w)
		if err != nil {
			return fit{}, err
		}
		if lighter := n.below(w); lighter < cut && count >= min(n.bottom(), farFloor) {
			return n.fewerForLoad(s, w, count), nil
		} else if lighter >= w { // nothing is: fewer repetitions, below the range if need be
			return n.fewerAtEnd(s, w, max(n.fewest(w), count)), nil
		}
	}
	load, count := max(each, min(n.lightest(), s.Load)), n.bottom()
	if n.counts() && load >= s.Load { // not by the range: of another one it may begin higher
		count = max(n.fewest(load), n.repsAfter(load, n.back.Load))
	}
	if load >= s.Load {
		return n.fewerAtEnd(s, load, count), nil
	}
	s.Load, s.Count = load, min(s.Count, count)
	return fit{step: s}, nil
}

// fewerAtEnd is fewerForLoad where nothing is lighter. Where the days away are all that
// says that fewer than the least of screening can be done, they take sets instead: else
// less would be left of the exercise than after an absence that begins it anew.
func (n *now) fewerAtEnd(s dose.Step, each units.Mass, most int) fit {
	least, guessed := n.atLeast(1), n.c.Request.Exercise.MovesBody || !n.strength.Known()
	one := guessed && most < least && s.Count >= least
	if one {
		most, s.Sets = least, 1
	}
	f := n.fewerForLoad(s, each, most)
	f.one = one && n.last().Plan.Sets > 1
	return f
}

// fewerForLoad keeps a weight with a count at most, and says so where it falls.
func (n *now) fewerForLoad(s dose.Step, each units.Mass, most int) fit {
	had := s.Count
	s.Load, s.Count = each, min(s.Count, most)
	return fit{step: s, fell: s.Count < had}
}

// repsAfter returns how many repetitions of a weight the chance allows with strength at a share:
// those of a weight as much heavier, or of what was asked less as the equation takes off, or kept.
func (n *now) repsAfter(each units.Mass, strength units.Fraction) int {
	heavier, err := each.Scale(1/strength, units.Up)
	if err != nil {
		return 0
	}
	count, ok := n.f.Allows(heavier, n.seen.Base)
	if n.onlyLighter(each) { // no band or first weight is too light for it
		p := n.prospect(heavier)
		p.Last = n.h.WithBody(n.seen.Base) // whichever was lifted
		count, ok = n.strength.Most(p, n.f.Chance())
	}
	if !ok || n.c.Request.Exercise.MovesBody {
		count = n.step.Count - n.lost(n.step.Count, n.out.Reserve.Least, strength)
	}
	if each == n.seen.Base {
		count = max(count, n.kept())
	}
	return count
}

// lost is how many repetitions a count that leaves a reserve loses with strength at a share.
func (n *now) lost(count int, reserve units.RIR, strength units.Fraction) int {
	return int(math.Ceil((float64(count) + float64(reserve) + epleyReps) * float64(1-strength)))
}
