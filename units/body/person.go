package body

import (
	"fmt"
	"iter"

	"example.org/posology/units/field"
)

// Sex is the sex that norms and equations are published for.
type Sex uint8

// Sexes.
const (
	_      Sex = iota // not given
	Female            // "female"
	Male              // "male"
)

var sexes = field.NewVocabulary[Sex]("sex", "", "female", "male")

// Sexes yields every sex.
func Sexes() iter.Seq[Sex] { return sexes.All() }

// String returns "female" or "male", and "" for not given.
func (s Sex) String() string { return sexes.Text(s) }

// MarshalText writes what String returns.
func (s Sex) MarshalText() ([]byte, error) { return sexes.Marshal(s) }

// UnmarshalText reads what MarshalText writes.
func (s *Sex) UnmarshalText(text []byte) error { return sexes.Unmarshal(text, s) }

// Age is an age in completed years. The zero value is "not given".
type Age uint8

// Check returns nil for an age from 18 to 120 years, the adults that this
// module is made for, else a [field.ErrMissing] or [field.ErrOutOfRange].
func (a Age) Check() error {
	switch {
	case a == 0:
		return field.Bad(nil, "18 to 120 years", field.ErrMissing)
	case a < 18 || a > 120:
		return field.Bad(fmt.Sprintf("%d years", uint8(a)), "18 to 120 years", field.ErrOutOfRange)
	}
	return nil
}

// Training is how far a person has come with resistance training, in the words
// of the progression models: a novice has none or little, an intermediate about
// six months of regular training, an advanced person years (ACSM 2009).
type Training uint8

// Training statuses, in rising order.
const (
	_            Training = iota // not given
	Novice                       // "novice"
	Intermediate                 // "intermediate"
	Advanced                     // "advanced"
)

var trainings = field.NewVocabulary[Training]("training status", "", "novice", "intermediate", "advanced")

// Trainings yields every training status.
func Trainings() iter.Seq[Training] { return trainings.All() }

// String returns "novice", "intermediate" or "advanced", and "" for not given.
func (t Training) String() string { return trainings.Text(t) }

// Check returns nil if t is given.
func (t Training) Check() error { return trainings.Check("", t) }

// MarshalText writes what String returns.
func (t Training) MarshalText() ([]byte, error) { return trainings.Marshal(t) }

// UnmarshalText reads what MarshalText writes.
func (t *Training) UnmarshalText(text []byte) error { return trainings.Unmarshal(text, t) }

// Key is an opaque name for a person, by which records of two people are told
// apart: a number of the file, never a name. Empty: a file of one person.
type Key string

// Matches refuses another person's record: two keys that are given and differ
// are a [field.ErrConflict]. One that is not given says nothing.
func (k Key) Matches(other Key) error {
	if k == "" || other == "" || k == other {
		return nil
	}
	return field.Bad(fmt.Sprintf("%.60q", string(other)), fmt.Sprintf("%.60q, the key beside it: nothing follows from a record of somebody else", string(k)), field.ErrConflict)
}

// Person is what a dose needs to know of who trains.
type Person struct {
	Age      Age      `json:"age"`               // completed years, 18 to 120; needed
	Sex      Sex      `json:"sex,omitzero"`      // needed only where it decides
	Training Training `json:"training,omitzero"` // needed for a dose; somebody who returns after a long time counts as a novice
}

// Validate returns every bad field of p at once.
func (p Person) Validate() error {
	var bad field.Errors
	bad.Add("/age", p.Age.Check())
	if p.Sex != 0 { // not given is allowed
		bad.Add("", sexes.Check("/sex", p.Sex))
	}
	bad.Add("/training", p.Training.Check())
	return bad.Err()
}
