package screening

import "example.org/posology/units/evidence"

// Degrees above Silent.
const (
	AskVigorous  = askVigorous
	LighterNow   = lighterNow
	DecideFirst  = decideFirst
	AskAny       = askAny
	ListedWider  = listedWider
	StopOrNotNow = stopOrNotNow
	NoResistance = noResistance
	ReferUrgent  = referUrgent
	ReferNow     = referNow
)

// Rules that callers have from the outcome, here of profiles that Assess refuses too.

func DiabetesStart(p Profile) Need                           { return p.diabetesStart(p.found()) }
func WiderContraindications(p Profile) []Code                { return p.wider(p.found(), p.measured()) }
func HeartFailure(c Check, p Profile) ContraindicationAnswer { return c.heartFailure(p.found()) }
func Offers(code evidence.ReasonCode) (Meanwhile, bool)      { return offers(code) }

// Any is what the list answers as a whole.
func (c Checklist) Any() Answer { return c.any() }
