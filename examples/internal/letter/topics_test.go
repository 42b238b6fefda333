package letter

import (
	"strings"
	"testing"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
)

// Every code that is asked about is known, and is asked about once.
func TestTopicsAreKnown(t *testing.T) {
	seen := map[screening.Code]bool{}
	for _, topic := range topics {
		for _, code := range topic.about {
			_, ok := screening.LookUp(code)
			if seen[code] || !ok && code != together && !strings.HasPrefix(string(code), "flags-chronic-") {
				t.Errorf("%s: known %v, twice %v", code, ok, seen[code])
			}
			seen[code] = true
		}
	}
}

// Whoever is held by what a doctor, surgeon or team can lift finds a question about it in
// the letter to the doctor: over every code alone and beside diabetes, whose own question
// stands for no other.
func TestEveryHoldIsAskedAbout(t *testing.T) {
	held := 0
	for term := range screening.Codes() {
		for _, beside := range [][]screening.Code{nil, {"diabetes_t2"}} {
			p := screening.Profile{
				Day: 739950, Age: 66, Wanted: screening.Moderate, Setting: screening.InClinic, Activity: &screening.Activity{Intensity: screening.Idle},
				Diseases: screening.AskedFor(beside...), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
			}
			list := map[screening.Kind]*screening.Checklist{
				screening.Disease: &p.Diseases, screening.Symptom: &p.Symptoms, screening.RedFlag: &p.RedFlags, screening.Condition: &p.Conditions,
			}[term.Kind]
			if list == nil {
				continue
			}
			list.Present = append(list.Present, term.Code)
			o, err := screening.Assess(p)
			if err != nil || o.Route == screening.Emergency {
				continue // where there is one question
			}
			l := Letter{Profile: p, Outcome: o}
			asks := strings.Join(l.Questions(), " ")
			for _, f := range o.Findings {
				if f.Open || f.Route < screening.AskFirst || f.Exit.Who < screening.TheDoctor {
					continue
				}
				codes := []screening.Code{f.Code}
				if f.Branch() != 0 {
					codes = append(append([]screening.Code(nil), p.Diseases.Present...), p.Symptoms.Present...)
				}
				for _, code := range codes {
					held++
					named := strings.Contains(asks, about(code).asks) && (about(code).asks != general || asks == general || strings.Contains(asks, page.InWords(code)))
					if !named && !strings.Contains(asks, page.InWords(code)) {
						t.Errorf("%s, beside %v: nothing asks about %s in %q", term.Code, beside, code, asks)
					}
					if f.Exit.With == screening.AClearance && !strings.Contains(asks, "Do you agree") {
						t.Errorf("%s, beside %v: no agreement is asked for in %q", term.Code, beside, asks)
					}
				}
			}
		}
	}
	if held < 100 {
		t.Errorf("%d holds", held)
	}
}
