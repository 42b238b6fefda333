package dose

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// choose takes the estimate that the dose rests on, made out for the side asked
// for, and lists those that cannot be used. NewFrame says which it is.
func (f *Frame) choose() {
	mine := ofExercise(f.r.Estimates, f.r.Exercise)
	if len(mine) == 0 {
		return
	}
	s := sieve{day: f.r.Day, from: f.r.Screening.TestsFrom, given: mine}
	if s.estimates = mine; len(mine) > 1 { // else the day was looked at
		s.estimates = nil
		s.outdated()
		s.disagree()
		f.plain.Unused = s.unused
	}
	var latest bySide
	for i := range s.estimates {
		e := &s.estimates[i]
		have := latest[e.Side]
		if have == nil || e.Day > have.Day || e.Day == have.Day && weaker(e, have) {
			latest[e.Side] = e
		}
	}
	chosen := latest[body.Both]
	if f.r.Exercise.OneSided {
		chosen, f.note = ofSides(latest, f.r.Side)
	}
	if chosen != nil {
		chosen.Side = f.r.Side
	}
	f.estimate = chosen
}

// ofExercise returns the estimates of an exercise in its hold.
func ofExercise(list []onerm.Estimate, ex exercise.Exercise) []onerm.Estimate {
	var mine []onerm.Estimate
	for _, e := range list {
		if e.Exercise == ex.ID && e.Hold == ex.Hold {
			mine = append(mine, e)
		}
	}
	return mine
}

// bySide are the latest tests, nil for none.
type bySide [body.Both + 1]*onerm.Estimate

// weaker reports whether one test shows less strength than another. It goes by what
// doses go by: by another measure a worse test could give way to a better one.
func weaker(e, than *onerm.Estimate) bool {
	return onerm.Ability{}.Tested(*e).Log < onerm.Ability{}.Tested(*than).Log
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
