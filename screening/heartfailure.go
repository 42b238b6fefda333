package screening

import "example.org/posology/units"

// heartFailure answers by the list of contraindications in chronic heart
// failure (Eur Respir Rev): body mass up by 1.8 kg or more over 1 to 3 days and
// a pulse of 100 or more lying at rest are relative, and so is the gain at that
// rate over more days; breath or stamina worse over 3 to 5 days, a heart attack
// in the last 3 weeks and new atrial fibrillation are absolute. What was not asked or measured is not counted; the level is zero if
// nothing of it was given. Whoever the readings are of, they count.
func (c Check) heartFailure(items []item) ContraindicationAnswer {
	var answer ContraindicationAnswer
	meet := func(given, met bool, code Code) {
		if given {
			answer.Level = max(answer.Level, NoContraindication)
		}
		if met {
			answer.Level = max(answer.Level, find(code).failure)
			answer.Reasons = append(answer.Reasons, code)
		}
	}
	meet(c.Weight != nil, c.Weight.isGain(), weightGain)
	meet(c.Worsening != Unknown, c.Worsening == Yes, worsening)
	meet(c.SupinePulse > 0, c.SupinePulse >= supinePulse, pulseLying)
	for _, it := range items {
		meet(it.code == heartFailure, it.held == Yes && it.failure != 0, it.code)
	}
	return answer
}

// isGain reports whether w holds the published gain for certain: a gain of n
// times as much over n stretches of 3 days has it within one of them.
func (w *WeightGain) isGain() bool {
	if w == nil {
		return false
	}
	stretches := (w.Days + gainMaxDays - 1) / gainMaxDays
	return w.Mass >= gainMass*units.Mass(stretches)
}
