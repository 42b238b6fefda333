package exercise_test

import (
	"encoding/csv"
	"os"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A row is one line of testdata/published/exercise-muscles.csv.
type row struct{ exercise, pattern, implement, sidedness, muscle, role, source, known string }

var factSlug = strings.NewReplacer(" ", "-", "'", "", ",", "", "(", "", ")", "")

func published(t testing.TB) map[evidence.FactID]row {
	t.Helper()
	f, err := os.Open("../../testdata/published/exercise-muscles.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	rows, names := map[evidence.FactID]row{}, map[string]bool{}
	for _, l := range lines[1:] {
		names[l[0]] = true
		rows[evidence.FactID("exercise.listed."+factSlug.Replace(strings.ToLower(l[0]))+"."+l[4])] = row{l[0], l[1], l[2], l[3], l[4], l[5], l[6], l[7]}
	}
	if len(rows) != len(lines)-1 || len(rows) != 480 || len(names) != 90 {
		t.Fatalf("%d rows of %d exercises under %d IDs, want 480 of 90 and one each", len(lines)-1, len(names), len(rows))
	}
	return rows
}

func ledger(t testing.TB) *evidence.Ledger {
	t.Helper()
	l, err := evidence.NewLedger(exercise.Facts())
	if err != nil {
		t.Fatal(err)
	}
	return l
}

var basisOf = map[string]evidence.Basis{"text": evidence.Published, "memory": evidence.FromMemory}

// TestMusclesPublished holds every muscle of every exercise against the row
// that it rests on, and every row against a muscle that rests on it.
func TestMusclesPublished(t *testing.T) {
	rows, facts, used := published(t), ledger(t), map[evidence.FactID]int{}
	for e := range exercise.Standard().All() {
		var listed []string
		for _, w := range e.Muscles {
			f, ok := facts.Fact(w.Fact)
			if !ok {
				t.Errorf("%s, %s: no fact %q", e.ID, w.Muscle, w.Fact)
				continue
			}
			if f.Basis == evidence.Computed {
				f, _ = facts.Fact(f.From[0])
			}
			r, ok := rows[f.ID]
			if !ok {
				t.Errorf("%s, %s: fact %q has no published row", e.ID, w.Muscle, f.ID)
				continue
			}
			used[f.ID]++
			listed = append(listed, r.exercise)
			source, _ := evidence.LookUp(f.Source)
			if w.Muscle.String() != r.muscle || w.Role.String() != r.role {
				t.Errorf("%s: %s as %s, want %s as %s (%s)", e.ID, w.Muscle, w.Role, r.muscle, r.role, r.source)
			}
			if f.Basis != basisOf[r.known] || source.Citation != r.source {
				t.Errorf("%s: fact is %s from %q, want %s from %q", f.ID, f.Basis, source.Citation, r.known, r.source)
			}
			if b, err := facts.Basis(w.Fact); err != nil || b != basisOf[r.known] {
				t.Errorf("%s, %s: basis %v, %v, want that of the row, %s", e.ID, w.Muscle, b, err, r.known)
			}
		}
		checkWholeListing(t, e, listed, rows)
	}
	for id := range rows {
		if used[id] == 0 {
			t.Errorf("row %s is used by no exercise", id)
		}
	}
}

// checkWholeListing holds that an exercise takes all the muscles of exactly
// one listed exercise.
func checkWholeListing(t *testing.T, e exercise.Exercise, listed []string, rows map[evidence.FactID]row) {
	t.Helper()
	want := 0
	for _, r := range rows {
		if r.exercise == listed[0] {
			want++
		}
	}
	for _, name := range listed {
		if name != listed[0] {
			t.Errorf("%s mixes %s and %s", e.ID, listed[0], name)
		}
	}
	if len(listed) != want {
		t.Errorf("%s has %d muscles, want all %d of the %s", e.ID, len(listed), want, listed[0])
	}
}

// patternOf says which patterns of ours the list's are. It tells apart neither
// bridges from hinges nor presses overhead from dips.
var patternOf = map[string][]exercise.Pattern{
	"squat": {exercise.Squat}, "lunge": {exercise.Lunge}, "hinge": {exercise.Hinge}, "hip_extension": {exercise.Hinge},
	"hip_abduction": {exercise.HipAbduction}, "hip_adduction": {exercise.HipAdduction}, "hip_flexion": {exercise.HipFlexion},
	"knee_extension": {exercise.KneeExtension}, "knee_flexion": {exercise.KneeFlexion},
	"plantarflexion": {exercise.Calf}, "dorsiflexion": {exercise.Dorsiflexion},
	"horizontal_push": {exercise.HorizontalPush}, "vertical_push": {exercise.OverheadPush, exercise.DownwardPush},
	"horizontal_pull": {exercise.Row}, "vertical_pull": {exercise.VerticalPull},
	"shoulder_extension": {exercise.ShoulderExtension}, "horizontal_abduction": {exercise.HorizontalAbduction},
	"scapular_elevation": {exercise.ScapularElevation}, "shoulder_raise": {exercise.ShoulderRaise}, "rotation": {exercise.ShoulderRotation},
	"elbow_flexion": {exercise.ElbowFlexion}, "elbow_extension": {exercise.ElbowExtension},
	"wrist_flexion": {exercise.WristFlexion}, "wrist_extension": {exercise.WristExtension},
	"trunk": {exercise.Trunk}, "carry": {exercise.Carry},
}

// implementsOf reads the list's words, such as "bodyweight, dumbbells or
// machine". Where it names a place or says only "loaded", ours is plainer.
func implementsOf(t *testing.T, listed string) []exercise.Implement {
	t.Helper()
	var list []exercise.Implement
	for word := range strings.SplitSeq(strings.ReplaceAll(listed, " or ", ", "), ", ") {
		switch word {
		case "bench", "floor":
			word = "bodyweight"
		case "loaded", "dumbbells":
			word = "dumbbell"
		}
		var im exercise.Implement
		if err := im.UnmarshalText([]byte(word)); err != nil {
			t.Fatalf("%q: %v", listed, err)
		}
		if !slices.Contains(list, im) {
			list = append(list, im)
		}
	}
	slices.Sort(list)
	return list
}

// restsOn returns a row of the listed exercise that e's muscles are those of,
// and whether e is that very exercise or only nearest to it.
func restsOn(t *testing.T, e exercise.Exercise, rows map[evidence.FactID]row, facts *evidence.Ledger) (r row, itself bool) {
	t.Helper()
	f, _ := facts.Fact(e.Muscles[0].Fact)
	if f.Basis == evidence.Computed {
		return rows[f.From[0]], false
	}
	r, ok := rows[f.ID]
	if !ok {
		t.Errorf("%s: no row %s", e.ID, f.ID)
	}
	return r, true
}

// TestListPublished holds pattern, sides and implements of each exercise that
// is a listed one against the list, and that the catalogue has each listed
// exercise with every implement that the list names.
func TestListPublished(t *testing.T) {
	rows, facts := published(t), ledger(t)
	have := map[string][]exercise.Implement{}
	for e := range exercise.Standard().All() {
		r, itself := restsOn(t, e, rows, facts)
		if !itself {
			continue
		}
		if !slices.Contains(patternOf[r.pattern], e.Pattern) {
			t.Errorf("%s: pattern %s, want %v (%s in the list)", e.ID, e.Pattern, patternOf[r.pattern], r.pattern)
		}
		if e.Sidedness().String() != r.sidedness {
			t.Errorf("%s: %s, but the list has it %s", e.ID, e.Sidedness(), r.sidedness)
		}
		if len(e.Implements) == 0 {
			t.Errorf("%s: no implement", e.ID)
		}
		have[r.exercise] = append(have[r.exercise], e.Implements...)
	}
	for _, r := range rows {
		got := slices.Clone(have[r.exercise])
		slices.Sort(got)
		if got = slices.Compact(got); !slices.Equal(got, implementsOf(t, r.implement)) {
			t.Errorf("%s: with %v, but the list has %q", r.exercise, got, r.implement)
		}
	}
}

// TestListedNames holds that the list's own name of an exercise leads to an
// exercise with its muscles.
func TestListedNames(t *testing.T) {
	rows, facts := published(t), ledger(t)
	for _, r := range rows {
		e, err := exercise.Standard().Lookup(r.exercise)
		if err != nil {
			t.Error(err)
			continue
		}
		if on, _ := restsOn(t, e, rows, facts); on.exercise != r.exercise {
			t.Errorf("%q leads to %s, which has the muscles of %q", r.exercise, e.ID, on.exercise)
		}
	}
}

// TestCountsAndFirstMasses checks this module's own numbers; those of the raises,
// the hinges and the repetitions agree with common practice, which has no source.
func TestCountsAndFirstMasses(t *testing.T) {
	kg := func(min, max float64) units.Range[units.Mass] {
		return units.Must(units.Between(units.Must(units.Kilograms(min)), units.Must(units.Kilograms(max))))
	}
	tests := []struct {
		id    exercise.ID
		count units.Range[int]
		first units.Range[units.Mass]
	}{
		{"lateral-raise", units.Must(units.Between(12, 20)), kg(0.5, 1)},
		{"scaption-raise", units.Must(units.Between(12, 20)), kg(0.5, 1)},
		{"dumbbell-romanian-deadlift", units.Must(units.Between(5, 20)), kg(1, 2)},
		{"one-dumbbell-hinge", units.Must(units.Between(5, 20)), kg(1, 2)},
		{"goblet-squat", units.Must(units.Between(5, 20)), units.Range[units.Mass]{}},
		{"plank", units.Must(units.Between(10, 30)), units.Range[units.Mass]{}},
		{"supported-march", units.Must(units.Between(20, 60)), units.Range[units.Mass]{}},
		{"suitcase-carry", units.Must(units.Between(10, 30)), units.Range[units.Mass]{}},
	}
	for _, tt := range tests {
		e, ok := exercise.Standard().Get(tt.id)
		if !ok || e.Count != tt.count || e.FirstMass != tt.first {
			t.Errorf("%s: count %v, first mass %v, want %v, %v", tt.id, e.Count, e.FirstMass, tt.count, tt.first)
		}
	}
}
