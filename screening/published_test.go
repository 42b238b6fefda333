package screening_test

import (
	"fmt"
	"slices"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// caseInputs is the vocabulary of screening-cases.csv.
type caseInputs struct {
	Age      body.Age `json:"age"`
	Sex      string   `json:"sex"`
	Activity *struct {
		DaysPerWeek int                 `json:"days_per_week"`
		Minutes     int                 `json:"minutes"`
		Intensity   screening.Intensity `json:"intensity"`
		Months      int                 `json:"months"`
	} `json:"activity"`
	KnownDisease          []screening.Code    `json:"known_disease"`
	Symptoms              []screening.Code    `json:"symptoms"`
	DesiredIntensity      screening.Intensity `json:"desired_intensity"`
	ClearanceMonthsAgo    *int                `json:"clearance_months_ago"`
	BP                    []int               `json:"bp"`
	HRRest                int                 `json:"hr_rest"`
	Conditions            []screening.Code    `json:"conditions"`
	PlannedPercent        float64             `json:"planned_pct_1rm"`
	CapacityMETs          *float64            `json:"capacity_mets"`
	MeanPAP               *int                `json:"mean_pap_mmHg"`
	InsulinOrSecretagogue *bool               `json:"insulin_or_secretagogue"`
	GlucoseMgDL           *float64            `json:"glucose_mg_dl"`
	Ketones               screening.Ketones   `json:"ketones"`
	OrthostaticDrop       *struct {
		From screening.Posture `json:"from"`
		Sys  int               `json:"sys"`
		Dia  int               `json:"dia"`
	} `json:"orthostatic_drop"`
	Febrile *bool `json:"febrile"`
	Pain    *struct {
		During             *float64        `json:"during"`
		After              *float64        `json:"after"`
		SettledNextMorning *bool           `json:"settled_next_morning"`
		WeeklyTrend        screening.Trend `json:"weekly_trend"`
	} `json:"pain"`
	WeeksPostOp *int             `json:"weeks_post_op"`
	RedFlags    []screening.Code `json:"red_flags"`
}

type caseAnswers struct {
	Branch     screening.Branch                `json:"acsm_branch"`
	Clearance  screening.Need                  `json:"acsm_clearance"`
	AHA        screening.ContraindicationLevel `json:"aha2007"`
	AHAReasons []screening.Code                `json:"aha2007_reasons"`
	Day        screening.DayPlan               `json:"session_day_rules"`
	DayReasons []screening.Code                `json:"session_day_reasons"`
	RedFlag    screening.Referral              `json:"red_flag"`
	Cautions   []screening.Code                `json:"cautions"`
}

func answer(b *bool) screening.Answer {
	switch {
	case b == nil:
		return screening.Unknown
	case *b:
		return screening.Yes
	}
	return screening.No
}

var visit = units.Must(units.ParseDay("2026-11-25"))

// monthsAgo is the day of the visit n months earlier; the 25th exists in all.
func monthsAgo(t *testing.T, n int) units.Day {
	t.Helper()
	y, m, d := visit.Date()
	total := y*12 + int(m) - 1 - n
	day, err := units.NewDay(total/12, time.Month(total%12+1), d)
	if err != nil {
		t.Fatal(err)
	}
	return day
}

func (in caseInputs) profile(t *testing.T) (screening.Profile, screening.Check) {
	t.Helper()
	p := screening.Profile{
		Day: visit, Age: in.Age, Wanted: in.DesiredIntensity,
		Sex:        map[string]body.Sex{"F": body.Female, "M": body.Male}[in.Sex],
		Diseases:   screening.AskedFor(in.KnownDisease...),
		Symptoms:   screening.AskedFor(in.Symptoms...),
		Conditions: screening.AskedFor(in.Conditions...),
		RedFlags:   screening.AskedFor(in.RedFlags...),

		RestingPulse: in.HRRest, CapacityMETs: in.CapacityMETs, MeanPAP: in.MeanPAP,
		PlannedFraction: units.Fraction(in.PlannedPercent / 100),
	}
	c := screening.Check{
		Day: visit, RestingPulse: in.HRRest, Ketones: in.Ketones,
		Febrile: answer(in.Febrile), InsulinOrSecretagogue: answer(in.InsulinOrSecretagogue),
	}
	if a := in.Activity; a != nil {
		p.Activity = &screening.Activity{DaysPerWeek: a.DaysPerWeek, Minutes: a.Minutes, Intensity: a.Intensity, Months: a.Months}
	}
	if len(in.BP) == 2 {
		p.BP = &screening.BloodPressure{Systolic: in.BP[0], Diastolic: in.BP[1]}
		c.BP = p.BP
	}
	if n := in.ClearanceMonthsAgo; n != nil {
		p.Clearances = []screening.Clearance{{Who: "doctor A", Day: monthsAgo(t, *n), Scope: in.KnownDisease, Intensity: screening.Vigorous}}
	}
	if n := in.WeeksPostOp; n != nil && len(in.Conditions) > 0 {
		p.Events = []screening.Event{{Code: in.Conditions[0], Day: visit - units.Day(7**n)}}
	}
	if g := in.GlucoseMgDL; g != nil {
		c.Glucose = units.Must(screening.ParseGlucose(fmt.Sprintf("%v mg/dL", *g)))
	}
	if o := in.OrthostaticDrop; o != nil {
		c.Orthostatic = &screening.OrthostaticDrop{From: o.From, Systolic: o.Sys, Diastolic: o.Dia}
	}
	if pain := in.Pain; pain != nil {
		c.Pain = &screening.Pain{During: pain.During, After: pain.After, SettledNextMorning: answer(pain.SettledNextMorning), WeeklyTrend: pain.WeeklyTrend}
	}
	return p, c
}

func sorted(codes []screening.Code) []screening.Code {
	codes = append([]screening.Code{}, codes...)
	slices.Sort(codes)
	return codes
}

// TestCases walks screening-cases.csv: every rule's own answer, field by field.
func TestCases(t *testing.T) {
	_, rows := fieldtest.Table(t, "../testdata/published/screening-cases.csv", ',')
	if len(rows) != 26 {
		t.Fatalf("%d rows, want 26", len(rows))
	}
	for _, row := range rows {
		t.Run(row[0], func(t *testing.T) {
			var in caseInputs
			var want caseAnswers
			if err := field.Decode([]byte(row[1]), &in, field.Strict); err != nil {
				t.Fatal(err)
			}
			if err := field.Decode([]byte(row[2]), &want, field.Strict); err != nil {
				t.Fatal(err)
			}
			p, c := in.profile(t)
			if err := p.Validate(); err != nil {
				t.Fatal(err)
			}
			if err := c.Validate(); err != nil {
				t.Fatal(err)
			}
			pre, aha, day := screening.Preparticipation(p), screening.Contraindications(p), screening.SessionDay(c, p)
			got := caseAnswers{
				pre.Branch, pre.Clearance, aha.Level, sorted(aha.Reasons), day.Plan, sorted(day.Reasons),
				screening.RedFlags(p), sorted(screening.Cautions(p)),
			}
			want.AHAReasons, want.DayReasons, want.Cautions = sorted(want.AHAReasons), sorted(want.DayReasons), sorted(want.Cautions)
			if diff := cmp.Diff(want, got); diff != "" {
				t.Errorf("%s (-published +ours):\n%s", row[3], diff)
			}
			checkAssessable(t, p)
		})
	}
}

// checkAssessable holds that the joined outcome shows the rules' own answers.
func checkAssessable(t *testing.T, p screening.Profile) {
	t.Helper()
	o, err := screening.Assess(p)
	if err != nil {
		t.Fatal(err)
	}
	if !o.Screened() {
		t.Error("Assess returned an outcome that is not screened")
	}
	if o.Rules.Preparticipation != screening.Preparticipation(p) || o.Rules.RedFlags != screening.RedFlags(p) {
		t.Errorf("Rules = %+v do not show each rule's own answer", o.Rules)
	}
}
