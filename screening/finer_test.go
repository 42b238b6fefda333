package screening_test

import (
	"fmt"
	"maps"
	"slices"
	"testing"

	"example.org/posology/screening"
)

// finerQuestions are the questions that split the people of one code.
var finerQuestions = []screening.Code{
	"dizziness_faint", "dizziness_new", "dizziness_on_standing", "dizziness_spinning", "ankle_oedema_new", "heart_murmur_new", "palpitations_new",
	"dyspnoea_new", "fatigue_new", "claudication_new", "cancer_active", "chronic_pain_changed", "eye_operation_not_cataract", "replacement_limited",
	"hip_fracture_unseen", "spine_shape_unseen", "midline_pain_unseen", "worse_pain_unseen",
}

// TestFinerLaw walks every answer to the finer questions of a code, with and without
// its day and a clearance, in every setting: a worse answer is never looser, one that
// is not known neither looser than no nor stricter than yes, and less company never
// looser.
func TestFinerLaw(t *testing.T) {
	byTrigger := map[screening.Code][]screening.Code{}
	for q := range screening.Prompts() {
		if slices.Contains(finerQuestions, q.Code) {
			for _, code := range q.Triggers {
				byTrigger[code] = append(byTrigger[code], q.Code)
			}
		}
	}
	if len(byTrigger) < 10 {
		t.Fatalf("triggers: %v", byTrigger)
	}
	cases := 0
	for code, asked := range byTrigger {
		for variant := range 24 {
			p := well()
			has(code)(&p)
			if code == "back_pain_not_better_at_a_month" || code == "cancer_history" {
				has("pain_in_many_places")(&p)
			}
			p.Events = [][]screening.Event{nil, {{Code: code, Day: visit - 20}}, {{Code: code, Day: visit - 900}}}[variant%3]
			if p.Validate() != nil {
				continue // no code that has a day
			}
			if term, _ := screening.LookUp(code); variant/3%4 > 0 && term.Kind != screening.RedFlag {
				agreed := clearance(code)
				agreed.Intensity = [...]screening.Intensity{screening.Light, screening.Moderate, screening.Vigorous}[variant/3%4-1]
				p.Clearances = []screening.Clearance{agreed}
			}
			if variant >= 12 {
				p.Activity = busy()
			}
			cases += walkAnswers(t, p, asked)
		}
	}
	t.Logf("%d cases", cases)
}

// walkAnswers compares each set of answers with those that are one step worse.
func walkAnswers(t *testing.T, p screening.Profile, asked []screening.Code) (cases int) {
	sets := 1
	for range asked {
		sets *= 3
	}
	order := []screening.Answer{screening.No, screening.Unknown, screening.Yes}
	for n := range sets {
		p.Answers = map[screening.Code]screening.Answer{"clearance": screening.No}
		for i, rest := 0, n; i < len(asked); i, rest = i+1, rest/3 {
			p.Answers[asked[i]] = order[rest%3]
		}
		for s := screening.Alone; s <= screening.InClinic; s++ {
			p.Setting = s
			before := assess(t, p)
			cases++
			for i, rest := 0, n; i < len(asked); i, rest = i+1, rest/3 {
				if rest%3 == 2 {
					continue
				}
				worse := p
				worse.Answers = maps.Clone(p.Answers)
				worse.Answers[asked[i]] = order[rest%3+1]
				tighter(t, fmt.Sprint(asked[i], " ", worse.Answers), n, before, assess(t, worse))
			}
			if s > screening.Alone {
				less := p
				less.Setting--
				tighter(t, "less company", n, before, assess(t, less))
			}
		}
	}
	return cases
}

// TestLookedAtSaysWhatTheRuleSays holds that the joined branch leaves out a sign that
// was looked at, says so, and that the rule's own answer counts it.
func TestLookedAtSaysWhatTheRuleSays(t *testing.T) {
	p := well()
	p.Symptoms = screening.AskedFor("intermittent_claudication")
	p.Answers = map[screening.Code]screening.Answer{"claudication_new": screening.No}
	o := assess(t, p)
	if _, ok := finding(o, "screening.branch.N1.looked-at"); !ok || o.Rules.Preparticipation.Branch != screening.N3 {
		t.Errorf("rule %v, findings %+v", o.Rules.Preparticipation, o.Findings)
	}
	p.Symptoms.Present = append(p.Symptoms.Present, "orthopnoea_or_pnd") // which nobody has looked at
	if o = assess(t, p); o.Findings[0].Branch() != screening.N3 && o.Meanwhile != screening.Nothing {
		t.Errorf("with another sign: %v", o.Meanwhile)
	}
}
