package function

import (
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Codes of the reasons that this package gives. They are stable.
const (
	codeScored           evidence.ReasonCode = "function.scored"
	codeNotScored        evidence.ReasonCode = "function.not-scored"
	codePart             evidence.ReasonCode = "function.battery.part"
	codePartUnable       evidence.ReasonCode = "function.battery.unable"
	codePartNotTried     evidence.ReasonCode = "function.battery.not-tried"
	codePartNotScored    evidence.ReasonCode = "function.battery.not-scored"
	codeTotal            evidence.ReasonCode = "function.battery.total"
	codeFlagged          evidence.ReasonCode = "function.norm.flagged"
	codeNotFlagged       evidence.ReasonCode = "function.norm.not-flagged"
	codeWorse            evidence.ReasonCode = "function.norm.worse"
	codeEqual            evidence.ReasonCode = "function.norm.equal"
	codeBetter           evidence.ReasonCode = "function.norm.better"
	codeNoNorm           evidence.ReasonCode = "function.no-norm"
	codeNoAge            evidence.ReasonCode = "function.no-norm.age"
	codeNoSex            evidence.ReasonCode = "function.no-norm.sex"
	codeNoCourse         evidence.ReasonCode = "function.no-norm.course"
	codeFromMemory       evidence.ReasonCode = "function.caution.from-memory"
	codePeople           evidence.ReasonCode = "function.caution.people"
	codeNote             evidence.ReasonCode = "function.caution.note"
	codeRealBetter       evidence.ReasonCode = "function.change.real-better"
	codeRealWorse        evidence.ReasonCode = "function.change.real-worse"
	codeChangeNotShown   evidence.ReasonCode = "function.change.not-shown"
	codeNoDetectable     evidence.ReasonCode = "function.change.none-published"
	codeLearning         evidence.ReasonCode = "function.change.within-learning"
	codeLearningTakenOff evidence.ReasonCode = "function.change.learning-taken-off"
	codeNotBothDone      evidence.ReasonCode = "function.change.not-both-done"
	codeGotFurther       evidence.ReasonCode = "function.change.got-further"
	codeGotLessFar       evidence.ReasonCode = "function.change.got-less-far"
	codeProtocolUnstated evidence.ReasonCode = "function.change.protocol-not-stated"
)

// positionCodes are the codes of the answers of norms.
var positionCodes = [...]evidence.ReasonCode{
	Flagged: codeFlagged, NotFlagged: codeNotFlagged, Worse: codeWorse, Equal: codeEqual, Better: codeBetter,
}

// orderCodes are the codes of changes without two scores.
var orderCodes = map[Position]evidence.ReasonCode{0: codeNotBothDone, Equal: codeNotBothDone, Better: codeGotFurther, Worse: codeGotLessFar}

const (
	noClearChange = "No clear change yet."
	changeText    = "{test}: a difference of {difference} ({low} to {high}) against a detectable change of {detectable} ({body}, {basis}): "
)

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words())) })

func words() evidence.Words {
	return evidence.Words{
		codeScored:           {Clinician: "{test}: {value}."},
		codeNotScored:        {Client: "There is no number for this test today, and that is fine.", Clinician: "{test}: {how}. Not scored: no source seen gives that a number. It is a finding in itself and is not to be read as passed."},
		codePart:             {Clinician: "Battery, {part}: {value} scores {points}."},
		codePartUnable:       {Clinician: "Battery, {part}: {how}, which scores 0 points."},
		codePartNotTried:     {Clinician: "Battery, {part}: not attempted, which scores 0 points."},
		codePartNotScored:    {Client: "We leave out the total of these tests today.", Clinician: "Battery, {part}: {how}. Not scored, and so neither is the total: no source seen gives that a number."},
		codeTotal:            {Clinician: "Battery: {value} of 12, band {band}."},
		codeFlagged:          {Client: "This is something we can work on together.", Clinician: "{test}, {value}: on the flagged side of {body}: {figure} {norm} ({basis})."},
		codeNotFlagged:       {Clinician: "{test}, {value}: not flagged by {body}: {figure} {norm} ({basis})."},
		codeWorse:            {Clinician: "{test}, {value}: worse than the {figure} of {body}, {norm} ({basis})."},
		codeEqual:            {Clinician: "{test}, {value}: equal to the {figure} of {body}, {norm} ({basis})."},
		codeBetter:           {Clinician: "{test}, {value}: better than the {figure} of {body}, {norm} ({basis})."},
		codeNoNorm:           {Client: "We have no figures to compare this with.", Clinician: "{test}: no norm or cut-off is kept here."},
		codeNoAge:            {Client: "We have no figures for your age to compare this with.", Clinician: "{test} at {age} years: no figure of {body} for that age is held here, only for {ages} years."},
		codeNoSex:            {Clinician: "{test}, {sex}, {age} years: no figure of {body} for that sex at that age is held here."},
		codeNoCourse:         {Clinician: "{test}: no norm. {body} set its figure on a {course}; courses are not converted."},
		codeFromMemory:       {Clinician: "The figure of {body} is known from memory only and was not found in print."},
		codePeople:           {Clinician: "The figure of {body} is about others: {people}."},
		codeNote:             {Clinician: "A note on the figure of {body}: {note}."},
		codeRealBetter:       {Client: "You did clearly better than before.", Clinician: changeText + "real, for the better."},
		codeRealWorse:        {Client: "This was harder for you than before. Let us look at why together.", Clinician: changeText + "real, for the worse."},
		codeChangeNotShown:   {Client: noClearChange, Clinician: changeText + "not shown."},
		codeNoDetectable:     {Client: noClearChange, Clinician: "{test}: a difference of {difference}. No detectable change for {sex}, {age} years is held here: not shown."},
		codeLearning:         {Client: "Knowing the test may have helped a little. No clear change yet.", Clinician: changeText + "within the published practice effect of {practice} from the first try to the second."},
		codeLearningTakenOff: {Client: "This looks promising. One more test of the same kind would tell us more.", Clinician: changeText + "above it, but not with the practice effect of {practice} taken off: not shown."},
		codeNotBothDone:      {Client: noClearChange, Clinician: "{test}: {before} before, {after} now. Without two scores no change is shown; both are findings in themselves."},
		codeGotFurther:       {Client: "You got further with this than before.", Clinician: "{test}: {before} before, {after} now: further than before. Without two scores no change is called real; both are findings in themselves."},
		codeGotLessFar:       {Client: "This was harder for you than before. Let us look at why together.", Clinician: "{test}: {before} before, {after} now: less far than before. Without two scores no change is called real; both are findings in themselves."},
		codeProtocolUnstated: {Clinician: "{test}: the protocol was not stated both times. Seat, dynamometer, weight and walking aid must be alike."},
	}
}
