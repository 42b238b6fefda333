package main

import (
	"flag"
	"fmt"
	"io"
	"os"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/papers"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// run returns the exit status: 0, 1 for a bad case, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("firstvisit", flag.ContinueOnError)
	flags.SetOutput(stderr)
	var o order
	flags.StringVar(&o.file, "case", "", "read the case from this JSON `file`; without it an invented case is used")
	flags.StringVar(&o.reader, "for", command.ForFile, "print what is for `client`, file, doctor, surgeon or falls-service, or the diary or glucose page")
	flags.BoolVar(&o.html, "html", false, "print the paper as one HTML file; not that for the file")
	flags.BoolVar(&o.asJSON, "json", false, "write the whole result as JSON")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	if err := command.CheckPaper(o.reader, o.html); err != nil || flags.NArg() > 0 {
		fmt.Fprintf(stderr, "firstvisit: %v, and there are no other arguments\n", err)
		return 2
	}
	return command.Status(stderr, "firstvisit", visit(o, stdout))
}

// An order is what the flags ask for.
type order struct {
	file         string // empty: the embedded case
	reader       string
	html, asJSON bool
}

func visit(o order, w io.Writer) error {
	r, err := command.Record(o.file, demo.VillageHall())
	if err != nil {
		return err
	}
	plan, err := r.Start(r.LastDay())
	switch {
	case err != nil:
		return err
	case o.asJSON:
		return command.JSON(w, plan)
	case o.reader == command.ForFile:
		return filePaper(w, plan)
	}
	return command.Paper(w, papers.OfPlan(plan), o.reader, o.html)
}
