package cohorts

import (
	"bytes"
	"errors"
	"fmt"
	"io"
)

// A Shard is one part of several, counted from 1.
type Shard struct{ Number, Of int }

const mostShards = 10_000

// MarshalText writes 1/4, and nothing for none.
func (s Shard) MarshalText() ([]byte, error) {
	if s.Of == 0 {
		return nil, nil
	}
	return fmt.Appendf(nil, "%d/%d", s.Number, s.Of), nil
}

// UnmarshalText reads what MarshalText writes.
func (s *Shard) UnmarshalText(text []byte) error {
	var got Shard
	n, err := fmt.Sscanf(string(text)+" ", "%d/%d ", &got.Number, &got.Of)
	if err != nil || n != 2 || got.Number < 1 || got.Number > got.Of || got.Of > mostShards {
		return fmt.Errorf("a shard such as 1/4, up to %d", mostShards)
	}
	*s = got
	return nil
}

// A slice is the first line of a log and some others.
type slice struct {
	io.ReaderAt
	head     []byte
	from, to int64
	before   int // lines left out between
}

func (s *slice) size() int64 { return int64(len(s.head)) + s.to - s.from }

// ReadAt reads as if nothing lay between the first line and the others.
func (s *slice) ReadAt(p []byte, at int64) (int, error) {
	n := 0
	if at < int64(len(s.head)) {
		n = copy(p, s.head[at:])
	}
	room := max(0, min(int64(len(p)-n), s.size()-at-int64(n)))
	m, err := s.ReaderAt.ReadAt(p[n:n+int(room)], s.from+at+int64(n-len(s.head)))
	if n += m; n < len(p) && err == nil {
		err = io.EOF
	}
	return n, err
}

var errQuoted = errors.New("the log has double quotes, which may hide the end of a line: read it without -shard")

// cut finds the lines of the shard: those that begin in its share of the bytes.
func (s Shard) cut(log io.ReaderAt, size int64) (*slice, error) {
	cut := &slice{ReaderAt: log}
	from, to := size*int64(s.Number-1)/int64(s.Of), size*int64(s.Number)/int64(s.Of)
	buf := make([]byte, 1<<20)
	lines, begins := 0, true
	for at := int64(0); at < size; {
		n, err := log.ReadAt(buf[:min(int64(len(buf)), size-at)], at)
		if n == 0 {
			return nil, err
		}
		for rest := buf[:n]; len(rest) > 0; {
			place := at + int64(n-len(rest))
			if begins && lines > 0 && place >= from && cut.from == 0 {
				cut.from, cut.before = place, lines-1
			}
			if begins && lines > 0 && place >= to && s.Number < s.Of {
				cut.to = place
				return cut, nil
			}
			line := rest
			i := bytes.IndexByte(rest, '\n')
			if begins = i >= 0; begins {
				line = rest[:i+1]
			}
			if bytes.IndexByte(line, '"') >= 0 {
				return nil, errQuoted
			}
			if lines == 0 {
				cut.head = append(cut.head, line...)
			}
			if rest = rest[len(line):]; begins {
				lines++
			}
		}
		at += int64(n)
	}
	if cut.to = size; cut.from == 0 {
		cut.from = size
	}
	return cut, nil
}
