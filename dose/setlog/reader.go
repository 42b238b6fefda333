package setlog

import (
	"errors"
	"fmt"
	"io"
	"iter"
	"maps"
	"slices"
	"strings"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Reader reads logs as people have them: it says which column of the log holds what,
// and what goes for every row. The zero Reader reads columns that are called as the
// fields are, and JSON Lines with those names; it passes over all others.
//
// Cells lose outer spaces. A decimal sign is a point or a comma. Numbers may be text or
// number in JSON. A row whose cells are all empty is passed over.
type Reader struct {
	// Columns names, by field, the column of the log that holds it. The fields are
	// those that the package comment lists and
	//
	//	unit   of the load: kg, g, lb, oz; a cell of load may have it too
	//	scale  of the effort: rir, rpe, ...; a cell of effort may have it too
	//	rpe    a rating on that scale, and
	//	rir    one on this; of two that are filled the one with less in reserve is kept,
	//	       and what contradicts another is an error
	//	set    number of the set, 1 to 999: it is checked, and goes no further
	//
	// A column that is named here has to be there. Fields that are not named have no
	// column; without any name here each has the column of its own name, if there is
	// one. Names are compared without regard to case and outer spaces.
	Columns map[string]string `json:"columns,omitempty"`
	Comma   string            `json:"comma,omitzero"`    // what parts cells: one byte, such as ";" or a tab; "," if empty
	Missing []string          `json:"missing,omitempty"` // texts that say what an empty cell does, such as "NA"
	// DayForm says how days are written where that is not 2026-11-25: day, month and year
	// in their order, parted by a point, a slash, a hyphen or a space, such as
	// "day/month/year" or "month.day.year". Days and months may have one digit, years
	// have four.
	DayForm string `json:"day_form,omitzero"`
	// From and Until are the first and the last day that a set may be of without being
	// asked about; zero: none.
	From  units.Day `json:"from,omitzero"`
	Until units.Day `json:"until,omitzero"`
	// Sides are what the log calls sides, such as "R", beside left, right and both;
	// Exercises the IDs of what it calls exercises. Both are compared without regard to
	// case and outer spaces.
	Sides     map[string]body.Side   `json:"sides,omitempty"`
	Exercises map[string]exercise.ID `json:"exercises,omitempty"`

	Unit  units.MassUnit `json:"unit,omitzero"`  // of loads that have none; zero: such a load is refused, save 0
	Scale units.Scale    `json:"scale,omitzero"` // of efforts that have none; zero: such an effort is refused
	// Side, Hold and, where two weights are held, Stated go for cells that are empty or
	// have no column.
	Side   body.Side   `json:"side,omitzero"`
	Hold   body.Hold   `json:"hold,omitzero"`
	Stated body.Stated `json:"stated,omitzero"`
	// Catalogue, if it has exercises, is where their names are looked up, by ID, name
	// or alias; then a hold that is said nowhere is that of the exercise, and so is
	// the side of an exercise that is not one-sided: both.
	Catalogue exercise.Catalogue `json:"catalogue,omitzero"`
}

// A LoggedSet is a set with its place in a log.
type LoggedSet struct {
	Set  Set `json:"set"`
	Line int `json:"line"` // at which it begins, from 1; the header counts
	// Doubts are what makes a slip of the pen likely, though the set can be read as it
	// is: see [Facts].
	Doubts []evidence.Reason `json:"doubts,omitempty"`
}

// The fields of a log: those of columns, in their order, and five more.
const (
	ofPerson = iota
	ofDay
	ofExercise
	ofSide
	ofHold
	ofLoad
	ofStated
	ofReps
	ofEffort
	ofSeconds
	ofUnit
	ofScale
	ofRPE
	ofRIR
	ofSet
	numFields
)

// fieldNames are what the fields are called.
var fieldNames = func() (names [numFields]string) {
	for i, c := range columns {
		names[i] = c.name
	}
	names[ofUnit], names[ofScale], names[ofRPE], names[ofRIR], names[ofSet] = "unit", "scale", "rpe", "rir", "set"
	return names
}()

// Validate returns every bad field of rd at once: a field that there is not
// ([field.ErrUnknown]), a column that two fields have ([field.ErrDuplicate]) or that has no
// name, no column for a field that every set needs ([field.ErrMissing]), a comma
// that is more than one byte, a quote, a letter, a digit or the end of a line
// ([field.ErrSyntax]), and what is wrong with the form and range of days and the names of
// sides and exercises.
func (rd Reader) Validate() error {
	var bad field.Errors
	seen := map[string]string{}
	for _, name := range slices.Sorted(maps.Keys(rd.Columns)) {
		column, path := folded(rd.Columns[name]), "/columns/"+name
		switch other := seen[column]; {
		case !slices.Contains(fieldNames[:], name):
			bad.Add(path, field.Bad(nil, "fields "+strings.Join(fieldNames[:], ", "), field.ErrUnknown))
		case column == "":
			bad.Add(path, field.Bad(nil, "the name of a column", field.ErrMissing))
		case other != "":
			bad.Add(path, field.Bad(fmt.Sprintf("%.40q", column), "a column that is not that of "+other, field.ErrDuplicate))
		}
		seen[column] = name
	}
	for i, name := range fieldNames {
		if _, named := rd.Columns[name]; len(rd.Columns) > 0 && !named && rd.needs(i) {
			bad.Add("/columns/"+name, field.Bad(nil, "the column of "+name, field.ErrMissing))
		}
	}
	bad.Refuse(len(rd.Comma) > 1 || strings.ContainsAny(rd.Comma, "\"\r\n\x00 .+-") || strings.Trim(rd.Comma, letters) != rd.Comma || rd.Comma > "~", "/comma", fmt.Sprintf("%.40q", rd.Comma), `one byte, such as ";" or a tab`, field.ErrSyntax)
	bad.Add("", rd.checkDays())
	bad.Add("/sides", checkNames(rd.Sides, rd.checkSide))
	bad.Add("/exercises", checkNames(rd.Exercises, rd.checkExercise))
	return bad.Err()
}

const letters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789"

// folded is how names of columns are compared.
func folded(name string) string { return strings.ToLower(strings.TrimSpace(name)) }

// needs reports whether no set can do without a column for field i.
func (rd *Reader) needs(i int) bool {
	switch i {
	case ofExercise, ofReps, ofLoad:
		return true
	case ofSide:
		return rd.Side == 0 && rd.Catalogue.Len() == 0
	case ofHold:
		return rd.Hold == 0 && rd.Catalogue.Len() == 0
	}
	return false
}

// comma returns the byte that parts cells.
func (rd *Reader) comma() byte {
	if rd.Comma == "" {
		return ','
	}
	return rd.Comma[0]
}

// CSV yields the rows of a log whose first record names its columns. It reads r as far
// as the sequence is followed, once, and holds one record at a time, of at most one
// mebibyte. Records are cut as [encoding/csv] does: a cell in double quotes may span
// lines.
//
// The errors of [Reader.Validate] or a first record that does not fit are a
// [*RowError] of the first line, the only thing then yielded. Each bad row is a
// [*RowError] that unwraps to its [field.Errors], and the reading goes on. An error of
// r itself comes last, and no reader at all is a [field.ErrMissing]. Sets are valid by
// [Set.Validate].
func (rd Reader) CSV(r io.Reader) iter.Seq2[LoggedSet, error] {
	return func(yield func(LoggedSet, error) bool) {
		if r == nil {
			yield(LoggedSet{}, missing("a reader"))
			return
		}
		p, recs, err := rd.begin(r)
		if err != nil {
			yield(LoggedSet{}, err)
			return
		}
		p.rows(recs, func(row *LoggedSet, err error) bool { return yield(*row, err) })
	}
}

// begin reads the first record.
func (rd *Reader) begin(r io.Reader) (*parser, *records, error) {
	p := newParser(rd)
	if err := rd.Validate(); err != nil {
		return nil, nil, &RowError{Line: 1, Column: 1, Err: err}
	}
	recs := newRecords(r, rd.comma(), 0)
	recs.dropMark()
	switch err := recs.next(); {
	case err == io.EOF:
		return nil, nil, &RowError{Line: 1, Column: 1, Err: field.Bad(nil, "a first line that names the columns", field.ErrMissing)}
	case err != nil:
		return nil, nil, asRowError(err, recs)
	}
	if err := p.header(recs); err != nil {
		return nil, nil, err
	}
	return p, recs, nil
}

// asRowError gives what ended the reading the line that it ended at.
func asRowError(err error, recs *records) error {
	var row *RowError
	if errors.As(err, &row) {
		return row
	}
	return &RowError{Line: recs.lines + 1, Column: 1, Err: err}
}

// rows yields the rows up to the end, each in the place of the one before; false if yield
// wanted no more.
func (p *parser) rows(recs *records, yield func(*LoggedSet, error) bool) bool {
	var row LoggedSet
	for {
		err := recs.next()
		if err == io.EOF {
			return true
		}
		if err != nil {
			err = asRowError(err, recs)
			row = LoggedSet{}
			if !yield(&row, err) {
				return false
			}
			if !goesOn(err) {
				return true
			}
			continue
		}
		blank, bad := p.row(recs, &row)
		switch {
		case blank:
			continue
		case bad != nil:
			err = bad
		}
		if !yield(&row, err) {
			return false
		}
	}
}

// goesOn reports whether err is one of a row, after which the reading can go on.
func goesOn(err error) bool {
	var bad *field.Error
	return errors.As(err, &bad)
}

// dropMark passes over a mark of UTF-8 at the beginning of a log.
func (c *records) dropMark() {
	for c.end < len(mark) && c.fill() {
	}
	if n := len(mark); c.end >= n && string(c.buf[:n]) == mark {
		c.at = n
		c.findQuote(n)
	}
}

const mark = "\ufeff"
