package choice

import (
	"iter"

	"example.org/posology/units/field"
)

// TaskTrial is a task itself, done under the same conditions each time: for what
// package screening/function has no test. The person's own earlier result is what
// it is held against. They are "time up and down the same stairs", "time to get up from the floor, alone, with furniture or with help",
// "carrying the shopping over 10 m", "lifting the load from knee height and walking with it" and "standing up from a chair with the load".
type TaskTrial uint8

// Trials.
const (
	_          TaskTrial = iota // not given
	stairTime                   // "time up and down the same stairs"
	floorTime                   // "time to get up from the floor, alone, with furniture or with help"
	carryTen                    // "carrying the shopping over 10 m"
	kneeLift                    // "lifting the load from knee height and walking with it"
	loadedRise                  // "standing up from a chair with the load"
)

var trials = field.NewVocabulary[TaskTrial]("trial", "", "time up and down the same stairs",
	"time to get up from the floor, alone, with furniture or with help", "carrying the shopping over 10 m",
	"lifting the load from knee height and walking with it", "standing up from a chair with the load")

// TaskTrials yields every trial.
func TaskTrials() iter.Seq[TaskTrial] { return trials.All() }

// String returns what is done.
func (t TaskTrial) String() string { return trials.Text(t) }

// MarshalText writes what String returns.
func (t TaskTrial) MarshalText() ([]byte, error) { return trials.Marshal(t) }

// UnmarshalText reads what MarshalText writes.
func (t *TaskTrial) UnmarshalText(text []byte) error { return trials.Unmarshal(text, t) }
