package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/examples/internal/page"
	"example.org/posology/units"
)

// What the first course of a man who lives alone showed: a visit is logged once, one visit
// is no plural, and of the work beside lifting there are no more days than there were.
func TestAfterOneVisit(t *testing.T) {
	f := begun(t)
	step := func(want int, day, step, lines string, args ...string) string {
		t.Helper()
		status, out, errs := calls("", append([]string{"-dir", string(f), step, "hall", "-day", day, "-answers", answers(t, "# invented\n"+lines)}, args...)...)
		if status != want {
			t.Fatalf("%s: %d, %s", step, status, errs)
		}
		return strings.Join(strings.Fields(out+errs), " ")
	}
	step(0, "2027-01-06", "log", "goblet-squat: 10@9\npain: no\n", "-yes")
	for _, day := range []string{"2027-01-05", "2027-01-06"} {
		if said := step(1, day, "log", "goblet-squat: 10@9\npain: no\n"); !strings.Contains(said, "the visit of 2027-01-06 is logged already") {
			t.Errorf("%s: %s", day, said)
		}
	}
	for reader, want := range map[string]string{"client": "You have trained once, on Wednesday 6 January 2027.", "doctor": "strength training of this person: one visit, on Wednesday 6 January 2027."} {
		if said := step(0, "2027-01-07", "review", "new: none\n", "-for", reader); !strings.Contains(said, want) {
			t.Errorf("%s: no %q in %s", reader, want, said)
		}
	}
	p, err := f.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	track := p.Record.Beside.InForce[0].Track
	for days, want := range map[int]int{3: 0, 4: 0, 5: 1, 9: 1} { // from the day of the plan on
		said := step(want, "2027-01-07", "review", fmt.Sprintf("new: none\nbeside_%s: %d days, least 10\n", track, days))
		if refused := strings.Contains(said, fmt.Sprintf("%d days since it was looked at last are too many", days)); refused != (want == 1) {
			t.Errorf("%d days: %s", days, said)
		}
	}
}

// No day beside lifting is told twice, and none makes it harder while something stands.
func TestBesideCountsOnce(t *testing.T) {
	base := copied(t, begun(t))
	base.step(0, "2027-01-05", "log", calm)
	track := recordOf(t, base.folder).Beside.InForce[0].Track
	told := func(days int, more string) string {
		return fmt.Sprintf("new: none\nbeside_%s: %d days, least 60%s\n", track, days, more)
	}
	kept := func(w tryer) beside.Item { return recordOf(t, w.folder).Beside.InForce[0] }
	was, w := kept(base), copied(t, base.folder)
	w.step(0, "2027-01-07", "review", told(3, ""))
	if now := kept(w); now.Step <= was.Step && now.Met != was.Met+3 {
		t.Errorf("%+v after %+v", now, was)
	}
	for _, trouble := range []string{"nearly fell", "pain", "nearly fell, pain"} { // and the letters name it
		w := copied(t, base.folder)
		said := w.step(0, "2027-01-07", "review", told(3, ", "+trouble), "-for", "doctor", "-html")
		want := fmt.Sprintf("Beside lifting (%s), told on Thursday 7 January 2027: %s", track, strings.ReplaceAll(trouble, ",", ""))
		w.says(said, want)
		w.says(w.step(0, "2027-01-07", "show", "", "-for", "doctor"), want)
	}
	w.step(0, "2027-01-08", "log", calm)
	w.says(w.step(1, "2027-01-09", "review", told(3, "")), "3 days since it was looked at last are too many: 2 at most")
	for _, stands := range []string{"new: faint\n", "new: fall\nfall_head: no\nfall_out: no\n", ""} {
		w, more := copied(t, base.folder), ""
		if stands == "" { // what happens there stops all
			more = ", fell"
		}
		w.step(0, "2027-01-06", "review", cmp.Or(stands, "new: none\n"))
		w.step(0, "2027-01-07", "review", told(3, more))
		if now := kept(w); now.Step > was.Step || now.Met > was.Met {
			t.Errorf("%q: %+v after %+v", stands, now, was)
		}
	}
}

// A new plan on the same days of the week goes on with them, and on other days it begins anew:
// either way what was planned before is still counted.
func TestDaysTypedAgain(t *testing.T) {
	for _, tt := range []struct{ days, end string }{
		{"2027-01-12 2027-01-15", "4 visits since Tuesday 5 January 2027; planned: 4."},
		{"2027-01-11 2027-01-14", "4 visits since Tuesday 5 January 2027; planned: 4."},
	} {
		f := begun(t)
		first, second, _ := strings.Cut(tt.days, " ")
		for _, one := range [][3]string{
			{"2027-01-05", "log", "goblet-squat: 10@9\npain: no\n"}, {"2027-01-08", "log", "goblet-squat: 10@9\npain: no\n"}, {"2027-01-10", "week", "new: none\ndays: " + tt.days + "\n"},
			{first, "log", "goblet-squat: 10@9\npain: no\n"}, {second, "log", "goblet-squat: 10@9\npain: no\n"}, {"2027-01-16", "end", ""},
		} {
			status, out, errs := calls("", "-dir", string(f), one[1], "hall", "-day", one[0], "-yes", "-answers", answers(t, "# invented\n"+one[2]))
			if status != 0 || errs != "" {
				t.Fatalf("%s: %d, %s", one[1], status, errs)
			}
			if out = strings.Join(strings.Fields(out), " "); one[1] == "week" && !strings.Contains(out, "The phase familiarise goes on. To build: In the phase since 2027-01-05, until 2027-01-19 at least: not met.") {
				t.Errorf("it is not said why no phase begins:\n%s", out)
			}
			if one[1] == "end" && !strings.Contains(out, tt.end) {
				t.Errorf("%s: no %q in %s", tt.days, tt.end, out)
			}
		}
	}
}

// Weights that came to be there later are told with a new plan, beside those from before or
// in their place, and the decisions from before come out again.
func TestOtherWeights(t *testing.T) {
	w := copied(t, begun(t))
	w.step(0, "2027-01-05", "log", calm)
	was := recordOf(t, w.folder).Kit
	w.step(0, "2027-01-06", "week", "new: none\n")
	if now := recordOf(t, w.folder).Kit; !now.Equal(was) {
		t.Errorf("%+v, after nothing was told of it", now)
	}
	w.step(0, "2027-01-08", "log", calm)
	w.says(w.step(1, "2027-01-09", "week", "new: none\nkit: 2 times 5 kg\n"), `is not of the form "2 x 4 kg"`)
	w.step(0, "2027-01-09", "week", "new: none\nkit: + 2 x 5 kg\n")
	if now := recordOf(t, w.folder).Kit; len(now.Dumbbells) != len(was.Dumbbells)+1 || now.Dumbbells[len(was.Dumbbells)].Mass.Mass != 5*units.Kilogram {
		t.Errorf("%+v", now)
	}
	w.step(0, "2027-01-12", "log", calm)
	w.step(0, "2027-01-13", "week", "new: none\nkit: 2 x 500 g, 2 x 1.5 kg\n")
	if now := recordOf(t, w.folder).Kit; len(now.Dumbbells) != 2 {
		t.Errorf("%+v", now)
	}
	w.says(w.step(0, "2027-01-13", "replay", ""), "not does not come out again")
}

// Who comes back from an illness reads not to train before the questions; days away are those of
// the exercise, which may have been left out of visits.
func TestBackAfterDaysAway(t *testing.T) {
	base := copied(t, begun(t))
	base.step(0, "2027-01-05", "log", calm)
	base.step(0, "2027-01-06", "review", "new: none\n")
	ill, away := copied(t, base.folder), copied(t, base.folder)
	ill.says(ill.step(0, "2027-01-30", "review", "new: none\nabsence: yes\n", "-for", "client"), "Since you were ill we ask a few questions first; please wait with the exercises until then.")
	away.says(away.step(0, "2027-01-30", "review", "new: none\nabsence: no\n"), "28 days since it was last done. The ladder", "not since the last session")
}

// Of what a doctor is asked while training goes on is neither said that it is held, nor asked
// what has to be known before it.
func TestAskedWhileItGoesOn(t *testing.T) {
	w := copied(t, begun(t))
	w.step(0, "2027-01-05", "log", calm)
	w.step(0, "2027-01-06", "ask", strings.Replace(asked, "more_signs: none", "more_signs: unexplained_weight_loss", 1))
	w.says(w.step(0, "2027-01-06", "list", ""), "An answer is still to come: the doctor, with being settled; with it: ask.", "not Held")
	w.says(w.step(0, "2027-01-06", "review", "new: none\n", "-for", "doctor"), "and may weights be lifted before that?", "Until I hear from you: training goes on")
}

// Of days that are named for a new plan those without a session are none of its days: who comes
// to every session has missed none, and the next one keeps its day of rest.
func TestDaysThatHoldNoSession(t *testing.T) {
	w := copied(t, begun(t))
	w.step(0, "2027-01-05", "log", calm)
	said := w.step(0, "2027-01-06", "week", "new: none\ndays: 2027-01-07 2027-01-08 2027-01-11 2027-01-12\n")
	w.says(said, "No session falls on Friday 8 January 2027: the plan goes on without that day.", "No session falls on Tuesday 12 January 2027", "not No session falls on Thursday 7", "not No session falls on Monday 11")
	for _, day := range []string{"2027-01-07", "2027-01-11", "2027-01-14"} {
		w.step(0, day, "log", calm)
		said := w.step(0, (on(day) + 1).String(), "review", "new: none\n")
		if w.says(said, "not - missed:"); strings.Contains(said, "THE WEEKS TO COME - "+page.Day(on(day)+1)) {
			t.Errorf("%s: no day of rest after it", day)
		}
	}
	if days := recordOf(t, w.folder).Days; len(days) != 2 {
		t.Errorf("days of the plan: %v", days)
	}
}

// Somebody who stops between a new plan and its first day is said goodbye to.
func TestEndBeforeANewPlan(t *testing.T) {
	f := begun(t)
	for _, one := range [][3]string{{"2027-01-05", "log", "goblet-squat: 10@9\npain: no\n"}, {"2027-01-06", "week", "new: none\ndays: 2027-01-11\n"}, {"2027-01-07", "end", ""}} {
		if status, _, errs := calls("", "-dir", string(f), one[1], "hall", "-day", one[0], "-yes", "-answers", answers(t, "# invented\n"+one[2])); status != 0 || errs != "" {
			t.Errorf("%s: %d, %s", one[1], status, errs)
		}
	}
}

// What was tested stands in the letters, with how.
func TestTestsInLetters(t *testing.T) {
	f := begun(t)
	if status, _, errs := calls("", "-dir", string(f), "test", "hall", "-day", "2027-01-04", "-yes", "-answers", answers(t, "grip: right dominant 24 kg, handle 2\n30-s_chair_stand: used arms\n")); status != 0 {
		t.Fatal(errs)
	}
	_, out, errs := calls("", "-dir", string(f), "visit", "hall", "-day", "2027-01-04", "-answers", answers(t, "# invented\n"), "-for", "doctor")
	for _, want := range []string{"TESTS OF FUNCTION", "- 30-s chair stand: used arms, on Monday 4 January 2027", "- grip, right: 24 kg, handle 2, on Monday 4 January 2027"} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q in %s%s", want, errs, out)
		}
	}
}

// What goes home at the end agrees with itself, brings nothing that nobody has shown yet, and
// asks of a hold for no reserve; days are written as everywhere.
func TestPapersOfTheCourse(t *testing.T) {
	f := begun(t)
	step := func(day, step, lines, reader string) string {
		t.Helper()
		status, out, errs := calls("", "-dir", string(f), step, "hall", "-day", day, "-yes", "-answers", answers(t, "# invented\n"+lines), "-for", reader)
		if status != 0 || errs != "" {
			t.Fatalf("%s: %d, %s", step, status, errs)
		}
		return out
	}
	step("2027-01-04", "test", "30-s_chair_stand: 11 reps\n", "file")
	step("2027-01-05", "log", "goblet-squat: all@6\nfarmers-carry: all\npain: no\n", "file")
	out := step("2027-01-06", "review", "new: none\n", "client")
	if strings.Contains(out, "2027-01-04.") || !strings.Contains(strings.Join(strings.Fields(out), " "), "11 reps on Monday 4 January 2027") {
		t.Errorf("days:\n%s", out)
	}
	if strings.Contains(out, "how many more you could have done") {
		t.Errorf("a reserve of what is not counted:\n%s", out)
	}
	step("2027-01-08", "log", "goblet-squat: all@6\npain: no\n", "file")
	p, err := f.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	p.Record.Beside.InForce = slices.DeleteFunc(slices.Clone(p.Record.Beside.InForce), func(i beside.Item) bool { return i.Track == "stance" })
	if c, err := p.Change(); err != nil || f.Write(c) != nil {
		t.Fatal(err)
	}
	out = step("2027-01-10", "end", "", "client")
	if !strings.Contains(out, "Do    1 set") || strings.Contains(out, "2 to 3 sets") || strings.Contains(out, "STANDING WITH") || !strings.Contains(out, "BALANCE\n") {
		t.Errorf("at the end:\n%s", out)
	}
	if _, out, _ = calls("", "-dir", string(f), "end", "hall", "-day", "2027-01-10", "-yes", "-answers", answers(t, "# invented\n")); !strings.Contains(out, "Nothing is to be written.") {
		t.Errorf("twice:\n%s", out)
	}
}
