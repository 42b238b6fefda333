package screening

import (
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Causes that signs of the spine point to.
const (
	caudaEquina = "cauda equina syndrome"
	infection   = "infection"
	malignancy  = "malignancy"
	brokenBone  = "fracture"
)

func spineFlag(says, cause string, basis evidence.Basis) provenance {
	p := provenance{says: says + " points to " + cause, source: "finucane2020", basis: basis}
	if basis == evidence.Secondary {
		p.via = "gloucs"
	}
	return p
}

// ours is a row of this module's own (Design): no source was found for it.
func ours(says string) provenance { return provenance{says: says, basis: evidence.Design} }

// redFlags are signs of a serious cause. Of the spine's, one alone says little
// except those of cauda equina: signs with points count together, the others by
// themselves.
var redFlags = []entry{
	{code: "saddle_numbness", kind: RedFlag, meaning: "numb saddle area", from: spineFlag("a numb saddle area", caudaEquina, evidence.Secondary), effect: emergency, flag: EmergencyReferral},
	{code: "new_bladder_or_bowel_dysfunction", kind: RedFlag, meaning: "bladder or bowel that newly fails", from: spineFlag("bladder or bowel that newly fails", caudaEquina, evidence.Secondary), effect: emergency, flag: EmergencyReferral},
	{code: "new_sexual_dysfunction", kind: RedFlag, meaning: "sexual function newly lost", from: spineFlag("sexual function newly lost", caudaEquina, evidence.FromMemory), effect: emergency, flag: EmergencyReferral},
	{code: "severe_or_growing_leg_deficit", kind: RedFlag, meaning: "loss in the legs that is severe or growing", from: spineFlag("loss of nerve function in the legs, severe or growing,", caudaEquina, evidence.Secondary), effect: emergency, flag: EmergencyReferral, balance: true},
	{code: "cancer_history_with_new_unremitting_back_pain", kind: RedFlag, meaning: "earlier cancer with new back pain that does not let up", from: spineFlag("earlier cancer with pain that never lets up", malignancy, evidence.Secondary), effect: seeToday, flag: UrgentReferral},
	{code: "fever_with_severe_back_pain", kind: RedFlag, meaning: "fever with severe back pain", from: spineFlag("fever with back pain", infection, evidence.Secondary), effect: seeToday, flag: UrgentReferral},
	{code: "fracture_after_minor_trauma_with_osteoporosis", kind: RedFlag, meaning: "back pain or fracture after a small injury, with osteoporosis or steroids", from: spineFlag("a small injury with osteoporosis or steroids", brokenBone, evidence.Secondary), effect: seeToday, flag: UrgentReferral},
	{code: "sudden_back_pain_after_major_injury", kind: RedFlag, meaning: "sudden back pain after a major injury", from: spineFlag("sudden pain after a major injury", brokenBone, evidence.Secondary), effect: seeToday, flag: UrgentReferral},

	{code: "fever_or_shivering", kind: RedFlag, meaning: "fever or shivering", from: spineFlag("fever or shivering", infection, evidence.Secondary), effect: askNothing, points: infection},
	{code: "weakened_immune_system", kind: RedFlag, meaning: "weakened immune system", from: spineFlag("a weakened immune system", infection, evidence.Secondary), effect: tell, points: infection},
	{code: "recent_infection_or_injected_drugs", kind: RedFlag, meaning: "recent infection, injected drugs or a piercing wound", from: spineFlag("a recent infection, injected drugs or a piercing wound", infection, evidence.Secondary), effect: ask, points: infection},
	{code: "unexplained_weight_loss", kind: RedFlag, meaning: "weight lost without a reason", from: spineFlag("weight lost without a reason", malignancy, evidence.Secondary), effect: ask, points: malignancy},
	{code: "unremitting_night_pain", kind: RedFlag, meaning: "night pain that never lets up", from: spineFlag("night pain that never lets up", malignancy, evidence.Secondary), effect: ask, points: malignancy},
	{code: "back_pain_not_better_at_a_month", kind: RedFlag, meaning: "back pain no better after about a month", from: spineFlag("pain no better after about a month", malignancy, evidence.Secondary), effect: lookSpine, finer: seenBy(backUnseen), points: malignancy, also: []evidence.FactID{seenFact}},
	{code: "pain_in_many_places", kind: RedFlag, meaning: "pain in many places", from: spineFlag("pain in many places", malignancy, evidence.Secondary), effect: look, finer: seenBy(placesUnseen), points: malignancy, also: []evidence.FactID{seenFact}},
	{code: "cancer_history", kind: RedFlag, meaning: "cancer earlier in life", from: spineFlag("cancer earlier in life", malignancy, evidence.Secondary), effect: tell, points: malignancy},
	{code: "severe_midline_back_pain", kind: RedFlag, meaning: "severe back pain in the midline, less on lying down", from: spineFlag("severe pain in the midline, less on lying down,", brokenBone, evidence.Secondary), effect: askNoLoad.with(lookShape.limits), lesser: &lookShape, beside: breaksBones, seen: &seen{midlineUnseen, tell}, points: brokenBone, also: []evidence.FactID{shapeFact, seenFact}},
	{code: spinalDeformity, kind: RedFlag, meaning: "spine newly out of its shape", from: spineFlag("a spine out of its normal shape", brokenBone, evidence.Secondary), effect: askNoLoad.with(lookShape.limits), lesser: &lookShape, beside: breaksBones, seen: &seen{shapeUnseen, tell}, points: brokenBone, also: []evidence.FactID{shapeFact, seenFact}},

	{code: "hot_swollen_joint", kind: RedFlag, meaning: "joint hot and swollen", from: said("", evidence.FromMemory, "a joint hot and swollen, above all with fever, is seen the same day"), effect: seeToday, flag: UrgentReferral},
	{code: "stroke_signs", kind: RedFlag, meaning: "sudden weakness, or change of face or speech", from: said("colberg2016", evidence.Published, "sudden weakness or a change of face or speech: stop"), effect: emergency, flag: EmergencyReferral, balance: true},
	{code: "sudden_severe_headache", kind: RedFlag, meaning: "sudden severe headache", from: ours("a sudden severe headache is an emergency"), effect: emergency, flag: EmergencyReferral},
	{code: "clot_signs", kind: RedFlag, meaning: "one calf or leg newly swollen, warm or painful", from: ours("signs of a clot in a leg are seen the same day"), effect: seeToday, flag: UrgentReferral},
	{code: "symptomatic_low_pressure", kind: RedFlag, meaning: "low blood pressure with symptoms", from: ours("low pressure with symptoms is seen the same day"), effect: seeToday, flag: UrgentReferral, balance: true},
	{code: lateLow, kind: RedFlag, meaning: "a low of glucose hours after training or at night", from: ours("a late low is talked over with who looks after the diabetes, on the day that it is told before any session; until then the meter before each, a lighter one, and somebody at hand"),
		effect: askNothing.with(lateLowTold.limits), lesser: &lateLowTold, balance: true},
	{code: "tendon_pop", kind: RedFlag, meaning: "a pop in a tendon with loss of strength", from: ours("a tendon that popped is seen the same day"), effect: seeToday, flag: UrgentReferral},
	{code: "dark_urine_after_effort", kind: RedFlag, meaning: "dark urine after effort", from: ours("dark urine after effort is seen the same day"), effect: seeToday, flag: UrgentReferral},
	{code: "replacement_wound_problem", kind: RedFlag, meaning: "wound of a joint replacement red, hot or weeping", from: ours("a wound of a joint replacement that changes is seen the same day"), effect: seeToday, flag: UrgentReferral},
	{code: "new_groin_pain_or_instability", kind: RedFlag, meaning: "new groin pain or a joint newly unstable", from: ours("new groin pain or instability waits for an answer, and the hip is not loaded"), effect: ask.with(Limits{Avoid: sparing(body.Hip)})},
	{code: "sudden_back_pain_or_height_loss", kind: RedFlag, meaning: "sudden back pain or loss of height", from: ours("sudden back pain or loss of height may be a fracture of the spine"), effect: seeToday, flag: UrgentReferral},
	{code: "pelvic_heaviness", kind: RedFlag, meaning: "heaviness or bulge in the pelvis", from: ours("pelvic heaviness is asked about before straining"), effect: look.with(Limits{NoBreathHolding: true}).avoiding(body.AbdominalPressure), finer: pelvisSeen, also: []evidence.FactID{seenFact}},
}

// lateLow is a low that came hours later; every day then needs the meter.
const lateLow Code = "late_hypoglycaemia"

// lateLowTold goes on with what a low asks for, once the day that it is told is over.
var lateLowTold = ask.with(glucoseLimits)

// backSigns are red flags that are pain of the back by themselves.
var backSigns = []Code{
	"cancer_history_with_new_unremitting_back_pain", "fever_with_severe_back_pain", "fracture_after_minor_trauma_with_osteoporosis",
	"sudden_back_pain_after_major_injury", "unremitting_night_pain", "back_pain_not_better_at_a_month", "severe_midline_back_pain",
	"sudden_back_pain_or_height_loss",
}
