package screening_test

import (
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// asDisease are the codes outside the list of diseases that name a disease of
// heart, vessels or kidneys, or diabetes, and whether the preparticipation rule's
// own answer counts them. Of the rest that angina on effort, a pacemaker, a
// defibrillator and a widened artery are known disease is from memory: the
// joined outcome counts it, the rule's own answer does not.
var asDisease = map[screening.Code]bool{
	"heart_failure": true, "decompensated_hf": true, "heart_failure_nyha_iv": true, "after_mi_or_stroke": true,
	"mi_within_3_weeks": true, "acute_mi": true, "unstable_chd": true, "left_main_disease_untreated": true, "severe_valve_disease": true,
	"severe_symptomatic_aortic_stenosis": true, "acute_myocarditis": true, "acute_endocarditis": true, "acute_pericarditis": true,
	"uncontrolled_arrhythmia": true, "new_atrial_fibrillation": true, "recent_intracranial_bleed": true,
	"diabetes": true, "nephropathy": true, "npdr_moderate_or_worse": true, "diabetic_retinopathy_severe": true, "retinopathy_high_intensity": true,
	"exertional_angina": false, "pacemaker": false, "icd": false, "aortic_or_cerebral_aneurysm": false,
}

// TestKnownDiseaseAnywhere holds that a disease counts for the rules that ask
// about it, whichever list it was told in and although the list of diseases was
// answered with no.
func TestKnownDiseaseAnywhere(t *testing.T) {
	for code, counted := range asDisease {
		p := blank()
		p.BP, p.Conditions = pressure(130, 80), screening.AskedFor(code)
		o := assess(t, p)
		if _, ok := finding(o, "screening.branch.N2"); !ok {
			t.Errorf("%s: the joined outcome does not follow branch N2", code)
		}
		want := screening.N1
		if counted {
			want = screening.N2
		}
		if got := screening.Preparticipation(p).Branch; got != want {
			t.Errorf("%s: the rule answers %v, want %v", code, got, want)
		}
		if got := screening.DiabetesStart(p); (got == screening.NotNeeded) != (code == "diabetes") {
			t.Errorf("%s: DiabetesStart = %v", code, got)
		}
		if o.Meanwhile < screening.UnloadedPractice {
			t.Errorf("%s: %v goes on before a doctor is asked", code, o.Meanwhile)
		}
		p.Conditions = screening.Checklist{Asked: true, Unsure: []screening.Code{code}}
		if got := assess(t, p).Meanwhile; got < screening.UnloadedPractice {
			t.Errorf("%s unsure: %v", code, got)
		}
	}
}

// TestKnownDiseaseByEvent holds it for what events stand for.
func TestKnownDiseaseByEvent(t *testing.T) {
	for _, code := range []screening.Code{"heart_attack", "stroke"} {
		p := blank()
		p.BP, p.Events = pressure(130, 80), []screening.Event{{Code: code, Day: visit - 3000}}
		if got := screening.Preparticipation(p); got.Branch != screening.N2 || got.Clearance != screening.BeforeAny {
			t.Errorf("%s: %v", code, got)
		}
		if o := assess(t, p); o.Meanwhile < screening.UnloadedPractice {
			t.Errorf("%s: %v", code, o.Meanwhile)
		}
	}
}

// TestDiabetesAnywhere holds that what diabetes leads to is asked and counted
// where only its consequence was told.
func TestDiabetesAnywhere(t *testing.T) {
	for _, code := range []screening.Code{"nephropathy", "npdr_moderate_or_worse", "diabetic_retinopathy_severe", "retinopathy_high_intensity"} {
		p := blank()
		p.BP, p.Activity, p.Conditions = pressure(130, 80), busy(), screening.AskedFor(code)
		o := assess(t, p)
		if !misses(o, "insulin_or_secretagogue") || misses(o, "retinopathy_moderate_or_worse") != (code == "nephropathy") {
			t.Errorf("%s: missing %v", code, o.Missing)
		}
		found := false
		for _, reason := range screening.Contraindications(p).Reasons {
			found = found || reason == "diabetes"
		}
		if !found || o.Rules.Contraindications.Level < screening.Relative {
			t.Errorf("%s: %+v, want diabetes among the reasons", code, o.Rules.Contraindications)
		}
		if older := by(t, p, screening.JoinPolicy{RiskFactors: screening.OlderList}); older.Meanwhile < screening.LightSupervised {
			t.Errorf("%s, active, by the older list: %v", code, older.Meanwhile)
		}
		p.Diseases = screening.Checklist{Asked: true, Unsure: []screening.Code{"diabetes_t2"}}
		if got := screening.Contraindications(p); got.Level < screening.Relative {
			t.Errorf("%s, type not known: %+v", code, got)
		}
		p.Diseases = screening.AskedFor("diabetes_t2")
		twice := 0
		for _, f := range assess(t, p).Findings {
			if f.Code == "diabetes" || f.Code == "diabetes_t2" {
				twice++
			}
		}
		if twice != 1 {
			t.Errorf("%s beside diabetes: it is said %d times", code, twice)
		}
	}
}

// TestKnownDiseaseCleared holds that a clearance that names either the code or
// the disease answers the branch's need.
func TestKnownDiseaseCleared(t *testing.T) {
	// One for the disease alone leaves heart failure itself held.
	for scope, branch := range map[screening.Code]evidence.ReasonCode{"heart_failure": "screening.branch.N2.clearance", "cardiac": "screening.branch.N2.clearance.held"} {
		p := blank()
		p.BP, p.Conditions = pressure(130, 80), screening.AskedFor("heart_failure")
		p.Clearances = []screening.Clearance{clearance(scope)}
		o := assess(t, p)
		if _, ok := finding(o, branch); !ok {
			t.Errorf("clearance for %s: the branch is not answered: %+v", scope, o.Findings)
		}
	}
	p := blank()
	p.Activity, p.Wanted, p.BP, p.Conditions = busy(), screening.Vigorous, pressure(130, 80), screening.AskedFor("after_mi_or_stroke")
	if got := screening.Preparticipation(p); got.Branch != screening.A2 || got.Clearance != screening.BeforeVigorous {
		t.Errorf("active, vigorous wanted: %v", got)
	}
	p.Clearances = []screening.Clearance{clearance("cerebrovascular")}
	if got := screening.Preparticipation(p); got.Clearance != screening.NotNeeded {
		t.Errorf("cleared: %v", got)
	}
}
