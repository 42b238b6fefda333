package screening

// offered are the reasons whose sentence to the client lets something go on, and
// how much. Codes stand without their prefix.
var offered = map[Code]Meanwhile{
	"branch.N1": WithinLimits, "branch.A1": WithinLimits, "branch.A2": WithinLimits, "branch.A2.vigorous": WithinLimits,
	"branch.N2.clearance": WithinLimits, "branch.N3.clearance": WithinLimits, "branch.A3.clearance": WithinLimits,

	"osteoporosis": WithinLimits, "osteoporosis_uk": WithinLimits, "osteoporosis_essa_dose": WithinLimits,
	"vertebral_fracture.later": WithinLimits, "osteoporosis_with_vertebral_fracture.later": WithinLimits,
	"rotator_cuff_repair": WithinLimits, "rotator_cuff_repair.later": WithinLimits, "shoulder_replacement.later": WithinLimits,
	"pelvic_organ_prolapse": WithinLimits, "foot_ulcer_neuropathy": WithinLimits, "parkinsons": WithinLimits, "vertigo": WithinLimits,
	"frailty": WithinLimits, "frailty_dose": WithinLimits, "falls_risk": WithinLimits, "cfs_level_1": WithinLimits, "cfs_level_2": WithinLimits, "cfs_level_3": WithinLimits,
	"cfs_level_4": WithinLimits, "cfs_level_5": WithinLimits, "cfs_level_6": WithinLimits,
	"nephropathy": WithinLimits, "npdr_moderate_or_worse": WithinLimits, "diabetic_retinopathy_severe": WithinLimits, "retinopathy_high_intensity": WithinLimits,
	"hypertension_high_risk": WithinLimits, exertionHigh: WithinLimits, saturationFloor: WithinLimits,
	glucoseHigh: WithinLimits, glucoseHighest: WithinLimits, glucoseBelowEat: WithinLimits,
	ketonesLight: WithinLimits, sorenessLasting: WithinLimits, unwellToday: WithinLimits,

	"diabetes": LightSupervised, "diabetes_t1": LightSupervised, "diabetes_t2": LightSupervised, heartFailure: LightSupervised,
	"exertional_angina": LightSupervised, "pacemaker": LightSupervised, "icd": LightSupervised, "low_functional_capacity": LightSupervised,
	lowCapacity: LightSupervised, pressureRelative: LightSupervised, noStrips: LightSupervised,
	"total_knee_replacement": LightSupervised, "cfs_level_7": LightSupervised, "cfs_level_8": LightSupervised,

	"vertebral_fracture": UnloadedPractice, "osteoporosis_with_vertebral_fracture": UnloadedPractice, "bone_metastases": UnloadedPractice,
	"new_groin_pain_or_instability": UnloadedPractice, "pain_made_worse_by_training": UnloadedPractice, "acute_joint_inflammation": UnloadedPractice,
	"unstable_or_injured_joint": UnloadedPractice, "end_stage_illness": UnloadedPractice, "cfs_level_9": UnloadedPractice,
	hbA1cHigh: UnloadedPractice, untreatedHigh: UnloadedPractice, untreatedHigh + ".again": UnloadedPractice,
}

// heldTexts are what a client who is held reads in place of some of them; empty
// where the others say enough.
var heldTexts = map[Code]string{
	"branch.N1": "", "branch.A1": "", "branch.A2": "Please tell your doctor that you train.",
	"branch.A2.vigorous":  "Please ask your doctor before you train hard.",
	"branch.N2.clearance": "", "branch.N3.clearance": "", "branch.A3.clearance": "",

	exertionHigh:    "Your blood pressure is a little up today.",
	saturationFloor: "Your oxygen is a touch low today.",
	glucoseHigh:     "Your sugar is high. Please test for ketones.",
	glucoseHighest:  "Your sugar is very high. Please test for ketones and ask about your insulin.",
	glucoseBelowEat: "Please eat something with sugar, and keep somebody near.",
	ketonesLight:    "The ketones are low.",
	sorenessLasting: "Your muscles are still sore; they need a little longer.",
	unwellToday:     "You are a little under the weather; please rest.",

	untreatedHigh: "", untreatedHigh + ".again": "",
}
