package choice

import (
	"iter"
	"slices"

	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// Concern is what screening found, as far as it bears on which exercises are
// chosen: "hip", "knee", "spine", "bone", "frailty", "falls" or "diabetes". It is
// no diagnosis: what binds a dose are the limits of the outcome.
type Concern uint8

// Concerns.
const (
	_        Concern = iota // not given
	hip                     // "hip"
	knee                    // "knee"
	spine                   // "spine": a broken vertebra
	bone                    // "bone": of low density
	frailty                 // "frailty"
	falls                   // "falls": or not steady
	diabetes                // "diabetes"
)

var concerns = field.NewVocabulary[Concern]("concern", "", "hip", "knee", "spine", "bone", "frailty", "falls", "diabetes")

// Concerns yields every concern.
func Concerns() iter.Seq[Concern] { return concerns.All() }

// String returns the concern's name, such as "hip".
func (c Concern) String() string { return concerns.Text(c) }

// MarshalText writes what String returns.
func (c Concern) MarshalText() ([]byte, error) { return concerns.Marshal(c) }

// UnmarshalText reads what MarshalText writes.
func (c *Concern) UnmarshalText(text []byte) error { return concerns.Unmarshal(text, c) }

// ofCodes is the one table from the codes of screening's findings to concerns.
var ofCodes = map[screening.Code][]Concern{
	"total_hip_replacement": {hip}, "osteoarthritis_hip": {hip}, "hip_fracture": {hip, falls},
	"total_knee_replacement": {knee}, "osteoarthritis_knee": {knee},

	"vertebral_fracture":                   {spine, bone},
	"osteoporosis_with_vertebral_fracture": {spine, bone},
	"osteoporosis":                         {bone}, "spine_not_seen": {bone},
	"osteoporosis_uk":        {bone},
	"osteoporosis_essa":      {bone},
	"osteoporosis_essa_dose": {bone},

	"frailty": {frailty}, "frailty_dose": {frailty},
	"cfs_level_5": {frailty}, "cfs_level_6": {frailty}, "cfs_level_7": {frailty}, "cfs_level_8": {frailty}, "cfs_level_9": {frailty},

	"dizziness_on_standing": {falls}, "dizziness_spinning": {falls}, "poor_sight": {falls},
	"falls_risk": {falls}, "parkinsons": {falls}, "vertigo": {falls}, "autonomic_neuropathy_postural_hypotension": {falls},

	"diabetes": {diabetes}, "diabetes_t1": {diabetes}, "diabetes_t2": {diabetes},
	"nephropathy": {diabetes}, "npdr_moderate_or_worse": {diabetes}, "diabetic_retinopathy_severe": {diabetes},
}

// concernsOf returns what the findings come to, each once, in the order of
// [Concerns]. What is only not known counts as if it were so.
func concernsOf(o screening.Outcome) []Concern {
	var list []Concern
	for _, f := range o.Findings {
		list = append(list, ofCodes[f.Code]...)
	}
	slices.Sort(list)
	return slices.Compact(list)
}
