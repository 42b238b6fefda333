package dose

import (
	"example.org/posology/dose/internal/demand"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// limitCautions are the limits that a reader has to act on in every set.
func limitCautions(r *Request) []evidence.Reason {
	limits := &r.Screening.Limits
	var list []evidence.Reason
	add := func(holds bool, code evidence.ReasonCode) {
		if holds {
			list = append(list, evidence.Because(code))
		}
	}
	standing := r.Exercise.Demands.Has(body.FreeStanding) || r.Exercise.Demands.Has(body.SingleLegStance)
	add(limits.NoBreathHolding, "dose.no-breath-holding")
	add(limits.EffortNotPulse, "dose.effort-not-pulse")
	add(limits.TechniqueFirst, "dose.technique-first")
	add(limits.Support && standing && r.Exercise.HandFree(), "dose.support")
	add(limits.Support && standing && !r.Exercise.HandFree() && !r.Exercise.Seat, "dose.support-near")
	add(limits.Support && standing && !r.Exercise.HandFree() && r.Exercise.Seat, "dose.support-seat")
	add(limits.Support && standing && loaded(r) && !demand.HandFree(r.Exercise.Hold) && !r.Exercise.Seat, "dose.support-beside")
	return list
}
