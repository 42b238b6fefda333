package dose

import (
	"fmt"
	"iter"
	"math"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Mode says how a load was come by.
type Mode uint8

// Modes.
const (
	_           Mode = iota // not given
	OnCurve                 // "on the curve": load, repetitions and reserve are tied by the load–repetition curve
	FromBand                // "from the band": load from the guideline's band, beyond the studied curve
	LoadFinding             // "load finding": a first weight, from which the load is found
	WithoutLoad             // "without load": nothing but the body, or a band, of which no mass is known
	Continued               // "continued": goes on from what was done
)

var modes = field.NewVocabulary[Mode]("mode", "", "on the curve", "from the band", "load finding", "without load", "continued")

// Modes yields every mode.
func Modes() iter.Seq[Mode] { return modes.All() }

// String returns the mode's name, such as "load finding".
func (m Mode) String() string { return modes.Text(m) }

// MarshalText writes what String returns.
func (m Mode) MarshalText() ([]byte, error) { return modes.Marshal(m) }

// UnmarshalText reads what MarshalText writes.
func (m *Mode) UnmarshalText(text []byte) error { return modes.Unmarshal(text, m) }

// Reserve is the least number of repetitions to leave undone in every set. The zero
// Reserve asks for none: that of what is held or walked.
type Reserve struct {
	Least units.RIR `json:"least"`
	// Countable is false where the set should end with more than 5 in
	// reserve: people cannot count that far, so it reads "clearly easy". Least is
	// then above 0.
	Countable bool `json:"countable"`
}

// IsZero reports whether r asks for nothing.
func (r Reserve) IsZero() bool { return r == Reserve{} }

// String prints "at least 3", "more than 5, not countable", or nothing.
func (r Reserve) String() string {
	switch {
	case r.IsZero():
		return ""
	case !r.Countable:
		return fmt.Sprintf("more than %v, not countable", r.Least)
	}
	return fmt.Sprintf("at least %v", r.Least)
}

// Tempo is the pace of one repetition, in seconds for each phase.
type Tempo struct {
	Lowering float64 `json:"lowering"`
	Pausing  float64 `json:"pausing"`
	Lifting  float64 `json:"lifting"`
	// Fast: up as fast as can be controlled; Lifting is then what is reckoned with.
	Fast bool `json:"fast,omitzero"`
}

// Seconds returns the length of one repetition, 0 where the phases add up to no length.
func (t Tempo) Seconds() float64 {
	if s := t.Lowering + t.Pausing + t.Lifting; s > 0 && s <= math.MaxFloat64 {
		return s
	}
	return 0
}

// Flag is something that a reader must not miss.
type Flag uint8

// Flags.
const (
	_                  Flag = iota // not given
	BelowEffectiveDose             // "below effective dose": lighter than the goal's source asks for: fine for learning, too light to build
)

var flags = field.NewVocabulary[Flag]("flag", "", "below effective dose")

// Flags yields every flag.
func Flags() iter.Seq[Flag] { return flags.All() }

// String returns the flag's name.
func (f Flag) String() string { return flags.Text(f) }

// MarshalText writes what String returns.
func (f Flag) MarshalText() ([]byte, error) { return flags.Marshal(f) }

// UnmarshalText reads what MarshalText writes.
func (f *Flag) UnmarshalText(text []byte) error { return flags.Unmarshal(text, f) }

// A Prescription is the dose of one exercise. What was really done is another
// record, [example.org/posology/dose/setlog.Set].
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Prescription struct {
	Exercise exercise.ID `json:"exercise"`
	Name     string      `json:"name"` // the exercise's name
	Hold     body.Hold   `json:"hold"`
	Side     body.Side   `json:"side"`
	OneSided bool        `json:"one_sided,omitzero"` // Sets are for each side
	Phase    Phase       `json:"phase"`
	Mode     Mode        `json:"mode"`

	Load equipment.Load `json:"load,omitzero"` // per implement and in total; zero without load
	// Share is the load as a fraction of the best estimate, 0 if there is none.
	Share units.Fraction `json:"share,omitzero"`
	// Most is the most per implement that restrictions, the limit on the share of
	// a maximum and a first weight allow; 0: nothing below the end of the kit.
	Most units.Mass `json:"most,omitzero"`

	Sets    int               `json:"sets"`     // for now
	BuildTo int               `json:"build_to"` // sets to build up to over the coming weeks
	Measure exercise.DoseUnit `json:"measure"`
	Count   int               `json:"count"` // repetitions, seconds or metres a set
	Span    units.Range[int]  `json:"span"`  // the range to work through before load is added

	Reserve Reserve          `json:"reserve,omitzero"`
	Rest    units.Range[int] `json:"rest"` // seconds between sets
	Tempo   Tempo            `json:"tempo,omitzero"`
	Days    units.Range[int] `json:"days"` // a week

	// Chance is what Count is kept to with Load; zero where nothing is known of strength,
	// and for the few of the lightest weight that go beyond it.
	Chance strength.Chance `json:"chance,omitzero"`

	Finding *Search        `json:"finding,omitempty"` // only in mode LoadFinding
	Feel    *Feel          `json:"feel,omitempty"`    // in one of the sets; nil: the next weight is not felt
	Next    *equipment.Gap `json:"next,omitempty"`    // the step to the next weight in the kit, if there is one
	Flags   []Flag         `json:"flags,omitempty"`

	Guideline guideline.ID `json:"guideline"`        // the row that was followed
	Assumed   bool         `json:"assumed,omitzero"` // the row was chosen here, not asked for
	Aim       guideline.ID `json:"aim,omitzero"`     // the row of the goal that this start leads to

	Cautions []evidence.Reason `json:"cautions,omitempty"` // what ends a set, what needs help, which limits bind
	Reasons  []evidence.Reason `json:"reasons,omitempty"`  // why this dose
	Unused   []strength.Unused `json:"unused,omitempty"`   // tests of the exercise that it does not rest on
}
