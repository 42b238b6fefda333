package dose

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// An Observation is somebody's look at how the person moves. The zero value
// means that nobody looked.
type Observation struct {
	Who string    `json:"who"`
	Day units.Day `json:"day"`
}

// Made reports whether somebody looked, on a day.
func (o Observation) Made() bool { return o.Who != "" && o.Day.Check() == nil }

// Seen is an exercise whose technique somebody saw. What was seen of one says
// nothing of another.
type Seen struct {
	Exercise exercise.ID `json:"exercise"`
	Observation
}

// Technique returns the latest look at the exercise, the zero value for none.
func (r WeekRequest) Technique(id exercise.ID) Observation {
	var latest Observation
	for _, s := range r.Seen {
		if s.Exercise == id && s.Day >= latest.Day {
			latest = s.Observation
		}
	}
	return latest
}

// checkSeen asks for an exercise, a name and a day of each, none after the day
// decided on.
func (r WeekRequest) checkSeen() error {
	var bad field.Errors
	for i, s := range r.Seen {
		at := path("", i)
		_, err := r.Catalogue.Lookup(string(s.Exercise))
		bad.Add(at+"/exercise", err)
		if s.Who == "" {
			bad.Add(at+"/who", field.Bad(nil, "who looked", field.ErrMissing))
		}
		bad.Add(at+"/day", s.Day.Check())
		bad.Add(at+"/day", upTo(r.Day, s.Day))
	}
	return bad.Err()
}
