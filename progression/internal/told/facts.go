package told

import "example.org/posology/units/evidence"

// Facts of rules and visits that decisions rest on.
const (
	Gates        evidence.FactID = "progression.gates"
	Simplify     evidence.FactID = "progression.simplify"
	SmallMuscles evidence.FactID = "progression.step-small-muscles"
	Guidance     evidence.FactID = "progression.step-2-to-10"
	Coarse       evidence.FactID = "progression.coarse-steps"
	Bridge       evidence.FactID = "progression.bridge"
	OMNI         evidence.FactID = "progression.omni-below-8"
	Return       evidence.FactID = "progression.return-no-source"
	Reserve      evidence.FactID = "progression.reserve-error"
)

// Facts of the choices that progression.Next makes between what is published.
const (
	Refer         evidence.FactID = "progression.refer"
	Medical       evidence.FactID = "progression.medical"
	Variant       evidence.FactID = "progression.variant"
	FindOn        evidence.FactID = "progression.find-on"
	SetsFirst     evidence.FactID = "progression.sets-first"
	Shown         evidence.FactID = "progression.shown"
	DoneBefore    evidence.FactID = "progression.done-before"
	RatedTwice    evidence.FactID = "progression.rated-twice"
	TooMuch       evidence.FactID = "progression.too-much"
	Fit           evidence.FactID = "progression.fit"
	Try           evidence.FactID = "progression.try"
	Feel          evidence.FactID = "progression.feel"
	Between       evidence.FactID = "progression.weights-between"
	EasyStep      evidence.FactID = "progression.easy-step"
	Slower        evidence.FactID = "progression.slower"
	Pause         evidence.FactID = "progression.pause"
	ExtraSet      evidence.FactID = "progression.extra-set"
	Limit         evidence.FactID = "progression.limit"
	Least         evidence.FactID = "progression.least-stays"
	KitEnds       evidence.FactID = "progression.kit-ends"
	TwoRises      evidence.FactID = "progression.two-rises"
	OneNew        evidence.FactID = "progression.one-new"
	KeepUp        evidence.FactID = "progression.keep-up"
	Familiarising evidence.FactID = "progression.familiarising"
	AskFirst      evidence.FactID = "progression.ask-first"
	BridgeTop     evidence.FactID = "progression.bridge-top"
	Beside        evidence.FactID = "progression.beside"
	OfDay         evidence.FactID = "progression.of-day"
	Unlike        evidence.FactID = "progression.told-unlike-done"
)
