package main

import (
	"fmt"
	"io"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/units/evidence"
)

// A sheet is a paper whose lines may be wider, and are shorter where blanks end them.
type sheet struct{ *page.Paper }

func newSheet(w io.Writer) (sheet, error) {
	p, err := page.New(w)
	return sheet{p}, err
}

// line prints one line without blanks at its end.
func (s sheet) line(format string, args ...any) {
	s.Line("%s", strings.TrimRight(fmt.Sprintf(format, args...), " "))
}

// because prints what the reasons say to the clinician, each sentence once.
func (s sheet) because(mark string, reasons []evidence.Reason) {
	s.Each(mark, page.Texts(s.Clinician, reasons))
}
