package main

import "example.org/posology/screening"

// A rate is the invented share of people with a code, at 55 and at 85 years;
// in between, and a little beyond, it goes in a straight line.
type rate struct {
	code     screening.Code
	at55     float64
	at85     float64
	women    float64 // factor for women; 0 is 1
	men      float64 // factor for men; 0 is 1
	notInMen bool
}

// Every number below is invented.
var rates = map[screening.Kind][]rate{
	screening.Disease: {
		{code: "cardiac", at55: 0.05, at85: 0.22},
		{code: "peripheral_vascular", at55: 0.02, at85: 0.09},
		{code: "cerebrovascular", at55: 0.015, at85: 0.10},
		{code: "diabetes_t1", at55: 0.004, at85: 0.004},
		{code: "diabetes_t2", at55: 0.08, at85: 0.16},
		{code: "renal", at55: 0.02, at85: 0.18},
	},
	screening.Symptom: {
		{code: "ischaemic_chest_neck_jaw_arm_pain", at55: 0.008, at85: 0.015},
		{code: "palpitations_or_tachycardia", at55: 0.015, at85: 0.03},
		{code: "known_heart_murmur", at55: 0.01, at85: 0.05},
		{code: "dyspnoea_rest_or_mild_exertion", at55: 0.008, at85: 0.04},
		{code: "orthopnoea_or_pnd", at55: 0.003, at85: 0.015},
		{code: "unusual_fatigue_or_dyspnoea_usual_activity", at55: 0.015, at85: 0.06},
		{code: "dizziness_or_syncope", at55: 0.015, at85: 0.07},
		{code: "ankle_oedema", at55: 0.015, at85: 0.08},
		{code: "intermittent_claudication", at55: 0.008, at85: 0.03},
	},
	screening.RedFlag: {
		{code: "stroke_signs", at55: 0.0003, at85: 0.001},
		{code: "sudden_severe_headache", at55: 0.0003, at85: 0.0003},
		{code: "saddle_numbness", at55: 0.0002, at85: 0.0003},
		{code: "new_bladder_or_bowel_dysfunction", at55: 0.0005, at85: 0.002},
		{code: "severe_or_growing_leg_deficit", at55: 0.0005, at85: 0.002},
		{code: "clot_signs", at55: 0.001, at85: 0.002},
		{code: "hot_swollen_joint", at55: 0.002, at85: 0.004},
		{code: "fever_or_shivering", at55: 0.004, at85: 0.004},
		{code: "symptomatic_low_pressure", at55: 0.002, at85: 0.01},
		{code: "sudden_back_pain_or_height_loss", at55: 0.001, at85: 0.008},
		{code: "unexplained_weight_loss", at55: 0.004, at85: 0.015},
		{code: "cancer_history", at55: 0.06, at85: 0.20},
		{code: "weakened_immune_system", at55: 0.02, at85: 0.04},
		{code: "recent_infection_or_injected_drugs", at55: 0.01, at85: 0.015},
		{code: "unremitting_night_pain", at55: 0.008, at85: 0.012},
		{code: "back_pain_not_better_at_a_month", at55: 0.05, at85: 0.08},
		{code: "pain_in_many_places", at55: 0.03, at85: 0.05},
		{code: "severe_midline_back_pain", at55: 0.003, at85: 0.01},
		{code: "spinal_deformity", at55: 0.002, at85: 0.02},
		{code: "late_hypoglycaemia", at55: 0.001, at85: 0.003},
		{code: "tendon_pop", at55: 0.001, at85: 0.001},
		{code: "new_groin_pain_or_instability", at55: 0.004, at85: 0.01},
		{code: "pelvic_heaviness", at55: 0.05, at85: 0.09, notInMen: true},
	},
	screening.Condition: {
		{code: "hypertension_treated", at55: 0.25, at85: 0.55},
		{code: "hypertension", at55: 0.06, at85: 0.06},
		{code: "uncontrolled_hypertension", at55: 0.015, at85: 0.03},
		{code: "major_chd_risk_factors", at55: 0.12, at85: 0.12},
		{code: "exertional_angina", at55: 0.01, at85: 0.05},
		{code: "unstable_chd", at55: 0.0003, at85: 0.001},
		{code: "after_mi_or_stroke", at55: 0.03, at85: 0.15},
		{code: "decompensated_hf", at55: 0.0003, at85: 0.004},
		{code: "heart_failure_nyha_iv", at55: 0.0002, at85: 0.002},
		{code: "uncontrolled_arrhythmia", at55: 0.001, at85: 0.005},
		{code: "severe_valve_disease", at55: 0.001, at85: 0.02},
		{code: "severe_symptomatic_aortic_stenosis", at55: 0.0003, at85: 0.006},
		{code: "aortic_or_cerebral_aneurysm", at55: 0.002, at85: 0.02, men: 1.6},
		{code: "pacemaker", at55: 0.005, at85: 0.06},
		{code: "icd", at55: 0.002, at85: 0.006, men: 1.6},
		{code: "acute_dvt", at55: 0.0005, at85: 0.001},
		{code: "low_functional_capacity", at55: 0.005, at85: 0.05},
		{code: "copd_asymptomatic", at55: 0.03, at85: 0.07},
		{code: "copd_uncontrolled", at55: 0.003, at85: 0.012},
		{code: "osteoporosis", at55: 0.05, at85: 0.22, women: 1.6, men: 0.4},
		{code: "vertebral_fracture", at55: 0.01, at85: 0.08, women: 1.3, men: 0.7},
		{code: "recent_fracture", at55: 0.006, at85: 0.02},
		{code: "bone_metastases", at55: 0.001, at85: 0.005},
		{code: "musculoskeletal_limitation", at55: 0.12, at85: 0.28},
		{code: "total_knee_replacement", at55: 0.02, at85: 0.10},
		{code: "total_hip_replacement", at55: 0.015, at85: 0.09},
		{code: "shoulder_replacement", at55: 0.001, at85: 0.01},
		{code: "rotator_cuff_repair", at55: 0.01, at85: 0.012},
		{code: "unstable_or_injured_joint", at55: 0.01, at85: 0.012},
		{code: "acute_joint_inflammation", at55: 0.008, at85: 0.012},
		{code: "pain_made_worse_by_training", at55: 0.02, at85: 0.03},
		{code: "hernia", at55: 0.03, at85: 0.06, men: 1.5, women: 0.5},
		{code: "pelvic_organ_prolapse", at55: 0.06, at85: 0.16, notInMen: true},
		{code: "haemorrhoids_symptomatic_or_large", at55: 0.02, at85: 0.02},
		{code: "glaucoma", at55: 0.02, at85: 0.09},
		{code: "diabetic_retinopathy_severe", at55: 0.002, at85: 0.004},
		{code: "recent_eye_operation", at55: 0.004, at85: 0.02},
		{code: "falls_risk", at55: 0.10, at85: 0.45},
		{code: "vertigo", at55: 0.04, at85: 0.08},
		{code: "parkinsons", at55: 0.003, at85: 0.03},
		{code: "frailty", at55: 0.01, at85: 0.20},
		{code: "severe_cognitive_impairment", at55: 0.0005, at85: 0.03},
		{code: "foot_ulcer_neuropathy", at55: 0.005, at85: 0.02},
		{code: "autonomic_neuropathy_postural_hypotension", at55: 0.008, at85: 0.05},
		{code: "nephropathy", at55: 0.006, at85: 0.015},
		{code: "end_stage_illness", at55: 0.0005, at85: 0.003},
		{code: "beta_blocker", at55: 0.08, at85: 0.25},
		{code: "anticoagulant", at55: 0.02, at85: 0.18},
	},
}

// burdens spread illness unevenly over people: a factor on every rate, and the
// share of people who have it. Invented; the mean is 1.
var burdens = []struct{ factor, share float64 }{{0.4, 0.4}, {1, 0.4}, {2.2, 0.2}}

// Further invented numbers.
const (
	youngest, oldest = 50, 90 // years

	systolicAt55, systolicSlope   = 128.0, 0.35 // mmHg, and a year
	systolicSpread                = 15.0
	diastolicAt55, diastolicSlope = 80.0, -0.12
	diastolicSpread               = 9.0
	pulseMean, pulseSpread        = 70.0, 10.0

	measured       = 0.92 // whose pressure and pulse were taken
	takenAgain     = 0.95 // whose high pressure or quick pulse was taken again after a rest
	settling       = 8.0  // mmHg, or beats, by which it is then lower
	settlingSpread = 8.0
	activeAt55     = 0.35 // regularly active
	activeAt85     = 0.15
	offTheFloor    = 75   // years, from which nobody gets up from the floor alone
	oneUnsure      = 0.04 // unsure of one thing on the lists
	insulinKnown   = 0.97 // of people with diabetes
	insulinTaken   = 0.35 // of those
	eyesKnown      = 0.75
	eyesChanged    = 0.08
	spineKnown     = 0.34 // of people with osteoporosis: few have had a picture taken, and many fractures are silent
	spineBroken    = 0.08
	herniaKnown    = 0.95
	herniaTroubles = 0.15
	clearanceGiven = 0.35 // of people with a known disease or a sign
	dayKnown       = 0.90 // of an operation or spine fracture
	regionKnown    = 0.95 // of a fracture
	restricted     = 0.10 // of people with joints or muscles that limit them
	longAgo        = 3650 // days since an operation, at most
	clearanceDays  = 540  // days since a clearance, at most
)

// wants are the shares of wanted effort; the rest does not say.
var wants = []struct {
	effort screening.Intensity
	share  float64
}{{screening.Light, 0.35}, {screening.Moderate, 0.50}, {screening.Vigorous, 0.10}}
