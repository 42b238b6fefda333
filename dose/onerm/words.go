package onerm

import (
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// codeLikelyLow is given with either way of estimating.
const codeLikelyLow evidence.ReasonCode = "onerm.likely-low"

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon {
	return units.Must(evidence.NewLexicon(setWords(), optionWords(), refusalWords()))
})

// setWords are for what FromSet does by itself.
func setWords() evidence.Words {
	return evidence.Words{
		"onerm.measured": {
			Client:    "You lifted this weight once, and that was your limit that day.",
			Clinician: "One repetition to failure: the load itself, {load} ({stated}), is the 1RM. No equation was used.",
		},
		"onerm.lower-of-two": {
			Client:    "This is a careful estimate from the set you did.",
			Clinician: "1RM estimated from {reps} repetitions to failure by Epley and Brzycki; the lower, {formula}, was taken.",
		},
		"onerm.kemmler2006": {
			Client:    "This is a careful estimate from the set you did.",
			Clinician: "1RM estimated from {reps} repetitions to failure by Kemmler 2006: trained woman from 55 years, machine. Where Epley and Brzycki may be asked too, theirs are higher.",
		},
		"onerm.practised": {
			Client:    "This is our best estimate from the set you did.",
			Clinician: "1RM estimated from {reps} repetitions to failure by {formula}, which fits practised people best; Epley and Brzycki read high in them. The lower end stays with these two. Doses read the set itself, and {loading} where a guideline speaks in repetition maxima.",
		},
		"onerm.reserve-added": {
			Clinician: "{done} repetitions done at {effort} make {reps} to failure. Most people have about one more in reserve than they say; this was not corrected, so that the estimate errs downwards.",
		},
		"onerm.half-point": {
			Clinician: "{effort} stands for two counts, {reps} repetitions to failure: the estimate is from the lower, the interval from both.",
		},
		"onerm.reserve-wide": {
			Client:    "A set that is a little harder would tell us more.",
			Clinician: "{reserve} in reserve is hard to count: the next row's wider interval was used.",
		},
		"onerm.interval": {
			Clinician: "Interval of row {row} repetitions to failure: {margin}, {grade}. The margins are this module's own choice after published errors, not a published interval.",
		},
		"onerm.lower-end": {
			Clinician: "The lower end lies {down} below the estimate, not {own} as the row has it: it was moved so that fewer repetitions, or fewer in reserve, never give a higher one.",
		},
		codeLikelyLow: {
			Client:    "You will probably turn out stronger than this. We look again in two to three weeks.",
			Clinician: "Novice: the equations tend to read low. Likely low; estimate again after two to three weeks, and rest no decision on its exact value.",
		},
		"onerm.sex-not-given": {
			Clinician: "The sex was not given, so the equation for trained women was asked too and the lowest answer taken.",
		},
		"onerm.no-dumbbells": {
			Clinician: "None of these equations is known to have been made with dumbbells or in people with pain; Kemmler 2006, made on machines, was not asked.",
		},
	}
}

// optionWords are for options, measured accuracy and several sets.
func optionWords() evidence.Words {
	return evidence.Words{
		"onerm.accuracy": {
			Client:    "This is our best estimate from the set you did.",
			Clinician: "1RM estimated from {reps} repetitions to failure by {formula}, with its measured accuracy: {margin}. Doses read the set itself, and {loading} where a guideline speaks in repetition maxima.",
		},
		"onerm.mismatch": {
			Clinician: "The accuracy was not measured in this case ({what}): the interval table's margin holds where it is wider.",
		},
		"onerm.reads-low": {
			Clinician: "{formula} read 4.6 % low at 11 to 15 repetitions in trained young lifters; in others the bias may have another sign. Not corrected; counted as error.",
		},
		"onerm.tired": {
			Clinician: "Sets of the exercise came before: such a set reads low. The upper end was moved up by {share}, the lower one left.",
		},
		"onerm.level": {
			Clinician: "The interval is meant to hold the 1RM in {level} of cases. Doses do not go by the level.",
		},
		"onerm.combined": {
			Client:    "We put your sets together for this estimate.",
			Clinician: "{sets} sets joined, each weighed by its variance; days: {days}; standard deviation {spread}, part of it shared by all sets of the person.",
		},
		"onerm.unfit": {
			Client:    "One of your sets tells another story. We will look at it together.",
			Clinician: "The set of {day}, {reps} repetitions to failure ({one_rm}), does not fit the others. Look for a slip in load, unit, hold or count; it was kept, and the interval widened to hold it.",
		},
	}
}

func isDumbbell(h body.Hold) bool {
	return h == body.OneHand || h == body.OneEachHand || h == body.BothHandsOnOne
}
