package main

import (
	"bufio"
	_ "embed"
	"fmt"
	"io"
	"os"
	"time"

	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
)

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

//go:embed doc.go
var source string

// run returns the exit status: 0, 1 for answers in a file that cannot be used,
// 2 for bad flags.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	flags := command.New(source)
	file := flags.String("answers", "", "take the answers from this `file` instead of asking")
	when := flags.String("day", time.Now().Format(time.DateOnly), "the `day` of the visit")
	wanted := flags.Papers("client", "client", "clinician")
	if _, status, goOn := flags.Parse(args, stdout, stderr); !goOn {
		return status
	}
	day, err := units.ParseDay(*when)
	if err != nil {
		return flags.Refuse(stderr, "-day %q: it takes a day such as 2026-11-25", *when)
	}
	questions := stdout
	if wanted.JSON {
		questions = stderr
	}
	var talk interview.Interview
	var note string
	if *file != "" {
		talk, note, err = fromFile(*file, day, stderr)
	} else {
		fmt.Fprintln(questions, asking.Welcome+" Nothing that you type is kept.")
		talk, err = asking.Converse(day, bufio.NewScanner(stdin), questions, asking.Known{})
	}
	if err == nil {
		err = conclude(talk, note, readers[wanted.Reader], wanted.JSON, stdout, questions)
	}
	if err != nil {
		fmt.Fprintln(stderr, "intake:", err)
		return 1
	}
	return 0
}

// readers are the people that the outcome is told to.
var readers = map[string]func(w io.Writer, o screening.Outcome, sided ...string){
	"client":    func(w io.Writer, o screening.Outcome, _ ...string) { asking.TellClient(w, o) },
	"clinician": asking.TellClinician,
}

// told is the outcome as JSON.
type told struct {
	Note    string            `json:"note,omitzero"` // where the answers come from
	Outcome screening.Outcome `json:"outcome"`
}

// conclude tells the outcome. Without an age, which is asked first, there is none.
func conclude(talk interview.Interview, note string, tell func(io.Writer, screening.Outcome, ...string), asJSON bool, stdout, questions io.Writer) error {
	if !asJSON {
		page.Note(stdout, note)
	}
	if talk.Profile().Age == 0 {
		fmt.Fprintln(questions, "\nThere is no outcome yet: we begin with your age. Please come back.")
		return nil
	}
	o, err := talk.Outcome()
	if err != nil {
		return err
	}
	if !asJSON {
		tell(stdout, o, asking.Sided(talk.Profile(), talk.Check().Pain)...)
		return nil
	}
	return command.JSON(stdout, told{note, o})
}

// fromFile takes the answers from a file, and from its note where they come from.
// Lines whose question was not asked are named on stderr.
func fromFile(name string, day units.Day, stderr io.Writer) (interview.Interview, string, error) {
	answers, err := asking.Read(name)
	if err != nil {
		return interview.On(day), "", err
	}
	note := answers.Take("note")
	talk, err := answers.Interview(day, asking.Known{})
	if err != nil {
		return talk, "", err
	}
	for _, text := range answers.Unused() {
		fmt.Fprintln(stderr, "intake:", text)
	}
	return talk, note, nil
}
