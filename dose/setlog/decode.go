package setlog

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"iter"
	"unicode/utf8"

	"example.org/posology/units/field"
)

// A RowError reports one bad row of a log.
type RowError struct {
	Line   int    // of the log, from 1; the header counts
	Column int    // byte within the line, from 1, at which the first bad field stands; 1 for one that is not there
	Name   string // of the first bad field; empty if the row as a whole is bad
	Text   string // what a [Reader] found in its cell, the first 80 bytes
	Err    error  // the [field.Errors] of the row, or what the reader said
}

// Error gives the place and every bad field.
func (e *RowError) Error() string {
	e = field.OrZero(e)
	if e.Name == "" {
		return fmt.Sprintf("line %d, column %d: %v", e.Line, e.Column, e.Err)
	}
	return fmt.Sprintf("line %d, column %d (%s): %v", e.Line, e.Column, e.Name, e.Err)
}

// Unwrap returns the bad fields.
func (e *RowError) Unwrap() error { return field.OrZero(e).Err }

// maxLine is the longest line that is read, in bytes; a set takes about a hundred.
const maxLine = 64 << 10

// lines yields the lines of a log.
type lines struct {
	r *bufio.Reader
	n int // of the line at hand
}

func newLines(r io.Reader) *lines { return &lines{r: bufio.NewReaderSize(r, maxLine)} }

// next returns the next line that is not blank, without its end. It is valid
// until the next call. A line that is too long or not UTF-8 is a field error,
// after which the reading can go on; any other error ends it.
func (l *lines) next() ([]byte, error) {
	for {
		line, err := l.r.ReadSlice('\n')
		if len(line) == 0 && err != nil {
			return nil, err
		}
		l.n++
		if errors.Is(err, bufio.ErrBufferFull) {
			return nil, l.skip()
		}
		if err != nil && err != io.EOF {
			return nil, err
		}
		line = bytes.TrimSuffix(bytes.TrimSuffix(line, []byte("\n")), []byte("\r"))
		if l.n == 1 {
			line = bytes.TrimPrefix(line, []byte("\ufeff"))
		}
		switch {
		case len(bytes.TrimSpace(line)) == 0:
			continue
		case !utf8.Valid(line):
			return nil, field.Bad(fmt.Sprintf("%.40q", line), "UTF-8", field.ErrSyntax)
		}
		return line, nil
	}
}

// skip passes over the rest of a line that is too long.
func (l *lines) skip() error {
	for {
		_, err := l.r.ReadSlice('\n')
		if err == nil || err == io.EOF {
			return field.Bad(nil, fmt.Sprintf("a line of at most %d bytes", maxLine), field.ErrOverflow)
		}
		if !errors.Is(err, bufio.ErrBufferFull) {
			return err
		}
	}
}

// rows yields what read makes of each line. An error of the reader itself is
// yielded last.
func rows(l *lines, read func(line []byte) (Set, *RowError)) iter.Seq2[Set, error] {
	return func(yield func(Set, error) bool) {
		for {
			line, err := l.next()
			if err == io.EOF {
				return
			}
			if err != nil {
				var bad *field.Error
				goesOn := errors.As(err, &bad)
				if !yield(Set{}, &RowError{Line: l.n, Column: 1, Err: err}) || !goesOn {
					return
				}
				continue
			}
			s, bad := read(line)
			if bad != nil {
				bad.Line = l.n
				err = bad
			}
			if !yield(s, err) {
				return
			}
		}
	}
}

// check adds what [Set.Validate] says, and a load that is missing, to what is
// known to be bad already; one error a field.
func check(s Set, loaded bool, bad field.Errors) field.Errors {
	if !loaded && s.Hold.Implements() > 0 {
		bad.Add("", field.New("/load", nil, "a mass with its unit, such as 12.5 kg; 0 kg for no weight", field.ErrMissing))
	}
	err := s.Validate()
	if err == nil { // before more, which escapes
		return bad
	}
	var more field.Errors
	more.Add("", err)
	for _, f := range more {
		if !has(bad, f.Path) {
			bad = append(bad, f)
		}
	}
	return bad
}

func has(bad field.Errors, path string) bool {
	for _, f := range bad {
		if f.Path == path {
			return true
		}
	}
	return false
}

// memo remembers what texts stand for, so that a log's few days, loads and
// names are parsed once. It forgets everything when full.
type memo[T any] map[string]T

const (
	memoSize = 1 << 14
	memoText = 256 // bytes; a longer text is not worth keeping
)

func (m memo[T]) get(text []byte, parse func(string) (T, error)) (T, error) {
	if v, ok := m[string(text)]; ok {
		return v, nil
	}
	s := string(text)
	v, err := parse(s)
	if err != nil {
		var zero T
		return zero, err
	}
	if len(text) > memoText {
		return v, nil
	}
	if len(m) >= memoSize {
		clear(m)
	}
	m[s] = v
	return v, nil
}
