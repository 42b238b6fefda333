package exercise

import (
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// warning is one row of the table of warnings.
type warning uint8

const (
	painEnds warning = iota
	hingePain
	hingePosition
	startHelp
	chairHeight
	floorReach
	rackHeight
	bandCheck
)

// Codes of the warnings that exercises carry.
const (
	// codePainEnds: pain, as opposed to the effort of muscles, ends the exercise.
	codePainEnds evidence.ReasonCode = "exercise.pain-ends-exercise"
	// codeHingePain: back pain, or pain down the leg, ends the hinge.
	codeHingePain evidence.ReasonCode = "exercise.back-or-leg-pain-ends-hinge"
	// codeHingePosition: back straight, knees a little bent.
	codeHingePosition evidence.ReasonCode = "exercise.hinge-position"
	// codeStartHelp: heavy dumbbells are handed to the person.
	codeStartHelp evidence.ReasonCode = "exercise.overhead-start-needs-help"
	// codeChairHeight: the weights are taken from chair height.
	codeChairHeight evidence.ReasonCode = "exercise.weight-from-chair-height"
	// codeFloorReach: for work on the floor the weights lie within reach first.
	codeFloorReach evidence.ReasonCode = "exercise.weight-within-reach"
	// codeRackHeight: the bar starts from a rack with catches.
	codeRackHeight evidence.ReasonCode = "exercise.bar-from-rack"
	// codeBandCheck: the band is looked over and fixed well.
	codeBandCheck evidence.ReasonCode = "exercise.band-looked-over"
)

type warningRow struct {
	code  evidence.ReasonCode
	facts []evidence.FactID
}

var warnings = [...]warningRow{
	painEnds:      {codePainEnds, []evidence.FactID{factPainEnds}},
	hingePain:     {codeHingePain, []evidence.FactID{factHingePain}},
	hingePosition: {codeHingePosition, []evidence.FactID{factHingeKnees, factStraightBack}},
	startHelp:     {codeStartHelp, []evidence.FactID{factStartHelp}},
	chairHeight:   {codeChairHeight, []evidence.FactID{factChairHeight}},
	floorReach:    {codeFloorReach, []evidence.FactID{factFloorReach}},
	rackHeight:    {codeRackHeight, []evidence.FactID{factRackHeight}},
	bandCheck:     {codeBandCheck, []evidence.FactID{factBandCheck}},
}

func (w warningRow) reason() evidence.Reason { return evidence.Because(w.code, w.facts...) }

var words = evidence.Words{
	codePainEnds: {
		Client:    "Muscles may work hard; if something hurts, stop this exercise and tell us.",
		Clinician: "Pain, as opposed to muscular effort, ends the exercise.",
	},
	codeHingePain: {
		Client:    "If your back hurts, or a pain runs down your leg, stop and tell us.",
		Clinician: "Back pain or pain down the leg ends the hinge.",
	},
	codeHingePosition: {
		Client:    "Keep your back long and your knees a little bent.",
		Clinician: "Hinge with a straight back and the knees a little bent; bending the back under load is another exercise.",
	},
	codeStartHelp: {
		Client:    "If the weights feel heavy to lift to your shoulders, take lighter ones, or let somebody hand them to you.",
		Clinician: "Heavy dumbbells are handed up to the start of an overhead press; they are not swung there.",
	},
	codeChairHeight: {
		Client:    "Take the weights from a chair or table, and put them back there.",
		Clinician: "Weights are taken from and returned to chair height; the demands do not include a lift from the floor.",
	},
	codeFloorReach: {
		Client:    "Before you get down, put the weights where you can reach them from there, or let somebody hand them to you.",
		Clinician: "Weights for work on the floor lie within reach before the person gets down, or are handed over; nobody gets down with them.",
	},
	codeRackHeight: {
		Client:    "Let the bar start from a rack, with catches set so that you can leave it there at any time.",
		Clinician: "The bar is taken from a rack with catches at the lowest point of the movement; the demands do not include a lift from the floor.",
	},
	codeBandCheck: {
		Client:    "Look the band over for cracks, and fix it to something that does not give way.",
		Clinician: "Bands are checked for cracks before use and anchored firmly; their resistance has no mass to record.",
	},
}

// Words returns the wording of the warnings. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words)) })
