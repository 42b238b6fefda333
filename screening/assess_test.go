package screening_test

import (
	"errors"
	"slices"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

func TestNothingFound(t *testing.T) {
	o := assess(t, well())
	expect(t, o, screening.NoRoute, screening.WithinLimits)
	if !o.Limits.IsZero() || len(o.Missing) != 0 {
		t.Errorf("limits %+v, missing %v, want none", o.Limits, o.Missing)
	}
	if _, ok := finding(o, "screening.nothing-found"); !ok {
		t.Error("nothing tells that no caution was found")
	}
}

// TestEffects holds the joining table of the package comment, one code each.
func TestEffects(t *testing.T) {
	for _, tt := range []struct {
		list      string
		code      screening.Code
		route     screening.Route
		meanwhile screening.Meanwhile
	}{
		{"red", "saddle_numbness", screening.Emergency, screening.Nothing},
		{"red", "stroke_signs", screening.Emergency, screening.Nothing},
		{"red", "fever_with_severe_back_pain", screening.SameDay, screening.Nothing},
		{"red", "hot_swollen_joint", screening.SameDay, screening.Nothing},
		{"red", "cancer_history", screening.Tell, screening.WithinLimits},
		{"red", "pelvic_heaviness", screening.PhysioLooks, screening.WithinLimits},
		{"symptom", "ischaemic_chest_neck_jaw_arm_pain", screening.SameDay, screening.Nothing},
		{"symptom", "dizziness_or_syncope", screening.SameDay, screening.Nothing},
		{"symptom", "ankle_oedema", screening.AskFirst, screening.Nothing},
		{"disease", "renal", screening.AskFirst, screening.UnloadedPractice},
		{"condition", "unstable_chd", screening.Emergency, screening.Nothing},
		{"condition", "aortic_dissection", screening.Emergency, screening.Nothing},
		{"condition", "decompensated_hf", screening.SameDay, screening.Nothing},
		{"condition", "acute_endocarditis", screening.SameDay, screening.Nothing},
		{"condition", "marfan", screening.AskFirst, screening.Nothing},
		{"condition", "severe_pulmonary_hypertension", screening.AskFirst, screening.Nothing},
		{"condition", "pacemaker", screening.AskFirst, screening.UnloadedPractice},
		{"condition", "major_chd_risk_factors", screening.Tell, screening.WithinLimits},
		{"condition", "musculoskeletal_limitation", screening.Tell, screening.WithinLimits},
		{"condition", "npdr_moderate_or_worse", screening.AskFirst, screening.UnloadedPractice},
		{"condition", "aortic_or_cerebral_aneurysm", screening.AskFirst, screening.Nothing},
		{"condition", "bone_metastases", screening.AskFirst, screening.UnloadedPractice},
		{"condition", "severe_cognitive_impairment", screening.AskFirst, screening.UnloadedPractice},
		{"condition", "vertebral_fracture", screening.AskFirst, screening.UnloadedPractice},
		{"condition", "recent_fracture", screening.AskFirst, screening.UnloadedPractice},
		{"condition", "total_knee_replacement", screening.AskFirst, screening.LightSupervised},
		{"condition", "rotator_cuff_repair", screening.AskFirst, screening.WithinLimits},
		{"condition", "glaucoma", screening.Tell, screening.WithinLimits},
		{"condition", "anticoagulant", screening.Tell, screening.WithinLimits},
		{"condition", "beta_blocker", screening.Tell, screening.WithinLimits},
		{"condition", "acute_mi", screening.Emergency, screening.Nothing},
	} {
		p := blank()
		p.BP = pressure(130, 80)
		lists := map[string]*screening.Checklist{"red": &p.RedFlags, "symptom": &p.Symptoms, "disease": &p.Diseases, "condition": &p.Conditions}
		*lists[tt.list] = screening.AskedFor(tt.code)
		p.Answers = map[screening.Code]screening.Answer{"vertebral_fracture": screening.No}
		o := assess(t, p)
		if o.Route != tt.route || o.Meanwhile != tt.meanwhile {
			t.Errorf("%s: %v, %v; want %v, %v", tt.code, o.Route, o.Meanwhile, tt.route, tt.meanwhile)
		}
		*lists[tt.list] = screening.Checklist{Asked: true, Unsure: []screening.Code{tt.code}}
		unsure := assess(t, p)
		if slices.Contains([]screening.Code{"vertebral_fracture", "total_knee_replacement", "ankle_oedema", "severe_cognitive_impairment"}, tt.code) { // see TestLookSettlesIt
			if unsure.Meanwhile != screening.WithinLimits || unsure.Route != screening.PhysioLooks || !o.Limits.AsTightAs(unsure.Limits) {
				t.Errorf("%s unsure: %v, %v", tt.code, unsure.Route, unsure.Meanwhile)
			}
		} else if unsure.Meanwhile != o.Meanwhile || unsure.Route > screening.AskFirst || !unsure.Limits.AsTightAs(o.Limits) {
			t.Errorf("%s unsure: %v, %v; want at most ask first, and %v", tt.code, unsure.Route, unsure.Meanwhile, o.Meanwhile)
		}
		if !misses(unsure, tt.code) {
			t.Errorf("%s unsure is not named as missing", tt.code)
		}
	}
}

// TestTables holds that what a clearance or time leaves is never tighter than
// what was there before: losing either tightens.
func TestReleasedNeverTighter(t *testing.T) {
	for term := range screening.Codes() {
		if term.Kind != screening.Condition && term.Kind != screening.Symptom {
			continue
		}
		p := blank()
		if term.Kind == screening.Condition {
			p.Conditions = screening.AskedFor(term.Code)
		} else {
			p.Symptoms = screening.AskedFor(term.Code)
		}
		for _, events := range [][]screening.Event{nil, {{Code: term.Code, Day: visit - 3000}}} { // lately or not known, and long ago
			p.Events = events
			if p.Validate() != nil {
				continue // no code that has a day
			}
			p.Clearances = nil
			without := assess(t, p)
			for effort := screening.Light; effort <= screening.Vigorous; effort++ {
				c := clearance(term.Code)
				c.Intensity = effort
				p.Clearances = []screening.Clearance{c}
				with := assess(t, p)
				if with.Meanwhile > without.Meanwhile || !without.Limits.AsTightAs(with.Limits) {
					t.Errorf("%s, %v, up to %v: losing a clearance loosens %v %+v to %v %+v", term.Code, events, effort, with.Meanwhile, with.Limits, without.Meanwhile, without.Limits)
				}
			}
		}
	}
}

func TestListsNotAsked(t *testing.T) {
	for name, forget := range map[screening.Code]func(*screening.Profile){
		"diseases":   func(p *screening.Profile) { p.Diseases = screening.Checklist{} },
		"symptoms":   func(p *screening.Profile) { p.Symptoms = screening.Checklist{} },
		"red_flags":  func(p *screening.Profile) { p.RedFlags = screening.Checklist{} },
		"conditions": func(p *screening.Profile) { p.Conditions = screening.Checklist{} },
	} {
		p := blank()
		forget(&p)
		o := assess(t, p)
		expect(t, o, screening.AskFirst, screening.Nothing)
		if !misses(o, name) {
			t.Errorf("%s is not named as missing", name)
		}
		if _, ok := finding(o, evidence.ReasonCode("screening.not-asked."+name)); !ok {
			t.Errorf("%s is no finding", name)
		}
	}
}

func TestDiabetes(t *testing.T) {
	p := blank()
	p.Diseases = screening.AskedFor("diabetes_t2")
	o := assess(t, p)
	expect(t, o, screening.AskFirst, screening.UnloadedPractice)
	if o.Rules.DiabetesStart != screening.NotNeeded || o.Rules.Preparticipation.Clearance != screening.BeforeAny {
		t.Errorf("rules %+v, want both answers shown", o.Rules)
	}
	for _, code := range []screening.Code{"insulin_or_secretagogue", "retinopathy_moderate_or_worse", "clearance"} {
		if !misses(o, code) {
			t.Errorf("%s is not asked", code)
		}
	}
	if _, held := finding(o, "screening.blood_pressure.unsure"); held {
		t.Error("held for a pressure that nothing triggered")
	}
	if !slices.Equal(o.EachDay, []screening.Code{"glucose"}) {
		t.Errorf("each day %v, want glucose", o.EachDay)
	}
	p.Answers = map[screening.Code]screening.Answer{"insulin_or_secretagogue": screening.No, "retinopathy_moderate_or_worse": screening.No}
	p.Clearances = []screening.Clearance{clearance("diabetes_t2")}
	o = assess(t, p)
	expect(t, o, screening.Tell, screening.WithinLimits)
	if o.Limits.MaxFraction != 0 || o.Limits.MaxIntensity != screening.Moderate || len(o.EachDay) != 0 {
		t.Errorf("limits %+v, each day %v", o.Limits, o.EachDay)
	}
	for name, change := range map[string]func(*screening.Profile){
		"vigorous": func(p *screening.Profile) { p.Wanted = screening.Vigorous },
		"active":   func(p *screening.Profile) { p.Activity = busy() },
		"symptom":  func(p *screening.Profile) { p.Symptoms = screening.AskedFor("ankle_oedema") },
		"heart":    func(p *screening.Profile) { p.Diseases = screening.AskedFor("diabetes_t2", "cardiac") },
		"none":     func(p *screening.Profile) { p.Diseases = screening.AskedFor() },
	} {
		q := p
		change(&q)
		if got := screening.DiabetesStart(q); got != 0 {
			t.Errorf("%s: DiabetesStart = %v, want no answer", name, got)
		}
	}
}

func TestActiveWithDisease(t *testing.T) {
	p := blank()
	p.Activity, p.BP, p.Wanted = busy(), pressure(130, 80), screening.Vigorous
	p.Diseases = screening.AskedFor("cardiac")
	o := assess(t, p)
	expect(t, o, screening.AskFirst, screening.WithinLimits)
	if o.Limits.MaxIntensity != screening.Moderate {
		t.Errorf("effort up to %v, want moderate", o.Limits.MaxIntensity)
	}
	p.Wanted = screening.Moderate
	expect(t, assess(t, p), screening.Tell, screening.WithinLimits)
	p.Wanted = screening.Vigorous
	p.Clearances = []screening.Clearance{clearance("cardiac")}
	o = assess(t, p)
	expect(t, o, screening.Tell, screening.WithinLimits)
	if o.Limits.MaxIntensity != 0 || o.ReviewBy <= visit {
		t.Errorf("limits %+v, review by %v", o.Limits, o.ReviewBy)
	}
	p.Wanted = 0
	p.Clearances = nil
	if o = assess(t, p); !misses(o, "wanted") || o.Limits.MaxIntensity != screening.Moderate {
		t.Errorf("wanted effort not given: missing %v, limits %+v", o.Missing, o.Limits)
	}
	if o.Rules.Preparticipation != (screening.PreparticipationAnswer{Branch: screening.A2}) {
		t.Errorf("rule %+v, want a branch without an answer", o.Rules.Preparticipation)
	}
	p.Activity = nil
	if o = assess(t, p); !misses(o, "activity") || o.Meanwhile != screening.UnloadedPractice {
		t.Errorf("activity not given: %v, missing %v", o.Meanwhile, o.Missing)
	}
	p.Symptoms = screening.Checklist{}
	if got := screening.Preparticipation(p); got != (screening.PreparticipationAnswer{}) {
		t.Errorf("symptoms not asked: %+v, want no answer", got)
	}
}

func TestPressureQuestion(t *testing.T) {
	p := blank()
	p.Conditions = screening.AskedFor("hypertension_treated")
	o := assess(t, p)
	expect(t, o, screening.AskFirst, screening.LightSupervised) // no looser than 160/100
	if !misses(o, "blood_pressure") || !o.Limits.NoBreathHolding || o.ReviewBy != visit+14 {
		t.Error("the pressure is not asked for")
	}
	p.BP = pressure(130, 80)
	o = assess(t, p)
	expect(t, o, screening.Tell, screening.WithinLimits)
	if !o.Limits.NoBreathHolding {
		t.Error("breath-holding is not ruled out")
	}
	p.Conditions = screening.AskedFor("uncontrolled_hypertension")
	expect(t, assess(t, p), screening.AskFirst, screening.LightSupervised)
	if got := screening.Contraindications(p); got.Level != screening.Relative {
		t.Errorf("with a reading: %+v", got)
	}
	p.BP = nil
	if got := screening.Contraindications(p); got.Level != screening.Absolute {
		t.Errorf("without a reading: %+v", got)
	}
}

func TestOsteoporosis(t *testing.T) {
	p := blank()
	p.Conditions = screening.AskedFor("osteoporosis")
	o := assess(t, p)
	expect(t, o, screening.PhysioLooks, screening.WithinLimits)
	if l := o.Limits; !misses(o, "vertebral_fracture") || !l.TechniqueFirst || !l.LowImpact || l.LeastCount != 8 {
		t.Error("a fracture of the spine is not asked after")
	}
	p.Answers = map[screening.Code]screening.Answer{"vertebral_fracture": screening.No}
	o = assess(t, p)
	expect(t, o, screening.Tell, screening.WithinLimits)
	if want := body.DemandSet(body.LoadedSpinalFlex, body.SpinalTwist, body.PickUpFromFloor); o.Limits.Avoid != want {
		t.Errorf("avoid %v, want %v", o.Limits.Avoid, want)
	}
	p.Answers["vertebral_fracture"] = screening.Yes
	if o = assess(t, p); !misses(o, "vertebral_fracture_day") {
		t.Errorf("the day is not asked for: %v", o.Missing)
	}
	p.Events = []screening.Event{{Code: "vertebral_fracture", Day: monthsAgo(t, 6)}}
	o = assess(t, p)
	expect(t, o, screening.Tell, screening.WithinLimits)
	if !o.Limits.TechniqueFirst || !o.Limits.LowImpact || misses(o, "vertebral_fracture_day") {
		t.Errorf("limits %+v, missing %v", o.Limits, o.Missing)
	}
	p.Events[0].Day++
	expect(t, assess(t, p), screening.AskFirst, screening.UnloadedPractice)
}

func TestFractureRegion(t *testing.T) {
	p := blank()
	p.Events = []screening.Event{{Code: "fracture", Day: visit - 30, Region: body.WristHand}}
	o := assess(t, p)
	expect(t, o, screening.AskFirst, screening.WithinLimits)
	if !o.Limits.Avoid.Has(body.WristResisted) || o.Limits.Avoid.Has(body.KneeResisted) {
		t.Errorf("avoid %v", o.Limits.Avoid)
	}
	if !slices.Equal(o.Rules.Wider, []screening.Code{"recent_fracture"}) {
		t.Errorf("wider list %v", o.Rules.Wider)
	}
	p.Events[0].Region = 0
	if o = assess(t, p); !misses(o, "fracture_region") || o.Meanwhile != screening.UnloadedPractice {
		t.Errorf("%v, missing %v", o.Meanwhile, o.Missing)
	}
	p.Events[0].Day = monthsAgo(t, 6)
	expect(t, assess(t, p), screening.NoRoute, screening.WithinLimits)
	p.Conditions = screening.AskedFor("recent_fracture") // slow to unite
	p.Events[0].Region = body.Knee
	if o = assess(t, p); !o.Limits.Avoid.Has(body.KneeResisted) {
		t.Errorf("avoid %v", o.Limits.Avoid)
	}
}

func TestAlone(t *testing.T) {
	standing := body.DemandSet(body.FreeStanding, body.Overhead, body.OverFace)
	for _, code := range []screening.Code{"falls_risk", "vertigo", "frailty", "parkinsons", "autonomic_neuropathy_postural_hypotension"} {
		for setting, want := range map[screening.Setting]bool{0: true, screening.Alone: true, screening.WithHelper: false, screening.InClinic: false} {
			p := blank()
			p.Conditions, p.Setting = screening.AskedFor(code), setting
			o := assess(t, p)
			if got := o.Limits.Avoid.Both(standing) == standing; got != want || !o.Limits.Support {
				t.Errorf("%s, %q: avoid %v, support %v", code, setting, o.Limits.Avoid, o.Limits.Support)
			}
		}
	}
	p := blank()
	p.Events = []screening.Event{{Code: "fall", Day: monthsAgo(t, 12) + 1}}
	if o := assess(t, p); !o.Limits.Support {
		t.Error("a fall leaves no support")
	}
	p.Events[0].Day = monthsAgo(t, 12)
	if o := assess(t, p); o.Limits.Support {
		t.Error("a fall of a year ago still counts")
	}
}

func TestHernia(t *testing.T) {
	p := blank()
	p.Conditions = screening.AskedFor("hernia")
	for a, want := range map[screening.Answer]screening.Route{screening.No: screening.Tell, screening.Unknown: screening.AskFirst, screening.Yes: screening.AskFirst} {
		p.Answers = map[screening.Code]screening.Answer{"hernia_symptomatic_or_large": a}
		o := assess(t, p)
		expect(t, o, want, screening.WithinLimits)
		if got := o.Limits.Avoid.Has(body.AbdominalPressure); got != (a != screening.No) {
			t.Errorf("answer %v: straining avoided %v", a, got)
		}
	}
}

func TestSignsTogether(t *testing.T) {
	p := blank()
	p.RedFlags = screening.AskedFor("cancer_history", "unexplained_weight_loss")
	o := assess(t, p)
	expect(t, o, screening.SameDay, screening.Nothing)
	if o.Rules.RedFlags != screening.UrgentReferral {
		t.Errorf("rule says %v", o.Rules.RedFlags)
	}
	p.RedFlags = screening.AskedFor("cancer_history", "weakened_immune_system")
	o = assess(t, p)
	expect(t, o, screening.Tell, screening.WithinLimits)
	if o.Rules.RedFlags != screening.NoReferral {
		t.Errorf("rule says %v", o.Rules.RedFlags)
	}
	p.RedFlags = screening.Checklist{Asked: true, Present: []screening.Code{"cancer_history"}, Unsure: []screening.Code{"pain_in_many_places"}}
	expect(t, assess(t, p), screening.AskFirst, screening.Nothing)
}

func TestOrderAndJoin(t *testing.T) {
	p := blank()
	p.Conditions = screening.AskedFor("glaucoma", "unstable_chd", "pacemaker", "beta_blocker")
	o := assess(t, p)
	if !slices.IsSortedFunc(o.Findings, func(a, b screening.Finding) int { return int(b.Route) - int(a.Route) }) {
		t.Errorf("findings not the gravest first: %+v", o.Findings)
	}
	var all screening.Limits
	for _, f := range o.Findings {
		all = all.Join(f.Limits)
	}
	if !all.AsTightAs(o.Limits) || !o.Limits.AsTightAs(all) {
		t.Errorf("limits %+v are not those of the findings, %+v", o.Limits, all)
	}
	p.Conditions = screening.AskedFor("beta_blocker", "pacemaker", "unstable_chd", "glaucoma")
	if again := assess(t, p); len(again.Findings) != len(o.Findings) || again.Findings[0].Reason.Code != o.Findings[0].Reason.Code {
		t.Error("the order of answers changes the outcome")
	}
}

func TestAssessRefuses(t *testing.T) {
	_, err := screening.Assess(screening.Profile{})
	var fields field.Errors
	if !errors.As(err, &fields) || len(fields) != 2 {
		t.Errorf("Assess of nothing: %v, want day and age", err)
	}
}
