package main

import (
	"errors"
	"fmt"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/guideline"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/units"
)

// Weights that were bought are those of the next dose, an exercise ends and another begins,
// nothing leaves all as it is, and every earlier decision still comes out.
func TestChange(t *testing.T) {
	base := copied(t, begun(t))
	base.step(0, "2027-01-05", "log", "goblet-squat: all@9\none-arm-dumbbell-row: all@9\npain: no\n")
	base.step(0, "2027-01-06", "review", "new: none\n")
	was := recordOf(t, base.folder)
	if said := base.step(0, "2027-01-07", "change", ""); !strings.Contains(said, "Nothing is to be written.") {
		t.Error(said)
	}

	w := copied(t, base.folder)
	w.step(0, "2027-01-07", "change", "kit: 2 x 500 g, 2 x 1.5 kg, 2 x 3 kg\ngoal: strength\nminutes: 40\nbody_mass: 70 kg\n")
	is := recordOf(t, w.folder)
	if is.Kit.Dumbbells[1].Mass.Mass != 3*units.Kilogram/2 || is.Goal != guideline.Strength || is.Minutes != 40 || is.BodyMass != 70*units.Kilogram {
		t.Errorf("%+v", is.Given)
	}
	if a := inForceOf(t, w.folder, "goblet-squat"); a.Load*2%units.Kilogram != 0 || a.Load == units.Kilogram {
		t.Errorf("a weight that is gone is asked for: %+v", a)
	}
	w.step(0, "2027-01-07", "replay", "")

	w = copied(t, base.folder)
	w.step(0, "2027-01-07", "change", "ends: goblet-squat\nbegins: biceps curl\n")
	is = recordOf(t, w.folder)
	if got := askedFor(is, ever); slices.Contains(got, "goblet-squat") || !slices.Contains(got, "biceps-curl") || len(got) != len(askedFor(was, ever)) {
		t.Errorf("%v", got)
	}
	w.step(0, "2027-01-07", "replay", "")
	w.step(0, "2027-01-08", "log", "biceps-curl: 8@9\npain: no\n")
	w.step(0, "2027-01-09", "review", "new: none\n")
	if got := askedFor(recordOf(t, w.folder), ever); slices.Contains(got, "goblet-squat") || !slices.Contains(got, "biceps-curl") {
		t.Errorf("after a visit: %v", got)
	}
	w.step(0, "2027-01-09", "change", "begins: goblet squat\n") // no more than before
	if then, now := inForceOf(t, base.folder, "goblet-squat"), inForceOf(t, w.folder, "goblet-squat"); now.Load > then.Load || now.Sets > then.Sets || now.Count > then.Count {
		t.Errorf("%+v, then %+v", then, now)
	}

	for lines, want := range map[string]string{
		"begins: goblet-squat\n":                           "asked for already",
		"ends: " + strings.Join(askedFor(was, ever), ", "): "end is the goodbye",
		"kit: 2 kg\n": "2 x 4 kg",
	} {
		w := copied(t, base.folder)
		if said := w.step(1, "2027-01-07", "change", lines); !strings.Contains(said, want) {
			t.Errorf("%s: %s", lines, said)
		}
	}
}

// What could not be read, or nobody says is right, leaves what was there: a line that was
// typed wrong and then left empty lost the weights.
func TestChangeKeepsWhatWas(t *testing.T) {
	w := copied(t, begun(t))
	w.step(0, "2027-01-04", "change", "body_mass: 70 kg\nexercises: goblet-squat, toe-raise\n")
	was := recordOf(t, w.folder).Given
	for _, typed := range []string{
		"2 x 4 kg, two more\n\n\n\n\n\ny\n",       // the kit, twice
		"\n\n\nseventy\n\n\ny\n",                  // the body mass, twice
		"\n\n\n700 kg\nno\n\ny\n",                 // and one that is not right
		"\n\n\n\ngoblet-squat, none of it\n\ny\n", // the exercises, twice
	} {
		_, out, errs := calls(typed, "-dir", string(w.folder), "-day", "2027-01-04", "change", "hall")
		if is := recordOf(t, w.folder).Given; !reflect.DeepEqual(is, was) || !strings.Contains(out, "Nothing is to be written.") {
			t.Errorf("%q: %s%s\n%+v", typed, errs, out, is)
		}
	}
}

// Before anybody has trained the plan is made anew, and no week of the old one goes on.
func TestChangeUnbegun(t *testing.T) {
	for lines, want := range map[string]string{"kit: 2 x 2 kg\n": "", "minutes: 30\n": "", "exercises: biceps curl\n": "biceps-curl"} {
		w := copied(t, begun(t))
		if said := w.step(0, "2027-01-04", "change", lines); !strings.Contains(said, "Next: visit.") {
			t.Error(said)
		}
		if said := w.step(1, "2027-01-04", "week", ""); !strings.Contains(said, "visit comes again") {
			t.Errorf("%s: %s", lines, said)
		}
		w.step(0, "2027-01-04", "visit", "looked: nothing\n")
		w.step(0, "2027-01-04", "week", "")
		if got := askedFor(recordOf(t, w.folder), ever); len(got) == 0 || want != "" && !slices.Equal(got, []string{want}) {
			t.Errorf("%s: %v", lines, got)
		}
	}
}

// To end an exercise that was stopped and to begin it is no way round somebody's look.
func TestChangeIsNoWayRoundAStop(t *testing.T) {
	w := copied(t, begun(t))
	pain := "pain: yes\npain_kind: 1\npain_site: knee\npain_usual: 1\npain_during: 6\npain_after: 5\npain_next_morning: 5\npain_trend: rising\npain_in: "
	w.step(0, "2027-01-05", "log", "step-up: all@6\none-arm-dumbbell-row: all@6\npain: no\n")
	w.step(0, "2027-01-06", "review", "new: none\n")
	stopped, day := "", units.Must(units.ParseDay("2027-01-08"))
	for name := "step-up"; stopped == ""; day += 2 { // it gives way to gentler ones first
		w.step(0, day.String(), "log", name+": all@6\none-arm-dumbbell-row: all@6\n"+pain+name+"\n")
		w.step(0, (day + 1).String(), "review", "new: none\n")
		entries := recordOf(t, w.folder).Entries
		for _, item := range entries[len(entries)-1].Items {
			if item.Decision.Action == progression.StopExercise {
				stopped = string(item.Exercise)
			} else if next := item.Decision.Next; next != nil && strings.Contains(string(next.Exercise), "step-up") {
				name = string(next.Exercise)
			}
		}
	}
	w.step(0, day.String(), "change", "ends: "+stopped+"\n")
	if said := w.step(1, day.String(), "change", "begins: "+stopped+"\n"); !strings.Contains(said, "nobody has looked at it") {
		t.Error(said)
	}
	w.step(0, day.String(), "change", "begins: "+stopped+"\nanew_"+stopped+": Physiotherapist E\n")
	if a := inForceOf(t, w.folder, stopped); a.Looked == nil || a.Looked.Who != "Physiotherapist E" {
		t.Errorf("%+v", a)
	}
}

// What gave way because it hurt more than once begins again only once somebody has looked at it or
// at what came in its place, and what came in its place then makes room: both stood there, and of
// what was asked for already a second line made the record unreadable.
func TestWhatStoodInMakesRoom(t *testing.T) {
	w := copied(t, begun(t))
	pain := "pain: yes\npain_kind: 1\npain_site: knee\npain_usual: 1\npain_during: 6\npain_after: 5\npain_next_morning: 5\npain_trend: rising\npain_in: step-up\n"
	gentler, day := "", units.Must(units.ParseDay("2027-01-05"))
	for ; gentler == "" && day < units.Must(units.ParseDay("2027-02-05")); day += 2 {
		w.step(0, day.String(), "log", "step-up: all@6\none-arm-dumbbell-row: all@6\n"+pain)
		w.step(0, (day + 1).String(), "review", "new: none\n")
		entries := recordOf(t, w.folder).Entries
		for _, item := range entries[len(entries)-1].Items {
			if item.Exercise == "step-up" {
				gentler = string(item.Decision.Instead)
			}
		}
	}
	if said := w.step(1, day.String(), "change", "begins: step-up\n"); gentler == "" || !strings.Contains(said, "nobody has looked at it") {
		t.Fatalf("%q: %s", gentler, said)
	}
	said := w.step(0, day.String(), "change", "begins: step-up\nanew_step-up: Physiotherapist E\n")
	got := askedFor(recordOf(t, w.folder), ever)
	if w.says(said, gentler+" ends: it was done in the place of step-up."); slices.Contains(got, gentler) || !slices.Contains(got, "step-up") {
		t.Errorf("%v", got)
	}
	if a := inForceOf(t, w.folder, "step-up"); a.Looked == nil || a.Looked.Who != "Physiotherapist E" {
		t.Errorf("%+v", a)
	}
	w.step(0, day.String(), "replay", "")

	w = copied(t, begun(t)) // who wants what cannot be dosed is told what could be, and nothing else changes
	w.step(0, "2027-01-05", "log", "goblet-squat: all@9\none-arm-dumbbell-row: all@9\npain: no\n")
	w.step(0, "2027-01-06", "review", "new: none\n")
	was := askedFor(recordOf(t, w.folder), ever)
	said = w.step(0, "2027-01-06", "change", "begins: band-hip-abduction\n")
	if got := askedFor(recordOf(t, w.folder), ever); !slices.Equal(got, was) || !strings.Contains(said, "band-hip-abduction cannot begin: what can be dosed in its place now is standing-leg-out.") {
		t.Errorf("%v, was %v\n%s", got, was, said)
	}
}

// What would be chosen now and is not asked for is offered wherever a new plan begins, and not once
// alone; at reviews in between it is not.
func TestBeginIsOfferedAgain(t *testing.T) {
	const offered = "goes on without what would be chosen for this person now"
	w := copied(t, begun(t))
	w.step(0, "2027-01-05", "log", "goblet-squat: all@9\none-arm-dumbbell-row: all@9\npain: no\n")
	w.step(0, "2027-01-06", "change", "ends: toe-raise\n")
	r := recordOf(t, w.folder) // the tasks changed since
	r.Tasks = r.Tasks[:1]
	data, err := r.Value()
	if err = errors.Join(err, os.WriteFile(w.folder.File("hall"), []byte(data.(string)), 0o600)); err != nil {
		t.Fatal(err)
	}
	for _, step := range []struct{ day, step, want string }{{"2027-01-09", "week", offered}, {"2027-01-13", "review", "not " + offered}, {"2027-01-16", "week", offered}} {
		w.step(0, (on(step.day) - 1).String(), "log", "goblet-squat: all@9\none-arm-dumbbell-row: all@9\npain: no\n")
		days := ""
		if step.step == "week" {
			days = fmt.Sprintf("days: %s %s\nreached: no\n", on(step.day)+2, on(step.day)+5)
		}
		w.says(w.step(0, step.day, step.step, "new: none\n"+days), step.want)
	}
}

// askedFor are the exercises that a record asks for on a day.
func askedFor(r record.Record, day units.Day) (list []string) {
	there, _ := r.AskedOn(day)
	for _, a := range there {
		list = append(list, string(a.Exercise))
	}
	return list
}
