package screening

import (
	"maps"
	"slices"
	"strings"

	"example.org/posology/units/evidence"
)

// held marks the reason of a finding whose usual sentence lets more go on than
// the joined outcome does.
const held evidence.Code = ".held"

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
	"cfs_level_4": WithinLimits, "cfs_level_5": WithinLimits,
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
	"unstable_or_injured_joint": UnloadedPractice, "end_stage_illness": UnloadedPractice, "cfs_level_6": UnloadedPractice, "cfs_level_9": UnloadedPractice,
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
	ketonesLight:    "The ketones are low enough.",
	sorenessLasting: "Your muscles are still sore; they need a little longer.",
	unwellToday:     "You are a little under the weather; please rest.",

	untreatedHigh: "", untreatedHigh + ".again": "",
}

// Offers returns the most that the client's sentence of a reason lets go on,
// and whether it lets anything go on at all. No finding of an outcome offers more
// than its Meanwhile.
func Offers(code evidence.Code) (Meanwhile, bool) {
	name := unprefixed(code)
	if most, ok := offered[name]; ok {
		return most, true
	}
	if of, agreed := strings.CutSuffix(string(name), string(withClearance)); agreed && find(Code(of)) != nil {
		return WithinLimits, true // an agreement that lifted a hold
	}
	return MeanwhileUnknown, false
}

// unprefixed is a reason's code without the package's prefix.
func unprefixed(code evidence.Code) Code {
	return Code(strings.TrimPrefix(string(code), string(reasonPrefix)))
}

// hold leaves out sentences that let more go on than o does, and what is said
// twice.
func (o *Outcome) hold() {
	kept := o.Findings[:0]
	for _, f := range o.Findings {
		if most, ok := Offers(f.Reason.Code); ok && most < o.Meanwhile {
			f.Reason.Code += held
		}
		if !slices.ContainsFunc(kept, f.same) {
			kept = append(kept, f)
		}
	}
	o.Findings = kept
}

// addHeld adds to w what is said to those who are held in place of each offer.
func addHeld(w evidence.Words) {
	for code, wording := range maps.Clone(w) {
		if _, ok := Offers(code); !ok {
			continue
		}
		name := unprefixed(code)
		client, own := heldTexts[name]
		if !own {
			client = heldText(name)
		}
		w[code+held] = evidence.Wording{Client: client, Clinician: wording.Clinician + " What else was found holds it."}
	}
}

// heldText is put together for an entry.
func heldText(name Code) string {
	code, variant, _ := strings.Cut(string(name), ".")
	e, about := find(Code(code)), text(Code(code)).about
	switch {
	case "."+variant == string(withClearance):
		return "Your doctor has agreed about " + about + "; the rest comes first."
	case e.effect.route >= AskFirst:
		return "Please ask your doctor about " + about + " as well."
	}
	return "Thank you for telling us about " + about + "; we come back to it."
}
