package screening

import (
	"iter"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Intensity is a band of effort of the preparticipation rule.
type Intensity uint8

// Intensities, rising.
const (
	_        Intensity = iota // not given
	Idle                      // "none": no exercise
	Light                     // "light"
	Moderate                  // "moderate"
	Vigorous                  // "vigorous"
)

var intensities = field.NewVocabulary[Intensity]("intensity", "", "none", "light", "moderate", "vigorous")

// Intensities yields every intensity.
func Intensities() iter.Seq[Intensity] { return intensities.All() }

// String returns "none", "light", "moderate" or "vigorous", and "" for not given.
func (i Intensity) String() string { return intensities.Text(i) }

// MarshalText writes what String returns.
func (i Intensity) MarshalText() ([]byte, error) { return intensities.Marshal(i) }

// UnmarshalText reads what MarshalText writes.
func (i *Intensity) UnmarshalText(text []byte) error { return intensities.Unmarshal(text, i) }

// Activity is the planned exercise that the person has been doing.
type Activity struct {
	DaysPerWeek int       `json:"days_per_week"` // 0 to 7
	Minutes     int       `json:"minutes"`       // a day, 0 to 1440
	Intensity   Intensity `json:"intensity"`
	Months      int       `json:"months"` // for how long, 0 to 1440
}

// An Event is something that happened on a day: an operation, a fracture, a
// heart attack, a stroke, a stay in hospital, a fall, a new diagnosis, or what a
// dated condition names.
// It ends clearances given before it.
type Event struct {
	Code   Code        `json:"code"`
	Day    units.Day   `json:"day,omitzero"`    // not given counts as recent
	Region body.Region `json:"region,omitzero"` // of a fracture
	Side   body.Side   `json:"side,omitzero"`   // of a fracture, and of what is in an arm; not given is either side
}

// person is who was screened.
func (p *Profile) person() body.Person {
	return body.Person{Age: p.Age, Sex: p.Sex, Training: p.Training}
}

// A Profile is what is known of a person on the day of screening. What is nil,
// zero or not asked is unknown, which is not "no".
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Profile struct {
	Key        body.Key      `json:"key,omitzero"` // tells whose it is; empty in a file of one person
	Day        units.Day     `json:"day"`          // of the screening
	Age        body.Age      `json:"age"`
	Sex        body.Sex      `json:"sex,omitzero"`
	Training   body.Training `json:"training,omitzero"` // no dose without it
	Activity   *Activity     `json:"activity,omitempty"`
	Wanted     Intensity     `json:"wanted,omitzero"` // light, moderate or vigorous
	Diseases   Checklist     `json:"diseases,omitzero"`
	Symptoms   Checklist     `json:"symptoms,omitzero"`
	RedFlags   Checklist     `json:"red_flags,omitzero"`
	Setting    Setting       `json:"setting,omitzero"` // not given counts as alone
	Conditions Checklist     `json:"conditions,omitzero"`

	BP                *BloodPressure `json:"bp,omitempty"`                 // at rest
	RestingPulse      int            `json:"resting_pulse,omitzero"`       // beats a minute; 0 is not measured
	CapacityMETs      *float64       `json:"capacity_mets,omitempty"`      // functional capacity
	BPAgain           *BloodPressure `json:"bp_again,omitempty"`           // after a rest; it counts in place of the first
	RestingPulseAgain int            `json:"resting_pulse_again,omitzero"` // likewise
	HbA1c             *float64       `json:"hba1c,omitempty"`              // per cent, the latest
	Counts            *BloodCounts   `json:"blood_counts,omitempty"`       // the latest

	MeanPAP         *int           `json:"mean_pap,omitempty"`        // mean pulmonary artery pressure, mmHg
	PlannedFraction units.Fraction `json:"planned_fraction,omitzero"` // of the 1RM; 0 is not planned

	Falls        *FallsScreen    `json:"falls,omitempty"`
	HomeReadings []Code          `json:"home_readings,omitempty"` // that a clinician asked the person to take: see [Check]
	Sites        []Site          `json:"sites,omitempty"`         // where what is on the list of conditions is
	Events       []Event         `json:"events,omitempty"`
	Clearances   []Clearance     `json:"clearances,omitempty"`
	Restrictions []Restriction   `json:"restrictions,omitempty"`
	Answers      map[Code]Answer `json:"answers,omitempty"` // to questions of [Prompts] with yes and no
}
