package setlog

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A parser makes rows of records, for one goroutine.
type parser struct {
	rd    *Reader
	at    [numFields]int // the place of each field among the cells; -1 for none
	width int            // cells of a row
	// numbered says that the number of the set is checked.
	numbered  bool
	days      dayForm
	sides     map[string]body.Side   // by what the log calls them
	exercises map[string]exercise.ID // likewise
	texts     [numFields][]byte

	memos memos
	one   [256]units.Effort // what a cell of one byte says of the effort
	named memo[*listed]
	last  struct { // the row before
		person, day, unit []byte
		key               body.Key
		on                units.Day
		listed            *listed
		of                units.MassUnit
		fine              Set // valid, whatever its numbers within their bounds
	}
}

// listed is what the catalogue says of an exercise; err of a name that it does not know,
// whose like is looked for once.
type listed struct {
	name string
	id   exercise.ID
	side body.Side
	hold body.Hold
	err  error
	next *listed // what came behind it the last time: sessions are alike
}

func newParser(rd *Reader) *parser {
	p := &parser{rd: rd, memos: newMemos(), named: memo[*listed]{}, sides: foldedNames(rd.Sides), exercises: foldedNames(rd.Exercises)}
	p.days, _ = dayFormOf(rd.DayForm) // checked by Validate
	p.last.listed = p.exercise(nil)
	return p
}

// fresh returns a parser for the same log that shares nothing that changes.
func (p *parser) fresh() *parser {
	q := newParser(p.rd)
	q.at, q.width, q.numbered = p.at, p.width, p.numbered
	return q
}

// header finds the columns.
func (p *parser) header(recs *records) error {
	p.width = len(recs.cells)
	var bad field.Errors
	first := -1 // cell with a fault
	for i := range fieldNames {
		name, needed := p.rd.column(i)
		p.at[i] = -1
		for k, cell := range recs.cells {
			switch {
			case name == "" || folded(string(cell)) != name:
			case p.at[i] >= 0:
				bad.Add("/"+fieldNames[i], field.Bad(fmt.Sprintf("%.40q", cell), "each column once", field.ErrDuplicate))
				first = k
			default:
				p.at[i] = k
			}
		}
		bad.Refuse(needed && p.at[i] < 0, "/"+fieldNames[i], nil, fmt.Sprintf("a column %q", name), field.ErrMissing)
	}
	if p.numbered = p.at[ofSet] >= 0; len(bad) == 0 {
		return nil
	}
	if bytes.IndexByte(recs.whole, '\r') >= 0 {
		return &RowError{Line: recs.line, Column: 1, Err: errLineEnds}
	}
	e := &RowError{Line: recs.line, Column: 1, Name: strings.TrimPrefix(bad[0].Path, "/"), Err: bad}
	if first >= 0 {
		at := recs.place(first)
		e.Line, e.Column = at.line, at.column
	}
	return e
}

// column returns what the column of field i is called, if it may have one, and whether
// it has to be there.
func (rd *Reader) column(i int) (name string, needed bool) {
	if len(rd.Columns) == 0 {
		return fieldNames[i], rd.needs(i)
	}
	name = folded(rd.Columns[fieldNames[i]])
	return name, name != ""
}

// row reads a record; of a bad one nothing is left in row. A row of empty cells is blank.
func (p *parser) row(recs *records, row *LoggedSet) (blank bool, bad *RowError) {
	*row = LoggedSet{Line: recs.line}
	if len(recs.cells) == p.width {
		if p.pick(recs.cells); (recs.ascii || utf8.Valid(recs.whole)) && p.quick(&row.Set) {
			row.Doubts = p.doubts(&row.Set)
			return false, nil
		}
	}
	if !slices.ContainsFunc(recs.cells, func(cell []byte) bool { return len(trim(cell)) > 0 }) {
		*row = LoggedSet{}
		return true, nil
	}
	if err := p.fits(recs.cells); err != nil {
		*row = LoggedSet{}
		return false, &RowError{Line: recs.line, Column: 1, Err: field.At("", err)}
	}
	set, faults := p.slow()
	if len(faults) > 0 {
		*row = LoggedSet{}
		return false, p.fault(recs, faults)
	}
	row.Set, row.Doubts = set, p.doubts(&set)
	return false, nil
}

// fits checks a record as a whole.
func (p *parser) fits(cells [][]byte) error {
	if len(cells) != p.width {
		return field.Bad(fmt.Sprintf("%d cells", len(cells)), fmt.Sprintf("%d cells, as in the first line", p.width), field.ErrSyntax)
	}
	for _, cell := range cells {
		if !utf8.Valid(cell) {
			return field.Bad(fmt.Sprintf("%.40q", cell), "UTF-8", field.ErrSyntax)
		}
	}
	return nil
}

// pick takes the texts of the fields out of the cells.
func (p *parser) pick(cells [][]byte) {
	missing := p.rd.Missing
	for i, at := range p.at {
		if at < 0 {
			continue
		}
		text := cells[at]
		if n := len(text); n > 0 && (text[0] <= ' ' || text[n-1] <= ' ') {
			text = trim(text)
		}
		for _, m := range missing {
			if string(text) == m {
				text = nil
			}
		}
		p.texts[i] = text
	}
}

// trim cuts off spaces and tabs.
func trim(cell []byte) []byte {
	for len(cell) > 0 && (cell[0] == ' ' || cell[0] == '\t') {
		cell = cell[1:]
	}
	for len(cell) > 0 && (cell[len(cell)-1] == ' ' || cell[len(cell)-1] == '\t') {
		cell = cell[:len(cell)-1]
	}
	return cell
}

// fault names the place and the text of the first bad cell.
func (p *parser) fault(recs *records, bad field.Errors) *RowError {
	first, of := len(recs.cells), -1
	for i, at := range p.at {
		if at >= 0 && at < first && has(bad, "/"+fieldNames[i]) {
			first, of = at, i
		}
	}
	if of < 0 { // of a column that is not there
		return &RowError{Line: recs.line, Column: 1, Name: strings.TrimPrefix(bad[0].Path, "/"), Err: bad}
	}
	at := recs.place(first)
	return &RowError{Line: at.line, Column: at.column, Name: fieldNames[of], Text: shortText(recs.cells[first]), Err: bad}
}

// shortText is what a bad cell says, cut after so many bytes.
func shortText(cell []byte) string {
	const most = 80
	if len(cell) <= most {
		return string(cell)
	}
	return strings.ToValidUTF8(string(cell[:most]), "") + "…"
}
