package screening

import (
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

func wider(says string) provenance {
	return provenance{says: says + ": on the wider list of contraindications", source: "willey2003", basis: evidence.Published}
}

// widerEntries are what the wider list of Willey 2003 adds. It does not say
// what is absolute. What is acute is lifted by no clearance: it is answered with no
// once it is over. Of an eye the surgeon says when; of a joint its place alone is held.
var widerEntries = []entry{
	{code: "acute_mi", kind: Condition, wider: true, meaning: "acute heart attack", from: wider("acute myocardial infarction"), effect: emergency},
	{code: "left_main_disease_untreated", kind: Condition, wider: true, meaning: "severe left-main disease, untreated", from: wider("severe left-main disease left untreated"), effect: seeToday},
	{code: "training_provokes_angina_hypotension_or_arrhythmia", kind: Condition, wider: true, meaning: "resistance work sets off angina, low pressure or an arrhythmia", from: wider("angina, a fall in pressure or an arrhythmia set off by resistance work"), effect: seeToday, balance: true},
	{code: "heart_failure_nyha_iv", kind: Condition, wider: true, meaning: "heart failure of NYHA class IV", from: wider("heart failure of NYHA class IV"), effect: seeToday},
	{code: "severe_valve_disease", kind: Condition, wider: true, meaning: "severe disease of a heart valve", from: wider("severe disease of a valve"), effect: askNothing},
	{code: "acute_dvt", kind: Condition, wider: true, meaning: "acute deep-vein thrombosis", from: wider("acute deep-vein thrombosis"), effect: seeToday},
	{code: "acute_pulmonary_embolism", kind: Condition, wider: true, meaning: "acute embolism or infarct of the lung", from: wider("acute embolism or infarct of the lung"), effect: emergency},
	{code: "recent_intracranial_bleed", kind: Condition, wider: true, meaning: "recent bleed inside the skull", from: wider("recent bleed inside the skull"), effect: askNothing},
	{code: "unstable_neurological_disease", kind: Condition, wider: true, meaning: "neurological disease that worsens fast or is not stable", from: wider("neurological disease that worsens fast or is not stable"), effect: askNothing, balance: true},
	{code: "intoxicated", kind: Condition, wider: true, meaning: "under the influence of alcohol or drugs", from: wider("under the influence of alcohol or drugs"), effect: askNothing, balance: true},
	{code: "retinal_bleed_or_detachment", kind: Condition, wider: true, meaning: "bleed or detachment of the retina, or severe proliferative disease", from: wider("a bleed or detachment of the retina, or severe proliferative disease"), effect: seeToday},
	{code: "recent_eye_operation", kind: Condition, wider: true, meaning: "eye operation not long ago", from: wider("an eye operation not long ago"), effect: askNothing.with(eyeSpared.limits), also: []evidence.FactID{cataractFact, eyeFact},
		finer: cataract, released: &eyeSpared, dated: &dated{months: eyeMonths, later: eyeSpared}},
	{code: "copd_uncontrolled", kind: Condition, wider: true, meaning: "COPD not under control", from: wider("COPD not under control"), effect: askNothing, notKnown: &lookGently, also: []evidence.FactID{inRoomFact}},
	{code: "unstable_or_injured_joint", kind: Condition, wider: true, meaning: "joint, tendon or ligament unstable or freshly injured", from: wider("a joint, tendon or ligament unstable or freshly injured"), effect: askNoLoad, notKnown: &lookGently, sited: &ask, also: []evidence.FactID{inRoomFact}},
	{code: "acute_joint_inflammation", kind: Condition, wider: true, meaning: "joint inflammation in its acute phase", from: wider("joint inflammation in its acute phase"), effect: askNoLoad, notKnown: &lookGently, sited: &ask, also: []evidence.FactID{inRoomFact}},
	{code: "pain_made_worse_by_training", kind: Condition, wider: true, meaning: "joint or muscle pain made clearly worse by training", from: wider("joint or muscle pain made clearly worse by training"), effect: askNoLoad, notKnown: &lookGently, sited: &look, seen: &seen{worseUnseen, tell}, also: []evidence.FactID{inRoomFact, seenFact}},
	{code: "unstable_prosthesis", kind: Condition, wider: true, meaning: "prosthesis that is not stable", from: wider("a prosthesis that is not stable"), effect: askNothing},
	{code: "haemorrhoids_symptomatic_or_large", kind: Condition, wider: true, meaning: "haemorrhoids, large or giving symptoms", from: wider("haemorrhoids, if large or giving symptoms"), effect: ask.with(Limits{NoBreathHolding: true}).avoiding(body.AbdominalPressure)},
	{code: "uncontrolled_systemic_disease", kind: Condition, wider: true, meaning: "disease of the whole body out of control", from: wider("disease of the whole body out of control"), effect: askNothing},
	{code: "end_stage_illness", kind: Condition, wider: true, meaning: "marked general decline, or an illness in its final stage", from: wider("marked general decline, or an illness in its final stage"), effect: askNoLoad, released: &besideLight, notKnown: &lookGently, also: []evidence.FactID{inRoomFact}},
}
