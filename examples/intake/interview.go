package main

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
)

const welcome = `Welcome. A few questions before the first training, in your own time.
"don't know" is a good answer to any of them. "back" goes one question back,
"stop" ends here, "?" explains. Nothing that you type is kept.`

// converse asks on a terminal, or whatever stands behind the reader.
func converse(day units.Day, in io.Reader, out io.Writer) (interview.Interview, error) {
	lines := bufio.NewScanner(in)
	talk := interview.On(day)
	fmt.Fprintln(out, welcome)
	for q, more := talk.Next(); more; q, more = talk.Next() {
		ask(out, q)
		if !lines.Scan() {
			fmt.Fprintln(out, "\n\nThe answers end here.")
			return talk, lines.Err()
		}
		switch answer := strings.TrimSpace(lines.Text()); strings.ToLower(answer) {
		case "stop", "quit", "exit":
			return talk, nil
		case "back":
			before, any := talk.Back()
			if !any {
				fmt.Fprintln(out, "This is the first question.")
			}
			talk = before
		case "?", "help":
			explain(out, q)
		case "":
			fmt.Fprintln(out, `Please answer, or write "don't know".`)
		default:
			after, err := answered(talk, q, answer)
			if err != nil {
				page.Wrap(out, "", "Sorry, "+sorry(q, err)+".")
			}
			talk = after
		}
	}
	return talk, nil
}

// answered returns talk after an answer in words, and as it was with an error.
func answered(talk interview.Interview, q interview.FormQuestion, answer string) (interview.Interview, error) {
	reply, err := read(q, answer)
	if err != nil {
		return talk, err
	}
	return talk.Answer(q.Key, reply)
}

func ask(w io.Writer, q interview.FormQuestion) {
	fmt.Fprintln(w)
	page.Wrap(w, "", q.Client)
	for i, choice := range q.Choices {
		page.Wrap(w, fmt.Sprintf("%4d  ", i+1), choice.Client)
	}
	fmt.Fprintf(w, "(%s)\n> ", hint(q))
}

func explain(w io.Writer, q interview.FormQuestion) {
	page.Wrap(w, "", fmt.Sprintf("Answer like this: %s; or \"don't know\", \"back\", \"stop\".", hint(q)))
	if len(q.Choices) > 0 {
		fmt.Fprintln(w, `Behind a number, "?" means that you are not sure of it: "2 5?".`)
	}
	fmt.Fprintf(w, "In a file of answers this question is called %s.\n", q.Key)
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
func fromFile(name string, day units.Day, stderr io.Writer) (talk interview.Interview, note string, err error) {
	talk = interview.On(day)
	data, err := os.ReadFile(name)
	if err != nil {
		return talk, "", err
	}
	answers, order, err := readAnswers(string(data))
	if err != nil {
		return talk, "", fmt.Errorf("%s: %w", name, err)
	}
	if l := answers["note"]; l != nil {
		note, l.used = l.answer, true
	}
	for q, more := talk.Next(); more; q, more = talk.Next() {
		answer := "don't know"
		l := answers[q.Key]
		if l != nil {
			answer, l.used = l.answer, true
		}
		after, err := answered(talk, q, answer)
		switch {
		case err != nil && l != nil:
			return talk, "", fmt.Errorf("%s, line %d, %s: %s", name, l.number, q.Key, sorry(q, err))
		case err != nil: // cannot do without an answer
			return talk, note, nil
		}
		talk = after
	}
	for _, key := range order {
		if l := answers[key]; !l.used {
			fmt.Fprintf(stderr, "intake: line %d, %s: nothing made this question necessary, or there is none of that name\n", l.number, key)
		}
	}
	return talk, note, nil
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
