package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A question is asked once, in words, and reads its own answer.
type question struct {
	key     string   // its name in a file of answers
	text    string   // what is asked
	hint    string   // how to answer
	options []string // to choose from by number
	take    func(p *person, answer string) error
}

// A given answer is kept as text, so that going back is a replay of the others.
type given struct {
	key, answer string
}

const welcome = `Welcome. A few questions before the first training, in your own time.
"don't know" is a good answer to any of them. "back" goes one question back,
"stop" ends here, "?" explains. Nothing that you type is kept.`

// interview asks on a terminal, or whatever stands behind the reader.
func interview(day units.Day, in io.Reader, out io.Writer) (*person, error) {
	lines := bufio.NewScanner(in)
	p := newPerson(day)
	var all []given
	fmt.Fprintln(out, welcome)
	for q := p.next(); q != nil; q = p.next() {
		q.ask(out)
		if !lines.Scan() {
			fmt.Fprintln(out, "\n\nThe answers end here.")
			return p, lines.Err()
		}
		switch answer := strings.TrimSpace(lines.Text()); strings.ToLower(answer) {
		case "stop", "quit", "exit":
			return p, nil
		case "back":
			if len(all) == 0 {
				fmt.Fprintln(out, "This is the first question.")
				continue
			}
			all = all[:len(all)-1]
			p = replay(day, all)
		case "?", "help":
			q.explain(out)
		case "":
			fmt.Fprintln(out, `Please answer, or write "don't know".`)
		default:
			next := append(all, given{q.key, answer})
			after, err := p.with(q, answer)
			if err != nil {
				page.Wrap(out, "", sorry(err))
				continue
			}
			p, all = after, next
		}
	}
	return p, nil
}

// replay gives the answers again; they have been taken once, so they fit.
func replay(day units.Day, all []given) *person {
	p := newPerson(day)
	for _, g := range all {
		if after, err := p.with(p.next(), g.answer); err == nil {
			p = after
		}
	}
	return p
}

func (q *question) ask(w io.Writer) {
	fmt.Fprintln(w)
	page.Wrap(w, "", q.text)
	for i, option := range q.options {
		page.Wrap(w, fmt.Sprintf("%4d  ", i+1), option)
	}
	fmt.Fprintf(w, "(%s)\n> ", q.hint)
}

func (q *question) explain(w io.Writer) {
	page.Wrap(w, "", fmt.Sprintf("Answer like this: %s; or \"don't know\", \"back\", \"stop\".", q.hint))
	if len(q.options) > 0 {
		fmt.Fprintln(w, `Behind a number, "?" means that you are not sure of it: "2 5?".`)
	}
	fmt.Fprintf(w, "In a file of answers this question is called %s.\n", q.key)
}

// sorry says what was wrong with an answer.
func sorry(err error) string {
	var which *field.Error
	if errors.As(err, &which) {
		return "Sorry, that does not fit. I can use: " + which.Allowed + "."
	}
	return "Sorry, " + err.Error() + "."
}

// A line of a file of answers.
type line struct {
	number int
	answer string
	used   bool
}

// fromFile takes the answers from a file, and from its note where they come
// from. Questions without a line are not known; lines whose question was not
// asked are named on stderr.
func fromFile(name string, day units.Day, stderr io.Writer) (*person, error) {
	data, err := os.ReadFile(name)
	if err != nil {
		return nil, err
	}
	answers, order, err := readAnswers(string(data))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	p := newPerson(day)
	if l := answers["note"]; l != nil {
		p.note, l.used = l.answer, true
	}
	for q := p.next(); q != nil; q = p.next() {
		answer := "don't know"
		l := answers[q.key]
		if l != nil {
			answer, l.used = l.answer, true
		}
		after, err := p.with(q, answer)
		switch {
		case err != nil && l != nil:
			return nil, fmt.Errorf("%s, line %d, %s: %w", name, l.number, q.key, err)
		case err != nil: // cannot do without an answer
			return p, nil
		}
		p = after
	}
	for _, key := range order {
		if l := answers[key]; !l.used {
			fmt.Fprintf(stderr, "intake: line %d, %s: nothing made this question necessary, or there is none of that name\n", l.number, key)
		}
	}
	return p, nil
}

// readAnswers reads lines such as "age: 71"; empty ones, and those that begin
// with #, are passed over.
func readAnswers(text string) (answers map[string]*line, order []string, err error) {
	answers = map[string]*line{}
	number := 0
	for row := range strings.Lines(text) {
		number++
		row = strings.TrimSpace(row)
		if row == "" || strings.HasPrefix(row, "#") {
			continue
		}
		key, answer, found := strings.Cut(row, ":")
		key, answer = strings.TrimSpace(key), strings.TrimSpace(answer)
		switch {
		case !found || key == "" || answer == "":
			return nil, nil, fmt.Errorf("line %d: %.40q is not of the form \"key: answer\"", number, row)
		case answers[key] != nil:
			return nil, nil, fmt.Errorf("line %d: %s stands in line %d already", number, key, answers[key].number)
		}
		answers[key] = &line{number: number, answer: answer}
		order = append(order, key)
	}
	return answers, order, nil
}
