package main

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A sheet collects lines of plain text.
type sheet struct {
	out   *bufio.Writer
	words evidence.Words
}

func newSheet(w io.Writer) (*sheet, error) {
	words, err := record.Words()
	return &sheet{bufio.NewWriter(w), words}, err
}

func (s *sheet) close() error { return s.out.Flush() }

// line prints one line without blanks at its end.
func (s *sheet) line(format string, args ...any) {
	fmt.Fprintln(s.out, strings.TrimRight(fmt.Sprintf(format, args...), " "))
}

// heading prints a line in capitals with air above it.
func (s *sheet) heading(text string) { s.line("\n%s\n", strings.ToUpper(text)) }

// say prints text wrapped to the page, its first line behind mark.
func (s *sheet) say(mark, text string) { page.Wrap(s.out, mark, text) }

// because prints what the reasons say to the clinician, each sentence once.
func (s *sheet) because(mark string, reasons []evidence.Reason) {
	said := map[string]bool{}
	for _, r := range reasons {
		if text := s.words.Clinician(r); text != "" && !said[text] {
			said[text] = true
			s.say(mark, text)
		}
	}
}

// day prints "Monday 30 November 2026".
func day(d units.Day) string {
	year, month, dayOfMonth := d.Date()
	return fmt.Sprintf("%s %d %s %d", d.Weekday(), dayOfMonth, month, year)
}

// count prints "1 set" and "3 sets".
func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
