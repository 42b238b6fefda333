package onerm

import (
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Codes of the reasons that FromSet gives. They are stable.
const (
	codeMeasured  evidence.Code = "onerm.measured"
	codeLower     evidence.Code = "onerm.lower-of-two"
	codeKemmler   evidence.Code = "onerm.kemmler2006"
	codeReserve   evidence.Code = "onerm.reserve-added"
	codeHalfPoint evidence.Code = "onerm.half-point"
	codeWide      evidence.Code = "onerm.reserve-wide"
	codeInterval  evidence.Code = "onerm.interval"
	codeOrder     evidence.Code = "onerm.lower-end"
	codeLikelyLow evidence.Code = "onerm.likely-low"
	codeNoSex     evidence.Code = "onerm.sex-not-given"
	codeDumbbell  evidence.Code = "onerm.no-dumbbells"
)

// Words returns the wording of this package's reasons, a fresh table each time.
func Words() evidence.Words {
	return evidence.Words{
		codeMeasured: {
			Client:    "You lifted this weight once, and that was your limit that day.",
			Clinician: "One repetition to failure: the load itself, {load} ({stated}), is the 1RM. No equation was used.",
		},
		codeLower: {
			Client:    "This is a careful estimate from the set you did.",
			Clinician: "1RM estimated from {reps} repetitions to failure by Epley and Brzycki; the lower, {formula}, was taken.",
		},
		codeKemmler: {
			Client:    "This is a careful estimate from the set you did.",
			Clinician: "1RM estimated from {reps} repetitions to failure by Kemmler 2006: trained woman from 55 years, machine. Where Epley and Brzycki may be asked too, theirs are higher.",
		},
		codeReserve: {
			Clinician: "{done} repetitions done at {effort} make {reps} to failure. Most people have about one more in reserve than they say; this was not corrected, so that the estimate errs downwards.",
		},
		codeHalfPoint: {
			Clinician: "{effort} stands for two counts, {reps} repetitions to failure: the estimate is from the lower, the interval from both.",
		},
		codeWide: {
			Client:    "A set that is a little harder would tell us more.",
			Clinician: "{reserve} in reserve is hard to count: the next row's wider interval was used.",
		},
		codeInterval: {
			Clinician: "Interval of row {row} repetitions to failure: {margin}, {grade}. The margins are this module's own choice after published errors, not a published interval.",
		},
		codeOrder: {
			Clinician: "The lower end lies {down} below the estimate, not {own} as the row has it: it was moved so that fewer repetitions, or fewer in reserve, never give a higher one.",
		},
		codeLikelyLow: {
			Client:    "You will probably turn out stronger than this. We look again in two to three weeks.",
			Clinician: "Novice: the equations tend to read low. Likely low; estimate again after two to three weeks, and do not chase the number.",
		},
		codeNoSex: {
			Clinician: "The sex was not given, so the equation for trained women was asked too and the lowest answer taken.",
		},
		codeDumbbell: {
			Clinician: "None of these equations is known to have been made with dumbbells or in people with pain; Kemmler 2006, made on machines, was not asked.",
		},
	}
}

func isDumbbell(h body.Hold) bool {
	return h == body.OneHand || h == body.OneEachHand || h == body.BothHandsOnOne
}
