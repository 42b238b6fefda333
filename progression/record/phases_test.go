package record_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// A phase that begins later has begun on the day that is asked about, so that it can be
// asked about on any day; its own days count once they have come, its goal once it was told.
func TestPhases(t *testing.T) {
	r := read(t, review)
	day := r.Review
	re, err := r.Assess(day)
	if err != nil {
		t.Fatal(err)
	}
	holds := func(r record.Record, day units.Day, of string) (list []programme.CriterionState) {
		t.Helper()
		report, err := r.Phases(re, day, programme.PlanStands)
		if err != nil {
			t.Fatal(err)
		}
		for _, exit := range report.Exits {
			for _, c := range exit.Criteria {
				if c.Criterion.String() == of {
					list = append(list, c.Holds)
				}
			}
		}
		return list
	}
	r.Phase, r.Began = dose.Build, day+5
	for _, ahead := range []units.Day{5, 0, -5} {
		r.Began = day + ahead
		if got := holds(r, day, "goal"); len(got) == 0 || got[0] != programme.CriterionNotKnown {
			t.Errorf("%d days ahead: %v", ahead, got)
		}
	}
	for answer, want := range map[screening.Answer]programme.CriterionState{screening.Yes: programme.CriterionMet, screening.No: programme.CriterionNotMet} {
		if r.Reached = answer; holds(r, day, "goal")[0] != want {
			t.Errorf("reached %v: %v", answer, holds(r, day, "goal"))
		}
	}
	re.Screening.Route = screening.AskFirst
	if got := holds(r, day, "referral"); got[0] != programme.CriterionNotMet {
		t.Errorf("asked first: %v", got)
	}
	if _, err := r.Phases(re, 0, programme.PlanStands); err == nil {
		t.Error("a day that is none")
	}
}
