package progression

import (
	"database/sql/driver"
	"iter"
	"log/slog"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression/visit"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Action is what becomes of an exercise at the next visit.
type Action uint8

// Actions.
const (
	_             Action = iota // not given
	Progress                    // "progress": one thing is made harder
	HoldDose                    // "hold": the dose stays, but for repetitions or sets that a reason takes; without one, until something is settled or the assessment made again, or for the day alone
	EaseOff                     // "ease": the dose is made easier
	ChangeVariant               // "change variant": another variant of the exercise takes its place
	StopExercise                // "stop the exercise": left out; nothing is put in its place here
	StopAndRefer                // "stop and refer": nothing until somebody qualified has looked
)

var actions = field.NewVocabulary[Action]("action", "", "progress", "hold", "ease", "change variant", "stop the exercise", "stop and refer")

// Actions yields every action.
func Actions() iter.Seq[Action] { return actions.All() }

// String returns the action's name, such as "change variant".
func (a Action) String() string { return actions.Text(a) }

// MarshalText writes what String returns.
func (a Action) MarshalText() ([]byte, error) { return actions.Marshal(a) }

// UnmarshalText reads what MarshalText writes.
func (a *Action) UnmarshalText(text []byte) error { return actions.Unmarshal(text, a) }

// Change is the one thing that a step makes harder.
type Change uint8

// Changes, in the order in which they are thought of.
const (
	NoChange       Change = iota // "none": nothing is made harder
	MoreSets                     // "sets": one more, up to those that the plan builds up to
	FindLoad                     // "finding the load": the load is still looked for
	MoreLoad                     // "load": the next weight of the kit
	MoreReps                     // "repetitions": one more than in the weakest set
	SlowerLowering               // "slower lowering": more seconds on the way down
	LongerPause                  // "longer pause": a stop before lifting
	ExtraSet                     // "an extra set": one more than the plan builds up to
	HarderVariant                // "harder variant": a harder exercise, or a longer lever
)

var changes = field.NewVocabulary[Change]("change", "none", "sets", "finding the load", "load", "repetitions", "slower lowering", "longer pause", "an extra set", "harder variant")

// Changes yields every change, NoChange first.
func Changes() iter.Seq[Change] { return changes.All() }

// String returns the change's name, such as "slower lowering".
func (c Change) String() string { return changes.Text(c) }

// MarshalText writes what String returns.
func (c Change) MarshalText() ([]byte, error) { return changes.Marshal(c) }

// UnmarshalText reads what MarshalText writes.
func (c *Change) UnmarshalText(text []byte) error { return changes.Unmarshal(text, c) }

// A Decision is what becomes of one exercise, with the dose of the next visit.
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Decision struct {
	Action Action `json:"action"`
	Change Change `json:"change"` // what Progress makes harder
	// Next is the dose of the next visit; nil: nothing is prescribed. With
	// ChangeVariant it is the first dose of Instead.
	Next    *dose.Prescription `json:"next,omitempty"`
	Instead exercise.ID        `json:"instead,omitzero"`
	// After, where this is so on the day alone, is what the course goes on from: [Course.Usual], [visit.Visit.After].
	After *dose.Prescription `json:"after,omitempty"`
	// Rise is the step in load that MoreLoad takes.
	Rise *Jump `json:"step,omitempty"`
	// Jump is the step from the load of Next to the next weight of the kit, with
	// the step over all that is moved where body mass is known.
	Jump *Jump `json:"jump,omitempty"`
	// RepsBefore is how many repetitions with the load of Next, in every set and
	// in reserve, show that the next weight can be done at the bottom of the
	// range in reserve; 0 where there is no next weight, or no such number.
	RepsBefore int `json:"reps_before,omitzero"`
	// Gates are the gates on the last visit, without the sets that are queried.
	Gates   []visit.GateAnswer `json:"gates,omitempty"`
	Queries []visit.Doubt      `json:"queries,omitempty"`
	Reasons []evidence.Reason  `json:"reasons,omitempty"`
}

func (d *Decision) because(why ...evidence.Reason) {
	if d.Reasons == nil && len(why) > 0 {
		d.Reasons = make([]evidence.Reason, 0, 4) // room for those of most decisions
	}
	d.Reasons = append(d.Reasons, why...)
}

// In a database these types are their texts, and "not given" is NULL. A number
// is refused: it may mean something else in another version.

// Value returns the text of a.
func (a Action) Value() (driver.Value, error) { return field.Value(a) }

// Scan reads what Value returns.
func (a *Action) Scan(src any) error { return field.Scan(src, a) }

// Value returns the text of c.
func (c Change) Value() (driver.Value, error) { return field.Value(c) }

// Scan reads what Value returns.
func (c *Change) Scan(src any) error { return field.Scan(src, c) }

// LogValue gives the decision in a line of a log: action, change, the next dose as
// [example.org/posology/dose.Prescription.LogValue] gives it, and how many reasons there are.
func (d Decision) LogValue() slog.Value {
	list := []slog.Attr{slog.String("action", d.Action.String()), slog.String("change", d.Change.String()), slog.Int("reasons", len(d.Reasons))}
	if d.Instead != "" {
		list = append(list, slog.String("instead", string(d.Instead)))
	}
	if d.Next != nil {
		list = append(list, slog.Attr{Key: "next", Value: d.Next.LogValue()})
	}
	return slog.GroupValue(list...)
}

// Edition is that of what this package and those below it answer. It is raised
// by hand when an answer changes, and never for words alone.
const Edition = 5
