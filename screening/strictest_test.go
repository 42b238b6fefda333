package screening_test

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/units/evidence"
)

// TestStrictest holds the scale on which the published rules are laid side by side.
func TestStrictest(t *testing.T) {
	for name, tt := range map[string]struct {
		change func(*screening.Profile)
		want   screening.Strictness
	}{
		"well":            {func(*screening.Profile) {}, screening.Silent},
		"active, disease": {func(p *screening.Profile) { p.Activity, p.Diseases = busy(), screening.AskedFor("renal") }, screening.Silent}, // ACSM A2
		"vigorous": {func(p *screening.Profile) {
			p.Activity, p.Wanted, p.Diseases = busy(), screening.Vigorous, screening.AskedFor("renal")
		}, screening.AskVigorous},
		"risk factors":      {func(p *screening.Profile) { p.Conditions = screening.AskedFor("major_chd_risk_factors") }, screening.DecideFirst}, // AHA 2007
		"disease":           {func(p *screening.Profile) { p.Diseases = screening.AskedFor("renal") }, screening.AskAny},                         // ACSM N2
		"eye":               {func(p *screening.Profile) { p.Conditions = screening.AskedFor("recent_eye_operation") }, screening.ListedWider},   // Willey 2003
		"pulse":             {func(p *screening.Profile) { p.RestingPulse = 104 }, screening.StopOrNotNow},                                       // HEIW
		"Marfan":            {func(p *screening.Profile) { p.Conditions = screening.AskedFor("marfan") }, screening.NoResistance},                // AHA 2007
		"fever and back":    {func(p *screening.Profile) { p.RedFlags = screening.AskedFor("fever_with_severe_back_pain") }, screening.ReferUrgent},
		"saddle numbness":   {func(p *screening.Profile) { p.RedFlags = screening.AskedFor("saddle_numbness") }, screening.ReferNow},
		"active and a sign": {func(p *screening.Profile) { p.Activity, p.Symptoms = busy(), screening.AskedFor("ankle_oedema") }, screening.StopOrNotNow}, // ACSM A3
	} {
		p := well()
		tt.change(&p)
		if got := assess(t, p).Rules.Strictest(); got != tt.want {
			t.Errorf("%s: %v, want %v", name, got, tt.want)
		}
	}
	if got := (screening.Rules{}).Strictest(); got != 0 {
		t.Errorf("no rules: %v", got)
	}
}

// TestHarderThanEveryRule holds, over random profiles, that who is held although every
// rule that speaks is silent is held by a finding that rests on a fact of our own
// choice or from memory, which the file shows.
func TestHarderThanEveryRule(t *testing.T) {
	basis := map[evidence.FactID]evidence.Basis{}
	for f := range screening.Facts() {
		basis[f.ID] = f.Basis
	}
	r, held := rand.New(rand.NewPCG(50, 31)), 0
	for range usualCases / 4 {
		o := assess(t, randomProfile(r))
		if o.Rules.Strictest() > screening.Silent || o.Meanwhile == screening.WithinLimits {
			continue
		}
		held++
		if !slices.ContainsFunc(o.Findings, func(f screening.Finding) bool {
			return f.Meanwhile == o.Meanwhile && slices.ContainsFunc(f.Reason.Facts, func(id evidence.FactID) bool {
				return basis[id] == evidence.Design || basis[id] == evidence.FromMemory
			})
		}) {
			t.Fatalf("held at %v, and no fact of our own says why: %+v", o.Meanwhile, o.Findings)
		}
	}
	if held == 0 {
		t.Error("nobody was held")
	}
}

// TestDailyConditionsHoldNobody holds that conditions met daily, long past or quiet,
// hold nobody by themselves, and that what they favour names tests that there are.
func TestDailyConditionsHoldNobody(t *testing.T) {
	favoured := map[screening.Code]bool{}
	for _, code := range []screening.Code{"osteoarthritis_knee", "osteoarthritis_hip", "osteoarthritis_hand", "shoulder_pain", "tendon_pain_hip", "tendon_pain_heel", "tendon_pain_elbow",
		"arthritis_quiet", "lymphoedema_stable", "high_weight", "hard_of_hearing", "poor_sight", "anticoagulant", "hip_fracture", "after_mi_or_stroke"} {
		p := well()
		p.Activity, p.Conditions = busy(), screening.AskedFor(code)
		if code == "hip_fracture" || code == "after_mi_or_stroke" {
			p.Events = []screening.Event{{Code: code, Day: visit - 2000}}
		}
		o := assess(t, p)
		if o.Route > screening.Tell || o.Meanwhile != screening.WithinLimits {
			t.Errorf("%s: %v, %v", code, o.Route, o.Meanwhile)
		}
		for f := range o.Favours() {
			favoured[f.Code] = true
			for _, name := range f.Tests {
				if test := function.Test(0); test.UnmarshalText([]byte(name)) != nil {
					t.Errorf("%s: no test is called %q", code, name)
				}
			}
			if f.Says == "" || len(f.Facts) == 0 {
				t.Errorf("%+v", f)
			}
		}
		if text := screening.Words().Client(o.Findings[0].Reason); strings.Contains(text, "safe") || text == "" {
			t.Errorf("%s: the client reads %q", code, text)
		}
	}
	if len(favoured) < 10 {
		t.Errorf("favoured: %v", favoured)
	}
	for f := range assess(t, well()).Favours() {
		t.Errorf("somebody well: %+v", f)
	}
}

// TestNobodyIsFreedOfAlarms holds that no finer answer, clearance, company or policy
// frees somebody with an absolute entry, or with a sign of a serious cause that counts
// by itself, alone or among whatever else is found.
func TestNobodyIsFreedOfAlarms(t *testing.T) {
	var alarms []screening.Code
	for term := range screening.Codes() {
		p := well()
		switch term.Kind {
		case screening.Condition, screening.RedFlag:
			has(term.Code)(&p)
		default:
			continue
		}
		o := assess(t, p)
		absolute := o.Rules.Contraindications.Level == screening.Absolute && term.Code != "uncontrolled_hypertension"
		if absolute || o.Rules.RedFlags >= screening.UrgentReferral {
			alarms = append(alarms, term.Code)
		}
	}
	alarms = append(alarms, "ischaemic_chest_neck_jaw_arm_pain")
	if len(alarms) < 25 {
		t.Fatalf("alarms: %v", alarms)
	}
	r := rand.New(rand.NewPCG(50, 33))
	for range howMany() / 4 {
		p, code := randomProfile(r), one(r, alarms)
		for _, list := range []*screening.Checklist{&p.Diseases, &p.Symptoms, &p.RedFlags, &p.Conditions} {
			list.Asked = true
			list.Unsure = slices.DeleteFunc(slices.Clone(list.Unsure), func(c screening.Code) bool { return c == code })
			list.Present = slices.DeleteFunc(slices.Clone(list.Present), func(c screening.Code) bool { return c == code })
		}
		has(code)(&p)
		for _, q := range finerQuestions {
			p.Answers[q] = screening.No
		}
		p.Setting = screening.InClinic
		if term, _ := screening.LookUp(code); term.Kind != screening.RedFlag {
			p.Clearances = []screening.Clearance{clearance(code)}
		}
		if o := by(t, p, screening.JoinPolicy{DiabetesStart: screening.NewerList}); o.Meanwhile != screening.Nothing {
			t.Fatalf("%s leaves %v", code, o.Meanwhile)
		}
	}
}
