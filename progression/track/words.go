package track

import (
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Codes of the reasons that this package gives. They are stable.
const (
	codeReal     evidence.ReasonCode = "track.change.real"
	codeRealFall evidence.ReasonCode = "track.change.real-fall"
	codeNotShown evidence.ReasonCode = "track.change.not-shown"
	codeLearning evidence.ReasonCode = "track.change.within-learning"
	codeLearned  evidence.ReasonCode = "track.change.learning-taken-off"
	codeRose     evidence.ReasonCode = "track.rose"
	codeHeld     evidence.ReasonCode = "track.held"
	codeFell     evidence.ReasonCode = "track.fell"
	codeUnclear  evidence.ReasonCode = "track.unclear"
	codeAhead    evidence.ReasonCode = "track.ahead"
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
		codeReal:     {Client: "You have become stronger: more than a test varies by itself.", Clinician: changeText + "real."},
		codeRealFall: {Client: "This test was lower than tests vary by themselves. We will look at why together.", Clinician: changeText + "a real fall. Look for pain, illness, missed time, another set-up of the test."},
		codeNotShown: {Client: "No clear change yet.", Clinician: changeText + "not distinguishable from noise. It does not show that nothing changed: more tests, or a track of all sets, can."},
		codeLearning: {Client: "A little better. Part of that is knowing the test now.", Clinician: changeText + "within what is learned between a first test and a second."},
		codeLearned:  {Clinician: "The test before was the first ever: {learned} was taken off as learned."},
		codeRose:     {Client: "You are getting stronger.", Clinician: oddsText + "rising."},
		codeHeld:     {Client: "Your strength is holding.", Clinician: oddsText + "a plateau."},
		codeFell:     {Client: "You are a little below where you were. We will look at why together.", Clinician: oddsText + "a dip. Look for pain, illness, missed time."},
		codeUnclear:  {Client: "No clear change yet.", Clinician: oddsText + "none of the three is clear yet."},
		codeAhead:    {Clinician: "Ahead to {day} (days after the last reading: {days}), if training goes on as it did: the slope fades, and what is known of the level becomes less. A look ahead is no aim and no promise."},
	}
}
