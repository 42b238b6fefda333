package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/posology/units"
)

// Who looked at a stopped exercise is kept, with the day: what begins anew stands on the
// handout and the diary of that decision, and does so whenever they are printed again.
func TestLookedIsKept(t *testing.T) {
	f := begun(t)
	step := func(day, step, lines string, args ...string) string {
		t.Helper()
		status, out, errs := calls("", append([]string{"-dir", string(f), step, "hall", "-day", day, "-yes", "-answers", answers(t, "# invented\n"+lines)}, args...)...)
		if status != 0 {
			t.Fatalf("%s: %d, %s", step, status, errs)
		}
		return out
	}
	pain := "pain: yes\npain_kind: 1\npain_site: knee\npain_usual: 1\npain_during: 6\npain_after: 5\npain_next_morning: 5\npain_trend: rising\npain_in: "
	step("2027-01-05", "log", "step-up: all@6\none-arm-dumbbell-row: all@6\npain: no\n")
	step("2027-01-06", "review", "new: none\n")
	stopped, name := false, "step-up" // it gives way to a gentler one first
	for _, days := range [][2]string{{"2027-01-08", "2027-01-09"}, {"2027-01-12", "2027-01-13"}, {"2027-01-15", "2027-01-16"}, {"2027-01-19", "2027-01-20"}, {"2027-01-22", "2027-01-23"}} {
		step(days[0], "log", name+": all@6\none-arm-dumbbell-row: all@6\n"+pain+name+"\n")
		if out := step(days[1], "review", "new: none\nanew_"+name+": Physiotherapist E\n"); strings.Contains(out, "begins anew on") {
			stopped = true
			break
		}
		p, err := f.Read("hall")
		if err != nil {
			t.Fatal(err)
		}
		for _, a := range inForce(p.Record, units.Must(units.ParseDay(days[1]))+3) {
			if strings.Contains(string(a.Exercise), "step-up") {
				name = string(a.Exercise)
			}
		}
	}
	if !stopped {
		t.Fatal("nothing was stopped")
	}
	p, err := f.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	var looked string
	for _, a := range p.Record.Asked {
		if a.Looked != nil {
			looked = string(a.Exercise) + " " + a.Looked.Who + " " + a.Looked.Day.String()
		}
	}
	if !strings.HasPrefix(looked, name+" Physiotherapist E 2027-01-") {
		t.Errorf("kept: %q", looked)
	}
	for _, reader := range []string{"client", "diary"} {
		if out := step("2027-02-01", "show", "", "-for", reader); !strings.Contains(strings.ToLower(out), "step-up") || !strings.Contains(strings.Join(strings.Fields(out), " "), "begins anew: by Physiotherapist E") {
			t.Errorf("%s:\n%s", reader, out)
		}
	}
	step("2027-02-01", "show", "", "-html")
	pages, _ := filepath.Glob(filepath.Join(string(f), "papers", "*handout.html"))
	if text, err := os.ReadFile(pages[len(pages)-1]); err != nil || !strings.Contains(string(text), ". Step-up with a hand on a rail</h3>") {
		t.Errorf("%v: no step-up in %s", err, pages)
	}
	if out := step("2027-02-01", "replay", ""); strings.Contains(out, "another") {
		t.Error(out)
	}
}

// What was never done comes back once, however often a day is decided on.
func TestComesBackOnce(t *testing.T) {
	w := copied(t, begun(t))
	w.step(0, "2027-01-05", "log", "one-arm-dumbbell-row: all@6\npain: no\n")
	w.step(0, "2027-01-07", "review", "new: none\n")
	w.step(0, "2027-01-08", "log", "one-arm-dumbbell-row: all@6\npain: no\n")
	w.step(0, "2027-01-11", "review", "new: injury\n")
	w.step(0, "2027-01-11", "review", "new: none\n"+looked)
}

// A new plan begins though something that was asked for was never done: it comes back once,
// without the end that it was given.
func TestWeekAfterSomethingNotDone(t *testing.T) {
	f := begun(t)
	for _, one := range [][3]string{
		{"2027-01-05", "log", "one-arm-dumbbell-row: all@6\npain: no\n"}, {"2027-01-08", "log", "one-arm-dumbbell-row: all@6\npain: no\n"},
		{"2027-01-10", "week", "new: none\n"},
	} {
		status, out, errs := calls("", "-dir", string(f), one[1], "hall", "-day", one[0], "-yes", "-answers", answers(t, one[2]))
		if status != 0 || errs != "" {
			t.Fatalf("%s: %d, %s\n%s", one[1], status, errs, out)
		}
	}
	p, err := f.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	for _, a := range inForce(p.Record, units.Must(units.ParseDay("2027-01-12"))) {
		if a.Exercise == "goblet-squat" && a.Until == 0 {
			n++
		}
	}
	if n != 1 {
		t.Errorf("goblet-squat is asked for %d times", n)
	}
}
