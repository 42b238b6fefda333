package visit_test

import (
	"errors"
	"testing"

	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/visit"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

func demoCase(t *testing.T) visit.Case {
	t.Helper()
	var c visit.Case
	if err := field.Decode(demo.VillageHall(), &c, field.Strict); err != nil {
		t.Fatal(err)
	}
	return c
}

func TestDemo(t *testing.T) {
	r, err := visit.Run(demoCase(t))
	if err != nil {
		t.Fatal(err)
	}
	if r.Week == nil || len(r.Week.Sessions) != 3 || len(r.Estimates) != 3 || len(r.Refused) != 2 {
		t.Errorf("week %v, %d estimates, %d refused", r.Week, len(r.Estimates), len(r.Refused))
	}
}

// Every reason of the result has words for the clinician and facts that exist.
func TestReasonsAreKnown(t *testing.T) {
	r, err := visit.Run(demoCase(t))
	if err != nil {
		t.Fatal(err)
	}
	ledger, err := visit.Ledger()
	if err != nil {
		t.Fatal(err)
	}
	words, err := visit.Words()
	if err != nil {
		t.Fatal(err)
	}
	check := func(reasons ...evidence.Reason) {
		for _, reason := range reasons {
			if words[reason.Code].Clinician == "" {
				t.Errorf("no words for %s", reason.Code)
			}
			for _, id := range reason.Facts {
				if _, ok := ledger.Fact(id); !ok {
					t.Errorf("%s names %q, which is no fact", reason.Code, id)
				}
			}
		}
	}
	for _, f := range r.Screening.Findings {
		check(f.Reason)
	}
	for _, e := range r.Estimates {
		check(e.Reasons...)
	}
	for _, refused := range r.Refused {
		check(refused.Reason)
	}
	check(r.Week.Reasons...)
	for _, item := range r.Week.Sessions[0].Items {
		check(item.Reasons...)
		check(item.Cautions...)
	}
	for _, out := range r.Week.LeftOut {
		check(out.Reasons...)
	}
}

func TestTodayTightens(t *testing.T) {
	c := demoCase(t)
	if err := field.Decode([]byte(`{"day": "2026-11-25", "setting": "in a group", "new": {"asked": true}, "febrile": "yes"}`), &c.Today, field.Strict); err != nil {
		t.Fatal(err)
	}
	r, err := visit.Run(c)
	if err != nil {
		t.Fatal(err)
	}
	if r.Week != nil || r.Stop == nil || r.Stop.Why == "" {
		t.Errorf("a feverish person gets a week: %+v", r.Stop)
	}
}

func TestBadSetsAreNamed(t *testing.T) {
	c := demoCase(t)
	c.Tests[1].Reps = 0
	c.Tests[2].Exercise = "one-arm-dumbell-row"
	_, err := visit.Run(c)
	var all field.Errors
	if !errors.As(err, &all) || len(all) != 2 || all[0].Path != "/tests/1/reps" || all[1].Path != "/tests/2/exercise" {
		t.Errorf("%v", err)
	}
}

// A set that contradicts its exercise is named as the case has it, and no refusal.
func TestContradictingSetsAreNamed(t *testing.T) {
	c := demoCase(t)
	c.Tests[0].Hold = body.BothHandsOnOne
	_, err := visit.Run(c)
	var all field.Errors
	if !errors.As(err, &all) || len(all) != 1 || all[0].Path != "/tests/0/hold" || !errors.Is(all[0], field.ErrConflict) {
		t.Errorf("%v", err)
	}
	c.Training = body.TrainingUnknown
	if _, err := visit.Run(c); !errors.As(err, &all) || len(all) != 1 || all[0].Path != "/training" {
		t.Errorf("%v", err)
	}
}
