package main

import (
	"fmt"
	"io"
	"text/tabwriter"

	"example.org/posology/dose/cohort"
	"example.org/posology/examples/internal/cohorts"
	"example.org/posology/examples/internal/command"
)

const heading = "Weekly sets, volume load and estimates by log."
const caution = "An estimate is the bare equation of Epley on repetitions and load, of one weight where each hand holds one, with no reserve added: a measure for a study, no dose."

// note says whose the log is.
func (j *job) note() string {
	if j.log == "" && j.merge == 0 {
		return "The people and the sets are invented."
	}
	return "Whose the log is, and who may read it, this program does not know."
}

func (j *job) print(w io.Writer, s cohorts.Sums) error {
	fmt.Fprintf(w, "%s\n%s\n%s\n", heading, j.note(), caution)
	for _, table := range []cohorts.Rows{s.Weekly(j.convention), s.Exercises(), s.Estimates(), s.Rejected()} {
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
func (j *job) json(w io.Writer, s cohorts.Sums) error {
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
		Rejects   []cohorts.Reject      `json:"rejects"`
	}{Note: j.note(), Caution: caution, Rejects: s.Rejects}
	for w := range s.Cohort.Weeks() {
		one := week{Person: string(w.Person), Week: w.Week.String(), Muscles: map[string]string{}}
		for x := range w.Exercises(0) {
			one.Exercises = append(one.Exercises, x)
		}
		for muscle, sets := range w.Muscles(j.convention) {
			one.Muscles[muscle.String()] = sets.String()
		}
		all.Weeks = append(all.Weeks, one)
	}
	for e := range s.Cohort.Estimates() {
		all.Estimates = append(all.Estimates, e)
	}
	return command.JSON(w, all)
}
