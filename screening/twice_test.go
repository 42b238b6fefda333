package screening_test

import (
	"testing"

	"example.org/posology/screening"
)

// Who says yes and shows the paper is not asked for it again.
func TestClearanceSaidWithRecord(t *testing.T) {
	p := blank()
	p.Answers = map[screening.Code]screening.Answer{"clearance": screening.Yes}
	p.Diseases = screening.AskedFor("cardiac")
	p.Clearances = []screening.Clearance{clearance("cardiac")}
	if o := assess(t, p); misses(o, "clearance") {
		t.Errorf("missing %v", o.Missing)
	}
}

// What is known from one place and open in another is known.
func TestGraverOfTwoAnswers(t *testing.T) {
	known := blank()
	known.Events = []screening.Event{{Code: "total_hip_replacement", Day: visit - 10}}
	both := known
	both.Conditions = screening.Checklist{Asked: true, Unsure: []screening.Code{"total_hip_replacement"}}
	want, got := assess(t, known), assess(t, both)
	if got.Route != want.Route || got.Meanwhile != want.Meanwhile || len(got.Findings) != len(want.Findings) {
		t.Fatalf("%v, %v with %d findings; want %v, %v with %d", got.Route, got.Meanwhile, len(got.Findings), want.Route, want.Meanwhile, len(want.Findings))
	}
	for i := range got.Findings {
		if got.Findings[i].Open != want.Findings[i].Open || got.Findings[i].Reason.Code != want.Findings[i].Reason.Code {
			t.Errorf("finding %d: %+v, want %+v", i, got.Findings[i], want.Findings[i])
		}
	}
}
