package main

import (
	_ "embed"
	"io"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/reviewpaper"
)

func main() { command.Main(run) }

//go:embed doc.go
var source string

// An order is what the flags ask for.
type order struct {
	command.Wanted
	file  string // empty: the embedded case
	ahead bool

	progress io.Writer // where a long run says how far it is
}

// run returns the exit status: 0, 1 for a bad case, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	o := order{progress: stderr}
	flags := command.New(source)
	flags.StringVar(&o.file, "case", "", "read the case from this JSON `file`; without it an invented case is used")
	wanted := flags.VisitPapers()
	flags.BoolVar(&o.ahead, "simulate", false, "simulate the weeks of a beginner instead; a case is then that of a virtual person")
	if _, status, goOn := flags.Parse(args, stdout, stderr); !goOn {
		return status
	}
	o.Wanted = *wanted
	switch {
	case o.ahead && o.Reader != command.ForFile.Reader:
		return flags.Refuse(stderr, "-simulate prints no paper: it goes without -for")
	case o.ahead:
		return command.Status(stderr, "review", ahead(o, stdout))
	}
	return command.Status(stderr, "review", lookBack(o, stdout))
}

// lookBack reviews the log of one person.
func lookBack(o order, w io.Writer) error {
	r, err := command.Record(o.file, demo.HomeReview())
	if err != nil {
		return err
	}
	result, err := command.Review(r)
	if err != nil {
		return err
	}
	return reviewpaper.For(o.Wanted, w, result)
}
