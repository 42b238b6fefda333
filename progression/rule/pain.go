package rule

import (
	"example.org/posology/progression/internal/given"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// perryLimit is the score, of 10, below which pain lets the load rise.
const perryLimit = 5.0

// PainGate is the gate of Perry 2005 for a rise in load: pain below 5 of 10,
// the full available range, and the target repetitions. pain is the score that
// counts, 0 to 10; rangeLost and missed say whether range was lost and the
// target missed, and an answer not known keeps the load. The gate would let
// pain of 3 or 4 progress; [PainComposite] would not.
func PainGate(pain float64, rangeLost, missed screening.Answer) (Ruling, error) {
	if err := given.Score(pain); err != nil {
		return Ruling{}, field.At("/pain", err)
	}
	return answer(NamePainGate, pain < perryLimit && rangeLost == screening.No && missed == screening.No, factPerry), nil
}

// PainComposite is this module's cautious rule, a design built on the pain
// model's zones in package screening:
//
//   - Raise: pain in the lowest zone, settled by the next morning, not rising,
//     full range, target met
//   - Ease: pain above 5 of 10, unsettled or rising from week to week, or range lost
//   - Refer: pain of a kind that the model is never used for
//   - Keep: all else, also where something is not known
//
// rangeLost and missed say whether range was lost and the target missed. Usual
// pain of osteoarthritis up to 5 is let progress by
// [screening.PainAnswer.MayProgress] alone, not here.
func PainComposite(p screening.Pain, rangeLost, missed screening.Answer) (Ruling, error) {
	if err := given.Pain(p); err != nil {
		return Ruling{}, field.At("/pain", err)
	}
	model := screening.PainModel(p)
	a := Ruling{Rule: NamePainComposite, Advice: Keep}
	switch {
	case !model.Applies:
		a.Advice = Refer
	case model.Plan == screening.Lighter, rangeLost.Severity() > screening.Unknown.Severity():
		a.Advice = Ease
	case model.MayProgress && model.Zone == screening.ZoneUpTo2 && rangeLost == screening.No && missed == screening.No:
		a.Advice = Raise
	}
	a.Reasons = []evidence.Reason{evidence.Because("progression.pain-composite", factComposite, factZones).With(
		evidence.Term("advice", a.Advice.String()), evidence.Term("zone", given.Zone(model.Zone)))}
	return a, nil
}
