package reviewpaper

import (
	"io"

	"example.org/posology/progression/record"
)

// For writes a review for a reader, one of command.Readers.
func For(reader string, w io.Writer, r record.Review) error {
	return map[string]func(io.Writer, record.Review) error{
		"client": clientPaper, "file": filePaper, "doctor": doctorPaper,
	}[reader](w, r)
}
