package screening

import (
	"cmp"

	"example.org/posology/units/evidence"
)

// finerWords adds the wordings of what finer questions, days, a place and the policy
// make of an entry.
func (e *entry) finerWords(w evidence.Words, client clientText, rule string) {
	code := e.plain
	thanks := "Thank you for telling us about " + client.about + "."
	e.datedWords(w, e.dated, code, rule, cmp.Or(client.later, client.says), client.long)
	if f := e.finer; f != nil {
		w[code+lookedAtOnce] = evidence.Wording{Client: cmp.Or(client.known, thanks), Clinician: rule + f.because() + ", " + e.here(f.settled) + f.standing()}
		e.datedWords(w, f.dated, code+lookedAtOnce, rule, cmp.Or(client.after, thanks), cmp.Or(client.long, thanks))
	}
	if e.seen != nil {
		w[code+lookedAtOnce] = evidence.Wording{Client: thanks, Clinician: rule + "as the physiotherapist has looked and left nothing against it, " + e.here(e.seen.then)}
	}
	if e.lesser != nil {
		w[code+lesserKind] = evidence.Wording{Client: cmp.Or(client.lesser, client.says), Clinician: rule + "with nothing beside that makes it grave, " + e.here(*e.lesser)}
	}
	if e.sited != nil {
		w[code+itsPlace] = evidence.Wording{Client: cmp.Or(client.place, thanks), Clinician: rule + "work of its place alone is held, " + e.here(*e.sited)}
	}
	if e.dropped {
		w[code+byNewerList] = evidence.Wording{Client: cmp.Or(client.newer, thanks), Clinician: rule + "An older list holds it, a newer one does not, and the policy follows the newer: " + byNewer.String() + "."}
	}
}

// because says what its questions, each answered with no, came to.
func (f *finer) because() string {
	if f.explained {
		return "as it was looked at and has not changed"
	}
	return "as the further questions were answered"
}

// standing says that the preparticipation rule counts the sign all the same.
func (f *finer) standing() string {
	if f.explained {
		return " The preparticipation rule counts it as a sign and asks for clearance."
	}
	return ""
}

// here says what follows here, and what the physiotherapist looks at.
func (e *entry) here(f effect) string {
	text := f.String() + "."
	if look := looks[e.code]; look != "" && f.route == PhysioLooks {
		text += " Look at " + look + "."
	}
	return text
}

// looks are what a physiotherapist commonly looks at (common practice).
var looks = map[Code]string{
	"total_knee_replacement":               "how the knee bends and straightens, the gait and the thigh",
	"total_hip_replacement":                "the abductors, the gait and the length of the legs",
	"hip_fracture":                         "the abductors, the gait, the way up from a chair and the risk of falling",
	chronicSigns[0]:                        "nerves of the legs, pain at night, what eases it and how it goes",
	chronicSigns[1]:                        "where and since when, sleep, weight, and whether a joint is hot",
	"pelvic_heaviness":                     "the pelvic floor, the breath on effort and what brings it on",
	spinalDeformity:                        "the height against what it was, the shape of the back and whether tapping it hurts",
	vertebralFracture:                      "the height against what it was, and the shape of the back",
	"osteoporosis_with_vertebral_fracture": "the height against what it was, and the shape of the back",

	dizzyStanding: "the pressure lying and after 1 and 3 minutes of standing, and the medicines",
	dizzySpinning: "what lying back with the head turned brings on, and the balance",
	spineNotSeen:  "the height against what it was, and the shape of the back",

	"pain_made_worse_by_training": "the movement that hurts, its load and dose, and an easier one",
	"unstable_or_injured_joint":   "the joint, how it is held, and whether it gives way",
	"acute_joint_inflammation":    "the joint, whether it is warm or swollen, and how it moves",
	"severe_midline_back_pain":    "the height against what it was, the shape of the back and whether tapping it hurts",
	"shoulder_replacement":        "the scar, and how far the arm goes up",
	"palpitations_or_tachycardia": "the pulse by hand for a whole minute, and what brings the racing on",
	"known_heart_murmur":          "the letters that there are, the breath and the ankles",
	"ankle_oedema":                "both ankles, pressed with a thumb, and the weight against what it was",
	"intermittent_claudication":   "what a walk brings on, and the pulses of the feet",
	"low_functional_capacity":     "what a flight of stairs or a test of walking shows, with the pulse and the breath",
	"copd_uncontrolled":           "the saturation at rest and on a walk, the phlegm, and the breath against what is usual",
	"severe_cognitive_impairment": "what is understood and kept of an exercise that was shown, with somebody there who knows the person",
	"end_stage_illness":           "how the days are spent, weight and strength against half a year ago, and the letters that there are",

	"unusual_fatigue_or_dyspnoea_usual_activity": "the task, how it went a year ago, and the breath and pulse on a walk",
	otherPain[SpreadingPain]:                     "where it goes, strength and feeling of the limb, and signs of a serious cause",
}

// datedWords adds those of the stages, for the client as given.
func (e *entry) datedWords(w evidence.Words, d *dated, code evidence.ReasonCode, rule string, client ...string) {
	for n := 1; d != nil; d, n = d.next, n+1 {
		text := client[min(n, len(client))-1]
		w[code+stageVariants[n]] = evidence.Wording{Client: text, Clinician: rule + e.here(d.later)}
	}
}
