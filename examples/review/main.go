package main

import (
	"flag"
	"fmt"
	"io"
	"os"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/units/field"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// An order is what the flags ask for.
type order struct {
	file   string // empty: the embedded case
	reader string
	html   bool
	asJSON bool
	ahead  bool
}

// run returns the exit status: 0, 1 for a bad case, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	var o order
	flags := flag.NewFlagSet("review", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.StringVar(&o.file, "case", "", "read the case from this JSON `file`; without it an invented case is used")
	flags.StringVar(&o.reader, "for", command.ForFile, "print what is for `client`, file, doctor, surgeon or falls-service, or the diary or glucose page")
	flags.BoolVar(&o.html, "html", false, "print the paper as one HTML file; not that for the file")
	flags.BoolVar(&o.asJSON, "json", false, "write the whole result as JSON")
	flags.BoolVar(&o.ahead, "simulate", false, "simulate the weeks of a beginner instead; a case is then that of a virtual person")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	if err := command.CheckPaper(o.reader, o.html); err != nil || flags.NArg() > 0 {
		fmt.Fprintf(stderr, "review: %v, and there are no other arguments\n", err)
		return 2
	}
	write := lookBack
	if o.ahead {
		write = ahead
	}
	return command.Status(stderr, "review", write(o, stdout))
}

// lookBack reviews the log of one person.
func lookBack(o order, w io.Writer) error {
	r, err := command.Record(o.file, demo.HomeReview())
	if err != nil {
		return err
	}
	if err := r.Review.Check(); err != nil {
		return field.At("/review", err)
	}
	result, err := r.Assess(r.Review)
	if err != nil {
		return err
	}
	switch {
	case o.asJSON:
		return command.JSON(w, result)
	case o.reader == command.ForFile:
		return filePaper(w, result)
	}
	return command.Paper(w, papers.OfReview(result), o.reader, o.html)
}
