package tested

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// outdated reports whether what was tested on a day says nothing of the day
// decided on, and why: it is of after it, of before the first day whose tests say
// something, or too old.
func outdated(day, from, tested units.Day) (evidence.Reason, bool) {
	switch {
	case tested > day:
		return evidence.Because("dose.test-later", factTestAge).With(evidence.Day("tested", tested), evidence.Day("day", day)), true
	case tested < from:
		return evidence.Because("dose.test-before-event", factTestAge).With(evidence.Day("tested", tested), evidence.Day("from", from)), true
	case int(day-tested) > given.TestDays:
		return evidence.Because("dose.test-old", factTestAge).With(evidence.Day("tested", tested), evidence.Days("most", given.TestDays), evidence.Day("day", day)), true
	}
	return evidence.Reason{}, false
}

// Test returns the test of an exercise and side on which a dose rests, made out for that
// side, nil for none: the latest, and of one day the one that shows less by
// [strength.Ability.Tested]. One-sided work takes a test of both sides, or the weaker of left and
// right, since the stronger side does not exceed the weaker; where one side alone was
// tested, that says nothing of the other. The reasons say so. All are taken to be usable;
// what is of no side is passed over, and there is no test of one.
func (t Lists) Test(ex exercise.Exercise, side body.Side) (*onerm.Estimate, []evidence.Reason) {
	var latest bySide
	if side > body.Both {
		return nil, nil
	}
	for i := range t.Estimates {
		e := &t.Estimates[i]
		if !isOf(ex, e.Exercise, e.Hold) || e.Side > body.Both {
			continue
		}
		have := latest[e.Side]
		if have == nil || e.Day > have.Day || e.Day == have.Day && weaker(e, have) {
			latest[e.Side] = e
		}
	}
	chosen, note := latest[body.Both], []evidence.Reason(nil)
	if ex.OneSided {
		chosen, note = ofSides(latest, side)
	}
	if chosen == nil {
		return nil, note
	}
	mine := *chosen
	mine.Side = side
	return &mine, note
}

// bySide are the latest tests, nil for none.
type bySide [body.Both + 1]*onerm.Estimate

// weaker reports whether one test shows less strength than another. It goes by what
// doses go by: by another measure a worse test could give way to a better one.
func weaker(e, than *onerm.Estimate) bool {
	return strength.Ability{}.Tested(*e).Log < strength.Ability{}.Tested(*than).Log
}

// ofSides chooses for one-sided work.
func ofSides(latest bySide, side body.Side) (*onerm.Estimate, []evidence.Reason) {
	both, left, right := latest[body.Both], latest[body.Left], latest[body.Right]
	switch {
	case left != nil && right != nil:
		lower := left
		if weaker(right, left) {
			lower = right
		}
		if both != nil && !weaker(lower, both) {
			return both, nil
		}
		return lower, []evidence.Reason{evidence.Because("dose.weaker-side").With(evidence.Term("side", lower.Side.String()))}
	case both != nil:
		return both, nil
	case latest[side] != nil:
		return latest[side], nil
	case left != nil || right != nil:
		return nil, []evidence.Reason{evidence.Because("dose.one-side-tested")}
	}
	return nil, nil
}

// Set returns the set from which looking for a load of an exercise begins, nil for none:
// the latest that was done. For one-sided work on both sides it is the lighter of the
// latest of each side, and none while only one side did any. All are taken to be usable.
func (t Lists) Set(ex exercise.Exercise, side body.Side) *setlog.Set {
	latest := map[body.Side]setlog.Set{}
	for _, s := range t.Performed {
		if have, some := latest[s.Side]; s.Exercise == ex.ID && s.Hold == ex.Hold && (!some || s.Day >= have.Day) {
			latest[s.Side] = s
		}
	}
	if s, ok := latest[side]; ok {
		return &s
	}
	left, hasLeft := latest[body.Left]
	right, hasRight := latest[body.Right]
	switch {
	case !ex.OneSided || side != body.Both || !hasLeft || !hasRight:
		return nil
	case left.Load <= right.Load:
		return &left
	}
	return &right
}
