package exercise_test

import (
	"encoding"
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

func plain(id, easier, harder exercise.ID) exercise.Exercise {
	return exercise.Exercise{
		ID: id, Name: "own " + string(id), Pattern: exercise.Squat, Hold: body.Unloaded, Measure: exercise.Repetitions,
		Muscles: []exercise.Work{{Muscle: body.Quadriceps, Role: exercise.Prime}}, Easier: easier, Harder: harder,
	}
}

// problems lists the paths and categories of err.
func problems(err error) []string {
	var all field.Errors
	if !errors.As(err, &all) {
		return nil
	}
	var list []string
	for _, f := range all {
		list = append(list, f.Path+" "+strings.TrimPrefix(f.Err.Error(), "units: "))
	}
	return list
}

func TestWithRefuses(t *testing.T) {
	renamed := func(e exercise.Exercise, name string, aliases ...string) exercise.Exercise {
		e.Name, e.Aliases = name, aliases
		return e
	}
	tests := []struct {
		name string
		ex   []exercise.Exercise
		want []string
	}{
		{"ID of the catalogue", []exercise.Exercise{plain("goblet-squat", "", "")}, []string{"/0/id given twice"}},
		{"ID given twice", []exercise.Exercise{plain("a", "", ""), renamed(plain("a", "", ""), "b")}, []string{"/1/id given twice"}},
		{"name in other letters", []exercise.Exercise{renamed(plain("a", "", ""), " Goblet SQUAT ")}, []string{"/0/name given twice"}},
		{"alias of another", []exercise.Exercise{renamed(plain("a", "", ""), "a", "x", "rdl")}, []string{"/0/aliases/1 given twice"}},
		{"steps unknown", []exercise.Exercise{plain("a", "x", "y")}, []string{"/0/easier unknown", "/0/harder unknown"}},
		{"a step to itself", []exercise.Exercise{plain("a", "a", "")}, []string{"/0/harder contradiction"}},
		{"two that are harder than each other", []exercise.Exercise{plain("a", "", "b"), plain("b", "", "a")}, []string{"/0/harder contradiction", "/1/harder contradiction"}},
		{"easier and harder at once", []exercise.Exercise{plain("a", "goblet-squat", "sit-to-stand")}, []string{"/0/harder contradiction"}},
		{"all fields", []exercise.Exercise{{}}, []string{"/0/id malformed", "/0/name not given", "/0/pattern not given", "/0/hold not given",
			"/0/measure not given", "/0/muscles not given"}},
	}
	for _, tt := range tests {
		c, err := exercise.Standard().With(tt.ex...)
		if got := problems(err); !slices.Equal(got, tt.want) || c.Len() != 0 {
			t.Errorf("%s: %d exercises, %v, want none and %v", tt.name, c.Len(), got, tt.want)
		}
	}
}

func TestWith(t *testing.T) {
	own := plain("box-squat", "sit-to-stand", "goblet-squat")
	own.Aliases = []string{"squat to a box"}
	c, err := exercise.Standard().With(own, plain("deep-box-squat", "box-squat", ""))
	if err != nil {
		t.Fatal(err)
	}
	own.Aliases[0] = "spoilt"
	got, err := c.Lookup("Squat to a Box")
	if err != nil || got.ID != "box-squat" {
		t.Errorf("Lookup = %s, %v, want box-squat", got.ID, err)
	}
	var ids []exercise.ID
	for _, e := range c.Ladder("deep-box-squat") {
		ids = append(ids, e.ID)
	}
	if want := []exercise.ID{"supported-sit-to-stand", "sit-to-stand", "box-squat", "deep-box-squat"}; !slices.Equal(ids, want) {
		t.Errorf("Ladder = %v, want %v", ids, want)
	}
	if _, known := exercise.Standard().Get("box-squat"); known {
		t.Error("With changed the catalogue that it began from")
	}
	if got := c.Ladder("no-such"); got != nil {
		t.Errorf("Ladder of an unknown ID = %v, want none", got)
	}
	if c.Pattern("box-squat") != exercise.Squat || c.Pattern("no-such") != 0 {
		t.Errorf("patterns %s and %s", c.Pattern("box-squat"), c.Pattern("no-such"))
	}
	last := exercise.Pattern(0)
	for e := range c.All() {
		if e.Pattern < last {
			t.Errorf("%s (%s) stands after pattern %s", e.ID, e.Pattern, last)
		}
		last = e.Pattern
	}
	for range c.All() {
		break
	}
}

func TestEmptyCatalogue(t *testing.T) {
	var c exercise.Catalogue
	if _, err := c.Lookup("plank"); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("Lookup in the empty catalogue = %v, want ErrUnknown", err)
	}
	if text, err := json.Marshal(c); err != nil || string(text) != "[]" {
		t.Errorf("JSON of the empty catalogue = %s, %v", text, err)
	}
	if _, ok := c.Get(""); ok || c.Len() != 0 {
		t.Errorf("the empty catalogue holds %d", c.Len())
	}
}

func TestValidate(t *testing.T) {
	tests := []struct {
		name   string
		change func(*exercise.Exercise)
		want   []string
	}{
		{"as it is", func(*exercise.Exercise) {}, nil},
		{"capital in the ID", func(e *exercise.Exercise) { e.ID = "A" }, []string{"/id malformed"}},
		{"space in the ID", func(e *exercise.Exercise) { e.ID = "a b" }, []string{"/id malformed"}},
		{"no prime", func(e *exercise.Exercise) { e.Muscles[0].Role = exercise.Synergist }, []string{"/muscles not given"}},
		{"no role", func(e *exercise.Exercise) { e.Muscles = append(e.Muscles, exercise.Work{Muscle: body.Soleus}) }, []string{"/muscles/1/role not given"}},
		{"no muscle", func(e *exercise.Exercise) { e.Muscles[0].Muscle = 0 }, []string{"/muscles/0/muscle not given"}},
		{"no such muscle", func(e *exercise.Exercise) { e.Muscles[0].Muscle = 200 }, []string{"/muscles/0/muscle out of range"}},
		{"muscle twice", func(e *exercise.Exercise) { e.Muscles = append(e.Muscles, e.Muscles[0]) }, []string{"/muscles/1/muscle given twice"}},
		{"no such pattern", func(e *exercise.Exercise) { e.Pattern = 99 }, []string{"/pattern out of range"}},
		{"count from 1", func(e *exercise.Exercise) { e.Count = units.AtLeast(1) }, nil},
		{"count from 0", func(e *exercise.Exercise) { e.Count = units.AtLeast(0) }, []string{"/count/min out of range"}},
		{"no such implement", func(e *exercise.Exercise) { e.Implements = []exercise.Implement{exercise.Bodyweight, 99} }, []string{"/implements/1 out of range"}},
		{"an implement not given", func(e *exercise.Exercise) { e.Implements = []exercise.Implement{0} }, []string{"/implements/0 not given"}},
		{"an implement twice", func(e *exercise.Exercise) {
			e.Implements = []exercise.Implement{exercise.Bodyweight, exercise.Bodyweight}
		}, []string{"/implements/1 given twice"}},
		{"a dumbbell, unloaded", func(e *exercise.Exercise) { e.Implements = []exercise.Implement{exercise.Dumbbell} }, []string{"/implements/0 contradiction"}},
		{"a band, unloaded", func(e *exercise.Exercise) { e.Implements = []exercise.Implement{exercise.Band} }, []string{"/implements/0 contradiction"}},
		{"a band, on a band", func(e *exercise.Exercise) { e.Hold, e.Implements = body.OnBand, []exercise.Implement{exercise.Band} }, nil},
		{"an implement and no hold", func(e *exercise.Exercise) { e.Hold, e.Implements = 0, []exercise.Implement{exercise.Band} }, []string{"/hold not given"}},
		{"two ways with the sides", func(e *exercise.Exercise) { e.OneSided, e.Alternating = true, true }, []string{"/alternating contradiction"}},
		{"share of all", func(e *exercise.Exercise) { e.MovesBody, e.MovedShare = true, units.AtMost[units.Fraction](1) }, nil},
		{"share of more than all", func(e *exercise.Exercise) { e.MovesBody, e.MovedShare = true, units.AtMost[units.Fraction](1.01) }, []string{"/moved_share out of range"}},
		{"share below nought", func(e *exercise.Exercise) {
			e.MovesBody, e.MovedShare = true, units.Must(units.Between[units.Fraction](-.01, 1))
		}, []string{"/moved_share out of range"}},
		{"share without an end", func(e *exercise.Exercise) { e.MovesBody, e.MovedShare = true, units.AtLeast[units.Fraction](.5) }, []string{"/moved_share out of range"}},
		{"share where the body stays", func(e *exercise.Exercise) { e.MovedShare = units.AtMost[units.Fraction](1) }, []string{"/moved_share contradiction"}},
		{"mass for a band", func(e *exercise.Exercise) { e.Hold, e.FirstMass = body.OnBand, units.AtMost(units.Kilogram) }, []string{"/first_mass contradiction"}},
		{"mass for no weight", func(e *exercise.Exercise) { e.FirstMass = units.AtMost(units.Kilogram) }, []string{"/first_mass contradiction"}},
		{"mass of 1 ng", func(e *exercise.Exercise) { e.Hold, e.FirstMass = body.OneHand, units.AtLeast[units.Mass](1) }, nil},
		{"mass of 0", func(e *exercise.Exercise) { e.Hold, e.FirstMass = body.OneHand, units.AtLeast[units.Mass](0) }, []string{"/first_mass/min out of range"}},
		{"mass up to 0", func(e *exercise.Exercise) { e.Hold, e.FirstMass = body.OneHand, units.AtMost[units.Mass](0) }, []string{"/first_mass/max out of range"}},
	}
	for _, tt := range tests {
		e := plain("a", "", "")
		tt.change(&e)
		if got := problems(e.Validate()); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}

// TestImplementsGoWithHolds walks every hold with every implement.
func TestImplementsGoWithHolds(t *testing.T) {
	hands := []exercise.Implement{exercise.Dumbbell, exercise.Kettlebell}
	want := map[body.Hold][]exercise.Implement{
		body.OneHand: hands, body.OneEachHand: hands, body.BothHandsOnOne: hands,
		body.OnBar: {exercise.Barbell, exercise.HexBar}, body.OnStack: {exercise.Machine, exercise.Cable},
		body.OnLimb: {exercise.AnkleWeight}, body.OnBand: {exercise.Band}, body.Unloaded: {exercise.Bodyweight},
	}
	for h := range body.Holds() {
		for im := exercise.Bodyweight; im <= exercise.Band; im++ {
			e := plain("a", "", "")
			e.Hold, e.Implements = h, []exercise.Implement{im}
			if ok := e.Validate() == nil; ok != slices.Contains(want[h], im) {
				t.Errorf("%s held %s: allowed %v", im, h, ok)
			}
		}
	}
}

func TestLookup(t *testing.T) {
	tests := []struct {
		name string
		want exercise.ID
	}{
		{"goblet-squat", "goblet-squat"}, {"Goblet Squat", "goblet-squat"}, {" RDL\t", "dumbbell-romanian-deadlift"},
		{"FARMER'S CARRY", "farmers-carry"}, {"chair stand", "sit-to-stand"}, {"Dumbbell curl", "biceps-curl"},
	}
	for _, tt := range tests {
		if got, err := exercise.Standard().Lookup(tt.name); err != nil || got.ID != tt.want {
			t.Errorf("Lookup(%q) = %s, %v, want %s", tt.name, got.ID, err, tt.want)
		}
	}
}

func TestLookupSuggests(t *testing.T) {
	const none = "an exercise of the catalogue, by ID, name or alias"
	tests := []struct{ name, allowed string }{
		{"goblet-sqat", "did you mean goblet-squat"},
		{"Gobelt Squat", "did you mean goblet-squat"},
		{"latteral raise", "did you mean lateral-raise"},
		{"rdk", "did you mean dumbbell-romanian-deadlift"},
		{"bench", "did you mean dumbbell-bench-press, barbell-bench-press or chair-dip"},
		{"dumbbell row", "did you mean one-arm-dumbbell-row, seated-one-arm-row, bent-over-row, barbell-bent-over-row or seated-row"},
		{"curls", "did you mean seated-hammer-curl, biceps-curl, abdominal-crunch, standing-knee-bend or ankle-weight-leg-curl"},
		{"squat", "did you mean goblet-squat, dumbbell-squat, dumbbell-split-squat, bodyweight-squat or wall-squat"},
		{"row", "did you mean seated-one-arm-row, one-arm-dumbbell-row, bent-over-row, barbell-bent-over-row or seated-row"},
		{"zercher", none},
		{"", none},
		{strings.Repeat("plank", 13), none},
	}
	for _, tt := range tests {
		_, err := exercise.Standard().Lookup(tt.name)
		var f *field.Error
		if !errors.As(err, &f) || !errors.Is(err, field.ErrUnknown) || f.Allowed != tt.allowed {
			t.Errorf("Lookup(%q): %v, want %q", tt.name, err, tt.allowed)
		}
	}
}

// TestLookupNearest: among equals the first listed is meant; a third of the
// name may be wrong and no more.
func TestLookupNearest(t *testing.T) {
	c, err := exercise.Catalogue{}.With(plain("aab", "", ""), plain("aac", "", ""), plain("bbbbbb", "", ""))
	if err != nil {
		t.Fatal(err)
	}
	tests := []struct{ name, want string }{
		{"aax", "did you mean aab"}, {"aacc", "did you mean aac"}, {"axx", "an exercise of the catalogue, by ID, name or alias"},
		{"bbbbxx", "did you mean bbbbbb"}, {"bbbxxx", "an exercise of the catalogue, by ID, name or alias"},
	}
	for _, tt := range tests {
		_, err := c.Lookup(tt.name)
		var f *field.Error
		if !errors.As(err, &f) || f.Allowed != tt.want {
			t.Errorf("Lookup(%q): %v, want %q", tt.name, err, tt.want)
		}
	}
}

func TestCatalogueJSON(t *testing.T) {
	text, err := json.Marshal(exercise.Standard())
	if err != nil {
		t.Fatal(err)
	}
	var back exercise.Catalogue
	if err := field.Decode(text, &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	again, _ := json.Marshal(back)
	if string(again) != string(text) {
		t.Error("the standard catalogue does not come back the same from JSON")
	}
	for e := range exercise.Standard().All() {
		got, _ := back.Get(e.ID)
		if diff := cmp.Diff(e, got, cmp.AllowUnexported(units.Range[int]{}, units.Range[units.Mass]{}, units.Range[units.Fraction]{})); diff != "" {
			t.Errorf("%s: %s", e.ID, diff)
		}
	}
	for _, bad := range []string{`[{"id":"a"}]`, `[{"idd":"a"}]`, `{`, `[{"id":"a","id":"b"}]`} {
		if err := field.Decode([]byte(bad), &back, field.Strict); err == nil || back.Len() != exercise.Standard().Len() {
			t.Errorf("Unmarshal(%s) = %v and %d exercises, want an error and no change", bad, err, back.Len())
		}
	}
}

func TestVocabularies(t *testing.T) {
	for v := range uint8(255) {
		p, m, r := exercise.Pattern(v), exercise.DoseUnit(v), exercise.Role(v)
		checkText(t, p, new(exercise.Pattern), v <= uint8(exercise.Carry))
		checkText(t, m, new(exercise.DoseUnit), v <= uint8(exercise.Metres))
		checkText(t, r, new(exercise.Role), v <= uint8(exercise.Stabiliser))
		checkText(t, exercise.Implement(v), new(exercise.Implement), v <= uint8(exercise.Band))
	}
}

// checkText holds that e comes back from its text, or is refused if it is no value.
func checkText[E comparable, P interface {
	*E
	encoding.TextUnmarshaler
}](t *testing.T, e E, back P, valid bool) {
	t.Helper()
	text, err := any(e).(encoding.TextMarshaler).MarshalText()
	if !valid {
		if !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("MarshalText(%v) = %q, %v, want ErrOutOfRange", e, text, err)
		}
		return
	}
	if err != nil || back.UnmarshalText(text) != nil || *back != e || fmt.Sprint(e) != string(text) {
		t.Errorf("%v: text %q, %v, comes back as %v", e, text, err, *back)
	}
}
