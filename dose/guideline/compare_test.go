package guideline_test

import (
	"encoding/json"
	"fmt"
	"slices"
	"testing"

	"example.org/posology/dose/guideline"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

// TestCompare holds each cell of a table of all rows against the row.
func TestCompare(t *testing.T) {
	all := slices.Collect(guideline.All())
	table := guideline.Compare(all...)
	if !slices.Equal(table.Columns, ids(all)) {
		t.Errorf("columns %v", table.Columns)
	}
	fields := slices.DeleteFunc(slices.Collect(guideline.Fields()), func(f guideline.Field) bool { return f >= guideline.FieldPushPull }) // those that a row can state
	if len(table.Lines) != len(fields) {
		t.Fatalf("%d lines, want one for each of the %d fields", len(table.Lines), len(fields))
	}
	for i, line := range table.Lines {
		if line.Field != fields[i] || line.About == "" || line.About != line.Field.About() {
			t.Errorf("line %d is %s, %q, want %s", i, line.Field, line.About, fields[i])
		}
		for k, cell := range line.Cells {
			text, stated := all[k].Stated(line.Field)
			fact, _ := all[k].Fact(line.Field)
			if cell.Stated() != stated || cell.Basis != all[k].BasisOf(line.Field) || cell.Fact != fact || stated && text != line.About+": "+cell.Value {
				t.Errorf("%s of %s: %+v, want %q, %v", line.Field, all[k].ID, cell, text, stated)
			}
		}
	}
	if (guideline.Field(0)).About() != "" || (guideline.Field(99)).About() != "" {
		t.Error("what is no field is about something")
	}
}

// TestCompareIsSilent: what no column states has no line.
func TestCompareIsSilent(t *testing.T) {
	who, _ := guideline.Get("who2020-adults")
	fyfe, _ := guideline.Get("fyfe2022-minimal-dose")
	table := guideline.Compare(who, fyfe)
	var got []guideline.Field
	for _, line := range table.Lines {
		got = append(got, line.Field)
	}
	if want := []guideline.Field{guideline.FieldPopulation, guideline.FieldDays, guideline.FieldAerobic}; !slices.Equal(got, want) {
		t.Errorf("lines %v, want %v", got, want)
	}
	if days := table.Lines[1].Cells; days[0].Value != "at least 2" || days[1] != (guideline.Cell{}) {
		t.Errorf("days %+v", days)
	}
	if empty := guideline.Compare(); len(empty.Lines) != 0 || len(empty.Columns) != 0 {
		t.Errorf("nothing compared gives %+v", empty)
	}
	text, err := json.Marshal(table)
	var back guideline.Comparison
	if err != nil || field.Decode(text, &back, field.Strict) != nil || !cmp.Equal(back, table) {
		t.Errorf("%s, %v, comes back as %+v", text, err, back)
	}
	for _, bad := range []string{`{"columns":["a"],"lines":[{"field":"days","about":"","cells":[]}]}`, `{"columms":[]}`} {
		if err := field.Decode([]byte(bad), &back, field.Strict); err == nil || len(back.Columns) != 2 {
			t.Errorf("Unmarshal(%s) = %v, want an error and no change", bad, err)
		}
	}
}

func ExampleCompare() {
	var list []guideline.Recommendation
	for _, id := range []guideline.ID{"who2020-older", "acsm2011-older-start", "nsca2019-older-healthy"} {
		r, err := guideline.Get(id)
		if err != nil {
			fmt.Println(err)
			return
		}
		list = append(list, r)
	}
	table := guideline.Compare(list...)
	fmt.Println(table.Columns)
	for _, line := range table.Lines[2:5] {
		fmt.Print(line.About)
		for _, cell := range line.Cells {
			if !cell.Stated() {
				fmt.Print(" | -")
				continue
			}
			fmt.Printf(" | %s (%s)", cell.Value, cell.Basis)
		}
		fmt.Println()
	}
	// Output:
	// [who2020-older acsm2011-older-start nsca2019-older-healthy]
	// days a week | at least 2 (secondary) | 2 to 3 (published) | 2 to 3 (from memory)
	// sets per exercise | - | at least 1 (from memory) | 2 to 3 (secondary)
	// repetitions per set | - | 10 to 15 (from memory) | -
}

func BenchmarkCompare(b *testing.B) {
	b.ReportAllocs()
	list := guideline.For(guideline.Query{Goal: guideline.Strength, Age: 70})[:6]
	for b.Loop() {
		if len(guideline.Compare(list...).Lines) == 0 {
			b.Fatal("nothing is stated")
		}
	}
}
