package asking

import (
	"bufio"
	"fmt"
	"io"
	"maps"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
)

// Welcome is what somebody reads before the first question.
const Welcome = `Welcome. A few questions before the first training, in your own time.
"don't know" is a good answer to any of them. "back" goes one question back,
"stop" ends here, "?" explains.`

// Converse asks on a terminal, or whatever stands behind the lines. Where there is
// an answer from before, an empty line takes it; a settled one is taken unasked.
func Converse(day units.Day, lines *bufio.Scanner, out io.Writer, before, settled map[string]string) (interview.Interview, error) {
	talk := interview.On(day)
	before = maps.Clone(before)
	for q, more := talk.Next(); more; q, more = talk.Next() {
		if was := settled[q.Key]; was != "" {
			if after, err := answered(talk, q, was); err == nil {
				talk = after
				continue
			}
		}
		ask(out, q, before[q.Key])
		if !lines.Scan() {
			fmt.Fprintln(out, "\n\nThe answers end here.")
			return talk, lines.Err()
		}
		answer := strings.TrimSpace(lines.Text())
		if answer == "" {
			answer = before[q.Key]
		}
		switch strings.ToLower(answer) {
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
			} else {
				forget(before, q.Key, answer)
			}
			talk = after
		}
	}
	return talk, nil
}

// second are readings that were taken again after a rest, by the key of the first.
var second = map[string]string{"blood_pressure": "blood_pressure_again", "pulse": "resting_pulse_again"}

// forget drops the second reading of before where the first is another now: it was taken
// beside that one, and counts in its place.
func forget(before map[string]string, key, answer string) {
	if answer != before[key] {
		delete(before, second[key])
	}
}

// answered returns talk after an answer in words, and as it was with an error.
func answered(talk interview.Interview, q interview.FormQuestion, answer string) (interview.Interview, error) {
	reply, err := read(q, answer)
	if err != nil {
		return talk, err
	}
	return talk.Answer(q.Key, reply)
}

func ask(w io.Writer, q interview.FormQuestion, before string) {
	fmt.Fprintln(w)
	page.Wrap(w, "", q.Client)
	for i, choice := range q.Choices {
		page.Wrap(w, fmt.Sprintf("%4d  ", i+1), choice.Client)
	}
	if before != "" {
		fmt.Fprintf(w, "(%s; nothing: as before, %s)\n> ", hint(q), before)
		return
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
