package asking

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"example.org/posology/screening"
	"example.org/posology/screening/interview"
	"example.org/posology/units/field"
)

// hints say how to type an answer, where the question's own does not.
var hints = map[interview.ReplyForm]string{
	interview.YesNo:     "yes, no, or don't know",
	interview.OneOf:     "one number",
	interview.SeveralOf: `the numbers, such as "2 5"; "none"; "3?" if you are not sure of 3`,
}

func hint(q interview.FormQuestion) string {
	return cmp.Or(hints[q.Form], q.Hint)
}

// isUnsure reports whether an answer says that the answer is not known.
func isUnsure(answer string) bool {
	return slices.Contains([]string{"don't know", "dont know", "not sure", "unsure", "unknown", "skip"}, strings.ToLower(strings.ReplaceAll(answer, "’", "'")))
}

// read makes a reply of what was typed.
func read(q interview.FormQuestion, answer string) (r interview.Reply, err error) {
	if isUnsure(answer) {
		return r, nil
	}
	switch q.Form {
	case interview.YesNo:
		r.YesNo, err = readYesNo(answer)
	case interview.OneOf:
		r.Choice, err = choose(answer, q.Choices)
	case interview.SeveralOf:
		r.List, err = pick(answer, q.Choices)
	default:
		r.Text = answer
	}
	return r, err
}

func readYesNo(answer string) (screening.Answer, error) {
	switch strings.ToLower(answer) {
	case "yes", "y":
		return screening.Yes, nil
	case "no", "n":
		return screening.No, nil
	}
	return screening.Unknown, errors.New("please answer yes, no or don't know")
}

// choose reads a number, a code, or the words of a choice up to its comma.
func choose(answer string, choices []interview.Choice) (screening.Code, error) {
	i, err := strconv.Atoi(answer)
	if err != nil {
		i = 1 + slices.IndexFunc(choices, func(c interview.Choice) bool {
			name, _, _ := strings.Cut(c.Client, ",")
			return strings.EqualFold(name, answer) || string(c.Code) == answer
		})
	}
	if i < 1 || i > len(choices) {
		err := fmt.Sprintf("please choose a number from 1 to %d, or one of", len(choices))
		for _, c := range choices {
			err += fmt.Sprintf(" %q", c.Code)
		}
		return "", errors.New(err)
	}
	return choices[i-1].Code, nil
}

// pick reads numbers, or codes, with "?" behind those that are not sure.
func pick(answer string, choices []interview.Choice) (list screening.Checklist, err error) {
	list.Asked = true
	words := strings.FieldsFunc(strings.ToLower(answer), func(r rune) bool { return unicode.IsSpace(r) || r == ',' || r == ';' })
	if len(words) == 1 && slices.Contains([]string{"none", "no", "n", "nothing", "0"}, words[0]) {
		return list, nil
	}
	for _, word := range words {
		name, doubtful := strings.CutSuffix(word, "?")
		i, err := strconv.Atoi(name)
		if err != nil {
			i = 1 + slices.IndexFunc(choices, func(c interview.Choice) bool { return string(c.Code) == name })
		}
		if i < 1 || i > len(choices) {
			return list, fmt.Errorf("%.20q is none of the numbers 1 to %d; without any please write \"none\"", word, len(choices))
		}
		code := choices[i-1].Code
		switch {
		case slices.Contains(list.Present, code) || slices.Contains(list.Unsure, code):
			return list, fmt.Errorf("%d stands there twice", i)
		case doubtful:
			list.Unsure = append(list.Unsure, code)
		default:
			list.Present = append(list.Present, code)
		}
	}
	if len(words) == 0 {
		return list, errors.New("please give the numbers, or write \"none\"")
	}
	return list, nil
}

// sorry says what was wrong with an answer to q.
func sorry(q interview.FormQuestion, err error) string {
	var which *field.Error
	switch {
	case !errors.As(err, &which):
		return err.Error()
	case which.Path != "/"+q.Key: // it could be read
		return "that does not fit. I can use: " + which.Allowed
	case errors.Is(err, field.ErrMissing):
		return "the unit matters: please write " + which.Allowed
	case errors.Is(err, field.ErrConflict):
		return which.Allowed
	}
	return "please write " + which.Allowed
}

// Written writes a reply as it could have been typed, choices by their codes, which
// stay the same where numbers move.
func Written(r interview.Reply) string {
	switch {
	case r.YesNo != screening.Unknown:
		return r.YesNo.String()
	case r.Choice != "":
		return string(r.Choice)
	case r.Text != "":
		return r.Text
	case !r.List.Asked:
		return "don't know"
	}
	var words []string
	for _, code := range r.List.Present {
		words = append(words, string(code))
	}
	for _, code := range r.List.Unsure {
		words = append(words, string(code)+"?")
	}
	return cmp.Or(strings.Join(words, " "), "none")
}
