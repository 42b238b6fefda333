package rule

import (
	"example.org/posology/progression/internal/given"
	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// perryLimit is the score, of 10, below which pain lets the load rise.
const perryLimit = 5.0

// PainGate is the gate of Perry 2005 for a rise in load: pain below 5 of 10,
// the full available range, and the target repetitions. pain is the score that
// counts, 0 to 10; rangeLost and missed say whether range was lost and the
// target missed, and an answer not known keeps the load. The gate lets
// pain of 3 or 4 progress.
func PainGate(pain float64, rangeLost, missed screening.Answer) (Ruling, error) {
	if err := given.Score(pain); err != nil {
		return Ruling{}, field.At("/pain", err)
	}
	return answer(NamePainGate, pain < perryLimit && rangeLost == screening.No && missed == screening.No, factPerry), nil
}
