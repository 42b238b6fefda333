package screening_test

import (
	"testing"

	"example.org/posology/screening"
)

// Who makes a form of the table of questions finds the words of each beside it, and
// they are those of the question that is asked.
func TestPromptsHaveTheirWords(t *testing.T) {
	words := screening.Words()
	asked := map[screening.Code]screening.Question{}
	for _, q := range assess(t, screening.Profile{Day: visit, Age: 66}).Missing {
		asked[q.Code] = q
	}
	for p := range screening.Prompts() {
		if words.Client(p.Reason) == "" || words.Clinician(p.Reason) == "" {
			t.Errorf("%s: no words for %s", p.Code, p.Reason.Code)
		}
		if q, ok := asked[p.Code]; ok && q.Reason.Code != p.Reason.Code {
			t.Errorf("%s: %s beside %s", p.Code, p.Reason.Code, q.Reason.Code)
		}
	}
	if len(asked) < 5 {
		t.Errorf("%d questions asked", len(asked))
	}
}
