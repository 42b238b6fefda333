package evidence

import (
	"iter"
	"maps"
	"slices"
)

// A Lexicon is a table of words that nobody can change, so that it is made once and
// handed to everybody. The zero value is empty.
type Lexicon struct{ words Words }

// NewLexicon returns the words of all tables, which it copies. A code that stands
// in two is an [field.ErrDuplicate].
func NewLexicon(tables ...Words) (Lexicon, error) {
	words, err := Join(tables...)
	return Lexicon{words}, err
}

// Client is [Words.Client].
func (l Lexicon) Client(r Reason) string { return l.words.Client(r) }

// Clinician is [Words.Clinician].
func (l Lexicon) Clinician(r Reason) string { return l.words.Clinician(r) }

// In is [Words.In]: the same words with the values printed as locale says.
func (l Lexicon) In(locale Locale) Voice { return l.words.In(locale) }

// Wording returns the wording of a code, and whether there is one.
func (l Lexicon) Wording(c ReasonCode) (Wording, bool) {
	w, ok := l.words[c]
	return w, ok
}

// All yields the codes in alphabetical order with their wordings.
func (l Lexicon) All() iter.Seq2[ReasonCode, Wording] {
	return func(yield func(ReasonCode, Wording) bool) {
		for _, code := range slices.Sorted(maps.Keys(l.words)) {
			if !yield(code, l.words[code]) {
				return
			}
		}
	}
}

// Copy returns the words in a table of the caller's own, to be translated or joined
// with others.
func (l Lexicon) Copy() Words {
	if l.words == nil {
		return Words{}
	}
	return maps.Clone(l.words)
}
