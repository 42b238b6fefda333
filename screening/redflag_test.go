package screening_test

import (
	"testing"

	"example.org/posology/screening"
)

// TestRouteAtLeastRule holds for every red flag that the outcome sends the
// person no later than the rule itself.
func TestRouteAtLeastRule(t *testing.T) {
	least := map[screening.Referral]screening.Route{
		screening.NoReferral: screening.NoRoute, screening.UrgentReferral: screening.SameDay, screening.EmergencyReferral: screening.Emergency,
	}
	for _, code := range redFlagCodes {
		for _, other := range redFlagCodes {
			p := blank()
			p.RedFlags = screening.AskedFor(code)
			if other != code {
				p.RedFlags = screening.AskedFor(code, other)
			}
			if o := assess(t, p); o.Route < least[o.Rules.RedFlags] {
				t.Errorf("%s, %s: the rule says %v, the outcome %v", code, other, o.Rules.RedFlags, o.Route)
			}
		}
	}
}

// TestPairsNeedBackPain holds that signs of the spine count together only for
// a back that hurts, or may: the framework is for pain of the spine (Finucane
// 2020).
func TestPairsNeedBackPain(t *testing.T) {
	p := blank()
	p.RedFlags = screening.AskedFor("weakened_immune_system", "recent_infection_or_injected_drugs")
	for answer, pair := range map[screening.Answer]bool{screening.No: false, screening.Unknown: true, screening.Yes: true} {
		p.Answers = map[screening.Code]screening.Answer{"back_pain": answer}
		o := assess(t, p)
		if _, ok := finding(o, "screening.flags-together"); ok != pair {
			t.Errorf("back pain %v: a pair is found: %v", answer, ok)
		}
		if got := o.Rules.RedFlags == screening.UrgentReferral; got != pair {
			t.Errorf("back pain %v: the rule says %v", answer, o.Rules.RedFlags)
		}
		if misses(o, "back_pain") != (answer == screening.Unknown) {
			t.Errorf("back pain %v: missing %v", answer, o.Missing)
		}
	}
	p.Answers = map[screening.Code]screening.Answer{"back_pain": screening.No}
	expect(t, assess(t, p), screening.AskFirst, screening.WithinLimits)
	// A sign that is back pain contradicts the no, and the graver counts.
	p.RedFlags = screening.AskedFor("unexplained_weight_loss", "back_pain_not_better_at_a_month")
	if o := assess(t, p); o.Route != screening.SameDay {
		t.Errorf("back pain that lasts, and no back pain: %v", o.Route)
	}
	// One sign alone asks nothing more.
	p.Answers, p.RedFlags = nil, screening.AskedFor("cancer_history")
	if o := assess(t, p); misses(o, "back_pain") {
		t.Error("one sign alone asks about back pain")
	}
	p.RedFlags = screening.Checklist{Asked: true, Present: []screening.Code{"cancer_history"}, Unsure: []screening.Code{"unexplained_weight_loss"}}
	if o := assess(t, p); !misses(o, "back_pain") || o.Meanwhile != screening.Nothing {
		t.Errorf("perhaps two signs: %v, missing %v", o.Meanwhile, o.Missing)
	}
}
