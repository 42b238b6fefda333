package main

import (
	"bytes"
	_ "embed"
	"fmt"
	"io"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/page"
	"example.org/posology/units"
)

//go:embed bench-rtf.csv
var openData []byte

func main() { command.Main(run) }

//go:embed doc.go
var source string

// run returns the exit status: 0, 1 for bad data, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	flags := command.New(source)
	file := flags.String("data", "", "read the table from this CSV `file`; without it open data are used")
	level := flags.Float64("level", 0.9, "the `share` of intervals that should hold the 1RM, 0.5 to 0.99")
	asJSON := flags.Bool("json", false, "write the report as JSON")
	if _, status, goOn := flags.Parse(args, stdout, stderr); !goOn {
		return status
	}
	if !(*level >= 0.5 && *level <= 0.99) {
		return flags.Refuse(stderr, "-level %g: it takes 0.5 to 0.99", *level)
	}
	r, err := reportOn(*file, units.Fraction(*level), stderr)
	if err != nil {
		fmt.Fprintln(stderr, "accuracy: the data cannot be used:")
		fmt.Fprintln(stderr, err)
		return 1
	}
	write := r.print
	if *asJSON {
		write = func(w io.Writer) error { return command.JSON(w, r) }
	}
	if err := write(stdout); err != nil {
		fmt.Fprintln(stderr, "accuracy:", err)
		return 1
	}
	return 0
}

func reportOn(file string, level units.Fraction, stderr io.Writer) (report, error) {
	data, err := command.Case(file, openData)
	if err != nil {
		return report{}, err
	}
	sets, err := read(bytes.NewReader(data))
	if err != nil {
		return report{}, err
	}
	r := judge(sets, level, stderr)
	r.Note = page.Opening(data)
	return r, nil
}
