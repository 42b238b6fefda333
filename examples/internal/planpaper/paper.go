package planpaper

import (
	"io"

	"example.org/posology/progression/record"
)

// For writes a plan for a reader, one of command.Readers.
func For(reader string, w io.Writer, r record.Plan) error {
	return map[string]func(io.Writer, record.Plan) error{
		"client": clientPaper, "file": filePaper, "doctor": doctorPaper,
	}[reader](w, r)
}
