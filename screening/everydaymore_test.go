package screening_test

import (
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

func pulseOf(n int) func(*screening.Profile) {
	return func(p *screening.Profile) { p.RestingPulse, p.RestingPulseAgain = n, n }
}

func counted(platelets, haemoglobin int) func(*screening.Profile) {
	return func(p *screening.Profile) {
		p.Counts = &screening.BloodCounts{Platelets: platelets, Haemoglobin: haemoglobin}
	}
}

func brokeWrist(days units.Day) func(*screening.Profile) {
	return func(p *screening.Profile) {
		p.Events = append(p.Events, screening.Event{Code: "fracture", Day: visit - days, Region: body.WristHand})
	}
}

func fellOnce(p *screening.Profile) {
	p.Falls = &screening.FallsScreen{Fell: screening.Yes, Unsteady: screening.No, Afraid: screening.No}
}

// moreEverydays are people with two or three ordinary things at once, a small event, or a
// reading at a threshold.
var moreEverydays = []everyday{
	{who: "irregular heartbeat, blood thinner, beta-blocker, pulse 48", is: and{has("cardiac", "anticoagulant", "beta_blocker"), reads(112, 68), pulseOf(48)}, inactive: "ask first, unloaded practice", active: "tell, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.Silent}, exit: "the doctor, with a clearance",
		why: "ACSM N2 and A2; effort is judged and not the pulse, and a slow pulse is asked about"},
	{who: "flu two weeks ago", is: and{has("recent_infection_or_injected_drugs")}, inactive: "ask first, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the doctor, with being settled",
		why: "training goes on; whether it is quite over is asked"},
	{who: "flu, steroids, and the back was not spoken of", is: and{has("recent_infection_or_injected_drugs", "weakened_immune_system")}, inactive: "same day, nothing", verdict: [2]screening.Strictness{screening.ReferUrgent, screening.ReferUrgent}, exit: "the person, with an answer",
		why: "two signs of one cause: one answer about the back settles it, and the way out says so"},
	{who: "flu, steroids, and no back pain", is: and{has("recent_infection_or_injected_drugs", "weakened_immune_system"), no("back_pain")}, inactive: "ask first, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the doctor, with being settled",
		why: "no signs of the spine, then"},
	{who: "very fit, pulse 42, 104/62", is: and{pulseOf(42), reads(104, 62)}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "fit and without signs: training goes on"},
	{who: "very fit, pulse 40, nobody asked", is: and{pulseOf(40)}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the doctor, with a clearance",
		why: "somebody has to say that it is usual"},
	{who: "very fit, pulse 38, the doctor knows it", is: and{pulseOf(38), agreed("hr_le_40")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "a doctor has said so; at every visit it would hold else"},
	{who: "great weight, treated 158/98, knees, diabetes", is: and{has("high_weight", "hypertension_treated", "osteoarthritis_knee", "diabetes_t2"), reads(158, 98)}, inactive: "ask first, unloaded practice", active: "tell, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.DecideFirst}, exit: "the doctor, with a clearance",
		why: "weight holds nobody; ACSM N2 does while inactive"},
	{who: "Parkinson's, pressure that drops, one fall", is: and{has("parkinsons", "autonomic_neuropathy_postural_hypotension"), fellOnce}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "support, and nobody is held"},
	{who: "memory failing, how far not known", is: and{unsure("severe_cognitive_impairment")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the physiotherapist, with a look",
		why: "looked at, with somebody beside"},
	{who: "dementia, the doctor agreed, a carer beside", is: and{has("severe_cognitive_impairment"), agreed("severe_cognitive_impairment")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider},
		why: "Willey's entry stays visible; light, with somebody beside"},
	{who: "tired for months after an infection, looked at", is: and{has("unusual_fatigue_or_dyspnoea_usual_activity"), no("fatigue_new")}, inactive: "ask first, light and supervised", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow}, exit: "the doctor, with a clearance",
		why: "ACSM's sign; light until the doctor writes"},
	{who: "chemotherapy, counts well, team not asked", is: and{has("chemotherapy", "cancer_history"), yes("cancer_active"), no("back_pain"), counted(180, 121)}, inactive: "ask first, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the specialist team, with a clearance",
		why: "training goes on; the team is asked"},
	{who: "the same, the team agreed", is: and{has("chemotherapy", "cancer_history"), yes("cancer_active"), no("back_pain"), counted(180, 121), agreed("chemotherapy")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "what the team agreed to is not asked for at every visit"},
	{who: "chemotherapy, haemoglobin 99", is: and{has("chemotherapy"), counted(180, 99), agreed("chemotherapy")}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.StopOrNotNow, screening.StopOrNotNow}, exit: "the doctor, with being settled",
		why: "below 100: not today, whatever was agreed"},
	{who: "lung disease that is steady", is: and{has("lung_disease")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "the oxygen is read each day"},
	{who: "oxygen at home, the lung team agreed", is: and{has("lung_disease", "oxygen_therapy"), agreed("oxygen_therapy")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "oxygen is for life: the team's word is the way out"},
	{who: "kidneys, 150/90", is: and{has("renal"), reads(150, 90)}, inactive: "ask first, unloaded practice", active: "tell, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.Silent}, exit: "the doctor, with a clearance",
		why: "ACSM N2 and A2"},
	{who: "epilepsy, no seizure for years", is: and{has("epilepsy")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "nothing above head and face while alone"},
	{who: "steroid tablets for years", is: and{has("steroid_tablets")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "bones may be thin: told, and new back pain is grave"},
	{who: "steroid tablets and a back newly out of shape", is: and{has("steroid_tablets", "spinal_deformity")}, inactive: "ask first, unloaded practice", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the doctor, with being settled",
		why: "IFOMPT: steroids beside make a break likely"},
	{who: "glaucoma, and a cataract operation without a day", is: and{has("glaucoma", "recent_eye_operation"), no("eye_operation_not_cataract")}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider}, exit: "the surgeon, with a clearance",
		why: "its day settles it"},
	{who: "hernia, not known whether large", is: and{has("hernia")}, inactive: "ask first, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the person, with an answer",
		why: "one answer settles it; nothing presses on it until then"},
	{who: "hernia that is large, the surgeon agreed", is: and{has("hernia"), yes("hernia_symptomatic_or_large"), agreed("hernia")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider},
		why: "Willey bars it until it is reviewed, and it was"},
	{who: "old clot, ankles that swell by evening, looked at", is: and{has("ankle_oedema", "anticoagulant"), no("ankle_oedema_new")}, inactive: "ask first, light and supervised", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow}, exit: "the doctor, with a clearance",
		why: "ACSM's sign; light until the doctor writes"},
	{who: "not sure about a clot now", is: and{unsure("acute_dvt")}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the person, with an answer",
		why: "an acute clot is grave: one answer settles it"},
	{who: "gout in a big toe now", is: and{has("acute_joint_inflammation"), at("acute_joint_inflammation", body.AnkleFoot)}, inactive: "ask first, within limits", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider}, exit: "the doctor, with being settled",
		why: "the foot rests, the rest trains"},
	{who: "gall bladder out a week ago", is: and{ago("operation", 7), yes("operation_unhealed")}, inactive: "ask first, unloaded practice", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the surgeon, with a clearance",
		why: "who operated says when: movements without weight until then"},
	{who: "an unknown operation a week ago", is: and{ago("operation", 7)}, inactive: "ask first, unloaded practice", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the person, with an answer",
		why: "the graver reading: one answer settles it"},
	{who: "a tooth out last week, healed", is: and{ago("operation", 7), no("operation_unhealed")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "it has healed and nobody forbids anything"},
	{who: "an operation, when not known", is: and{ago("operation", visit), yes("operation_unhealed")}, inactive: "ask first, unloaded practice", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the surgeon, with a clearance",
		why: "without a day it counts as recent"},
	{who: "an operation four months ago", is: and{ago("operation", 120)}, inactive: "none, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "long over"},
	{who: "gall bladder out five weeks ago, the surgeon agreed", is: and{ago("operation", 35), yes("operation_unhealed"), agreed("operation")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "who operated has spoken"},
	{who: "wrist broken four months ago", is: and{brokeWrist(120)}, inactive: "ask first, within limits", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider}, exit: "the surgeon, with a clearance",
		why: "Willey bars the region"},
	{who: "the wrist, the fracture clinic agreed", is: and{brokeWrist(120), agreed("recent_fracture")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider},
		why: "who treated it has spoken; Willey's entry stays visible"},
	{who: "160/99", is: and{has("hypertension_treated"), reads(160, 99)}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "AHA: strictly above 160/100"},
	{who: "161/99", is: and{has("hypertension_treated"), reads(161, 99)}, inactive: "ask first, light and supervised", verdict: [2]screening.Strictness{screening.DecideFirst, screening.DecideFirst}, exit: "the doctor, with a clearance",
		why: "AHA: a doctor decides first"},
	{who: "160/100", is: and{has("hypertension_treated"), reads(160, 100)}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.StopOrNotNow, screening.StopOrNotNow}, exit: "the doctor, with being settled",
		why: "the rule of the day stops at a diastolic pressure of 100"},
	{who: "168/104, after a rest 148/92", is: and{has("hypertension_treated"), func(p *screening.Profile) { p.BP, p.BPAgain = pressure(168, 104), pressure(148, 92) }}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "the second counts"},
	{who: "99/58 on water tablets", is: and{has("hypertension_treated"), reads(99, 58)}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "seated first; asked whether it is usual"},
	{who: "89/60", is: and{reads(89, 60)}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the doctor, with a clearance",
		why: "low: the doctor is asked whether it is usual"},
	{who: "pulse 100", is: and{pulseOf(100)}, inactive: "none, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "the rule of the day stops above 100"},
	{who: "pulse 101", is: and{pulseOf(101)}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.StopOrNotNow, screening.StopOrNotNow}, exit: "the doctor, with being settled",
		why: "above 100"},
	{who: "vessels of the brain, no stroke", is: and{has("cerebrovascular"), no("stroke_before")}, inactive: "ask first, unloaded practice", active: "tell, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.Silent}, exit: "the doctor, with a clearance",
		why: "ACSM N2 and A2"},
	{who: "fell three weeks ago", is: and{ago("fall", 21)}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "CDC: support, and balance work"},
	{who: "knee of eight weeks, no limits left", is: and{has("total_knee_replacement"), ago("total_knee_replacement", 56), no("replacement_limited")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the physiotherapist, with a date",
		why: "the physiotherapist looks until its twelve weeks are over"},
	{who: "feet without feeling, the doctor agreed", is: and{has("foot_ulcer_neuropathy"), agreed("foot_ulcer_neuropathy")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "feeling does not come back: the doctor's word is the way out"},
	{who: "growing aneurysm, the doctor agreed", is: and{has("aortic_or_cerebral_aneurysm"), agreed("aortic_or_cerebral_aneurysm")}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider}, exit: "the specialist team, with being settled",
		why: "Willey's contraindication: no paper lifts it, and the specialist treats it"},
}
