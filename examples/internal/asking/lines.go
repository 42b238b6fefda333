package asking

import (
	"fmt"
	"maps"
	"os"
	"slices"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
)

// Answers are those of a file of lines such as "age: 71".
type Answers struct {
	name  string
	lines map[string]*line
	order []string
}

type line struct {
	number int
	answer string
	used   bool
}

// Read reads a file of answers.
func Read(name string) (Answers, error) {
	data, err := os.ReadFile(name)
	if err != nil {
		return Answers{}, err
	}
	a, err := Parse(name, string(data))
	if err != nil {
		return a, fmt.Errorf("%s: %w", name, err)
	}
	return a, nil
}

// Parse reads lines such as "age: 71"; empty ones, and those that begin with #,
// are passed over. The name stands in what is said of them.
func Parse(name, text string) (Answers, error) {
	a := Answers{name: name, lines: map[string]*line{}}
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
			return a, fmt.Errorf("line %d: %.40q is not of the form \"key: answer\"", number, row)
		case a.lines[key] != nil:
			return a, fmt.Errorf("line %d: %s stands in line %d already", number, key, a.lines[key].number)
		}
		a.lines[key] = &line{number: number, answer: answer}
		a.order = append(a.order, key)
	}
	return a, nil
}

// Take returns the answer of a key, and notes that it was used; "" if there is none.
func (a Answers) Take(key string) string {
	l := a.lines[key]
	if l == nil {
		return ""
	}
	l.used = true
	return l.answer
}

// Wrong says of an answer that it cannot be used, and why.
func (a Answers) Wrong(key, why string) error {
	if l := a.lines[key]; l != nil {
		return fmt.Errorf("%s, line %d, %s: %s", a.name, l.number, key, why)
	}
	return fmt.Errorf("%s: %s: %s", a.name, key, why)
}

// Unused says of each line that nothing asked for it.
func (a Answers) Unused() []string {
	var said []string
	for _, key := range a.order {
		if l := a.lines[key]; !l.used {
			said = append(said, fmt.Sprintf("line %d, %s: nothing made this question necessary, or there is none of that name", l.number, key))
		}
	}
	return said
}

// Interview takes the interview from the answers. A question without a line is
// answered as before, where there is an answer from before that can still be
// given, and is else not known.
func (a Answers) Interview(day units.Day, known Known) (interview.Interview, error) {
	talk, before := interview.On(day), maps.Clone(known.Answers)
	isGone := func(code screening.Code) (string, bool) {
		if slices.Contains(strings.Fields(a.Take(noLonger)), string(code)) {
			return "", true
		}
		return fmt.Sprintf("%s stood in the assessment of %s; the line %q takes it away", code, known.Was.Day, noLonger+": "+string(code)), false
	}
	for q, more := talk.Next(); more; q, more = talk.Next() {
		if own := a.Take(q.Key); own != "" {
			after, err := known.answered(talk, q, own, isGone)
			if err != nil {
				return talk, a.Wrong(q.Key, sorry(q, err))
			}
			forget(before, q.Key, own)
			talk = after
			continue
		}
		after, err := talk, error(nil)
		was := usual(talk, q, before)
		if was != "" {
			after, err = known.answered(talk, q, was, stays)
		}
		if was == "" || err != nil {
			after, err = known.answered(talk, q, "don't know", stays)
		}
		if err != nil { // cannot do without an answer
			return talk, nil
		}
		talk = after
	}
	return talk, nil
}

// All returns the answers by key.
func (a Answers) All() map[string]string {
	all := map[string]string{}
	for key, l := range a.lines {
		all[key] = l.answer
	}
	return all
}
