package setlog

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"io"
	"math/bits"

	"example.org/posology/units/field"
)

// maxRecord is the longest record of a log that is read, in bytes with its line
// ends. Without an end to it, one quote that is never closed would be read into
// memory to the end of the log.
const maxRecord = 1 << 20

// firstRoom is the room that the reading of a log begins with.
const firstRoom = 128 << 10

// records cuts a log into records as [encoding/csv] does: a cell in double quotes
// may span lines, and empty lines are passed over. Lines without a quote, which
// most are, take a short way. A record of more than maxRecord bytes is refused by
// its first line alone, and the reading goes on with the second.
type records struct {
	r     io.Reader
	comma byte
	plain bool // a quote is errQuoted

	buf     []byte
	at, end int   // what is not cut yet
	quote   int   // where its first double quote stands; end if it has none
	before  int64 // bytes of the log before buf
	lines   int   // of the log before at
	err     error // that ended r, once all it gave is in buf

	line    int      // at which the record begins, from 1
	cells   [][]byte // of the record, valid until the next
	whole   []byte   // the record itself, its quotes with it
	ascii   bool     // whole was seen to be of ASCII
	places  []place  // of the cells of a record with quotes
	unquote []byte   // what such cells say
}

// A place is where something stands in the log: line and byte, both from 1.
type place struct{ line, column int }

// newRecords reads from r, of which the log has lines lines before.
func newRecords(r io.Reader, comma byte, lines int) *records {
	return &records{r: r, comma: comma, lines: lines, buf: make([]byte, firstRoom)}
}

// offset returns how many bytes of r are cut.
func (c *records) offset() int64 { return c.before + int64(c.at) }

// next cuts off the next record. A [*RowError] without a cause beyond the record is no
// end; io.EOF and other errors are.
func (c *records) next() error {
	for {
		line, err := c.lineAt(0)
		switch {
		case err == errTooLong:
			return c.skip()
		case err != nil:
			return err
		case c.quote < c.at+len(line) && c.plain:
			return errQuoted
		case c.quote < c.at+len(line):
			return c.quoted()
		}
		c.at += len(line)
		c.lines++
		if line = withoutEnd(line); len(line) > 0 {
			c.line, c.whole = c.lines, line
			c.split(line)
			return nil
		}
	}
}

// withoutEnd cuts off LF or CR LF, and a CR at the end of the log. No line is empty.
func withoutEnd(line []byte) []byte {
	n := len(line)
	if n > 0 && line[n-1] == '\n' {
		n--
	}
	if n > 0 && line[n-1] == '\r' {
		n--
	}
	return line[:n]
}

var lf, cr = []byte("\n"), []byte("\r")

// split cuts a line without quotes. It looks at eight bytes at a time, since cells are
// short: those that are the comma leave the top bit of theirs in hits.
func (c *records) split(line []byte) {
	const lows, tops = 0x7f7f7f7f7f7f7f7f, 0x8080808080808080
	c.places = c.places[:0]
	cells, from, at := c.cells[:0], 0, 0
	commas, seen := uint64(c.comma)*(tops>>7), uint64(0)
	for ; at+8 <= len(line); at += 8 {
		eight := binary.LittleEndian.Uint64(line[at:])
		seen |= eight
		other := eight ^ commas
		for hits := ^((other&lows + lows) | other) & tops; hits != 0; hits &= hits - 1 {
			i := at + bits.TrailingZeros64(hits)/8
			cells = append(cells, line[from:i])
			from = i + 1
		}
	}
	for i := at; i < len(line); i++ {
		seen |= uint64(line[i])
		if line[i] == c.comma {
			cells = append(cells, line[from:i])
			from = i + 1
		}
	}
	c.cells, c.ascii = append(cells, line[from:]), seen&tops == 0
}

// place returns where cell i stands.
func (c *records) place(i int) place {
	if len(c.places) > 0 {
		return c.places[i]
	}
	at := place{c.line, 1}
	for _, cell := range c.cells[:i] {
		at.column += len(cell) + 1
	}
	return at
}

// lineAt returns the line that begins so many bytes behind at, with its end; it may
// lack that at the end of the log. It is errTooLong where line and what is
// before it are more than a record may have, and what ended r where there is no line.
func (c *records) lineAt(from int) ([]byte, error) {
	seen := from
	for {
		rest := c.buf[c.at+seen : c.end]
		i := bytes.IndexByte(rest, '\n')
		switch {
		case i >= 0 && seen+i+1 > maxRecord, i < 0 && seen+len(rest) > maxRecord:
			return nil, errTooLong
		case i >= 0:
			return c.buf[c.at+from : c.at+seen+i+1], nil
		}
		seen += len(rest)
		if c.fill() {
			continue
		}
		if seen == from || c.err != io.EOF {
			return nil, c.err
		}
		return c.buf[c.at+from : c.end], nil
	}
}

// errQuoted: there is a quote where none may be.
var errQuoted = errors.New("setlog: a quote in a part of a log")

var errTooLong error = field.Bad(nil, fmt.Sprintf("a record of at most %d bytes", maxRecord), field.ErrOverflow)

// fill reads more behind what is not cut yet; false at the end of r.
func (c *records) fill() bool {
	if c.err != nil {
		return false
	}
	if c.at > 0 {
		copy(c.buf, c.buf[c.at:c.end])
		c.before += int64(c.at)
		c.quote, c.end, c.at = c.quote-c.at, c.end-c.at, 0
	}
	if c.end == len(c.buf) {
		c.buf = append(c.buf, make([]byte, len(c.buf))...)
	}
	old := c.end
	for range 100 { // as bufio does
		n, err := c.r.Read(c.buf[c.end:])
		c.end += n
		if c.err = err; n > 0 || err != nil {
			break
		}
	}
	if c.end == old && c.err == nil {
		c.err = io.ErrNoProgress
	}
	if c.quote == old {
		c.findQuote(old)
	}
	return c.end > old
}

// findQuote looks for the first quote from there on.
func (c *records) findQuote(from int) {
	c.quote = c.end
	if i := bytes.IndexByte(c.buf[from:c.end], '"'); i >= 0 {
		c.quote = from + i
	}
}

// skip refuses a line, all that there is of it.
func (c *records) skip() error {
	for {
		if i := bytes.IndexByte(c.buf[c.at:c.end], '\n'); i >= 0 {
			c.at += i + 1
			break
		}
		if c.at = c.end; !c.fill() {
			break
		}
	}
	c.findQuote(c.at)
	return c.refused()
}

// refused says that the line which was just passed over is too long.
func (c *records) refused() error {
	c.lines++
	c.line = c.lines
	return &RowError{Line: c.line, Column: 1, Err: errTooLong}
}
