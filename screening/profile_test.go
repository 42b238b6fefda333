package screening_test

import (
	"encoding/json"
	"errors"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// paths lists the pointers of the bad fields in err, and their categories.
func paths(err error) map[string]error {
	got := map[string]error{}
	var many field.Errors
	if errors.As(err, &many) {
		for _, f := range many {
			got[f.Path] = f.Err
		}
	}
	return got
}

func TestValidate(t *testing.T) {
	nan, pap, minus := math.NaN(), 151, -units.Kilogram
	for path, tt := range map[string]struct {
		change func(*screening.Profile)
		want   error
	}{
		"/day":                    {func(p *screening.Profile) { p.Day = 0 }, field.ErrMissing},
		"/age":                    {func(p *screening.Profile) { p.Age = 17 }, field.ErrOutOfRange},
		"/sex":                    {func(p *screening.Profile) { p.Sex = 9 }, field.ErrOutOfRange},
		"/wanted":                 {func(p *screening.Profile) { p.Wanted = screening.Idle }, field.ErrOutOfRange},
		"/setting":                {func(p *screening.Profile) { p.Setting = 9 }, field.ErrOutOfRange},
		"/activity/days_per_week": {func(p *screening.Profile) { p.Activity.DaysPerWeek = 8 }, field.ErrOutOfRange},
		"/activity/minutes":       {func(p *screening.Profile) { p.Activity.Minutes = -1 }, field.ErrOutOfRange},
		"/activity/intensity":     {func(p *screening.Profile) { p.Activity.Intensity = 0 }, field.ErrMissing},
		"/activity/months":        {func(p *screening.Profile) { p.Activity.Months = 1441 }, field.ErrOutOfRange},
		"/bp/systolic":            {func(p *screening.Profile) { p.BP = pressure(301, 80) }, field.ErrOutOfRange},
		"/bp/diastolic":           {func(p *screening.Profile) { p.BP = pressure(80, 80) }, field.ErrConflict},
		"/bp":                     {func(p *screening.Profile) { p.BPAgain = pressure(130, 80) }, field.ErrMissing},
		"/bp_again/systolic":      {func(p *screening.Profile) { p.BP, p.BPAgain = pressure(130, 80), pressure(301, 80) }, field.ErrOutOfRange},
		"/resting_pulse_again":    {func(p *screening.Profile) { p.RestingPulse, p.RestingPulseAgain = 70, 300 }, field.ErrOutOfRange},
		"/hba1c":                  {func(p *screening.Profile) { p.HbA1c = &nan }, field.ErrOutOfRange},
		"/blood_counts/platelets": {func(p *screening.Profile) { p.Counts = &screening.BloodCounts{Platelets: -1} }, field.ErrOutOfRange},
		"/falls/self_score":       {func(p *screening.Profile) { n := 15; p.Falls = &screening.FallsScreen{SelfScore: &n} }, field.ErrOutOfRange},
		"/falls/fell":             {func(p *screening.Profile) { p.Falls = &screening.FallsScreen{Fell: 9} }, field.ErrOutOfRange},
		"/home_readings/0":        {func(p *screening.Profile) { p.HomeReadings = []screening.Code{"glucose"} }, field.ErrUnknown},
		"/resting_pulse":          {func(p *screening.Profile) { p.RestingPulse = 19 }, field.ErrOutOfRange},
		"/capacity_mets":          {func(p *screening.Profile) { p.CapacityMETs = &nan }, field.ErrOutOfRange},
		"/mean_pap":               {func(p *screening.Profile) { p.MeanPAP = &pap }, field.ErrOutOfRange},
		"/planned_fraction":       {func(p *screening.Profile) { p.PlannedFraction = 1.01 }, field.ErrOutOfRange},
		"/diseases/present/0":     {func(p *screening.Profile) { p.Diseases = screening.AskedFor("glaucoma") }, field.ErrUnknown},
		"/symptoms/present/0":     {func(p *screening.Profile) { p.Symptoms = screening.AskedFor("no such") }, field.ErrUnknown},
		"/conditions/present/1":   {func(p *screening.Profile) { p.Conditions = screening.AskedFor("glaucoma", "glaucoma") }, field.ErrDuplicate},
		"/conditions/unsure/0": {func(p *screening.Profile) {
			p.Conditions = screening.AskedFor("marfan")
			p.Conditions.Unsure = []screening.Code{"marfan"}
		}, field.ErrConflict},
		"/red_flags/asked": {func(p *screening.Profile) {
			p.RedFlags.Asked = false
			p.RedFlags.Present = []screening.Code{"tendon_pop"}
		}, field.ErrConflict},
		"/events/0/code":        {func(p *screening.Profile) { p.Events = []screening.Event{{Code: "glaucoma"}} }, field.ErrUnknown},
		"/events/0/day":         {func(p *screening.Profile) { p.Events = []screening.Event{{Code: "fall", Day: visit + 1}} }, field.ErrConflict},
		"/events/0/region":      {func(p *screening.Profile) { p.Events = []screening.Event{{Code: "fracture", Region: 99}} }, field.ErrOutOfRange},
		"/events/0/side":        {func(p *screening.Profile) { p.Events = []screening.Event{{Code: "fracture", Side: 9}} }, field.ErrOutOfRange},
		"/clearances/0/day":     {func(p *screening.Profile) { p.Clearances = []screening.Clearance{{Day: -1}} }, field.ErrOutOfRange},
		"/clearances/0/expires": {func(p *screening.Profile) { p.Clearances = []screening.Clearance{{Expires: -1}} }, field.ErrOutOfRange},
		"/clearances/0/scope/0": {func(p *screening.Profile) {
			p.Clearances = []screening.Clearance{{Scope: []screening.Code{"tendon_pop"}}}
		}, field.ErrUnknown},
		"/clearances/0/intensity": {func(p *screening.Profile) { p.Clearances = []screening.Clearance{{Intensity: screening.Idle}} }, field.ErrOutOfRange},
		"/restrictions/0/region":  {func(p *screening.Profile) { p.Restrictions = []screening.Restriction{{}} }, field.ErrMissing},
		"/restrictions/0/until":   {func(p *screening.Profile) { p.Restrictions = []screening.Restriction{{Region: body.Hip, Until: -1}} }, field.ErrOutOfRange},
		"/restrictions/1/until": {func(p *screening.Profile) {
			p.Restrictions = []screening.Restriction{{Region: body.Hip, Day: visit, Until: visit}, {Region: body.Hip, Day: visit, Until: visit - 1}}
		}, field.ErrConflict},
		"/restrictions/0/day":  {func(p *screening.Profile) { p.Restrictions = []screening.Restriction{{Region: body.Hip, Day: -1}} }, field.ErrOutOfRange},
		"/restrictions/0/side": {func(p *screening.Profile) { p.Restrictions = []screening.Restriction{{Region: body.Hip, Side: 9}} }, field.ErrOutOfRange},
		"/restrictions/0/max_mass": {func(p *screening.Profile) {
			p.Restrictions = []screening.Restriction{{Region: body.Hip, MaxMass: &minus}}
		}, field.ErrOutOfRange},
		"/answers/a~1b": {func(p *screening.Profile) { p.Answers = map[screening.Code]screening.Answer{"a/b": screening.No} }, field.ErrUnknown},
		"/answers/hernia_symptomatic_or_large": {func(p *screening.Profile) {
			p.Answers = map[screening.Code]screening.Answer{"hernia_symptomatic_or_large": 7}
		}, field.ErrOutOfRange},
	} {
		p := blank()
		tt.change(&p)
		got := paths(p.Validate())
		if !errors.Is(got[path], tt.want) || len(got) != 1 {
			t.Errorf("%s: %v, want %v there alone", path, got, tt.want)
		}
		if _, err := screening.Assess(p); err == nil {
			t.Errorf("%s: Assess takes it", path)
		}
	}
	var all screening.Profile
	all.BP, all.RestingPulse = pressure(10, 10), 5
	if got := paths(all.Validate()); len(got) != 5 {
		t.Errorf("bad fields %v, want five at once", got)
	}
}

func TestCheckValidate(t *testing.T) {
	for path, change := range map[string]func(*screening.Check){
		"/day":                       func(c *screening.Check) { c.Day = 0 },
		"/new/present/0":             func(c *screening.Check) { c.New = screening.AskedFor("glaucoma") },
		"/setting":                   func(c *screening.Check) { c.Setting = 9 },
		"/febrile":                   func(c *screening.Check) { c.Febrile = 9 },
		"/bp/systolic":               func(c *screening.Check) { c.BP = pressure(49, 30) },
		"/resting_pulse":             func(c *screening.Check) { c.RestingPulse = 251 },
		"/orthostatic_drop/from":     func(c *screening.Check) { c.Orthostatic = &screening.OrthostaticDrop{} },
		"/ketones":                   func(c *screening.Check) { c.Ketones = 9 },
		"/insulin_or_secretagogue":   func(c *screening.Check) { c.InsulinOrSecretagogue = 9 },
		"/severe_low_24h":            func(c *screening.Check) { c.SevereLow = 9 },
		"/pain/during":               func(c *screening.Check) { c.Pain = &screening.Pain{During: score(11)} },
		"/pain/kind":                 func(c *screening.Check) { c.Pain = &screening.Pain{Kind: 9} },
		"/pain/site":                 func(c *screening.Check) { c.Pain = &screening.Pain{Site: 99} },
		"/pain/side":                 func(c *screening.Check) { c.Pain = &screening.Pain{Side: 9} },
		"/pain/usual":                func(c *screening.Check) { c.Pain = &screening.Pain{Usual: score(-1)} },
		"/pain/next_morning":         func(c *screening.Check) { c.Pain = &screening.Pain{NextMorning: score(10.5)} },
		"/pain/osteoarthritis":       func(c *screening.Check) { c.Pain = &screening.Pain{Osteoarthritis: 9} },
		"/unwell":                    func(c *screening.Check) { c.Unwell = 9 },
		"/hf_worsening":              func(c *screening.Check) { c.Worsening = 9 },
		"/spo2":                      func(c *screening.Check) { c.SpO2 = 101 },
		"/spo2_again":                func(c *screening.Check) { c.SpO2, c.SpO2Again = 88, 49 },
		"/supine_pulse":              func(c *screening.Check) { c.SupinePulse = 19 },
		"/weight_gain/days":          func(c *screening.Check) { c.Weight = &screening.WeightGain{} },
		"/weight_gain/mass":          func(c *screening.Check) { c.Weight = &screening.WeightGain{Days: 1, Mass: 21 * units.Kilogram} },
		"/blood_counts/haemoglobin":  func(c *screening.Check) { c.Counts = &screening.BloodCounts{Haemoglobin: 19} },
		"/blood_ketones":             func(c *screening.Check) { c.BloodKetones = score(math.NaN()) },
		"/soreness_days":             func(c *screening.Check) { c.SorenessDays = 61 },
		"/events/0/code":             func(c *screening.Check) { c.Events = []screening.Event{{Code: "glaucoma"}} },
		"/resting_pulse_again":       func(c *screening.Check) { c.RestingPulse, c.RestingPulseAgain = 70, 10 },
		"/pain/after":                func(c *screening.Check) { c.Pain = &screening.Pain{After: score(math.NaN())} },
		"/pain/settled_next_morning": func(c *screening.Check) { c.Pain = &screening.Pain{SettledNextMorning: 9} },
		"/pain/weekly_trend":         func(c *screening.Check) { c.Pain = &screening.Pain{WeeklyTrend: 9} },
	} {
		c := quiet()
		change(&c)
		if got := paths(c.Validate()); got[path] == nil || len(got) != 1 {
			t.Errorf("%s: %v, want that alone", path, got)
		}
	}
}

func TestDecodeStrictly(t *testing.T) {
	var p screening.Profile
	err := field.Decode([]byte(`{"day":"2026-11-25","age":66,"diseases":{"asked":true,"presnt":[]},"wanted":"hard","answers":{"clearance":"maybe"}}`), &p, field.Strict)
	got := paths(err)
	for _, path := range []string{"/diseases/presnt", "/wanted", "/answers/clearance"} {
		if got[path] == nil {
			t.Errorf("%s is taken; bad fields %v", path, got)
		}
	}
	var c screening.Check
	if err := field.Decode([]byte(`{"day":"2026-11-25","glucose":"82"}`), &c, field.Strict); !errors.Is(err, field.ErrMissing) {
		t.Errorf("glucose without a unit: %v", err)
	}
	if err := field.Decode([]byte(`{"day":"2026-11-25","glucose":"4,6 mmol/L","ketones":"small","pain":{"during":0,"settled_next_morning":"yes"}}`), &c, field.Strict); err != nil || c.Glucose.String() != "4.6 mmol/L" {
		t.Errorf("%v %v", c.Glucose, err)
	}
}

func TestGlucoseText(t *testing.T) {
	for text, want := range map[string]error{
		"82": field.ErrMissing, "": field.ErrSyntax, "mg/dL": field.ErrSyntax, "82 mg": field.ErrUnknown, "-5 mg/dL": field.ErrSyntax, "+82 mg/dL": field.ErrSyntax,
		"9 mg/dL": field.ErrOutOfRange, "2001 mg/dL": field.ErrOutOfRange, "0.4 mmol/L": field.ErrOutOfRange, "112 mmol/L": field.ErrOutOfRange,
		"82. mg/dL": field.ErrSyntax, "8.123 mmol/L": field.ErrSyntax, ".5 mmol/L": field.ErrSyntax, "82 mg/dL x": field.ErrUnknown, "999999999999 mg/dL": field.ErrSyntax, "1_0 mg/dL": field.ErrSyntax,
	} {
		if g, err := screening.ParseGlucose(text); !errors.Is(err, want) {
			t.Errorf("ParseGlucose(%q) = %v, %v, want %v", text, g, err, want)
		}
	}
	var g screening.Glucose
	if err := g.UnmarshalText(nil); err != nil || !g.IsZero() || g.String() != "" {
		t.Errorf("no reading: %v %v", g, err)
	}
	for text, want := range map[string]string{"7,2 mmol/l": "7.2 mmol/L", "130 mg/dl": "130 mg/dL", "130 MG/DL": "130 mg/dL"} {
		if g := glucose(text); g.String() != want {
			t.Errorf("%q reads as %v", text, g)
		}
	}
	if g = glucose("10 mg/dL"); g.String() != "10 mg/dL" {
		t.Errorf("10 mg/dL reads as %v", g)
	}
}

func TestRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 0))
		p := randomProfile(r)
		var back screening.Profile
		same(t, p, &back)
		c := checkFor(r, assess(t, p))
		var again screening.Check
		same(t, c, &again)
		o := mustToday(t, c, assess(t, p))
		var outcome screening.Outcome
		same(t, o, &outcome)
		if second := mustToday(t, again, assess(t, back)); text(t, second) != text(t, o) {
			t.Fatalf("the copy screens as\n%s\nthe original as\n%s", text(t, second), text(t, o))
		}
		strict := screening.Outcome{}
		if err := field.Decode([]byte(text(t, o)), &strict, field.Strict); err != nil || text(t, strict) != text(t, o) {
			t.Fatalf("strictly decoded: %v", err)
		}
	})
}

func text(t *rapid.T, v any) string {
	data, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// same marshals v, reads it into back and holds that it is written the same.
func same(t *rapid.T, v, back any) {
	first := text(t, v)
	if err := field.Decode([]byte(first), back, field.Strict); err != nil {
		t.Fatalf("%v\n%s", err, first)
	}
	if second := text(t, back); second != first {
		t.Fatalf("written as\n%s\nthen as\n%s", first, second)
	}
}

func TestEveryReasonHasWords(t *testing.T) {
	words, l := screening.Words().Copy(), ledger(t)
	rapid.Check(t, func(t *rapid.T) {
		r := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 0))
		o := assess(t, randomProfile(r))
		o = mustToday(t, checkFor(r, o), o)
		for _, f := range o.Findings {
			if w, ok := words[f.Reason.Code]; !ok || w.Clinician == "" {
				t.Fatalf("%s has no words", f.Reason.Code)
			}
			if said := words.Clinician(f.Reason) + words.Client(f.Reason); strings.ContainsAny(said, "{}") {
				t.Fatalf("%q has a gap", said)
			}
			for _, id := range f.Reason.Facts {
				if _, ok := l.Fact(id); !ok {
					t.Fatalf("%s names no fact: %s", f.Reason.Code, id)
				}
			}
		}
		codes := map[screening.Code]bool{}
		for _, q := range o.Missing {
			if words[q.Reason.Code].Client == "" || codes[q.Code] {
				t.Fatalf("question %s has no words or stands twice", q.Code)
			}
			codes[q.Code] = true
		}
	})
}

func TestChecklist(t *testing.T) {
	c := screening.Checklist{Asked: true, Present: []screening.Code{"a"}, Unsure: []screening.Code{"b"}}
	if got := []screening.Answer{c.Of("a"), c.Of("b"), c.Of("c"), screening.Checklist{}.Of("a")}; !slices.Equal(got, []screening.Answer{screening.Yes, screening.Unknown, screening.No, screening.Unknown}) {
		t.Errorf("answers %v", got)
	}
	any := []screening.Answer{c.Any(), screening.Checklist{Asked: true, Unsure: c.Unsure}.Any(), screening.AskedFor().Any(), screening.Checklist{}.Any()}
	if !slices.Equal(any, []screening.Answer{screening.Yes, screening.Unknown, screening.No, screening.Unknown}) {
		t.Errorf("any %v", any)
	}
	if !(screening.No.Severity() < screening.Unknown.Severity() && screening.Unknown.Severity() < screening.Yes.Severity()) {
		t.Error("answers out of order")
	}
	if _, ok := screening.LookUp("no such"); ok {
		t.Error("an unknown code is known")
	}
}

func TestOutcomeBasics(t *testing.T) {
	if (screening.Outcome{}).Screened() || !screening.Waived("why", body.Person{Age: 66}, screening.InGroup, visit).Screened() || screening.Waived("", body.Person{Age: 66}, screening.InGroup, visit).Screened() {
		t.Error("Screened is wrong")
	}
	if !(screening.Rules{}).IsZero() || (screening.Rules{Wider: []screening.Code{"x"}}).IsZero() {
		t.Error("Rules.IsZero is wrong")
	}
}
