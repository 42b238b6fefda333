package field

import (
	"cmp"
	"iter"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

const (
	maxNear  = 60 // bytes of a name that is searched for near misses
	maxNamed = 5  // names in a question
)

// DidYouMean asks for names that somebody may have meant by a name that is not
// known: "did you mean one-arm-dumbbell-row or seated-one-arm-row", or nothing where
// none is near. names yields every known name, each with the texts that it may be
// written as or described by.
//
// A text that has every word of what was given comes first, and then those with some of
// them or with the last, which in an English name says what the thing is; a word counts
// also as the beginning of another, and without the s of a plural. Where no text has
// every word, a name that is one or two slips of the pen away is asked for alone, and
// so is one that is a third of its letters away where no word helps.
func DidYouMean(given string, names iter.Seq2[string, string]) string {
	given = strings.ToLower(strings.TrimSpace(given))
	words := strings.FieldsFunc(given, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	if len(given) > maxNear || len(words) == 0 || names == nil {
		return ""
	}
	kin := kinOf(words, names)
	if len(kin) == 0 || kin[0].words < len(words) {
		near, slips := nearest(given, names)
		if near != "" && (slips <= 2 || len(kin) == 0) {
			return "did you mean " + near
		}
	}
	return asked(kin[:min(maxNamed, len(kin))])
}

func asked(kin []relative) string {
	if len(kin) == 0 {
		return ""
	}
	text := "did you mean " + kin[0].name
	for i, r := range kin[1:] {
		if i == len(kin)-2 {
			text += " or " + r.name
		} else {
			text += ", " + r.name
		}
	}
	return text
}

// A relative is a name that has words of another.
type relative struct {
	name  string
	words int  // that both have
	last  bool // the last one is among them
}

// kinOf returns the names whose texts have the last word or two of them, or that have
// one themselves, those with the most words first.
func kinOf(words []string, names iter.Seq2[string, string]) []relative {
	var kin []relative
	for name, text := range names {
		text = strings.ToLower(text)
		r := relative{name: name}
		inName := false
		for i, word := range words {
			if hasWord(text, word) {
				r.words++
				r.last = i == len(words)-1
				inName = inName || hasWord(name, word)
			}
		}
		if r.words < 2 && !r.last && !inName {
			continue
		}
		if i := slices.IndexFunc(kin, func(k relative) bool { return k.name == name }); i < 0 {
			kin = append(kin, r)
		} else if r.compare(kin[i]) < 0 {
			kin[i] = r
		}
	}
	slices.SortStableFunc(kin, relative.compare)
	return kin
}

// compare puts more words first, and of as many those with the last one.
func (r relative) compare(s relative) int {
	c := cmp.Compare(s.words, r.words)
	if c == 0 && r.last != s.last {
		c = 1
		if r.last {
			c = -1
		}
	}
	return c
}

// hasWord reports whether a word of text begins as word does.
func hasWord(text, word string) bool {
	if len(word) > 3 {
		word = strings.TrimSuffix(word, "s")
	}
	if len(word) < 3 {
		return false
	}
	for from := 0; ; {
		at := strings.Index(text[from:], word)
		if at < 0 {
			return false
		}
		from += at
		if from == 0 || !isLetter(text[from-1]) {
			return true
		}
		from++
	}
}

func isLetter(c byte) bool { return c >= 'a' && c <= 'z' || c >= 0x80 }

// nearest returns the name one of whose texts is the fewest slips away from given,
// the first among equals, and nothing if all are more than a third of it away.
func nearest(given string, names iter.Seq2[string, string]) (found string, best int) {
	letters := []rune(given)
	best = len(given)/3 + 1
	for name, text := range names {
		text = strings.ToLower(text)
		if more := utf8.RuneCountInString(text) - len(letters); more >= best || -more >= best {
			continue // so many slips at least
		}
		if d := slips(letters, []rune(text)); d < best {
			best, found = d, name
		}
	}
	return found, best
}

// slips counts the letters to put in, leave out or change between a and b
// (Levenshtein's distance).
func slips(a, b []rune) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i, x := range a {
		diagonal := row[0]
		row[0] = i + 1
		for j, y := range b {
			change := diagonal
			if x != y {
				change++
			}
			diagonal = row[j+1]
			row[j+1] = min(change, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(b)]
}
