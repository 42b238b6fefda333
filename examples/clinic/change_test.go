package main

import (
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

// askedFor are the exercises that a record asks for on a day.
func askedFor(r record.Record, day units.Day) (list []string) {
	there, _ := r.AskedOn(day)
	for _, a := range there {
		list = append(list, string(a.Exercise))
	}
	return list
}
