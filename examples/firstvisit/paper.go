package main

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/visit"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A paper collects lines of plain text.
type paper struct {
	out   *bufio.Writer
	words evidence.Words
}

func newPaper(w io.Writer) (*paper, error) {
	words, err := visit.Words()
	return &paper{bufio.NewWriter(w), words}, err
}

func (p *paper) close() error { return p.out.Flush() }

// line prints one line as it is.
func (p *paper) line(format string, args ...any) { fmt.Fprintf(p.out, format+"\n", args...) }

// heading prints a line in capitals with air above it.
func (p *paper) heading(text string) { p.line("\n%s\n", strings.ToUpper(text)) }

// say prints text wrapped to the page, its first line behind mark.
func (p *paper) say(mark, text string) { page.Wrap(p.out, mark, text) }

// para prints a paragraph with air above it.
func (p *paper) para(text string) {
	p.line("")
	p.say("", text)
}

// clients prints what the reasons say to the client, each sentence once.
func (p *paper) clients(mark string, reasons []evidence.Reason) {
	said := map[string]bool{}
	for _, r := range reasons {
		if text := p.words.Client(r); text != "" && !said[text] {
			said[text] = true
			p.say(mark, text)
		}
	}
}

// clinicians prints what the reasons say to the clinician, with their facts.
func (p *paper) clinicians(mark string, reasons []evidence.Reason) {
	for _, r := range reasons {
		text := p.words.Clinician(r)
		if len(r.Facts) > 0 {
			text += " " + cite(r.Facts)
		}
		p.say(mark, text)
	}
}

func cite(facts []evidence.FactID) string {
	ids := make([]string, len(facts))
	for i, f := range facts {
		ids[i] = string(f)
	}
	return "[" + strings.Join(ids, "; ") + "]"
}

// day prints "Monday 30 November 2026".
func day(d units.Day) string {
	if d.IsZero() {
		return "no date"
	}
	year, month, dayOfMonth := d.Date()
	return fmt.Sprintf("%s %d %s %d", d.Weekday(), dayOfMonth, month, year)
}

// cautions and reasons are the lists of a prescription that papers print.
func cautions(item dose.Prescription) []evidence.Reason { return item.Cautions }
func reasons(item dose.Prescription) []evidence.Reason  { return item.Reasons }

// shared returns what the given list of at least n items holds, in the order
// met, so that a paper says it once; only returns what a list holds beside that.
func shared(items []dose.Prescription, n int, list func(dose.Prescription) []evidence.Reason) []evidence.Reason {
	var all []evidence.Reason
	for _, item := range items {
		for _, r := range list(item) {
			having := 0
			for _, other := range items {
				if holds(list(other), r) {
					having++
				}
			}
			if having >= n && !holds(all, r) {
				all = append(all, r)
			}
		}
	}
	return all
}

func only(list, shared []evidence.Reason) []evidence.Reason {
	return slices.DeleteFunc(slices.Clone(list), func(r evidence.Reason) bool { return holds(shared, r) })
}

func holds(list []evidence.Reason, r evidence.Reason) bool {
	return slices.ContainsFunc(list, func(s evidence.Reason) bool {
		return s.Code == r.Code && slices.Equal(s.Args, r.Args) && slices.Equal(s.Facts, r.Facts)
	})
}
