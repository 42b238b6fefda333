package protocol

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
		"protocol.change":      {Clinician: "Set {set}, {reps} repetitions: the printed change is {low} to {high}; the low end is picked."},
		"protocol.fewest-sets": {Clinician: "The scheme prints {count} sets; {sets} are laid out."},
		"protocol.scheme":      {Clinician: "The published scheme {scheme}, as printed."},
		"protocol.to-failure": {
			Client:    "These sets go on until no more can be done; usually we stop a little earlier.",
			Clinician: "This scheme takes sets to failure; it is off by default for people over 50.",
		},
	}
}
