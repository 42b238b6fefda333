package screening_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func mustToday(t fataler, c screening.Check, o screening.Outcome) screening.Outcome {
	t.Helper()
	got, err := screening.Today(c, o)
	if err != nil {
		t.Fatal(err)
	}
	return got
}

func TestTodayQuiet(t *testing.T) {
	o := assess(t, well())
	got := mustToday(t, quiet(), o)
	expect(t, got, screening.NoRoute, screening.WithinLimits)
	if got.Rules.SessionDay.Plan != screening.AsPlanned || got.Today != visit || len(got.Missing) != 0 {
		t.Errorf("%+v", got)
	}
	if _, ok := finding(got, "screening.nothing-found"); !ok || len(got.Findings) != len(o.Findings) {
		t.Errorf("findings %+v, want those of before", got.Findings)
	}
}

func TestTodayNotAsked(t *testing.T) {
	got := mustToday(t, screening.Check{Day: visit, Setting: screening.InClinic}, assess(t, well()))
	expect(t, got, screening.AskFirst, screening.Nothing)
	if !misses(got, "new") || !misses(got, "febrile") || misses(got, "glucose") {
		t.Errorf("missing %v, want what is new, and fever", got.Missing)
	}
}

func TestTodayEffects(t *testing.T) {
	for name, tt := range map[string]struct {
		change    func(*screening.Check)
		route     screening.Route
		meanwhile screening.Meanwhile
		plan      screening.DayPlan
		missing   screening.Code
	}{
		"fever":          {func(c *screening.Check) { c.Febrile = screening.Yes }, screening.Tell, screening.Nothing, screening.NotToday, ""},
		"pressure":       {func(c *screening.Check) { c.BP = pressure(150, 100) }, screening.AskFirst, screening.Nothing, screening.NotToday, "blood_pressure_again"},
		"pulse":          {func(c *screening.Check) { c.RestingPulse = 101 }, screening.AskFirst, screening.Nothing, screening.NotToday, "resting_pulse_again"},
		"new chest pain": {func(c *screening.Check) { c.New = screening.AskedFor("ischaemic_chest_neck_jaw_arm_pain") }, screening.SameDay, screening.Nothing, screening.AsPlanned, ""},
		"new numbness":   {func(c *screening.Check) { c.New = screening.AskedFor("saddle_numbness") }, screening.Emergency, screening.Nothing, screening.AsPlanned, ""},
		"perhaps a pop": {func(c *screening.Check) {
			c.New = screening.Checklist{Asked: true, Unsure: []screening.Code{"tendon_pop"}}
		}, screening.AskFirst, screening.Nothing, screening.AsPlanned, "tendon_pop"},
		"low":           {func(c *screening.Check) { c.Glucose = glucose("60 mg/dL"); c.InsulinOrSecretagogue = screening.No }, screening.AskFirst, screening.Nothing, screening.NotToday, ""},
		"82 on diet":    {func(c *screening.Check) { c.Glucose = glucose("82 mg/dL"); c.InsulinOrSecretagogue = screening.No }, screening.NoRoute, screening.WithinLimits, screening.AsPlanned, ""},
		"82, not known": {func(c *screening.Check) { c.Glucose = glucose("82 mg/dL") }, screening.AskFirst, screening.Nothing, screening.AsPlanned, "insulin_or_secretagogue"},
		"82, insulin": {func(c *screening.Check) {
			c.Glucose = glucose("82 mg/dL")
			c.InsulinOrSecretagogue = screening.Yes
			c.SevereLow = screening.No
		}, screening.Tell, screening.WithinLimits, screening.Lighter, ""},
		"insulin, low?":     {func(c *screening.Check) { c.Glucose = glucose("120 mg/dL"); c.InsulinOrSecretagogue = screening.Yes }, screening.AskFirst, screening.Nothing, screening.AsPlanned, "severe_low_24h"},
		"insulin, untested": {func(c *screening.Check) { c.InsulinOrSecretagogue = screening.Yes; c.SevereLow = screening.No }, screening.AskFirst, screening.Nothing, screening.AsPlanned, "glucose"},
		"ketones untested":  {func(c *screening.Check) { c.Glucose = glucose("15 mmol/L"); c.InsulinOrSecretagogue = screening.No }, screening.AskFirst, screening.Nothing, screening.Lighter, "ketones"},
		"ketones none": {func(c *screening.Check) {
			c.Glucose = glucose("15 mmol/L")
			c.InsulinOrSecretagogue = screening.No
			c.Ketones = screening.NoKetones
		}, screening.Tell, screening.WithinLimits, screening.Lighter, ""},
		"very high": {func(c *screening.Check) {
			c.Glucose = glucose("20 mmol/L")
			c.InsulinOrSecretagogue = screening.No
			c.Ketones = screening.NoKetones
		}, screening.AskFirst, screening.WithinLimits, screening.Lighter, ""},
		"pain begun": {func(c *screening.Check) { c.Pain = &screening.Pain{Kind: screening.OrdinaryPain, During: score(2)} }, screening.Tell, screening.WithinLimits, screening.AsPlanned, "pain"},
		"pain": {func(c *screening.Check) {
			c.Pain = &screening.Pain{Kind: screening.OrdinaryPain, During: score(6), After: score(2), SettledNextMorning: screening.Yes, WeeklyTrend: screening.StablePain}
		}, screening.Tell, screening.WithinLimits, screening.Lighter, ""},
		"pressure on rising": {func(c *screening.Check) {
			c.Orthostatic = &screening.OrthostaticDrop{From: screening.Sitting, Systolic: 15}
		}, screening.Tell, screening.WithinLimits, screening.Lighter, ""},
	} {
		c := quiet()
		tt.change(&c)
		o := mustToday(t, c, assess(t, well()))
		if o.Route != tt.route || o.Meanwhile != tt.meanwhile || o.Rules.SessionDay.Plan != tt.plan {
			t.Errorf("%s: %v, %v, %v; want %v, %v, %v", name, o.Route, o.Meanwhile, o.Rules.SessionDay.Plan, tt.route, tt.meanwhile, tt.plan)
		}
		if tt.missing != "" && !misses(o, tt.missing) || tt.missing == "" && len(o.Missing) > 0 {
			t.Errorf("%s: missing %v, want %q", name, o.Missing, tt.missing)
		}
	}
}

func TestTodayEachDay(t *testing.T) {
	p := blank()
	p.Diseases = screening.AskedFor("diabetes_t1")
	p.Clearances = []screening.Clearance{clearance("diabetes_t1")}
	p.Answers = map[screening.Code]screening.Answer{"insulin_or_secretagogue": screening.Yes, "retinopathy_moderate_or_worse": screening.No}
	o := assess(t, p)
	got := mustToday(t, quiet(), o)
	expect(t, got, screening.AskFirst, screening.Nothing)
	if !misses(got, "glucose") || !misses(got, "severe_low_24h") {
		t.Errorf("missing %v", got.Missing)
	}
	c := quiet()
	c.Glucose, c.SevereLow = glucose("7 mmol/L"), screening.No
	got = mustToday(t, c, o)
	expect(t, got, screening.Tell, screening.WithinLimits)
	// The clearance that the outcome rests on lapses.
	c.Day = o.ReviewBy
	expect(t, mustToday(t, c, o), screening.Tell, screening.WithinLimits)
	c.Day++
	expect(t, mustToday(t, c, o), screening.AskFirst, screening.Nothing)
}

func TestTodayAlone(t *testing.T) {
	c := quiet()
	c.Orthostatic = &screening.OrthostaticDrop{From: screening.Lying, Systolic: 20}
	for setting, want := range map[screening.Setting]bool{screening.Alone: true, screening.WithHelper: false} {
		p := well()
		c.Setting, p.Setting = setting, screening.Alone
		if got := mustToday(t, c, assess(t, p)).Limits.Avoid.Has(body.FreeStanding); got != want {
			t.Errorf("%v: free standing avoided %v, want %v", setting, got, want)
		}
	}
}

func TestTodayRefuses(t *testing.T) {
	o := assess(t, well())
	other := o
	other.Today = visit - 1
	alone, blank := quiet(), quiet()
	alone.Setting, blank.Setting = screening.Alone, 0
	two := screening.Outcome{Route: screening.NoRoute, Meanwhile: screening.WithinLimits}
	for name, tt := range map[string]struct {
		c    screening.Check
		o    screening.Outcome
		want error
		path string
	}{
		"nobody screened": {quiet(), screening.Outcome{}, field.ErrMissing, "/outcome"},
		"a waiver":        {quiet(), screening.Waived("analysis", body.Person{Age: 66}, screening.InGroup, visit), field.ErrConflict, "/outcome/waived"},
		"before":          {screening.Check{Day: visit - 1, Setting: screening.InClinic}, o, field.ErrConflict, "/outcome/day"},
		"twice":           {quiet(), other, field.ErrConflict, "/outcome/today"},
		"no day":          {screening.Check{Setting: screening.InClinic}, o, field.ErrMissing, "/check/day"},
		"two fields":      {quiet(), two, field.ErrMissing, "/outcome/who/age"},
		"alone now":       {alone, o, field.ErrConflict, "/check/setting"},
		"company unknown": {blank, o, field.ErrConflict, "/check/setting"},
	} {
		_, err := screening.Today(tt.c, tt.o)
		var which *field.Error
		if !errors.Is(err, tt.want) || !errors.As(err, &which) || which.Path != tt.path {
			t.Errorf("%s: %v, want %v at %s", name, err, tt.want, tt.path)
		}
	}
	if again := mustToday(t, quiet(), mustToday(t, quiet(), o)); again.Today != visit {
		t.Errorf("the same day's check twice: %v", again.Today)
	}
}

func TestTodayLeavesOutcome(t *testing.T) {
	o := assess(t, well())
	n, before := len(o.Findings), o.Findings[0].Reason.Code
	c := quiet()
	c.Febrile = screening.Yes
	mustToday(t, c, o)
	if len(o.Findings) != n || o.Findings[0].Reason.Code != before || o.Rules.SessionDay.Plan != screening.AsPlanned {
		t.Errorf("Today changed the outcome that it was given: %+v", o)
	}
}

// TestUnstableDay holds the part of the session-day checks that reads conditions.
func TestUnstableDay(t *testing.T) {
	for code, reason := range map[screening.Code]screening.Code{
		"decompensated_hf": "unstable_or_acute_hf", "unstable_chd": "unstable_or_uncontrolled", "uncontrolled_arrhythmia": "unstable_or_uncontrolled",
	} {
		p := blank()
		p.Conditions = screening.AskedFor(code)
		got := screening.SessionDay(screening.Check{}, p)
		if got.Plan != screening.NotToday || len(got.Reasons) != 1 || got.Reasons[0] != reason {
			t.Errorf("%s: %+v, want %s", code, got, reason)
		}
	}
}

// Who is told that the pressure stays up, and no exercise, does not read that it is a little up.
func TestPressureIsNotALittleUpWhereItStops(t *testing.T) {
	c := quiet()
	c.BP, c.BPAgain = &screening.BloodPressure{Systolic: 172, Diastolic: 104}, &screening.BloodPressure{Systolic: 168, Diastolic: 102}
	o := mustToday(t, c, assess(t, well()))
	var said []string
	for _, f := range o.Findings {
		said = append(said, screening.Words().Client(f.Reason))
	}
	if text := strings.Join(said, " "); o.Meanwhile != screening.Nothing || !strings.Contains(text, "stays up today") || strings.Contains(text, "a little") {
		t.Errorf("%s: %s", o.Meanwhile, text)
	}
}
