package screening_test

import (
	"errors"
	"slices"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func TestPressureBoundaries(t *testing.T) {
	// Williams 2007 (strictly above) beside HEIW (at or above).
	for _, tt := range []struct {
		sys, dia int
		aha      screening.ContraindicationLevel
		day      screening.DayPlan
	}{
		{159, 90, screening.NoContraindication, screening.AsPlanned},
		{160, 90, screening.NoContraindication, screening.AsPlanned},
		{161, 90, screening.Relative, screening.AsPlanned},
		{140, 99, screening.NoContraindication, screening.AsPlanned},
		{140, 100, screening.NoContraindication, screening.NotToday},
		{140, 101, screening.Relative, screening.NotToday},
		{140, 110, screening.Relative, screening.NotToday},
		{140, 111, screening.Absolute, screening.NotToday},
		{170, 90, screening.Relative, screening.AsPlanned},
		{171, 90, screening.Relative, screening.AsPlanned},
		{179, 90, screening.Relative, screening.AsPlanned},
		{180, 90, screening.Relative, screening.NotToday},
		{181, 90, screening.Absolute, screening.NotToday},
	} {
		p := blank()
		p.BP = pressure(tt.sys, tt.dia)
		if got := screening.Contraindications(p).Level; got != tt.aha {
			t.Errorf("Contraindications(%d/%d) = %v, want %v", tt.sys, tt.dia, got, tt.aha)
		}
		if got := screening.SessionDay(screening.Check{BP: p.BP}, p).Plan; got != tt.day {
			t.Errorf("SessionDay(%d/%d) = %v, want %v", tt.sys, tt.dia, got, tt.day)
		}
		want := screening.WithinLimits
		if tt.aha == screening.Relative {
			want = screening.LightSupervised
		}
		if tt.sys > 170 { // Willey 2003
			want = screening.UnloadedPractice
		}
		if tt.day == screening.NotToday || tt.aha == screening.Absolute {
			want = screening.Nothing
		}
		if got := assess(t, p).Meanwhile; got != want {
			t.Errorf("Assess(%d/%d) leaves %v, want %v", tt.sys, tt.dia, got, want)
		}
	}
}

func TestReadingBoundaries(t *testing.T) {
	p := blank()
	for beats, want := range map[int]screening.DayPlan{99: screening.AsPlanned, 100: screening.AsPlanned, 101: screening.NotToday} {
		if got := screening.SessionDay(screening.Check{RestingPulse: beats}, p).Plan; got != want {
			t.Errorf("pulse %d: %v, want %v", beats, got, want)
		}
	}
	for mets, want := range map[float64]screening.ContraindicationLevel{3.9: screening.Relative, 4.0: screening.NoContraindication, 4.1: screening.NoContraindication} {
		p.CapacityMETs = &mets
		if got := screening.Contraindications(p).Level; got != want {
			t.Errorf("%v METs: %v, want %v", mets, got, want)
		}
	}
	p.CapacityMETs = nil
	for pap, want := range map[int]screening.ContraindicationLevel{54: screening.NoContraindication, 55: screening.NoContraindication, 56: screening.Absolute} {
		p.MeanPAP = &pap
		if got := screening.Contraindications(p).Level; got != want {
			t.Errorf("PAP %d: %v, want %v", pap, got, want)
		}
	}
}

func TestOrthostaticBoundaries(t *testing.T) {
	for _, tt := range []struct {
		from     screening.Posture
		sys, dia int
		want     screening.DayPlan
	}{
		{screening.Lying, 19, 9, screening.AsPlanned}, {screening.Lying, 20, 0, screening.Lighter}, {screening.Lying, 0, 10, screening.Lighter}, {screening.Lying, 21, -5, screening.Lighter},
		{screening.Sitting, 14, 6, screening.AsPlanned}, {screening.Sitting, 15, 0, screening.Lighter}, {screening.Sitting, 0, 7, screening.Lighter}, {screening.Sitting, 16, 8, screening.Lighter},
	} {
		c := screening.Check{Orthostatic: &screening.OrthostaticDrop{From: tt.from, Systolic: tt.sys, Diastolic: tt.dia}}
		if got := screening.SessionDay(c, blank()).Plan; got != tt.want {
			t.Errorf("%v %d/%d: %v, want %v", tt.from, tt.sys, tt.dia, got, tt.want)
		}
	}
}

func TestGlucoseBoundaries(t *testing.T) {
	const (
		none, treat, eat     = "glucose_lt_52_or_severe_hypo_24h", "glucose_52_69_treat_first", "glucose_lt_90_carbohydrate_first"
		high, highest, begin = "glucose_250_349_ketone_test_no_intense", "glucose_ge_350_ketone_test", ""
	)
	// Turner 2019 and Colberg 2016, in the two units as printed.
	for text, want := range map[string]screening.Code{
		"51 mg/dL": none, "51.99 mg/dL": none, "52 mg/dL": treat, "53 mg/dL": treat, "69 mg/dL": treat, "69.9 mg/dL": treat, "70 mg/dL": eat,
		"89 mg/dL": eat, "90 mg/dL": begin, "91 mg/dL": begin, "150 mg/dL": begin, "249 mg/dL": begin, "249.5 mg/dL": begin,
		"250 mg/dL": high, "251 mg/dL": high, "349 mg/dL": high, "350 mg/dL": highest, "351 mg/dL": highest,
		"2.8 mmol/L": none, "2.89 mmol/L": none, "2.9 mmol/L": treat, "3.9 mmol/L": treat, "3.99 mmol/L": treat, "4.0 mmol/L": eat, "4 mmol/L": eat,
		"4.9 mmol/L": eat, "5.0 mmol/L": begin, "5.1 mmol/L": begin, "8.3 mmol/L": begin, "13.8 mmol/L": begin,
		"13.9 mmol/L": high, "14 mmol/L": high, "19.3 mmol/L": high, "19.4 mmol/L": highest, "19.5 mmol/L": highest,
	} {
		c := screening.Check{Glucose: glucose(text), InsulinOrSecretagogue: screening.Yes, SevereLow: screening.No, Ketones: screening.NoKetones}
		var reasons []screening.Code
		if want != begin {
			reasons = []screening.Code{want}
		}
		if got := screening.SessionDay(c, blank()); !slices.Equal(got.Reasons, reasons) {
			t.Errorf("%s: %v, want %v", text, got.Reasons, reasons)
		}
	}
	// Without such medicines nothing below 90 but what is low in itself.
	c := screening.Check{Glucose: glucose("82 mg/dL"), InsulinOrSecretagogue: screening.No}
	if got := screening.SessionDay(c, blank()).Plan; got != screening.AsPlanned {
		t.Errorf("82 mg/dL on diet alone: %v", got)
	}
	p := blank()
	p.Diseases = screening.AskedFor("diabetes_t1")
	if got := screening.SessionDay(c, p).Plan; got != screening.Lighter {
		t.Errorf("82 mg/dL in type 1 diabetes: %v", got)
	}
	if got := screening.SessionDay(screening.Check{SevereLow: screening.Yes}, p).Reasons; !slices.Equal(got, []screening.Code{none}) {
		t.Errorf("a low that needed help: %v", got)
	}
}

// A second reading, a quarter of an hour after sugar: Turner 2019 treats from 52 to 69 with
// 15 g, tests again, and after that lets nobody train alone. That all else that the first
// one stops stays stopped is our own choice.
func TestGlucoseAgain(t *testing.T) {
	const eat, up, treat, none = "glucose_lt_90_carbohydrate_first", "glucose_treated_lighter", "glucose_52_69_treat_first", "glucose_lt_52_or_severe_hypo_24h"
	for _, tt := range []struct {
		first, again string
		low          screening.Answer
		want         screening.Code
	}{
		{"60 mg/dL", "70 mg/dL", screening.No, eat}, {"60 mg/dL", "5.6 mmol/L", screening.No, up}, {"3.9 mmol/L", "120 mg/dL", screening.No, up},
		{"60 mg/dL", "69 mg/dL", screening.No, treat}, {"60 mg/dL", "51 mg/dL", screening.No, none}, {"51 mg/dL", "120 mg/dL", screening.No, none},
		{"60 mg/dL", "120 mg/dL", screening.Yes, none}, {"80 mg/dL", "120 mg/dL", screening.No, eat}, {"120 mg/dL", "60 mg/dL", screening.No, treat},
		{"60 mg/dL", "", screening.No, treat},
	} {
		c := quiet()
		c.Glucose, c.InsulinOrSecretagogue, c.SevereLow = glucose(tt.first), screening.Yes, tt.low
		if tt.again != "" {
			c.GlucoseAgain = glucose(tt.again)
		}
		if got := screening.SessionDay(c, blank()); !slices.Equal(got.Reasons, []screening.Code{tt.want}) {
			t.Errorf("%s, then %q: %v, want %v", tt.first, tt.again, got.Reasons, tt.want)
		}
		if o := mustToday(t, c, assess(t, blank())); (tt.want == eat || tt.want == up) && (o.Plan != screening.Lighter || o.Limits.LeastSetting != screening.WithHelper) {
			t.Errorf("%s, then %s: %v, %v", tt.first, tt.again, o.Plan, o.Limits.LeastSetting)
		}
	}
	c := screening.Check{Day: visit, GlucoseAgain: glucose("120 mg/dL")}
	if err := c.Validate(); !errors.Is(err, field.ErrMissing) {
		t.Errorf("a second reading alone: %v", err)
	}
	c.Glucose, c.GlucoseAgain, c.Ketones = glucose("60 mg/dL"), glucose("300 mg/dL"), screening.NoKetones
	if got := screening.SessionDay(c, blank()).Reasons; len(got) != 2 {
		t.Errorf("high after a low: %v", got)
	}
}

func TestKetoneBoundaries(t *testing.T) {
	for k, want := range map[screening.Ketones]screening.DayPlan{
		screening.NoKetones: screening.Lighter, screening.SmallKetones: screening.Lighter,
		screening.ModerateKetones: screening.NotToday, screening.LargeKetones: screening.NotToday,
	} {
		c := screening.Check{Glucose: glucose("250 mg/dL"), Ketones: k}
		if got := screening.SessionDay(c, blank()).Plan; got != want {
			t.Errorf("ketones %v: %v, want %v", k, got, want)
		}
	}
}

func TestPainBoundaries(t *testing.T) {
	for v, want := range map[float64]screening.DayPlan{4: screening.AsPlanned, 5: screening.AsPlanned, 5.5: screening.Lighter, 6: screening.Lighter} {
		for _, pain := range []screening.Pain{{During: score(v)}, {After: score(v)}} {
			if got := screening.SessionDay(screening.Check{Pain: &pain}, blank()).Plan; got != want {
				t.Errorf("pain %v: %v, want %v", v, got, want)
			}
		}
	}
	rising := screening.Check{Pain: &screening.Pain{WeeklyTrend: screening.RisingPain}}
	if got := screening.SessionDay(rising, blank()).Reasons; !slices.Equal(got, []screening.Code{"pain_rising_week_on_week_reduce"}) {
		t.Errorf("rising pain: %v", got)
	}
}

func TestRepairBoundaries(t *testing.T) {
	for days, early := range map[units.Day]bool{77: true, 83: true, 84: false, 85: false} { // 11 weeks, a day short of 12, 12 weeks
		p := blank()
		p.Conditions = screening.AskedFor("rotator_cuff_repair")
		p.Events = []screening.Event{{Code: "rotator_cuff_repair", Day: visit - days}}
		if got := len(screening.Cautions(p)) == 1; got != early {
			t.Errorf("%d days: caution %v, want %v", days, got, early)
		}
		if got := assess(t, p).Limits.Avoid.Has(body.ShoulderResisted); got != early {
			t.Errorf("%d days: shoulder spared %v, want %v", days, got, early)
		}
	}
}

func TestClearanceBoundaries(t *testing.T) {
	p := blank()
	p.Activity, p.Wanted = busy(), screening.Vigorous
	p.Diseases = screening.AskedFor("cardiac")
	for months, need := range map[int]screening.Need{11: screening.NotNeeded, 12: screening.NotNeeded, 13: screening.BeforeVigorous} {
		c := clearance("cardiac")
		c.Day, c.Expires = monthsAgo(t, months), visit+1000
		p.Clearances = []screening.Clearance{c}
		if got := screening.Preparticipation(p).Clearance; got != need {
			t.Errorf("%d months: %v, want %v", months, got, need)
		}
	}
	// To the day: 12 months and a day is not within 12 months.
	c := clearance("cardiac")
	c.Day = monthsAgo(t, 12) - 1
	p.Clearances = []screening.Clearance{c}
	if got := screening.Preparticipation(p).Clearance; got != screening.BeforeVigorous {
		t.Errorf("12 months and a day: %v", got)
	}
}

func TestActivityBoundaries(t *testing.T) {
	for name, change := range map[string]func(*screening.Activity){
		"two days":      func(a *screening.Activity) { a.DaysPerWeek = 2 },
		"29 minutes":    func(a *screening.Activity) { a.Minutes = 29 },
		"light":         func(a *screening.Activity) { a.Intensity = screening.Light },
		"two months":    func(a *screening.Activity) { a.Months = 2 },
		"no exercise":   func(a *screening.Activity) { a.Intensity = screening.Idle },
		"nothing worse": func(*screening.Activity) {},
	} {
		p := blank()
		p.Activity = busy()
		change(p.Activity)
		want := screening.N1
		if name == "nothing worse" {
			want = screening.A1
		}
		if got := screening.Preparticipation(p).Branch; got != want {
			t.Errorf("%s: %v, want %v", name, got, want)
		}
	}
	more := screening.Activity{DaysPerWeek: 4, Minutes: 31, Intensity: screening.Vigorous, Months: 4}
	p := blank()
	p.Activity = &more
	if got := screening.Preparticipation(p).Branch; got != screening.A1 {
		t.Errorf("above every threshold: %v", got)
	}
}

func TestRetinopathyBoundaries(t *testing.T) {
	for planned, want := range map[units.Fraction]screening.ContraindicationLevel{0: screening.Relative, 0.79: screening.Relative, 0.8: screening.Absolute, 0.81: screening.Absolute} {
		p := blank()
		p.Diseases = screening.AskedFor("diabetes_t2")
		p.Conditions = screening.AskedFor("npdr_moderate_or_worse")
		p.PlannedFraction = planned
		if got := screening.Contraindications(p).Level; got != want {
			t.Errorf("planned %v: %v, want %v", planned, got, want)
		}
		p.Clearances = []screening.Clearance{clearance("diabetes_t2")}
		p.Answers = map[screening.Code]screening.Answer{"insulin_or_secretagogue": screening.No}
		o := assess(t, p)
		if o.Meanwhile != screening.WithinLimits || o.Limits.MaxFraction != 0.79 || !o.Limits.NoBreathHolding {
			t.Errorf("planned %v: %v with %+v, want a cap below 80 %%", planned, o.Meanwhile, o.Limits)
		}
	}
}

// TestPreparticipationExhaustive compares every combination with the rule
// written out again.
func TestPreparticipationExhaustive(t *testing.T) {
	for i := range 2 * 2 * 2 * 4 * 4 {
		active, disease, symptoms := i&1 > 0, i&2 > 0, i&4 > 0
		wanted := []screening.Intensity{0, screening.Light, screening.Moderate, screening.Vigorous}[i>>3&3]
		months := []int{0, 12, 13, -1}[i>>5&3] // of clearance; -1: none
		p := blank()
		p.Wanted = wanted
		if active {
			p.Activity = busy()
		}
		if disease {
			p.Diseases = screening.AskedFor("diabetes_t1", "renal")
		}
		if symptoms {
			p.Symptoms = screening.AskedFor("known_heart_murmur")
		}
		if months >= 0 {
			c := clearance("diabetes_t1", "renal")
			c.Day = monthsAgo(t, months)
			p.Clearances = []screening.Clearance{c}
		}
		name := map[bool]string{true: "A", false: "N"}[active] + map[bool]string{true: "3", false: map[bool]string{true: "2", false: "1"}[disease]}[symptoms]
		need := map[string]screening.Need{"N1": screening.NotNeeded, "A1": screening.NotNeeded, "N2": screening.BeforeAny, "N3": screening.BeforeAny, "A3": screening.StopFirst}[name]
		if name == "A2" {
			switch {
			case months == 0 || months == 12 || wanted == screening.Light || wanted == screening.Moderate:
				need = screening.NotNeeded
			case wanted == screening.Vigorous:
				need = screening.BeforeVigorous
			}
		}
		got := screening.Preparticipation(p)
		if got.Branch.String() != name || got.Clearance != need {
			t.Errorf("active %v, disease %v, symptoms %v, wanted %v, clearance %d: %v %v, want %s %v", active, disease, symptoms, wanted, months, got.Branch, got.Clearance, name, need)
		}
	}
}
