package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"example.org/posology/dose/cohort"
)

// A shard is one part of several, counted from 1.
type shard struct{ number, of int }

const mostShards = 10_000

// MarshalText writes 1/4, and nothing for none.
func (s shard) MarshalText() ([]byte, error) {
	if s.of == 0 {
		return nil, nil
	}
	return fmt.Appendf(nil, "%d/%d", s.number, s.of), nil
}

// UnmarshalText reads what MarshalText writes.
func (s *shard) UnmarshalText(text []byte) error {
	var got shard
	n, err := fmt.Sscanf(string(text)+" ", "%d/%d ", &got.number, &got.of)
	if err != nil || n != 2 || got.number < 1 || got.number > got.of || got.of > mostShards {
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
func (s shard) cut(log io.ReaderAt, size int64) (*slice, error) {
	cut := &slice{ReaderAt: log}
	from, to := size*int64(s.number-1)/int64(s.of), size*int64(s.number)/int64(s.of)
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
			if begins && lines > 0 && place >= to && s.number < s.of {
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

// kept names the files of a shard.
func (j *job) kept(number int) (sums, rejects string) {
	return filepath.Join(j.out, fmt.Sprintf("shard-%d.cohort", number)), filepath.Join(j.out, fmt.Sprintf("shard-%d.rejects.csv", number))
}

// keep writes the shard.
func (j *job) keep(ctx context.Context, c *cohort.Cohort) error {
	sums, rejects := j.kept(j.shard.number)
	return errors.Join(whole(ctx, sums, c.Encode), whole(ctx, rejects, func(w io.Writer) error { return writeRejects(w, j.rejects) }))
}

// merged puts the shards together.
func (j *job) merged() (*cohort.Cohort, error) {
	sum := j.study.NewCohort()
	for number := 1; number <= j.merge; number++ {
		sums, rejects := j.kept(number)
		f, err := os.Open(sums)
		if err != nil {
			return nil, err
		}
		part, err := j.study.Decode(f)
		f.Close()
		if err == nil {
			err = sum.Merge(part)
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", sums, err)
		}
		g, err := os.Open(rejects)
		if err != nil {
			return nil, err
		}
		more, err := readRejects(g)
		g.Close()
		if err != nil {
			return nil, fmt.Errorf("%s: %w", rejects, err)
		}
		j.rejects = append(j.rejects, more...)
	}
	return sum, nil
}
