package house_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

const (
	manyBad   = 20_000
	mostBytes = 40 << 10 // of the text of an error
)

// An error goes into a log and onto a page: of 20,000 bad fields its text says the
// first and how many more there are, and the fields are all still there.
func TestErrorTextsHaveAnEnd(t *testing.T) {
	codes := make([]screening.Code, manyBad)
	words := evidence.Words{}
	for i := range manyBad {
		codes[i] = screening.Code(fmt.Sprintf("%s-%d", strings.Repeat("made-up", 10), i)) // too long for a search of what was meant
		words[evidence.ReasonCode(codes[i])] = evidence.Wording{Clinician: "made up"}
	}
	for name, call := range map[string]func() error{
		"onerm.Combine":       func() error { _, err := onerm.Combine(make([]onerm.Estimate, manyBad)...); return err },
		"Catalogue.With":      func() error { _, err := exercise.Standard().With(make([]exercise.Exercise, manyBad)...); return err },
		"evidence.NewLexicon": func() error { _, err := evidence.NewLexicon(words, words); return err },
		"Profile.Validate":    func() error { return screening.Profile{Conditions: screening.AskedFor(codes...)}.Validate() },
		"Course.Validate":     func() error { return progression.Course{Log: make([]progression.Visit, manyBad)}.Validate() },
		"field.Decode": func() error {
			return field.Decode([]byte("["+strings.Repeat("{},", manyBad)+"{}]"), new([]int), field.Strict)
		},
		"field.Decode, long": func() error {
			return field.Decode([]byte(`{"`+strings.Repeat("x", 1_000_000)+`":1}`), new(struct{}), field.Strict)
		},
	} {
		err := call()
		var bad field.Errors
		if !errors.As(err, &bad) {
			t.Errorf("%s: %.200v, want field.Errors", name, err)
			continue
		}
		text := err.Error()
		if len(text) > mostBytes || len(bad) > 1 && !strings.Contains(text, " more") {
			t.Errorf("%s: %d bytes for %d bad fields, ending with %q", name, len(text), len(bad), text[max(0, len(text)-40):])
		}
	}
}
