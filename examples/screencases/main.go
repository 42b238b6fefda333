package main

import (
	_ "embed"
	"fmt"
	"io"
	"os"

	"example.org/posology/examples/internal/cases"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/page"
)

func main() { command.Main(run) }

//go:embed doc.go
var source string

// Exit statuses.
const (
	agree = iota
	disagree
	unreadable
)

func run(args []string, stdout, stderr io.Writer) int {
	files, status, goOn := command.New(source).Parse(args, stdout, stderr, "[FILE]")
	if !goOn {
		return status
	}
	data, name := cases.Published(), "the published table"
	note := "invented people; what each published rule says of them, with its source, stands in the table"
	if len(files) == 1 {
		var err error
		name = files[0]
		if data, err = os.ReadFile(name); err != nil {
			fmt.Fprintln(stderr, "screencases:", err)
			return unreadable
		}
		note = page.Opening(data)
	}
	table, err := cases.Read(data)
	if err != nil {
		fmt.Fprintf(stderr, "screencases: in %s:\n%v\n", name, err)
	}
	if table == nil {
		return unreadable
	}
	page.Note(stdout, note)
	status = report(stdout, table)
	if err != nil {
		fmt.Fprintln(stdout, "Rows that could not be read were left out.")
		return unreadable
	}
	return status
}

// report prints each disagreement and a closing count.
func report(w io.Writer, table []cases.Case) int {
	answers, wrong := 0, 0
	for _, c := range table {
		compared, found := c.Compare()
		for _, d := range found {
			fmt.Fprintln(w, d)
		}
		answers += compared
		wrong += len(found)
	}
	fmt.Fprintf(w, "Cases: %d. Answers compared: %d. Disagreements: %d.\n", len(table), answers, wrong)
	if wrong > 0 {
		return disagree
	}
	return agree
}
