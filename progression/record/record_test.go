package record_test

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

var update = flag.Bool("update", false, "rewrite the files of answers and of the present version, which are our own")

func file(t testing.TB, name string) []byte {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func read(t testing.TB, name string) record.Record {
	t.Helper()
	r, err := record.Decode(file(t, name), field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func write(t testing.TB, name, text string) {
	t.Helper()
	if err := os.WriteFile(filepath.Join("testdata", name), []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// visit and review are case files of version 0: of a first visit, and of a review.
const (
	visit  = "version0/village-hall.json"
	review = "version0/home-review.json"
	stored = "version4/home-review.json"
	before = "version1/home-review.json" // of version 1, the same review
	second = "version2/home-review.json" // of version 2, likewise
	third  = "version3/home-review.json" // of version 3, likewise
)

// old are all fixtures of version 0.
var old = []string{visit, review, "version0/village-hall-build.json", "version0/bone.json", "version0/one-dumbbell.json", "version0/home-review-refer.json"}

func encoded(t testing.TB, r record.Record) string {
	t.Helper()
	data, err := json.MarshalIndent(r, "", "  ")
	if err != nil {
		t.Fatal(err)
	}
	return string(data) + "\n"
}

// A record of version 0 becomes one of the present version, which decodes to the
// same bytes.
func TestRoundTrips(t *testing.T) {
	for _, name := range old {
		first := encoded(t, read(t, name))
		back, err := record.Decode([]byte(first), field.Strict)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if diff := cmp.Diff(first, encoded(t, back)); diff != "" {
			t.Errorf("%s: %s", name, diff)
		}
	}
}

// Each misuse of a record has an error that says where, of a kind of its own.
func TestMisuse(t *testing.T) {
	present, v0 := string(file(t, stored)), string(file(t, review))
	one := `"version": 4`
	for _, tt := range []struct {
		name, text, old, new string
		how                  field.How
		path                 string
		kind                 error
	}{
		{"a key twice", present, one, one + `, "note": ""`, field.Strict, "/note", field.ErrDuplicate},
		{"a key twice, passed over", present, one, one + `, "note": ""`, field.PassOver, "/note", field.ErrDuplicate},
		{"an unknown field", present, one, one + `, "weeks": 5`, field.Strict, "/weeks", field.ErrUnknown},
		{"an unknown field, passed over", present, one, one + `, "weeks": 5`, field.PassOver, "", nil},
		{"an unknown field of version 0", v0, `"minutes": 45`, `"minutes": 45, "weeks": 5`, field.Strict, "/weeks", field.ErrUnknown},
		{"an unknown field of version 0, passed over", v0, `"minutes": 45`, `"minutes": 45, "weeks": 5`, field.PassOver, "", nil},
		{"a field of version 1 in version 0", v0, `"minutes": 45`, `"minutes": 45, "done": []`, field.Strict, "/done", field.ErrUnknown},
		{"an older version", v0, `"minutes": 45`, `"version": 0, "minutes": 45`, field.Strict, "", nil},
		{"a newer version", present, one, `"version": 5`, field.Strict, "/version", record.ErrVersion},
		{"a newer version, passed over", present, one, `"version": 5, "weeks": 5`, field.PassOver, "", nil},
		{"a version below 0", present, one, `"version": -1`, field.PassOver, "/version", record.ErrVersion},
		{"a version of another type", present, one, `"version": "1"`, field.Strict, "/version", field.ErrSyntax},
		{"a version that is null", present, one, `"version": null`, field.Strict, "/version", field.ErrMissing},
		{"a text for a list", present, `"days": [`, `"days": "Monday", "minutes": [`, field.Strict, "/days", field.ErrSyntax},
		{"truncated", present[:len(present)/2], "", "", field.Strict, "", field.ErrSyntax},
		{"truncated version 0", v0[:len(v0)/2], "", "", field.Strict, "", field.ErrSyntax},
		{"nothing", "", "", "", field.Strict, "", field.ErrSyntax},
		{"a list", "[]", "", "", field.Strict, "", field.ErrSyntax},
		{"a set of another person", present, `"done": [
    {`, `"done": [
    {"person": "client-o",`, field.Strict, "/done/0/person", field.ErrConflict},
		{"an entry without an edition", present, `"edition": "` + record.Edition() + `"`, `"edition": ""`, field.Strict, "/entries/0/edition", field.ErrMissing},
		{"an entry that rests on more than there is", present, `"visits": 9`, `"visits": 99`, field.Strict, "/entries/0/rests_on/visits", field.ErrOutOfRange},
		{"checks out of order", present, `"checks": [`, `"checks": [{"day": "2027-03-09", "new": {"asked": true}}, `, field.Strict, "/checks/1/day", field.ErrConflict},
		{"a weight that the kit does not make", v0, `"load": "4 kg", "sets": 1`, `"load": "5 kg", "sets": 1`, field.Strict, "/asked/0/load", field.ErrConflict},
		{"nothing in reserve, and not to be counted", v0, `"max": 12}, "reserve": 5}`, `"max": 12}, "reserve": 0, "uncounted": true}`, field.Strict, "/asked/0/uncounted", field.ErrConflict},
		{"a review of another day than the check", v0, `"review": "2027-03-09"`, `"review": "2027-03-10"`, field.Strict, "/today/day", field.ErrConflict},
	} {
		if !strings.Contains(tt.text, tt.old) {
			t.Fatalf("%s: no %s", tt.name, tt.old)
		}
		_, err := record.Decode([]byte(strings.Replace(tt.text, tt.old, tt.new, 1)), tt.how)
		if tt.kind == nil {
			if err != nil {
				t.Errorf("%s: %v", tt.name, err)
			}
			continue
		}
		var all field.Errors
		if !errors.As(err, &all) || !errors.Is(err, tt.kind) {
			t.Errorf("%s: %v, want %v", tt.name, err, tt.kind)
			continue
		}
		f := all[0]
		if tt.path != "" && (f.Path != tt.path || !errors.Is(f, tt.kind)) || f.Line == 0 {
			t.Errorf("%s: %v, want %v at %s", tt.name, err, tt.kind, tt.path)
		}
	}
}

// One file's errors come in one round, each with its line.
func TestOneRound(t *testing.T) {
	text := strings.NewReplacer(`"systolic": 138`, `"systolic": 1380`, `"mass": "10 kg"`, `"mass": "10"`, `"sets": 1, "count": 8`, `"sets": 0, "count": 8`,
		`"days": ["2027-02-02"`, `"days": ["2027-02-30"`).Replace(string(file(t, review)))
	_, err := record.Decode([]byte(text), field.Strict)
	var all field.Errors
	if !errors.As(err, &all) {
		t.Fatal(err)
	}
	want := map[string]bool{"/profile/bp/systolic": true, "/kit/dumbbells/3/mass": true, "/days/0": true}
	for _, f := range all {
		delete(want, f.Path)
		if f.Line == 0 {
			t.Errorf("no line: %v", f)
		}
	}
	if len(want) > 0 {
		t.Errorf("not told: %v in\n%v", want, err)
	}
}

// Sets that are bad, or contradict their exercise, are named where they stand.
func TestBadTests(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(*record.Record)
		paths  string
	}{
		{"bad sets", func(r *record.Record) { r.Tests[1].Reps, r.Tests[2].Exercise = 0, "one-arm-dumbell-row" }, "/tests/1/reps /tests/2/exercise"},
		{"another hold than the exercise has", func(r *record.Record) { r.Tests[0].Hold = body.BothHandsOnOne }, "/tests/0/hold"},
		{"no training status", func(r *record.Record) { r.Profile.Training = 0 }, "/profile/training"},
		{"an exercise of its own that is none", func(r *record.Record) { r.Own = []exercise.Exercise{{ID: "x"}} }, "/own/0/name"},
	} {
		r := read(t, visit)
		tt.change(&r)
		_, err := r.Start(r.LastDay())
		var all field.Errors
		errors.As(err, &all)
		var paths []string
		for _, f := range all {
			paths = append(paths, f.Path)
		}
		if got := strings.Join(paths, " "); !strings.HasPrefix(got, tt.paths) {
			t.Errorf("%s: %v, want %s", tt.name, err, tt.paths)
		}
	}
}

// A clinic's own exercise is planned, asked for, and decided on like any other.
func TestOwnExercise(t *testing.T) {
	r := read(t, visit)
	own, err := exercise.Standard().Lookup("goblet-squat")
	if err != nil {
		t.Fatal(err)
	}
	own.ID, own.Name, own.Aliases, own.Easier, own.Harder = "clinic-squat", "squat of the clinic", nil, "", ""
	r.Own, r.Exercises, r.Tests = []exercise.Exercise{own}, []exercise.ID{"clinic-squat"}, nil
	p, err := r.Start(r.LastDay())
	if err != nil || p.Week == nil {
		t.Fatal(p.Stop, err)
	}
	item := p.Week.Sessions[0].Items[0]
	if item.Exercise != "clinic-squat" {
		t.Errorf("planned: %s", item.Exercise)
	}
	r.Asked = []record.Asked{record.AskedFrom(item, r.Days[0])}
	r.Visits = []record.TrainingDay{{Day: r.Days[0], Noted: record.Noted{PainFree: true}}}
	r.Done = []setlog.Set{{Day: r.Days[0], Exercise: item.Exercise, Side: item.Side, Hold: item.Hold, Load: item.Load.Each(), Reps: item.Count}}
	r, err = record.Decode([]byte(encoded(t, r)), field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	if items, err := r.Next(r.Days[0] + 3); err != nil || len(items) != 1 || items[0].Exercise != "clinic-squat" {
		t.Errorf("%v, %v", items, err)
	}
}

// A set that was to feel the next weight is read again as it was asked for.
func TestFeelIsKept(t *testing.T) {
	r := read(t, review)
	feel := &record.Felt{Load: 10 * units.Kilogram, Count: 5}
	at := slices.IndexFunc(r.Asked, func(a record.Asked) bool { return a.Exercise == row })
	r.Asked[at].Feel = feel
	r, err := record.Decode([]byte(encoded(t, r)), field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	items, err := r.Next(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	item := items[slices.IndexFunc(items, func(d record.Decided) bool { return d.Exercise == row })]
	plan := item.Log[0].Plan
	if f := plan.Feel; f == nil || f.Load.Each() != feel.Load || f.Count != feel.Count {
		t.Fatalf("%+v", plan.Feel)
	}
	if again := record.AskedFrom(plan, r.Asked[at].From); *again.Feel != *feel {
		t.Errorf("%+v", again.Feel)
	}
	for path, bad := range map[string]record.Felt{"/load": {Load: 7 * units.Kilogram, Count: 5}, "/count": {Load: feel.Load}} {
		r.Asked[at].Feel = &bad
		_, err := r.Next(r.Review)
		if err == nil || !strings.Contains(err.Error(), fmt.Sprintf("/asked/%d/feel%s", at, path)) {
			t.Errorf("%+v: %v", bad, err)
		}
	}
}

// A record that is made in Go says its version too.
func TestVersionIsGiven(t *testing.T) {
	r := read(t, visit)
	r.Version = 0
	if _, err := r.Start(r.LastDay()); !errors.Is(err, field.ErrMissing) {
		t.Error(err)
	}
}

func TestStart(t *testing.T) {
	r := read(t, visit)
	p, err := r.Start(r.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	if p.Week == nil || len(p.Week.Sessions) != 3 || len(p.Estimates) != 3 || len(p.Refused) != 2 {
		t.Errorf("week %v, %d estimates, %d refused", p.Week, len(p.Estimates), len(p.Refused))
	}
	ledger, err := record.Ledger()
	if err != nil {
		t.Fatal(err)
	}
	words, err := record.Words()
	if err != nil {
		t.Fatal(err)
	}
	for _, reason := range p.Reasons() {
		if words.Copy()[reason.Code].Clinician == "" {
			t.Errorf("no words for %s", reason.Code)
		}
		for _, id := range reason.Facts {
			if _, ok := ledger.Fact(id); !ok {
				t.Errorf("%s names %q, which is no fact", reason.Code, id)
			}
		}
	}
	w, err := r.Week(r.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(*p.Week, w, cmp.Exporter(func(reflect.Type) bool { return true })); diff != "" {
		t.Error(diff)
	}
	r.Checks = []screening.Check{{Day: r.LastDay(), New: screening.AskedFor(), Setting: r.Profile.Setting, Febrile: screening.Yes}}
	if p, err = r.Start(r.LastDay()); err != nil || p.Week != nil || p.Stop == nil || len(p.Reasons()) == 0 {
		t.Errorf("a feverish person gets a week: %+v, %v", p.Stop, err)
	}
	var barred *dose.ConstraintError
	if _, err = r.Week(r.LastDay()); !errors.As(err, &barred) {
		t.Errorf("a feverish person gets a week: %v", err)
	}
}

// Assess on the day of a check decides as Next does.
func TestNextIsAssess(t *testing.T) {
	r := read(t, review)
	whole, err := r.Assess(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	items, err := r.Next(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	if len(items) != 5 || encodedItems(t, items) != encodedItems(t, whole.Items) {
		t.Error("Next and Assess differ")
	}
	for _, item := range items {
		if item.Exercise == "" || item.Side == 0 || item.Day != r.Review {
			t.Errorf("%+v", item)
		}
	}
	r.Checks = nil // so that the next day of the plan is decided on
	if whole, err = r.Assess(r.Review + 1); err != nil || whole.Next != units.Must(units.NewDay(2027, 3, 12)) {
		t.Errorf("decided for %v: %v", whole.Next, err)
	}
}

func encodedItems(t testing.TB, items []record.Decided) string {
	data, err := json.Marshal(items)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// A stored decision of another edition, or worked out otherwise, comes back with both.
func TestReplaySaysSo(t *testing.T) {
	r := read(t, stored)
	for _, tt := range []struct {
		name   string
		change func(*record.Record)
		want   []error
		not    error
	}{
		{"as it was", func(*record.Record) {}, nil, nil},
		{"another edition", func(r *record.Record) { r.Entries[0].Edition = "screening.0" }, []error{record.ErrEdition}, record.ErrAnswer},
		{"a set corrected since", func(r *record.Record) { r.Done[len(r.Done)-1].Reps = 1 }, []error{record.ErrAnswer}, record.ErrEdition},
		{"what it rests on is not enough", func(r *record.Record) { r.Entries[0].Rests.Asked = 0 }, []error{field.ErrUnknown}, record.ErrEdition},
		{"a kit bought since", func(r *record.Record) { r.Kit.Dumbbells = r.Kit.Dumbbells[:2] }, nil, record.ErrAnswer},
		{"trained since", func(r *record.Record) { r.Visits = append(r.Visits, record.TrainingDay{Day: r.Review + 1}) }, nil, record.ErrAnswer},
	} {
		changed, err := record.Decode([]byte(encoded(t, r)), field.Strict)
		if err != nil {
			t.Fatal(err)
		}
		tt.change(&changed)
		one := changed.Replay()[0]
		for _, want := range tt.want {
			if !errors.Is(one.Err, want) {
				t.Errorf("%s: %v, want %v", tt.name, one.Err, want)
			}
		}
		if tt.want == nil && one.Err != nil || tt.not != nil && errors.Is(one.Err, tt.not) {
			t.Errorf("%s: %v", tt.name, one.Err)
		}
		if one.Stored.Edition == "" {
			t.Errorf("%s: the stored one is lost", tt.name)
		}
	}
}
