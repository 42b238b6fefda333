package exercise_test

import (
	"crypto/sha256"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A row is one line of muscles.csv.
type row struct{ exercise, pattern, implement, sidedness, muscle, role, known, source string }

var factSlug = strings.NewReplacer(" ", "-", "'", "", ",", "", "(", "", ")", "")

func (r row) fact() evidence.FactID {
	return evidence.FactID("exercise.listed." + factSlug.Replace(strings.ToLower(r.exercise)) + "." + r.muscle)
}

// lines reads a file of this package, the line of columns left out.
func lines(t testing.TB, path string) [][]string {
	t.Helper()
	_, list := fieldtest.Table(t, path, ',')
	return list
}

func published(t testing.TB) map[evidence.FactID]row {
	t.Helper()
	list := lines(t, "muscles.csv")
	rows, names := map[evidence.FactID]row{}, map[string]bool{}
	for _, l := range list {
		r := row{l[0], l[1], l[2], l[3], l[4], l[5], l[7], l[6]}
		names[r.exercise], rows[r.fact()] = true, r
	}
	if len(rows) != len(list) || len(rows) != 480 || len(names) != 90 {
		t.Fatalf("%d rows of %d exercises under %d IDs, want 480 of 90 and one each", len(list), len(names), len(rows))
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

// TestMusclesAreTheFile holds the list as it was checked: a change of one byte
// must be made in two places.
func TestMusclesAreTheFile(t *testing.T) {
	data, err := os.ReadFile("muscles.csv")
	if err != nil {
		t.Fatal(err)
	}
	sum, err := os.ReadFile("testdata/muscles.csv.sha256")
	if got := fmt.Sprintf("%x  muscles.csv\n", sha256.Sum256(data)); err != nil || got != string(sum) {
		t.Errorf("the list has %q, want %q (%v)", got, sum, err)
	}
}

// TestMusclesAgain holds muscles against rows taken from the collection a second time.
func TestMusclesAgain(t *testing.T) {
	list, facts := lines(t, "testdata/again.csv"), ledger(t)
	if len(list) < 30 {
		t.Errorf("%d rows, want 30 or more", len(list))
	}
	for _, l := range list {
		r := row{exercise: l[0], muscle: l[1], role: l[2], known: l[3], source: l[4]}
		e, err := exercise.Standard().Lookup(r.exercise)
		if err != nil {
			t.Error(err)
			continue
		}
		i := slices.IndexFunc(e.Muscles, func(w exercise.Work) bool { return w.Muscle.String() == r.muscle })
		if i < 0 || e.Muscles[i].Role.String() != r.role {
			t.Errorf("%s: %v, want %s as %s", e.ID, e.Muscles, r.muscle, r.role)
			continue
		}
		checkKnown(t, facts, e.Muscles[i].Fact, r)
	}
}

// checkKnown holds that the fact is known as its row is, from the same source.
func checkKnown(t *testing.T, facts *evidence.Ledger, id evidence.FactID, r row) {
	t.Helper()
	b, err := facts.Basis(id)
	f, _ := facts.Fact(r.fact())
	source, _ := evidence.LookUp(f.Source)
	if err != nil || b != basisOf[r.known] || source.Citation != r.source {
		t.Errorf("%s: %v (%v) from %q, want %s from %q", id, b, err, source.Citation, r.known, r.source)
	}
}

// TestMusclesUsed holds that every row is used by an exercise, and cites the
// source that its key names.
func TestMusclesUsed(t *testing.T) {
	rows, facts, used := published(t), ledger(t), map[evidence.FactID]bool{}
	for e := range exercise.Standard().All() {
		for _, w := range e.Muscles {
			f, _ := facts.Fact(w.Fact)
			if f.Basis == evidence.Computed {
				f, _ = facts.Fact(f.From[0])
			}
			used[f.ID] = true
			checkKnown(t, facts, w.Fact, rows[f.ID])
		}
	}
	for id := range rows {
		if !used[id] {
			t.Errorf("row %s is used by no exercise", id)
		}
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

// kettlebellToo are listed without the kettlebell, which this module takes for them as
// well (exercise.kettlebell-alike).
var kettlebellToo = []string{"sit-to-stand", "dumbbell Romanian deadlift", "one-arm dumbbell row", "suitcase carry", "farmer's carry"}

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
		if e.OneSided != (r.sidedness == "unilateral") || e.Alternating != (r.sidedness == "alternating") {
			t.Errorf("%s: one-sided %v, alternating %v, but the list has it %s", e.ID, e.OneSided, e.Alternating, r.sidedness)
		}
		if len(e.Implements) == 0 {
			t.Errorf("%s: no implement", e.ID)
		}
		have[r.exercise] = append(have[r.exercise], e.Implements...)
	}
	for _, r := range rows {
		got := slices.Clone(have[r.exercise])
		slices.Sort(got)
		got = slices.Compact(got)
		if slices.Contains(kettlebellToo, r.exercise) {
			got = slices.DeleteFunc(got, func(i exercise.Implement) bool { return i == exercise.Kettlebell })
		}
		if !slices.Equal(got, implementsOf(t, r.implement)) {
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
