package main

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
)

func dayOf(t *testing.T, text string) units.Day {
	t.Helper()
	d, err := units.ParseDay(text)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// planned are the sessions that a record has had up to a day.
func planned(t *testing.T, r record.Record, day string) []programme.PlannedSession {
	t.Helper()
	re, err := r.Assess(dayOf(t, day))
	if err != nil {
		t.Fatal(err)
	}
	return re.Attended.Sessions
}

// Who trains on other days from now on says so at week, though the next visit was decided for: that visit is
// decided for the first of them where it comes before, and else stays. No session is counted twice or
// forgotten, none asked for twice, the dates of the plan stay, and every decision comes out again.
func TestDaysMove(t *testing.T) {
	for days, tt := range map[string]struct {
		next, after string // visits: the one that was decided for, and the one after
	}{
		"2027-01-07 2027-01-11": {"2027-01-07", "2027-01-11"}, // Thursday and Monday, Friday was decided for
		"2027-01-08 2027-01-11": {"2027-01-08", "2027-01-11"},
		"2027-01-11 2027-01-14": {"2027-01-08", "2027-01-11"}, // from next week on
	} {
		f := begun(t) // Tuesdays and Fridays
		step := tryer{t, f}.step
		step(0, "2027-01-05", "log", calm)
		step(0, "2027-01-06", "review", "new: none\n")
		was := recordOf(t, f)
		if said := step(1, "2027-01-06", "week", "new: none\n"); !strings.Contains(said, "decided for already") {
			t.Error(said)
		}
		step(0, "2027-01-06", "week", "new: none\ndays: "+days+"\n")
		r := recordOf(t, f)
		if r.Began != was.Began || r.Review != was.Review {
			t.Errorf("%s: the plan began on %s, review on %s; before %s and %s", days, r.Began, r.Review, was.Began, was.Review)
		}
		list, _ := r.AskedOn(dayOf(t, tt.next))
		if before, _ := was.AskedOn(dayOf(t, "2027-01-08")); len(list) != len(before) {
			t.Errorf("%s: %d doses, before %d", days, len(list), len(before))
		}
		for i, a := range list {
			if slices.ContainsFunc(list[:i], func(b record.Asked) bool { return b.Exercise == a.Exercise }) || a.From > dayOf(t, tt.next) {
				t.Errorf("%s: %+v", days, a)
			}
		}
		if said := step(0, "2027-01-06", "list", ""); !strings.Contains(said, "from "+tt.next+" on") {
			t.Errorf("%s: %s", days, said)
		}
		step(0, tt.next, "log", calm)
		step(0, tt.next, "review", "new: none\n")
		r = recordOf(t, f)
		if got := r.Entries[len(r.Entries)-1].Day; got.String() != tt.after {
			t.Errorf("%s: decided for %s, want %s", days, got, tt.after)
		}
		var got []string
		for _, s := range planned(t, r, "2027-01-10") {
			if got = append(got, s.Day.String()); s.Missed != screening.No {
				t.Errorf("%s: %s is missed", days, s.Day)
			}
		}
		if !slices.Equal(got, []string{"2027-01-05", tt.next}) {
			t.Errorf("%s: sessions %v", days, got)
		}
		step(0, "2027-01-10", "replay", "")
	}
}

// No new day lies within 48 hours of the last visit; of a plan that goes on none of another either, round
// the week, or of the visit that stays. Of those offered for a new plan it is the week that chooses.
func TestDaysApart(t *testing.T) {
	f := begun(t)
	step := tryer{t, f}.step
	step(0, "2027-01-05", "log", calm)
	if said := step(1, "2027-01-05", "week", "new: none\nreached: no\ndays: 2027-01-06 2027-01-09\n"); !strings.Contains(said, "day of rest") {
		t.Error(said)
	}
	step(0, "2027-01-06", "review", "new: none\n")
	for _, day := range []string{"2027-01-06 2027-01-09", "2027-01-09 2027-01-12", "2027-01-08 2027-01-09", "2027-01-08 2027-01-14"} {
		if said := step(1, "2027-01-06", "week", "new: none\ndays: "+day+"\n"); !strings.Contains(said, "day of rest") {
			t.Errorf("%s: %s", day, said)
		}
	}
}
