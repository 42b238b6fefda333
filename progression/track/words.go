package track

import (
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

const (
	changeText = "A change of {change} ({low} to {high} at {level}) against {detectable} that show with a typical error of {typical}: "
	oddsText   = "From {from} to {to} the level changed by {change} ({low} to {high} at {level}); with a probability of {rose} it rose, of {held} it held and of {fell} it fell, each by a margin of {margin}: "
)

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words())) })

func words() evidence.Words {
	return evidence.Words{
		"track.change.real":               {Client: "You have become stronger: more than a test varies by itself.", Clinician: changeText + "real."},
		"track.change.real-fall":          {Client: "This test was lower than tests vary by themselves. We will look at why together.", Clinician: changeText + "a real fall. Look for pain, illness, missed time, another set-up of the test."},
		"track.change.not-shown":          {Client: "No clear change yet.", Clinician: changeText + "not distinguishable from noise. It does not show that nothing changed: more tests, or a track of all sets, can."},
		"track.change.within-learning":    {Client: "A little better. Part of that is knowing the test now.", Clinician: changeText + "within what is learned between a first test and a second."},
		"track.change.learning-taken-off": {Clinician: "The test before was the first ever: {learned} was taken off as learned."},
		"track.rose":                      {Client: "You are getting stronger.", Clinician: oddsText + "rising."},
		"track.held":                      {Client: "Your strength is holding.", Clinician: oddsText + "a plateau."},
		"track.fell":                      {Client: "You are a little below where you were. We will look at why together.", Clinician: oddsText + "a dip. Look for pain, illness, missed time."},
		"track.unclear":                   {Client: "No clear change yet.", Clinician: oddsText + "none of the three is clear yet."},
		"track.ahead":                     {Clinician: "Ahead to {day} (days after the last reading: {days}), if training goes on as it did: the slope fades, and what is known of the level becomes less. A look ahead is no aim and no promise."},
	}
}
