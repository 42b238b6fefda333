package record_test

import (
	"encoding/json"
	"errors"
	"reflect"
	"testing"

	"example.org/posology/dose/week"
	"example.org/posology/progression/record"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A kept plan has a week with a session, or says why there is none; whatever is stored,
// its reasons can be asked for.
func TestKeptPlans(t *testing.T) {
	r := read(t, visit)
	good, err := r.Decide(r.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	both := *good.Plan
	both.Stop = &record.Stop{}
	for _, tt := range []struct {
		plan record.Plan
		path string
		why  error
	}{
		{record.Plan{}, "/entries/0/plan/week", field.ErrConflict},
		{both, "/entries/0/plan/week", field.ErrConflict},
		{record.Plan{Week: &week.Week{}}, "/entries/0/plan/week/sessions", field.ErrMissing},
		{record.Plan{Week: &week.Week{Sessions: []week.Session{}}}, "/entries/0/plan/week/sessions", field.ErrMissing},
		{record.Plan{Stop: &record.Stop{}}, "", nil},
		{record.Plan{Week: &week.Week{Sessions: []week.Session{{}}}}, "", nil},
		{*good.Plan, "", nil},
	} {
		tt.plan.Reasons()
		e := good
		e.Plan = &tt.plan
		r.Entries = []record.Entry{e}
		_, err := record.Decode(units.Must(json.Marshal(r)), field.Strict)
		var want []string
		if tt.path != "" {
			want = []string{tt.path}
		}
		if got := fieldtest.Paths(err); !reflect.DeepEqual(got, want) || !errors.Is(err, tt.why) {
			t.Errorf("%v, want %s", err, tt.path)
		}
	}
}

// A day years ahead is named itself, not what follows from it.
func TestADayYearsAhead(t *testing.T) {
	r := read(t, review)
	for name, ask := range map[string]func(units.Day) error{
		"Assess": func(day units.Day) error { _, err := r.Assess(day); return err },
		"Next":   func(day units.Day) error { _, err := r.Next(day); return err },
	} {
		if err := ask(r.LastDay() + 36540); !reflect.DeepEqual(fieldtest.Paths(err), []string{"/day"}) || !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("%s: %v", name, err)
		}
	}
}
