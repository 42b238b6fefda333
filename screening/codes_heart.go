package screening

import (
	"fmt"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// listVia is where the list of contraindications was read.
const listVia = "ibpc2024"

func absolute(says string) provenance {
	return provenance{says: says + ": absolute contraindication to resistance exercise", source: "williams2007", via: listVia, locator: "Table 1", basis: evidence.Secondary}
}

func relative(says string) provenance {
	return provenance{says: says + ": relative contraindication to resistance exercise", source: "williams2007", via: listVia, locator: "Table 1", basis: evidence.Secondary}
}

// heartEntries are the contraindications of AHA 2007 that are answered, not
// measured. Nothing lifts the absolute ones.
var heartEntries = []entry{
	{code: "unstable_chd", kind: Condition, wider: true, meaning: "unstable coronary heart disease, unstable angina with it", from: absolute("unstable coronary heart disease"), effect: emergency, level: Absolute},
	{code: "aortic_dissection", kind: Condition, meaning: "dissection of the aorta", from: absolute("aortic dissection"), effect: emergency, level: Absolute},
	{code: "decompensated_hf", kind: Condition, meaning: "decompensated heart failure", from: absolute("decompensated heart failure"), effect: seeToday, level: Absolute},
	{code: "uncontrolled_arrhythmia", kind: Condition, wider: true, meaning: "arrhythmia not under control", from: absolute("uncontrolled arrhythmia"), effect: seeToday, level: Absolute, balance: true},
	{code: "acute_myocarditis", kind: Condition, meaning: "acute myocarditis", from: absolute("acute myocarditis"), effect: seeToday, level: Absolute},
	{code: "acute_endocarditis", kind: Condition, meaning: "acute endocarditis", from: absolute("acute endocarditis"), effect: seeToday, level: Absolute},
	{code: "acute_pericarditis", kind: Condition, meaning: "acute pericarditis", from: absolute("acute pericarditis"), effect: seeToday, level: Absolute},
	{code: "severe_symptomatic_aortic_stenosis", kind: Condition, wider: true, meaning: "severe aortic stenosis with symptoms", from: absolute("severe symptomatic aortic stenosis"), effect: seeToday, level: Absolute, balance: true},
	{code: "marfan", kind: Condition, meaning: "Marfan syndrome", from: absolute("Marfan syndrome"), effect: askNothing, level: Absolute},
	{code: "severe_pulmonary_hypertension", kind: Condition, meaning: "severe pulmonary hypertension", from: absolute(fmt.Sprintf("severe pulmonary hypertension, mean pressure above %d mmHg", severePAP)), effect: askNothing, level: Absolute},
	// Without a reading the graver of its two thresholds is taken; with one, the
	// reading grades it: see contraindicationLevel.
	{code: "uncontrolled_hypertension", kind: Condition, meaning: "blood pressure not under control", from: absolute("uncontrolled hypertension, above 180/110 mmHg"), effect: askNothing, level: Absolute, cautions: []Code{noBreathHolding}},
	{code: "major_chd_risk_factors", kind: Condition, meaning: "major coronary risk factors", from: relative("major coronary risk factors"), effect: askLight, released: &tell, level: Relative, dropped: true, also: []evidence.FactID{successorFact}},
	{code: "pacemaker", kind: Condition, meaning: "pacemaker", from: relative("pacemaker"), effect: askLight.with(armSide.limits), released: &tell, level: Relative,
		also: []evidence.FactID{deviceFact}, dated: &dated{weeks: deviceWeeks, later: ask.with(Limits{MaxIntensity: Moderate})}},
	{code: "icd", kind: Condition, meaning: "implanted defibrillator", from: relative("implantable defibrillator"), effect: askLight.with(armSide.limits), released: &tellModerate, level: Relative,
		also: []evidence.FactID{deviceFact}, dated: &dated{weeks: deviceWeeks, later: askLight}},
	{code: "low_functional_capacity", kind: Condition, meaning: "low functional capacity", from: relative("functional capacity below 4 METs"), effect: askLight, notKnown: &lookLight, released: &tell, level: Relative, as: lowCapacity, also: []evidence.FactID{inRoomFact}},
	{code: "diabetes", kind: Condition, meaning: "diabetes, type not stated", from: relative("diabetes at any age"), effect: askLight, released: &tell, level: Relative, dropped: true, also: []evidence.FactID{successorFact}},
	{code: "musculoskeletal_limitation", kind: Condition, meaning: "limitation of joints or muscles", from: relative("musculoskeletal limitations"), effect: tell, level: Relative},
	{code: "retinopathy_high_intensity", kind: Condition, meaning: "diabetic retinopathy that bars heavy loads", from: retinopathyFrom, effect: retinopathy, released: &retinopathyTold, level: Absolute, cautions: []Code{noBreathHolding}, also: []evidence.FactID{belowFact}},
	{code: "npdr_moderate_or_worse", kind: Condition, meaning: "diabetic retinopathy, non-proliferative of moderate degree or more, or proliferative", from: retinopathyFrom, effect: retinopathy, released: &retinopathyTold, level: Absolute, as: retinopathyHigh, cautions: []Code{noBreathHolding}, also: []evidence.FactID{belowFact}},
}

// Codes of the list where they differ from the code of the entry.
const (
	lowCapacity     Code = "capacity_lt_4_mets"
	retinopathyHigh Code = "retinopathy_high_intensity"
)

var retinopathyFrom = provenance{
	says:   fmt.Sprintf("active proliferative, or moderate or worse non-proliferative, diabetic retinopathy: absolute contraindication to loads of %v of the 1RM or more", highIntensity),
	source: "williams2007", basis: evidence.FromMemory,
}

// retinopathy caps the load below the band that is barred; lighter work goes on.
var retinopathy = ask.with(Limits{MaxFraction: belowIntensity, NoBreathHolding: true})

// retinopathyTold is what stays once the eye clinic has agreed: all of it but the question.
var retinopathyTold = tell.with(retinopathy.limits)

// armSide spares the arm of the side on which the wound of a device heals, both where its
// event does not tell it (see itsSide), and the legs go on.
var armSide = askLight.avoiding(body.ShoulderResisted, body.Overhead)
