package main

import (
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"os"
	"time"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
)

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

// run returns the exit status: 0, 1 for answers in a file that cannot be used,
// 2 for bad flags.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("intake", flag.ContinueOnError)
	flags.SetOutput(stderr)
	file := flags.String("answers", "", "take the answers from this `file` instead of asking")
	when := flags.String("day", time.Now().Format(time.DateOnly), "the `day` of the visit")
	reader := flags.String("for", "client", "tell the outcome to the client or to the `clinician`")
	asJSON := flags.Bool("json", false, "write the outcome as JSON")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	tell, known := readers[*reader]
	day, err := units.ParseDay(*when)
	if !known || err != nil || flags.NArg() > 0 {
		fmt.Fprintln(stderr, "intake: -for takes client or clinician, -day a day such as 2026-11-25, and there are no other arguments")
		return 2
	}
	asking := stdout
	if *asJSON {
		asking = stderr
	}
	var talk interview.Interview
	var note string
	if *file != "" {
		talk, note, err = fromFile(*file, day, stderr)
	} else {
		talk, err = converse(day, stdin, asking)
	}
	if err == nil {
		err = conclude(talk, note, tell, *asJSON, stdout, asking)
	}
	if err != nil {
		fmt.Fprintln(stderr, "intake:", err)
		return 1
	}
	return 0
}

// readers are the people that the outcome is told to.
var readers = map[string]func(io.Writer, screening.Outcome){
	"client":    tellClient,
	"clinician": tellClinician,
}

// told is the outcome as JSON.
type told struct {
	Note    string            `json:"note,omitzero"` // where the answers come from
	Outcome screening.Outcome `json:"outcome"`
}

// conclude tells the outcome. Without an age, which is asked first, there is none.
func conclude(talk interview.Interview, note string, tell func(io.Writer, screening.Outcome), asJSON bool, stdout, asking io.Writer) error {
	if !asJSON {
		page.Note(stdout, note)
	}
	if talk.Profile().Age == 0 {
		fmt.Fprintln(asking, "\nThere is no outcome yet: we begin with your age. Please come back.")
		return nil
	}
	o, err := talk.Outcome()
	if err != nil {
		return err
	}
	if !asJSON {
		tell(stdout, o)
		return nil
	}
	encoder := json.NewEncoder(stdout)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(told{note, o})
}
