package week

import (
	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/given"
	"example.org/posology/units/field"
)

// Seen is an exercise whose technique somebody saw. What was seen of one says
// nothing of another.
type Seen struct {
	Exercise exercise.ID `json:"exercise"`
	dose.Observation
}

// Technique returns the latest look at the exercise, the zero value for none.
func (r Request) Technique(id exercise.ID) dose.Observation {
	var latest dose.Observation
	for _, s := range r.Seen {
		if s.Exercise == id && s.Day >= latest.Day {
			latest = s.Observation
		}
	}
	return latest
}

// checkSeen asks for an exercise, a name and a day of each, none after the day
// decided on.
func (r Request) checkSeen() error {
	var bad field.Errors
	for i, s := range r.Seen {
		at := given.At("", i)
		_, err := r.Catalogue.Lookup(string(s.Exercise))
		bad.Add(at+"/exercise", err)
		bad.Refuse(s.Who == "", at+"/who", nil, "who looked", field.ErrMissing)
		bad.Add(at+"/day", s.Day.Check())
		bad.Add(at+"/day", given.UpTo(r.Day, s.Day))
	}
	return bad.Err()
}
