package main

import (
	"flag"
	"fmt"
	"io"
	"os"

	"example.org/posology/examples/internal/cases"
	"example.org/posology/examples/internal/page"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// Exit statuses.
const (
	agree = iota
	disagree
	unreadable
)

func run(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("screencases", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.Usage = func() { fmt.Fprintln(stderr, "usage: screencases [FILE]") }
	if err := flags.Parse(args); err != nil || flags.NArg() > 1 {
		if err == nil {
			flags.Usage()
		}
		return unreadable
	}
	data, name := cases.Published(), "the published table"
	note := "invented people; what each published rule says of them, with its source, stands in the table"
	if flags.NArg() == 1 {
		var err error
		name = flags.Arg(0)
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
	status := report(stdout, table)
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
