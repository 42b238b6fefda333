package main

import (
	"bufio"
	"context"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"text/tabwriter"

	"example.org/posology/dose/cohort"
	"example.org/posology/examples/internal/command"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// whole writes a file beside its place and moves it there when it is whole; an interrupt
// leaves what was there.
func whole(ctx context.Context, name string, write func(io.Writer) error) (err error) {
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

// tables writes the files.
func (j *job) tables(ctx context.Context, c *cohort.Cohort) error {
	for _, one := range []struct {
		name  string
		write func(io.Writer) error
	}{
		{"weekly.csv", func(w io.Writer) error { return writeRows(w, j.weekly(c)) }},
		{"exercises.csv", func(w io.Writer) error { return writeRows(w, exercises(c)) }},
		{"estimates.csv", func(w io.Writer) error { return writeRows(w, estimates(c)) }},
		{"rejects.csv", func(w io.Writer) error { return writeRejects(w, j.rejects) }},
	} {
		if err := whole(ctx, filepath.Join(j.out, one.name), one.write); err != nil {
			return err
		}
	}
	return nil
}

// rows yields a head and the rows of a table.
type rows func(yield func([]string) bool)

func writeRows(w io.Writer, all rows) error {
	out := csv.NewWriter(w)
	for row := range all {
		if err := out.Write(row); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

func (j *job) weekly(c *cohort.Cohort) rows {
	return func(yield func([]string) bool) {
		if !yield([]string{"person", "week", "muscle", j.convention.String() + "_sets"}) {
			return
		}
		for w := range c.Weeks() {
			for muscle, sets := range w.Muscles(j.convention) {
				if !yield([]string{string(w.Person), w.Week.String(), muscle.String(), strconv.FormatFloat(sets.Count(), 'f', 1, 64)}) {
					return
				}
			}
		}
	}
}

func exercises(c *cohort.Cohort) rows {
	return func(yield func([]string) bool) {
		if !yield([]string{"person", "week", "exercise", "days", "sets", "left_counted", "right_counted", "count", "measure", "held"}) {
			return
		}
		for w := range c.Weeks() {
			for x := range w.Exercises(0) {
				if !yield([]string{string(w.Person), w.Week.String(), string(x.Exercise), strconv.Itoa(x.Days), strconv.Itoa(x.Done),
					strconv.Itoa(x.Left), strconv.Itoa(x.Right), strconv.FormatInt(x.Count, 10), x.Measure.String(), x.Held.String()}) {
					return
				}
			}
		}
	}
}

func estimates(c *cohort.Cohort) rows {
	return func(yield func([]string) bool) {
		if !yield([]string{"person", "exercise", "best", "best_on", "latest", "latest_on"}) {
			return
		}
		for e := range c.Estimates() {
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

func rejected(list []reject) rows {
	return func(yield func([]string) bool) {
		if !yield([]string{"line", "column", "field", "code", "taken", "says"}) {
			return
		}
		for _, r := range list {
			if !yield([]string{strconv.Itoa(r.Line), strconv.Itoa(r.Column), r.Field, string(r.Code), strconv.FormatBool(r.Taken), r.Says}) {
				return
			}
		}
	}
}

func writeRejects(w io.Writer, list []reject) error { return writeRows(w, rejected(list)) }

func readRejects(r io.Reader) (list []reject, err error) {
	in := csv.NewReader(r)
	in.FieldsPerRecord = 6
	all, err := in.ReadAll()
	for i, row := range all {
		if i == 0 {
			continue
		}
		one := reject{Field: row[2], Code: evidence.ReasonCode(row[3]), Says: row[5]}
		var bad [3]error
		one.Line, bad[0] = strconv.Atoi(row[0])
		one.Column, bad[1] = strconv.Atoi(row[1])
		one.Taken, bad[2] = strconv.ParseBool(row[4])
		err = errors.Join(err, bad[0], bad[1], bad[2])
		list = append(list, one)
	}
	return list, err
}

const heading = "Weekly sets, volume load and estimates by log."
const caution = "An estimate is the bare equation of Epley on load and repetitions, with no reserve added: a measure for a study, no dose."

// note says whose the log is.
func (j *job) note() string {
	if j.log == "" {
		return "The people and the sets are invented."
	}
	return "Whose the log is, and who may read it, this program does not know."
}

func (j *job) print(w io.Writer, c *cohort.Cohort) error {
	fmt.Fprintf(w, "%s\n%s\n%s\n", heading, j.note(), caution)
	for _, table := range []rows{j.weekly(c), exercises(c), estimates(c), rejected(j.rejects)} {
		fmt.Fprintln(w)
		out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
		for row := range table {
			for _, cell := range row[:len(row)-1] {
				fmt.Fprint(out, cell, "\t")
			}
			fmt.Fprintln(out, row[len(row)-1])
		}
		if err := out.Flush(); err != nil {
			return err
		}
	}
	return nil
}

// json prints the tables as lists of their rows.
func (j *job) json(w io.Writer, c *cohort.Cohort) error {
	type week struct {
		Person    string                `json:"person"`
		Week      string                `json:"week"`
		Exercises []cohort.ExerciseSets `json:"exercises"`
		Muscles   map[string]string     `json:"muscles"`
	}
	all := struct {
		Note      string                `json:"note"`
		Caution   string                `json:"caution"`
		Weeks     []week                `json:"weeks"`
		Estimates []cohort.PersonalBest `json:"estimates"`
		Rejects   []reject              `json:"rejects"`
	}{Note: j.note(), Caution: caution, Rejects: j.rejects}
	for w := range c.Weeks() {
		one := week{Person: string(w.Person), Week: w.Week.String(), Muscles: map[string]string{}}
		for x := range w.Exercises(0) {
			one.Exercises = append(one.Exercises, x)
		}
		for muscle, sets := range w.Muscles(j.convention) {
			one.Muscles[muscle.String()] = sets.String()
		}
		all.Weeks = append(all.Weeks, one)
	}
	for e := range c.Estimates() {
		all.Estimates = append(all.Estimates, e)
	}
	return command.JSON(w, all)
}
