package exercise_test

import (
	"encoding/csv"
	"os"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A row is one line of testdata/published/exercise-muscles.csv.
type row struct{ exercise, pattern, implement, laterality, muscle, role, source, known string }

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
	rows := map[evidence.FactID]row{}
	for _, l := range lines[1:] {
		name := strings.ReplaceAll(strings.ReplaceAll(strings.ToLower(l[0]), " ", "-"), "'", "")
		rows[evidence.FactID("exercise.listed."+name+"."+l[4])] = row{l[0], l[1], l[2], l[3], l[4], l[5], l[6], l[7]}
	}
	if len(rows) != len(lines)-1 || len(rows) < 100 {
		t.Fatalf("%d rows under %d IDs, want one each and at least 100", len(lines)-1, len(rows))
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

// patterns of the list that the catalogue calls otherwise.
var patternOf = map[string]exercise.Pattern{
	"squat": exercise.Squat, "lunge": exercise.Lunge, "hinge": exercise.Hinge, "hip_extension": exercise.Hinge,
	"horizontal_push": exercise.HorizontalPush, "horizontal_pull": exercise.Row, "vertical_push": exercise.OverheadPush,
	"shoulder_raise": exercise.ShoulderRaise, "elbow_flexion": exercise.ElbowFlexion, "plantarflexion": exercise.Calf,
	"trunk": exercise.Trunk, "carry": exercise.Carry, "hip_flexion": exercise.Carry,
}

// TestPatternAndSidesPublished holds pattern and sides against the list where
// the exercise is the listed one, and its hold against the implement.
func TestPatternAndSidesPublished(t *testing.T) {
	rows, facts := published(t), ledger(t)
	for e := range exercise.Standard().All() {
		f, _ := facts.Fact(e.Muscles[0].Fact)
		nearest := f.Basis == evidence.Computed
		if nearest {
			f, _ = facts.Fact(f.From[0])
		}
		r := rows[f.ID]
		if got, want := e.Pattern, patternOf[r.pattern]; got != want {
			t.Errorf("%s: pattern %s, want %s (%s in the list)", e.ID, got, want, r.pattern)
		}
		if nearest {
			continue
		}
		if e.OneSided != (r.laterality == "unilateral") {
			t.Errorf("%s: one-sided %v, but the list has it %s", e.ID, e.OneSided, r.laterality)
		}
		if !implements(r.implement, e.Hold) {
			t.Errorf("%s: held %s, but the list has %q", e.ID, e.Hold, r.implement)
		}
	}
}

func implements(listed string, h body.Hold) bool {
	if h == body.Unloaded {
		return strings.Contains(listed, "bodyweight")
	}
	return strings.Contains(listed, "dumbbell")
}

// TestTradeNumbers holds the numbers that the trade puts on the exercises.
func TestTradeNumbers(t *testing.T) {
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
