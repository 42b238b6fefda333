package interview

import (
	"fmt"
	"sync"

	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// prompts is the library's table of questions, by code.
var prompts = sync.OnceValue(func() map[screening.Code]screening.Prompt {
	table := map[screening.Code]screening.Prompt{}
	for prompt := range screening.Prompts() {
		table[prompt.Code] = prompt
	}
	return table
})

// purpose is what the library's question of a code tells the clinician.
func purpose(of screening.Code) string {
	w, _ := screening.Words().Wording(evidence.ReasonCode("screening.ask." + of))
	return w.Clinician
}

// asked makes a question that helps to answer the library's question of a code.
func asked(key string, of screening.Code, form ReplyForm, text, hint string) FormQuestion {
	return FormQuestion{Key: key, Form: form, Client: text, Clinician: purpose(of), Hint: hint}
}

// yesNo is a question with yes and no.
func yesNo(key string, of screening.Code, text string, take func(s *state, a screening.Answer)) *asking {
	return &asking{asked(key, of, YesNo, text, ""), func(s *state, r Reply) error {
		take(s, r.YesNo)
		return nil
	}}
}

// severalOf is a question with any of several choices; not known changes nothing.
func severalOf(key string, of screening.Code, text string, choices []Choice, take func(s *state, l screening.Checklist)) *asking {
	a := &asking{asked(key, of, SeveralOf, text, ""), func(s *state, r Reply) error {
		if r.List.Asked {
			take(s, r.List)
		}
		return nil
	}}
	a.Choices = choices
	return a
}

// oneOf is a question with one of several values, in a client's words.
func oneOf[E fmt.Stringer](key string, of screening.Code, text string, values []E, texts []string, take func(s *state, v E)) *asking {
	a := &asking{asked(key, of, OneOf, text, ""), func(s *state, r Reply) error {
		for _, v := range values {
			if r.Choice != "" && v.String() == string(r.Choice) {
				take(s, v)
			}
		}
		return nil
	}}
	for i, v := range values {
		a.Choices = append(a.Choices, Choice{screening.Code(v.String()), texts[i], v.String()})
	}
	return a
}

// written is a question whose answer is read from a text, if it is known.
func written(key string, of screening.Code, form ReplyForm, text, hint string, take func(s *state, text string) error) *asking {
	return &asking{asked(key, of, form, text, hint), func(s *state, r Reply) error {
		if r.Text == "" {
			return nil
		}
		return take(s, r.Text)
	}}
}

// A span is what a whole number may be, with its unit and how else it is written.
type span struct {
	least, most int
	unit        string
	spellings   []string
}

// whole is a question whose answer is a whole number.
func whole(key string, of screening.Code, text, hint string, in span, take func(s *state, n int)) *asking {
	a := written(key, of, Whole, text, hint, func(s *state, text string) error {
		n, err := readWhole(text, in.least, in.most, in.spellings...)
		if err == nil {
			take(s, n)
		}
		return err
	})
	a.Least, a.Most, a.Unit = in.least, in.most, in.unit
	return a
}

// choices are those of codes.
func choices(codes []screening.Code) []Choice {
	list := make([]Choice, len(codes))
	for i, code := range codes {
		term, _ := screening.LookUp(code)
		list[i] = Choice{code, screening.Option(code), term.Meaning}
	}
	return list
}
