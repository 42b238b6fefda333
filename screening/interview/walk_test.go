package interview

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
)

// anything answers by chance, mostly sensibly.
func anything(r *rand.Rand) func(q FormQuestion) string {
	return func(q FormQuestion) string {
		choice := func() string { return string(q.Choices[r.IntN(len(q.Choices))].Code) }
		switch {
		case q.Key == "age":
			return fmt.Sprint(18 + r.IntN(103))
		case q.Form == YesNo:
			return []string{"yes", "no", ""}[r.IntN(3)]
		case q.Form == SeveralOf && len(q.Choices) > 0 && r.IntN(3) > 0:
			return choice() + []string{"", "?"}[r.IntN(2)]
		case q.Form == SeveralOf:
			return []string{"none", ""}[r.IntN(2)]
		case q.Form == OneOf:
			return choice()
		case q.Key == "restriction_until": // from the day of the visit on
			return "2027-05"
		case q.Form == Date:
			return "2026-05"
		case q.Key == "glucose":
			return []string{"60 mg/dL", "5.4 mmol/L", "290 mg/dL", ""}[r.IntN(4)]
		case q.Form == Whole:
			return fmt.Sprint(q.Least + r.IntN(min(q.Most, 200)-q.Least+1))
		case strings.HasPrefix(q.Key, "blood_pressure"):
			return fmt.Sprintf("%d/%d", 100+r.IntN(90), 50+r.IntN(45))
		}
		return ""
	}
}

// TestAnySequence holds that whatever is answered and taken back, profile and
// check are valid, Assess and Today take them, and Back undoes exactly.
func TestAnySequence(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 1))
	for range 60 {
		answer, i := anything(r), On(visit)
		for range 400 {
			q, more := i.Next()
			if !more {
				break
			}
			if r.IntN(5) == 0 {
				if before, any := i.Back(); any {
					i = before
					continue
				}
			}
			given := reply(q, answer(q))
			after, err := i.Answer(q.Key, given)
			if err != nil {
				t.Fatalf("%s: %+v: %v", q.Key, given, err)
			}
			if before, any := after.Back(); !any || !reflect.DeepEqual(before, i) {
				t.Fatalf("back does not lead to where %s was asked", q.Key)
			}
			if q2, _ := i.Next(); !reflect.DeepEqual(question(q2), question(q)) {
				t.Fatalf("answering %s changed the interview before it", q.Key)
			}
			i = after
			accepted(t, i)
		}
		again, err := Resume(visit, i.Given())
		if err != nil || !reflect.DeepEqual(again.Profile(), i.Profile()) || !reflect.DeepEqual(again.Check(), i.Check()) {
			t.Fatalf("resumed otherwise: %v", err)
		}
	}
}

// question is q in a form to compare.
func question(q FormQuestion) string { return fmt.Sprintf("%+v", q) }

// accepted holds that the library takes what i tells.
func accepted(t *testing.T, i Interview) {
	t.Helper()
	o, err := screening.Assess(i.Profile())
	if err != nil {
		t.Fatal(err)
	}
	if _, err := screening.Today(i.Check(), o); err != nil {
		t.Fatal(err)
	}
	if _, err := i.Outcome(); err != nil {
		t.Fatal(err)
	}
}

// Nobody changes an interview through what it gave or was given.
func TestNothingIsShared(t *testing.T) {
	own := map[string]string{"areas": "joints heart", "joints": "musculoskeletal_limitation rotator_cuff_repair", "rotator_cuff_repair_day": "2026-10", "heart": "pacemaker",
		"restriction": "yes", "restriction_mass": "5 kg", "clearance": "yes", "clearance_scope": "pacemaker", "today": "yes", "hurt": "yes", "pain_during": "3"}
	i, _ := walk(t, well(own))
	want, check, given := fmt.Sprintf("%+v", i.Given()), fmt.Sprint(*i.Check().Pain.During), i.Given()
	p, c := i.Profile(), i.Check()
	p.Answers["clearance"], p.Events[0].Code, p.Clearances[0].Scope[0], *p.Restrictions[0].MaxMass = screening.No, "fall", "icd", 0
	p.BP.Systolic, p.Falls.Fell, *c.Pain.During, c.BP.Systolic = 250, screening.Yes, 9, 250
	p.Conditions.Present[0] = "icd"
	for n := range given {
		for k := range given[n].Reply.List.Present {
			given[n].Reply.List.Present[k] = "icd"
		}
	}
	q := i.Profile()
	if q.Answers["clearance"] != screening.Yes || q.Events[0].Code == "fall" || q.Clearances[0].Scope[0] != "pacemaker" || *q.Restrictions[0].MaxMass == 0 ||
		q.BP.Systolic != 128 || q.Falls.Fell != screening.No || slices.Contains(q.Conditions.Present, "icd") || fmt.Sprint(*i.Check().Pain.During) != check || i.Check().BP.Systolic != 128 {
		t.Errorf("%+v", q)
	}
	if got := fmt.Sprintf("%+v", i.Given()); got != want {
		t.Errorf("%s, want %s", got, want)
	}
}
