package main

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/beside"
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

// A day on which somebody is unwell changes nothing for good, though nobody comes on it: the next review can be kept,
// asks once for what was never done yet, as before, and walking is as far as it was.
func TestUnwellAndNotThere(t *testing.T) {
	for name, check := range map[string]string{"unwell": "blood_pressure: 134/82\npulse: 70\ntoday: yes\nfebrile: no\nunwell: yes\n", "high": "blood_pressure: 172/98\nblood_pressure_again: 172/98\npulse: 70\ntoday: yes\nfebrile: no\nunwell: no\n"} {
		w := copied(t, begun(t))
		p, err := w.folder.Read("hall")
		if err != nil {
			t.Fatal(err)
		}
		in := p.Record.Beside.InForce
		i := slices.IndexFunc(in, func(b beside.Item) bool { return b.Track == "walking" })
		in[i].Step, in[i].Met = 5, 2
		if c, err := p.Change(); err != nil || w.folder.Write(c) != nil {
			t.Fatal(err)
		}
		w.step(0, "2027-01-05", "log", calm)
		w.step(0, "2027-01-06", "review", "new: none\n")
		was := inForce(recordOf(t, w.folder), 1<<20)
		w.step(0, "2027-01-08", "check", well+check)
		w.step(0, "2027-01-08", "review", "new: none\n")
		w.step(0, "2027-01-11", "review", "new: none\n")
		r := recordOf(t, w.folder)
		is := inForce(r, 1<<20)
		for _, a := range is {
			k := slices.IndexFunc(was, func(b record.Asked) bool { return b.Exercise == a.Exercise })
			if k < 0 {
				t.Fatalf("%s: %s was not asked for", name, a.Exercise)
			}
			was[k].From, was[k].Finding, a.Finding = a.From, nil, nil // what is looked for was not looked for that day
			if !same(was[k], a) {
				t.Errorf("%s, %s: %+v, was %+v", name, a.Exercise, a, was[k])
			}
		}
		if len(is) != len(was) {
			t.Errorf("%s: %d are asked for, %d were", name, len(is), len(was))
		}
		if got := r.Beside.InForce[i]; got.Step != 5 || got.Met != 2 {
			t.Errorf("%s: walking at step %d, %d days met", name, got.Step, got.Met)
		}
	}
}
