package evidence

import (
	"iter"
	"maps"
	"slices"
	"strings"

	"example.org/posology/units/field"
)

// A Lexicon says reasons in a language: a table of words that nobody can change, so
// that it is made once and handed to everybody, and how the values in them print. The
// zero value has no words and prints values in English.
type Lexicon struct {
	words  Words
	locale Locale
}

// NewLexicon returns the words of all tables, which it copies. A code that stands
// in two is a [field.ErrDuplicate].
func NewLexicon(tables ...Words) (Lexicon, error) {
	joined := Words{}
	var bad field.Errors
	for _, t := range tables {
		for code, wording := range t {
			if _, twice := joined[code]; twice {
				bad.Add("/"+string(code), field.Bad(nil, "each code in one table", field.ErrDuplicate))
			}
			joined[code] = wording
		}
	}
	slices.SortFunc(bad, func(a, b *field.Error) int { return strings.Compare(a.Path, b.Path) }) // a table has no order
	return Lexicon{words: joined}, bad.Err()
}

// In returns the same words with the values printed as locale says. For another
// language translate a [Lexicon.Copy], see what it lacks by [Words.Missing], and make
// a lexicon of it.
func (l Lexicon) In(locale Locale) Lexicon { return Lexicon{l.words, locale} }

// Client returns the sentence for the client, "" if there is none.
func (l Lexicon) Client(r Reason) string { return l.fill(l.words[r.Code].Client, r.Args) }

// Clinician returns the sentence for the clinician; a code without wording
// gives the code and its values, so that nothing is lost.
func (l Lexicon) Clinician(r Reason) string {
	if text := l.words[r.Code].Clinician; text != "" {
		return l.fill(text, r.Args)
	}
	var b strings.Builder
	b.WriteString(string(r.Code))
	for _, a := range r.Args {
		b.WriteString("; " + a.Name + ": " + l.locale.print(a))
	}
	return b.String()
}

// fill puts the values in, in one pass: a value that looks like a slot stays.
func (l Lexicon) fill(text string, args []Arg) string {
	var b strings.Builder
	for {
		before, after, more := strings.Cut(text, "{")
		b.WriteString(before)
		if !more {
			return b.String()
		}
		named := func(a Arg) bool {
			return strings.HasPrefix(after, a.Name) && strings.HasPrefix(after[len(a.Name):], "}")
		}
		if i := slices.IndexFunc(args, named); i >= 0 {
			b.WriteString(l.locale.print(args[i]))
			after = after[len(args[i].Name)+1:]
		} else {
			b.WriteByte('{')
		}
		text = after
	}
}

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
