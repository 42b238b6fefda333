package cohorts

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"sync/atomic"

	"example.org/posology/dose/setlog"
)

// ReadFile is [Plan.Read] of a file.
func (p Plan) ReadFile(ctx context.Context, name string, part Shard, workers int, progress io.Writer) (Sums, error) {
	f, err := os.Open(name)
	if err != nil {
		return Sums{}, err
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return Sums{}, err
	}
	return p.Read(ctx, f, info.Size(), part, workers, progress)
}

// Read reads a log of so many bytes, or a shard of it, by so many workers, and tells
// progress, if there is one, how far it came. The cohort holds nothing where there is an error.
func (p Plan) Read(ctx context.Context, log io.ReaderAt, size int64, part Shard, workers int, progress io.Writer) (Sums, error) {
	before := 0
	if part.Of > 0 {
		cut, err := part.cut(log, size)
		if err != nil {
			return Sums{}, err
		}
		log, size, before = cut, cut.size(), cut.before
	}
	watch := &watched{ReaderAt: log, ctx: ctx, size: size, out: progress}
	s := Sums{Cohort: p.Study.NewCohort()}
	for row, err := range s.Cohort.Read(p.Reader, watch, size, workers) {
		if err := s.reject(row, err, before); err != nil {
			return Sums{}, err
		}
	}
	watch.done()
	return s, ctx.Err()
}

// reject notes what is said of a row; an error that is none of a row is returned.
func (s *Sums) reject(row setlog.LoggedSet, err error, before int) error {
	words := setlog.Words()
	var bad *setlog.RowError
	switch {
	case err == nil:
		for _, doubt := range row.Doubts {
			s.Rejects = append(s.Rejects, Reject{Line: row.Line + before, Code: doubt.Code, Says: words.Clinician(doubt), Taken: true})
		}
		return nil
	case !errors.As(err, &bad):
		return err
	}
	if bad.Line > 1 {
		bad.Line += before
	}
	r := bad.Reason()
	if r.Code == "setlog.broken-off" || bad.Line == 1 {
		return err
	}
	s.Rejects = append(s.Rejects, Reject{bad.Line, bad.Column, bad.Name, r.Code, words.Clinician(r), false})
	return nil
}

// watched reads until it is interrupted, and tells how far it came.
type watched struct {
	io.ReaderAt
	ctx  context.Context
	size int64
	out  io.Writer
	read atomic.Int64
	told atomic.Int64
}

func (w *watched) ReadAt(p []byte, at int64) (int, error) {
	if err := w.ctx.Err(); err != nil {
		return 0, err
	}
	n, err := w.ReaderAt.ReadAt(p, at)
	if percent := min(100, 100*w.read.Add(int64(n))/max(w.size, 1)); w.out != nil && w.told.Swap(percent) != percent {
		fmt.Fprintf(w.out, "\r%3d %% read", percent)
	}
	return n, err
}

func (w *watched) done() {
	if w.out != nil {
		fmt.Fprintln(w.out)
	}
}
