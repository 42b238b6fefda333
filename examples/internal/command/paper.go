package command

import (
	"fmt"
	"io"
	"slices"

	"example.org/posology/examples/internal/papers"
)

// ForFile is the paper that a program writes itself.
const ForFile = "file"

// readers are whom a program prints for, and the names of the papers.
var readers = map[string]string{
	ForFile: "", "client": "handout", "doctor": "doctor", "surgeon": "surgeon", "falls-service": "falls-service", "diary": "diary", "glucose": "glucose",
}

// CheckPaper says what is wrong with what is asked for.
func CheckPaper(reader string, html bool) error {
	if _, ok := readers[reader]; !ok || html && reader == ForFile {
		return fmt.Errorf("-for takes client, file, doctor, surgeon, falls-service, diary or glucose, and -html none for the file")
	}
	return nil
}

// Paper prints one of the papers of a visit; of one on which there is nothing to say, that.
func Paper(w io.Writer, v papers.Visit, reader string, html bool) error {
	all, err := v.All()
	if err != nil {
		return err
	}
	at := slices.IndexFunc(all, func(p papers.Paper) bool { return p.Name == readers[reader] })
	switch {
	case at < 0 && reader == "doctor": // who asks for it gets the letter that asks nothing
		letter, err := v.Letter()
		if err != nil {
			return err
		}
		all, at = []papers.Paper{{Document: letter}}, 0
	case at < 0:
		fmt.Fprintf(w, "There is nothing to say on this paper: %s.\n", reader)
		return nil
	}
	if html {
		return all[at].HTML(w)
	}
	return all[at].Text(w)
}
