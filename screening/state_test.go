package screening_test

import (
	"math"
	"slices"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

func TestDuringThresholds(t *testing.T) {
	const a, b, c = "stop_bp_ge_250_or_115", "stop_bp_gt_260_or_115", "stop_bp_gt_250_or_120"
	for name, tt := range map[string]struct {
		m      screening.Moment
		action screening.StopAction
		want   []evidence.ReasonCode
	}{
		"nothing":    {screening.Moment{}, screening.CarryOn, nil},
		"249/114":    {screening.Moment{BP: pressure(249, 114)}, screening.CarryOn, nil},
		"250/100":    {screening.Moment{BP: pressure(250, 100)}, screening.EndSession, []evidence.ReasonCode{a}},
		"251/100":    {screening.Moment{BP: pressure(251, 100)}, screening.EndSession, []evidence.ReasonCode{a, c}},
		"260/100":    {screening.Moment{BP: pressure(260, 100)}, screening.EndSession, []evidence.ReasonCode{a, c}},
		"261/100":    {screening.Moment{BP: pressure(261, 100)}, screening.EndSession, []evidence.ReasonCode{a, b, c}},
		"200/115":    {screening.Moment{BP: pressure(200, 115)}, screening.EndSession, []evidence.ReasonCode{a}},
		"200/116":    {screening.Moment{BP: pressure(200, 116)}, screening.EndSession, []evidence.ReasonCode{a, b}},
		"200/120":    {screening.Moment{BP: pressure(200, 120)}, screening.EndSession, []evidence.ReasonCode{a, b}},
		"200/121":    {screening.Moment{BP: pressure(200, 121)}, screening.EndSession, []evidence.ReasonCode{a, b, c}},
		"fall 10":    {screening.Moment{SystolicFall: 10}, screening.CarryOn, nil},
		"fall 11":    {screening.Moment{SystolicFall: 11}, screening.EndSession, []evidence.ReasonCode{"stop_systolic_fall_gt_10"}},
		"88 %":       {screening.Moment{SpO2: 88}, screening.EndSession, []evidence.ReasonCode{"stop_spo2_lt_89", "stop_spo2_lt_90"}},
		"89 %":       {screening.Moment{SpO2: 89}, screening.EndSet, []evidence.ReasonCode{"stop_spo2_lt_90"}},
		"90 %":       {screening.Moment{SpO2: 90}, screening.CarryOn, nil},
		"pain 5":     {screening.Moment{Pain: score(5)}, screening.CarryOn, nil},
		"pain 5.5":   {screening.Moment{Pain: score(5.5)}, screening.EndSet, []evidence.ReasonCode{"pain_gt_5_reduce"}},
		"chest":      {screening.Moment{Signs: []screening.Code{"chest_symptom"}}, screening.GetHelp, []evidence.ReasonCode{"chest_symptom"}},
		"dizzy":      {screening.Moment{Signs: []screening.Code{"dizzy_or_swaying"}}, screening.EndSession, []evidence.ReasonCode{"dizzy_or_swaying"}},
		"asks":       {screening.Moment{Signs: []screening.Code{"asks_to_stop"}}, screening.EndSet, []evidence.ReasonCode{"asks_to_stop"}},
		"stroke":     {screening.Moment{Signs: []screening.Code{"stroke_signs"}}, screening.GetHelp, []evidence.ReasonCode{"stroke_signs"}},
		"tendon":     {screening.Moment{Signs: []screening.Code{"tendon_pop"}}, screening.EndSession, []evidence.ReasonCode{"tendon_pop"}},
		"night pain": {screening.Moment{Signs: []screening.Code{"unremitting_night_pain"}}, screening.EndSession, []evidence.ReasonCode{"unremitting_night_pain"}},
	} {
		got, err := screening.During(tt.m)
		var codes []evidence.ReasonCode
		for _, f := range got.Findings {
			codes = append(codes, f.Reason.Code[len("screening."):])
		}
		if err != nil || got.Action != tt.action || !slices.Equal(codes, tt.want) {
			t.Errorf("%s: %v %v %v, want %v %v", name, got.Action, codes, err, tt.action, tt.want)
		}
	}
	pain := 11.0
	_, err := screening.During(screening.Moment{Signs: []screening.Code{"glaucoma"}, BP: pressure(10, 5), SystolicFall: 201, SpO2: 49, Pain: &pain})
	if got := paths(err); len(got) != 6 {
		t.Errorf("bad fields %v, want six at once", got)
	}
	for _, row := range screening.StopRows() {
		if _, ok := ledger(t).Fact(row.Fact); !ok || row.Action < screening.EndSet || row.Says == "" {
			t.Errorf("row %+v", row)
		}
	}
}

// A score that is no number is never taken for a low one.
func TestPainOfNoNumber(t *testing.T) {
	nan, low := math.NaN(), 1.0
	for _, p := range []screening.Pain{{During: &nan, After: &low}, {During: &low, After: &nan}} {
		p.Kind = screening.OrdinaryPain
		if got := screening.PainModel(p); got.Zone != screening.ZoneOver5 || got.MayProgress {
			t.Errorf("%+v", got)
		}
	}
}

func TestPainModel(t *testing.T) {
	base := screening.Pain{Kind: screening.OrdinaryPain, After: score(1), SettledNextMorning: screening.Yes, WeeklyTrend: screening.StablePain}
	for v, want := range map[float64][2]screening.PainZone{
		0: {1, 1}, 2: {1, 1}, 2.5: {2, 1}, 3: {2, 1}, 3.5: {2, 2}, 5: {2, 2}, 5.1: {3, 3}, 10: {3, 3},
	} {
		p := base
		p.During = score(v)
		if got := screening.PainModel(p); got.Zone != want[0] || got.Variant != want[1] || !got.Applies {
			t.Errorf("pain %v: %+v, want zones %v", v, got, want)
		}
	}
	for name, tt := range map[string]struct {
		change   func(*screening.Pain)
		plan     screening.DayPlan
		progress bool
	}{
		"little":          {func(p *screening.Pain) { p.During = score(2) }, screening.AsPlanned, true},
		"some":            {func(p *screening.Pain) { p.During = score(4) }, screening.AsPlanned, false},
		"some, knee":      {func(p *screening.Pain) { p.During, p.Usual, p.Osteoarthritis = score(4), score(4), screening.Yes }, screening.AsPlanned, true},
		"knee, usual 5.5": {func(p *screening.Pain) { p.During, p.Usual, p.Osteoarthritis = score(4), score(5.5), screening.Yes }, screening.AsPlanned, false},
		"knee, rising": {func(p *screening.Pain) {
			p.During, p.Usual, p.Osteoarthritis, p.WeeklyTrend = score(4), score(4), screening.Yes, screening.RisingPain
		}, screening.Lighter, false},
		"back to usual": {func(p *screening.Pain) {
			p.During, p.Usual, p.NextMorning, p.SettledNextMorning = score(2), score(3), score(3), screening.Unknown
		}, screening.AsPlanned, true},
		"above usual":      {func(p *screening.Pain) { p.During, p.Usual, p.NextMorning = score(2), score(3), score(3.5) }, screening.Lighter, false},
		"trend not known":  {func(p *screening.Pain) { p.During, p.WeeklyTrend = score(1), 0 }, screening.AsPlanned, false},
		"score not known":  {func(p *screening.Pain) { p.After = nil }, screening.AsPlanned, false},
		"chest, no matter": {func(p *screening.Pain) { p.During, p.Kind = score(0), screening.ChestPain }, screening.NotToday, false},
	} {
		p := base
		tt.change(&p)
		if got := screening.PainModel(p); got.Plan != tt.plan || got.MayProgress != tt.progress {
			t.Errorf("%s: %+v, want %v, %v", name, got, tt.plan, tt.progress)
		}
	}
}

// TestPainNeverModelled holds that the model speaks of no other kind of pain.
func TestPainNeverModelled(t *testing.T) {
	for k := screening.ChestPain; k <= screening.PostOperativePain; k++ {
		c := quiet()
		c.Pain = &screening.Pain{Kind: k, During: score(0), After: score(0), SettledNextMorning: screening.Yes, WeeklyTrend: screening.FallingPain}
		o := mustToday(t, c, assess(t, blank()))
		plan := screening.NotToday
		if k == screening.SpreadingPain { // without a sign of a serious cause the physiotherapist looks
			plan = screening.Lighter
		}
		if o.Plan != plan || o.Rules.Pain.Applies || o.Rules.Pain.MayProgress || o.Rules.SessionDay.Plan != screening.AsPlanned {
			t.Errorf("%v: %v, %+v", k, o.Plan, o.Rules.Pain)
		}
		if i := slices.IndexFunc(o.Findings, func(f screening.Finding) bool { return f.Code == o.Rules.Pain.Reasons[0] }); i < 0 || o.Findings[i].Route != o.Rules.Pain.Route || o.Rules.Pain.Route == 0 {
			t.Errorf("%v: the model sends to %v, the day's check finds %+v", k, o.Rules.Pain.Route, o.Findings)
		}
	}
	c := quiet()
	c.Pain = &screening.Pain{During: score(0), After: score(0), SettledNextMorning: screening.Yes, WeeklyTrend: screening.FallingPain}
	if o := mustToday(t, c, assess(t, blank())); o.Plan != screening.SettleFirst || !misses(o, "pain_kind") {
		t.Errorf("kind not given: %v, missing %v", o.Plan, o.Missing)
	}
}

func TestFalls(t *testing.T) {
	score := func(n int) *int { return &n }
	for name, tt := range map[string]struct {
		f    screening.FallsScreen
		want screening.Answer
	}{
		"3": {screening.FallsScreen{SelfScore: score(3)}, screening.No}, "4": {screening.FallsScreen{SelfScore: score(4)}, screening.Yes}, "5": {screening.FallsScreen{SelfScore: score(5)}, screening.Yes},
		"one point": {screening.FallsScreen{Afraid: screening.Yes}, screening.Yes}, "no point": {screening.FallsScreen{Fell: screening.No, Unsteady: screening.No, Afraid: screening.No}, screening.No},
		"begun": {screening.FallsScreen{Fell: screening.No}, screening.Unknown}, "score and point": {screening.FallsScreen{SelfScore: score(0), Fell: screening.Yes}, screening.Yes},
	} {
		p := blank()
		p.Falls = &tt.f
		o := assess(t, p)
		got := o.Rules.Falls
		if got.Positive != tt.want || (len(got.LookAt) == 10) != (tt.want == screening.Yes) || o.Limits.Support != (tt.want != screening.No) || misses(o, "falls") != (tt.want == screening.Unknown) {
			t.Errorf("%s: %+v, support %v, missing %v; want %v", name, got, o.Limits.Support, o.Missing, tt.want)
		}
		if days, _ := units.Between(30, 90); tt.want == screening.Yes && got.FollowUp != days {
			t.Errorf("%s: follow up in %v", name, got.FollowUp)
		}
	}
}

// TestFrailtyLevels holds that a higher level never lets more go on.
func TestFrailtyLevels(t *testing.T) {
	var before screening.Outcome
	for level := 1; level <= 9; level++ {
		code, err := screening.FrailtyLevel(level)
		if err != nil {
			t.Fatal(err)
		}
		p := blank()
		p.Setting = screening.Alone
		p.Conditions = screening.AskedFor(code)
		o := assess(t, p)
		if o.Meanwhile < before.Meanwhile || !o.Limits.AsTightAs(before.Limits) {
			t.Errorf("level %d lets more go on than the one before", level)
		}
		before = o
	}
	for _, level := range []int{0, 10} {
		if code, err := screening.FrailtyLevel(level); err == nil {
			t.Errorf("level %d is %q", level, code)
		}
	}
}

func TestOsteoporosisVersions(t *testing.T) {
	l, n := ledger(t), 0
	for v := range screening.OsteoporosisVersions() {
		n++
		for _, id := range v.Facts {
			if _, ok := l.Fact(id); !ok {
				t.Errorf("%s: no fact %s", v.Country, id)
			}
		}
		if v.Movements == "" || v.Dose == "" {
			t.Errorf("%s is silent", v.Country)
		}
	}
	for range screening.OsteoporosisVersions() {
		break
	}
	if n != 3 {
		t.Errorf("%d versions, want 3", n)
	}
}

func TestHappened(t *testing.T) {
	c := quiet()
	c.Events = []screening.Event{{Code: "fall", Day: visit}, {Code: "fall", Day: visit}, {Code: "heart_attack", Day: visit}}
	o := mustToday(t, c, assess(t, blank()))
	if !slices.Equal(o.Ended, []screening.Code{"fall", "heart_attack"}) || o.Meanwhile != screening.Nothing || !o.Limits.Support {
		t.Errorf("ended %v, %v, %+v", o.Ended, o.Meanwhile, o.Limits)
	}
	c.Events = c.Events[:1]
	if o = mustToday(t, c, assess(t, blank())); o.Meanwhile != screening.UnloadedPractice {
		t.Errorf("after a fall: %v", o.Meanwhile)
	}
	c.Events[0].Day = visit + 1
	if _, err := screening.Today(c, assess(t, blank())); paths(err)["/check/events/0/day"] == nil {
		t.Errorf("an event of tomorrow: %v", err)
	}
}

func TestOwnState(t *testing.T) {
	for name, tt := range map[string]struct {
		change func(*screening.Check)
		want   screening.DayPlan
	}{
		"sore 3 days": {func(c *screening.Check) { c.SorenessDays = 3 }, screening.AsPlanned},
		"sore 4 days": {func(c *screening.Check) { c.SorenessDays = 4 }, screening.Lighter},
		"unwell":      {func(c *screening.Check) { c.Unwell = screening.Yes }, screening.Lighter},
		"fever":       {func(c *screening.Check) { c.Febrile = screening.Yes }, screening.NotToday},
		"not asked":   {func(c *screening.Check) { c.Febrile = screening.Unknown }, screening.SettleFirst},
		"numb":        {func(c *screening.Check) { c.New = screening.AskedFor("saddle_numbness") }, screening.HelpNow},
		"89 %":        {func(c *screening.Check) { c.SpO2 = 89 }, screening.Lighter},
	} {
		c := quiet()
		tt.change(&c)
		o := mustToday(t, c, assess(t, blank()))
		if o.Plan != tt.want {
			t.Errorf("%s: %v, want %v", name, o.Plan, tt.want)
		}
		if light := o.Limits.Lighten; tt.want == screening.Lighter && light != (screening.Lighten{AtMostLast: true, FewerSets: 1, MoreReserve: 2}) {
			t.Errorf("%s: lighter by %+v", name, light)
		}
	}
}

// TestNoStrips: ketones that cannot be tested are asked about; without insulin
// that is no lasting hold.
func TestNoStrips(t *testing.T) {
	c := quiet()
	c.Glucose, c.NoKetoneStrips, c.InsulinOrSecretagogue = glucose("15 mmol/L"), true, screening.No
	o := mustToday(t, c, assess(t, blank()))
	expect(t, o, screening.AskFirst, screening.LightSupervised)
	c.InsulinOrSecretagogue, c.SevereLow = screening.Yes, screening.No
	if o = mustToday(t, c, assess(t, blank())); o.Meanwhile != screening.Nothing || o.Plan != screening.SettleFirst {
		t.Errorf("on insulin: %v, %v", o.Meanwhile, o.Plan)
	}
}

func TestEachDayAsked(t *testing.T) {
	for name, tt := range map[string]struct {
		change func(*screening.Profile)
		give   func(*screening.Check)
		want   screening.Code
	}{
		"heart failure": {func(p *screening.Profile) {
			p.Conditions = screening.AskedFor("heart_failure")
			p.Clearances = []screening.Clearance{clearance("heart_failure")}
		}, func(c *screening.Check) { c.Worsening = screening.No }, "hf_worsening"},
		"lungs":  {func(p *screening.Profile) { p.Conditions = screening.AskedFor("lung_disease") }, func(c *screening.Check) { c.SpO2 = 95 }, "oxygen_saturation"},
		"home":   {func(p *screening.Profile) { p.HomeReadings = []screening.Code{"blood_pressure"} }, func(c *screening.Check) { c.BP = pressure(130, 80) }, "blood_pressure"},
		"pulse":  {func(p *screening.Profile) { p.HomeReadings = []screening.Code{"resting_pulse"} }, func(c *screening.Check) { c.RestingPulse = 70 }, "resting_pulse"},
		"scales": {func(p *screening.Profile) { p.HomeReadings = []screening.Code{"weight_gain"} }, func(c *screening.Check) { c.Weight = &screening.WeightGain{Days: 1} }, "weight_gain"},
	} {
		p, c := blank(), quiet()
		tt.change(&p)
		o := assess(t, p)
		if got := mustToday(t, c, o); !misses(got, tt.want) || got.Plan != screening.SettleFirst {
			t.Errorf("%s: missing %v, plan %v", name, got.Missing, got.Plan)
		}
		tt.give(&c)
		if got := mustToday(t, c, o); misses(got, tt.want) || got.Plan != screening.AsPlanned {
			t.Errorf("%s given: missing %v, plan %v", name, got.Missing, got.Plan)
		}
	}
	if got := mustToday(t, quiet(), assess(t, well())); len(got.Missing) > 0 {
		t.Errorf("asked without a trigger: %v", got.Missing)
	}
}

// TestParentFirst: the day of what is not known to be is not asked for.
func TestParentFirst(t *testing.T) {
	p := blank()
	p.Conditions = screening.AskedFor("osteoporosis")
	o := assess(t, p)
	if !misses(o, "vertebral_fracture") || misses(o, "vertebral_fracture_day") {
		t.Errorf("missing %v", o.Missing)
	}
	p.Conditions = screening.Checklist{Asked: true, Unsure: []screening.Code{"total_knee_replacement", "recent_fracture"}}
	if o = assess(t, p); misses(o, "total_knee_replacement_day") || misses(o, "fracture_region") || !misses(o, "recent_fracture") {
		t.Errorf("missing %v", o.Missing)
	}
}
