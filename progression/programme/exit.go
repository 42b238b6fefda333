package programme

import (
	"iter"

	"example.org/posology/dose"
	"example.org/posology/units/field"
)

// Exit is where a phase of a programme may lead. The end of the programme is an
// exit and no phase: nothing is dosed after it. [Exit.Phase] says which it is: "build"
// from Familiarise, "power" from Build where power is the goal, "maintain" from Build or
// Power, and "discharge" from Maintain.
type Exit uint8

const (
	_           Exit = iota // not given
	toBuild                 // "build": from Familiarise
	toPower                 // "power": from Build, where power is the goal
	toMaintain              // "maintain": from Build or Power
	toDischarge             // "discharge": from Maintain: the programme ends
)

var exits = field.NewVocabulary[Exit]("exit", "", "build", "power", "maintain", "discharge")

// Exits yields every exit.
func Exits() iter.Seq[Exit] { return exits.All() }

// String returns "build", "power", "maintain" or "discharge", and "" for not given.
func (e Exit) String() string { return exits.Text(e) }

// MarshalText writes what String returns.
func (e Exit) MarshalText() ([]byte, error) { return exits.Marshal(e) }

// UnmarshalText reads what MarshalText writes.
func (e *Exit) UnmarshalText(text []byte) error { return exits.Unmarshal(text, e) }

// Phase returns the phase behind the exit, and false for the end of the
// programme and for a value that is no exit.
func (e Exit) Phase() (dose.Phase, bool) {
	switch e {
	case toBuild:
		return dose.Build, true
	case toPower:
		return dose.Power, true
	case toMaintain:
		return dose.Maintain, true
	}
	return 0, false
}

// Criterion is one of the things that must hold before a phase is left, in the order in
// which they are asked: nothing that "happened" is open; no "referral" is; the "plan" has
// not expired; the "time" until the first review has passed; enough "sessions" were done;
// somebody saw the "technique"; the latest "visits" neither eased nor referred; "power" is
// the goal; the client's own "goal" of the phase is reached.
type Criterion uint8

const (
	_                  Criterion = iota // not given
	criterionHappened                   // "happened": nothing that happened is open
	criterionReferral                   // "referral": no referral is open
	criterionPlan                       // "plan": the plan has not expired
	criterionTime                       // "time": the phase has lasted until its first review
	criterionSessions                   // "sessions": enough sessions were done
	criterionTechnique                  // "technique": somebody saw the technique in this phase
	criterionVisits                     // "visits": the latest visits neither eased nor referred
	criterionPower                      // "power": power is the goal
	criterionGoal                       // "goal": the client's own goal of the phase is reached
)

var criteria = field.NewVocabulary[Criterion]("criterion", "", "happened", "referral", "plan", "time", "sessions", "technique", "visits", "power", "goal")

// Criteria yields every criterion.
func Criteria() iter.Seq[Criterion] { return criteria.All() }

// String returns the criterion's name, such as "technique", and "" for not given.
func (c Criterion) String() string { return criteria.Text(c) }

// MarshalText writes what String returns.
func (c Criterion) MarshalText() ([]byte, error) { return criteria.Marshal(c) }

// UnmarshalText reads what MarshalText writes.
func (c *Criterion) UnmarshalText(text []byte) error { return criteria.Unmarshal(text, c) }

// CriterionState says whether a criterion holds. Only CriterionMet lets a phase be left.
type CriterionState uint8

// Answers to a criterion.
const (
	_                 CriterionState = iota // not given
	CriterionMet                            // "met"
	CriterionNotMet                         // "not met"
	CriterionNotKnown                       // "not known": not recorded, or not enough to tell from
)

var holdsTexts = field.NewVocabulary[CriterionState]("holds", "", "met", "not met", "not known")

// CriterionStates yields every answer on a criterion.
func CriterionStates() iter.Seq[CriterionState] { return holdsTexts.All() }

// String returns "met", "not met" or "not known", and "" for not given.
func (h CriterionState) String() string { return holdsTexts.Text(h) }

// MarshalText writes what String returns.
func (h CriterionState) MarshalText() ([]byte, error) { return holdsTexts.Marshal(h) }

// UnmarshalText reads what MarshalText writes.
func (h *CriterionState) UnmarshalText(text []byte) error { return holdsTexts.Unmarshal(text, h) }

// An exitRow is a way out of a phase with the criteria that it asks for.
type exitRow struct {
	from     dose.Phase
	to       Exit
	criteria []Criterion
}

// exitRows are this module's design. Every exit begins with what is asked of all.
var exitRows = [...]exitRow{
	{dose.Familiarise, toBuild, ofAll(criterionTime, criterionSessions, criterionTechnique, criterionVisits)},
	{dose.Build, toPower, ofAll(criterionTime, criterionSessions, criterionTechnique, criterionVisits, criterionPower)},
	{dose.Build, toMaintain, ofAll(criterionVisits, criterionGoal)},
	{dose.Power, toMaintain, ofAll(criterionVisits, criterionGoal)},
	{dose.Maintain, toDischarge, ofAll(criterionTime, criterionSessions, criterionVisits, criterionGoal)},
}

func ofAll(more ...Criterion) []Criterion {
	return append([]Criterion{criterionHappened, criterionReferral, criterionPlan}, more...)
}
