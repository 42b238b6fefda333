package progression

import (
	"maps"

	"example.org/posology/units/evidence"
)

// Words returns a fresh table of what this package's reasons say.
func Words() evidence.Words {
	w := gateWords()
	maps.Copy(w, ruleWords())
	maps.Copy(w, goneWords())
	maps.Copy(w, keptWords())
	maps.Copy(w, harderWords())
	maps.Copy(w, phaseWords())
	return w
}

// ruleWords is what the rules and the data say.
func ruleWords() evidence.Words {
	return evidence.Words{
		"progression.athletes-ramp": {Clinician: "Published for college athletes after two or more weeks off, for information: nothing acts on it."},
		"progression.bridge":        {Clinician: "To land on {low} repetitions after a step of {share}, first reach {reps}: arithmetic on the linear form, tested by no trial."},
		"progression.covid-ask": {
			Client:    "Before you begin again we would like to ask how the illness went.",
			Clinician: "Not known: severe course, symptoms that last, signs from the heart. Ask first.",
		},
		"progression.covid-assess": {
			Client:    "Please see your doctor before you begin again; this is usual after such an illness.",
			Clinician: "A severe course, symptoms that last, or signs from the heart: assessment first.",
		},
		"progression.covid-phase": {
			Client:    "Welcome back. Keep it gentle for now.",
			Clinician: "After covid-19: phase {phase}, {effort} on the scale from 6 to 20, at least 7 days.",
		},
		"progression.covid-wait": {
			Client:    "Please wait until you have felt well for a week.",
			Clinician: "After covid-19: at least 7 days without symptoms first.",
		},
		"progression.jump":           {Clinician: "The next weight after {from} is {to}, a step of {share}; published guidance is 2 to 10 %."},
		"progression.map-drifts":     {Clinician: "The map {map} held for its people at one time: after 12 weeks of training the same ratings stood for 14 to 24 points more of the 1RM. Use ratings to hold an effort, not to infer a load."},
		"progression.no-deload":      {Clinician: "No lighter weeks are planned by default: nothing was found on them in older adults."},
		"progression.pain-composite": {Clinician: "The cautious rule on pain (no published source as a whole): {advice}; zone {zone}."},
		"progression.response-noise": {Clinician: "Gains of people differ widely, and hardly more than noise would make them: nobody is labelled by them."},
		"progression.return": {
			Client:    "Welcome back. We begin a little easier and build up again.",
			Clinician: "{days} days since the last session. The ladder: {load} of the load, {sets} of the sets; it has no published source.",
		},
		"progression.return-anew": {
			Client:    "Welcome back. After such a break we begin afresh.",
			Clinician: "{days} days since the last session: familiarisation and a new baseline. The ladder has no published source.",
		},
		"progression.rule":        {Clinician: "The rule {rule} says: {advice}."},
		"progression.set-by-reps": {Clinician: "The next weight is further than the correction of {change}, or the rule may not raise load: {reps} repetitions instead."},
		"progression.set-to-set":  {Clinician: "The rule {rule} after {reported}: {change} ({within} with the usual error of reserve), or {reps} repetitions."},
		"progression.step":        {Clinician: "The textbook's step, from memory: {low} to {high}."},
	}
}
