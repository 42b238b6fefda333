package progression_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/progression"
	"example.org/posology/units/evidence"
)

// namesFall are the reasons by which a held dose may come out easier.
var namesFall = []evidence.ReasonCode{
	"progression.fewer-reps", "progression.lighter-for-reserve", "progression.range-ends", "progression.maintain", "progression.resumed",
}

// A held dose is no easier than the last one unless a reason names the fall, and an eased
// one is easier, or was eased before and is so by a gate again.
func TestNextHoldsAndEasesAgree(t *testing.T) {
	tried(t, func(t *rapid.T) bool {
		c, d, ok := decidedToday(t)
		if !ok {
			return false
		}
		was, is := last(&c).Plan, *d.Next
		alike, more := is.Load.Each() == was.Load.Each(), is.Reserve.Least > was.Reserve.Least // which is that of the frame, and said by it
		easier := is.Load.Each() < was.Load.Each() || is.Sets < min(was.Sets, is.BuildTo) || alike && is.Count < was.Count
		named := is.Phase != was.Phase || slices.ContainsFunc(namesFall, func(code evidence.ReasonCode) bool { return hasReason(d, code) })
		if d.Action == progression.HoldDose && easier && !named {
			t.Fatalf("held, and easier than %v × %d × %d, reserve %v: %s", was.Load.Each(), was.Sets, was.Count, was.Reserve, tell(d))
		}
		if d.Action == progression.EaseOff && !hasReason(d, "progression.eased") && !easier && !more && is.Sets >= was.Sets && is.Load.Each() == was.Load.Each() && was.Finding == nil && was.Feel == nil {
			t.Fatalf("eased, and as hard as %v × %d × %d, reserve %v: %s", was.Load.Each(), was.Sets, was.Count, was.Reserve, tell(d))
		}
		return d.Action == progression.HoldDose || d.Action == progression.EaseOff
	})
}
