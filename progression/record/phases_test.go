package record_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/week"
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

// since is the day since which the phase has lasted, and what is said of the latest visits.
func since(t *testing.T, r record.Record, day units.Day) (first, said string) {
	t.Helper()
	r.Visits = slices.Clone(r.Visits)
	re, err := r.Assess(day)
	if err != nil {
		t.Fatal(err)
	}
	report, err := r.Phases(re, day, programme.PlanStands)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range report.Exits[0].Criteria {
		for _, a := range c.Reasons[0].Args {
			switch a.Name {
			case "since":
				first = a.Value()
			case "said":
				said = a.Value()
			}
		}
	}
	return first, said
}

// A phase has lasted since the last other one: what was in it before that does not count. A
// plan whose week has no session began nothing, and a phase that is not given is the assumed one.
func TestPhaseSinceTheLastOther(t *testing.T) {
	r := read(t, review)
	day := r.Review
	entry := func(phase dose.Phase, ago units.Day) record.Entry {
		return record.Entry{Day: day - ago, Edition: record.Edition(), Given: record.Given{Phase: phase, Began: day - ago}, Items: []record.Decided{{}}}
	}
	for _, tt := range []struct {
		what    string
		phase   dose.Phase
		entries []record.Entry
		want    units.Day // days ago
	}{
		{"one stretch", dose.Build, []record.Entry{entry(dose.Familiarise, 60), entry(dose.Build, 40), entry(dose.Build, 10)}, 40},
		{"another in between", dose.Build, []record.Entry{entry(dose.Build, 60), entry(dose.Maintain, 40), entry(dose.Build, 10)}, 10},
		{"another just before", dose.Build, []record.Entry{entry(dose.Build, 60), entry(dose.Maintain, 40)}, 5},
		{"none given is the assumed one", 0, []record.Entry{entry(dose.Familiarise, 60), entry(0, 10)}, 60},
		{"none given lies between", dose.Build, []record.Entry{entry(dose.Build, 60), entry(0, 40), entry(dose.Build, 10)}, 10},
	} {
		r.Phase, r.Began, r.Entries = tt.phase, day-5, tt.entries
		if got, _ := since(t, r, day); got != (day - tt.want).String() {
			t.Errorf("%s: since %s, want %s", tt.what, got, day-tt.want)
		}
	}
	re, err := read(t, review).Assess(day)
	if err != nil {
		t.Fatal(err)
	}
	r.Entries = []record.Entry{{Day: day - 60, Edition: record.Edition(), Plan: &record.Plan{Week: &week.Week{Phase: dose.Build}}}}
	if _, err := r.Phases(re, day, programme.PlanStands); err == nil {
		t.Error("a week without a session is none")
	}
}

// What hurt in an exercise at its last visit counts, though it was dropped since.
func TestDroppedStillSaid(t *testing.T) {
	r := read(t, review)
	last := &r.Visits[len(r.Visits)-1]
	last.But = []record.Exception{{Exercise: r.Asked[0].Exercise, Noted: record.Noted{RangeLost: screening.Yes}}}
	_, was := since(t, r, r.Review)
	for i := range r.Asked {
		if r.Asked[i].Exercise == r.Asked[0].Exercise {
			r.Asked[i].Until = last.Day
		}
	}
	if _, is := since(t, r, r.Review); is != was || !strings.HasSuffix(was, "ease") && !strings.HasSuffix(was, "refer") {
		t.Errorf("%q, after it was dropped %q", was, is)
	}
}

// What hurt in an exercise that is asked for no more is still part of the review, with its visits.
func TestLeftIsKept(t *testing.T) {
	r := read(t, review)
	id, last := r.Asked[0].Exercise, &r.Visits[len(r.Visits)-1]
	last.But = []record.Exception{{Exercise: id, Noted: record.Noted{RangeLost: screening.Yes}}}
	for i := range r.Asked {
		if r.Asked[i].Exercise == id {
			r.Asked[i].Until = last.Day
		}
	}
	re, err := r.Assess(last.Day + 1)
	if err != nil {
		t.Fatal(err)
	}
	if len(re.Left) != 1 || re.Left[0].Exercise != id || len(record.Bodily(re.Left[0].Log[len(re.Left[0].Log)-1])) == 0 {
		t.Errorf("left: %+v", re.Left)
	}
}

// That illness was behind days missed stands until an assessment, whatever is done or
// said at a second review of the same day.
func TestIllnessStands(t *testing.T) {
	r := read(t, review)
	day := r.Visits[len(r.Visits)-1].Day + 15
	decided := func(absence screening.Answer) string {
		t.Helper()
		r.Absence = absence
		return strings.Join(short(units.Must(r.Decide(day))), "\n")
	}
	fit, ill := decided(screening.No), decided(screening.Yes)
	r.Entries = []record.Entry{{Day: day, Edition: record.Edition(), Given: r.Given, Items: []record.Decided{{}}}}
	r.Entries[0].Rests.Visits = len(r.Visits)
	if again := decided(screening.No); again != ill || ill == fit {
		t.Errorf("a second review has undone it:\n%s\nfirst\n%s\nwithout\n%s", again, ill, fit)
	}
	r.Profile.Day = day
	assessed := decided(screening.No)
	if r.Entries = nil; assessed != decided(screening.No) {
		t.Errorf("assessed since: %s", assessed)
	}
}
