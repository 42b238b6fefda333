package screening

import (
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Check is what is asked and measured on the day of a session. What is nil or
// zero was not asked or measured.
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Check struct {
	Day          units.Day        `json:"day"`
	New          Checklist        `json:"new,omitzero"`     // symptoms and red flags since the last visit
	Setting      Setting          `json:"setting,omitzero"` // of the session; not given counts as alone
	Febrile      Answer           `json:"febrile,omitzero"` // feverish illness today
	Unwell       Answer           `json:"unwell,omitzero"`  // ill without fever
	Events       []Event          `json:"events,omitempty"` // since the assessment
	BP           *BloodPressure   `json:"bp,omitempty"`
	RestingPulse int              `json:"resting_pulse,omitzero"` // beats a minute; 0 is not measured
	Orthostatic  *OrthostaticDrop `json:"orthostatic_drop,omitempty"`

	BPAgain           *BloodPressure `json:"bp_again,omitempty"`           // after a rest; it counts in place of the first
	RestingPulseAgain int            `json:"resting_pulse_again,omitzero"` // likewise
	SpO2              int            `json:"spo2,omitzero"`                // oxygen saturation at rest, per cent
	SpO2Again         int            `json:"spo2_again,omitzero"`          // after a rest; it counts in place of the first
	Counts            *BloodCounts   `json:"blood_counts,omitempty"`

	// In chronic heart failure.
	Weight      *WeightGain `json:"weight_gain,omitempty"`
	Worsening   Answer      `json:"hf_worsening,omitzero"` // breath or stamina worse over 3 to 5 days
	SupinePulse int         `json:"supine_pulse,omitzero"` // lying at rest, beats a minute

	Glucose               Glucose `json:"glucose,omitzero"`
	GlucoseAgain          Glucose `json:"glucose_again,omitzero"` // a quarter of an hour after sugar for a low
	Ketones               Ketones `json:"ketones,omitzero"`
	InsulinOrSecretagogue Answer  `json:"insulin_or_secretagogue,omitzero"` // medicines that can cause a low
	SevereLow             Answer  `json:"severe_low_24h,omitzero"`          // a low in the last 24 h that needed help

	BloodKetones   *float64 `json:"blood_ketones,omitempty"`   // mmol/L, 0 to 20
	NoKetoneStrips bool     `json:"no_ketone_strips,omitzero"` // ketones cannot be tested here

	Pain         *Pain `json:"pain,omitempty"`         // of the last session, if there was one
	SorenessDays int   `json:"soreness_days,omitzero"` // for which muscles have been sore, 0 to 60
}

// Validate returns every bad field of c at once. The ranges are checks against
// slips, not clinical limits.
func (c Check) Validate() error {
	var bad field.Errors
	bad.Add("/day", c.Day.Check())
	bad.Add("/new", c.New.check(Symptom, RedFlag))
	bad.Add("/setting", given(settings, c.Setting))
	bad.Add("/febrile", given(answers, c.Febrile))
	bad.Add("/unwell", given(answers, c.Unwell))
	bad.Add("/events", checkEvents(c.Events, c.Day))
	bad.Add("", checkTwice(c.BP, c.BPAgain, c.RestingPulse, c.RestingPulseAgain))
	bad.Add("/spo2", checkSaturation(c.SpO2))
	bad.Refuse(c.SpO2Again != 0 && c.SpO2 == 0, "/spo2", nil, firstBeside, field.ErrMissing)
	bad.Add("/spo2_again", checkSaturation(c.SpO2Again))
	bad.Add("/blood_counts", c.Counts.check())
	bad.Add("/weight_gain", c.Weight.check())
	bad.Add("/hf_worsening", given(answers, c.Worsening))
	bad.Add("/supine_pulse", checkPulse(c.SupinePulse))
	if c.Orthostatic != nil {
		bad.Add("/orthostatic_drop", c.Orthostatic.check())
	}
	bad.Refuse(!c.GlucoseAgain.IsZero() && c.Glucose.IsZero(), "/glucose", nil, firstBeside, field.ErrMissing)
	bad.Add("/ketones", given(ketones, c.Ketones))
	bad.Add("/insulin_or_secretagogue", given(answers, c.InsulinOrSecretagogue))
	bad.Add("/severe_low_24h", given(answers, c.SevereLow))
	bad.Add("/blood_ketones", withinIfAny(c.BloodKetones, 0, 20, " mmol/L"))
	if c.Pain != nil {
		bad.Add("/pain", c.Pain.check())
	}
	bad.Add("/soreness_days", within(c.SorenessDays, 0, 60, " days"))
	return bad.Err()
}
