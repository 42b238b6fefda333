package dose

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// EstimateFor returns the estimate that a dose of the exercise rests on, as
// [PlanWeek] chooses it from those that are usable ([WeekRequest.Usable]), nil if
// there is none, with what is to be said of the choice. It is made out for side,
// so that [Request] takes it.
//
// It is the latest of the exercise and hold, and of one day the one with the
// lower [onerm.Estimate.Cautious]. One-sided work takes a test of both sides, or
// the weaker of left and right, since the stronger side does not exceed the
// weaker; where one side alone was tested, that says nothing of the other.
func (r WeekRequest) EstimateFor(ex exercise.Exercise, side body.Side) (*onerm.Estimate, []evidence.Reason) {
	kept, _ := r.Usable()
	return kept.estimateFor(ex, side)
}

// estimateFor chooses among estimates that are usable.
func (r WeekRequest) estimateFor(ex exercise.Exercise, side body.Side) (*onerm.Estimate, []evidence.Reason) {
	latest := map[body.Side]*onerm.Estimate{}
	for _, e := range r.Estimates {
		if e.Exercise != ex.ID || e.Hold != ex.Hold {
			continue
		}
		have := latest[e.Side]
		if have == nil || e.Day > have.Day || e.Day == have.Day && e.Cautious() < have.Cautious() {
			latest[e.Side] = &e
		}
	}
	chosen, note := latest[body.Both], []evidence.Reason(nil)
	if ex.OneSided {
		chosen, note = ofSides(latest, side)
	}
	if chosen != nil {
		chosen.Side = side
	}
	return chosen, note
}

// ofSides chooses for one-sided work.
func ofSides(latest map[body.Side]*onerm.Estimate, side body.Side) (*onerm.Estimate, []evidence.Reason) {
	both, left, right := latest[body.Both], latest[body.Left], latest[body.Right]
	switch {
	case left != nil && right != nil:
		weaker := left
		if right.Cautious() < left.Cautious() {
			weaker = right
		}
		if both != nil && both.Cautious() <= weaker.Cautious() {
			return both, nil
		}
		return weaker, []evidence.Reason{evidence.Because("dose.weaker-side").With("side", weaker.Side)}
	case both != nil:
		return both, nil
	case latest[side] != nil:
		return latest[side], nil
	case left != nil || right != nil:
		return nil, []evidence.Reason{evidence.Because("dose.one-side-tested")}
	}
	return nil, nil
}

// PerformedFor returns the set that looking for a load of the exercise begins
// from, as [PlanWeek] chooses it from those that are usable: the latest that was
// done. For one-sided work on both sides it is the lighter of the latest of each
// side, and none while only one side did any.
func (r WeekRequest) PerformedFor(ex exercise.Exercise, side body.Side) *setlog.Set {
	kept, _ := r.Usable()
	return kept.performedFor(ex, side)
}

// performedFor chooses among sets that are usable.
func (r WeekRequest) performedFor(ex exercise.Exercise, side body.Side) *setlog.Set {
	latest := map[body.Side]setlog.Set{}
	for _, s := range r.Performed {
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
