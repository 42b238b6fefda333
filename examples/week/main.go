package main

import (
	_ "embed"
	"io"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/page"
)

func main() { command.Main(run) }

//go:embed doc.go
var source string

// run returns the exit status: 0, 1 for a bad case, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	flags := command.New(source)
	file := flags.String("case", "", "read the case from this JSON `file`; without it an invented case is used")
	class := flags.Bool("class", false, "plan for a class that shares its dumbbells")
	asJSON := flags.Bool("json", false, "write the whole result as JSON")
	if _, status, goOn := flags.Parse(args, stdout, stderr); !goOn {
		return status
	}
	write := one
	if *class {
		write = group
	}
	return command.Status(stderr, "week", write(*file, *asJSON, stdout))
}

// one plans for one person.
func one(file string, asJSON bool, w io.Writer) error {
	r, err := command.Record(file, demo.VillageHallBuild())
	if err != nil {
		return err
	}
	week, err := audited(r)
	if err != nil {
		return err
	}
	if asJSON {
		return command.JSON(w, week)
	}
	if len(r.Visits) > 0 {
		page.Wrap(w, "", "The first week, as it was planned; "+page.Counted(len(r.Visits), "visit")+" since: review -case shows what is asked for now.")
	}
	return printWeek(w, week)
}
