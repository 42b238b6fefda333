package dose

import (
	"iter"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Phase is the part of a programme that a dose belongs to.
type Phase uint8

// Phases, in the order in which a programme takes them.
const (
	_           Phase = iota // not given
	Familiarise              // "familiarise": learn the movements: light, few sets
	Build                    // "build": get stronger: the load of the goal's row
	Power                    // "power": moved fast on the way up, beside strength work
	Maintain                 // "maintain": keep what was gained, with less
)

var phases = field.NewVocabulary[Phase]("phase", "", "familiarise", "build", "power", "maintain")

// Phases yields every phase.
func Phases() iter.Seq[Phase] { return phases.All() }

// String returns the phase's name, such as "build".
func (p Phase) String() string { return phases.Text(p) }

// Check returns nil if p is given.
func (p Phase) Check() error { return phases.Check("", p) }

// MarshalText writes what String returns.
func (p Phase) MarshalText() ([]byte, error) { return phases.Marshal(p) }

// UnmarshalText reads what MarshalText writes.
func (p *Phase) UnmarshalText(text []byte) error { return phases.Unmarshal(text, p) }

// phase returns the phase that the dose is for: the one asked for, or the one
// that the training status begins with. A novice whose technique nobody saw
// has to see the movements through first.
func (r *Request) phase() Phase {
	novice := r.Screening.Who.Training == body.Novice
	switch {
	case novice && !r.Technique.Made():
		return Familiarise
	case r.Phase != 0:
		return r.Phase
	case novice:
		return Familiarise
	}
	return Build
}

// phaseCode says how the phase was come by.
func (r *Request) phaseCode() evidence.ReasonCode {
	switch {
	case r.Phase == 0:
		return "dose.phase-assumed"
	case r.phase() != r.Phase:
		return "dose.technique-not-seen"
	}
	return "dose.phase"
}

const maintainMostSets = 3

// MaintenanceDose returns the sessions a week and the sets of each exercise with
// which older people keep their strength, at the load that they have, and the
// fact behind them. It is from memory (Spiering 2021): the phase dose.Maintain takes
// the days and the fewest sets from it, which only ever make a plan gentler.
func MaintenanceDose() (days int, sets units.Range[int], fact evidence.FactID) {
	return maintainDays, units.Must(units.Between(maintainSets, maintainMostSets)), factMaintain
}
