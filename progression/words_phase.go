package progression

import (
	"maps"

	"example.org/posology/units/evidence"
)

// phaseWords is what phases, the end of a programme, attendance and happenings say.
func phaseWords() evidence.Words {
	w := happeningWords()
	maps.Copy(w, dischargeWords())
	return w
}

// happeningWords is what attendance and happenings say.
func happeningWords() evidence.Words {
	return evidence.Words{
		"progression.attendance-between": {Clinician: "{done} of {planned} sessions in {days} days: the plan is kept as it is."},
		"progression.attendance-few":     {Clinician: "{planned} sessions planned in {days} days, fewer than {least}: too few to tell from. The plan is kept."},
		"progression.attendance-full":    {Clinician: "{done} of {planned} sessions in {days} days: nothing against more load from attendance."},
		"progression.attendance-low": {
			Client:    "Let us make the plan shorter, so that it fits your week better.",
			Clinician: "{done} of {planned} sessions in {days} days: simplify the plan, with fewer exercises or sets and shorter sessions, and ask what would fit. No published rule.",
		},
		"progression.happened-assessed": {Clinician: "Told: {what}, which the assessment of {assessed} had to look at."},
		"progression.happened-ends-plan": {
			Client:    "Thank you for telling us. We look at everything again before you go on.",
			Clinician: "Told: {what}, not known to the assessment of {assessed}: it ends clearances, estimates and the plan. Assess anew.",
		},
		"progression.happened-in-training": {Clinician: "Related to training: {related}. Look at dose, exercise and technique too."},
		"progression.happened-not-asked": {
			Client:    "Before we begin: has anything happened, or have your medicines changed?",
			Clinician: "Not asked today what has happened or changed: ask before the session.",
		},
		"progression.happened-review": {
			Client:    "Thank you for telling us. We look at this together before the next session.",
			Clinician: "Told: {what}, not known to the assessment of {assessed}: review before the next session.",
		},
		"progression.happened-reviewed": {Clinician: "Told: {what}, since the assessment of {assessed}; reviewed by {who}, {day}."},
		"progression.medicine-changed": {
			Client:    "Since your medicines have changed, we look at the plan before the next session.",
			Clinician: "Change of medicine, not known to the assessment of {assessed}: review before the next session, with whoever prescribed it where in doubt.",
		},
		"progression.standing": {Clinician: "After what was told the plan: {standing}."},
	}
}

// dischargeWords is what a person takes along.
func dischargeWords() evidence.Words {
	return evidence.Words{
		"progression.discharge": {
			Client:    "You have come to the end of this programme. Here is how to keep what you have gained.",
			Clinician: "End of the programme: nothing more is dosed. Local rules and a licensed clinician decide.",
		},
		"progression.discharge-happened": {
			Client:    "After any of these, please see your doctor or us before you go on: {what}.",
			Clinician: "Back first, before training goes on, after any of: {what}.",
		},
		"progression.discharge-maintain": {
			Client:    "Keep the weights that you have now: {days} days a week, {sets} sets of each exercise.",
			Clinician: "Maintenance in older people, from memory: {days} sessions a week, {sets} sets, the load kept.",
		},
		"progression.discharge-weeks": {
			Client:    "If you have not trained for more than {weeks} weeks, please come to us before you begin again.",
			Clinician: "Beyond {weeks} weeks off: back for familiarisation and a new baseline. The ladder has no published source.",
		},
	}
}
