package evidence

import (
	"cmp"
	"strconv"
	"strings"

	"example.org/posology/units"
)

// A Locale says how the values in reasons print. The zero Locale prints them in
// English, with a decimal point. What a function leaves empty stays English.
type Locale struct {
	Mark string // between a number and its decimals; empty: a point
	// Unit gives the text of what stands beside a number: "kg", "lb", "%", "rpe".
	Unit func(unit string) string
	// Term gives the text of a term, and of the phrases "{low} to {high}", "at least
	// {low}", "at most {high}", "not stated" and "more than {low}, not countable". The
	// name is that of the value.
	Term func(name, text string) string
	Day  func(units.Day) string
}

// Phrases are what the numbers of a range stand in.
const (
	fromTo    = "{low} to {high}"
	atLeast   = "at least {low}"
	atMost    = "at most {high}"
	notStated = "not stated"
	uncounted = "more than {low}, not countable"
)

func (l Locale) term(name, text string) string {
	if l.Term == nil {
		return text
	}
	return cmp.Or(l.Term(name, text), text)
}

// print is the text of a in the locale.
func (l Locale) print(a Arg) string {
	switch a.kind {
	case isText, isCode:
		return a.text
	case isTerm:
		return l.term(a.Name, a.text)
	case isTerms:
		texts := strings.Split(a.text, between)
		for i, text := range texts {
			texts[i] = l.term(a.Name, text)
		}
		return strings.Join(texts, between)
	case isDay:
		if day := units.Day(a.low); l.Day != nil && day != 0 {
			return cmp.Or(l.Day(day), day.String())
		}
		return units.Day(a.low).String()
	case isEffort:
		if a.text == "" {
			return ""
		}
		return l.unit(a.text) + " " + l.number(a, a.low)
	}
	return l.span(a)
}

// span prints a number or a range.
func (l Locale) span(a Arg) string {
	phrase := notStated
	switch a.ends {
	case lowEnd | highEnd:
		if a.low == a.high {
			return l.number(a, a.low)
		}
		phrase = fromTo
	case lowEnd:
		phrase = atLeast
		if a.kind == isUncounted {
			phrase = uncounted
		}
	case highEnd:
		phrase = atMost
	}
	return strings.NewReplacer("{low}", l.number(a, a.low), "{high}", l.number(a, a.high)).Replace(l.term(a.Name, phrase))
}

// number prints one number of a, with the unit that it prints with.
func (l Locale) number(a Arg, n int64) string {
	text, unit := a.figure(n), ""
	switch a.kind {
	case isMass, isQuantity:
		unit = a.text
	case isChange:
		if n >= 0 {
			text = "+" + text
		}
	case isTenths:
		text = strconv.FormatFloat(real(n), 'f', 1, 64)
	case isShare:
		text, unit, _ = strings.Cut(units.Fraction(real(n)).String(), " ")
	}
	if l.Mark != "" {
		text = strings.Replace(text, ".", l.Mark, 1)
	}
	if unit != "" {
		text += " " + l.unit(unit)
	}
	return text
}

func (l Locale) unit(unit string) string {
	if l.Unit == nil {
		return unit
	}
	return cmp.Or(l.Unit(unit), unit)
}
