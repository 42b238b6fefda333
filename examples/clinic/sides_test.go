package main

import (
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/folder"
	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// The side of a device and of a pain is asked and told: the plan begins on the sound side, and
// the papers name the side that hurt. Somebody whose side was not told trains neither.
func TestSidesAreAskedAndTold(t *testing.T) {
	device := func(side string) folder.Folder {
		f := folder.Folder(t.TempDir())
		w := walkers[0]
		lines := strings.Replace(w.new, "areas: pressure\npressure: hypertension_treated\n", "areas: heart\nheart: pacemaker\npacemaker_day: 2026-11-30\n"+side+
			"clearance: yes\nclearance_who: doctor A\nclearance_when: 2026-12-28\nclearance_scope: pacemaker\nclearance_effort: moderate\n", 1)
		for _, one := range [][2]string{{"new", lines}, {"visit", w.visit + "days: 2027-01-05 2027-01-08\n"}, {"week", ""}} {
			status, out, errs := calls("", "-dir", string(f), one[0], "hall", "-day", "2027-01-04", "-answers", answers(t, one[1]+"# invented\n"), "-yes")
			if status != 0 || errs != "" {
				t.Fatalf("%s: %d, %s", one[0], status, errs)
			}
			if told := strings.Contains(out, "Told of one side: pacemaker: left"); one[0] == "new" && told != (side != "") {
				t.Errorf("%q: told %v\n%s", side, told, out)
			}
			if right := strings.Contains(out, "right side only"); one[0] == "visit" && right != (side != "") {
				t.Errorf("%q: right side alone %v", side, right)
			}
		}
		return f
	}
	device("")
	f := device("pacemaker_side: left\n")
	_, client, _ := calls("", "-dir", string(f), "show", "hall", "-day", "2027-01-04", "-for", "client")
	if text := strings.Join(strings.Fields(client), " "); !strings.Contains(text, "weights that work the shoulder, on your left side") {
		t.Errorf("%s", client)
	}
	for side, want := range map[string]string{"pain_side: right\n": "pain (ordinary), right knee: ", "pain_side: both\n": "pain (ordinary), knee, both sides: ", "": "pain (ordinary), knee: "} {
		w := copied(t, f)
		w.step(0, "2027-01-05", "log", "toe-raise: 10@6\npain: yes\npain_kind: ordinary\npain_site: knee\n"+side+"pain_during: 3\npain_in: toe-raise\n")
		w.says(w.step(0, "2027-01-06", "review", "new: none\n"), want)
	}
}

// Whoever logs reads of each exercise what the client reads: on which sides, and which other
// weight belongs to it. Asked with neither, the next weight was never tried for weeks.
func TestLogAsksAsTheClientWasTold(t *testing.T) {
	said, _ := typedIn(t, begun(t), "log", "2027-01-05", strings.Repeat("none\n", 12))
	if !strings.Contains(said, "one-arm dumbbell row: asked for ") || !strings.Contains(said, ", on each side.") {
		t.Error(said)
	}
	row, _ := exercise.Standard().Get("one-arm-dumbbell-row")
	squat, _ := exercise.Standard().Get("goblet-squat")
	for _, one := range []struct {
		a    record.Asked
		ex   exercise.Exercise
		want string
	}{
		{record.Asked{}, squat, ""},
		{record.Asked{Side: body.Both}, row, ", on each side"},
		{record.Asked{Side: body.Left}, row, ", left side only"},
		{record.Asked{Finding: &dose.Search{}}, squat, ""},
		{record.Asked{Finding: &dose.Search{MaxSteps: 1, Ceiling: 5 * units.Kilogram}}, squat, "; where a set ends clearly easy, another with the next weight"},
		{record.Asked{Finding: &dose.Search{MaxSteps: 2}}, row, ", on each side; where a set ends clearly easy, another with the next weight"},
		{record.Asked{Feel: &record.Felt{Load: 8 * units.Kilogram, Count: 5}}, squat, "; the last set at most 5 with 8 kg"},
	} {
		if got := asWell(one.a, one.ex); got != one.want {
			t.Errorf("%+v: %q, not %q", one.a, got, one.want)
		}
	}
}
