package main

import (
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"os"

	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/plan"
	"example.org/posology/units/field"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// run returns the exit status: 0, 1 for a bad case, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("week", flag.ContinueOnError)
	flags.SetOutput(stderr)
	file := flags.String("case", "", "read the case from this JSON `file`; without it an invented case is used")
	class := flags.Bool("class", false, "plan for a class that shares its dumbbells")
	asJSON := flags.Bool("json", false, "write the whole result as JSON")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	if flags.NArg() > 0 {
		fmt.Fprintln(stderr, "week: there are no other arguments")
		return 2
	}
	write := one
	if *class {
		write = group
	}
	if err := write(*file, *asJSON, stdout); err != nil {
		fmt.Fprintln(stderr, "week: the case cannot be used:")
		fmt.Fprintln(stderr, err)
		return 1
	}
	return 0
}

// one plans for one person.
func one(file string, asJSON bool, w io.Writer) error {
	data, err := read(file, demo.VillageHallBuild())
	if err != nil {
		return err
	}
	var c plan.Case
	if err := field.Decode(data, &c, field.Strict); err != nil {
		return err
	}
	result, err := plan.Run(c)
	if err != nil {
		return err
	}
	if asJSON {
		return writeJSON(w, result)
	}
	return printWeek(w, result)
}

// read returns the file, or what is embedded if none is named.
func read(file string, embedded []byte) ([]byte, error) {
	if file == "" {
		return embedded, nil
	}
	return os.ReadFile(file)
}

func writeJSON(w io.Writer, v any) error {
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(v)
}
