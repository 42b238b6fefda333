package screening_test

import (
	"testing"

	"example.org/posology/screening"
)

// A stroke told with the vessels of the brain leads where one told by itself does, with
// the one question for its day; as long as nobody was asked it counts as one.
func TestOneStroke(t *testing.T) {
	told, implied, open := well(), well(), well()
	told.Diseases, told.Conditions = screening.AskedFor("cerebrovascular"), screening.AskedFor("after_mi_or_stroke")
	implied.Diseases = screening.AskedFor("cerebrovascular")
	implied.Answers = map[screening.Code]screening.Answer{"stroke_before": screening.Yes}
	open.Diseases = implied.Diseases
	for name, p := range map[string]*screening.Profile{"told": &told, "implied": &implied, "open": &open} {
		p.Activity = busy()
		o := assess(t, *p)
		expect(t, o, screening.AskFirst, screening.LightSupervised)
		want, other := screening.Code("after_mi_or_stroke_day"), screening.Code("stroke_before")
		if name == "open" {
			want, other = other, want
		}
		if !misses(o, want) || misses(o, other) {
			t.Errorf("%s: missing %v", name, o.Missing)
		}
		p.Events = []screening.Event{{Code: "stroke", Day: visit - 800}}
		expect(t, assess(t, *p), screening.Tell, screening.WithinLimits)
	}
	implied.Answers["stroke_before"], implied.Events = screening.No, nil
	expect(t, assess(t, implied), screening.Tell, screening.WithinLimits)
}

// What counts as yes for not being known says so beside the rule's own answer.
func TestBranchNotKnown(t *testing.T) {
	p := well()
	p.Diseases = screening.AskedFor("renal")
	p.Symptoms.Unsure = []screening.Code{"dizziness_or_syncope"}
	o := assess(t, p)
	if _, ok := finding(o, "screening.branch.N3.unsure"); !ok || o.Rules.Preparticipation.Branch != screening.N2 {
		t.Errorf("%+v, %+v", o.Findings, o.Rules.Preparticipation)
	}
}
