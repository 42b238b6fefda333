package strength

import (
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words)) })

var words = evidence.Words{
	// Which tests and sets a dose does not rest on, and which it does.
	"dose.test-later": {
		Client:    "One of your tests has a day that is still to come. We will look at the date together.",
		Clinician: "Not used: of {tested}, after {day}, the day decided on. Look at the date.",
	},
	"dose.test-before-event": {
		Client:    "Something has changed since your last test, so we test again.",
		Clinician: "Not used: of {tested}; an event ended what was tested before {from}.",
	},
	"dose.test-old": {
		Client:    "Your last test was a while ago, so we test again.",
		Clinician: "Not used: of {tested}, more than {most} days before {day}.",
	},
	"dose.test-not-in-kit": {
		Client:    "One of your tests names a weight that is not here. We will look at it together.",
		Clinician: "Not used: the kit does not make {load}, with which a set of that day was done. Ask which weight it was, per hand or in all.",
	},
	"dose.tests-disagree": {
		Client:    "Two tests of one day tell different stories. We will look at them together.",
		Clinician: "Not used: tests of that day give {least} to {most}, further apart than one day explains. Ask for a slip of per hand and total, or of kg and lb, and test again.",
	},
	"dose.tests-far-apart": {
		Client:    "Two of your tests tell different stories. We will look at them together.",
		Clinician: "Not used: tests of different days give {least} to {most}, about twice as much or more. Ask for a slip of per hand and total, or of kg and lb, and test again.",
	},
	"dose.weaker-side":     {Clinician: "Both sides were tested; the {side}, the weaker one, sets the weight for both."},
	"dose.one-side-tested": {Clinician: "One side alone has a test that can be used: it is not carried over to the other, and the load is found for both. A test that is asked about counts once it is put right."},
}
