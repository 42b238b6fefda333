package field

import (
	"fmt"
	"iter"
	"strings"
)

// A Vocabulary ties the values of an enumeration to their texts. Text is what
// is stored and exchanged; the numbers behind it may change between versions.
type Vocabulary[E ~uint8] struct {
	kind  string   // what one value is called in errors, such as "side"
	texts []string // by value; the empty text marks "not given"
}

// NewVocabulary makes the vocabulary of an enumeration whose values count up
// from 0. The text of 0 is empty where it means "not given".
func NewVocabulary[E ~uint8](kind string, texts ...string) Vocabulary[E] {
	return Vocabulary[E]{kind, texts}
}

// Text returns the text of e, and a text like "side(9)" for no such value.
func (v Vocabulary[E]) Text(e E) string {
	if int(e) < len(v.texts) {
		return v.texts[e]
	}
	return fmt.Sprintf("%s(%d)", v.kind, uint8(e))
}

// allowed lists the texts there are.
func (v Vocabulary[E]) allowed() string {
	return v.kind + ": " + strings.Join(v.texts[min(1, len(v.texts)):], ", ")
}

// Valid reports whether e is a value other than "not given".
func (v Vocabulary[E]) Valid(e E) bool { return e != 0 && int(e) < len(v.texts) }

// All yields the values that have a text in order: "not given" is left out.
func (v Vocabulary[E]) All() iter.Seq[E] {
	return func(yield func(E) bool) {
		for i, text := range v.texts {
			if text != "" && !yield(E(i)) {
				return
			}
		}
	}
}

// Parse is the inverse of Text. The empty text gives "not given". Any other
// text is an [ErrUnknown] that lists the texts there are.
func (v Vocabulary[E]) Parse(text string) (E, error) {
	for i, t := range v.texts {
		if t == text {
			return E(i), nil
		}
	}
	return 0, Bad(fmt.Sprintf("%.40q", text), v.allowed(), ErrUnknown)
}

// Marshal is for MarshalText methods; a value outside the vocabulary is an
// [ErrOutOfRange].
func (v Vocabulary[E]) Marshal(e E) ([]byte, error) {
	if int(e) >= len(v.texts) {
		return nil, Bad(v.Text(e), v.allowed(), ErrOutOfRange)
	}
	return []byte(v.texts[e]), nil
}

// Unmarshal is for UnmarshalText methods.
func (v Vocabulary[E]) Unmarshal(text []byte, into *E) error {
	e, err := v.Parse(string(text))
	return Assign(into, e, err)
}

// Check returns nil if e is a value other than "not given", else an
// [ErrMissing] or [ErrOutOfRange] for the field at path.
func (v Vocabulary[E]) Check(path string, e E) error {
	if e != 0 && int(e) < len(v.texts) { // Valid in line: every field of every visit is asked
		return nil
	}
	return v.refuse(path, e)
}

func (v Vocabulary[E]) refuse(path string, e E) error {
	if e == 0 {
		return New(path, nil, v.allowed(), ErrMissing)
	}
	return New(path, v.Text(e), v.allowed(), ErrOutOfRange)
}
