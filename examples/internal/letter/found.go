package letter

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

const (
	prefix = "screening."

	together screening.Code = "flags-together" // signs of the spine that count together
)

// apart are findings that a letter says otherwise than by what their code stands
// for; those without words stand elsewhere in it.
var apart = evidence.Words{
	prefix + "nothing-found":         {Clinician: "No caution in what was answered."},
	prefix + "flags-together":        {Clinician: "Several signs of the spine that point to one cause."},
	prefix + "flags-together.unsure": {Clinician: "Several signs of the spine that may point to one cause, some of them not sure."},
	prefix + "clearance-counted":     {Clinician: "Agreement by {who} of {day}, in force until {until}."},
	prefix + "clearance-not-counted": {Clinician: "Agreement by {who} of {day} does not count: {why}."},
	prefix + "clearance-lapsed":      {Clinician: "The agreement that training rested on ended on {day}."},
	prefix + "restriction-ended":     {Clinician: "Restriction by {author}, {region}: ended on {day}."},
	prefix + "happened":              {Clinician: "Since the assessment: {event}."},
	prefix + "restriction":           {},
	prefix + "diabetes-start":        {},
}

// found says what was found today and what at the assessment, each once.
func (l Letter) found(words evidence.Lexicon, before screening.Outcome) (today, assessed []string) {
	known := map[string]bool{}
	for _, f := range before.Findings {
		known[finding(words, f)] = true
	}
	for _, f := range l.Outcome.Findings {
		text := finding(words, f)
		if fell := l.fallen(text); f.Code == "falls_risk" && f.Known {
			known[fell], text = known[text], fell
		}
		if text == "" || slices.Contains(today, text) || slices.Contains(assessed, text) {
			continue
		}
		if known[text] || f.Code == "clearance-not-counted" { // by what the record has since, too
			assessed = append(assessed, text)
		} else {
			today = append(today, text)
		}
	}
	return today, assessed
}

// fallen says which points of the screen for falls hold, and otherwise what it stood for.
func (l Letter) fallen(otherwise string) string {
	points, s := parts{}, value(l.Profile.Falls)
	points.add(s.Fell == screening.Yes, "a fall in the last 12 months")
	points.add(s.Unsteady == screening.Yes, "unsteady, standing or walking")
	points.add(s.Afraid == screening.Yes, "afraid of falling")
	if len(points) > 0 {
		otherwise = upper(strings.Join(points, "; ")) + "."
	}
	return otherwise
}

// finding says in a letter's words what was found, "" where it stands elsewhere.
func finding(words evidence.Lexicon, f screening.Finding) string {
	other, known := apart[f.Reason.Code]
	switch {
	case known && other.Clinician == "", f.Branch() != 0:
		return ""
	case known:
		return page.Dated(apart.Clinician(f.Reason))
	}
	term, ok := screening.LookUp(f.Code)
	if !ok {
		text, _, _ := strings.Cut(words.Clinician(f.Reason), " Here: ")
		return text
	}
	text := page.Meaning(term)
	switch {
	case !f.Known:
		text = "not known: " + text
	case f.Variant == screening.Agreed:
		text += ", with an agreement in force that names it"
	}
	return upper(text) + "."
}

// events says what happened, with region, side and day.
func (l Letter) events() []string {
	all := l.Profile.Events
	if l.Check != nil {
		all = slices.Concat(all, l.Check.Events)
	}
	var lines []string
	for i, e := range all {
		text := page.InWords(e.Code)
		if e.Region != 0 {
			text += fmt.Sprintf(", %s", e.Region)
		}
		if e.Side != 0 {
			text += ", " + sided(e.Side)
		}
		when := onDay(e.Day)
		if year, month, _ := e.Day.Date(); i < len(l.Profile.Events) && isLastOfMonth(e.Day) {
			when = fmt.Sprintf("in %s %d", month, year)
		}
		lines = append(lines, upper(text)+", "+when+".")
	}
	return lines
}

// isLastOfMonth reports whether a day may stand for its month: an assessment keeps a month
// that was told as the last of its days.
func isLastOfMonth(d units.Day) bool {
	next, err := d.Plus(1)
	_, month, _ := d.Date()
	_, after, _ := next.Date()
	return err == nil && month != after && !d.IsZero()
}

func sided(s body.Side) string {
	if s == body.Both {
		return "both sides"
	}
	return s.String() + " side"
}

func onDay(d units.Day) string {
	if d.IsZero() {
		return "on a day that is not known"
	}
	return "on " + page.Day(d)
}

func upper(s string) string { return strings.ToUpper(s[:1]) + s[1:] }
