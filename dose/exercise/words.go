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
	// CodePainEnds: pain, as opposed to the effort of muscles, ends the exercise.
	CodePainEnds evidence.Code = "exercise.pain-ends-exercise"
	// CodeHingePain: back pain, or pain down the leg, ends the hinge.
	CodeHingePain evidence.Code = "exercise.back-or-leg-pain-ends-hinge"
	// CodeHingePosition: back straight, knees a little bent.
	CodeHingePosition evidence.Code = "exercise.hinge-position"
	// CodeStartHelp: heavy dumbbells are handed to the person.
	CodeStartHelp evidence.Code = "exercise.overhead-start-needs-help"
	// CodeChairHeight: the weights are taken from chair height.
	CodeChairHeight evidence.Code = "exercise.weight-from-chair-height"
	// CodeFloorReach: for work on the floor the weights lie within reach first.
	CodeFloorReach evidence.Code = "exercise.weight-within-reach"
	// CodeRackHeight: the bar starts from a rack with catches.
	CodeRackHeight evidence.Code = "exercise.bar-from-rack"
	// CodeBandCheck: the band is looked over and fixed well.
	CodeBandCheck evidence.Code = "exercise.band-looked-over"
)

type warningRow struct {
	code  evidence.Code
	facts []evidence.FactID
}

var warnings = [...]warningRow{
	painEnds:      {CodePainEnds, []evidence.FactID{factPainEnds}},
	hingePain:     {CodeHingePain, []evidence.FactID{factHingePain}},
	hingePosition: {CodeHingePosition, []evidence.FactID{factHingeKnees, factStraightBack}},
	startHelp:     {CodeStartHelp, []evidence.FactID{factStartHelp}},
	chairHeight:   {CodeChairHeight, []evidence.FactID{factChairHeight}},
	floorReach:    {CodeFloorReach, []evidence.FactID{factFloorReach}},
	rackHeight:    {CodeRackHeight, []evidence.FactID{factRackHeight}},
	bandCheck:     {CodeBandCheck, []evidence.FactID{factBandCheck}},
}

func (w warningRow) reason() evidence.Reason { return evidence.Because(w.code, w.facts...) }

var words = evidence.Words{
	CodePainEnds: {
		Client:    "Muscles may work hard; if something hurts, stop this exercise and tell us.",
		Clinician: "Pain, as opposed to muscular effort, ends the exercise.",
	},
	CodeHingePain: {
		Client:    "If your back hurts, or a pain runs down your leg, stop and tell us.",
		Clinician: "Back pain or pain down the leg ends the hinge.",
	},
	CodeHingePosition: {
		Client:    "Keep your back long and your knees a little bent.",
		Clinician: "Hinge with a straight back and the knees a little bent; bending the back under load is another exercise.",
	},
	CodeStartHelp: {
		Client:    "If the weights feel heavy to lift to your shoulders, take lighter ones, or let somebody hand them to you.",
		Clinician: "Heavy dumbbells are handed up to the start of an overhead press; they are not swung there.",
	},
	CodeChairHeight: {
		Client:    "Take the weights from a chair or table, and put them back there.",
		Clinician: "Weights are taken from and returned to chair height; the demands do not include a lift from the floor.",
	},
	CodeFloorReach: {
		Client:    "Before you get down, put the weights where you can reach them from there, or let somebody hand them to you.",
		Clinician: "Weights for work on the floor lie within reach before the person gets down, or are handed over; nobody gets down with them.",
	},
	CodeRackHeight: {
		Client:    "Let the bar start from a rack, with catches set so that you can leave it there at any time.",
		Clinician: "The bar is taken from a rack with catches at the lowest point of the movement; the demands do not include a lift from the floor.",
	},
	CodeBandCheck: {
		Client:    "Look the band over for cracks, and fix it to something that does not give way.",
		Clinician: "Bands are checked for cracks before use and anchored firmly; their resistance has no mass to record.",
	},
}

// Words returns the wording of the warnings. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words)) })
