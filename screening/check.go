package screening

import "example.org/posology/units"

// A Check is what is asked and measured on the day of a session. What is nil or
// zero was not asked or measured.
type Check struct {
	Day          units.Day        `json:"day"`
	New          Checklist        `json:"new,omitzero"`     // symptoms and red flags since the last visit
	Setting      Setting          `json:"setting,omitzero"` // of the session; not given counts as alone
	Febrile      Answer           `json:"febrile,omitzero"` // feverish illness today
	BP           *BloodPressure   `json:"bp,omitempty"`
	RestingPulse int              `json:"resting_pulse,omitzero"` // beats a minute; 0 is not measured
	Orthostatic  *OrthostaticDrop `json:"orthostatic_drop,omitempty"`

	Glucose               Glucose `json:"glucose,omitzero"`
	Ketones               Ketones `json:"ketones,omitzero"`
	InsulinOrSecretagogue Answer  `json:"insulin_or_secretagogue,omitzero"` // medicines that can cause a low
	SevereLow             Answer  `json:"severe_low_24h,omitzero"`          // a low in the last 24 h that needed help

	Pain *Pain `json:"pain,omitempty"` // of the last session, if there was one
}

// UnmarshalJSON is strict: unknown fields and fields given twice are errors.
func (c *Check) UnmarshalJSON(data []byte) error {
	type plain Check
	return units.DecodeJSON(data, (*plain)(c))
}

// Validate returns every bad field of c at once. The ranges are checks against
// slips, not clinical limits.
func (c Check) Validate() error {
	var bad units.FieldErrors
	bad.Add("/day", c.Day.Check())
	bad.Add("/new", c.New.check(Symptom, RedFlag))
	bad.Add("/setting", given(settings, c.Setting))
	bad.Add("/febrile", given(answers, c.Febrile))
	bad.Add("/bp", c.BP.check())
	bad.Add("/resting_pulse", checkPulse(c.RestingPulse))
	if c.Orthostatic != nil {
		bad.Add("/orthostatic_drop", c.Orthostatic.check())
	}
	bad.Add("/ketones", given(ketones, c.Ketones))
	bad.Add("/insulin_or_secretagogue", given(answers, c.InsulinOrSecretagogue))
	bad.Add("/severe_low_24h", given(answers, c.SevereLow))
	if c.Pain != nil {
		bad.Add("/pain", c.Pain.check())
	}
	return bad.Err()
}
