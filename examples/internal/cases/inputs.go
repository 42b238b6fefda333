package cases

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// inputs is the vocabulary of the column of that name.
type inputs struct {
	Age                   *body.Age           `json:"age"`
	Sex                   sex                 `json:"sex"`
	Activity              *activity           `json:"activity"`
	KnownDisease          []screening.Code    `json:"known_disease"`
	Symptoms              []screening.Code    `json:"symptoms"`
	DesiredIntensity      screening.Intensity `json:"desired_intensity"`
	ClearanceMonthsAgo    *int                `json:"clearance_months_ago"`
	BP                    *[2]int             `json:"bp"`
	HRRest                *int                `json:"hr_rest"`
	Conditions            []screening.Code    `json:"conditions"`
	PlannedPercent        *float64            `json:"planned_pct_1rm"`
	CapacityMETs          *float64            `json:"capacity_mets"`
	MeanPAP               *int                `json:"mean_pap_mmHg"`
	InsulinOrSecretagogue *bool               `json:"insulin_or_secretagogue"`
	GlucoseMgDL           *float64            `json:"glucose_mg_dl"`
	Ketones               screening.Ketones   `json:"ketones"`
	OrthostaticDrop       *drop               `json:"orthostatic_drop"`
	Febrile               *bool               `json:"febrile"`
	Pain                  *pain               `json:"pain"`
	WeeksPostOp           *int                `json:"weeks_post_op"`
	RedFlags              []screening.Code    `json:"red_flags"`
}

// sex is written by one letter in a table.
type sex struct{ body.Sex }

var sexes = map[string]body.Sex{"": 0, "F": body.Female, "M": body.Male}

// UnmarshalText reads "F" or "M".
func (s *sex) UnmarshalText(text []byte) error {
	known, ok := sexes[string(text)]
	if !ok {
		return field.Bad(fmt.Sprintf("%.20q", text), "F or M", field.ErrUnknown)
	}
	s.Sex = known
	return nil
}

type activity struct {
	DaysPerWeek int                 `json:"days_per_week"`
	Minutes     int                 `json:"minutes"`
	Intensity   screening.Intensity `json:"intensity"` // left out: none that counts
	Months      int                 `json:"months"`
}

func (a *activity) translate() *screening.Activity {
	if a == nil {
		return nil
	}
	return &screening.Activity{DaysPerWeek: a.DaysPerWeek, Minutes: a.Minutes, Intensity: max(a.Intensity, screening.Idle), Months: a.Months}
}

type drop struct {
	From screening.Posture `json:"from"`
	Sys  int               `json:"sys"`
	Dia  int               `json:"dia"`
}

type pain struct {
	During             *float64        `json:"during"`
	After              *float64        `json:"after"`
	SettledNextMorning *bool           `json:"settled_next_morning"`
	WeeklyTrend        screening.Trend `json:"weekly_trend"`
}

// visit is the day on which every case is seen; only spans of time matter.
var visit = units.Must(units.ParseDay("2026-11-25"))

// anyAge stands for an age that was left out: no published rule asks for it.
const anyAge body.Age = 65

// operations are the conditions whose weeks a row may count.
var operations = []screening.Code{"total_knee_replacement", "total_hip_replacement", "shoulder_replacement", "rotator_cuff_repair"}

// translate returns the case in the library's own types, with every bad field
// named as in the table.
func (in inputs) translate() (screening.Profile, screening.Check, error) {
	var bad field.Errors
	p := screening.Profile{
		Day: visit, Age: anyAge, Sex: in.Sex.Sex, Activity: in.Activity.translate(), Wanted: in.DesiredIntensity,
		Diseases: screening.AskedFor(in.KnownDisease...), Symptoms: screening.AskedFor(in.Symptoms...),
		Conditions: screening.AskedFor(in.Conditions...), RedFlags: screening.AskedFor(in.RedFlags...),
		CapacityMETs: in.CapacityMETs, MeanPAP: in.MeanPAP,
	}
	c := screening.Check{Day: visit, Ketones: in.Ketones, Febrile: answer(in.Febrile), InsulinOrSecretagogue: answer(in.InsulinOrSecretagogue)}
	if in.Age != nil {
		p.Age = *in.Age
	}
	if in.BP != nil {
		p.BP = &screening.BloodPressure{Systolic: in.BP[0], Diastolic: in.BP[1]}
	}
	if in.HRRest != nil {
		p.RestingPulse = *in.HRRest
		bad.Add("/hr_rest", measured(*in.HRRest))
	}
	c.BP, c.RestingPulse = p.BP, p.RestingPulse
	if in.PlannedPercent != nil {
		p.PlannedFraction = units.Fraction(*in.PlannedPercent / 100)
	}
	if in.GlucoseMgDL != nil {
		g, err := screening.ParseGlucose(strconv.FormatFloat(*in.GlucoseMgDL, 'f', -1, 64) + " mg/dL")
		bad.Add("/glucose_mg_dl", err)
		c.Glucose = g
	}
	if o := in.OrthostaticDrop; o != nil {
		c.Orthostatic = &screening.OrthostaticDrop{From: o.From, Systolic: o.Sys, Diastolic: o.Dia}
	}
	if r := in.Pain; r != nil {
		c.Pain = &screening.Pain{During: r.During, After: r.After, SettledNextMorning: answer(r.SettledNextMorning), WeeklyTrend: r.WeeklyTrend}
	}
	bad.Add("/clearance_months_ago", in.clearance(&p))
	bad.Add("/weeks_post_op", in.operation(&p))
	bad.Add("", tableNames(p.Validate()))
	// What the check shares with the profile has been looked at already.
	own := c
	own.BP, own.RestingPulse = nil, 0
	bad.Add("", tableNames(own.Validate()))
	return p, c, bad.Err()
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

// measured refuses zero, which the library reads as not measured.
func measured(pulse int) error {
	if pulse == 0 {
		return field.Bad(0, "20 to 250 beats a minute; left out if not measured", field.ErrOutOfRange)
	}
	return nil
}

// clearance adds the clearance that a row gives: for every known disease, for
// any effort, and by the format's own words "unchanged since".
func (in inputs) clearance(p *screening.Profile) error {
	if in.ClearanceMonthsAgo == nil {
		return nil
	}
	day, err := monthsBefore(*in.ClearanceMonthsAgo)
	p.Clearances = []screening.Clearance{{Who: "a doctor", Day: day, Scope: in.KnownDisease, Intensity: screening.Vigorous}}
	return err
}

// monthsBefore is the day of the visit n months earlier; the 25th exists in all.
func monthsBefore(n int) (units.Day, error) {
	const most = 1200
	if n < 0 || n > most {
		return 0, field.Bad(n, fmt.Sprintf("0 to %d months", most), field.ErrOutOfRange)
	}
	y, m, d := visit.Date()
	months := 12*y + int(m) - 1 - n
	return units.NewDay(months/12, time.Month(months%12+1), d)
}

// operation dates the operations that the row names.
func (in inputs) operation(p *screening.Profile) error {
	if in.WeeksPostOp == nil {
		return nil
	}
	const most = 5200
	if *in.WeeksPostOp < 0 || *in.WeeksPostOp > most {
		return field.Bad(*in.WeeksPostOp, fmt.Sprintf("0 to %d weeks", most), field.ErrOutOfRange)
	}
	day, err := visit.Plus(-7 * *in.WeeksPostOp)
	for _, code := range operations {
		if slices.Contains(in.Conditions, code) {
			p.Events = append(p.Events, screening.Event{Code: code, Day: day})
		}
	}
	if len(p.Events) == 0 {
		p.Events = []screening.Event{{Code: "operation", Day: day}}
	}
	return err
}

// renamed are the fields that the table calls by other names than the library.
var renamed = strings.NewReplacer(
	"/diseases/present", "/known_disease", "/symptoms/present", "/symptoms",
	"/conditions/present", "/conditions", "/red_flags/present", "/red_flags",
	"/wanted", "/desired_intensity", "/resting_pulse", "/hr_rest",
	"/bp/systolic", "/bp/0", "/bp/diastolic", "/bp/1", "/mean_pap", "/mean_pap_mmHg",
	"/planned_fraction", "/planned_pct_1rm",
	"/orthostatic_drop/systolic", "/orthostatic_drop/sys", "/orthostatic_drop/diastolic", "/orthostatic_drop/dia",
)

// tableNames gives the fields of err the names of the table. The scope of the
// clearance repeats the known diseases, which have been named already.
func tableNames(err error) error {
	var all, ours field.Errors
	all.Add("", err)
	for _, f := range all {
		if !strings.HasPrefix(f.Path, "/clearances/") {
			ours.Add("", field.New(renamed.Replace(f.Path), f.Got, f.Allowed, f.Err))
		}
	}
	return ours.Err()
}
