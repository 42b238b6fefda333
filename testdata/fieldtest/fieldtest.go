package fieldtest

import (
	"encoding/json"
	"errors"
	"strconv"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// T is what a test and a rapid check have in common.
type T interface {
	Helper()
	Errorf(format string, args ...any)
	Fatal(args ...any)
	Fatalf(format string, args ...any)
}

// Paths lists the fields that an error names, none for none.
func Paths(err error) []string {
	var all field.Errors
	all.Add("", err)
	var list []string
	for _, f := range all {
		list = append(list, f.Path)
	}
	return list
}

// ComesBack holds that v reads back from its JSON and that unknown fields are refused.
func ComesBack[V any](t T, v V) {
	t.Helper()
	first := units.Must(json.Marshal(v))
	var back V
	if err := field.Decode(first, &back, field.Strict); err != nil {
		t.Errorf("%T: %v", v, err)
	}
	if again := units.Must(json.Marshal(back)); string(again) != string(first) {
		t.Errorf("%T: %s came back as %s", v, first, again)
	}
	if err := field.Decode([]byte(`{"surprise":1}`), &back, field.Strict); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("%T: an unknown field gives %v", v, err)
	}
}

// Number reads a number of a table.
func Number(t T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}
