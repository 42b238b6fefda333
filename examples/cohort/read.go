package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"sync/atomic"

	"example.org/posology/dose/cohort"
	"example.org/posology/dose/setlog"
	"example.org/posology/units/evidence"
)

// A reject is a row that was not read, or one to look at.
type reject struct {
	Line   int                 `json:"line"`
	Column int                 `json:"column,omitzero"`
	Field  string              `json:"field,omitzero"`
	Code   evidence.ReasonCode `json:"code"`
	Says   string              `json:"says"`
	Taken  bool                `json:"taken,omitzero"` // doubtful, and in the sums all the same
}

// read reads the log, or its shard.
func (j *job) read(ctx context.Context) (*cohort.Cohort, error) {
	var log io.ReaderAt = bytes.NewReader(inventedLog)
	size := int64(len(inventedLog))
	if j.log != "" {
		f, err := os.Open(j.log)
		if err != nil {
			return nil, err
		}
		defer f.Close()
		info, err := f.Stat()
		if err != nil {
			return nil, err
		}
		log, size = f, info.Size()
	}
	before := 0
	if j.shard.of > 0 {
		part, err := j.shard.cut(log, size)
		if err != nil {
			return nil, err
		}
		log, size, before = part, part.size(), part.before
	}
	watch := &watched{ReaderAt: log, ctx: ctx, size: size, out: j.progress}
	c := j.study.NewCohort()
	for row, err := range c.Read(j.reader, watch, size, j.workers) {
		if err := j.reject(row, err, before); err != nil {
			return nil, err
		}
	}
	watch.done()
	return c, ctx.Err()
}

// reject notes what is said of a row; an error that is none of a row is returned.
func (j *job) reject(row setlog.LoggedSet, err error, before int) error {
	words := setlog.Words()
	var bad *setlog.RowError
	switch {
	case err == nil:
		for _, doubt := range row.Doubts {
			j.rejects = append(j.rejects, reject{Line: row.Line + before, Code: doubt.Code, Says: words.Clinician(doubt), Taken: true})
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
	j.rejects = append(j.rejects, reject{bad.Line, bad.Column, bad.Name, r.Code, words.Clinician(r), false})
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
