// Command parquet writes the sets of a log as a Parquet file, for whoever goes on with
// them elsewhere, and reads the file again to see that every set is as it was, effort
// included.
//
//	go run . -log FILE -map FILE -out sets.parquet
//
// The map is that of examples/cohort. Rows that cannot be read are left out and counted;
// examples/cohort lists them with their lines. This is a module of its own, since the format's
// library brings others.
package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"

	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/cohorts"
)

func main() {
	log := flag.String("log", "", "the CSV `file` to read")
	mapping := flag.String("map", "", "the JSON `file` that says which column holds what, as for examples/cohort")
	out := flag.String("out", "", "the Parquet `file` to write")
	flag.Parse()
	if err := run(os.Stdout, *log, *mapping, *out); err != nil {
		fmt.Fprintln(os.Stderr, "parquet:", err)
		os.Exit(1)
	}
}

func run(stdout io.Writer, log, mapping, out string) error {
	text, err := os.ReadFile(mapping)
	if err != nil {
		return err
	}
	plan, err := cohorts.NewPlan(text, -1)
	if err != nil {
		return err
	}
	in, err := os.Open(log)
	if err != nil {
		return err
	}
	defer in.Close()
	sets, bad, err := read(plan.Reader, in)
	if err != nil {
		return err
	}
	f, err := os.Create(out)
	if err != nil {
		return err
	}
	if err := errors.Join(write(f, sets), same(f, sets), f.Close()); err != nil {
		return errors.Join(err, os.Remove(out))
	}
	_, err = fmt.Fprintf(stdout, "%d sets were written and read back equal; %d rows could not be read.\n", len(sets), bad)
	return err
}

// read returns the sets of a log and how many rows are none.
func read(rd setlog.Reader, log io.Reader) (sets []setlog.Set, bad int, err error) {
	for row, err := range rd.CSV(log) {
		var of *setlog.RowError
		switch {
		case err == nil:
			sets = append(sets, row.Set)
		case !errors.As(err, &of) || of.Line == 1 || of.Reason().Code == "setlog.broken-off":
			return nil, 0, err
		default:
			bad++
		}
	}
	return sets, bad, nil
}

// same reads the file again.
func same(f *os.File, sets []setlog.Set) error {
	info, err := f.Stat()
	if err != nil {
		return err
	}
	back, err := readSets(f, info.Size())
	if err != nil {
		return err
	}
	if len(back) != len(sets) {
		return fmt.Errorf("%d sets were read back of %d", len(back), len(sets))
	}
	for i := range back {
		if back[i] != sets[i] {
			return fmt.Errorf("set %d was %+v and reads back as %+v", i+1, sets[i], back[i])
		}
	}
	return nil
}
