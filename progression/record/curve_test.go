package record_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose/exercise"
	"example.org/posology/progression/record"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// row is an exercise of the review, and steep a curve of it that is invented: it
// lets fewer repetitions show the next weight than the house equations do.
const (
	row   exercise.ID = "one-arm-dumbbell-row"
	steep string      = `{"form":"hyperbola","one_rm":"14 kg","shape":9,"covariance":[0.01,0,0.04],"freedom":4,"noise":0.04,"sets":6,"studied":{"min":1,"max":30}}`
)

// with is the stored record with curves, as text.
func with(t testing.TB, curves string) string {
	t.Helper()
	return strings.Replace(string(file(t, stored)), `"version": 4,`, `"version": 4, "curves": [`+curves+`],`, 1)
}

func curveOf(id exercise.ID, more, curve string) string {
	return `{"exercise":"` + string(id) + `"` + more + `,"curve":` + curve + `}`
}

// A stored curve is kept, and decides nothing: all that visits and tests have shown
// does, on one equation.
func TestCurveDecidesNothing(t *testing.T) {
	next := func(curves string) []record.Decided {
		r, err := record.Decode([]byte(with(t, curves)), field.Strict)
		if err != nil {
			t.Fatal(err)
		}
		items, err := r.Next(r.Review)
		if err != nil {
			t.Fatal(err)
		}
		return items
	}
	want := next("")
	for _, curves := range []string{curveOf(row, "", steep), curveOf(row, `,"side":"left"`, steep), curveOf(row, "", strings.Replace(steep, "30", "12", 1))} {
		if diff := cmp.Diff(encodedItems(t, want), encodedItems(t, next(curves))); diff != "" {
			t.Errorf("%s:\n%s", curves, diff)
		}
	}
}

// An entry keeps the curves that were there, and replays with them and without.
func TestCurveReplays(t *testing.T) {
	r, err := record.Decode([]byte(with(t, curveOf(row, "", steep))), field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	entry, err := r.Decide(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	r.Entries, r.Curves = []record.Entry{entry}, nil // the curve was dropped since
	text := encoded(t, r)
	again, err := record.Decode([]byte(text), field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	if encoded(t, again) != text || len(again.Entries[0].Given.Curves) != 1 {
		t.Error("another record after a pass")
	}
	if one := again.Replay()[0]; one.Err != nil {
		t.Error(one.Err)
	}
	again.Entries[0].Given.Curves = nil
	if one := again.Replay()[0]; one.Err != nil {
		t.Errorf("without the curve: %v", one.Err)
	}
}

// What is wrong with a curve is said where it stands.
func TestCurveErrors(t *testing.T) {
	good := curveOf(row, "", steep)
	for _, tt := range []struct {
		name, curves, path string
		kind               error
	}{
		{"a number that no curve has", curveOf(row, "", strings.Replace(steep, `"shape":9`, `"shape":0`, 1)), "/curves/0/curve/shape", field.ErrOutOfRange},
		{"a field that it has not", curveOf(row, "", strings.Replace(steep, `"sets"`, `"more":1,"sets"`, 1)), "/curves/0/curve/more", field.ErrUnknown},
		{"no curve", curveOf(row, "", "null"), "/curves/0/curve", field.ErrMissing},
		{"no such exercise", curveOf("one-arm-dumbell-row", "", steep), "/curves/0/exercise", field.ErrUnknown},
		{"no such side", curveOf(row, `,"side":"upper"`, steep), "/curves/0/side", field.ErrUnknown},
		{"twice", good + "," + curveOf(row, `,"side":"both"`, steep), "/curves/1/exercise", field.ErrDuplicate},
		{"mostly the body", curveOf("goblet-squat", "", steep), "/curves/0/exercise", field.ErrConflict},
	} {
		_, err := record.Decode([]byte(with(t, tt.curves)), field.Strict)
		var all field.Errors
		if !errors.As(err, &all) || len(all) != 1 || all[0].Path != tt.path || !errors.Is(all[0], tt.kind) || all[0].Line == 0 {
			t.Errorf("%s: %v, want %v at %s", tt.name, err, tt.kind, tt.path)
		}
	}
	r := read(t, stored)
	r.Curves = []record.StoredCurve{{Exercise: row, Side: body.Side(99)}}
	var all field.Errors
	if err := r.Validate(); !errors.As(err, &all) || len(all) != 2 || all[0].Path != "/curves/0/side" || all[1].Path != "/curves/0/curve" {
		t.Errorf("%v", err)
	}
}
