package guideline

import (
	"iter"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// ID names a recommendation: body and year, whom it is for, and what for, such
// as "acsm2011-older-start".
type ID string

// Goal is what a recommendation aims at.
type Goal uint8

// Goals.
const (
	_           Goal = iota // not given
	Strength                // "strength"
	Hypertrophy             // "hypertrophy"
	Power                   // "power"
	Endurance               // "endurance": of the muscles
	Function                // "function": everyday tasks, falls
	Bone                    // "bone"
	Health                  // "health": the public's
)

var goals = field.NewVocabulary[Goal]("goal", "", "strength", "hypertrophy", "power", "endurance", "function", "bone", "health")

// Goals yields every goal.
func Goals() iter.Seq[Goal] { return goals.All() }

// String returns the goal's name, such as "strength".
func (g Goal) String() string { return goals.Text(g) }

// Check returns nil if g is given.
func (g Goal) Check() error { return goals.Check("", g) }

// MarshalText writes what String returns.
func (g Goal) MarshalText() ([]byte, error) { return goals.Marshal(g) }

// UnmarshalText reads what MarshalText writes.
func (g *Goal) UnmarshalText(text []byte) error { return goals.Unmarshal(text, g) }

// EffortRange is a range on a scale of effort.
type EffortRange struct {
	// Scale is zero where the source's scale is none of those that are named
	// there, as with a plain 0 to 10.
	Scale units.Scale      `json:"scale,omitzero"`
	Ends  string           `json:"ends"`  // the scale's name or ends as printed, such as "Borg 6-20"
	Range units.Range[int] `json:"range"` // on that scale
}

// Effect is a published effect of one variable on its own, or an end of its
// confidence interval.
type Effect struct {
	Of    string     `json:"of"` // such as "rest_60_s" or "lean_mass_kg"
	Value float64    `json:"value"`
	Unit  EffectUnit `json:"unit"`
}

// EffectUnit is what an effect is counted in: "SMD", the standardised mean difference
// between groups; "effect size", a change over its standard deviation; "%" of the value
// at the start; or "kg". Effects in different units, and those of different sources, are
// not comparable.
type EffectUnit uint8

var effectUnits = field.NewVocabulary[EffectUnit]("unit of effect", "", "SMD", "effect size", "%", "kg")

// EffectUnits yields every unit of effect.
func EffectUnits() iter.Seq[EffectUnit] { return effectUnits.All() }

// String returns the unit, such as "SMD" or "kg".
func (u EffectUnit) String() string { return effectUnits.Text(u) }

// MarshalText writes what String returns.
func (u EffectUnit) MarshalText() ([]byte, error) { return effectUnits.Marshal(u) }

// UnmarshalText reads what MarshalText writes.
func (u *EffectUnit) UnmarshalText(text []byte) error { return effectUnits.Unmarshal(text, u) }

// FieldBasis says how one field is known where it is known otherwise than its row.
type FieldBasis struct {
	Field Field          `json:"field"`
	Basis evidence.Basis `json:"basis"`
}

// A Recommendation is one published dose. Zero fields are not stated.
type Recommendation struct {
	ID         ID     `json:"id"`
	Body       string `json:"body"` // who speaks
	Year       int    `json:"year"`
	Population string `json:"population"` // for whom, in words
	// Conditions that Population names, one of them is enough; empty: a row for
	// people at large.
	Conditions []Condition     `json:"conditions,omitempty"`
	AgeMin     body.Age        `json:"age_min,omitzero"` // years
	AgeMax     body.Age        `json:"age_max,omitzero"` // years, where Population names an upper end
	Goal       Goal            `json:"goal"`
	Training   []body.Training `json:"training,omitempty"` // empty: any

	Days           units.Range[int] `json:"days,omitzero"` // days a week
	SessionsPerDay units.Range[int] `json:"sessions_per_day,omitzero"`
	Sets           units.Range[int] `json:"sets,omitzero"` // per exercise and session
	// WeeklySets are sets per muscle group in a week. No source says how sets
	// that train a muscle indirectly are counted.
	WeeklySets units.Range[int] `json:"weekly_sets,omitzero"`
	Reps       units.Range[int] `json:"reps,omitzero"`        // repetitions per set
	RM         units.Range[int] `json:"rm,omitzero"`          // load, as a repetition maximum
	RMEmphasis units.Range[int] `json:"rm_emphasis,omitzero"` // the part of RM that is stressed

	Load      units.Range[units.Fraction] `json:"load,omitzero"`       // of a one-repetition maximum
	LoadUpper units.Range[units.Fraction] `json:"load_upper,omitzero"` // for the arms and trunk
	LoadLower units.Range[units.Fraction] `json:"load_lower,omitzero"` // for the hips and legs
	LoadStart units.Range[units.Fraction] `json:"load_start,omitzero"` // to begin with
	LoadStep  units.Range[units.Fraction] `json:"load_step,omitzero"`  // of the present load, at one rise
	LoadRule  string                      `json:"load_rule,omitzero"`  // when to take the step, in our own words
	Effort    EffortRange                 `json:"effort,omitzero"`
	Reserve   units.Range[units.RIR]      `json:"reserve,omitzero"` // repetitions in reserve

	Rest          units.Range[int]     `json:"rest,omitzero"`            // seconds between sets
	RestBetween   units.Range[int]     `json:"rest_between,omitzero"`    // seconds between exercises
	RestAssisting units.Range[int]     `json:"rest_assisting,omitzero"`  // seconds, in assistance exercises
	RestInSet     units.Range[float64] `json:"rest_in_set,omitzero"`     // seconds between repetitions
	RepSeconds    units.Range[float64] `json:"rep_seconds,omitzero"`     // a whole repetition
	LiftSeconds   units.Range[int]     `json:"lift_seconds,omitzero"`    // concentric part
	LowerSeconds  units.Range[int]     `json:"lower_seconds,omitzero"`   // eccentric part
	HoursBetween  int                  `json:"hours_between,omitzero"`   // at least, between sessions of the same muscles
	BalanceDays   units.Range[int]     `json:"balance_days,omitzero"`    // days a week with balance training
	Exercises     units.Range[int]     `json:"exercises,omitzero"`       // per session
	PerMuscle     units.Range[int]     `json:"per_muscle,omitzero"`      // exercises per muscle group
	Minutes       units.Range[int]     `json:"session_minutes,omitzero"` // of a session
	Impacts       units.Range[int]     `json:"impacts,omitzero"`         // moderate impacts per session
	Weeks         units.Range[int]     `json:"weeks,omitzero"`           // of the whole programme
	Effects       []Effect             `json:"effects,omitempty"`
	Aerobic       units.Range[int]     `json:"aerobic_minutes,omitzero"` // minutes a week at moderate effort

	Notes  string            `json:"notes,omitzero"` // in our own words
	Source evidence.SourceID `json:"source"`
	Via    string            `json:"via,omitzero"` // where secondary fields were read
	Basis  evidence.Basis    `json:"basis"`        // of every field not in Bases
	Bases  []FieldBasis      `json:"bases,omitempty"`
	// SupersededBy names the same body's later word.
	SupersededBy []ID `json:"superseded_by,omitempty"`
}

// clinical reports whether r is for people with a condition.
func (r Recommendation) clinical() bool { return len(r.Conditions) > 0 }

// BasisOf returns how field f of r is known, and zero if r does not state it.
func (r Recommendation) BasisOf(f Field) evidence.Basis {
	if !r.states(f) {
		return 0
	}
	return r.basisOf(f)
}

// basisOf is BasisOf of a field that r states.
func (r *Recommendation) basisOf(f Field) evidence.Basis {
	for _, b := range r.Bases {
		if b.Field == f {
			return b.Basis
		}
	}
	return r.Basis
}
