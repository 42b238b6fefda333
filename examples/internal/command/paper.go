package command

import (
	"fmt"
	"io"
	"slices"

	"example.org/posology/examples/internal/papers"
)

// forFile is the paper that a program writes itself.
const forFile = "file"

// Readers are whom the papers of a visit are for, and papers by their names.
var Readers = []string{"client", forFile, "doctor", "surgeon", "falls-service", "diary", "glucose"}

// A Wanted is which paper is asked for, and how.
type Wanted struct {
	Reader     string
	HTML, JSON bool
}

// ForFile asks for the paper of the clinician who keeps the record.
var ForFile = Wanted{Reader: forFile}

// Write prints what is wanted of a visit: the whole result, the paper for the file,
// which file writes, or one of those that people take home or are sent; where there is
// nothing to say on that one, it says so.
func (o Wanted) Write(w io.Writer, result any, v papers.Visit, file func(io.Writer) error) error {
	switch {
	case o.JSON:
		return JSON(w, result)
	case o.Reader == forFile:
		return file(w)
	}
	all, err := v.All()
	if err != nil {
		return err
	}
	name := o.Reader
	if name == "client" {
		name = "handout"
	}
	at := slices.IndexFunc(all, func(p papers.Paper) bool { return p.Name == name })
	switch {
	case at < 0 && name == "doctor": // who asks for it gets the letter that asks nothing
		letter, err := v.Letter()
		if err != nil {
			return err
		}
		all, at = []papers.Paper{{Document: letter}}, 0
	case at < 0:
		fmt.Fprintf(w, "There is nothing to say on this paper: %s.\n", o.Reader)
		return nil
	}
	if o.HTML {
		return all[at].HTML(w)
	}
	return all[at].Text(w)
}
