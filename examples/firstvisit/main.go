package main

import (
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"os"

	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/visit"
	"example.org/posology/units/field"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// run returns the exit status: 0, 1 for a bad case, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("firstvisit", flag.ContinueOnError)
	flags.SetOutput(stderr)
	file := flags.String("case", "", "read the case from this JSON `file`; without it an invented case is used")
	reader := flags.String("for", "file", "print the paper for `client`, file or doctor")
	asJSON := flags.Bool("json", false, "write the whole result as JSON")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	paper, ok := papers[*reader]
	if !ok || flags.NArg() > 0 {
		fmt.Fprintf(stderr, "firstvisit: -for takes client, file or doctor, and there are no other arguments\n")
		return 2
	}
	result, err := result(*file)
	if err != nil {
		fmt.Fprintln(stderr, "firstvisit: the case cannot be used:")
		fmt.Fprintln(stderr, err)
		return 1
	}
	if *asJSON {
		err = writeJSON(stdout, result)
	} else {
		err = paper(stdout, result)
	}
	if err != nil {
		fmt.Fprintln(stderr, "firstvisit:", err)
		return 1
	}
	return 0
}

// papers are the three papers that come out of one visit.
var papers = map[string]func(io.Writer, visit.Result) error{
	"client": clientPaper,
	"file":   filePaper,
	"doctor": doctorPaper,
}

func result(file string) (visit.Result, error) {
	data := demo.VillageHall()
	if file != "" {
		var err error
		if data, err = os.ReadFile(file); err != nil {
			return visit.Result{}, err
		}
	}
	var c visit.Case
	if err := field.Decode(data, &c, field.Strict); err != nil {
		return visit.Result{}, err
	}
	return visit.Run(c)
}

func writeJSON(w io.Writer, r visit.Result) error {
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(r)
}
