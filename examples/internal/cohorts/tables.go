package cohorts

import (
	"bufio"
	"context"
	"encoding/csv"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strconv"

	"example.org/posology/dose/volume"
	"example.org/posology/units"
)

// Whole writes a file beside its place and moves it there when it is whole; an interrupt
// leaves what was there.
func Whole(ctx context.Context, name string, write func(io.Writer) error) (err error) {
	f, err := os.CreateTemp(filepath.Dir(name), ".part-*")
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			os.Remove(f.Name())
		}
	}()
	out := bufio.NewWriterSize(f, 1<<16)
	err = write(until{ctx, out})
	if err = errors.Join(err, out.Flush(), f.Close(), ctx.Err()); err != nil {
		return err
	}
	return os.Rename(f.Name(), name)
}

// until writes until it is interrupted.
type until struct {
	ctx context.Context
	io.Writer
}

func (u until) Write(p []byte) (int, error) {
	if err := u.ctx.Err(); err != nil {
		return 0, err
	}
	return u.Writer.Write(p)
}

// Write writes the tables as files of a folder.
func (s Sums) Write(ctx context.Context, folder string, c volume.Convention) error {
	for _, one := range []struct {
		name  string
		write func(io.Writer) error
	}{
		{"weekly.csv", func(w io.Writer) error { return writeRows(w, s.Weekly(c)) }},
		{"exercises.csv", func(w io.Writer) error { return writeRows(w, s.Exercises()) }},
		{"estimates.csv", func(w io.Writer) error { return writeRows(w, s.Estimates()) }},
		{"rejects.csv", func(w io.Writer) error { return writeRows(w, s.Rejected()) }},
	} {
		if err := Whole(ctx, filepath.Join(folder, one.name), one.write); err != nil {
			return err
		}
	}
	return nil
}

// Rows yields a head and the rows of a table.
type Rows func(yield func([]string) bool)

func writeRows(w io.Writer, all Rows) error {
	out := csv.NewWriter(w)
	for row := range all {
		if err := out.Write(row); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

// Weekly are the sets of each muscle.
func (s Sums) Weekly(c volume.Convention) Rows {
	return func(yield func([]string) bool) {
		if !yield([]string{"person", "week", "muscle", c.String() + "_sets"}) {
			return
		}
		for w := range s.Cohort.Weeks() {
			for muscle, sets := range w.Muscles(c) {
				if !yield([]string{string(w.Person), w.Week.String(), muscle.String(), strconv.FormatFloat(sets.Count(), 'f', 1, 64)}) {
					return
				}
			}
		}
	}
}

// Exercises are the sets of each exercise.
func (s Sums) Exercises() Rows {
	return func(yield func([]string) bool) {
		if !yield([]string{"person", "week", "exercise", "days", "sets", "left_counted", "right_counted", "count", "measure", "held"}) {
			return
		}
		for w := range s.Cohort.Weeks() {
			for x := range w.Exercises(0) {
				if !yield([]string{string(w.Person), w.Week.String(), string(x.Exercise), strconv.Itoa(x.Days), strconv.Itoa(x.Done),
					strconv.Itoa(x.Left), strconv.Itoa(x.Right), strconv.FormatInt(x.Count, 10), x.Measure.String(), x.Held.String()}) {
					return
				}
			}
		}
	}
}

// Estimates are the best and the latest ones.
func (s Sums) Estimates() Rows {
	return func(yield func([]string) bool) {
		if !yield([]string{"person", "exercise", "best", "best_on", "latest", "latest_on"}) {
			return
		}
		for e := range s.Cohort.Estimates() {
			if !yield([]string{string(e.Person), string(e.Exercise), grams(e.Best), e.BestOn.String(), grams(e.Latest), e.LatestOn.String()}) {
				return
			}
		}
	}
}

// grams prints an estimate to a gram, which is more than it is worth.
func grams(m units.Mass) string {
	if near, err := m.Rounded(units.Gram, units.Nearest); err == nil {
		m = near
	}
	return m.Text(units.KG)
}

// Rejected are the rows that were not read, or are doubtful.
func (s Sums) Rejected() Rows {
	return func(yield func([]string) bool) {
		if !yield([]string{"line", "column", "field", "code", "taken", "says"}) {
			return
		}
		for _, r := range s.Rejects {
			if !yield([]string{strconv.Itoa(r.Line), strconv.Itoa(r.Column), r.Field, string(r.Code), strconv.FormatBool(r.Taken), r.Says}) {
				return
			}
		}
	}
}
