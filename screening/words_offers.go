package screening

// offered are the reasons whose sentence to the client lets something go on, and
// how much. Codes stand without their prefix.
var offered = map[Code]Meanwhile{
	"branch.N1": WithinLimits, "branch.A1": WithinLimits, "branch.A2": WithinLimits, "branch.A2.vigorous": WithinLimits,
	"branch.N1.looked-at": WithinLimits, "branch.A1.looked-at": WithinLimits, "branch.A2.looked-at": WithinLimits,
	"branch.N2.clearance": WithinLimits, "branch.N3.clearance": WithinLimits, "branch.A3.clearance": WithinLimits,

	"osteoporosis": WithinLimits, "osteoporosis_uk": WithinLimits, "osteoporosis_essa_dose": WithinLimits,
	"vertebral_fracture.later": WithinLimits, "osteoporosis_with_vertebral_fracture.later": WithinLimits,
	"rotator_cuff_repair": WithinLimits, "rotator_cuff_repair.later": WithinLimits, "shoulder_replacement.later": WithinLimits,
	"pelvic_organ_prolapse": WithinLimits, "foot_ulcer_neuropathy": WithinLimits, "parkinsons": WithinLimits, "vertigo": WithinLimits,
	"frailty": WithinLimits, "frailty_dose": WithinLimits, "falls_risk": WithinLimits, "cfs_level_1": WithinLimits, "cfs_level_2": WithinLimits, "cfs_level_3": WithinLimits,
	"cfs_level_4": WithinLimits, "cfs_level_5": WithinLimits, "cfs_level_6": WithinLimits,
	"nephropathy": WithinLimits, "npdr_moderate_or_worse": WithinLimits, "diabetic_retinopathy_severe": WithinLimits, "retinopathy_high_intensity": WithinLimits,
	"hypertension_high_risk": WithinLimits, exertionHigh: WithinLimits, saturationFloor: WithinLimits,
	glucoseHigh: WithinLimits, glucoseHighest: WithinLimits, glucoseBelowEat: WithinLimits, glucoseTreated: WithinLimits,
	ketonesLight: WithinLimits, sorenessLasting: WithinLimits, unwellToday: WithinLimits,

	"spinal_deformity.lesser": WithinLimits, "severe_midline_back_pain.lesser": WithinLimits, lateLow + ".lesser": WithinLimits, "flags-chronic-followed": UnloadedPractice,
	"back_pain_not_better_at_a_month": WithinLimits,
	"flags-chronic":                   WithinLimits, "flags-chronic-past": WithinLimits, dizzyStanding: WithinLimits, spineNotSeen: WithinLimits,
	"diabetes_t1.newer-list": WithinLimits, "diabetes_t2.newer-list": WithinLimits, "diabetes.newer-list": WithinLimits, "branch.N2.newer-list": WithinLimits,
	"intermittent_claudication.looked-at": WithinLimits, "after_mi_or_stroke.later": WithinLimits, "pacemaker.later": WithinLimits,
	"recent_eye_operation.later": WithinLimits, "recent_eye_operation.looked-at.later": WithinLimits,
	"unstable_or_injured_joint.place": WithinLimits, "acute_joint_inflammation.place": WithinLimits, "pain_made_worse_by_training.place": WithinLimits,
	"osteoarthritis_knee": WithinLimits, "osteoarthritis_hip": WithinLimits, "osteoarthritis_hand": WithinLimits, "shoulder_pain": WithinLimits,
	"tendon_pain_hip": WithinLimits, "tendon_pain_heel": WithinLimits, "tendon_pain_elbow": WithinLimits, "arthritis_quiet": WithinLimits,
	"lymphoedema_stable": WithinLimits, "hip_fracture.long-after": WithinLimits, otherPain[SpreadingPain] + ".place": WithinLimits,

	"palpitations_or_tachycardia.looked-at": LightSupervised, "known_heart_murmur.looked-at": LightSupervised, "dyspnoea_rest_or_mild_exertion.looked-at": LightSupervised,
	"unusual_fatigue_or_dyspnoea_usual_activity.looked-at": LightSupervised, "ankle_oedema.looked-at": LightSupervised, "hip_fracture": LightSupervised, "icd.later": LightSupervised, pressureUntaken: LightSupervised, pressureUntaken + ".unsure": LightSupervised,

	otherPain[SpreadingPain]: UnloadedPractice,

	"diabetes": LightSupervised, "diabetes_t1": LightSupervised, "diabetes_t2": LightSupervised, heartFailure: LightSupervised,
	"exertional_angina": LightSupervised, "pacemaker": LightSupervised, "icd": LightSupervised, "low_functional_capacity": LightSupervised,
	lowCapacity: LightSupervised, pressureRelative: LightSupervised, noStrips: LightSupervised,
	"total_knee_replacement": LightSupervised, "cfs_level_7": LightSupervised, "cfs_level_8": LightSupervised,

	"vertebral_fracture": UnloadedPractice, operated: UnloadedPractice, "osteoporosis_with_vertebral_fracture": UnloadedPractice, "bone_metastases": UnloadedPractice,
	"pain_made_worse_by_training": UnloadedPractice, "acute_joint_inflammation": UnloadedPractice,
	"unstable_or_injured_joint": UnloadedPractice, "end_stage_illness": UnloadedPractice, "cfs_level_9": UnloadedPractice,
	hbA1cHigh: UnloadedPractice, untreatedHigh: UnloadedPractice, untreatedHigh + ".again": UnloadedPractice,
}

// heldTexts are what a client who is held reads in place of some of them; empty
// where the others say enough.
var heldTexts = map[Code]string{
	"back_pain_not_better_at_a_month": "Your back has hurt for a while now: we look at it together when you come.",
	pressureUntaken + ".unsure":       "Please have your blood pressure measured within two weeks.",

	"flags-chronic":                     "About your back, and the pain you have had for long: we look at it together when you come.",
	"flags-chronic-followed":            "Please tell the doctor who looks after your cancer about the pain in your back.",
	"pain_made_worse_by_training.place": "We look at the pain after training together when you come.",
	"spinal_deformity.lesser":           "Your back has changed its shape: we look at it together when you come.",
	"severe_midline_back_pain.lesser":   "We look at the pain in the middle of your back together when you come.",
	lateLow + ".lesser":                 "Please talk over the late low with your diabetes team.",
	"flags-chronic-past":                "Please mention the pain to your doctor, because of the cancer you once had.",
	"branch.N2.newer-list":              "Please let your doctor know that you train.",
	"branch.N1":                         "", "branch.A1": "", "branch.A2": "Please tell your doctor that you train.",
	"branch.N1.looked-at": "Thank you for telling us what was looked at.", "branch.A1.looked-at": "It is good to know what was looked at.",
	"branch.A2.looked-at": "Please let your doctor know that you train.",
	"branch.A2.vigorous":  "Please ask your doctor before you train hard.",
	"branch.N2.clearance": "", "branch.N3.clearance": "", "branch.A3.clearance": "",

	exertionHigh:    "Your blood pressure is up today.",
	saturationFloor: "Your oxygen is a touch low today.",
	glucoseHigh:     "Your sugar is high.",
	glucoseHighest:  "Your sugar is very high. Please ask your doctor about your insulin.",
	glucoseBelowEat: "Please eat something with sugar, and keep somebody near.",
	glucoseTreated:  "Your sugar has come up: keep it easy, and keep somebody near.",
	ketonesLight:    "The ketones are low.",
	sorenessLasting: "Your muscles are still sore; they need a little longer.",
	unwellToday:     "You are a little under the weather; please rest.",

	untreatedHigh: "", untreatedHigh + ".again": "",
}
