package screening_test

import (
	"maps"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// codesOf lists the codes that a checklist may hold.
func codesOf(kinds ...screening.Kind) []screening.Code {
	var list []screening.Code
	for term := range screening.Codes() {
		if slices.Contains(kinds, term.Kind) {
			list = append(list, term.Code)
		}
	}
	return list
}

func drawChecklist(t *rapid.T, kinds ...screening.Kind) screening.Checklist {
	// Mostly little is found, so that most outcomes have room to become worse.
	most := rapid.SampledFrom([]int{-1, 0, 0, 0, 0, 1, 1, 1, 3}).Draw(t, "most")
	if most < 0 {
		return screening.Checklist{}
	}
	codes := rapid.SliceOfNDistinct(rapid.SampledFrom(codesOf(kinds...)), 0, most, rapid.ID[screening.Code]).Draw(t, "codes")
	cut := rapid.IntRange(0, len(codes)).Draw(t, "cut")
	return screening.Checklist{Asked: true, Present: codes[:cut:cut], Unsure: codes[cut:]}
}

func yesNo() []screening.Code {
	var list []screening.Code
	for q := range screening.Prompts() {
		if q.YesNo {
			list = append(list, q.Code)
		}
	}
	return list
}

func drawProfile(t *rapid.T) screening.Profile {
	intensity := rapid.SampledFrom([]screening.Intensity{screening.Light, screening.Moderate, screening.Vigorous})
	p := screening.Profile{
		Day: visit, Age: 70,
		Sex:             rapid.SampledFrom([]body.Sex{body.SexUnknown, body.Female, body.Male}).Draw(t, "sex"),
		Wanted:          screening.Intensity(rapid.SampledFrom([]int{0, 2, 3, 4}).Draw(t, "wanted")),
		Setting:         screening.Setting(rapid.IntRange(0, 4).Draw(t, "setting")),
		Diseases:        drawChecklist(t, screening.Disease),
		Symptoms:        drawChecklist(t, screening.Symptom),
		RedFlags:        drawChecklist(t, screening.RedFlag),
		Conditions:      drawChecklist(t, screening.Condition),
		PlannedFraction: units.Fraction(rapid.SampledFrom([]float64{0, 0.6, 0.79, 0.8, 1}).Draw(t, "planned")),
		Answers:         map[screening.Code]screening.Answer{},
	}
	for _, code := range yesNo() {
		p.Answers[code] = screening.Answer(rapid.IntRange(0, 2).Draw(t, "answer"))
	}
	if rapid.Bool().Draw(t, "activity") {
		p.Activity = &screening.Activity{DaysPerWeek: rapid.IntRange(2, 4).Draw(t, "days"), Minutes: 30, Intensity: screening.Moderate, Months: 3}
	}
	if rapid.Bool().Draw(t, "bp") {
		p.BP = pressure(rapid.IntRange(140, 200).Draw(t, "sys"), rapid.IntRange(80, 120).Draw(t, "dia"))
	}
	if rapid.Bool().Draw(t, "mets") {
		v := rapid.SampledFrom([]float64{3, 3.9, 4, 6}).Draw(t, "METs")
		p.CapacityMETs = &v
	}
	if rapid.Bool().Draw(t, "pap") {
		v := rapid.IntRange(50, 60).Draw(t, "PAP")
		p.MeanPAP = &v
	}
	p.RestingPulse = rapid.SampledFrom([]int{0, 60, 100, 101}).Draw(t, "pulse")
	dated := []screening.Code{"vertebral_fracture", "rotator_cuff_repair", "total_knee_replacement", "total_hip_replacement", "shoulder_replacement", "fall", "fracture", "operation"}
	for range rapid.IntRange(0, 2).Draw(t, "events") {
		e := screening.Event{Code: rapid.SampledFrom(dated).Draw(t, "event"), Day: visit - units.Day(rapid.IntRange(0, 500).Draw(t, "ago"))}
		if e.Code == "fracture" {
			e.Region = body.Region(rapid.IntRange(1, 11).Draw(t, "region"))
		}
		p.Events = append(p.Events, e)
	}
	scopes := slices.Concat(p.Diseases.Present, p.Diseases.Unsure, p.Symptoms.Present, p.Conditions.Present, p.Conditions.Unsure, []screening.Code{"hypertension_gt_160_100", "capacity_lt_4_mets"})
	for range rapid.IntRange(0, 2).Draw(t, "clearances") {
		c := screening.Clearance{Who: "Dr A", Day: visit - units.Day(rapid.IntRange(0, 400).Draw(t, "given")), Scope: scopes, Intensity: intensity.Draw(t, "to")}
		if rapid.Bool().Draw(t, "part") {
			c.Scope = scopes[:rapid.IntRange(0, len(scopes)).Draw(t, "scope")]
		}
		if rapid.Bool().Draw(t, "term") {
			c.Expires = visit + units.Day(rapid.IntRange(-10, 200).Draw(t, "expires"))
		}
		p.Clearances = append(p.Clearances, c)
	}
	return p
}

// A move makes one thing of a profile worse; false if there is nothing to do.
type move struct {
	name  string
	worse func(*rapid.T, *screening.Profile) bool
}

var moves = []move{
	{"no to unsure", func(t *rapid.T, p *screening.Profile) bool {
		list, codes := pick(t, p)
		code := rapid.SampledFrom(codes).Draw(t, "code")
		if list.Of(code) != screening.No {
			return false
		}
		list.Unsure = append(slices.Clone(list.Unsure), code)
		return true
	}},
	{"no to present", func(t *rapid.T, p *screening.Profile) bool {
		list, codes := pick(t, p)
		code := rapid.SampledFrom(codes).Draw(t, "code")
		if list.Of(code) != screening.No {
			return false
		}
		list.Present = append(slices.Clone(list.Present), code)
		return true
	}},
	{"unsure to present", func(t *rapid.T, p *screening.Profile) bool {
		list, _ := pick(t, p)
		if len(list.Unsure) == 0 {
			return false
		}
		list.Present = append(slices.Clone(list.Present), list.Unsure[0])
		list.Unsure = list.Unsure[1:]
		return true
	}},
	{"list not asked", func(t *rapid.T, p *screening.Profile) bool {
		list, _ := pick(t, p)
		was := list.Asked
		*list = screening.Checklist{}
		return was
	}},
	{"answer", func(t *rapid.T, p *screening.Profile) bool {
		code := rapid.SampledFrom(yesNo()).Draw(t, "code")
		next := map[screening.Answer]screening.Answer{screening.No: screening.Unknown, screening.Unknown: screening.Yes}
		to, ok := next[p.Answers[code]]
		p.Answers = maps.Clone(p.Answers)
		p.Answers[code] = to
		return ok
	}},
	{"pressure", func(t *rapid.T, p *screening.Profile) bool {
		if p.BP == nil {
			return false
		}
		p.BP = pressure(p.BP.Systolic+rapid.IntRange(0, 60).Draw(t, "up"), p.BP.Diastolic+rapid.IntRange(0, 20).Draw(t, "up"))
		return true
	}},
	{"pressure asked for and not taken", func(_ *rapid.T, p *screening.Profile) bool {
		if p.BP == nil || p.Diseases.Of("renal") == screening.No && p.Conditions.Of("uncontrolled_hypertension") == screening.No && p.Conditions.Of("hypertension") == screening.No {
			return false
		}
		p.BP = nil
		return true
	}},
	{"pulse", func(_ *rapid.T, p *screening.Profile) bool {
		p.RestingPulse = max(p.RestingPulse, 60) + 40
		return true
	}},
	{"capacity", func(_ *rapid.T, p *screening.Profile) bool {
		if p.CapacityMETs == nil {
			return false
		}
		v := *p.CapacityMETs * 0.7
		p.CapacityMETs = &v
		return true
	}},
	{"pulmonary pressure", func(_ *rapid.T, p *screening.Profile) bool {
		if p.MeanPAP == nil {
			return false
		}
		v := *p.MeanPAP + 5
		p.MeanPAP = &v
		return true
	}},
	{"clearance gone", func(_ *rapid.T, p *screening.Profile) bool {
		if len(p.Clearances) == 0 {
			return false
		}
		p.Clearances = p.Clearances[1:]
		return true
	}},
	{"clearance older", func(t *rapid.T, p *screening.Profile) bool {
		if len(p.Clearances) == 0 {
			return false
		}
		p.Clearances = slices.Clone(p.Clearances)
		c := &p.Clearances[0]
		switch rapid.IntRange(0, 3).Draw(t, "how") {
		case 0:
			c.Expires = visit - 1
		case 1:
			c.Day -= 200
		case 2:
			c.Who = " "
		case 3:
			if c.Intensity > screening.Light {
				c.Intensity--
			}
		}
		return true
	}},
	{"something happened", func(t *rapid.T, p *screening.Profile) bool {
		code := rapid.SampledFrom([]screening.Code{"fall", "operation", "hospital_stay", "new_diagnosis"}).Draw(t, "event")
		p.Events = append(slices.Clone(p.Events), screening.Event{Code: code, Day: visit - units.Day(rapid.IntRange(0, 200).Draw(t, "ago"))})
		return true
	}},
	{"day forgotten", func(_ *rapid.T, p *screening.Profile) bool {
		i := slices.IndexFunc(p.Events, func(e screening.Event) bool { return !e.Day.IsZero() })
		if i < 0 {
			return false
		}
		p.Events = slices.Clone(p.Events)
		p.Events[i].Day = 0
		return true
	}},
	{"restriction", func(t *rapid.T, p *screening.Profile) bool {
		mass := 3 * units.Kilogram
		p.Restrictions = append(slices.Clone(p.Restrictions), screening.Restriction{
			Region: body.Region(rapid.IntRange(1, 11).Draw(t, "region")), MaxMass: &mass,
			NonWeightBearing: rapid.Bool().Draw(t, "nwb"), Avoid: body.DemandSet(body.Overhead),
		})
		return true
	}},
	{"heavier plan", func(_ *rapid.T, p *screening.Profile) bool { p.PlannedFraction = 1; return true }},
	{"less company", func(_ *rapid.T, p *screening.Profile) bool {
		was := p.Setting
		p.Setting = max(p.Setting, 1) - 1
		return was > 0
	}},
	{"less active", func(_ *rapid.T, p *screening.Profile) bool { was := p.Activity; p.Activity = nil; return was != nil }},
	{"harder wish", func(_ *rapid.T, p *screening.Profile) bool {
		switch p.Wanted {
		case screening.IntensityUnknown, screening.Vigorous:
			return false
		}
		p.Wanted++
		return true
	}},
}

// pick returns one of the four lists and the codes that it may hold.
func pick(t *rapid.T, p *screening.Profile) (*screening.Checklist, []screening.Code) {
	switch rapid.IntRange(0, 3).Draw(t, "list") {
	case 0:
		return &p.Diseases, codesOf(screening.Disease)
	case 1:
		return &p.Symptoms, codesOf(screening.Symptom)
	case 2:
		return &p.RedFlags, codesOf(screening.RedFlag)
	}
	return &p.Conditions, codesOf(screening.Condition)
}

// TestMonotone holds the law that nothing worse ever lets more go on.
func TestMonotone(t *testing.T) {
	for _, m := range moves {
		t.Run(m.name, rapid.MakeCheck(func(t *rapid.T) {
			p := drawProfile(t)
			before := assess2(t, p)
			if !m.worse(t, &p) {
				return
			}
			tighter(t, before, assess2(t, p))
		}))
	}
}

func assess2(t *rapid.T, p screening.Profile) screening.Outcome {
	o, err := screening.Assess(p)
	if err != nil {
		t.Fatal(err)
	}
	return o
}

func tighter(t *rapid.T, before, after screening.Outcome) {
	if after.Meanwhile < before.Meanwhile {
		t.Fatalf("meanwhile %v became %v\nbefore %+v\nafter %+v", before.Meanwhile, after.Meanwhile, before.Findings, after.Findings)
	}
	if !after.Limits.AsTightAs(before.Limits) {
		t.Fatalf("limits %+v became %+v", before.Limits, after.Limits)
	}
}

func drawCheck(t *rapid.T) screening.Check {
	answers := rapid.SampledFrom([]screening.Answer{screening.Unknown, screening.No, screening.Yes})
	c := screening.Check{
		Day: visit, New: drawChecklist(t, screening.Symptom, screening.RedFlag),
		Setting: screening.Setting(rapid.IntRange(0, 4).Draw(t, "setting")),
		Febrile: answers.Draw(t, "febrile"), InsulinOrSecretagogue: answers.Draw(t, "insulin"), SevereLow: answers.Draw(t, "low"),
		Ketones: screening.Ketones(rapid.IntRange(0, 4).Draw(t, "ketones")),
	}
	if rapid.Bool().Draw(t, "glucose") {
		c.Glucose = glucose(rapid.SampledFrom([]string{"40 mg/dL", "60 mg/dL", "80 mg/dL", "120 mg/dL", "200 mg/dL", "300 mg/dL", "400 mg/dL", "4.6 mmol/L", "15 mmol/L"}).Draw(t, "glucose"))
	}
	if rapid.Bool().Draw(t, "pain") {
		c.Pain = &screening.Pain{SettledNextMorning: answers.Draw(t, "settled"), WeeklyTrend: screening.Trend(rapid.IntRange(0, 3).Draw(t, "trend"))}
		if rapid.Bool().Draw(t, "scores") {
			c.Pain.During, c.Pain.After = score(float64(rapid.IntRange(0, 10).Draw(t, "during"))), score(3)
		}
	}
	if rapid.Bool().Draw(t, "bp") {
		c.BP = pressure(rapid.IntRange(140, 190).Draw(t, "sys"), rapid.IntRange(80, 105).Draw(t, "dia"))
	}
	return c
}

// lower is a reading further below the band of glucose, in the unit it has.
var lower = map[string]string{"120 mg/dL": "80 mg/dL", "80 mg/dL": "60 mg/dL", "60 mg/dL": "40 mg/dL", "4.6 mmol/L": "2.8 mmol/L"}
var higher = map[string]string{"120 mg/dL": "300 mg/dL", "200 mg/dL": "300 mg/dL", "300 mg/dL": "400 mg/dL"}

var checkMoves = []func(*rapid.T, *screening.Check){
	func(_ *rapid.T, c *screening.Check) { c.New = screening.Checklist{} },
	func(t *rapid.T, c *screening.Check) {
		if c.New.Asked && c.New.Of("tendon_pop") == screening.No {
			c.New.Unsure = append(slices.Clone(c.New.Unsure), "tendon_pop")
		}
	},
	func(_ *rapid.T, c *screening.Check) { c.Febrile = nextAnswer(c.Febrile) },
	func(_ *rapid.T, c *screening.Check) { c.InsulinOrSecretagogue = nextAnswer(c.InsulinOrSecretagogue) },
	func(_ *rapid.T, c *screening.Check) { c.SevereLow = nextAnswer(c.SevereLow) },
	func(_ *rapid.T, c *screening.Check) {
		if c.Ketones != screening.KetonesUnknown {
			c.Ketones = min(c.Ketones+1, screening.LargeKetones)
		}
	},
	func(_ *rapid.T, c *screening.Check) {
		if c.Ketones < screening.ModerateKetones {
			c.Ketones = screening.KetonesUnknown
		}
	},
	func(_ *rapid.T, c *screening.Check) {
		if next, ok := lower[c.Glucose.String()]; ok {
			c.Glucose = glucose(next)
		}
	},
	func(_ *rapid.T, c *screening.Check) {
		if next, ok := higher[c.Glucose.String()]; ok && c.Ketones != screening.KetonesUnknown {
			c.Glucose = glucose(next)
		}
	},
	func(t *rapid.T, c *screening.Check) {
		if c.BP != nil {
			c.BP = pressure(c.BP.Systolic+rapid.IntRange(0, 40).Draw(t, "up"), c.BP.Diastolic+rapid.IntRange(0, 20).Draw(t, "up"))
		}
	},
	func(_ *rapid.T, c *screening.Check) {
		if c.Pain != nil && c.Pain.During != nil {
			pain := *c.Pain
			pain.During = score(min(10, *pain.During+3))
			c.Pain = &pain
		}
	},
	func(_ *rapid.T, c *screening.Check) {
		if c.Pain != nil {
			pain := *c.Pain
			pain.During, pain.SettledNextMorning, pain.WeeklyTrend = nil, screening.Unknown, screening.TrendUnknown
			c.Pain = &pain
		}
	},
	func(_ *rapid.T, c *screening.Check) {
		c.Orthostatic = &screening.OrthostaticDrop{From: screening.Sitting, Systolic: 30}
	},
	func(_ *rapid.T, c *screening.Check) { c.Setting = screening.SettingUnknown },
}

func nextAnswer(a screening.Answer) screening.Answer {
	if a == screening.No {
		return screening.Unknown
	}
	return screening.Yes
}

// TestTodayMonotone holds that the day's check never loosens an outcome and
// that a worse check never lets more go on.
func TestTodayMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o, c := assess2(t, drawProfile(t)), drawCheck(t)
		first := today(t, c, o)
		tighter(t, o, first)
		if first.Route < o.Route {
			t.Fatalf("route %v became %v", o.Route, first.Route)
		}
		for range 5 {
			rapid.SampledFrom(checkMoves).Draw(t, "move")(t, &c)
			worse := today(t, c, o)
			tighter(t, first, worse)
			first = worse
		}
	})
}

func today(t *rapid.T, c screening.Check, o screening.Outcome) screening.Outcome {
	got, err := screening.Today(c, o)
	if err != nil {
		t.Fatal(err)
	}
	return got
}
