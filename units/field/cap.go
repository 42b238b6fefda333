package field

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"
)

// The text of an error stays readable, and small enough for a log, whatever was
// given; the errors themselves are all kept.
const (
	maxLines = 50       // of many bad fields
	maxText  = 16 << 10 // bytes of those, about
	maxPart  = 1000     // bytes of a path, of what was given and of what is allowed
)

// short returns s, cut where it is longer than a person reads.
func short(s string) string {
	if len(s) <= maxPart {
		return s
	}
	end := maxPart
	for end > 0 && !utf8.RuneStart(s[end]) {
		end--
	}
	return s[:end] + "…"
}

// given returns e without nil elements.
func (e Errors) given() Errors {
	isNil := func(f *Error) bool { return f == nil }
	if !slices.ContainsFunc(e, isNil) {
		return e
	}
	return slices.DeleteFunc(slices.Clone(e), isNil)
}

// text prints as many of the errors as are read.
func (e Errors) text() string {
	var b strings.Builder
	for i, f := range e {
		if i == maxLines || b.Len() > maxText {
			fmt.Fprintf(&b, "\nand %d more", len(e)-i)
			break
		}
		if i > 0 {
			b.WriteByte('\n')
		}
		b.WriteString(f.Error())
	}
	return b.String()
}
