package exercise

import (
	"fmt"
	"iter"
	"math"
	"slices"
	"strconv"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// ID names an exercise in records, such as "goblet-squat".
type ID string

// DoseUnit is what the dose of an exercise counts.
type DoseUnit uint8

// Measures.
const (
	_           DoseUnit = iota // not given
	Repetitions                 // "repetitions"
	Seconds                     // "seconds": held
	Metres                      // "metres": walked
)

var measures = field.NewVocabulary[DoseUnit]("measure", "", "repetitions", "seconds", "metres")

// DoseUnits yields every measure.
func DoseUnits() iter.Seq[DoseUnit] { return measures.All() }

// String returns "repetitions", "seconds" or "metres".
func (m DoseUnit) String() string { return measures.Text(m) }

// MarshalText writes what String returns.
func (m DoseUnit) MarshalText() ([]byte, error) { return measures.Marshal(m) }

// UnmarshalText reads what MarshalText writes.
func (m *DoseUnit) UnmarshalText(text []byte) error { return measures.Unmarshal(text, m) }

// Role is a muscle's part in an exercise.
type Role uint8

// Roles, in falling order.
const (
	_          Role = iota // not given
	Prime                  // "prime": does most of the work
	Synergist              // "synergist": helps
	Stabiliser             // "stabiliser": holds
)

var roles = field.NewVocabulary[Role]("role", "", "prime", "synergist", "stabiliser")

// Roles yields every role.
func Roles() iter.Seq[Role] { return roles.All() }

// String returns "prime", "synergist" or "stabiliser".
func (r Role) String() string { return roles.Text(r) }

// MarshalText writes what String returns.
func (r Role) MarshalText() ([]byte, error) { return roles.Marshal(r) }

// UnmarshalText reads what MarshalText writes.
func (r *Role) UnmarshalText(text []byte) error { return roles.Unmarshal(text, r) }

// Work is a muscle with its role, and the fact that says so.
type Work struct {
	Muscle body.Muscle     `json:"muscle"`
	Role   Role            `json:"role"`
	Fact   evidence.FactID `json:"fact,omitzero"`
}

// An Exercise is one way to train.
type Exercise struct {
	ID      ID       `json:"id"`
	Name    string   `json:"name"`              // in the trade's words
	Aliases []string `json:"aliases,omitempty"` // other names in use
	Pattern Pattern  `json:"pattern"`
	How     string   `json:"how,omitzero"` // a line for the client, in our own words

	Hold body.Hold `json:"hold"` // how its weight is held
	// Implements are what it is done with in that hold; empty: not said. A
	// machine and a cable serve alike where both are named.
	Implements []Implement `json:"implements,omitempty"`
	// Band names the elastic band that it is done with, on a band. One that names
	// none is any of them: it can be recorded, and is not dosed.
	Band string `json:"band,omitzero"`
	// OneSided: all repetitions with one side, then the other: sets count per side.
	OneSided bool `json:"one_sided,omitzero"`
	// Alternating: the sides take turns within the set.
	Alternating bool         `json:"alternating,omitzero"`
	Muscles     []Work       `json:"muscles"`
	Demands     body.Demands `json:"demands"`
	// Needs are what has to stand there for it, all of them, each once.
	Needs []Thing `json:"needs,omitempty"`

	// Height is that of the seat or of the step, in cm, where the exercise is for that
	// one alone; 0: any that suits.
	Height int `json:"height_cm,omitzero"`

	// HandsBusy says that the movement has a place for both hands, such as on
	// the thighs, crossed or on the floor, so that neither can hold on to
	// something firm. It is for holds that would leave a hand; of those that
	// take both, and of a carry, it is known without it: see [Exercise.HandFree].
	HandsBusy bool `json:"hands_busy,omitzero"`

	// OtherRests says of one-sided work that the other arm, or leg, neither works, nor bears
	// weight, nor is lain on: whoever is to spare that one can do it.
	OtherRests bool `json:"other_rests,omitzero"`

	// Seat says that a chair stands behind from beginning to end: whoever sways sits down.
	Seat bool `json:"seat,omitzero"`

	// MovesBody says that the body, or a long limb, is most of what is lifted:
	// a one-repetition maximum of the held weight alone misleads, and so does a
	// percent jump of it.
	MovesBody bool `json:"moves_body,omitzero"`
	// MovedShare is the share of body mass that is lifted beside what is held,
	// at most 1; not stated where nothing is known to go by.
	MovedShare     units.Range[units.Fraction] `json:"moved_share,omitzero"`
	MovedShareFact evidence.FactID             `json:"moved_share_fact,omitzero"`
	Measure        DoseUnit                    `json:"measure"`

	// Count is the range of repetitions, seconds or metres that works for this
	// exercise; it narrows a guideline's range where the two overlap.
	Count     units.Range[int] `json:"count,omitzero"`
	CountFact evidence.FactID  `json:"count_fact,omitzero"`
	// FirstMass is a beginner's first weight per implement, where one is set:
	// nothing above its upper end before the technique is sound.
	FirstMass     units.Range[units.Mass] `json:"first_mass,omitzero"`
	FirstMassFact evidence.FactID         `json:"first_mass_fact,omitzero"`
	// Heaviest says that the exercise begins with no less than any other of its session.
	Heaviest bool `json:"heaviest,omitzero"`

	Easier ID `json:"easier,omitzero"` // the next step down, if any
	Harder ID `json:"harder,omitzero"` // the next step up, if any

	Warnings []evidence.Reason `json:"warnings,omitempty"` // what ends the set, what needs help
	Facts    []evidence.FactID `json:"facts,omitempty"`    // behind Heaviest, Demands and the rest
}

// HandFree reports whether a hand is left to hold on to something firm all
// through a set: the hold leaves one, the movement has no other place for it,
// and the exercise is not walked.
func (e Exercise) HandFree() bool {
	switch e.Hold {
	case body.Unloaded, body.OneHand, body.OnLimb:
		return !e.HandsBusy && e.Measure != Metres
	}
	return false
}

// MusclesAs yields the muscles that do the work in a role, in their order.
func (e Exercise) MusclesAs(r Role) iter.Seq[body.Muscle] {
	return func(yield func(body.Muscle) bool) {
		for _, w := range e.Muscles {
			if w.Role == r && !yield(w.Muscle) {
				return
			}
		}
	}
}

// Validate returns every bad field of e at once: an exercise needs an ID in
// lower-case letters, digits and dashes, a name, a pattern, a hold, a measure
// and at least one prime muscle. Implements must go with the hold, and sides
// cannot both take turns and be worked one at a time.
func (e Exercise) Validate() error {
	var bad field.Errors
	if !goodID(e.ID) {
		bad.Add("/id", field.Bad(fmt.Sprintf("%q", e.ID), "lower-case letters, digits and dashes", field.ErrSyntax))
	}
	bad.Refuse(e.Name == "", "/name", nil, "a name", field.ErrMissing)
	bad.Add("", patterns.Check("/pattern", e.Pattern))
	bad.Add("/hold", e.Hold.Check())
	bad.Add("/implements", e.checkImplements())
	if e.Band != "" && e.Hold.Check() == nil && e.Hold != body.OnBand {
		bad.Add("/band", field.Bad(fmt.Sprintf("%.40q", e.Band), "no band, since the hold is "+e.Hold.String(), field.ErrConflict))
	}
	bad.Refuse(e.OneSided && e.Alternating, "/alternating", true, "one of one_sided and alternating", field.ErrConflict)
	bad.Refuse(e.OtherRests && !e.OneSided, "/other_rests", true, "false, unless one_sided", field.ErrConflict)
	bad.Add("/moved_share", e.checkMovedShare())
	bad.Add("", measures.Check("/measure", e.Measure))
	bad.Add("/muscles", e.checkMuscles())
	bad.Add("/needs", e.checkNeeds())
	bad.Refuse(e.Height < 0 || e.Height > 0 && !slices.Contains(e.Needs, Chair) && !slices.Contains(e.Needs, LowStep), "/height_cm", e.Height, "0, or the height of the chair or step that it needs", field.ErrConflict)
	if min, ok := e.Count.Min(); ok && min < 1 {
		bad.Add("/count/min", field.Bad(min, "1 or more", field.ErrOutOfRange))
	}
	bad.Add("/first_mass", e.checkFirstMass())
	return bad.Err()
}

func goodID(id ID) bool {
	for i := range len(id) {
		if c := id[i]; (c < 'a' || c > 'z') && (c < '0' || c > '9') && c != '-' {
			return false
		}
	}
	return id != ""
}

func (e *Exercise) checkMuscles() error {
	var bad field.Errors
	if !slices.ContainsFunc(e.Muscles, func(w Work) bool { return w.Role == Prime }) {
		bad.Add("", field.Bad(nil, "at least one prime muscle", field.ErrMissing))
	}
	var seen muscleSet
	for i := range e.Muscles {
		w := &e.Muscles[i]
		if err := w.check(&seen); err != nil {
			bad.Add("/"+strconv.Itoa(i), err)
		}
		seen[w.Muscle] = true
	}
	return bad.Err()
}

// check takes the muscles that stand before in the list.
func (w Work) check(seen *muscleSet) error {
	var bad field.Errors
	switch {
	case w.Muscle == 0:
		bad.Add("/muscle", field.Bad(nil, "a muscle", field.ErrMissing))
	case seen[w.Muscle]:
		bad.Add("/muscle", field.Bad(w.Muscle, "each muscle once", field.ErrDuplicate))
	case !muscles[w.Muscle]:
		_, err := w.Muscle.MarshalText()
		bad.Add("/muscle", err)
	}
	bad.Add("", roles.Check("/role", w.Role))
	return bad.Err()
}

type muscleSet [math.MaxUint8 + 1]bool

// muscles are those that there are.
var muscles = everyMuscle()

func everyMuscle() (all muscleSet) {
	for m := range body.Muscles() {
		all[m] = true
	}
	return all
}

func (e *Exercise) checkMovedShare() error {
	if e.MovedShare.IsZero() {
		return nil
	}
	if !e.MovesBody {
		return field.Bad(e.MovedShare, "no share, since the body is not lifted", field.ErrConflict)
	}
	if whole := units.Must(units.Between[units.Fraction](0, 1)); !within(e.MovedShare, whole) {
		return field.Bad(e.MovedShare, "0 % to 100 % of body mass", field.ErrOutOfRange)
	}
	return nil
}

// within reports whether the ends of r lie in limits; r needs an upper one.
func within(r, limits units.Range[units.Fraction]) bool {
	low, _ := r.Min()
	high, closed := r.Max()
	return closed && limits.Contains(low) && limits.Contains(high)
}

func (e *Exercise) checkFirstMass() error {
	if e.FirstMass.IsZero() {
		return nil
	}
	if e.Hold.Implements() == 0 {
		return field.Bad(e.FirstMass, "no mass, since the hold is "+e.Hold.String(), field.ErrConflict)
	}
	if min, ok := e.FirstMass.Min(); ok && min <= 0 {
		return field.New("/min", min, "above 0 kg", field.ErrOutOfRange)
	}
	if max, ok := e.FirstMass.Max(); ok && max <= 0 {
		return field.New("/max", max, "above 0 kg", field.ErrOutOfRange)
	}
	return nil
}
