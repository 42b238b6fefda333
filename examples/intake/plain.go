package main

import "example.org/posology/screening"

// plain says in a client's words what a code stands for; short, and nobody's
// questionnaire. A code without an entry is put in the clinician's words.
var plain = map[screening.Code]string{
	"cardiac":             "the heart",
	"peripheral_vascular": "the arteries of the legs or arms",
	"cerebrovascular":     "the blood vessels of the brain, a stroke among them",
	"diabetes_t1":         "diabetes, type 1",
	"diabetes_t2":         "diabetes, type 2",
	"renal":               "the kidneys",

	"ischaemic_chest_neck_jaw_arm_pain":          "an arm, jaw, neck or chest that hurts, or feels tight or heavy",
	"palpitations_or_tachycardia":                "a heart that races or pounds",
	"known_heart_murmur":                         "a heart murmur that a doctor has heard",
	"dyspnoea_rest_or_mild_exertion":             "out of breath after very little, or while you rest",
	"orthopnoea_or_pnd":                          "short of breath lying flat, or woken by it",
	"unusual_fatigue_or_dyspnoea_usual_activity": "everyday tasks that tire or wind you more than they should",
	"dizziness_or_syncope":                       "dizzy spells, or passing out",
	"ankle_oedema":                               "both ankles swollen",
	"intermittent_claudication":                  "legs that cramp on a walk until you have had a rest",

	"stroke_signs":                       "suddenly weak, crooked in the face, or unable to find or form words",
	"sudden_severe_headache":             "a sudden headache, worse than any before",
	"saddle_numbness":                    "numbness where a saddle would touch you",
	"new_bladder_or_bowel_dysfunction":   "bladder or bowel newly out of control, or not emptying",
	"new_sexual_dysfunction":             "loss of feeling or function in your sex life that is new",
	"severe_or_growing_leg_deficit":      "a leg that is losing strength or feeling",
	"clot_signs":                         "one calf or leg newly swollen, warm or sore",
	"hot_swollen_joint":                  "a joint that is hot and swollen",
	"symptomatic_low_pressure":           "faint or unwell from low blood pressure",
	"late_hypoglycaemia":                 "low sugar at night, or hours after exercise",
	"fever_or_shivering":                 "fever or shivering",
	"unexplained_weight_loss":            "a weight that goes down, and you do not know why",
	"tendon_pop":                         "a pop in a tendon, and strength gone since",
	"dark_urine_after_effort":            "dark urine after exercise",
	"replacement_wound_problem":          "a scar of a joint replacement that is red, hot or weeping",
	"new_groin_pain_or_instability":      "new pain in the groin, or a joint that gives way",
	"sudden_back_pain_or_height_loss":    "sudden back pain, or getting shorter",
	"pelvic_heaviness":                   "heaviness or a bulge in the pelvis",
	"cancer_history":                     "cancer, at any time in your life",
	"weakened_immune_system":             "an immune system that is weakened, by illness or medicine",
	"recent_infection_or_injected_drugs": "an infection or deep wound lately, or injected drugs",

	"cancer_history_with_new_unremitting_back_pain": "cancer before, and now back pain that never lets up",
	"fever_with_severe_back_pain":                   "fever, and bad back pain with it",
	"fracture_after_minor_trauma_with_osteoporosis": "osteoporosis, and back pain since a small knock or fall",
	"sudden_back_pain_after_major_injury":           "sudden back pain since a big accident or fall",
	"unremitting_night_pain":                        "back pain at night that nothing eases",
	"back_pain_not_better_at_a_month":               "back pain that is no better after a month",
	"pain_in_many_places":                           "pain in many other places too",
	"severe_midline_back_pain":                      "bad back pain right over the spine, better lying down",
	"spinal_deformity":                              "a spine that has changed its shape",

	"unstable_chd":                "heart disease that is not stable, such as chest pain at rest",
	"exertional_angina":           "angina, which is an ache from the heart on effort",
	"after_mi_or_stroke":          "a heart attack or stroke in the past",
	"acute_mi":                    "a heart attack just now",
	"left_main_disease_untreated": "a narrowed main heart artery that has not been treated",
	"training_provokes_angina_hypotension_or_arrhythmia": "lifting weights brought on chest pain, faintness or a wild heartbeat",
	"mi_within_3_weeks":                  "a heart attack in the last three weeks",
	"heart_failure":                      "heart failure that is steady",
	"new_atrial_fibrillation":            "an uneven heartbeat (atrial fibrillation) that is new",
	"decompensated_hf":                   "heart failure that is getting worse",
	"heart_failure_nyha_iv":              "heart failure that leaves you short of breath without doing anything",
	"uncontrolled_arrhythmia":            "a heart rhythm that is not under control",
	"pacemaker":                          "a pacemaker",
	"icd":                                "an implanted defibrillator",
	"severe_valve_disease":               "a heart valve that works badly",
	"severe_symptomatic_aortic_stenosis": "a tight aortic valve that gives you trouble",
	"acute_myocarditis":                  "inflammation of the heart muscle now",
	"acute_endocarditis":                 "infection of the heart's inner lining now",
	"acute_pericarditis":                 "inflammation around the heart now",
	"aortic_dissection":                  "a tear in the main artery",
	"aortic_or_cerebral_aneurysm":        "a bulging artery in chest, belly or brain",
	"marfan":                             "Marfan syndrome",
	"major_chd_risk_factors":             "a doctor said that your risk of heart disease is high",
	"acute_dvt":                          "a clot in a leg now",
	"acute_pulmonary_embolism":           "a clot in the lung now",
	"severe_pulmonary_hypertension":      "very high pressure in the lungs' arteries",
	"low_functional_capacity":            "a test showed that your fitness is very low",

	"hypertension":              "high blood pressure, without treatment",
	"hypertension_treated":      "high blood pressure that is treated",
	"uncontrolled_hypertension": "high blood pressure that stays high in spite of treatment",

	"hypertension_high_risk": "pressure under control, but a doctor called your risk high",

	"lung_disease":      "a lung disease that makes you short of breath",
	"oxygen_therapy":    "oxygen that you breathe at home",
	"copd_asymptomatic": "a lung disease that gives no trouble just now",
	"copd_uncontrolled": "a lung disease that gives trouble just now",

	"osteoporosis":                "osteoporosis",
	"vertebral_fracture":          "a broken bone in the spine, ever",
	"recent_fracture":             "another broken bone in the last six months, or slow to heal",
	"bone_metastases":             "cancer that has spread to a bone",
	"musculoskeletal_limitation":  "joints or muscles that limit what you can do",
	"total_knee_replacement":      "a replaced knee",
	"total_hip_replacement":       "a replaced hip",
	"shoulder_replacement":        "a replaced shoulder",
	"rotator_cuff_repair":         "a tendon of the shoulder that was repaired",
	"unstable_or_injured_joint":   "a joint, tendon or ligament that is unstable or freshly injured",
	"acute_joint_inflammation":    "a joint that is inflamed just now",
	"pain_made_worse_by_training": "pain that training clearly makes worse",
	"unstable_prosthesis":         "an artificial joint that is loose",

	"hernia":                            "a hernia",
	"pelvic_organ_prolapse":             "a prolapse of the pelvic organs",
	"haemorrhoids_symptomatic_or_large": "piles that are large or give trouble",

	"glaucoma":                    "high pressure in the eye (glaucoma)",
	"npdr_moderate_or_worse":      "changes from diabetes at the back of the eye, moderate or more",
	"diabetic_retinopathy_severe": "severe changes from diabetes at the back of the eye",
	"retinal_bleed_or_detachment": "a bleed or a loose retina in an eye",
	"recent_eye_operation":        "an operation on an eye not long ago",

	"parkinsons":                    "Parkinson's disease",
	"vertigo":                       "vertigo",
	"falls_risk":                    "the thought of a fall that troubles you, a fall in the last 12 months, or shaky legs",
	"frailty":                       "a doctor said that illness or strain would hit you harder than most",
	"severe_cognitive_impairment":   "serious trouble with memory or behaviour",
	"unstable_neurological_disease": "a disease of the nerves that is getting worse quickly",
	"recent_intracranial_bleed":     "a bleed inside the skull not long ago",
	"foot_ulcer_neuropathy":         "an open place on a foot, or feet without feeling",
	"autonomic_neuropathy_postural_hypotension": "pressure that drops when you stand up",

	"diabetes":                      "diabetes, and you do not know which type",
	"nephropathy":                   "kidneys affected by diabetes",
	"blood_disease":                 "a disease of the blood",
	"chemotherapy":                  "chemotherapy, now or lately",
	"sepsis":                        "blood poisoning (sepsis)",
	"uncontrolled_systemic_disease": "an illness of the whole body that is not under control",
	"end_stage_illness":             "an illness in its last stage",
	"intoxicated":                   "alcohol or drugs in the body now",
	"beta_blocker":                  "a beta-blocker (for heart or pressure)",
	"anticoagulant":                 "a blood thinner",
}

// inWords is what a client reads for a code.
func inWords(code screening.Code) string {
	if text := plain[code]; text != "" {
		return text
	}
	term, _ := screening.LookUp(code)
	return term.Meaning
}

// ownWords are those of questions that the library words otherwise than an
// interview can; all others are asked in the library's words.
var ownWords = map[screening.Code]string{
	"retinopathy_moderate_or_worse": "At your last eye check, did they find changes from diabetes that are moderate or worse?",
	"clearance":                     "Has a doctor agreed that you exercise?",
	"blood_pressure":                "What was your blood pressure, taken after a rest?",
	"blood_pressure_again":          "That is up. What is it after a few quiet minutes?",
	"resting_pulse_again":           "That is quick. What is the pulse after a few quiet minutes?",
	"blood_counts":                  "Do you have the letter with your last blood test here?",
	"hernia_symptomatic_or_large":   "Does the hernia hurt, bulge a lot, or has a doctor called it large?",
	"restriction":                   "Has a surgeon or clinician told you what not to do?",
}

func listWords(codes []screening.Code) []string {
	texts := make([]string, len(codes))
	for i, code := range codes {
		texts[i] = inWords(code)
	}
	return texts
}
