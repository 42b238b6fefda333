package main

import (
	_ "embed"
	"io"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/planpaper"
)

func main() { command.Main(run) }

//go:embed doc.go
var source string

// run returns the exit status: 0, 1 for a bad case, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	flags := command.New(source)
	file := flags.String("case", "", "read the case from this JSON `file`; without it an invented case is used")
	wanted := flags.VisitPapers()
	if _, status, goOn := flags.Parse(args, stdout, stderr); !goOn {
		return status
	}
	return command.Status(stderr, "firstvisit", visit(*file, stdout, *wanted))
}

func visit(file string, w io.Writer, wanted command.Wanted) error {
	r, err := command.Record(file, demo.VillageHall())
	if err != nil {
		return err
	}
	plan, err := command.Plan(r)
	if err != nil {
		return err
	}
	return planpaper.For(wanted, w, plan)
}
