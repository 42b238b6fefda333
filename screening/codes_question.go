package screening

// Codes of questions that are no entries of a list.
const (
	askDiseases   Code = "diseases"
	askSymptoms   Code = "symptoms"
	askRedFlags   Code = "red_flags"
	askConditions Code = "conditions"
	askActivity   Code = "activity"
	askWanted     Code = "wanted"
	askClearance  Code = "clearance"
	askRegion     Code = "fracture_region"
	askLimit      Code = "restriction"
	askNew        Code = "new"
	askRetina     Code = "retinopathy_moderate_or_worse"
	askInsulin    Code = "insulin_or_secretagogue"
	askSevereLow  Code = "severe_low_24h"
	askPressure   Code = "blood_pressure"
	askGlucose    Code = "glucose"
	askKetones    Code = "ketones"
	askPain       Code = "pain"
	askPainKind   Code = "pain_kind"
	askAgain      Code = "blood_pressure_again"
	askPulseAgain Code = "resting_pulse_again"
	askPulse      Code = "resting_pulse"
	askSaturation Code = "oxygen_saturation"
	askSpO2Again  Code = "oxygen_saturation_again"
	askWeight     Code = "weight_gain"
	askCounts     Code = "blood_counts"
	askFalls      Code = "falls"
	askBack       Code = "back_pain"
	askSetting    Code = "setting"
	strokeBefore  Code = "stroke_before"
)

// homeReadings are readings that a clinician may have asked the person to take.
// Nobody is asked for them otherwise.
var homeReadings = []Code{askPressure, askPulse, askSaturation, askWeight}

// saturationCodes make a reading of oxygen saturation necessary each day.
var saturationCodes = []Code{"lung_disease", "copd_uncontrolled", "oxygen_therapy"}

// diabetesCodes say that a person has diabetes.
var diabetesCodes = []Code{"diabetes_t1", "diabetes_t2", "diabetes"}

// pressureCodes make a reading of the blood pressure necessary.
var pressureCodes = []Code{"hypertension", "hypertension_treated", "uncontrolled_hypertension", "cardiac", "cerebrovascular", "renal", "nephropathy", afterAttackOrStroke}

// writtenQuestions are asked of everyone or triggered. A question that was
// never triggered is not missing.
var writtenQuestions = []question{
	{code: askDiseases, client: "Do you have diabetes, or an illness of kidneys, heart or blood vessels, now or earlier?", clinician: "The list of known diseases was not asked."},
	{code: askSymptoms, client: "We would like to go through a short list of signs with you first.", clinician: "The list of signs and symptoms was not asked."},
	{code: askRedFlags, client: "We would like to ask about a few signs that need a doctor.", clinician: "The list of red flags was not asked."},
	{code: askConditions, client: "Which conditions, operations or medicines should we know of?", clinician: "The list of conditions was not asked."},
	{code: askActivity, client: "How often, how long and how hard have you been exercising lately?", clinician: "Activity of the last months; without it the person counts as not regularly active."},
	{code: askWanted, client: "How hard would you like to train?", clinician: "Wanted intensity; without it vigorous is assumed."},
	{code: askSetting, client: "Where would you train, and who is with you?", clinician: "Setting of the training; without it the person counts as alone."},
	{code: askClearance, yesNo: true, triggers: liftable(),
		client: "Has a doctor agreed that you exercise, and when?", clinician: "Clearance by a named clinician, with day and scope."},
	{code: askInsulin, yesNo: true, triggers: diabetesTold, means: "insulin_or_secretagogue",
		client: "Do you take insulin, or tablets that can bring your sugar too low?", clinician: "Insulin or a secretagogue: lows are possible."},
	{code: askRetina, yesNo: true, triggers: append(diabetesCodes[:len(diabetesCodes):len(diabetesCodes)], "nephropathy"), means: "npdr_moderate_or_worse", unless: []Code{"npdr_moderate_or_worse", "diabetic_retinopathy_severe", "retinopathy_high_intensity"},
		client: "What did your last eye check show?", clinician: "Diabetic retinopathy of moderate degree or more; unknown counts as present."},
	{code: "vertebral_fracture", yesNo: true, triggers: []Code{"osteoporosis", "osteoporosis_uk", "osteoporosis_essa", "osteoporosis_essa_dose"}, means: "vertebral_fracture", unless: []Code{"vertebral_fracture", "osteoporosis_with_vertebral_fracture"},
		client: "Has a bone in your spine ever broken, perhaps found on a picture?", clinician: "Vertebral fracture; many are silent, so the list alone does not answer it."},
	{code: strokeBefore, yesNo: true, triggers: []Code{"cerebrovascular"}, means: afterAttackOrStroke, unless: []Code{afterAttackOrStroke},
		client: "Have you ever had a stroke?", clinician: "A stroke in the past: told with the vessels of the brain it is the same as told by itself, and its day is asked."},
	{code: "hernia_symptomatic_or_large", yesNo: true, triggers: []Code{"hernia"}, means: "hernia_symptomatic_or_large",
		client: "Does the hernia hurt, bulge a lot, or has a doctor called it large?", clinician: "Hernia that is large or gives symptoms."},
	{code: askPressure, everyone: true, triggers: pressureCodes, means: "blood_pressure",
		client: "May we measure your blood pressure after a rest?", clinician: "Blood pressure at rest."},
	{code: askRegion, triggers: []Code{recentFracture}, client: "Which bone was broken?", clinician: "Region of the fracture."},
	{code: askLimit, yesNo: true, triggers: []Code{"musculoskeletal_limitation", "shoulder_replacement", replacementLimited}, client: "Has a surgeon or clinician asked you not to do something?", clinician: "Whether a surgeon or clinician set a restriction; if so, the restriction itself, with its author and until when."},

	{code: askFloor, yesNo: true, triggers: floorCodes,
		client: "Do you get down to the floor and up again by yourself, without help?", clinician: "Whether the person gets down to the floor and up again alone; until it is known, nothing on the floor."},
	{code: askBack, yesNo: true, triggers: pointing(),
		client: "Does your back hurt, or has it hurt lately?", clinician: "Back pain: signs of the spine count together for a back that hurts, and unless it is known not to."},
	{code: askCounts, triggers: []Code{"blood_disease", "chemotherapy"}, means: askCounts,
		client: "What did your last blood test show? The letter or a picture of it will do.", clinician: "Platelets and haemoglobin, latest counts."},
	{code: askFalls, client: "Does the thought of a fall trouble you, did you have one in the last 12 months, or are you shaky on your legs?", clinician: "The screen for falls was not asked, or is not complete; from 65 everybody is asked."},
	{code: askAgain, client: "May we measure your blood pressure again after a few quiet minutes?", clinician: "Second blood pressure after a rest; both are kept and the second counts."},
	{code: askSpO2Again, client: "May we read your oxygen again after a few quiet minutes?", clinician: "Second oxygen saturation after a rest; both are kept and the second counts."},
	{code: askPulseAgain, client: "May we count your pulse again after a few quiet minutes?", clinician: "Second pulse after a rest; both are kept and the second counts."},

	{code: askNew, client: "Is anything new since last time: pain in the chest, faintness, breathlessness, a new pain?", clinician: "New symptoms and red flags since the last visit were not asked."},
	{code: feverToday, client: "Do you feel feverish today?", clinician: "Feverish illness today was not asked.", means: feverToday},
	{code: askGlucose, client: "What does your meter show now?", clinician: "Glucose before the session.", means: "glucose"},
	{code: askSaturation, client: "May we put the clip on your finger to read your oxygen?", clinician: "Oxygen saturation at rest, asked for with lung disease or oxygen only."},
	{code: askWeight, client: "What do your scales show, against the last few days?", clinician: "Change of weight, which somebody asked for."},
	{code: askPulse, client: "May we count your pulse after a rest?", clinician: "Pulse at rest."},
	{code: worsening, client: "Over the last days, have you become more short of breath or tired sooner?", clinician: "Worsening over 3 to 5 days in heart failure."},
	{code: askPainKind, client: "Where does it hurt, and what is the pain like?", clinician: "Kind of pain: the model is for ordinary pain of joints, tendons and muscles."},
	{code: askKetones, client: "Please test for ketones before we start.", clinician: "Ketones at a high glucose.", means: "ketones"},
	{code: askSevereLow, client: "Did you need help with a low in the last day?", clinician: "A low in the last 24 h that needed help.", means: glucoseVeryLow},
	{code: askPain, client: "How was the pain during and after last time, and the next morning?", clinician: "The record of pain is not complete."},
}
