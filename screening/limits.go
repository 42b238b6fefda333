package screening

import (
	"iter"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Setting is where, and with whom beside, the person trains. The values rise
// in supervision.
type Setting uint8

// Settings, in rising order of supervision.
const (
	_          Setting = iota // not given
	Alone                     // "alone": nobody at hand
	WithHelper                // "with a helper": a helper at hand
	InGroup                   // "in a group": a group with an instructor
	InClinic                  // "in a clinic": a clinician beside the person
)

var settings = field.NewVocabulary[Setting]("setting", "", "alone", "with a helper", "in a group", "in a clinic")

// Settings yields every setting.
func Settings() iter.Seq[Setting] { return settings.All() }

// String returns the setting's name, such as "with a helper".
func (s Setting) String() string { return settings.Text(s) }

// check returns nil if s is given.
func (s Setting) check() error { return settings.Check("", s) }

// MarshalText writes what String returns.
func (s Setting) MarshalText() ([]byte, error) { return settings.Marshal(s) }

// UnmarshalText reads what MarshalText writes.
func (s *Setting) UnmarshalText(text []byte) error { return settings.Unmarshal(text, s) }

// company returns s, and alone where it is not given.
func (s Setting) company() Setting { return max(s, Alone) }

// MassLimit is a limit on the mass held for work of one region.
type MassLimit struct {
	Region body.Region `json:"region"` // not given is the whole body
	Side   body.Side   `json:"side"`   // Both, or not given: either side
	Max    units.Mass  `json:"max"`    // 0 kg or more, per hand for work of the arms, else in total
	Author string      `json:"author"` // who set it
}

// Lighten makes a session lighter than the last one completed. It is chosen
// here, not published. The zero value changes nothing.
type Lighten struct {
	AtMostLast  bool      `json:"at_most_last,omitzero"` // no load above the last completed one
	FewerSets   int       `json:"fewer_sets,omitzero"`   // sets left out, 0 or more, down to one set
	MoreReserve units.RIR `json:"more_reserve,omitzero"` // repetitions left undone beyond the planned reserve, 0 to 10
}

func (l Lighten) join(m Lighten) Lighten {
	return Lighten{l.AtMostLast || m.AtMostLast, max(l.FewerSets, m.FewerSets), max(l.MoreReserve, m.MoreReserve)}
}

// LighterSession returns the limits of a session that is made lighter than the
// last one: no more load, a set fewer, more repetitions left undone. They are
// those that a day's check gives.
func LighterSession() Limits { return lighter.limits }

// Limits bind every dose. The zero value limits nothing. [Outcome.Validate] refuses what
// lies outside its range.
type Limits struct {
	// MaxFraction is the largest share of a one-repetition maximum, up to 1; 0 is no limit.
	MaxFraction units.Fraction `json:"max_fraction,omitzero"`
	// MinReserve is the least number of repetitions to be left undone, 0 to 10.
	MinReserve units.RIR `json:"min_reserve,omitzero"`
	// Lighten makes the session lighter than the last one.
	Lighten Lighten `json:"lighten,omitzero"`
	// MaxIntensity is the hardest effort, in the bands of the screening rules;
	// the zero value limits nothing.
	MaxIntensity Intensity `json:"max_intensity,omitzero"`
	// NoBreathHolding asks the person to breathe out on the effort.
	NoBreathHolding bool `json:"no_breath_holding,omitzero"`
	// EffortNotPulse says that pulse does not show effort in this person.
	EffortNotPulse bool `json:"effort_not_pulse,omitzero"`
	// TechniqueFirst lets load rise only while technique and posture hold.
	TechniqueFirst bool `json:"technique_first,omitzero"`
	// LeastCount is the least number of repetitions that a set is asked for, up to 25, the
	// most that a dose asks for; 0 is no limit.
	LeastCount int `json:"least_count,omitzero"`
	// LowImpact keeps impact at or below brisk walking.
	LowImpact bool `json:"low_impact,omitzero"`
	// Support asks for a hand on something firm, or a seat, in standing work.
	Support bool `json:"support,omitzero"`
	// Avoid are demands that no exercise may make.
	Avoid body.Demands `json:"avoid,omitzero"`
	// AvoidLeft and AvoidRight are those of an arm or a leg that only the one on that
	// side is kept from; of a side that is not known they stand in Avoid.
	AvoidLeft  body.Demands `json:"avoid_left,omitzero"`
	AvoidRight body.Demands `json:"avoid_right,omitzero"`
	// LeastSetting is the least supervision; the zero value asks for none.
	LeastSetting Setting `json:"least_setting,omitzero"`
	// Masses are limits on the mass held, set by a surgeon or clinician.
	Masses []MassLimit `json:"masses,omitempty"`
}

// IsZero reports whether l limits nothing.
func (l Limits) IsZero() bool {
	masses := l.Masses
	l.Masses = nil
	return len(masses) == 0 && equalButMasses(l, Limits{})
}

func equalButMasses(l, m Limits) bool {
	return l.MaxFraction == m.MaxFraction && l.MinReserve == m.MinReserve &&
		l.MaxIntensity == m.MaxIntensity && l.Lighten == m.Lighten &&
		l.NoBreathHolding == m.NoBreathHolding && l.EffortNotPulse == m.EffortNotPulse &&
		l.TechniqueFirst == m.TechniqueFirst && l.LeastCount == m.LeastCount && l.LowImpact == m.LowImpact &&
		l.Support == m.Support && l.Avoid == m.Avoid && l.AvoidLeft == m.AvoidLeft && l.AvoidRight == m.AvoidRight && l.LeastSetting == m.LeastSetting
}

// Join returns the tighter of l and m in every respect, in either order the same but for
// the order of masses. A share that is negative or no number stays, to be refused.
func (l Limits) Join(m Limits) Limits {
	if l.MaxFraction == 0 {
		l.MaxFraction = m.MaxFraction
	} else if m.MaxFraction != 0 {
		l.MaxFraction = min(l.MaxFraction, m.MaxFraction)
	}
	l.MinReserve = max(l.MinReserve, m.MinReserve)
	l.Lighten = l.Lighten.join(m.Lighten)
	if m.MaxIntensity != 0 && (l.MaxIntensity == 0 || m.MaxIntensity < l.MaxIntensity) {
		l.MaxIntensity = m.MaxIntensity
	}
	l.NoBreathHolding = l.NoBreathHolding || m.NoBreathHolding
	l.EffortNotPulse = l.EffortNotPulse || m.EffortNotPulse
	l.TechniqueFirst = l.TechniqueFirst || m.TechniqueFirst
	l.LeastCount = max(l.LeastCount, m.LeastCount)
	l.LowImpact = l.LowImpact || m.LowImpact
	l.Support = l.Support || m.Support
	l.Avoid, l.AvoidLeft, l.AvoidRight = l.Avoid.Union(m.Avoid), l.AvoidLeft.Union(m.AvoidLeft), l.AvoidRight.Union(m.AvoidRight)
	l.LeastSetting = max(l.LeastSetting, m.LeastSetting)
	l.Masses = joinMasses(l.Masses, m.Masses)
	return l.bothSides()
}

// Ends of the ranges of limits, against slips.
const (
	mostReserve    = 10 // repetitions, the end of the scale of repetitions in reserve
	mostLeastCount = 25 // repetitions, as many as a dose asks for at most
)

var allDemands = body.DemandSet(slices.Collect(body.EveryDemand())...)

// check returns every limit outside its range.
func (l *Limits) check() error {
	var bad field.Errors
	bad.Add("/max_fraction", within(float64(l.MaxFraction), 0, 1, " of the one-repetition maximum"))
	bad.Add("/min_reserve", within(float64(l.MinReserve), 0, mostReserve, " repetitions"))
	bad.Refuse(l.Lighten.FewerSets < 0, "/lighten/fewer_sets", l.Lighten.FewerSets, "0 sets or more", field.ErrOutOfRange)
	bad.Add("/lighten/more_reserve", within(float64(l.Lighten.MoreReserve), 0, mostReserve, " repetitions"))
	bad.Add("/max_intensity", given(intensities, l.MaxIntensity))
	bad.Add("/least_count", within(l.LeastCount, 0, mostLeastCount, " repetitions"))
	if unknown := l.Avoid &^ allDemands; unknown != 0 {
		bad.Add("/avoid", field.Bad(uint64(unknown), "the demands of EveryDemand", field.ErrUnknown))
	}
	bad.Add("/avoid_left", ofOneSide(l.AvoidLeft))
	bad.Add("/avoid_right", ofOneSide(l.AvoidRight))
	bad.Add("/least_setting", given(settings, l.LeastSetting))
	for i, m := range l.Masses {
		addAt(&bad, "/masses", i, m.check())
	}
	return bad.Err()
}

func (m MassLimit) check() error {
	var bad field.Errors
	bad.Add("/region", givenBy(m.Region != 0, m.Region.Check))
	bad.Add("/side", givenBy(m.Side != 0, m.Side.Check))
	bad.Refuse(m.Max < 0, "/max", m.Max, "0 kg or more", field.ErrOutOfRange)
	return bad.Err()
}

func joinMasses(a, b []MassLimit) []MassLimit {
	all := slices.Clone(a)
	for _, limit := range b {
		if !slices.Contains(all, limit) {
			all = append(all, limit)
		}
	}
	return all
}

// AsTightAs reports whether l allows nothing that m forbids. It is the order
// in which screening is monotone.
func (l Limits) AsTightAs(m Limits) bool {
	joined := l.Join(m)
	return equalButMasses(joined, l.bothSides()) && len(joined.Masses) == len(l.Masses)
}

// Demands that one arm, or one leg, is kept from while the other goes on. Of every other
// the side makes no difference.
var (
	ofArms = body.DemandSet(body.ShoulderResisted, body.ElbowResisted, body.WristResisted, body.FirmGrip, body.Overhead, body.OverFace)
	ofLegs = body.DemandSet(body.HipResisted, body.KneeResisted, body.AnkleResisted)
)

var ofLimb = map[body.Region]body.Demands{
	body.Shoulder: ofArms, body.Elbow: ofArms, body.WristHand: ofArms, body.Hip: ofLegs, body.Knee: ofLegs, body.AnkleFoot: ofLegs,
}

// Avoided returns the demands that work of a side may not make, of both sides, or of one
// that is not given, those of either.
func (l Limits) Avoided(side body.Side) body.Demands {
	switch side {
	case body.Left:
		return l.Avoid.Union(l.AvoidLeft)
	case body.Right:
		return l.Avoid.Union(l.AvoidRight)
	}
	return l.Avoid.Union(l.AvoidLeft).Union(l.AvoidRight)
}

// bothSides returns l with what is kept from the left and from the right in Avoid alone,
// so that the same limits are always written alike.
func (l Limits) bothSides() Limits {
	l.Avoid = l.Avoid.Union(l.AvoidLeft.Both(l.AvoidRight))
	l.AvoidLeft &^= l.Avoid
	l.AvoidRight &^= l.Avoid
	return l
}

// onSide returns limits that come from one place with what the arm or the leg there is to
// avoid kept from its side alone. Of both sides, or of one not given, they stay as they are.
func (l Limits) onSide(place body.Region, side body.Side) Limits {
	own := ofLimb[place].Both(l.Avoid)
	switch side {
	case body.Left:
		l.Avoid, l.AvoidLeft = l.Avoid&^own, l.AvoidLeft.Union(own)
	case body.Right:
		l.Avoid, l.AvoidRight = l.Avoid&^own, l.AvoidRight.Union(own)
	}
	return l
}

func ofOneSide(avoid body.Demands) error {
	if other := avoid &^ (ofArms | ofLegs); other != 0 {
		return field.Bad(uint64(other), "demands of one arm or leg: "+ofArms.Union(ofLegs).String(), field.ErrUnknown)
	}
	return nil
}

// inOneArm are conditions that spare an arm: the one in which their events say they are.
var inOneArm = map[Code]bool{"shoulder_replacement": true, "rotator_cuff_repair": true, "pacemaker": true, "icd": true}

// itsSide returns what follows from an entry with what it spares of the arms kept from one
// side, where all events of it were on that side.
func (p *Profile) itsSide(e *entry, follows effect) effect {
	var side body.Side
	for _, event := range p.Events {
		switch {
		case !inOneArm[e.code] || !event.is(e.code):
		case side != 0 && side != event.Side || event.Side == 0:
			return follows
		default:
			side = event.Side
		}
	}
	follows.limits = follows.limits.onSide(body.Shoulder, side)
	return follows
}
