package interview

import (
	"slices"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// Who has no strip may tell the number that a meter shows; a strip that was told is enough.
func TestKetonesAsANumber(t *testing.T) {
	sugar := map[string]string{"diseases": "diabetes_t1", "insulin_or_secretagogue": "yes", "retinopathy_moderate_or_worse": "no", "today": "yes", "setting_today": "in a group", "glucose": "20 mmol/L", "ketones": "small"}
	if _, keys := walk(t, well(sugar)); slices.Contains(keys, "blood_ketones") {
		t.Errorf("asked beside a strip: %v", keys)
	}
	delete(sugar, "ketones")
	sugar["blood_ketones"] = "0,4 mmol/L"
	i, keys := walk(t, well(sugar))
	if c := i.Check(); !slices.Contains(keys, "blood_ketones") || c.BloodKetones == nil || *c.BloodKetones != 0.4 {
		t.Errorf("%v, %+v", keys, c)
	}
	sugar["blood_ketones"] = unknown
	j, _ := walk(t, well(sugar))
	if a, b := outcome(t, i), outcome(t, j); b.Meanwhile < a.Meanwhile || b.Plan < a.Plan {
		t.Errorf("not known lets more go on: %v, %v", a.Plan, b.Plan)
	}
	for before := i; ; {
		before, _ = before.Back()
		if q, _ := before.Next(); q.Key != "blood_ketones" {
			continue
		}
		for text, want := range map[string]struct {
			path string
			err  error
		}{"25": {"/check/blood_ketones", field.ErrOutOfRange}, "5 mg/dL": {"/blood_ketones", field.ErrSyntax}, "NaN": {"/check/blood_ketones", field.ErrOutOfRange}, "1.4": {}} {
			_, err := before.Answer("blood_ketones", Reply{Text: text})
			checkError(t, text, err, want.err, want.path)
		}
		return
	}
}

// The day's company is told of the day: more of it loosens nothing of the assessment, with less,
// or if it is not told, the assessment is for that.
func TestCompanyOfTheDay(t *testing.T) {
	at := func(usual, today string) Interview {
		i, keys := walk(t, well(map[string]string{"setting": usual, "setting_today": today, "areas": "nerves", "nerves": "falls_risk", "today": "yes"}))
		if !slices.Contains(keys, "setting_today") {
			t.Fatal(keys)
		}
		accepted(t, i)
		return i
	}
	for _, tt := range []struct {
		usual, today string
		assessed, is screening.Setting
	}{
		{"alone", "in a clinic", screening.Alone, screening.InClinic}, {"in a group", "alone", screening.Alone, screening.Alone},
		{"in a group", unknown, screening.Alone, 0}, {"in a group", "in a group", screening.InGroup, screening.InGroup},
	} {
		i := at(tt.usual, tt.today)
		if p, c := i.Profile(), i.Check(); p.Setting != tt.assessed || c.Setting != tt.is {
			t.Errorf("%s, %s: %v, %v", tt.usual, tt.today, p.Setting, c.Setting)
		}
		if o, alone := outcome(t, i), outcome(t, at("alone", "alone")); tt.assessed == screening.Alone && !o.Limits.AsTightAs(alone.Limits) && tt.is == screening.Alone {
			t.Errorf("%s, %s: looser than alone", tt.usual, tt.today)
		}
	}
}
