package main

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression"
	"example.org/posology/units"
)

const hurtsKnee = "pain: yes\npain_kind: 1\npain_site: knee\npain_usual: 1\npain_during: 6\npain_after: 5\npain_next_morning: 5\npain_trend: rising\npain_in: "

// stoppedStep is somebody whose step-ups hurt until the gentlest was stopped, with its name and the day
// after that review.
func stoppedStep(t *testing.T) (w tryer, name string, day units.Day) {
	t.Helper()
	w = copied(t, begun(t))
	day = units.Must(units.ParseDay("2027-01-05"))
	for name = "step-up"; ; {
		w.step(0, day.String(), "log", name+": all@6\none-arm-dumbbell-row: all@6\n"+hurtsKnee+name+"\n")
		w.step(0, (day + 1).String(), "review", "new: none\n")
		entries := recordOf(t, w.folder).Entries
		for _, item := range entries[len(entries)-1].Items {
			switch {
			case item.Exercise != exercise.ID(name):
			case item.Decision.Action == progression.StopExercise:
				return w, name, entries[len(entries)-1].Day
			case item.Decision.Instead != "":
				name = string(item.Decision.Instead)
			}
		}
		if day = entries[len(entries)-1].Day; day > units.Must(units.ParseDay("2027-03-01")) {
			t.Fatal("nothing was stopped")
		}
	}
}

// What was stopped and is done all the same, without pain, stays stopped; the page says so, and a look
// lifts it, with no more than was asked for before, also where the next visit is decided on again.
func TestDoneThoughStopped(t *testing.T) {
	w, name, day := stoppedStep(t)
	for range 3 {
		w.step(0, day.String(), "log", name+": left 5@5 right 5@5\none-arm-dumbbell-row: all@6\npain: no\n")
		said := w.step(0, (day + 1).String(), "review", "new: none\n")
		w.says(said, "lifts no stop")
		if _, paused := recordOf(t, w.folder).AskedOn(day + 5); !paused[exercise.ID(name)] {
			t.Fatalf("%s is asked for:\n%s", name, said)
		}
		r := recordOf(t, w.folder)
		day = r.Entries[len(r.Entries)-1].Day
	}
	const awaits = "a look at step-up with a hand on a rail, by a doctor or whoever is responsible, before it begins anew"
	w.says(w.step(0, day.String(), "list", ""), "Awaited: "+awaits+". Next: ")
	w.says(w.step(0, day.String(), "show", ""), "Open "+awaits, "not Open nothing")
	was := inForceOf(t, w.folder, name)
	w.step(0, day.String(), "log", "one-arm-dumbbell-row: all@6\npain: no\n")
	said := w.step(0, (day + 1).String(), "review", "new: none\nanew_"+name+": Physiotherapist E\n")
	w.says(said, "begins anew on")
	w.says(w.step(0, (day+1).String(), "list", ""), "not Awaited")
	r := recordOf(t, w.folder)
	if a := inForceOf(t, w.folder, name); a.Looked == nil || a.Sets*a.Count > was.Sets*was.Count {
		t.Errorf("%+v, was %+v", a, was)
	}
	next := r.Entries[len(r.Entries)-1].Day
	w.step(0, next.String(), "check", "hurt: no\nfebrile: no\n")
	w.step(0, next.String(), "review", "new: none\n")
	if a := inForceOf(t, w.folder, name); a.Looked == nil || a.Looked.Who != "Physiotherapist E" {
		t.Errorf("the look was lost as it was decided again: %+v", a)
	}
	w.step(0, next.String(), "log", name+": all@6\none-arm-dumbbell-row: all@6\npain: no\n")
	w.step(0, (next + 1).String(), "review", "new: none\n")
	if _, paused := recordOf(t, w.folder).AskedOn(next + 5); paused[exercise.ID(name)] {
		t.Error("stopped again though it went well")
	}
	if out := w.step(0, (next + 1).String(), "replay", ""); strings.Contains(out, "another") {
		t.Error(out)
	}
	if !slices.ContainsFunc(r.Done, func(s setlog.Set) bool { return string(s.Exercise) == name }) {
		t.Error("what was done is not kept")
	}
}

// A fracture that is told to be no longer so is held by its event: the page says until when and by what it
// is freed, and keeps who wrote that it may be loaded. A region that is none is answered with those there are.
func TestWhatAnEventHoldsIsSaid(t *testing.T) {
	w := copied(t, begun(t))
	lines := func(region string) string {
		return "areas: pressure bones\npressure: hypertension_treated\nbones: recent_fracture\nfracture_region: " + region + "\nblood_pressure: 130/80\npulse: 66\ntoday: no\n"
	}
	if said := w.step(1, "2027-01-06", "ask", lines("ribs")); !strings.Contains(said, "one of ") || !strings.Contains(said, "shoulder") {
		t.Error(said)
	}
	w.step(0, "2027-01-05", "log", "goblet-squat: all@9\none-arm-dumbbell-row: all@9\npain: no\n")
	w.step(0, "2027-01-06", "review", "new: fracture\n")
	gone := well + "no_longer: recent_fracture\nareas: pressure bones\npressure: hypertension_treated\nbones: none\nblood_pressure: 130/80\npulse: 66\ntoday: no\n"
	said := w.step(0, "2027-01-07", "ask", gone)
	w.says(said, "What happened holds it all the same.")
	if n := len(recordOf(t, w.folder).Profile.Clearances); n > 0 {
		t.Errorf("%d clearances", n)
	}
	w = copied(t, w.folder)
	w.step(0, "2027-01-07", "ask", gone+"letter_recent_fracture: Surgeon B\n")
	if c := recordOf(t, w.folder).Profile.Clearances; len(c) != 1 || c[0].Who != "Surgeon B" {
		t.Errorf("%+v\n%s", c, said)
	}
}

// The doctor reads at the end what was stopped on the way, why, and who looked; and on which day a check allowed no session.
func TestGoodbyeSaysWhatWasStopped(t *testing.T) {
	w, name, day := stoppedStep(t)
	letter := func(day units.Day) string {
		t.Helper()
		out := copied(t, w.folder).step(0, day.String(), "end", "reached: no\n", "-for", "doctor")
		return strings.Join(strings.Fields(out), " ")
	}
	before := copied(t, w.folder) // with no decision but that of the end
	p, err := before.folder.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	p.Record = p.Record.AsOf(p.Record.Entries[len(p.Record.Entries)-1])
	if c, err := p.Change(); err != nil || before.folder.Write(c) != nil {
		t.Fatal(err)
	}
	w.says(before.step(0, day.String(), "end", "reached: no\n", "-for", "doctor"), "a hand on a rail was stopped from ")
	w.says(letter(day), "a hand on a rail was stopped from "+page.Day(day)+" on: It spoke for less", "not Looked at by", "not nothing in what was recorded")
	w.step(0, day.String(), "log", "one-arm-dumbbell-row: all@6\npain: no\n")
	w.step(0, (day + 1).String(), "review", "new: none\nanew_"+name+": Physiotherapist E\n")
	w.says(letter(day+1), "Looked at by Physiotherapist E on "+page.Day(day+1)+", and begun anew.")
	w.step(0, (day + 2).String(), "check", well+"blood_pressure: 134/82\npulse: 70\ntoday: yes\nfebrile: yes\nunwell: no\n")
	w.says(letter(day+2), "not allowed no session") // it says what was found today
	w.says(letter(day+3), "The check of "+page.Day(day+2)+" allowed no session: ")
}
