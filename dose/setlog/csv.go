package setlog

import (
	"bytes"
	"encoding"
	"errors"
	"fmt"
	"io"
	"iter"
	"slices"
	"strconv"
	"strings"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// ReadCSV yields the sets of a log whose first line names its columns; the
// package comment lists them, without regard to case and outer spaces. It reads r as far
// as the sequence is followed, once.
//
// An unknown column, one named twice, or a needed one that is missing is a
// [*RowError] of the first line, the only thing then yielded. Each bad row is a
// [*RowError] that unwraps to its [field.Errors], and the reading goes on.
// An error of r itself comes last; no reader at all is a [field.ErrMissing]. Sets are valid by [Set.Validate].
func ReadCSV(r io.Reader) iter.Seq2[Set, error] {
	return func(yield func(Set, error) bool) {
		if r == nil {
			yield(Set{}, missing("a reader"))
			return
		}
		l := newLines(r)
		c := csvReader{memos: newMemos()}
		if bad := c.header(l); bad != nil {
			yield(Set{}, bad)
			return
		}
		rows(l, c.row)(yield)
	}
}

// A column of the log; its name is that of the field in JSON.
type column struct {
	name   string
	needed bool
	read   func(m *memos, text []byte, s *Set) error
	write  func(s Set) (string, error)
}

var columns = [...]column{
	{"person", false,
		reads(func(m *memos, s *Set) (memo[body.Key], *body.Key) { return m.person, &s.Key }, oneLine[body.Key]),
		func(s Set) (string, error) { return string(s.Key), nil }},
	{"day", false,
		reads(func(m *memos, s *Set) (memo[units.Day], *units.Day) { return m.day, &s.Day }, parse[units.Day]),
		func(s Set) (string, error) { return marshalled(s.Day) }},
	{"exercise", true,
		reads(func(m *memos, s *Set) (memo[exercise.ID], *exercise.ID) { return m.exercise, &s.Exercise }, oneLine[exercise.ID]),
		func(s Set) (string, error) { return string(s.Exercise), nil }},
	{"side", true,
		reads(func(m *memos, s *Set) (memo[body.Side], *body.Side) { return m.side, &s.Side }, parse[body.Side]),
		func(s Set) (string, error) { return marshalled(s.Side) }},
	{"hold", true,
		reads(func(m *memos, s *Set) (memo[body.Hold], *body.Hold) { return m.hold, &s.Hold }, parse[body.Hold]),
		func(s Set) (string, error) { return marshalled(s.Hold) }},
	{"load", true,
		reads(func(m *memos, s *Set) (memo[units.Mass], *units.Mass) { return m.load, &s.Load }, units.ParseMass),
		func(s Set) (string, error) { return marshalled(s.Load) }},
	{"stated", false,
		reads(func(m *memos, s *Set) (memo[body.Stated], *body.Stated) { return m.stated, &s.Stated }, parse[body.Stated]),
		func(s Set) (string, error) { return marshalled(s.Stated) }},
	{"reps", true,
		reads(func(m *memos, s *Set) (memo[int], *int) { return m.reps, &s.Reps }, parseReps),
		func(s Set) (string, error) { return strconv.Itoa(s.Reps), nil }},
	{"effort", false,
		reads(func(m *memos, s *Set) (memo[units.Effort], *units.Effort) { return m.effort, &s.Effort }, parse[units.Effort]),
		func(s Set) (string, error) { return marshalled(s.Effort) }},
	{"rep_seconds", false,
		reads(func(m *memos, s *Set) (memo[float64], *float64) { return m.seconds, &s.RepSeconds }, parseSeconds),
		func(s Set) (string, error) {
			if s.RepSeconds == 0 {
				return "", nil
			}
			return strconv.FormatFloat(s.RepSeconds, 'f', -1, 64), nil
		}},
}

// reads makes the reading of a field of a set by the texts met so far.
func reads[T any](at func(*memos, *Set) (memo[T], *T), parse func(string) (T, error)) func(*memos, []byte, *Set) error {
	return func(m *memos, text []byte, s *Set) (err error) {
		met, into := at(m, s)
		*into, err = met.get(text, parse)
		return err
	}
}

// memos are the texts met so far, by column.
type memos struct {
	person   memo[body.Key]
	day      memo[units.Day]
	exercise memo[exercise.ID]
	side     memo[body.Side]
	hold     memo[body.Hold]
	load     memo[units.Mass]
	stated   memo[body.Stated]
	reps     memo[int]
	effort   memo[units.Effort]
	seconds  memo[float64]
}

func newMemos() memos {
	return memos{memo[body.Key]{}, memo[units.Day]{}, memo[exercise.ID]{}, memo[body.Side]{}, memo[body.Hold]{},
		memo[units.Mass]{}, memo[body.Stated]{}, memo[int]{}, memo[units.Effort]{}, memo[float64]{}}
}

// oneLine reads a text that [WriteCSV] can write.
func oneLine[T ~string](s string) (T, error) {
	if strings.ContainsAny(s, "\r\n") {
		return "", field.Bad(fmt.Sprintf("%.40q", s), "text on one line", field.ErrSyntax)
	}
	return T(s), nil
}

func asKey(s string) (body.Key, error)   { return body.Key(s), nil }
func asID(s string) (exercise.ID, error) { return exercise.ID(s), nil }

// parse reads what the type's own text is.
func parse[T any, P interface {
	*T
	encoding.TextUnmarshaler
}](s string) (T, error) {
	var v T
	err := P(&v).UnmarshalText([]byte(s))
	return v, err
}

func parseReps(s string) (int, error) {
	if s == "" {
		return 0, field.Bad(nil, "1 to 1000 repetitions", field.ErrMissing)
	}
	n, err := strconv.Atoi(wholeNumber(s))
	if err != nil {
		return 0, field.Bad(fmt.Sprintf("%.40q", s), "a whole number of repetitions", field.ErrSyntax)
	}
	return n, nil
}

// wholeNumber cuts off one or two zeros behind a decimal sign, which programs put there. Three
// may be thousands.
func wholeNumber(s string) string {
	number, zeros, pointed := strings.Cut(strings.Replace(s, ",", ".", 1), ".")
	if pointed && (zeros == "0" || zeros == "00") && number != "" {
		return number
	}
	return s
}

func parseSeconds(s string) (float64, error) {
	if s == "" {
		return 0, nil
	}
	x, err := strconv.ParseFloat(s, 64)
	if err != nil || strings.Trim(s, "-.0123456789") != "" {
		return 0, field.Bad(fmt.Sprintf("%.40q", s), "seconds of one repetition, such as 6 or 4.5", field.ErrSyntax)
	}
	return x, nil
}

func marshalled(v encoding.TextMarshaler) (string, error) {
	b, err := v.MarshalText()
	return string(b), err
}

// A csvReader keeps the order of the columns and room for one row.
type csvReader struct {
	order []int // places in columns
	cells []csvCell
	set   Set // kept here, since a variable of row would escape
	memos memos
}

// header reads the line that names the columns.
func (c *csvReader) header(l *lines) *RowError {
	line, err := l.next()
	if err == io.EOF {
		return &RowError{Line: 1, Column: 1, Err: field.Bad(nil, "a first line that names the columns", field.ErrMissing)}
	}
	if err == nil {
		err = c.split(line)
	}
	if err != nil {
		return &RowError{Line: l.n, Column: 1, Err: err}
	}
	var bad field.Errors
	for _, cell := range c.cells {
		bad.Add("", c.place(string(cell.text)))
	}
	for i, col := range columns {
		bad.Refuse(col.needed && !slices.Contains(c.order, i), "/"+col.name, nil, "a column "+col.name, field.ErrMissing)
	}
	if len(bad) == 0 {
		return nil
	}
	if bytes.IndexByte(line, '\r') >= 0 {
		return &RowError{Line: l.n, Column: 1, Err: errLineEnds}
	}
	e := &RowError{Line: l.n, Column: 1, Name: strings.TrimPrefix(bad[0].Path, "/"), Err: bad}
	at := slices.IndexFunc(c.cells, func(x csvCell) bool { return folded(string(x.text)) == folded(e.Name) })
	if errors.Is(bad[0], field.ErrDuplicate) {
		at += 1 + slices.IndexFunc(c.cells[at+1:], func(x csvCell) bool { return folded(string(x.text)) == folded(e.Name) })
	}
	if at >= 0 {
		e.Column = c.cells[at].column
	}
	return e
}

// errLineEnds: the lines of a log end as those of old computers do, so that all are one.
var errLineEnds error = field.Bad("lines that end in CR", "lines that end in LF or CR LF", field.ErrSyntax)

// place takes the next column in.
func (c *csvReader) place(name string) error {
	i := slices.IndexFunc(columns[:], func(col column) bool { return col.name == folded(name) })
	switch {
	case i < 0:
		return field.New("/"+name, nil, "columns "+columnNames(), field.ErrUnknown)
	case slices.Contains(c.order, i):
		return field.New("/"+name, nil, "each column once", field.ErrDuplicate)
	}
	c.order = append(c.order, i)
	return nil
}

func columnNames() string {
	var names []string
	for _, col := range columns {
		names = append(names, col.name)
	}
	return strings.Join(names, ", ")
}

// row reads one line.
func (c *csvReader) row(line []byte) (Set, *RowError) {
	err := c.split(line)
	if err == nil && len(c.cells) != len(c.order) {
		err = field.Bad(fmt.Sprintf("%d cells", len(c.cells)), fmt.Sprintf("%d cells, as in the first line", len(c.order)), field.ErrSyntax)
	}
	if err != nil {
		return Set{}, &RowError{Column: 1, Err: field.At("", err)}
	}
	c.set = Set{}
	var bad field.Errors
	loaded := true
	for i, cell := range c.cells {
		col := &columns[c.order[i]]
		if col.name == "load" && len(cell.text) == 0 {
			loaded = false
			continue
		}
		if err := col.read(&c.memos, cell.text, &c.set); err != nil {
			bad.Add("/"+col.name, err)
		}
	}
	if bad = check(c.set, loaded, bad); len(bad) > 0 {
		return Set{}, c.fault(bad)
	}
	return c.set, nil
}

// fault names the place of the first bad cell in the row.
func (c *csvReader) fault(bad field.Errors) *RowError {
	for i, cell := range c.cells {
		if name := columns[c.order[i]].name; has(bad, "/"+name) {
			return &RowError{Column: cell.column, Name: name, Err: bad}
		}
	}
	return &RowError{Column: 1, Name: strings.TrimPrefix(bad[0].Path, "/"), Err: bad} // of a column that is not there
}

// A csvCell is one text of a row, within the line at hand.
type csvCell struct {
	text   []byte
	column int // byte from 1 at which it stands
}

// split cuts the line into cells; quoted ones are rid of their quotes in place.
func (c *csvReader) split(line []byte) error {
	c.cells = c.cells[:0]
	for at := 0; ; {
		text, size, err := cut(line[at:])
		if err != nil {
			return err
		}
		c.cells = append(c.cells, csvCell{text, at + 1})
		at += size
		if at >= len(line) {
			return nil
		}
		at++ // the comma
		if at == len(line) {
			c.cells = append(c.cells, csvCell{nil, at + 1})
			return nil
		}
	}
}

// cut returns the first cell of line and how many bytes it takes up to the
// comma or the end.
func cut(line []byte) (text []byte, size int, err error) {
	if len(line) == 0 || line[0] != '"' {
		size = bytes.IndexByte(line, ',')
		if size < 0 {
			size = len(line)
		}
		if bytes.IndexByte(line[:size], '"') >= 0 {
			return nil, 0, quoteError(line[:size])
		}
		return line[:size], size, nil
	}
	end := 1 // of what the cell says, its doubled quotes made single
	for i := 1; i < len(line); i++ {
		switch {
		case line[i] != '"':
		case i+1 < len(line) && line[i+1] == '"':
			i++
		case i+1 == len(line) || line[i+1] == ',':
			return line[1:end], i + 1, nil
		default:
			return nil, 0, quoteError(line)
		}
		line[end] = line[i]
		end++
	}
	return nil, 0, quoteError(line)
}

func quoteError(text []byte) error {
	return field.Bad(fmt.Sprintf("%.40q", text), `a cell in double quotes to its end, "" for a quote within`, field.ErrSyntax)
}
