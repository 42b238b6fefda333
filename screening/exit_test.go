package screening_test

import (
	"encoding/json"
	"maps"
	"math/rand/v2"
	"slices"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// TestEveryHoldHasAnExit holds, over random visits, that whatever holds or sends
// somebody names who lifts it and with what, and that the one way that would free
// most is among them.
func TestEveryHoldHasAnExit(t *testing.T) {
	r := rand.New(rand.NewPCG(50, 21))
	for range usualCases / 8 {
		o := assess(t, randomProfile(r))
		o = mustToday(t, checkFor(r, o), o)
		held, named := false, o.Frees.Who == 0
		for _, f := range o.Findings {
			holds := f.Meanwhile > screening.WithinLimits || f.Route >= screening.PhysioLooks
			if holds != (f.Exit.Who != 0) || holds != (f.Exit.With != 0) {
				t.Fatalf("%s, %v, %v: the way out is %q", f.Code, f.Route, f.Meanwhile, f.Exit)
			}
			exit := f.Exit
			exit.From = 0
			held, named = held || holds, named || exit == o.Frees
		}
		if held != (o.Frees.Who != 0) || !named {
			t.Fatalf("held %v, frees most %q, named %v", held, o.Frees, named)
		}
	}
}

// TestAnswersFree holds that the answer that would free most lets no less go on once
// it is given, and that it was a question.
func TestAnswersFree(t *testing.T) {
	r, freed := rand.New(rand.NewPCG(50, 22)), 0
	for range max(2500, usualCases/8) { // fewer free nobody
		p := randomProfile(r)
		o := assess(t, p)
		if o.Frees.With != screening.AnAnswer || !slices.Contains(yesNoCodes, o.Frees.Ask) {
			continue
		}
		if !misses(o, o.Frees.Ask) {
			t.Fatalf("%s would free most and is not missing", o.Frees.Ask)
		}
		p.Answers = maps.Clone(p.Answers)
		p.Answers[o.Frees.Ask] = screening.No
		after := assess(t, p)
		if after.Meanwhile > o.Meanwhile {
			t.Fatalf("%s answered with no: %v became %v", o.Frees.Ask, o.Meanwhile, after.Meanwhile)
		}
		if after.Meanwhile < o.Meanwhile {
			freed++
		}
	}
	if freed == 0 {
		t.Error("no answer freed anybody")
	}
}

// TestEndsByItself holds the day from which a hold ends by itself.
func TestEndsByItself(t *testing.T) {
	p := well()
	p.Conditions, p.Events = screening.AskedFor("vertebral_fracture"), []screening.Event{{Code: "vertebral_fracture", Day: visit - 30}}
	f, _ := finding(assess(t, p), "screening.vertebral_fracture")
	if f.Exit.With != screening.ADate || f.Exit.From <= visit || f.Exit.From > visit+160 {
		t.Fatalf("%+v", f.Exit)
	}
	p.Day = f.Exit.From
	if o := assess(t, p); o.Meanwhile != screening.WithinLimits {
		t.Errorf("on that day: %v", o.Meanwhile)
	}
	p.Day--
	if o := assess(t, p); o.Meanwhile == screening.WithinLimits {
		t.Error("the day before it is over")
	}
}

// TestPolicy holds the two lists where they differ, the policy that is kept, and that
// the rules answer as they did.
func TestPolicy(t *testing.T) {
	older, ada := screening.JoinPolicy{RiskFactors: screening.OlderList}, screening.JoinPolicy{DiabetesStart: screening.NewerList}
	p := well()
	p.Wanted, p.Diseases = screening.Light, screening.AskedFor("diabetes_t2")
	p.Answers = map[screening.Code]screening.Answer{"insulin_or_secretagogue": screening.No, "retinopathy_moderate_or_worse": screening.No}
	for name, tt := range map[string]struct {
		policy screening.JoinPolicy
		active bool
		want   screening.Meanwhile
	}{
		"own, not active": {screening.JoinPolicy{}, false, screening.UnloadedPractice}, // ACSM N2
		"own, active":     {screening.JoinPolicy{}, true, screening.WithinLimits},      // ACSM A2
		"older, active":   {older, true, screening.LightSupervised},                    // AHA 2007
		"ADA, not active": {ada, false, screening.WithinLimits},
	} {
		p.Activity = &screening.Activity{Intensity: screening.Idle}
		if tt.active {
			p.Activity = busy()
		}
		o := by(t, p, tt.policy)
		if o.Meanwhile != tt.want || o.Policy.Edition != screening.Edition || o.Policy.RiskFactors == 0 || o.Policy.DiabetesStart == 0 {
			t.Errorf("%s: %v, want %v; %+v", name, o.Meanwhile, tt.want, o.Policy)
		}
		if o.Rules.Contraindications.Level != screening.Relative {
			t.Errorf("%s: the older list's own answer is %v", name, o.Rules.Contraindications.Level)
		}
	}
	p.Conditions.Unsure = []screening.Code{"pacemaker"} // what is not known is not freed
	p.Activity = &screening.Activity{Intensity: screening.Idle}
	if o := by(t, p, ada); o.Meanwhile < screening.UnloadedPractice {
		t.Errorf("ADA, a pacemaker not known: %v", o.Meanwhile)
	}
	if _, err := screening.Assess(p, older, ada); err == nil {
		t.Error("two policies are taken")
	}
	if _, err := screening.Assess(p, screening.JoinPolicy{RiskFactors: 9}); err == nil {
		t.Error("a policy that is none is taken")
	}
}

// TestOlderListsHoldMore holds that following the older lists frees nobody.
func TestOlderListsHoldMore(t *testing.T) {
	r := rand.New(rand.NewPCG(50, 23))
	for i := range usualCases / 8 {
		p := randomProfile(r)
		tighter(t, "older lists", i, assess(t, p), by(t, p, screening.JoinPolicy{RiskFactors: screening.OlderList, DiabetesStart: screening.OlderList}))
	}
}

// TestOlderRecords holds that a profile that was stored before the finer questions
// reads as the graver of the people that its codes hid. The record is invented.
func TestOlderRecords(t *testing.T) {
	for code, want := range map[screening.Code]screening.Meanwhile{
		"dizziness_or_syncope": screening.Nothing, "ankle_oedema": screening.Nothing, "known_heart_murmur": screening.Nothing,
		"palpitations_or_tachycardia": screening.Nothing, "intermittent_claudication": screening.Nothing, "recent_eye_operation": screening.Nothing,
		"total_hip_replacement": screening.LightSupervised, "pacemaker": screening.LightSupervised, "icd": screening.LightSupervised,
		"after_mi_or_stroke": screening.LightSupervised, "pain_made_worse_by_training": screening.UnloadedPractice, "unstable_or_injured_joint": screening.UnloadedPractice,
	} {
		list := map[screening.Kind]string{screening.Symptom: "symptoms", screening.Condition: "conditions"}
		term, _ := screening.LookUp(code)
		stored := `{"day":"2026-11-25","age":70,"activity":{"days_per_week":3,"minutes":30,"intensity":"moderate","months":3},"wanted":"light","diseases":{"asked":true},"red_flags":{"asked":true},"bp":{"systolic":130,"diastolic":80},"setting":"in a clinic",` +
			`"symptoms":{"asked":true},"conditions":{"asked":true}}`
		var p screening.Profile
		if err := field.Decode([]byte(stored), &p, field.Strict); err != nil {
			t.Fatal(err)
		}
		if list[term.Kind] == "symptoms" {
			p.Symptoms = screening.AskedFor(code)
		} else {
			p.Conditions = screening.AskedFor(code)
		}
		if o := assess(t, p); o.Meanwhile != want {
			t.Errorf("%s: %v, want %v", code, o.Meanwhile, want)
		}
	}
	var f screening.Finding
	if err := json.Unmarshal([]byte(`{"code":"renal","known":true,"reason":{"code":"screening.renal"},"route":"ask first","meanwhile":"nothing"}`), &f); err != nil || f.Exit.Who != 0 || f.Route != screening.AskFirst {
		t.Errorf("a stored finding: %+v, %v", f, err)
	}
}

// TestSites holds that only the place of what has one is held, and that the whole
// body, or no place, holds the person.
func TestSites(t *testing.T) {
	for _, code := range sitedCodes {
		p := well()
		p.Conditions = screening.AskedFor(code)
		if o := assess(t, p); o.Meanwhile != screening.UnloadedPractice || !misses(o, code+"_site") {
			t.Errorf("%s without its place: %v, missing %v", code, o.Meanwhile, o.Missing)
		}
		p.Sites = []screening.Site{{Code: code, Region: body.Knee}}
		o := assess(t, p)
		if o.Meanwhile != screening.WithinLimits || !o.Limits.Avoid.Has(body.KneeResisted) || o.Limits.Avoid.Has(body.ElbowResisted) {
			t.Errorf("%s of a knee: %v, %v", code, o.Meanwhile, o.Limits.Avoid)
		}
		p.Sites[0].Region = body.WholeBody
		if o = assess(t, p); o.Meanwhile != screening.UnloadedPractice {
			t.Errorf("%s of the whole body: %v", code, o.Meanwhile)
		}
	}
	broken := func(r body.Region) screening.Outcome {
		return assess(t, made(func(p *screening.Profile) {
			p.Events = []screening.Event{{Code: "fracture", Day: visit - 40, Region: r}}
		}))
	}
	if knee, whole := broken(body.Knee), broken(body.WholeBody); knee.Meanwhile != screening.WithinLimits || whole.Meanwhile == screening.WithinLimits {
		t.Errorf("a bone broken: %v at the knee, %v of the whole body", knee.Meanwhile, whole.Meanwhile)
	}
	p := well()
	p.Sites = []screening.Site{{Code: "renal", Region: body.Knee}}
	if p.Validate() == nil {
		t.Error("kidneys with a place are taken")
	}
}

// TestSpreadingPain holds that pain that spreads, without a sign of a serious cause,
// stops its place and not the rest.
func TestSpreadingPain(t *testing.T) {
	c := quiet()
	c.Pain = &screening.Pain{Kind: screening.SpreadingPain, Site: body.Hip}
	o := mustToday(t, c, assess(t, well()))
	if o.Route != screening.PhysioLooks || o.Meanwhile != screening.WithinLimits || !o.Limits.Avoid.Has(body.HipResisted) || o.Limits.Avoid.Has(body.ShoulderResisted) {
		t.Errorf("%v, %v, %v", o.Route, o.Meanwhile, o.Limits.Avoid)
	}
	for _, nowhere := range []body.Region{0, body.WholeBody} { // no place that could be spared alone
		c.Pain.Site = nowhere
		if o = mustToday(t, c, assess(t, well())); o.Meanwhile == screening.WithinLimits {
			t.Errorf("of %v all goes on: %v", nowhere, o.Limits.Avoid)
		}
	}
	c.New = screening.AskedFor("severe_or_growing_leg_deficit")
	if o = mustToday(t, c, assess(t, well())); o.Route != screening.Emergency {
		t.Errorf("with a leg that fails: %v", o.Route)
	}
}

// TestChronicSigns holds pairs of signs of the spine: pain of years is looked at, a
// cancer long past is asked about, and with any other sign both stop.
func TestChronicSigns(t *testing.T) {
	for name, tt := range map[string]struct {
		flags []screening.Code
		route screening.Route
	}{
		"pain of years":            {[]screening.Code{"back_pain_not_better_at_a_month", "pain_in_many_places"}, screening.PhysioLooks},
		"and a cancer long past":   {[]screening.Code{"back_pain_not_better_at_a_month", "cancer_history"}, screening.AskFirst},
		"and loss of weight":       {[]screening.Code{"back_pain_not_better_at_a_month", "unexplained_weight_loss"}, screening.SameDay},
		"night pain, cancer past":  {[]screening.Code{"unremitting_night_pain", "cancer_history"}, screening.SameDay},
		"all three, none explains": {[]screening.Code{"unremitting_night_pain", "pain_in_many_places", "cancer_history"}, screening.SameDay},
	} {
		p := well()
		p.RedFlags = screening.AskedFor(tt.flags...)
		p.Answers = map[screening.Code]screening.Answer{"cancer_active": screening.No, "chronic_pain_changed": screening.No}
		o := assess(t, p)
		if o.Route != tt.route || (o.Meanwhile == screening.Nothing) != (tt.route == screening.SameDay) {
			t.Errorf("%s: %v, %v", name, o.Route, o.Meanwhile)
		}
		if o.Rules.RedFlags != screening.UrgentReferral {
			t.Errorf("%s: the rule's own answer is %v", name, o.Rules.RedFlags)
		}
		p.Answers = nil
		if o = assess(t, p); o.Route != screening.SameDay && tt.route != screening.SameDay || !misses(o, "cancer_active") && slices.Contains(tt.flags, "cancer_history") {
			t.Errorf("%s, not asked: %v, missing %v", name, o.Route, o.Missing)
		}
	}
}

// unaskedLooks are looks that no question takes, and what ends them instead: the answers to
// the signs behind them, the record of the next session, or the assessment that follows a fall.
var unaskedLooks = []screening.Code{"flags-chronic", "fall", "pain_spreading"}

// TestEveryLookIsTaken holds that what a physiotherapist's look lifts has a question that
// takes it, and that the answer lifts it.
func TestEveryLookIsTaken(t *testing.T) {
	r := rand.New(rand.NewPCG(50, 24))
	for range usualCases / 8 {
		o := assess(t, randomProfile(r))
		o = mustToday(t, checkFor(r, o), o)
		for _, f := range o.Findings {
			if f.Exit.With == screening.ALook && f.Exit.Ask == "" && !slices.Contains(unaskedLooks, f.Code) {
				t.Fatalf("%s: no question takes the look", f.Code)
			}
		}
	}
	dated := func(p *screening.Profile) { p.Events = []screening.Event{{Code: "hip_fracture", Day: visit - 150}} }
	placed := func(p *screening.Profile) {
		p.Sites = []screening.Site{{Code: "pain_made_worse_by_training", Region: body.Knee}}
	}
	for code, tt := range map[screening.Code]struct {
		question screening.Code
		more     func(*screening.Profile)
		left     screening.Limits // in a clinic
	}{
		"back_pain_not_better_at_a_month": {question: "back_pain_unseen"}, "pain_in_many_places": {question: "many_pains_unseen"}, "pelvic_heaviness": {question: "pelvic_heaviness_unseen", left: screening.Limits{NoBreathHolding: true}},
		"spinal_deformity": {question: "spine_shape_unseen"}, "severe_midline_back_pain": {question: "midline_pain_unseen"},
		"pain_made_worse_by_training": {question: "worse_pain_unseen", more: placed}, "hip_fracture": {question: "hip_fracture_unseen", more: dated, left: screening.Limits{LowImpact: true, Support: true}},
	} {
		p := well()
		p.Setting = screening.InClinic
		has(code)(&p)
		if tt.more != nil {
			tt.more(&p)
		}
		o := assess(t, p)
		if o.Route != screening.PhysioLooks || !misses(o, tt.question) || o.Frees.Ask != tt.question {
			t.Errorf("%s: %v, missing %v", code, o.Frees, o.Missing)
		}
		p.Answers = map[screening.Code]screening.Answer{tt.question: screening.Yes}
		if o = assess(t, p); o.Route != screening.PhysioLooks || misses(o, tt.question) {
			t.Errorf("%s, still to be looked at: %v", code, o.Route)
		}
		p.Answers[tt.question] = screening.No
		if o = assess(t, p); o.Route != screening.Tell || !o.Limits.AsTightAs(tt.left) || !tt.left.AsTightAs(o.Limits) || misses(o, tt.question) {
			t.Errorf("%s, looked at: %v, %+v", code, o.Route, o.Limits)
		}
	}
	p := well() // beside what makes it grave the look lifts nothing
	p.RedFlags, p.Conditions = screening.AskedFor("spinal_deformity"), screening.AskedFor("osteoporosis")
	p.Answers = map[screening.Code]screening.Answer{"spine_shape_unseen": screening.No}
	if o := assess(t, p); o.Meanwhile != screening.UnloadedPractice {
		t.Errorf("with osteoporosis: %v", o.Meanwhile)
	}
}
