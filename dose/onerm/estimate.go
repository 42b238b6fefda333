package onerm

import (
	"fmt"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// ErrNotStudied: repetitions to failure over which no equation that fits
// this person was tested, or a reserve too large to be counted. It is a
// [field.ErrOutOfRange] too.
var ErrNotStudied = fmt.Errorf("onerm: not studied: %w", field.ErrOutOfRange)

// A FormulaEstimate is what one equation by itself makes of a set.
type FormulaEstimate struct {
	Formula Formula    `json:"formula"`
	OneRM   units.Mass `json:"one_rm"`
}

// An Estimate is a one-repetition maximum with its interval, for one exercise,
// side, hold and day of one person. The zero value is "not given".
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Estimate struct {
	Key      body.Key                `json:"key,omitzero"` // whose it is; empty in a file of one person
	OneRM    units.Mass              `json:"one_rm"`       // best estimate, counted as Stated says
	Interval units.Range[units.Mass] `json:"interval"`     // contains OneRM and every answer
	Stated   body.Stated             `json:"stated"`       // per hand for one in each hand, else total
	Exercise exercise.ID             `json:"exercise"`
	Side     body.Side               `json:"side"`
	Hold     body.Hold               `json:"hold"`
	Day      units.Day               `json:"day"` // of the set
	// ToFailure is repetitions to failure: done plus reserve. It has two values
	// where the rating stands for two counts; OneRM is from the lower.
	ToFailure units.Range[float64] `json:"to_failure"`
	Formula   Formula              `json:"formula,omitzero"` // gave OneRM; none if measured
	// Loading is the formula of [Estimate.Relation], where that is another than the
	// one that gave OneRM.
	Loading Formula `json:"loading,omitzero"`
	// Level is the share of such intervals that should hold the 1RM; zero
	// stands for about 0.95.
	Level   units.Fraction    `json:"level,omitzero"`
	Answers []FormulaEstimate `json:"answers,omitempty"` // the equations' own, at the lower end of ToFailure
	Grade   Grade             `json:"grade"`
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// Relation returns what ties load and repetitions where a guideline speaks in
// repetition maxima: Loading, or else the formula taken. For the two house equations and
// for a measured 1RM, which took none, it is the lower of [Epley] and [Brzycki]
// at every load, so that doses do not depend on which of the two was taken.
func (e Estimate) Relation() Relation {
	f := e.Formula
	if e.Loading != 0 {
		f = e.Loading
	}
	if f == Epley || f == Brzycki || f == 0 && e.Grade == Measured {
		return houseCurve{}
	}
	return f
}

// level returns the level of the interval.
func (e Estimate) level() units.Fraction { return Options{Level: e.Level}.level() }

// Validate returns every bad field of e at once: what FromSet returns is valid.
func (e Estimate) Validate() error {
	var bad field.Errors
	bad.Refuse(e.OneRM <= 0, "/one_rm", e.OneRM, "a mass above 0 kg", field.ErrOutOfRange)
	bad.Add("/interval", e.checkInterval())
	bad.Refuse(e.Exercise == "", "/exercise", nil, "the ID of an exercise", field.ErrMissing)
	bad.Add("/side", e.Side.Check())
	bad.Add("/hold", e.Hold.Check())
	if want := statedFor(e.Hold); e.Hold.Check() == nil && e.Stated != want {
		bad.Add("/stated", field.Bad(e.Stated, want.String()+" for the hold "+e.Hold.String(), field.ErrConflict))
	}
	bad.Add("/day", e.Day.Check())
	low, hasLow := e.ToFailure.Min()
	if _, hasHigh := e.ToFailure.Max(); !hasLow || !hasHigh || !(low >= 1) {
		bad.Add("/to_failure", field.Bad(e.ToFailure, "two ends, 1 repetition or more", field.ErrOutOfRange))
	}
	bad.Add("", grades.Check("/grade", e.Grade))
	bad.Add("/formula", e.checkFormula())
	if e.Loading != 0 {
		bad.Add("/loading", e.Loading.check())
	}
	if e.Level != 0 {
		bad.Add("/level", checkLevel(e.Level))
	}
	for i, a := range e.Answers {
		if err := e.checkAnswer(a); err != nil {
			bad.Add(fmt.Sprintf("/answers/%d", i), err)
		}
	}
	return bad.Err()
}

func (e Estimate) checkInterval() error {
	low, hasLow := e.Interval.Min()
	_, hasHigh := e.Interval.Max()
	switch {
	case !hasLow || !hasHigh:
		return field.Bad(e.Interval, "two ends", field.ErrMissing)
	case low < 0:
		return field.Bad(e.Interval, "0 kg or more", field.ErrOutOfRange)
	case !e.Interval.Contains(e.OneRM):
		return field.Bad(e.Interval, "an interval that contains "+e.OneRM.String(), field.ErrConflict)
	}
	return nil
}

func (e Estimate) checkFormula() error {
	if e.Grade != Measured {
		return e.Formula.check()
	}
	if e.Formula != 0 {
		return field.Bad(e.Formula, "none for a measured 1RM", field.ErrConflict)
	}
	return nil
}

func (e Estimate) checkAnswer(a FormulaEstimate) error {
	var bad field.Errors
	bad.Add("/formula", a.Formula.check())
	if !e.Interval.Contains(a.OneRM) {
		bad.Add("/one_rm", field.Bad(a.OneRM, "a mass within the interval "+e.Interval.String(), field.ErrConflict))
	}
	return bad.Err()
}

// statedFor says how a 1RM is counted for a hold.
func statedFor(h body.Hold) body.Stated {
	if h == body.OneEachHand {
		return body.PerHand
	}
	return body.Total
}

// checkMatch returns what rules out an estimate from a set of the exercise.
func checkMatch(s setlog.Set, e exercise.Exercise) error {
	var bad field.Errors
	if s.Exercise != "" && s.Exercise != e.ID {
		bad.Add("/set/exercise", field.Bad(s.Exercise, "the exercise given, "+string(e.ID), field.ErrConflict))
	}
	if s.Hold != e.Hold && s.Hold != 0 && e.Hold != 0 {
		bad.Add("/set/hold", field.Bad(s.Hold, "the hold of the exercise, "+e.Hold.String(), field.ErrConflict))
	}
	if s.Day.IsZero() {
		bad.Add("/set/day", s.Day.Check())
	}
	bad.Refuse(s.Load == 0, "/set/load", s.Load, "a load above 0 kg", field.ErrOutOfRange)
	if e.MovesBody {
		bad.Add("/exercise/moves_body", refuse(field.Bad(true, "an exercise in which the weight is most of what is lifted; here count the repetitions at this load", field.ErrConflict),
			evidence.Because("onerm.none-moves-body", factMovesBody)))
	}
	if e.Measure != exercise.Repetitions && e.Measure != 0 {
		bad.Add("/exercise/measure", refuse(field.Bad(e.Measure, "an exercise counted in repetitions", field.ErrConflict),
			evidence.Because("onerm.none-measure", factToFailure).With(evidence.Term("measure", e.Measure.String()))))
	}
	return bad.Err()
}
