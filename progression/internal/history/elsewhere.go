package history

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// Elsewhere reports whether pain is ordinary pain of a joint of an arm or a leg against which
// the exercise does no loaded work. Pain of no known site is everywhere, and so is that of a leg
// for whoever stands with a weight or moves the body.
func Elsewhere(p *screening.Pain, ex *exercise.Exercise) bool {
	if p == nil || p.Kind != screening.OrdinaryPain {
		return false
	}
	switch p.Site {
	case body.Hip, body.Knee, body.AnkleFoot:
		if ex.MovesBody || ex.Pattern.Legs() {
			return false
		}
	case body.Shoulder, body.Elbow, body.WristHand:
	default:
		return false
	}
	loads, some := p.Site.Resisted()
	return some && !ex.Demands.Has(loads)
}
