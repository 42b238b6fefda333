package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/units"
)

// Of what is held or carried nobody counts how many were left: it is rated of 10, in a way
// that cannot be taken for the other, since 0 left is all and 0 of 10 is nothing.
func TestHeldIsRated(t *testing.T) {
	for id, tt := range map[string][2][]string{
		"plank":          {{"30@6/10 25", "all@6/10", "all"}, {"30@6", "30@11/10", "all@3"}},
		"dumbbell-squat": {{"10@3 9", "all@3", "all"}, {"10@6/10", "10@11", "all@6/10"}},
		"suitcase-carry": {{"left 20@7/10 right 20@7/10"}, {"left 20@3"}},
		"farmers-carry":  {{"6 kg 20@0/10"}, {"20@0"}},
	} {
		ex, err := exercise.Standard().Lookup(id)
		if err != nil {
			t.Fatal(err)
		}
		a := record.Asked{Sets: 2, Count: 10, Load: 4 * units.Kilogram}
		for i, list := range tt {
			for _, text := range list {
				begin := blank(ex, 739950)
				begin.Load = a.Load
				if ex.Hold.Implements() == 0 {
					begin.Load = 0
				}
				sets, err := readSets(spelled(text, a, ex), begin, ex)
				scale := units.ScaleRIR
				if ex.Measure != exercise.Repetitions {
					scale = units.ScaleOMNI
				}
				told := strings.Contains(text, "@")
				if (err == nil) != (i == 0) || err == nil && (len(sets) == 0 || told && sets[0].Effort.Scale() != scale) {
					t.Errorf("%s %q: %v, %v", id, text, sets, err)
				}
			}
		}
		if counted := ex.Measure == exercise.Repetitions; counted == strings.Contains(hintOf(ex), "/10") {
			t.Errorf("%s: %s", id, hintOf(ex))
		}
	}
}

// A rise from the floor is one of the ways that its name lists, or as last time; another
// word is named with them.
func TestFloorRiseIsOneOfItsWays(t *testing.T) {
	var floor choice.Tried
	for trial := range choice.TaskTrials() {
		if one := (choice.Tried{Trial: trial, Result: function.Result{Day: 739950}}); strings.Contains(trial.String(), "from the floor") {
			floor = one
		} else if len(ways(one)) > 0 {
			t.Errorf("%s: %v", trial, ways(one))
		}
	}
	if got := ways(floor); !slices.Equal(got, []string{"alone", "with furniture", "with help"}) {
		t.Errorf("%q", got)
	}
	was := []choice.Tried{{Trial: floor.Trial, Result: function.Result{Protocol: "with help"}}}
	for text, want := range map[string]string{"9.4 s, alone": "alone", "9.4 s, With furniture": "with furniture", "unable": "", "9.4 s": "!", "9.4 s, by the sofa": "!"} {
		list, err := readTried(text, floor, nil)
		if want == "!" && (err == nil || !strings.Contains(err.Error(), "alone, with furniture, with help")) || want != "!" && (err != nil || list[0].Protocol != want) {
			t.Errorf("%q: %+v, %v", text, list, err)
		}
	}
	if list, err := readTried("8 s", floor, was); err != nil || list[0].Protocol != "with help" {
		t.Errorf("as last time: %+v, %v", list, err)
	}
}

// A body mass that is nearly always a slip is asked about, and left out unless it is right.
func TestBodyMassIsAskedAbout(t *testing.T) {
	for text, want := range map[string]units.Mass{
		"7 kg": 0, "29 kg\nbody_mass_right: yes": 29 * units.Kilogram, "30 kg": 30 * units.Kilogram, "251 kg": 0,
	} {
		f := begun(t)
		p, err := f.Read("hall")
		if err != nil {
			t.Fatal(err)
		}
		p.Record.BodyMass, p.Record.Visits, p.Record.Asked = 0, nil, nil
		if c, err := p.Change(); err != nil || f.Write(c) != nil {
			t.Fatal(err)
		}
		status, out, errs := calls("", "-dir", string(f), "visit", "hall", "-day", "2027-01-04", "-yes", "-answers", answers(t, "# invented\nbody_mass: "+text+"\n"))
		if status != 0 {
			t.Fatalf("%q: %s", text, errs)
		}
		if p, err = f.Read("hall"); err != nil || p.Record.BodyMass != want || strings.Contains(out, "is left out") != (want == 0) {
			t.Errorf("%q: %v, %v\n%s", text, p.Record.BodyMass, err, out)
		}
	}
}

// A pain of which nobody can tell the kind can be logged, typed or from a file, and in a diary. It
// may be one that the pain model is not for: nothing goes on until somebody has looked, a
// physiotherapist at least; no pain at all is of no kind.
func TestPainOfNoKnownKind(t *testing.T) {
	const waits = "TO BE LOOKED AT FIRST: pain flare, on Tuesday 5 January 2027"
	from := begun(t)
	for _, tt := range []struct {
		kind, score string
		want        screening.PainKind
		stands      bool
	}{{"ordinary", "1", screening.OrdinaryPain, false}, {"don't know", "1", 0, true}, {"not sure", "6", 0, true}, {"don't know", "0", 0, false}} {
		file := filepath.Join(t.TempDir(), "diary.csv")
		if err := os.WriteFile(file, []byte("day,row,weight,done,more\n2027-01-05,1,,10,4\n2027-01-05,pain,,"+tt.score+",\n"), 0o600); err != nil {
			t.Fatal(err)
		}
		typed, diary := copied(t, from), copied(t, from)
		typed.step(0, "2027-01-05", "log", "goblet-squat: all@6\nshowed: none\npain: yes\npain_kind: "+tt.kind+"\npain_site: knee\npain_during: "+tt.score+"\n")
		diary.step(0, "2027-01-05", "log", "pain_kind: "+tt.kind+"\npain_site: knee\n", "-diary", file)
		for _, w := range []tryer{typed, diary} {
			if v := recordOf(t, w.folder).Visits[0]; v.Pain == nil || v.Pain.Kind != tt.want {
				t.Errorf("%+v: %+v", tt, v.Pain)
			}
			not := map[bool]string{false: "not "}[tt.stands]
			if tt.score != "0" || w == diary { // whoever types that it hurt is asked the kind before the score
				w.says(w.step(0, "2027-01-06", "list", ""), not+waits)
			}
			w.says(w.step(0, "2027-01-06", "review", "new: none\nlooked: E\nlooked_by: the physiotherapist\n"), "not Doses none", "not "+waits)
		}
	}
}

// All kinds of weights can be typed, and beside those that are there; what cannot be read says which form can.
func TestKitIsTyped(t *testing.T) {
	kg := func(n float64) units.Marked { return units.Must(units.ParseMarked(fmt.Sprintf("%g kg", n))) }
	had := equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: kg(2), Count: 2}}, Plates: []equipment.Plate{{Mass: kg(5), Count: 2}}, Bands: []string{"red"}}
	for text, want := range map[string]equipment.Kit{
		"2 x 2 kg, 1x 4kg dumbbell":                   {Dumbbells: []equipment.Dumbbell{{Mass: kg(2), Count: 2}, {Mass: kg(4), Count: 1}}},
		"1 x 8 kg Kettlebell, 2 x 1 kg ankle weights": {Kettlebells: []equipment.Dumbbell{{Mass: kg(8), Count: 1}}, AnkleWeights: []equipment.Dumbbell{{Mass: kg(1), Count: 2}}},
		"1 x 20 kg bar, 2 x 2 kg handles, 4 x 1.25 kg plates": {
			Bars: []equipment.Bar{{Mass: kg(20)}}, Handles: []equipment.Handle{{Mass: kg(2), Count: 2}}, Plates: []equipment.Plate{{Mass: kg(1.25), Count: 4}},
		},
		"stack 5 10 15 kg, bands yellow red":         {Stacks: []equipment.Stack{{Pins: []units.Marked{kg(5), kg(10), kg(15)}}}, Bands: []string{"yellow", "red"}},
		"+ 1 x 2 kg, 2 x 5 kg plate, bands red blue": {Dumbbells: []equipment.Dumbbell{{Mass: kg(2), Count: 3}}, Plates: []equipment.Plate{{Mass: kg(5), Count: 4}}, Bands: []string{"red", "blue"}},
		"none": {},
	} {
		s := session{r: &record.Record{Given: record.Given{Kit: had}}}
		if got, err := s.readKit(text); err != nil || !got.Equal(want) {
			t.Errorf("%q: %+v, %v", text, got, err)
		}
		if had.Dumbbells[0].Count != 2 || had.Plates[0].Count != 2 {
			t.Fatalf("%q changed the kit before: %+v", text, had)
		}
	}
	for _, text := range []string{"2 kg", "2 x 20 kg bar", "0 x 20 kg bar", "0 x 2 kg", "99999999999999999999 x 2 kg", "2 x 4 kg box", "bands", "bands Rot grün", "bands red red", "stack", "stack kg", "stack 5 kg 10 kg", "stack 10 5 kg", "2 x 4 kg,", "1 x 4 plates"} {
		if kit, err := (&session{r: &record.Record{}}).readKit(text); err == nil {
			t.Errorf("%q: %+v", text, kit)
		}
	}
}

// A comma is read as that of decimals behind "x", as it is in sets and body mass; where it may part two pins of a stack
// it is refused, and how decimals are written is said. It never makes two weights of one, nor another.
func TestKitWithDecimalComma(t *testing.T) {
	for text, want := range map[string]string{
		"2 x 2,5 kg": "2 x 2.5 kg", "2x2,5kg,1 x 12,25 kg kettlebell": "2 x 2.5 kg, 1 x 12.25 kg kettlebell", "4 x 1,25 kg plate, 2 x 1 kg": "4 x 1.25 kg plate, 2 x 1 kg",
		"2 x 2, 5 kg": "", "2 x 2,5": "", "2 x 2,5,10 kg": "", "2 x 2 kg,5 kg": "", "2 x 8,2 x 5 kg": "", "": "", ",": "",
		"stack 5,10 kg": "stack 2.5", "stack 2,5 5 kg": "stack 2.5", "stack 5 7,5 kg": "stack 2.5", "stack 5 10 2,5 kg": "stack 2.5", "stack 5,10,15 kg": "stack 2.5",
	} {
		s := session{r: &record.Record{}}
		got, err := s.readKit(text)
		same, bad := s.readKit(want)
		if bad == nil && (err != nil || !got.Equal(same)) || bad != nil && (err == nil || !strings.Contains(err.Error(), want)) {
			t.Errorf("%q: %+v, %v", text, got, err)
		}
	}
}

// What may have happened beside lifting is named as it is to be typed.
func TestTroublesAreNamed(t *testing.T) {
	f := begun(t)
	step := tryer{t, f}.step
	step(0, "2027-01-05", "log", calm)
	said, _ := typedIn(t, f, "review", "2027-01-06", "none\n\n\n\n\n\n\n")
	for trouble := range beside.Troubles() {
		if !strings.Contains(said, strconv.Quote(trouble.String())) {
			t.Errorf("no %s in %s", trouble, said)
		}
	}
}

// An illness that was told at a review stands in the next one of the same days: both decisions come out again.
func TestIllnessStands(t *testing.T) {
	step := tryer{t, begun(t)}.step
	step(0, "2027-01-05", "log", calm)
	step(0, "2027-01-20", "review", "new: none\nabsence: yes\n")
	step(0, "2027-01-20", "review", "new: none\n")
	step(0, "2027-01-20", "replay", "")
	if said := step(0, "2027-01-20", "list", ""); !strings.Contains(said, "With it: week. ") {
		t.Error(said)
	}
}
