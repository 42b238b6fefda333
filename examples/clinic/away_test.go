package main

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/progression/record"
)

// Days away are told at a review, before or after the next visit was decided for: it is decided for the first
// day of the plan on which the person is there, nothing of them is missed, and what was
// told can be told anew or taken back while it has not begun.
func TestDaysAway(t *testing.T) {
	f := begun(t) // Tuesdays and Fridays
	step := tryer{t, f}.step
	next := func(want string, away ...record.Away) {
		t.Helper()
		r := recordOf(t, f)
		if got := r.Entries[len(r.Entries)-1]; got.Day.String() != want || !slices.Equal(r.Away, away) || !slices.Equal(got.Given.Away, away) {
			t.Errorf("decided for %s with %v, away %v; want %s", got.Day, got.Given.Away, r.Away, want)
		}
	}
	away := func(from, until string) record.Away {
		return record.Away{From: dayOf(t, from), Until: dayOf(t, until)}
	}
	step(0, "2027-01-05", "log", calm)
	step(0, "2027-01-06", "review", "new: none\naway: 2027-01-07 2027-01-13\n")
	next("2027-01-15", away("2027-01-07", "2027-01-13"))
	if said := step(1, "2027-01-06", "review", "new: none\n"); !strings.Contains(said, "decided for already") {
		t.Error(said)
	}
	step(0, "2027-01-06", "review", "new: none\naway: none\n")
	next("2027-01-08")
	step(0, "2027-01-06", "review", "new: none\naway: 2027-01-14 2027-01-11\n") // the visit of Friday stays
	next("2027-01-08", away("2027-01-11", "2027-01-14"))
	for _, bad := range []string{"2027-01-06 2027-01-09", "2027-01-20", "2027-01-20 2027-01-21 2027-01-22", "soon"} {
		step(1, "2027-01-06", "review", "new: none\naway: "+bad+"\n")
	}
	step(0, "2027-01-08", "log", calm)
	step(0, "2027-01-09", "review", "new: none\n")
	next("2027-01-15", away("2027-01-11", "2027-01-14"))
	step(0, "2027-01-15", "log", calm)
	step(0, "2027-01-16", "review", "new: none\naway: 2027-01-17 2027-01-30\n")
	if said := step(0, "2027-02-02", "list", ""); !strings.Contains(said, "Next: review.") { // nobody has asked what was behind it
		t.Error(said)
	}
	step(1, "2027-02-02", "review", "new: none\n")
	step(0, "2027-02-02", "review", "new: none\nabsence: no\n")
	next("2027-02-02", away("2027-01-11", "2027-01-14"), away("2027-01-17", "2027-01-30"))
	step(0, "2027-02-02", "log", calm)
	if said := step(0, "2027-02-03", "review", "new: none\n"); strings.Contains(said, "- missed: ") {
		t.Error(said)
	}
	next("2027-02-05", away("2027-01-11", "2027-01-14"), away("2027-01-17", "2027-01-30"))
	step(0, "2027-02-03", "replay", "")
}
