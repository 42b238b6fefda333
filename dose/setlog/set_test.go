package setlog_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"log/slog"
	"testing"

	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

var good = setlog.Set{
	Day: units.Must(units.NewDay(2026, 11, 25)), Exercise: "seated-press", Side: body.Both, Hold: body.OneEachHand,
	Load: 8 * units.Kilogram, Stated: body.PerHand, Reps: 6, Effort: units.Must(units.InReserve(2)),
}

// paths lists the fields that err names.
func paths(t *testing.T, err error) []string {
	t.Helper()
	var all field.Errors
	if err != nil && !errors.As(err, &all) {
		t.Fatalf("no field errors: %v", err)
	}
	var list []string
	for _, f := range all {
		list = append(list, f.Path)
	}
	return list
}

func TestValidate(t *testing.T) {
	tests := []struct {
		name   string
		change func(*setlog.Set)
		paths  []string
		want   error
	}{
		{"good", func(*setlog.Set) {}, nil, nil},
		{"no day, no effort", func(s *setlog.Set) { s.Day, s.Effort = 0, units.Effort{} }, nil, nil},
		{"day", func(s *setlog.Set) { s.Day = -1 }, []string{"/day"}, field.ErrOutOfRange},
		{"exercise", func(s *setlog.Set) { s.Exercise = "" }, []string{"/exercise"}, field.ErrMissing},
		{"side", func(s *setlog.Set) { s.Side = 0 }, []string{"/side"}, field.ErrMissing},
		{"no such side", func(s *setlog.Set) { s.Side = 9 }, []string{"/side"}, field.ErrOutOfRange},
		{"hold", func(s *setlog.Set) { s.Hold = 0 }, []string{"/hold"}, field.ErrMissing},
		{"load below 0", func(s *setlog.Set) { s.Load = -1 }, []string{"/load"}, field.ErrOutOfRange},
		{"bare mass for two", func(s *setlog.Set) { s.Stated = 0 }, []string{"/stated"}, field.ErrMissing},
		{"odd total for two", func(s *setlog.Set) { s.Stated, s.Load = body.Total, 3 }, []string{"/stated"}, field.ErrConflict},
		{"per hand on a stack", func(s *setlog.Set) { s.Hold = body.OnStack }, []string{"/stated"}, field.ErrConflict},
		{"unloaded with a load", func(s *setlog.Set) { s.Hold = body.Unloaded }, []string{"/load"}, field.ErrConflict},
		{"0 repetitions", func(s *setlog.Set) { s.Reps = 0 }, []string{"/reps"}, field.ErrOutOfRange},
		{"1 repetition", func(s *setlog.Set) { s.Reps = 1 }, nil, nil},
		{"1000 repetitions", func(s *setlog.Set) { s.Reps = 1000 }, nil, nil},
		{"1001 repetitions", func(s *setlog.Set) { s.Reps = 1001 }, []string{"/reps"}, field.ErrOutOfRange},
		{"no load", func(s *setlog.Set) { s.Load = 0 }, nil, nil},
		{"all", func(s *setlog.Set) { *s = setlog.Set{Day: -1, Load: -1, Reps: -1} },
			[]string{"/day", "/exercise", "/side", "/hold", "/load", "/reps"}, field.ErrOutOfRange},
	}
	for _, tt := range tests {
		s := good
		tt.change(&s)
		err := s.Validate()
		if diff := cmp.Diff(tt.paths, paths(t, err)); diff != "" || !errors.Is(err, tt.want) {
			t.Errorf("%s: %v, want %v at %v", tt.name, err, tt.want, tt.paths)
		}
		if _, eachErr := s.Each(); (eachErr == nil) != (err == nil) {
			t.Errorf("%s: Each says %v, Validate %v", tt.name, eachErr, err)
		}
	}
}

// TestValidateFor: a set of another exercise in another hold is two conflicts; a
// bad set says what Validate says.
func TestValidateFor(t *testing.T) {
	if err := good.ValidateFor(good.Exercise, good.Hold); err != nil {
		t.Error(err)
	}
	err := good.ValidateFor("another", body.OnBar)
	if diff := cmp.Diff([]string{"/exercise", "/hold"}, paths(t, err)); diff != "" || !errors.Is(err, field.ErrConflict) {
		t.Errorf("%v\n%s", err, diff)
	}
	s := good
	s.Reps = 0
	if diff := cmp.Diff([]string{"/reps"}, paths(t, s.ValidateFor("another", body.OnBar))); diff != "" {
		t.Error(diff)
	}
}

// TestEach: "two fours" are 4 kg each however they are stated.
func TestEach(t *testing.T) {
	tests := []struct {
		hold   body.Hold
		load   units.Mass
		stated body.Stated
		want   units.Mass
	}{
		{body.OneEachHand, 4 * units.Kilogram, body.PerHand, 4 * units.Kilogram},
		{body.OneEachHand, 8 * units.Kilogram, body.Total, 4 * units.Kilogram},
		{body.OneHand, 4 * units.Kilogram, 0, 4 * units.Kilogram},
		{body.BothHandsOnOne, 4 * units.Kilogram, body.Total, 4 * units.Kilogram},
		{body.OnBar, 4 * units.Kilogram, 0, 4 * units.Kilogram},
		{body.Unloaded, 0, 0, 0},
	}
	for _, tt := range tests {
		s := good
		s.Hold, s.Load, s.Stated = tt.hold, tt.load, tt.stated
		if got, err := s.Each(); err != nil || got != tt.want {
			t.Errorf("%v %v %v: %v each, want %v (%v)", tt.hold, tt.load, tt.stated, got, tt.want, err)
		}
	}
}

const goodJSON = `{"day":"2026-11-25","exercise":"seated-press","side":"both","hold":"one in each hand","load":"8 kg","stated":"per hand","reps":6,"effort":"rir 2"}`

func TestJSON(t *testing.T) {
	text, err := json.Marshal(good)
	if err != nil || string(text) != goodJSON {
		t.Errorf("%s, want %s (%v)", text, goodJSON, err)
	}
	var back setlog.Set
	if err := field.Decode(text, &back, field.Strict); err != nil || back != good {
		t.Errorf("reads back as %+v (%v)", back, err)
	}
	bare := setlog.Set{Exercise: "squat", Side: body.Both, Hold: body.Unloaded, Reps: 8}
	text, _ = json.Marshal(bare)
	if want := `{"exercise":"squat","side":"both","hold":"unloaded","load":"0 kg","reps":8}`; string(text) != want {
		t.Errorf("%s, want %s", text, want)
	}
}

func TestStrictJSON(t *testing.T) {
	tests := []struct {
		name, text string
		paths      []string
		want       error
	}{
		{"duplicate", `{"reps":6,"reps":7}`, []string{"/reps"}, field.ErrDuplicate},
		{"unknown", `{"weight":"8 kg"}`, []string{"/weight"}, field.ErrUnknown},
		{"other case", `{"Reps":6}`, []string{"/Reps"}, field.ErrUnknown},
		{"bare number", `{"load":"8"}`, []string{"/load"}, field.ErrMissing},
		{"number for a mass", `{"load":8}`, []string{"/load"}, field.ErrSyntax},
		{"null", `{"reps":null}`, []string{"/reps"}, field.ErrMissing},
		{"half a repetition", `{"reps":6.5}`, []string{"/reps"}, field.ErrSyntax},
		{"no such hold", `{"hold":"by the teeth"}`, []string{"/hold"}, field.ErrUnknown},
		{"all at once", `{"hold":"by the teeth","weight":1,"effort":"hard"}`, []string{"/hold", "/weight", "/effort"}, field.ErrUnknown},
	}
	for _, tt := range tests {
		s := good
		err := field.Decode([]byte(tt.text), &s, field.Strict)
		if diff := cmp.Diff(tt.paths, paths(t, err)); diff != "" || !errors.Is(err, tt.want) {
			t.Errorf("%s: %v, want %v at %v", tt.name, err, tt.want, tt.paths)
		}
		if s != good {
			t.Errorf("%s: a bad document left %+v", tt.name, s)
		}
	}
	for cut := range len(goodJSON) {
		if err := field.Decode([]byte(goodJSON[:cut]), new(setlog.Set), field.Strict); err == nil {
			t.Errorf("%s is taken", goodJSON[:cut])
		}
	}
}

func TestRoundTrip(t *testing.T) {
	holds := rapid.SampledFrom([]body.Hold{body.OneHand, body.OneEachHand, body.BothHandsOnOne, body.OnBar, body.OnStack})
	rapid.Check(t, func(t *rapid.T) {
		s := good
		s.Hold = holds.Draw(t, "hold")
		s.Stated = body.Total
		s.Load = units.Mass(rapid.Int64Range(0, 500*int64(units.Kilogram)).Draw(t, "load")) * 2
		s.Reps = rapid.IntRange(1, 1000).Draw(t, "reps")
		s.Effort = units.Must(units.RPE(float64(rapid.IntRange(2, 20).Draw(t, "rating")) / 2))
		s.Day = units.Day(rapid.Int32Range(0, 3652059).Draw(t, "day"))
		if err := s.Validate(); err != nil {
			t.Fatal(err)
		}
		text, err := json.Marshal(s)
		if err != nil {
			t.Fatal(err)
		}
		var back setlog.Set
		if err := field.Decode(text, &back, field.Strict); err != nil || back != s {
			t.Errorf("%s reads back as %+v (%v)", text, back, err)
		}
	})
}

func FuzzSetJSON(f *testing.F) {
	f.Add([]byte(goodJSON))
	f.Add([]byte(`{"load":"-8 kg","reps":1e9}`))
	f.Add([]byte(`{"reps":6,"reps":7}`))
	f.Add([]byte(`{"effort":"rpe 8.3"`))
	f.Add([]byte(`[]`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var s setlog.Set
		if err := field.Decode(data, &s, field.Strict); err != nil {
			if s != (setlog.Set{}) {
				t.Errorf("%s left %+v", data, s)
			}
			return
		}
		text, err := json.Marshal(s)
		if err != nil {
			t.Fatalf("%+v does not marshal: %v", s, err)
		}
		var back setlog.Set
		if err := field.Decode(text, &back, field.Strict); err != nil || back != s {
			t.Errorf("%s reads back as %+v (%v)", text, back, err)
		}
		if each, err := s.Each(); err == nil && each < 0 {
			t.Errorf("%s weighs %v each", text, each)
		}
	})
}

// Eight kilograms in two hands: each, or together?
func ExampleSet_Each() {
	s := good
	s.Stated = 0
	_, err := s.Each()
	fmt.Println(err)
	// Output:
	// not given: /stated = 8 kg, allowed: "per hand" or "total" beside a mass for two dumbbells
}

// A log of a set, and of a bad row, names nobody and nothing that was told.
func TestLogNamesNobody(t *testing.T) {
	set := setlog.Set{Key: "somebody", Day: units.Must(units.NewDay(2026, 11, 30)), Exercise: "goblet-squat", Side: body.Both, Load: 2 * units.Kilogram, Reps: 10, Effort: units.Must(units.InReserve(4))}
	row := &setlog.RowError{Line: 3, Column: 7, Name: "reps", Text: "somebody", Err: field.New("/reps", "somebody", "1 to 1000 repetitions", field.ErrSyntax)}
	var none *setlog.RowError
	for _, tt := range []struct {
		v    slog.LogValuer
		want string
	}{
		{set, "[exercise=goblet-squat side=both day=2026-11-30 load=2 kg reps=10]"},
		{row, "line 3, column 7: /reps: malformed"},
		{none, "line 0, column 0: <nil>"},
	} {
		if got := tt.v.LogValue().String(); got != tt.want {
			t.Errorf("%s, want %s", got, tt.want)
		}
	}
}
