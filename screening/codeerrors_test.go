package screening_test

import (
	"strings"
	"testing"

	"example.org/posology/screening"
)

// Who types a word for a code is told which codes have that word, in words.
func TestUnknownCodesSuggest(t *testing.T) {
	for _, tt := range []struct {
		set  func(*screening.Profile, screening.Checklist)
		code screening.Code
		want string
	}{
		{symptomsOf, "chest_pain", "the code of a symptom, as Codes lists them; did you mean ischaemic_chest_neck_jaw_arm_pain"},
		{conditionsOf, "high_blood_pressure", "; did you mean uncontrolled_hypertension, "},
		{conditionsOf, "osteoporosys", "the code of a condition, as Codes lists them; did you mean osteoporosis"},
		{conditionsOf, "hip_replacement", "; did you mean total_hip_replacement, "},
		{conditionsOf, "zumba", "the code of a condition, as Codes lists them"},
		{flagsOf, "stroke", "the code of a red flag, as Codes lists them; did you mean stroke_signs"},
	} {
		p := blank()
		tt.set(&p, screening.AskedFor(tt.code))
		err := p.Validate()
		if err == nil || !strings.Contains(err.Error(), tt.want) || strings.Contains(err.Error(), "[") {
			t.Errorf("%s: %v, want %q", tt.code, err, tt.want)
		}
	}
	p := blank()
	p.HomeReadings = []screening.Code{"temperature"}
	p.Events = []screening.Event{{Code: "fall_indoors"}}
	for _, want := range []string{"allowed: blood_pressure, resting_pulse, ", "did you mean fall"} {
		if err := p.Validate(); err == nil || !strings.Contains(err.Error(), want) || strings.ContainsAny(err.Error(), "[]") {
			t.Errorf("%v, want %q", err, want)
		}
	}
}

func symptomsOf(p *screening.Profile, c screening.Checklist)   { p.Symptoms = c }
func conditionsOf(p *screening.Profile, c screening.Checklist) { p.Conditions = c }
func flagsOf(p *screening.Profile, c screening.Checklist)      { p.RedFlags = c }
