package choice

import (
	"fmt"

	"example.org/posology/screening/function"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A Tried is how a test of function, or a [TaskTrial], went on one day. Of a trial the
// value is its time in seconds, or in kilograms the load that the task has and no
// maximum; Test is not given then, and Protocol names what has to be alike: the stairs,
// the load, the furniture or the help.
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Tried struct {
	Trial TaskTrial `json:"trial,omitzero"`
	function.Result
}

// A trialRow is how the result of a trial is recorded. The least and most only catch slips
// of the keyboard.
type trialRow struct {
	unit        function.Unit
	less        bool // that less is better
	least, most float64
	arms        bool // the arms may help where they should not
}

var (
	aTime = trialRow{unit: function.Seconds, less: true, least: 0.5, most: 900}
	aLoad = trialRow{unit: function.Kilograms, most: 100}
)

var trialRows = map[TaskTrial]trialRow{
	stairTime: aTime, floorTime: aTime, carryTen: aTime, kneeLift: aLoad,
	loadedRise: {unit: aLoad.unit, most: aLoad.most, arms: true},
}

// Validate returns every bad field of t at once. A day is needed. A trial has no test, side,
// hand or single trials, and a value of its own unit if it was done.
func (t Tried) Validate() error {
	var bad field.Errors
	if t.Trial == 0 {
		bad.Add("", t.Result.Validate())
	} else {
		bad.Add("", t.checkTrial())
	}
	if t.Day == 0 {
		bad.Add("/day", t.Day.Check())
	}
	return bad.Err()
}

func (t Tried) checkTrial() error {
	if err := trials.Check("/trial", t.Trial); err != nil {
		return err
	}
	row := trialRows[t.Trial]
	as := function.Result{Test: function.ChairStand30, Day: t.Day, How: t.How} // day and how are checked as those of a test
	if as.How == function.Done {
		as.How = function.Stopped // which needs no value
	}
	var bad field.Errors
	bad.Add("", as.Validate())
	bad.Refuse(t.How == function.UsedArms && !row.arms, "/how", t.How, "arms only where the trial is to rise without them", field.ErrConflict)
	for _, no := range []struct {
		path  string
		given bool
		got   any
	}{{"/test", t.Test != 0, t.Test}, {"/side", t.Side != 0, t.Side}, {"/hand", t.Hand != 0, t.Hand}, {"/trials", len(t.Trials) > 0, len(t.Trials)}} {
		bad.Refuse(no.given, no.path, no.got, "nothing beside the trial of a task", field.ErrConflict)
	}
	bad.Add("/value", t.checkValue(row))
	return bad.Err()
}

func (t Tried) checkValue(row trialRow) error {
	allowed := fmt.Sprintf("%g to %g %s", row.least, row.most, row.unit)
	switch n := t.Value.Number(); {
	case t.Value.IsZero() && t.How == function.Done:
		return field.Bad(nil, allowed, field.ErrMissing)
	case t.Value.IsZero():
		return nil
	case t.How == function.Unable || t.How == function.Refused:
		return field.Bad(t.Value, "no value, since the trial was "+t.How.String(), field.ErrConflict)
	case t.Value.Unit() != row.unit:
		return field.Bad(t.Value, "an amount in "+row.unit.String(), field.ErrConflict)
	case n < row.least || n > row.most:
		return field.Bad(t.Value, allowed, field.ErrOutOfRange)
	}
	return nil
}

// needsArms reports whether the latest try of a test of standing up from a chair needed the
// arms or could not be done; of one day the lesser counts.
func needsArms(tried []Tried) bool {
	for _, test := range forTask[ChairRise].tests {
		latest, arms := Tried{}, false
		for _, t := range tried {
			if t.Trial != 0 || t.Test != test || t.How == function.Refused || t.Day < latest.Day {
				continue
			}
			arms = t.How == function.UsedArms || t.How == function.Unable || arms && t.Day == latest.Day
			latest = t
		}
		if arms {
			return true
		}
	}
	return false
}

// name is what was tried, with the side where it was one of two.
func (t Tried) name() string {
	name := t.Test.String()
	if t.Trial != 0 {
		name = t.Trial.String()
	}
	if t.Side == body.Left || t.Side == body.Right {
		name += ", " + t.Side.String()
	}
	return name
}

// text is what came of it: the value, or how it went.
func (t Tried) text() string {
	switch {
	case t.How == function.Done:
		return t.Value.String()
	case !t.Value.IsZero():
		return t.How.String() + ", " + t.Value.String()
	}
	return t.How.String()
}
