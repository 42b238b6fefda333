package programme

import (
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon {
	return units.Must(evidence.NewLexicon(exitWords(), happeningWords(), dischargeWords()))
})

// exitWords is what the ways out of a phase and the dates of its plan say.
func exitWords() evidence.Words {
	return evidence.Words{
		"progression.exit-goal":               {Clinician: "The client's own goal of the phase: {holds}; reached: {reached}."},
		"progression.exit-happened":           {Clinician: "Nothing open that happened: {holds}; the plan: {standing}."},
		"progression.exit-plan":               {Clinician: "The plan in force, until {expires}: {holds}."},
		"progression.exit-power":              {Clinician: "Power as the goal: {holds}; the goal: {goal}."},
		"progression.exit-referral":           {Clinician: "No open referral: {holds}; open: {referral}."},
		"progression.exit-sessions":           {Clinician: "At least {least} sessions and {full} of those planned: {holds}; {done} of {planned}."},
		"progression.exit-technique":          {Clinician: "The technique seen in this phase: {holds}; {who}, {day}."},
		"progression.exit-technique-not-seen": {Clinician: "The technique seen in this phase: {holds}."},
		"progression.exit-time":               {Clinician: "In the phase since {since}, until {settled} at least: {holds}."},
		"progression.exit-visits":             {Clinician: "The latest {visits} visits neither eased nor referred: {holds}; they said: {said}."},
		"progression.phase-goes-on": {
			Client:    "We stay with this part a little longer.",
			Clinician: "The phase {phase} goes on: no exit has every criterion met. What is not known permits none.",
		},
		"progression.phase-may-be-left": {
			Client:    "Let us talk about what comes next.",
			Clinician: "The phase {phase} may be left for {exits}: every criterion is met. Person and clinician decide.",
		},
		"progression.plan-dates": {Clinician: "The plan: review by {review}, strength again by {retest}, followed no longer than {expires}."},
		"progression.plan-expired": {
			Client:    "This plan has run its time. Let us make a new one together.",
			Clinician: "The plan expired after {expires}: it is followed no longer without a review.",
		},
		"progression.retest-due": {
			Client:    "It is time to test your strength again.",
			Clinician: "A re-test of strength was due by {retest}.",
		},
		"progression.review-due": {
			Client:    "It is time to look at your plan together.",
			Clinician: "A review of the plan was due by {review}.",
		},
	}
}

// happeningWords is what attendance and happenings say.
func happeningWords() evidence.Words {
	return evidence.Words{
		"progression.attendance-between": {Clinician: "{done} of {planned} sessions in {days} days: the plan is kept as it is."},
		"progression.attendance-few":     {Clinician: "Sessions planned in {days} days: {planned}, fewer than {least} and too few to tell from. The plan is kept."},
		"progression.attendance-full":    {Clinician: "{done} of {planned} sessions in {days} days: nothing against more load from attendance."},
		"progression.attendance-low": {
			Client:    "You come when you can: we keep it short, so that it fits.",
			Clinician: "{done} of {planned} sessions in {days} days: nothing is made harder, and a set fewer is done than the plan builds up to, one at least; think of fewer exercises and shorter sessions too, and ask what would fit. No published rule.",
		},
		"progression.happened-assessed": {Clinician: "Told: {what}, which the assessment of {assessed} had to look at."},
		"progression.happened-ends-plan": {
			Client:    "Thank you for telling us. No exercise until we have looked at everything again.",
			Clinician: "TO BE ASSESSED AGAIN: {what}, on {day}, not known to the assessment of {assessed}: it ends clearances, estimates and the plan.",
		},
		"progression.happened-in-training": {Clinician: "Related to training: {related}. Look at dose, exercise and technique too."},
		"progression.happened-not-asked": {
			Client:    "Before we begin: has anything happened, or have your medicines changed?",
			Clinician: "Not asked today what has happened or changed: ask before the session.",
		},
		"progression.happened-review": {
			Client:    "Thank you for telling us. Somebody has to look at this first: no exercise until then.",
			Clinician: "TO BE LOOKED AT FIRST: {what}, on {day}, not known to the assessment of {assessed}. Review before the next session.",
		},
		"progression.happened-faint": {
			Client:    "Thank you for telling us. Please see a doctor today about passing out, or nearly. Call the emergency services at once (112 in Europe, elsewhere the number for emergencies there) if it comes again. No exercise until somebody has looked.",
			Clinician: "TO BE SEEN TODAY: {what}, on {day}, not known to the assessment of {assessed}. Review before the next session.",
		},
		"progression.happened-head": {
			Client:    "Thank you for telling us. Please have the knock on your head looked at by a doctor today, all the more with a blood thinner. Call the emergency services at once (112 in Europe, elsewhere the number for emergencies there) if you get drowsy or confused, are sick, or the headache grows. No exercise until somebody has looked.",
			Clinician: "TO BE SEEN TODAY: {what}, on {day}, not known to the assessment of {assessed}; with an anticoagulant a bleed may come late and without a sign. Review before the next session.",
		},
		"progression.happened-reviewed": {Clinician: "Told: {what}, not known to the assessment of {assessed}; reviewed by {who}, {reviewed}."},
		"progression.medicine-changed": {
			Client:    "Since your medicines have changed, we look at the plan before the next session.",
			Clinician: "TO BE LOOKED AT FIRST: {what}, on {day}, not known to the assessment of {assessed}. Review before the next session, with whoever prescribed it where in doubt.",
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
