package main

import (
	"encoding/csv"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A set was done to failure with a load, by somebody whose 1RM was measured.
type set struct {
	body   string // height, mass and years of training: who has all three alike counts as one person
	person body.Person
	load   units.Mass
	reps   int
	oneRM  units.Mass
}

// The columns that are read, as they stand in the open data. Others are passed
// over.
const (
	columnID     = "subject_ID"
	columnAge    = "age(yrs)"
	columnHeight = "height(cm)"
	columnMass   = "body_mass(kg)"
	columnYears  = "RT_experience(yrs)"
	columnOneRM  = "1RM_true(kg)"
)

var (
	percents  = []string{"90", "80", "70"}
	protocols = []string{"SV", "MV"} // one visit, several visits
)

func columnLoad(percent string) string           { return "load" + percent + "(n)" }
func columnReps(protocol, percent string) string { return protocol + "_reps" + percent + "(n)" }

// A record is one row, by the names of its columns.
type record struct {
	cells map[string]string
	line  int
	bad   field.Errors
}

// read returns the sets of a table with a row of names first; lines that begin
// with # are comments. Empty cells of loads and repetitions are passed over.
func read(from io.Reader) ([]set, error) {
	r := csv.NewReader(from)
	r.Comment = '#'
	names, err := r.Read()
	if err != nil {
		return nil, fmt.Errorf("the row of names: %w", err)
	}
	if err := checkNames(names); err != nil {
		return nil, err
	}
	var sets []set
	var bad field.Errors
	for {
		cells, err := r.Read()
		if err == io.EOF {
			break
		}
		if err != nil {
			return nil, err
		}
		line, _ := r.FieldPos(0)
		row := record{cells: map[string]string{}, line: line}
		for i, name := range names {
			row.cells[name] = cells[i]
		}
		sets = append(sets, row.sets()...)
		bad.Add("", row.bad.Err())
	}
	if len(sets) == 0 && len(bad) == 0 {
		bad.Add("", field.Bad(nil, "a row of data with a load and its repetitions", field.ErrMissing))
	}
	return sets, bad.Err()
}

func checkNames(names []string) error {
	want := []string{columnID, columnAge, columnHeight, columnMass, columnYears, columnOneRM}
	for _, percent := range percents {
		want = append(want, columnLoad(percent))
		for _, protocol := range protocols {
			want = append(want, columnReps(protocol, percent))
		}
	}
	var bad field.Errors
	for _, name := range want {
		if !slices.Contains(names, name) {
			bad.Add("", field.New("/"+name, nil, "a column of this name", field.ErrMissing))
		}
	}
	return bad.Err()
}

// sets returns the sets of a row, and gathers what is wrong with it.
func (row *record) sets() []set {
	person := body.Person{Age: body.Age(row.number(columnAge, 18, 120)), Training: body.Intermediate}
	if row.number(columnYears, 0, 100) < 0.5 { // half a year, as body.Training has it
		person.Training = body.Novice
	}
	like := strings.Join([]string{row.cells[columnHeight], row.cells[columnMass], row.cells[columnYears]}, "/")
	if strings.Trim(like, "/") == "" {
		like = row.cells[columnID]
	}
	oneRM := row.mass(columnOneRM)
	var list []set
	for _, protocol := range protocols {
		for _, percent := range percents {
			load, reps := columnLoad(percent), columnReps(protocol, percent)
			if row.cells[load] == "" || row.cells[reps] == "" {
				continue
			}
			list = append(list, set{like, person, row.mass(load), int(row.number(reps, 1, 1000)), oneRM})
		}
	}
	return list
}

// number reads a cell between two bounds; what is wrong is kept.
func (row *record) number(column string, low, high float64) float64 {
	text := row.cells[column]
	x, err := strconv.ParseFloat(text, 64)
	if err != nil || !(x >= low && x <= high) {
		path := fmt.Sprintf("/line %d/%s", row.line, column)
		row.bad.Add("", field.New(path, text, fmt.Sprintf("a number from %v to %v", low, high), field.ErrOutOfRange))
		return low
	}
	return x
}

func (row *record) mass(column string) units.Mass {
	kg, err := units.Kilograms(row.number(column, 0.1, 1000))
	row.bad.Add("/"+column, err)
	return kg
}
