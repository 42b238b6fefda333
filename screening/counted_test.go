package screening_test

import (
	"strings"
	"testing"

	"example.org/posology/screening"
)

// TestCountedOnlyIfItLifts holds that a clearance is said to count only where
// it lifts something, and that only then its end ends the assessment.
func TestCountedOnlyIfItLifts(t *testing.T) {
	for name, tt := range map[string]struct {
		change  func(*screening.Profile)
		scope   screening.Code
		counted bool
	}{
		"pacemaker":     {func(p *screening.Profile) { p.Conditions = screening.AskedFor("pacemaker") }, "pacemaker", true},
		"eye operation": {func(p *screening.Profile) { p.Conditions = screening.AskedFor("recent_eye_operation") }, "recent_eye_operation", true},
		"absolute":      {func(p *screening.Profile) { p.Conditions = screening.AskedFor("marfan") }, "marfan", false},
		"not there":     {func(*screening.Profile) {}, "pacemaker", false},
		"murmur":        {func(p *screening.Profile) { p.Symptoms = screening.AskedFor("known_heart_murmur") }, "known_heart_murmur", true},
		"murmur and chest pain": {func(p *screening.Profile) {
			p.Symptoms = screening.AskedFor("known_heart_murmur", "ischaemic_chest_neck_jaw_arm_pain")
		}, "known_heart_murmur", true},
		"dizzy spells, which it leaves": {func(p *screening.Profile) { p.Symptoms = screening.AskedFor("dizziness_or_syncope") }, "dizziness_or_syncope", false},
		"active, moderate wanted":       {func(p *screening.Profile) { p.Diseases, p.Activity = screening.AskedFor("renal"), busy() }, "renal", false},
		"active, vigorous wanted": {func(p *screening.Profile) {
			p.Diseases, p.Activity, p.Wanted = screening.AskedFor("renal"), busy(), screening.Vigorous
		}, "renal", true},
		"not active":                  {func(p *screening.Profile) { p.Diseases = screening.AskedFor("renal") }, "renal", true},
		"pressure, measured":          {func(p *screening.Profile) { p.BP, p.BPAgain = pressure(165, 95), pressure(165, 95) }, "hypertension_gt_160_100", true},
		"pressure, which is not high": {func(*screening.Profile) {}, "hypertension_gt_160_100", false},
	} {
		p := well()
		tt.change(&p)
		p.Clearances = []screening.Clearance{clearance(tt.scope)}
		p.Clearances[0].Expires = visit + 50
		o := assess(t, p)
		_, counted := finding(o, "screening.clearance-counted")
		f, void := finding(o, "screening.clearance-not-counted")
		if counted != tt.counted || void == counted || (o.ReviewBy == visit+50) != tt.counted {
			t.Errorf("%s: counted %v, not counted %v, review by %v", name, counted, void, o.ReviewBy)
		}
		if said := screening.Words().Clinician(f.Reason); void && !strings.Contains(said, "lifts nothing") {
			t.Errorf("%s: said %q", name, said)
		}
		if len(o.Clearances) != 1 {
			t.Errorf("%s: in force %v", name, o.Clearances)
		}
	}
}
