package rule

import (
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words())) })

func words() evidence.Words {
	return evidence.Words{
		"progression.bridge": {Clinician: "To land on {low} repetitions after a step of {share}, first reach {reps}: arithmetic on the linear form, tested by no trial."},
		"progression.return": {
			Client:    "After the break we begin a little easier and build up again.",
			Clinician: "{days} days since it was last done. The ladder: {load} of the load, {sets} of the sets; it has no published source.",
		},
		"progression.return-anew": {
			Client:    "After such a break we begin afresh.",
			Clinician: "{days} days since it was last done: familiarisation and a new baseline, with no more than the last rung of the ladder, which has no published source.",
		},
		"progression.rule":        {Clinician: "The rule {rule} says: {advice}."},
		"progression.set-by-reps": {Clinician: "The next weight is further than the correction of {change}, or the rule may not raise load: {reps} repetitions instead."},
		"progression.set-to-set":  {Clinician: "The rule {rule} after {reported}: {change} ({within} with the usual error of reserve), or {reps} repetitions."},
		"progression.step":        {Clinician: "The textbook's step, from memory: {low} to {high}."},
	}
}
