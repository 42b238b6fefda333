package cases

import (
	"bytes"
	_ "embed"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units/field"
)

//go:embed screening-cases.csv
var published []byte

// Published returns the bytes of the published table, a copy of
// testdata/published/screening-cases.csv that every program can carry along.
func Published() []byte { return bytes.Clone(published) }

// A Case is a row of a table that could be read.
type Case struct {
	ID      string
	Source  string
	Profile screening.Profile
	Check   screening.Check
	want    answers
}

// columns of a table.
var columns = []string{"id", "inputs", "expected", "source"}

// byteOrderMark is what some spreadsheets put before a CSV file.
const byteOrderMark = "\ufeff"

// Read reads a table. What is no table at all is an error and gives no cases.
// A row that cannot be read is left out and reported with the rows beside it:
// the error is then a [field.Errors] whose paths begin with the row's id,
// such as /SC12/inputs/conditions/0. A code that is not known is a
// [field.ErrUnknown].
func Read(data []byte) ([]Case, error) {
	r := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(data, []byte(byteOrderMark))))
	r.Comment = '#'
	r.FieldsPerRecord = len(columns)
	header, err := r.Read()
	switch {
	case errors.Is(err, io.EOF):
		return nil, field.New("/header", nil, strings.Join(columns, ","), field.ErrMissing)
	case err != nil:
		return nil, fmt.Errorf("not a table of cases: %w", err)
	case !slices.Equal(header, columns):
		return nil, field.New("/header", fmt.Sprintf("%.60q", strings.Join(header, ",")), strings.Join(columns, ","), field.ErrSyntax)
	}
	var all []Case
	var bad field.Errors
	seen := map[string]bool{}
	for {
		row, err := r.Read()
		if errors.Is(err, io.EOF) {
			if len(seen) == 0 {
				bad.Add("/rows", field.Bad(nil, "a row for each case", field.ErrMissing))
			}
			return all, bad.Err()
		}
		if err != nil {
			return nil, fmt.Errorf("not a table of cases: %w", err)
		}
		line, _ := r.FieldPos(0)
		c, err := read(row)
		switch {
		case c.ID == "":
			err = field.New(fmt.Sprintf("/line %d/id", line), nil, "an id", field.ErrMissing)
		case seen[c.ID]:
			err = field.New("/"+c.ID+"/id", fmt.Sprintf("%q again in line %d", c.ID, line), "each id once", field.ErrDuplicate)
		default:
			err = field.At("/"+c.ID, err)
		}
		seen[c.ID] = true
		if err != nil {
			bad.Add("", err)
			continue
		}
		all = append(all, c)
	}
}

func read(row []string) (Case, error) {
	c := Case{ID: strings.TrimSpace(row[0]), Source: row[3]}
	var in inputs
	var bad field.Errors
	inputErr := field.Decode([]byte(row[1]), &in, field.Strict)
	if inputErr == nil {
		c.Profile, c.Check, inputErr = in.translate()
	}
	bad.Add("/inputs", inputErr)
	bad.Add("/expected", field.Decode([]byte(row[2]), &c.want, field.Strict))
	return c, bad.Err()
}
