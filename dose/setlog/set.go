package setlog

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A Set is one set as it was really done: an exercise, on a side, with a
// weight held in some way, so many repetitions, and how hard it was. For an
// exercise that is measured in seconds or metres, Reps counts those.
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Set struct {
	// Key tells who did it, best one that names nobody; empty in the log of one
	// person. Logs call it person.
	Key      body.Key     `json:"person,omitzero"`
	Day      units.Day    `json:"day,omitzero"`
	Exercise exercise.ID  `json:"exercise"`
	Side     body.Side    `json:"side"`
	Hold     body.Hold    `json:"hold"`
	Load     units.Mass   `json:"load"`            // 0 to 1000 kg; zero if unloaded
	Stated   body.Stated  `json:"stated,omitzero"` // needed where two weights are held
	Reps     int          `json:"reps"`            // done, not attempted
	Effort   units.Effort `json:"effort,omitzero"` // zero: not recorded
	// RepSeconds is how long one repetition took, up to 60 s; 0 if not recorded.
	RepSeconds float64 `json:"rep_seconds,omitzero"`
}

// Ceilings against slips of the keyboard; they are no doses.
const (
	maxReps       = 1000
	maxRepSeconds = 60
	// maxLoad is what a kit may hold in one thing: far beyond what anybody lifts.
	maxLoad = 1000 * units.Kilogram
)

// Validate returns every bad field of s at once. The day and the effort may be
// missing: whether they are needed depends on the use.
func (s Set) Validate() error {
	var bad field.Errors
	if s.Day != 0 {
		bad.Add("/day", s.Day.Check())
	}
	bad.Refuse(s.Exercise == "", "/exercise", nil, "the ID of an exercise", field.ErrMissing)
	bad.Add("/side", s.Side.Check())
	noHold := s.Hold.Check()
	bad.Add("/hold", noHold)
	if s.Load < 0 || s.Load > maxLoad {
		bad.Add("/load", field.Bad(s.Load, "0 to 1000 kg", field.ErrOutOfRange))
	} else if noHold == nil {
		_, err := s.Hold.Each(s.Load, s.Stated)
		path := "/stated"
		if s.Load != 0 && s.Hold.Implements() == 0 {
			path = "/load" // whatever is stated of it
		}
		bad.Add(path, err)
	}
	if s.Reps < 1 || s.Reps > maxReps {
		bad.Add("/reps", field.Bad(s.Reps, "1 to 1000 repetitions", field.ErrOutOfRange))
	}
	if !(s.RepSeconds >= 0 && s.RepSeconds <= maxRepSeconds) {
		bad.Add("/rep_seconds", field.Bad(s.RepSeconds, "0 to 60 seconds", field.ErrOutOfRange))
	}
	return bad.Err()
}

// ValidateFor returns every bad field of s as a set of the exercise id in a
// hold: those of Validate, or else a [field.ErrConflict] for exercise and hold.
func (s Set) ValidateFor(id exercise.ID, h body.Hold) error {
	if err := s.Validate(); err != nil {
		return err
	}
	var bad field.Errors
	if s.Exercise != id {
		bad.Add("/exercise", field.Bad(s.Exercise, string(id), field.ErrConflict))
	}
	bad.Refuse(s.Hold != h, "/hold", s.Hold, h.String(), field.ErrConflict)
	return bad.Err()
}

// Each returns the mass of each implement that was held, or the errors of
// Validate.
func (s Set) Each() (units.Mass, error) {
	if err := s.Validate(); err != nil {
		return 0, err
	}
	return s.Hold.Each(s.Load, s.Stated)
}
