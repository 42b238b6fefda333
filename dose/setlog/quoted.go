package setlog

import (
	"bytes"
	"fmt"
	"io"
	"slices"

	"example.org/posology/units/field"
)

// A quotedRecord is the cutting of a record that has a quote.
type quotedRecord struct {
	c     *records
	taken int    // bytes of the record
	lines int    // of it
	line  []byte // the rest of the last of them, its end an LF
	at    place  // of the rest
	ends  []int  // of the cells in c.unquote
}

// quoted cuts a record that has a quote, step by step as encoding/csv does.
func (c *records) quoted() error {
	c.line = c.lines + 1
	c.cells, c.places, c.unquote = c.cells[:0], c.places[:0], c.unquote[:0]
	q := quotedRecord{c: c, at: place{c.line, 1}}
	err := q.more()
	for more := true; more && err == nil; {
		more, err = q.cell()
	}
	if err == errTooLong {
		first, _ := c.lineAt(0) // was read before
		c.at += len(first)
		c.findQuote(c.at)
		return c.refused()
	}
	c.whole, c.ascii = c.buf[c.at:c.at+q.taken], false
	c.at += q.taken
	c.lines += q.lines
	c.findQuote(c.at)
	if err != nil {
		return err
	}
	from := 0
	for _, end := range q.ends {
		c.cells = append(c.cells, c.unquote[from:end])
		from = end
	}
	return nil
}

// more takes the next line of the log in.
func (q *quotedRecord) more() error {
	line, err := q.c.lineAt(q.taken)
	if err != nil {
		return err
	}
	q.taken += len(line)
	q.lines++
	if q.line = line; bytes.HasSuffix(line, crlf) {
		q.line = slices.Concat(line[:len(line)-2], lf) // a copy: what was read stays as it is
	} else if !bytes.HasSuffix(line, lf) {
		q.line = bytes.TrimSuffix(line, cr)
	}
	if len(q.line) == 0 {
		return io.EOF // a CR alone ends the log
	}
	return nil
}

var crlf = []byte("\r\n")

// step passes over n bytes of the line.
func (q *quotedRecord) step(n int) { q.line, q.at.column = q.line[n:], q.at.column+n }

// cell cuts off a cell; more says that another follows.
func (q *quotedRecord) cell() (more bool, err error) {
	begun := q.at
	if len(q.line) > 0 && q.line[0] == '"' {
		q.step(1)
		return q.inQuotes(begun)
	}
	i := bytes.IndexByte(q.line, q.c.comma)
	text := bytes.TrimSuffix(q.line, lf)
	if i >= 0 {
		text = q.line[:i]
	}
	if j := bytes.IndexByte(text, '"'); j >= 0 {
		return false, q.wrong(place{q.at.line, q.at.column + j})
	}
	q.c.unquote = append(q.c.unquote, text...)
	q.done(begun)
	if i >= 0 {
		q.step(i + 1)
	}
	return i >= 0, nil
}

// inQuotes cuts off a cell whose opening quote is passed.
func (q *quotedRecord) inQuotes(begun place) (more bool, err error) {
	for {
		i := bytes.IndexByte(q.line, '"')
		if i < 0 {
			if err := q.nextLine(); err != nil {
				return false, err
			}
			continue
		}
		q.c.unquote = append(q.c.unquote, q.line[:i]...)
		q.step(i + 1)
		switch {
		case len(q.line) > 0 && q.line[0] == '"':
			q.c.unquote = append(q.c.unquote, '"')
			q.step(1)
		case len(q.line) > 0 && q.line[0] == q.c.comma:
			q.done(begun)
			q.step(1)
			return true, nil
		case len(q.line) == 0 || q.line[0] == '\n':
			q.done(begun)
			return false, nil
		default:
			return false, q.wrong(place{q.at.line, q.at.column - 1})
		}
	}
}

// nextLine goes on with a cell in quotes behind the end of a line.
func (q *quotedRecord) nextLine() error {
	q.c.unquote = append(q.c.unquote, q.line...)
	q.step(len(q.line))
	if err := q.more(); err != nil {
		if err != io.EOF {
			return err
		}
		return q.wrong(q.at)
	}
	q.at = place{q.at.line + 1, 1}
	return nil
}

func (q *quotedRecord) done(begun place) {
	q.ends = append(q.ends, len(q.c.unquote))
	q.c.places = append(q.c.places, begun)
}

// wrong says where a quote is wrong, and which lines that spoils.
func (q *quotedRecord) wrong(at place) error {
	var got any
	if q.lines > 1 {
		got = fmt.Sprintf("a cell that goes on from line %d to line %d", q.c.line, q.c.line+q.lines-1)
	}
	return &RowError{Line: at.line, Column: at.column,
		Err: field.Bad(got, `a cell in double quotes to its end, "" for a quote within`, field.ErrSyntax)}
}
