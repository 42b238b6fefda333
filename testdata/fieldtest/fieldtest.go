package fieldtest

import (
	"encoding/csv"
	"encoding/json"
	"errors"
	"os"
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

// Table reads a file of published values in whose first lines # may stand: the names of
// the columns and the rows.
func Table(t T, path string, comma rune) (columns []string, rows [][]string) {
	t.Helper()
	file, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment, r.Comma = '#', comma
	all, err := r.ReadAll()
	if err != nil || len(all) == 0 {
		t.Fatalf("%s: %d lines, %v", path, len(all), err)
	}
	return all[0], all[1:]
}

// Rows reads such a file row by row, each by the names of its columns.
func Rows(t T, path string, comma rune) []map[string]string {
	t.Helper()
	columns, list := Table(t, path, comma)
	rows := make([]map[string]string, len(list))
	for i, cells := range list {
		rows[i] = map[string]string{}
		for j, name := range columns {
			rows[i][name] = cells[j]
		}
	}
	return rows
}
