package guideline_test

import (
	"testing"

	"example.org/posology/dose/guideline"
	"pgregory.net/rapid"
)

// What a plan only speaks of is never met, whichever row is asked; a number that is
// known decides by itself. Law of this module.
func TestAuditProposed(t *testing.T) {
	totals := twoDays(t)
	spoken := []guideline.Field{guideline.FieldBalanceDays, guideline.FieldAerobic, guideline.FieldImpacts}
	rapid.Check(t, func(rt *rapid.T) {
		w := guideline.AuditedWeek{Totals: totals, Proposed: rapid.SliceOfDistinct(rapid.SampledFrom(spoken), rapid.ID[guideline.Field]).Draw(rt, "proposed")}
		numbers := map[guideline.Field]**int{guideline.FieldBalanceDays: &w.BalanceDays, guideline.FieldAerobic: &w.AerobicMinutes, guideline.FieldImpacts: &w.Impacts}
		for _, f := range spoken {
			if rapid.Bool().Draw(rt, "given") {
				n := rapid.IntRange(0, 7).Draw(rt, "number")
				*numbers[f] = &n
			}
		}
		silent := w
		silent.Proposed = nil
		for row := range guideline.All() {
			got, plain := audited(t, w, row.ID), audited(t, silent, row.ID)
			for i, f := range got.Findings {
				want := plain.Findings[i].Verdict
				for _, p := range w.Proposed {
					if p == f.Item && *numbers[p] == nil && want == guideline.NotRecorded {
						want = guideline.Proposed
					}
				}
				if f.Verdict != want {
					rt.Fatalf("%s, %v: %v, want %v", row.ID, f.Item, f.Verdict, want)
				}
			}
		}
	})
}
