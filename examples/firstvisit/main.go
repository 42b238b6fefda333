package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"slices"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/planpaper"
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
	if !slices.Contains(command.Readers, *reader) || flags.NArg() > 0 {
		fmt.Fprintf(stderr, "firstvisit: -for takes client, file or doctor, and there are no other arguments\n")
		return 2
	}
	return command.Status(stderr, "firstvisit", visit(*file, stdout, *reader, *asJSON))
}

func visit(file string, w io.Writer, reader string, asJSON bool) error {
	r, err := command.Record(file, demo.VillageHall())
	if err != nil {
		return err
	}
	plan, err := r.Start(r.LastDay())
	if err != nil {
		return err
	}
	if asJSON {
		return command.JSON(w, plan)
	}
	return planpaper.For(reader, w, plan)
}
