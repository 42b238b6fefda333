package interview

import (
	"slices"
	"strings"
	"sync"

	"example.org/posology/screening"
)

// A group is a part of one of the lists that is asked in one breath.
type group struct {
	key   string
	kind  screening.Kind
	area  string         // what a client calls it, where it is asked only if picked
	gate  string         // a yes-or-no question that comes first
	gated screening.Code // the library's question that the gate answers
	text  string
	codes []screening.Code
	lasts bool // what does not come in a day: alone it says nothing of how somebody is
}

// written are the groups in the order of asking. Codes that stand in none of
// them, and are not asked through another, make a group of their own.
var listed = []group{
	{key: "signs", kind: screening.RedFlag, text: "In the last days, has any of these been with you?", codes: []screening.Code{
		"stroke_signs", "sudden_severe_headache", "saddle_numbness", "new_bladder_or_bowel_dysfunction", "severe_or_growing_leg_deficit",
		"clot_signs", "hot_swollen_joint", "fever_or_shivering", "symptomatic_low_pressure", "sudden_back_pain_or_height_loss", "new_sexual_dysfunction", "spinning_with_new_signs"}},
	{key: "symptoms", kind: screening.Symptom, text: "And any of these, now or lately?", codes: []screening.Code{
		"ischaemic_chest_neck_jaw_arm_pain", "palpitations_or_tachycardia", "dyspnoea_rest_or_mild_exertion", "orthopnoea_or_pnd",
		"unusual_fatigue_or_dyspnoea_usual_activity", "dizziness_or_syncope", "ankle_oedema", "intermittent_claudication"}},
	{key: "more_signs", kind: screening.RedFlag, text: "A few more. Is any of these so?", codes: []screening.Code{
		"unexplained_weight_loss", "recent_infection_or_injected_drugs", "pelvic_heaviness",
		"new_groin_pain_or_instability", "replacement_wound_problem", "tendon_pop", "dark_urine_after_effort", "late_hypoglycaemia"}},
	{key: "lasting_signs", kind: screening.RedFlag, lasts: true, text: "Is any of these so, or was it at any time?", codes: []screening.Code{"cancer_history", "weakened_immune_system"}},
	{key: "lasting_symptoms", kind: screening.Symptom, lasts: true, text: "And this, at any time?", codes: []screening.Code{"known_heart_murmur"}},
	{key: "back", kind: screening.RedFlag, gate: "Have you had back pain lately?", gated: "back_pain", text: "About the back pain: is any of these so?", codes: []screening.Code{
		"sudden_back_pain_after_major_injury", "fracture_after_minor_trauma_with_osteoporosis", "severe_midline_back_pain", "spinal_deformity",
		"unremitting_night_pain", "back_pain_not_better_at_a_month", "pain_in_many_places", "fever_with_severe_back_pain", "cancer_history_with_new_unremitting_back_pain"}},
	{key: "diseases", kind: screening.Disease, text: "Do you have, or did you once have, an illness of:", codes: []screening.Code{
		"cardiac", "peripheral_vascular", "cerebrovascular", "diabetes_t1", "diabetes_t2", "renal"}},

	{key: "heart", kind: screening.Condition, area: "heart and circulation", codes: []screening.Code{
		"exertional_angina", "unstable_chd", "after_mi_or_stroke", "acute_mi", "left_main_disease_untreated", "training_provokes_angina_hypotension_or_arrhythmia",
		"mi_within_3_weeks", "heart_failure", "decompensated_hf", "heart_failure_nyha_iv", "uncontrolled_arrhythmia", "new_atrial_fibrillation", "pacemaker", "icd", "severe_valve_disease", "severe_symptomatic_aortic_stenosis",
		"acute_myocarditis", "acute_endocarditis", "acute_pericarditis", "aortic_dissection", "aortic_or_cerebral_aneurysm", "marfan", "major_chd_risk_factors",
		"acute_dvt", "acute_pulmonary_embolism", "severe_pulmonary_hypertension", "low_functional_capacity"}},
	{key: "pressure", kind: screening.Condition, area: "blood pressure", codes: []screening.Code{"hypertension_treated", "hypertension", "uncontrolled_hypertension", "hypertension_high_risk"}},
	{key: "lungs", kind: screening.Condition, area: "lungs", codes: []screening.Code{"copd_asymptomatic", "lung_disease", "copd_uncontrolled", "oxygen_therapy"}},
	{key: "bones", kind: screening.Condition, area: "bones", codes: []screening.Code{"osteoporosis", "vertebral_fracture", "recent_fracture", "bone_metastases", "hip_fracture"}},
	{key: "joints", kind: screening.Condition, area: "joints, tendons and muscles, operations on them too", codes: []screening.Code{
		"musculoskeletal_limitation", "total_knee_replacement", "total_hip_replacement", "shoulder_replacement", "rotator_cuff_repair",
		"unstable_or_injured_joint", "acute_joint_inflammation", "pain_made_worse_by_training", "unstable_prosthesis",
		"osteoarthritis_knee", "osteoarthritis_hip", "osteoarthritis_hand", "shoulder_pain", "tendon_pain_hip", "tendon_pain_heel", "tendon_pain_elbow", "arthritis_quiet"}},
	{key: "belly", kind: screening.Condition, area: "belly and pelvis", codes: []screening.Code{"hernia", "pelvic_organ_prolapse", "haemorrhoids_symptomatic_or_large"}},
	{key: "eyes", kind: screening.Condition, area: "eyes", codes: []screening.Code{
		"glaucoma", "npdr_moderate_or_worse", "diabetic_retinopathy_severe", "retinal_bleed_or_detachment", "recent_eye_operation"}},
	{key: "nerves", kind: screening.Condition, area: "balance, hearing, sight, nerves and memory", codes: []screening.Code{
		"falls_risk", "vertigo", "epilepsy", "parkinsons", "foot_ulcer_neuropathy", "autonomic_neuropathy_postural_hypotension", "severe_cognitive_impairment",
		"unstable_neurological_disease", "recent_intracranial_bleed", "frailty", "hard_of_hearing", "poor_sight"}},
	{key: "medicines", kind: screening.Condition, area: "a beta-blocker, a blood thinner or steroid tablets", codes: []screening.Code{"beta_blocker", "anticoagulant", "steroid_tablets"}},
	{key: "general", kind: screening.Condition, area: "body weight, a swollen limb, another illness, or alcohol or drugs today", codes: []screening.Code{
		"diabetes", "nephropathy", "blood_disease", "chemotherapy", "sepsis", "uncontrolled_systemic_disease", "end_stage_illness", "intoxicated", "high_weight", "lymphoedema_stable"}},
}

// through are codes that are asked through another, which leads as far or
// further: other versions of one condition, and combinations of two.
var through = map[screening.Code]screening.Code{
	"osteoporosis_uk": "osteoporosis", "osteoporosis_essa": "osteoporosis", "osteoporosis_essa_dose": "osteoporosis",
	"osteoporosis_with_vertebral_fracture": "vertebral_fracture",
	"glaucoma_breathing":                   "glaucoma", "frailty_dose": "frailty",
	"retinopathy_high_intensity": "npdr_moderate_or_worse",
}

// answers are codes whose choice on a list, once it is asked, answers a question too.
var answers = map[screening.Code]screening.Code{"npdr_moderate_or_worse": "retinopathy_moderate_or_worse"}

// rated begins the codes of a level that a clinician gives and nobody is asked for.
const rated = "cfs_level_"

// others are the groups of codes that the written ones leave out.
var others = []struct {
	kind       screening.Kind
	text, area string
}{
	{screening.RedFlag, "And is any of these so?", ""},
	{screening.Symptom, "And any of these?", ""},
	{screening.Disease, "Or of:", ""},
	{screening.Condition, "", "something else that a doctor has named"},
}

// groups returns every group, the same each time.
var groups = sync.OnceValue(func() []group {
	placed := map[screening.Code]bool{}
	for _, g := range listed {
		for _, code := range g.codes {
			placed[code] = true
		}
	}
	all := slices.Clone(listed)
	for _, o := range others {
		g := group{key: "other_" + strings.ReplaceAll(o.kind.String(), " ", "_"), kind: o.kind, text: o.text, area: o.area}
		for term := range screening.Codes() {
			if term.Kind == o.kind && !placed[term.Code] && through[term.Code] == "" && !strings.HasPrefix(string(term.Code), rated) {
				g.codes = append(g.codes, term.Code)
			}
		}
		if len(g.codes) > 0 {
			all = append(all, g)
		}
	}
	return all
})

// question asks what of the group is so.
func (g group) question() *asking {
	text := g.text
	if text == "" {
		text = "About " + g.area + ": which of these is so?"
	}
	return severalOf(g.key, listOf[g.kind], text, choices(g.codes), func(s *state, l screening.Checklist) {
		s.lists[g.key] = l
		for code, question := range answers {
			if slices.Contains(g.codes, code) {
				s.asked[string(question)] = true
				if l.Of(code) == screening.No {
					s.profile.Answers[question] = screening.No
				}
			}
		}
	})
}

// none notes that nothing of the group is so.
func (g group) none(s *state) {
	s.lists[g.key] = screening.AskedFor()
	s.asked[g.key] = true
}

// gateQuestion asks whether there is a reason for the group at all.
func (g group) gateQuestion() *asking {
	return yesNo(g.key+"_at_all", g.gated, g.gate, func(s *state, a screening.Answer) {
		s.profile.Answers[g.gated] = a
		s.asked[string(g.gated)] = true
		if a == screening.No {
			g.none(s)
		}
	})
}

// areasQuestion asks in which areas something is the matter. Those not named
// hold nothing; not known is every one of them.
func areasQuestion() *asking {
	var areas []Choice
	for _, g := range groups() {
		if g.area != "" {
			areas = append(areas, Choice{screening.Code(g.key), g.area, g.area})
		}
	}
	return severalOf("areas", "conditions", "Is there, or was there, anything with:", areas, func(s *state, l screening.Checklist) {
		for _, g := range groups() {
			if g.area != "" && l.Of(screening.Code(g.key)) == screening.No {
				g.none(s)
			}
		}
	})
}

// listOf are the library's questions for whole lists.
var listOf = map[screening.Kind]screening.Code{
	screening.Disease: "diseases", screening.Symptom: "symptoms", screening.RedFlag: "red_flags", screening.Condition: "conditions",
}
