package body

import (
	"fmt"

	"example.org/posology/units/field"
)

// Sex is the sex that norms and equations are published for.
type Sex uint8

// Sexes.
const (
	SexUnknown Sex = iota // not given
	Female
	Male
)

var sexes = field.NewVocabulary[Sex]("sex", "", "female", "male")

// String returns "female" or "male", and "" for not given.
func (s Sex) String() string { return sexes.Text(s) }

// MarshalText writes what String returns.
func (s Sex) MarshalText() ([]byte, error) { return sexes.Marshal(s) }

// UnmarshalText reads what MarshalText writes.
func (s *Sex) UnmarshalText(text []byte) error { return sexes.Unmarshal(text, s) }

// Age is an age in completed years. The zero value is "not given".
type Age uint8

// Check returns nil for an age from 18 to 120 years, the adults that this
// module is made for, else an [field.ErrMissing] or [field.ErrOutOfRange].
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
	TrainingUnknown Training = iota // not given
	Novice
	Intermediate
	Advanced
)

var trainings = field.NewVocabulary[Training]("training status", "", "novice", "intermediate", "advanced")

// String returns "novice", "intermediate" or "advanced", and "" for not given.
func (t Training) String() string { return trainings.Text(t) }

// Check returns nil if t is given.
func (t Training) Check() error { return trainings.Check("", t) }

// MarshalText writes what String returns.
func (t Training) MarshalText() ([]byte, error) { return trainings.Marshal(t) }

// UnmarshalText reads what MarshalText writes.
func (t *Training) UnmarshalText(text []byte) error { return trainings.Unmarshal(text, t) }
