package rule

import (
	"fmt"

	"example.org/posology/progression/internal/given"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Numbers of the rules on repetitions, effort and load; the facts print them.
const (
	overTarget    = 1 // repetitions above the target from which ACSM 2002 raises; it names 1 to 2
	twoOver       = 2 // repetitions above the goal
	twoRunning    = 2 // workouts in a row
	topSets       = 3
	topReps       = 12
	bottomReps    = 8
	simplifyAfter = 3 // sessions in a row
)

// traditionalStep is the least step of the form that raises repetitions first.
const traditionalStep = units.Kilogram * 11 / 10

// OverTarget is the rule of ACSM 2002: when one or two repetitions over the
// target can be done with the present load, add 2 to 10 %. Load is then that
// range. The lower end is for small muscles. More than two over, which the rule
// does not name, give the same answer.
//
// each is the present load per implement, above 0; target is 1 or more, done 0
// or more.
func OverTarget(each units.Mass, target, done int) (Ruling, error) {
	var bad field.Errors
	bad.Add("/each", checkLoad(each))
	bad.Add("/target", checkGoal(target))
	bad.Add("/done", checkReps(done))
	if err := bad.Err(); err != nil {
		return Ruling{}, err
	}
	a := answer(NameOverTarget, done-target >= overTarget, factGuidance, factSmallMuscles)
	if a.Advice != Raise {
		return a, nil
	}
	least, _ := guidance.Min()
	most, _ := guidance.Max()
	low, err := given.Plus(each, least)
	if err != nil {
		return Ruling{}, field.At("/each", err)
	}
	high, err := given.Plus(each, most)
	if err != nil {
		return Ruling{}, field.At("/each", err)
	}
	a.Load, err = units.Between(low, high)
	return a, err
}

// TwoForTwo is a rule of the NSCA textbook: once the final set went at least two
// repetitions past its target, and did so at the visit before too, the load
// rises. lastSets are the repetitions of each visit's final set, the oldest
// first; the latest two count, and fewer than two keep the load. The rule names
// no step; [StepFor] does.
func TwoForTwo(goal int, lastSets []int) (Ruling, error) {
	var bad field.Errors
	bad.Add("/goal", checkGoal(goal))
	running := 0
	for i, reps := range lastSets {
		bad.Add(fmt.Sprintf("/last_sets/%d", i), checkReps(reps))
		running++
		if reps-goal < twoOver {
			running = 0
		}
	}
	if err := bad.Err(); err != nil {
		return Ruling{}, err
	}
	return answer(NameTwoForTwo, running >= twoRunning, factTwoForTwo), nil
}

// RepsThenLoad is the traditional form (Hostler 2001): raise the repetitions
// with the same load until they pass the top of the range, then add 1.1 kg or
// more and drop back to its bottom. reps has both ends, from 1 on; done are the
// repetitions of the final set.
func RepsThenLoad(each units.Mass, reps units.Range[int], done int) (Ruling, error) {
	low, hasLow := reps.Min()
	high, hasHigh := reps.Max()
	var bad field.Errors
	bad.Add("/each", checkLoad(each))
	bad.Refuse(!hasLow || !hasHigh || low < 1, "/reps", reps, "a range with both ends, from 1 repetition", field.ErrOutOfRange)
	bad.Add("/done", checkReps(done))
	next, err := each.Add(traditionalStep)
	bad.Add("/each", err)
	if err := bad.Err(); err != nil {
		return Ruling{}, err
	}
	a := answer(NameRepsThenLoad, done > high, factRepsThenLoad, factRepsOrLoad)
	if a.Advice == Raise {
		a.Load, a.Reps = units.AtLeast(next), units.Exactly(low)
		return a, nil
	}
	a.Load, a.Reps = units.Exactly(each), units.AtLeast(done+1)
	return a, nil
}

// OMNIBelow8 is the rule that older adults bore best and liked most (Buskard
// 2019): raise the load when the effort is rated below 8 of 10 on the OMNI
// scale. Another scale is a [field.ErrOutOfRange], no rating a
// [field.ErrMissing]. The rule names no step.
func OMNIBelow8(e units.Effort) (Ruling, error) {
	switch e.Scale() {
	case 0:
		return Ruling{}, field.New("/effort", nil, "a rating on the scale omni", field.ErrMissing)
	case units.ScaleOMNI:
		return answer(NameOMNIBelow8, e.Number() < given.OMNILimit, factOMNI, factFourWays), nil
	}
	return Ruling{}, field.New("/effort", e, "a rating on the scale omni", field.ErrOutOfRange)
}

// TopOfRange is the rule of a trial with older adults (Gearhart 2009): once
// three sets of 12 are reached take the load that allows only 8, which is to be
// found. sets are the repetitions of each set of the session.
func TopOfRange(sets []int) (Ruling, error) {
	var bad field.Errors
	reached := 0
	for i, reps := range sets {
		bad.Add(fmt.Sprintf("/sets/%d", i), checkReps(reps))
		if reps >= topReps {
			reached++
		}
	}
	if err := bad.Err(); err != nil {
		return Ruling{}, err
	}
	a := answer(NameTopOfRange, reached >= topSets, factTopOfRange)
	if a.Advice == Raise {
		a.Reps = units.Exactly(bottomReps)
	}
	return a, nil
}

// Simplify is the rule of a home programme: make the exercise easier after
// three or more sessions in a row below the dose. sessions is how many there
// are now, 0 or more. The same table moves up, one thing at a time, once the
// dose is passed again and again, and keeps weeks 1 and 2 for learning.
func Simplify(sessions int) (Ruling, error) {
	if sessions < 0 {
		return Ruling{}, field.New("/sessions", sessions, "0 sessions or more", field.ErrOutOfRange)
	}
	a := Ruling{Rule: NameSimplify, Advice: Keep}
	if sessions >= simplifyAfter {
		a.Advice = Ease
	}
	return a.because(factSimplify), nil
}

// Past returns how many repetitions past the top of a range the rule asks for
// before more load, 0 for rules that go by something else.
func (n Name) Past(top int) int {
	switch n {
	case NameOverTarget, NameRepsThenLoad:
		return overTarget
	case NameTwoForTwo:
		return twoOver
	case NameTopOfRange: // its top is its own
		return max(0, topReps-top)
	}
	return 0
}

// perryLimit is the score, of 10, below which pain lets the load rise.
const perryLimit = 5.0

// PainGate is the gate of Perry 2005 for a rise in load: pain below 5 of 10,
// the full available range, and the target repetitions. pain is the score that
// counts, 0 to 10; rangeLost and missed say whether range was lost and the
// target missed, and an answer not known keeps the load. The gate lets
// pain of 3 or 4 progress.
func PainGate(pain float64, rangeLost, missed screening.Answer) (Ruling, error) {
	if err := given.Score(pain); err != nil {
		return Ruling{}, field.At("/pain", err)
	}
	return answer(NamePainGate, pain < perryLimit && rangeLost == screening.No && missed == screening.No, factPerry), nil
}
