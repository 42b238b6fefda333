package function

import (
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Codes that more than one place gives.
const (
	codePartNotTried evidence.ReasonCode = "function.battery.not-tried"
	codeNotBothDone  evidence.ReasonCode = "function.change.not-both-done"
)

// positionCodes are the codes of the answers of norms.
var positionCodes = [...]evidence.ReasonCode{
	Flagged: "function.norm.flagged", NotFlagged: "function.norm.not-flagged",
	Worse: "function.norm.worse", Equal: "function.norm.equal", Better: "function.norm.better",
}

// orderCodes are the codes of changes without two scores.
var orderCodes = map[Position]evidence.ReasonCode{
	0: codeNotBothDone, Equal: codeNotBothDone, Better: "function.change.got-further", Worse: "function.change.got-less-far",
}

const (
	noClearChange = "No clear change yet."
	changeText    = "{test}: a difference of {difference} ({low} to {high}) against a detectable change of {detectable} ({body}, {basis}): "
)

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words())) })

func words() evidence.Words {
	return evidence.Words{
		"function.scored":                     {Clinician: "{test}: {value}."},
		"function.not-scored":                 {Client: "There is no number for this test today, and that is fine.", Clinician: "{test}: {how}. Not scored: no source seen gives that a number. It is a finding in itself and is not to be read as passed."},
		"function.battery.part":               {Clinician: "Battery, {part}: {value} scores {points}."},
		"function.battery.unable":             {Clinician: "Battery, {part}: {how}, which scores 0 points."},
		codePartNotTried:                      {Clinician: "Battery, {part}: not attempted, which scores 0 points."},
		"function.battery.not-scored":         {Client: "We leave out the total of these tests today.", Clinician: "Battery, {part}: {how}. Not scored, and so neither is the total: no source seen gives that a number."},
		"function.battery.total":              {Clinician: "Battery: {value} of 12, band {band}."},
		"function.norm.flagged":               {Client: "This is something we can work on together.", Clinician: "{test}, {value}: on the flagged side of {body}: {figure} {norm} ({basis})."},
		"function.norm.not-flagged":           {Clinician: "{test}, {value}: not flagged by {body}: {figure} {norm} ({basis})."},
		"function.norm.worse":                 {Clinician: "{test}, {value}: worse than the {figure} of {body}, {norm} ({basis})."},
		"function.norm.equal":                 {Clinician: "{test}, {value}: equal to the {figure} of {body}, {norm} ({basis})."},
		"function.norm.better":                {Clinician: "{test}, {value}: better than the {figure} of {body}, {norm} ({basis})."},
		"function.no-norm":                    {Client: "We have no figures to compare this with.", Clinician: "{test}: no norm or cut-off is kept here."},
		"function.no-norm.age":                {Client: "We have no figures for your age to compare this with.", Clinician: "{test} at {age} years: no figure of {body} for that age is held here, only for {ages} years."},
		"function.no-norm.sex":                {Clinician: "{test}, {sex}, {age} years: no figure of {body} for that sex at that age is held here."},
		"function.no-norm.course":             {Clinician: "{test}: no norm. {body} set its figure on a {course}; courses are not converted."},
		"function.caution.from-memory":        {Clinician: "The figure of {body} is known from memory only and was not found in print."},
		"function.caution.people":             {Clinician: "The figure of {body} is about others: {people}."},
		"function.caution.note":               {Clinician: "A note on the figure of {body}: {note}."},
		"function.change.real-better":         {Client: "You did clearly better than before.", Clinician: changeText + "real, for the better."},
		"function.change.real-worse":          {Client: "This was harder for you than before. Let us look at why together.", Clinician: changeText + "real, for the worse."},
		"function.change.not-shown":           {Client: noClearChange, Clinician: changeText + "not shown."},
		"function.change.none-published":      {Client: noClearChange, Clinician: "{test}: a difference of {difference}. No detectable change for {sex}, {age} years is held here: not shown."},
		"function.change.within-learning":     {Client: "Knowing the test may have helped a little. No clear change yet.", Clinician: changeText + "within the published practice effect of {practice} from the first try to the second."},
		"function.change.learning-taken-off":  {Client: "This looks promising. One more test of the same kind would tell us more.", Clinician: changeText + "above it, but not with the practice effect of {practice} taken off: not shown."},
		codeNotBothDone:                       {Client: noClearChange, Clinician: "{test}: {before} before, {after} now. Without two scores no change is shown; both are findings in themselves."},
		"function.change.got-further":         {Client: "You got further with this than before.", Clinician: "{test}: {before} before, {after} now: further than before. Without two scores no change is called real; both are findings in themselves."},
		"function.change.got-less-far":        {Client: "This was harder for you than before. Let us look at why together.", Clinician: "{test}: {before} before, {after} now: less far than before. Without two scores no change is called real; both are findings in themselves."},
		"function.change.protocol-not-stated": {Clinician: "{test}: the protocol was not stated both times. Seat, dynamometer, weight and walking aid must be alike."},
	}
}
