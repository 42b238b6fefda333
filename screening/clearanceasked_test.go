package screening_test

import (
	"strings"
	"testing"

	"example.org/posology/screening"
)

// holding are profiles by what may hold the person: every disease, symptom and
// condition, told or not known, and readings.
func holding() map[screening.Code]screening.Profile {
	all := map[screening.Code]screening.Profile{}
	for _, codes := range [][]screening.Code{diseaseCodes, symptomCodes, conditionCodes} {
		for _, code := range codes {
			p := blank()
			p.BP = pressure(130, 80)
			list := map[screening.Kind]*screening.Checklist{screening.Disease: &p.Diseases, screening.Symptom: &p.Symptoms, screening.Condition: &p.Conditions}
			term, _ := screening.LookUp(code)
			*list[term.Kind] = screening.AskedFor(code)
			all[code] = p
			q := p
			list = map[screening.Kind]*screening.Checklist{screening.Disease: &q.Diseases, screening.Symptom: &q.Symptoms, screening.Condition: &q.Conditions}
			*list[term.Kind] = screening.Checklist{Asked: true, Unsure: []screening.Code{code}}
			all[code+"?"] = q
		}
	}
	p := blank()
	p.BP, p.BPAgain = pressure(165, 95), pressure(165, 95)
	all["hypertension_gt_160_100"] = p
	p = blank()
	p.CapacityMETs = score(3)
	all["capacity_lt_4_mets"] = p
	for _, code := range []screening.Code{"total_hip_replacement", "heart_attack"} {
		p = blank()
		p.BP, p.Events = pressure(130, 80), []screening.Event{{Code: code, Day: visit - 3000}}
		all[code+" long ago"] = p
	}
	return all
}

// TestEveryHoldAsksForItsClearance holds that whatever a clearance would lift
// names it among what is missing, unless the answer is no or it is in force.
func TestEveryHoldAsksForItsClearance(t *testing.T) {
	holds := 0
	for name, p := range holding() {
		without := assess(t, p)
		scope := append([]screening.Code{"hypertension_gt_160_100", "capacity_lt_4_mets"}, diseaseCodes...)
		scope = append(append(scope, symptomCodes...), conditionCodes...)
		q := p
		q.Clearances = []screening.Clearance{clearance(scope...)}
		with := assess(t, q)
		if without.Meanwhile == with.Meanwhile && without.Route == with.Route && with.Limits.AsTightAs(without.Limits) {
			continue // nothing that a clearance lifts
		}
		if strings.HasSuffix(string(name), "?") && without.Meanwhile == screening.WithinLimits && without.Route == screening.PhysioLooks {
			continue // of what may not be there the look comes first
		}
		holds++
		if !misses(without, "clearance") {
			t.Errorf("%s: held at %v, and no clearance is asked for", name, without.Meanwhile)
		}
		if misses(with, "clearance") {
			t.Errorf("%s: a clearance is in force and asked for", name)
		}
		q.Clearances = []screening.Clearance{clearance("cerebrovascular", "peripheral_vascular")}
		if other := assess(t, q); other.Meanwhile == without.Meanwhile && other.Route == without.Route && without.Limits.AsTightAs(other.Limits) && !misses(other, "clearance") {
			t.Errorf("%s: a clearance for something else answers the question", name)
		}
		q.Clearances = nil
		for answer, want := range map[screening.Answer]bool{screening.No: false, screening.Yes: true} {
			q.Answers = map[screening.Code]screening.Answer{"clearance": answer}
			if got := misses(assess(t, q), "clearance"); got != want {
				t.Errorf("%s: said %v without a record: asked for %v, want %v", name, answer, got, want)
			}
		}
	}
	if holds < 40 {
		t.Errorf("only %d holds that a clearance lifts", holds)
	}
}

// TestClearanceSaidWithoutRecord holds that a clearance that was said and of
// which there is no record is missing, whatever it was for.
func TestClearanceSaidWithoutRecord(t *testing.T) {
	p := blank()
	p.Answers = map[screening.Code]screening.Answer{"clearance": screening.Yes}
	if o := assess(t, p); !misses(o, "clearance") {
		t.Errorf("missing %v", o.Missing)
	}
}
