package page

import (
	"bufio"
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"

	"example.org/posology/dose/choice"
	"example.org/posology/examples/internal/document"
	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A Paper collects lines of plain text, and says reasons in the words of a table.
type Paper struct {
	out   *bufio.Writer
	words evidence.Lexicon
}

// New returns an empty paper that is written to w, with the words of the house.
func New(w io.Writer) (*Paper, error) {
	words, err := record.Words()
	return &Paper{bufio.NewWriter(w), words}, err
}

// Close writes what was collected, and returns the first error of the writer.
func (p *Paper) Close() error { return p.out.Flush() }

// Line prints one line as it is.
func (p *Paper) Line(format string, args ...any) { fmt.Fprintf(p.out, format+"\n", args...) }

// Body prints a document without its title.
func (p *Paper) Body(d document.Document) { d.Body(p.out) } // Close returns the error

// Heading prints a line in capitals with air above it.
func (p *Paper) Heading(text string) { p.Line("\n%s\n", strings.ToUpper(text)) }

// Say prints text wrapped to the page, its first line behind mark.
func (p *Paper) Say(mark, text string) { Wrap(p.out, mark, text) }

// Para prints a paragraph with air above it.
func (p *Paper) Para(text string) {
	p.Line("")
	p.Say("", text)
}

// Texts returns what reasons say, each sentence once, with its days as [Day] says them.
func Texts(say func(evidence.Reason) string, reasons []evidence.Reason) []string {
	var texts []string
	for _, r := range reasons {
		if text := Dated(say(r)); text != "" && !slices.Contains(texts, text) {
			texts = append(texts, text)
		}
	}
	return texts
}

// Clients prints what the reasons say to the client, each sentence once.
func (p *Paper) Clients(mark string, reasons []evidence.Reason) {
	p.Each(mark, Texts(p.words.Client, reasons))
}

// Each prints texts, each behind the mark.
func (p *Paper) Each(mark string, texts []string) {
	for _, text := range texts {
		p.Say(mark, text)
	}
}

// Clinicians prints what the reasons say to the clinician, with their facts.
func (p *Paper) Clinicians(mark string, reasons []evidence.Reason) {
	for _, r := range reasons {
		p.Say(mark, p.cited(r))
	}
}

// Clinician returns what a reason says to the clinician, without its facts.
func (p *Paper) Clinician(r evidence.Reason) string { return p.words.Clinician(r) }

func (p *Paper) cited(r evidence.Reason) string {
	text := p.words.Clinician(r)
	if len(r.Facts) > 0 {
		text += " " + cite(r.Facts)
	}
	return text
}

// Led prints the reasons as Clinicians does, each behind a few words of its own line.
func (p *Paper) Led(mark, lead string, reasons []evidence.Reason) {
	for _, r := range reasons {
		p.Say(mark, lead+" "+p.cited(r))
	}
}

// NoDevice says on every paper what the programs are.
const NoDevice = "This comes from an example of a library, which is no medical device. It gives nobody leave to train: local rules and a licensed clinician decide."

// Quoted puts a person's own words in quotation marks.
func Quoted(words string) string { return "“" + strings.TrimRight(words, ".") + "”" }

// Wanted says what the person wants to be able to do, and what a plan is made for, if that was said.
func Wanted(lead, words string, tasks []choice.Task) string {
	text, between := lead+": "+Quoted(words), ". We plan for: "
	for _, t := range tasks {
		text, between = text+between+t.String(), "; "
	}
	return text + "."
}

func cite(facts []evidence.FactID) string {
	ids := make([]string, len(facts))
	for i, f := range facts {
		ids[i] = string(f)
	}
	return "[" + strings.Join(ids, "; ") + "]"
}

var isoDay = regexp.MustCompile(`\d{4}-\d{2}-\d{2}`)

// Dated says the days in a text as [Day] does: for readers who take no part in the file.
func Dated(text string) string {
	return isoDay.ReplaceAllStringFunc(text, func(found string) string {
		var d units.Day
		if d.UnmarshalText([]byte(found)) != nil {
			return found
		}
		return Day(d)
	})
}

// Day prints "Monday 30 November 2026".
func Day(d units.Day) string {
	if d.IsZero() {
		return "no date"
	}
	year, month, dayOfMonth := d.Date()
	return fmt.Sprintf("%s %d %s %d", d.Weekday(), dayOfMonth, month, year)
}
