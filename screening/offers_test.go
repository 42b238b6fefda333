package screening_test

import (
	"math/rand/v2"
	"regexp"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// goesOn are phrases that let something go on. Of "before we begin" and its like
// the opposite is meant.
var (
	goesOn = regexp.MustCompile(`may go on|can go on|as you are used to|beside you|we (begin|build|go back|go gently|practise|can practise|can begin|train|move without|keep it|take it|keep weights|keep the effort|work around|keep to what)|build up|lighter day|easy movements|gentle exercises|weights follow`)
	waits  = regexp.MustCompile(`before we (begin|train|start)|; then we begin|; we begin after that|when to train|before the next`)
)

// TestOffersAreListed holds that every sentence to a client that lets something
// go on says how much, so that it can be left out where less does.
func TestOffersAreListed(t *testing.T) {
	for code, w := range screening.Words().All() {
		text := waits.ReplaceAllString(strings.ToLower(w.Client), "")
		if strings.HasSuffix(string(code), ".held") {
			if goesOn.MatchString(text) {
				t.Errorf("%s, for who is held: %q", code, w.Client)
			}
			continue
		}
		term, _ := screening.LookUp(screening.Code(strings.TrimPrefix(string(code), "screening.")))
		if _, ok := screening.Offers(code); !ok && goesOn.MatchString(text) && term.Kind != screening.Sign {
			t.Errorf("%s lets something go on, and does not say how much: %q", code, w.Client)
		}
	}
}

// TestQuestionsOfferNothing holds that no question lets anything go on.
func TestQuestionsOfferNothing(t *testing.T) {
	for prompt := range screening.Prompts() {
		if most, ok := screening.Offers(evidence.ReasonCode("screening.ask." + prompt.Code)); ok {
			t.Errorf("the question %s offers %v", prompt.Code, most)
		}
	}
}

// TestNobodyHeldReadsGoOn reads to random clients what they are told: nothing
// of it lets more go on than the joined outcome does, and who is held reads a
// sentence of what holds them.
func TestNobodyHeldReadsGoOn(t *testing.T) {
	r, words := rand.New(rand.NewPCG(50, 5)), screening.Words()
	for range usualCases / 4 {
		p := randomProfile(r)
		o := assess(t, p)
		readsLevel(t, words, o)
		readsLevel(t, words, mustToday(t, checkFor(r, o), o))
	}
}

func readsLevel(t *testing.T, words evidence.Lexicon, o screening.Outcome) {
	t.Helper()
	told := o.Meanwhile == screening.WithinLimits
	for _, f := range o.Findings {
		text := words.Client(f.Reason)
		if most, ok := screening.Offers(f.Reason.Code); ok && most < o.Meanwhile {
			t.Fatalf("%v goes on, and the client reads %q (%s)", o.Meanwhile, text, f.Reason.Code)
		}
		if _, ok := words.Wording(f.Reason.Code); !ok {
			t.Fatalf("%s has no words", f.Reason.Code)
		}
		if o.Meanwhile == screening.Nothing && goesOn.MatchString(waits.ReplaceAllString(strings.ToLower(text), "")) {
			t.Fatalf("nothing goes on, and the client reads %q (%s)", text, f.Reason.Code)
		}
		told = told || f.Meanwhile == o.Meanwhile && text != ""
	}
	if !told {
		t.Fatalf("held at %v, and no sentence says so: %+v", o.Meanwhile, o.Findings)
	}
}

// TestHeldTexts holds the cases that the sentences were written for.
func TestHeldTexts(t *testing.T) {
	words := screening.Words()
	told := func(p screening.Profile) string {
		var all []string
		for _, f := range assess(t, p).Findings {
			all = append(all, words.Client(f.Reason))
		}
		return strings.Join(all, " ")
	}
	p := well()
	p.Activity, p.Diseases = busy(), screening.AskedFor("diabetes_t2")
	if text := told(p); !strings.Contains(text, "what you are used to") || strings.Contains(text, "beside you") {
		t.Errorf("active, with diabetes: %s", text)
	}
	p = well()
	p.Activity, p.Symptoms = busy(), screening.AskedFor("dizziness_or_syncope")
	p.Clearances = []screening.Clearance{clearance("dizziness_or_syncope")}
	if text := told(p); strings.Contains(text, "agreed") {
		t.Errorf("dizzy, with an agreement that does not lift it: %s", text)
	}
	p = well()
	p.BP, p.BPAgain = pressure(175, 90), pressure(175, 90)
	if text := told(p); strings.Contains(text, "beside you") || !strings.Contains(text, "without weights") {
		t.Errorf("systolic 175, unloaded practice: %s", text)
	}
	p = well()
	if text := told(p); !strings.Contains(text, "step by step") {
		t.Errorf("well: %s", text)
	}
}
