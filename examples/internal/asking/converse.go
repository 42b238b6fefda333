package asking

import (
	"bufio"
	"cmp"
	"errors"
	"fmt"
	"io"
	"maps"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
)

// Welcome is what somebody reads before the first question.
const Welcome = `Welcome. A few questions before the first training, in your own time.
"don't know" is a good answer to any of them. "back" goes one question back,
"stop" ends here, "?" explains.`

// Known is what was known before an interview.
type Known struct {
	Answers map[string]string // as before: an empty line takes it
	Settled map[string]string // taken unasked
	Was     screening.Profile // the last assessment
}

// noLonger is the line of a file that says what that was told is so no longer.
const noLonger = "no_longer"

// Converse asks on a terminal, or whatever stands behind the lines.
func Converse(day units.Day, lines *bufio.Scanner, out io.Writer, known Known) (interview.Interview, error) {
	talk, before, gone := interview.On(day), maps.Clone(known.Answers), map[screening.Code]bool{}
	isGone := func(code screening.Code) (string, bool) {
		if gone[code] { // of its area
			return "", true
		}
		page.Wrap(out, "", fmt.Sprintf("This stood in the assessment of %s: %s. Is it no longer so, or was it never? Only yes takes it away.", known.Was.Day, screening.Option(code)))
		fmt.Fprint(out, "> ")
		yes := lines.Scan() && strings.EqualFold(strings.TrimSpace(lines.Text()), "yes")
		if gone[code] = yes; !yes {
			fmt.Fprintln(out, "It stays.")
		}
		return "", yes
	}
	for q, more := talk.Next(); more; q, more = talk.Next() {
		if was := known.Settled[q.Key]; was != "" {
			if after, err := known.answered(talk, q, was, stays); err == nil {
				talk = after
				continue
			}
		}
		was := usual(talk, q, before)
		ask(out, q, was)
		if !lines.Scan() {
			fmt.Fprintln(out, "\n\nThe answers end here.")
			return talk, lines.Err()
		}
		answer := cmp.Or(strings.TrimSpace(lines.Text()), was)
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
			after, err := known.answered(talk, q, answer, isGone)
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

// usual is the answer of before; the company of a day is that of the other days, unless somebody says otherwise.
func usual(talk interview.Interview, q interview.FormQuestion, before map[string]string) string {
	for _, g := range talk.Given() {
		if q.Key == "setting_today" && g.Key == "setting" {
			return Written(g.Reply)
		}
	}
	return before[q.Key]
}

// second are readings that were taken again after a rest, by the key of the first.
var second = map[string]string{"blood_pressure": "blood_pressure_again", "pulse": "resting_pulse_again", "oxygen_saturation": "oxygen_saturation_again"}

// forget drops the second reading of before where the first is another now: it was taken beside that one, and counts in its place.
func forget(before map[string]string, key, answer string) {
	if answer != before[key] {
		delete(before, second[key])
	}
}

// stays takes nothing away.
func stays(screening.Code) (string, bool) { return "", false }

// answered returns talk after an answer in words, and as it was with an error. What stood
// before stays, unless isGone says that it is gone; a text of it is an error.
func (known Known) answered(talk interview.Interview, q interview.FormQuestion, answer string, isGone func(screening.Code) (string, bool)) (interview.Interview, error) {
	reply, err := read(q, answer)
	if err != nil {
		return talk, err
	}
	var save []screening.Code
	gone, _ := talk.Forgets(reply, known.Was)
	for _, code := range gone {
		why, yes := isGone(code)
		if why != "" {
			return talk, errors.New(why)
		}
		if yes {
			save = append(save, code)
		}
	}
	_, reply = talk.Forgets(reply, known.Was, save...)
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
