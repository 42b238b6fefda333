package main

import (
	"bytes"
	_ "embed"
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"os"

	"example.org/posology/examples/internal/page"
	"example.org/posology/units"
)

//go:embed bench-rtf.csv
var openData []byte

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// run returns the exit status: 0, 1 for bad data, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("accuracy", flag.ContinueOnError)
	flags.SetOutput(stderr)
	file := flags.String("data", "", "read the table from this CSV `file`; without it open data are used")
	level := flags.Float64("level", 0.9, "the `share` of intervals that should hold the 1RM, 0.5 to 0.99")
	asJSON := flags.Bool("json", false, "write the report as JSON")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	if flags.NArg() > 0 || !(*level >= 0.5 && *level <= 0.99) {
		fmt.Fprintln(stderr, "accuracy: -level takes 0.5 to 0.99, and there are no other arguments")
		return 2
	}
	r, err := reportOn(*file, units.Fraction(*level))
	if err != nil {
		fmt.Fprintln(stderr, "accuracy: the data cannot be used:")
		fmt.Fprintln(stderr, err)
		return 1
	}
	write := r.print
	if *asJSON {
		write = r.encode
	}
	if err := write(stdout); err != nil {
		fmt.Fprintln(stderr, "accuracy:", err)
		return 1
	}
	return 0
}

func reportOn(file string, level units.Fraction) (report, error) {
	data := openData
	if file != "" {
		var err error
		if data, err = os.ReadFile(file); err != nil {
			return report{}, err
		}
	}
	sets, err := read(bytes.NewReader(data))
	if err != nil {
		return report{}, err
	}
	r := judge(sets, level)
	r.Note = page.Opening(data)
	return r, nil
}

func (r report) encode(w io.Writer) error {
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(r)
}
