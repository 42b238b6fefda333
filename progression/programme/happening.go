package programme

import (
	"fmt"
	"iter"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/progression/internal/given"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// HappeningKind is what happened to a person or changed.
type HappeningKind uint8

// Kinds. The first seven are the happenings of screening, which end clearances,
// estimates and the plan.
const (
	_               HappeningKind = iota // not given
	Operation                            // "operation"
	Fracture                             // "fracture"
	HeartAttack                          // "heart attack"
	Stroke                               // "stroke"
	HospitalStay                         // "hospital stay"
	Fall                                 // "fall"
	NewDiagnosis                         // "new diagnosis"
	Injury                               // "injury": other than a fracture
	PainFlare                            // "pain flare": more pain than the person is used to
	Faint                                // "faint": or nearly
	NewSymptom                           // "new symptom": any other
	MedicineChanged                      // "medicine changed": begun, ended, or another dose
	OtherHappening                       // "other"
	HeadKnock                            // "knock on the head": as in a fall
)

var happeningKinds = field.NewVocabulary[HappeningKind]("kind", "", "operation", "fracture", "heart attack", "stroke", "hospital stay", "fall", "new diagnosis",
	"injury", "pain flare", "faint", "new symptom", "medicine changed", "other", "knock on the head")

// HappeningKinds yields every kind of happening.
func HappeningKinds() iter.Seq[HappeningKind] { return happeningKinds.All() }

// String returns the kind's name, such as "pain flare", and "" for not given.
func (k HappeningKind) String() string { return happeningKinds.Text(k) }

// check returns nil if k is given.
func (k HappeningKind) check() error { return happeningKinds.Check("", k) }

// MarshalText writes what String returns.
func (k HappeningKind) MarshalText() ([]byte, error) { return happeningKinds.Marshal(k) }

// UnmarshalText reads what MarshalText writes.
func (k *HappeningKind) UnmarshalText(text []byte) error { return happeningKinds.Unmarshal(text, k) }

// Code returns screening's code of the kind, and false for a kind that is no
// event there.
func (k HappeningKind) Code() (screening.Code, bool) {
	if k == 0 || k > NewDiagnosis {
		return "", false
	}
	return screening.Code(strings.ReplaceAll(k.String(), " ", "_")), true
}

// A Happening is an adverse event, or a change of medicine or health, as it was
// told.
type Happening struct {
	Kind HappeningKind `json:"kind"`
	Day  units.Day     `json:"day,omitzero"` // not given counts as after the last assessment
	// Unassessed says that the last assessment had not heard of it: yes of what
	// came to light later; no of what was told there. Not known, the day decides.
	Unassessed screening.Answer `json:"unassessed,omitzero"`
	// Related says whether training may have brought it about; where that is not
	// known, the dose is looked at too.
	Related screening.Answer `json:"related,omitzero"`
	// Reviewed is who looked at it since, and when. It does not stand for the
	// assessment that an event asks for.
	Reviewed dose.Observation `json:"reviewed,omitzero"`
	Note     string           `json:"note,omitzero"` // for people to read
}

// Validate returns every bad field of h at once: a kind that is not given, days
// outside the calendar, a review before the day itself, and values outside their enumeration.
func (h Happening) Validate() error {
	var bad field.Errors
	bad.Add("/kind", h.Kind.check())
	bad.Add("/day", given.UpTo(h.Day, 0))
	bad.Add("/unassessed", given.OrNone(h.Unassessed))
	bad.Add("/related", given.OrNone(h.Related))
	bad.Add("/reviewed/day", given.UpTo(h.Reviewed.Day, 0))
	bad.Refuse(h.Reviewed.Day > 0 && h.Reviewed.Day < h.Day, "/reviewed/day", h.Reviewed.Day, "the day of the happening or later", field.ErrConflict)
	return bad.Err()
}

// Event returns h as the event that a profile or a day's check of screening
// takes, and false for a kind that is no event there: a faint or another new
// symptom stands in [screening.Check] by its own code.
func (h Happening) Event() (screening.Event, bool) {
	code, ok := h.Kind.Code()
	if !ok {
		return screening.Event{}, false
	}
	return screening.Event{Code: code, Day: h.Day}, true
}

// Happenings are what a person told, and when the person was last asked.
type Happenings struct {
	Asked units.Day   `json:"asked,omitzero"` // before today counts as not asked
	List  []Happening `json:"list,omitempty"` // in any order
}

// Validate returns every bad field of h at once: days outside the calendar and
// what [Happening.Validate] finds.
func (h Happenings) Validate() error {
	var bad field.Errors
	bad.Add("/asked", given.UpTo(h.Asked, 0))
	for i, one := range h.List {
		bad.Add(fmt.Sprintf("/list/%d", i), one.Validate())
	}
	return bad.Err()
}

// checkDays refuses what lies after today, and what an assessment is said to
// have heard of before it happened, besides what is bad by itself.
func (h Happenings) checkDays(assessed, today units.Day) error {
	var bad field.Errors
	bad.Add("", h.Validate())
	if len(bad) > 0 || today.Check() != nil {
		return bad.Err()
	}
	bad.Add("/asked", given.UpTo(h.Asked, today))
	for i, one := range h.List {
		path := fmt.Sprintf("/list/%d", i)
		bad.Add(path+"/day", given.UpTo(one.Day, today))
		bad.Add(path+"/reviewed/day", given.UpTo(one.Reviewed.Day, today))
		if one.Day > assessed && one.Unassessed == screening.No {
			bad.Add(path+"/unassessed", field.Bad(one.Unassessed, "yes or unknown of a day after the assessment", field.ErrConflict))
		}
	}
	return bad.Err()
}
