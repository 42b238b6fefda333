package progression

import "example.org/posology/units/evidence"

// gateWords is what the gates say.
func gateWords() evidence.Words {
	return evidence.Words{
		"progression.below-dose": {Clinician: "Below the dose: sets {sets} of {planned}, repetitions of the weakest {fewest} of {count}."},
		"progression.below-top":  {Clinician: "The weakest set reached {fewest} of {top}: repetitions before load."},
		"progression.event": {
			Client:    "Something showed during the sets: we look at that first.",
			Clinician: "During the sets: {signs}; {action}; route: {route}.",
		},
		"progression.form-lost": {
			Client:    "No more weight until the movement feels steady.",
			Clinician: "The technique gave way: the load is kept.",
		},
		"progression.gate-not-known": {Clinician: "Not recorded, or not enough: {gate}. What is not known keeps the load."},
		"progression.gate-passed":    {Clinician: "Nothing against more load from: {gate}."},
		"progression.gates":          {Clinician: "Events, pain, range, technique, effort, repetitions, in this order; the most cautious decides: {advice}."},
		"progression.one-more": {
			Client:    "Next time, try one more.",
			Clinician: "Aim at {aim} next time with the same load: one more than in the weakest set.",
		},
		"progression.other-load": {Clinician: "Done with {done} instead of {asked}: nothing is concluded from it."},
		"progression.pain": {
			Client:    "We go by how it feels, and make it easier if it hurts.",
			Clinician: "Pain during or right after: {zone}, by the pain-monitoring model.",
		},
		"progression.pain-other": {
			Client:    "We would like somebody to look at this pain first.",
			Clinician: "Pain of a kind that the pain model is never used for: {kind}.",
		},
		"progression.range-lost": {
			Client:    "Since it moves less far than before, we make it easier.",
			Clinician: "Range of movement was lost since the visit before: eased.",
		},
		"progression.rated-hard":  {Clinician: "A set was rated as hard or went to failure ({effort}): the load is kept."},
		"progression.sore":        {Clinician: "Sore for {days} days after the visit, past the usual peak: the load is kept."},
		"progression.unwell-then": {Clinician: "Unwell at the visit: nothing is concluded from it."},
		"progression.too-near-failure": {
			Client:    "Please stop a little earlier next time.",
			Clinician: "A set ended with {left} in reserve, {asked} were asked for: the load is kept.",
		},
	}
}
