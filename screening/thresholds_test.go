package screening_test

import (
	"slices"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
)

// TestDayThresholds holds each further threshold of the day at, just under and
// just over; the numbers are those of the digest.
func TestDayThresholds(t *testing.T) {
	weight := func(mass string, days int) screening.Check {
		return screening.Check{Weight: &screening.WeightGain{Mass: units.Must(units.ParseMass(mass)), Days: days}}
	}
	counts := func(platelets, haemoglobin int) screening.Check {
		return screening.Check{Counts: &screening.BloodCounts{Platelets: platelets, Haemoglobin: haemoglobin}}
	}
	lying := func(systolic, diastolic int) screening.Check {
		return screening.Check{Orthostatic: &screening.OrthostaticDrop{From: screening.Lying, HighLying: true, Systolic: systolic, Diastolic: diastolic}}
	}
	ketones := func(v float64) screening.Check {
		return screening.Check{Glucose: glucose("15 mmol/L"), BloodKetones: &v}
	}
	const high = "glucose_250_349_ketone_test_no_intense"
	for name, tt := range map[string]struct {
		c    screening.Check
		want []screening.Code
	}{
		"1.7 kg": {weight("1.7 kg", 3), nil}, "1.8 kg": {weight("1.8 kg", 3), []screening.Code{"hf_weight_gain"}}, "1.9 kg": {weight("1.9 kg", 1), []screening.Code{"hf_weight_gain"}},
		"4 days":   {weight("1.8 kg", 4), nil},
		"pulse 99": {screening.Check{SupinePulse: 99}, nil}, "pulse 100": {screening.Check{SupinePulse: 100}, []screening.Code{"hf_supine_hr"}}, "pulse 101": {screening.Check{SupinePulse: 101}, []screening.Code{"hf_supine_hr"}},
		"worse": {screening.Check{Worsening: screening.Yes}, []screening.Code{"hf_worsening"}},
		"88 %":  {screening.Check{SpO2: 88}, []screening.Code{"spo2_lt_89"}}, "89 %": {screening.Check{SpO2: 89}, []screening.Code{"spo2_lt_90"}}, "90 %": {screening.Check{SpO2: 90}, nil},
		"platelets 49": {counts(49, 0), []screening.Code{"platelets_lt_50"}}, "platelets 50": {counts(50, 0), nil}, "platelets 51": {counts(51, 0), nil},
		"haemoglobin 99": {counts(0, 99), []screening.Code{"haemoglobin_lt_100"}}, "haemoglobin 100": {counts(0, 100), nil}, "haemoglobin 101": {counts(0, 101), nil},
		"29 lying": {lying(29, 9), nil}, "30 lying": {lying(30, 0), []screening.Code{"orthostatic_hypotension"}}, "31 lying": {lying(31, 0), []screening.Code{"orthostatic_hypotension"}},
		"10 diastolic lying": {lying(0, 10), []screening.Code{"orthostatic_hypotension"}},
		"ketones 1.4":        {ketones(1.4), []screening.Code{high, "blood_ketones_lt_1_5"}}, "ketones 1.5": {ketones(1.5), []screening.Code{"ketones_moderate_or_large"}}, "ketones 1.6": {ketones(1.6), []screening.Code{"ketones_moderate_or_large"}},
	} {
		got := slices.Concat(screening.SessionDay(tt.c, screening.Profile{}).Reasons, screening.HeartFailure(tt.c, screening.Profile{}).Reasons)
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: %v, want %v", name, got, tt.want)
		}
	}
}

func TestHeartFailureLevels(t *testing.T) {
	if got := screening.HeartFailure(screening.Check{}, blank()).Level; got != 0 {
		t.Errorf("nothing given: %v", got)
	}
	if got := screening.HeartFailure(screening.Check{SupinePulse: 60}, blank()).Level; got != screening.NoContraindication {
		t.Errorf("a calm pulse: %v", got)
	}
	p := blank()
	for days, want := range map[units.Day]screening.ContraindicationLevel{20: screening.Absolute, 21: 0, 22: 0} {
		p.Events = []screening.Event{{Code: "heart_attack", Day: visit - days}}
		if got := screening.HeartFailure(screening.Check{}, p).Level; got != want {
			t.Errorf("heart attack %d days ago: %v, want %v", days, got, want)
		}
		if _, ok := finding(assess(t, p), "screening.after_mi_or_stroke"); !ok {
			t.Error("a heart attack asks for no rehabilitation")
		}
	}
	p = blank()
	p.Conditions = screening.AskedFor("new_atrial_fibrillation")
	o := assess(t, p)
	expect(t, o, screening.SameDay, screening.Nothing)
	if o.Rules.HeartFailure.Level != screening.Absolute {
		t.Errorf("new atrial fibrillation: %+v", o.Rules.HeartFailure)
	}
}

// TestVisitThresholds holds the examples of Willey 2003 and the counts.
func TestVisitThresholds(t *testing.T) {
	for v, want := range map[float64]bool{9.9: false, 10: false, 10.1: true} {
		p := blank()
		p.HbA1c = &v
		if got := slices.Contains(screening.WiderContraindications(p), "hba1c_gt_10"); got != want {
			t.Errorf("HbA1c %v: %v, want %v", v, got, want)
		}
	}
	for v, want := range map[int]bool{169: false, 170: false, 171: true} {
		p := blank()
		p.BP = pressure(v, 90)
		if got := slices.Contains(screening.WiderContraindications(p), "systolic_gt_170_untreated"); got != want {
			t.Errorf("%d untreated: %v, want %v", v, got, want)
		}
		p.Conditions = screening.AskedFor("hypertension_treated")
		if screening.WiderContraindications(p) != nil {
			t.Errorf("%d treated is on the list", v)
		}
	}
	for v, want := range map[int]screening.Intensity{159: 0, 160: 0, 161: screening.Light} {
		c := quiet()
		c.BP = pressure(v, 90) // above 160 moderate by the day's own caution, light by the list, on any day
		if got := mustToday(t, c, assess(t, blank())).Limits.MaxIntensity; got != want {
			t.Errorf("%d today: effort up to %v, want %v", v, got, want)
		}
	}
}

func TestCountsTriggered(t *testing.T) {
	for code, want := range map[screening.Code]bool{"blood_disease": true, "chemotherapy": true, "anticoagulant": false, "glaucoma": false} {
		p := blank()
		p.Conditions = screening.AskedFor(code)
		o := assess(t, p)
		if misses(o, "blood_counts") != want {
			t.Errorf("%s: counts asked %v, want %v", code, !want, want)
		}
		p.Counts = &screening.BloodCounts{Platelets: 50, Haemoglobin: 100}
		if o = assess(t, p); misses(o, "blood_counts") || o.Meanwhile != screening.WithinLimits {
			t.Errorf("%s with counts: %v, missing %v", code, o.Meanwhile, o.Missing)
		}
	}
}

func TestMeasureAgain(t *testing.T) {
	for name, tt := range map[string]struct {
		again   *screening.BloodPressure
		plan    screening.DayPlan
		missing bool
	}{
		"first only": {nil, screening.SettleFirst, true},
		"calmer":     {pressure(150, 90), screening.AsPlanned, false},
		"still high": {pressure(182, 104), screening.NotToday, false},
	} {
		c := quiet()
		c.BP, c.BPAgain = pressure(186, 102), tt.again
		o := mustToday(t, c, assess(t, blank()))
		if o.Plan != tt.plan || misses(o, "blood_pressure_again") != tt.missing {
			t.Errorf("%s: %v, missing %v; want %v, %v", name, o.Plan, o.Missing, tt.plan, tt.missing)
		}
		p := blank()
		p.BP, p.BPAgain = c.BP, tt.again
		if got := assess(t, p); misses(got, "blood_pressure_again") != tt.missing {
			t.Errorf("%s at the visit: missing %v", name, got.Missing)
		}
	}
	c := quiet()
	c.RestingPulse, c.RestingPulseAgain = 110, 100
	if got := mustToday(t, c, assess(t, blank())).Plan; got != screening.AsPlanned {
		t.Errorf("pulse calmer after a rest: %v", got)
	}
	c.RestingPulseAgain = 0
	o := mustToday(t, c, assess(t, blank()))
	f, ok := finding(o, "screening.hr_gt_100.again")
	if !ok || !f.Open || o.Plan != screening.SettleFirst {
		t.Errorf("one quick pulse: %v, %+v", o.Plan, f)
	}
}
