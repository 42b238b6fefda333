package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"slices"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/reviewpaper"
	"example.org/posology/units/field"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// An order is what the flags ask for.
type order struct {
	file   string // empty: the embedded case
	reader string
	asJSON bool
	ahead  bool
}

// run returns the exit status: 0, 1 for a bad case, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	var o order
	flags := flag.NewFlagSet("review", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.StringVar(&o.file, "case", "", "read the case from this JSON `file`; without it an invented case is used")
	flags.StringVar(&o.reader, "for", "file", "print the paper for `client`, file or doctor")
	flags.BoolVar(&o.asJSON, "json", false, "write the whole result as JSON")
	flags.BoolVar(&o.ahead, "simulate", false, "simulate the weeks of a beginner instead; a case is then that of a virtual person")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	if !slices.Contains(command.Readers, o.reader) || flags.NArg() > 0 {
		fmt.Fprintln(stderr, "review: -for takes client, file or doctor, and there are no other arguments")
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
	if o.asJSON {
		return command.JSON(w, result)
	}
	return reviewpaper.For(o.reader, w, result)
}
