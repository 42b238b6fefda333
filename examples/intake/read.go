package main

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"example.org/posology/screening"
	"example.org/posology/units"
)

// Hints that several questions share.
const (
	yesNoHint = "yes, no, or don't know"
	pickHint  = `the numbers, such as "2 5"; "none"; "3?" if you are not sure of 3`
	dayHint   = "a day such as 2026-03-14, or only the month: 2026-03"
)

// isUnsure reports whether an answer says that the answer is not known.
func isUnsure(answer string) bool {
	switch strings.ToLower(strings.ReplaceAll(answer, "’", "'")) {
	case "don't know", "dont know", "not sure", "unsure", "unknown", "skip":
		return true
	}
	return false
}

func readAnswer(answer string) (screening.Answer, error) {
	switch strings.ToLower(answer) {
	case "yes", "y":
		return screening.Yes, nil
	case "no", "n":
		return screening.No, nil
	}
	if isUnsure(answer) {
		return screening.Unknown, nil
	}
	return screening.Unknown, errors.New("please answer yes, no or don't know")
}

// yesNo is a question with yes and no.
func yesNo(key, text string, take func(p *person, a screening.Answer)) *question {
	return &question{key: key, text: text, hint: yesNoHint, take: func(p *person, answer string) error {
		a, err := readAnswer(answer)
		if err == nil {
			take(p, a)
		}
		return err
	}}
}

// known is a question whose answer is read only if it is known.
func known(key, text, hint string, take func(p *person, answer string) error) *question {
	return &question{key: key, text: text, hint: hint, take: func(p *person, answer string) error {
		if isUnsure(answer) {
			return nil
		}
		return take(p, answer)
	}}
}

// choice is a question with one answer of several.
func choice(key, text string, options []string, take func(p *person, i int)) *question {
	q := known(key, text, "one number", func(p *person, answer string) error {
		i, err := strconv.Atoi(answer)
		if err != nil {
			i = 1 + slices.IndexFunc(options, func(o string) bool {
				name, _, _ := strings.Cut(o, ",")
				return strings.EqualFold(name, answer)
			})
		}
		if i < 1 || i > len(options) {
			return fmt.Errorf("please choose a number from 1 to %d", len(options))
		}
		take(p, i-1)
		return nil
	})
	q.options = options
	return q
}

// pick reads numbers, or codes, with "?" behind those that are not sure.
func pick(answer string, codes []screening.Code) (present, unsure []screening.Code, err error) {
	words := strings.FieldsFunc(strings.ToLower(answer), func(r rune) bool { return unicode.IsSpace(r) || r == ',' || r == ';' })
	if len(words) == 1 && slices.Contains([]string{"none", "no", "n", "nothing", "0"}, words[0]) {
		return nil, nil, nil
	}
	for _, word := range words {
		name, doubtful := strings.CutSuffix(word, "?")
		i, err := strconv.Atoi(name)
		if err != nil {
			i = 1 + slices.Index(codes, screening.Code(name))
		}
		if i < 1 || i > len(codes) {
			return nil, nil, fmt.Errorf("%.20q is none of the numbers 1 to %d; without any please write \"none\"", word, len(codes))
		}
		code := codes[i-1]
		if slices.Contains(present, code) || slices.Contains(unsure, code) {
			return nil, nil, fmt.Errorf("%d stands there twice", i)
		}
		if doubtful {
			unsure = append(unsure, code)
		} else {
			present = append(present, code)
		}
	}
	if len(words) == 0 {
		return nil, nil, errors.New("please give the numbers, or write \"none\"")
	}
	return present, unsure, nil
}

// number reads a whole number within a range, with or without one of the units
// behind it: those that mean what the question asks for.
func number(answer string, least, most int, units ...string) (int, error) {
	digits := answer
	for _, unit := range units {
		if before, found := strings.CutSuffix(strings.ToLower(answer), unit); found {
			digits = strings.TrimSpace(before)
			break
		}
	}
	n, err := strconv.Atoi(digits)
	if err != nil || n < least || n > most {
		return 0, fmt.Errorf("please write a whole number from %d to %d", least, most)
	}
	return n, nil
}

// readDay reads a day, or a month for its last day: the later, the more careful.
func readDay(answer string, visit units.Day) (units.Day, error) {
	day, err := units.ParseDay(answer)
	if err == nil {
		return day, nil
	}
	first, monthErr := units.ParseDay(answer + "-01")
	if monthErr != nil {
		return 0, fmt.Errorf("please write %s", dayHint)
	}
	last := first
	for {
		next, err := last.Plus(1)
		if err != nil {
			break
		}
		if _, m, d := next.Date(); d == 1 && m != 0 {
			break
		}
		last = next
	}
	if first <= visit {
		last = min(last, visit)
	}
	return last, nil
}

// readPressure reads "146/84", with or without mmHg, the unit of the question.
func readPressure(answer string) (*screening.BloodPressure, error) {
	text := strings.TrimSpace(strings.TrimSuffix(strings.ToLower(answer), "mmhg"))
	upper, lower, found := strings.Cut(text, "/")
	systolic, err1 := strconv.Atoi(strings.TrimSpace(upper))
	diastolic, err2 := strconv.Atoi(strings.TrimSpace(lower))
	if !found || err1 != nil || err2 != nil {
		return nil, errors.New("please write both numbers in mmHg, such as 146/84")
	}
	if systolic <= diastolic {
		return nil, errors.New("the first number is the larger one")
	}
	return &screening.BloodPressure{Systolic: systolic, Diastolic: diastolic}, nil
}

// readHaemoglobin reads "135 g/L" or "13.5 g/dL" as whole grams a litre, a part
// of a gram left out: the lower, the more careful.
func readHaemoglobin(answer string) (int, error) {
	digits, perLitre := strings.CutSuffix(strings.ToLower(answer), "g/l")
	tenth, perDecilitre := strings.CutSuffix(strings.ToLower(answer), "g/dl")
	factor := 1.0
	if perDecilitre {
		digits, factor = tenth, 10
	}
	v, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(digits), ",", ".", 1), 64)
	if err != nil || !perLitre && !perDecilitre || !(v*factor >= 1 && v*factor <= 1000) {
		return 0, errors.New("please write the number with its unit, g/L or g/dL")
	}
	return int(math.Floor(v*factor + 1e-9)), nil // 10.3 times ten is a trifle below 103
}

// score reads a number from 0 to 10.
func score(answer string) (*float64, error) {
	v, err := strconv.ParseFloat(strings.Replace(answer, ",", ".", 1), 64)
	if err != nil {
		return nil, errors.New("please write a number from 0 to 10")
	}
	return &v, nil
}
