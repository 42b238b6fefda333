package dose

import (
	"example.org/posology/dose/beside"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// MostMissed is how many days a dose takes as missed, and how far behind all that is known
// a day may lie: ten years, a ceiling against slips of the keyboard.
const MostMissed = 3650

// A Request is all that one prescription depends on.
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Request struct {
	// Day is the day that is decided on. Nothing that the dose rests on may be of
	// a later one, and the outcome's review not be over.
	Day       units.Day         `json:"day"`
	Screening screening.Outcome `json:"screening"` // whose the dose is, where and with whom; zero: ErrNotScreened
	Exercise  exercise.Exercise `json:"exercise"`

	// Side of a one-sided exercise: Left, Right, or Both for one after the
	// other. An exercise for both sides at once takes Both.
	Side  body.Side      `json:"side"`
	Goal  guideline.Goal `json:"goal"`
	Phase Phase          `json:"phase,omitzero"` // zero: familiarise for a novice, else build; reported as assumed

	// Technique is who saw the person do this exercise, and when. A novice whose
	// technique nobody saw stays in the phase Familiarise.
	Technique Observation `json:"technique,omitzero"`

	// Known is what was looked at beside the screening. In the phase Power it decides
	// with it whether the lifts are fast; nothing else goes by it.
	Known beside.Known `json:"known,omitzero"`

	// Estimates are all that there are of this person, of this exercise and of
	// others. The frame chooses one, as [NewFrame] says; where there is none, the
	// load has to be found.
	Estimates []onerm.Estimate `json:"estimates,omitempty"`
	// Performed is a set of this exercise and hold that was really done. Where
	// no estimate can be used, looking for the load begins from it instead of
	// from the lightest weight, and never above it.
	Performed *setlog.Set `json:"performed,omitempty"`
	// Done are sets of this exercise and hold that were really done, Performed
	// among them or not, from a log or from tests. Under a limit on the share of a
	// maximum those with a known reserve bound the load where there is no
	// estimate; one that is too old, or from before an event that ends tests,
	// bounds nothing.
	Done []setlog.Set `json:"done,omitempty"`
	// Ability is what all visits and tests have shown of this person's strength in the
	// exercise, side and hold, as package progression keeps it. The zero value is made
	// from the estimate that is chosen or, without one, from Performed.
	Ability strength.Ability `json:"ability,omitzero"`
	// Chance is what loads and counts are kept to together; zero: [strength.StandardChance].
	Chance strength.Chance `json:"chance,omitzero"`
	// Missed is how many days somebody was away beyond the planned gap, 0 to [MostMissed]:
	// what is lost by them is taken off this dose alone.
	Missed int `json:"missed,omitzero"`
	// Bound is the most per implement that is known to be allowed of an exercise
	// that this one replaces; 0: none is known.
	Bound units.Mass `json:"bound,omitzero"`
	// Kit is compiled for the exercise's hold; once for many requests where
	// [equipment.Kit.Once] made it.
	Kit equipment.Kit `json:"kit"`

	// Brief asks for a few minutes each day in place of sessions, without a weight.
	Brief bool `json:"brief,omitzero"`

	// Guideline is the row that the dose follows. Empty: one is chosen by
	// goal, training and age, and reported as assumed.
	Guideline guideline.ID `json:"guideline,omitzero"`
}

// validate returns every bad field of r at once.
func (r *Request) validate() error {
	if err := given.Screened(&r.Screening); err != nil {
		return err
	}
	var bad field.Errors
	bad.Add("", given.Day(r.Day, &r.Screening))
	bad.Add("/technique/day", given.UpTo(r.Day, r.Technique.Day))
	bad.Add("/exercise", r.Exercise.Validate())
	bad.Add("/side", r.checkSide())
	bad.Add("/goal", r.Goal.Check())
	if r.Phase != 0 {
		bad.Add("/phase", r.Phase.Check())
	}
	bad.Add("/known", r.Known.Validate())
	bad.Add("", r.checkEstimates())
	if r.Performed != nil {
		bad.Add("/performed", r.checkDone(*r.Performed))
		bad.Add("/performed/day", given.StillSays(r.Day, r.Screening.TestsFrom, r.Performed.Day))
	}
	for i, s := range r.Done {
		if err := r.checkDone(s); err != nil {
			bad.Add(given.At("/done", i), err)
		}
		if err := given.UpTo(r.Day, s.Day); err != nil {
			bad.Add(given.At("/done", i)+"/day", err)
		}
	}
	bad.Add("/ability", r.Ability.Validate())
	if r.Chance != (strength.Chance{}) {
		bad.Add("/chance", r.Chance.Validate())
	}
	inRange(&bad, "/missed", r.Missed, 0, MostMissed)
	if r.Bound < 0 {
		bad.Add("/bound", field.Bad(r.Bound, "0 kg or more", field.ErrOutOfRange))
	}
	if r.Guideline != "" {
		_, err := guideline.Get(r.Guideline)
		bad.Add("/guideline", err)
	}
	return bad.Err()
}

func (r *Request) checkSide() error {
	if err := r.Side.Check(); err != nil {
		return err
	}
	if !r.Exercise.OneSided && r.Side != body.Both {
		return field.Bad(r.Side, "both, since the exercise works both sides at once", field.ErrConflict)
	}
	return nil
}

// checkDone refuses a set of another exercise or hold, or of one side
// where both work at once.
func (r *Request) checkDone(s setlog.Set) error {
	var bad field.Errors
	bad.Add("", s.ValidateFor(r.Exercise.ID, r.Exercise.Hold))
	bad.Add("/key", r.Screening.Key.Matches(s.Key))
	if !r.Exercise.OneSided && s.Side.Check() == nil && s.Side != body.Both {
		bad.Add("/side", field.Bad(s.Side, "both, since the exercise works both sides at once", field.ErrConflict))
	}
	return bad.Err()
}

// checkEstimates refuses bad ones, those of another person and, where there is
// but one of the exercise, one that says nothing of the day.
func (r *Request) checkEstimates() error {
	var bad field.Errors
	mine, only := 0, 0
	for i, e := range r.Estimates {
		if err := e.Validate(); err != nil {
			bad.Add(given.At("/estimates", i), err)
		}
		if err := r.Screening.Key.Matches(e.Key); err != nil {
			bad.Add(given.At("/estimates", i)+"/key", err)
		}
		if e.Exercise == r.Exercise.ID && e.Hold == r.Exercise.Hold {
			mine, only = mine+1, i
		}
	}
	if mine == 1 && r.Estimates[only].Day.Check() == nil {
		if err := given.StillSays(r.Day, r.Screening.TestsFrom, r.Estimates[only].Day); err != nil {
			bad.Add(given.At("/estimates", only)+"/day", err)
		}
	}
	return bad.Err()
}
