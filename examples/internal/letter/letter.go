package letter

import (
	"fmt"
	"strings"

	"example.org/posology/examples/internal/document"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A Letter is all that one visit gives to tell somebody who treats the person too.
type Letter struct {
	To      Reader // zero: the doctor
	Note    string // where the case comes from
	Client  string
	Opening string // in which way the person was seen
	Task    string // the person's aim, in their own words
	Day     units.Day
	Profile screening.Profile // of the assessment
	Check   *screening.Check  // of the day, if there was one
	Outcome screening.Outcome
	Overdue []evidence.Reason // what should have happened by now
	// Tests are how tests of function went.
	Tests []string
	// Training is what came up during the exercises; nil: there were none.
	Training []string
	// Asks are questions beside those that follow from what was found.
	Asks []string
	// Held are the names of exercises of which nothing is done for now, beside
	// what the outcome holds; Stopped says that nothing at all is done.
	Held    string
	Stopped bool
	Today   bool // that is so by the check of the day alone
	Expired bool // the plan has ended, and nothing is done until there is a new one
	// Last says that the programme ends, with what was at its start and end, and what
	// is said of the changes.
	Last   bool
	Tables []document.Table
	Said   []evidence.Reason
}

// A Reader is whom a letter is for.
type Reader uint8

// Readers.
const (
	Doctor Reader = iota
	Surgeon
	FallsService
)

var readers = [...]string{Doctor: "doctor", Surgeon: "surgeon", FallsService: "falls service"}

// String returns "doctor", "surgeon" or "falls service".
func (r Reader) String() string { return readers[r] }

// Document returns the letter. Its error is that of an assessment that cannot be made.
func (l Letter) Document() (document.Document, error) {
	before, err := screening.Assess(l.Profile, l.Outcome.Policy)
	if err != nil {
		return document.Document{}, err
	}
	words, err := record.Words()
	if err != nil {
		return document.Document{}, err
	}
	asks := l.Questions()
	d := document.Document{Title: "Letter to the " + l.To.String(), Under: page.Under(l.Day, l.Note)}
	d.Say("About: "+l.Client, "Dear colleague,", fmt.Sprintf("%s Their aim, in their own words: %s.", l.Opening, page.Quoted(l.Task)))
	if len(asks) == 0 && !l.Last {
		d.Say(l.nothingAsked())
	}
	if l.Last {
		d.Section("Start and end")
		for _, t := range l.Tables {
			d.Table(t)
		}
		d.Points(page.Texts(words.Clinician, l.Said)...)
	}
	d.Listed("Overdue", page.Texts(words.Clinician, l.Overdue)...)
	l.tell(&d, words, before)
	tests := "Tests of function"
	if l.Last {
		tests = "Other tests of function" // than those in the table
	}
	d.Listed(tests, l.Tests...)
	d.Listed("What came up in training", l.Training...)
	if l.To != Surgeon {
		d.Listed("What a positive falls screen has looked at", page.AllInWords(l.Outcome.Rules.Falls.LookAt)...)
	}
	d.Listed("My questions", asks...)
	if len(asks) > 0 {
		d.Say("A line with your name, the date and what it covers is enough.")
	}
	d.Say(l.meanwhile(len(asks) > 0),
		"The screening rules used are published ones, and how they are joined is a cautious design. They give nobody leave to train, and your judgement takes their place.")
	d.Listed("What each rule says by itself", page.RuleLines(l.Outcome.Rules, l.Profile, l.Check != nil)...)
	d.Say(page.NoDevice, "With kind regards,", "(name, profession, telephone)")
	return d, nil
}

// tell says what was read and found, and the limits.
func (l Letter) tell(d *document.Document, words evidence.Lexicon, before screening.Outcome) {
	d.Listed("Readings", l.readings()...)
	today, assessed := l.found(words, before)
	if l.Check != nil {
		d.Listed("Found today, "+page.Day(l.Check.Day), orNothing(today, "nothing new")...)
	}
	d.Listed("Found at the assessment on "+page.Day(l.Profile.Day), orNothing(assessed, "nothing")...)
	d.Listed("Operations, fractures and other events", l.events()...)
	if limits := page.OwnLimits(l.Outcome); !limits.IsZero() && !l.Stopped {
		d.Listed("Limits kept to here", page.LimitLines(limits)...)
	}
	d.Listed("Limits set by others", page.Restrictions(l.Profile)...)
	var open []evidence.Reason
	for _, q := range l.Outcome.Missing {
		open = append(open, q.Reason)
	}
	unknown := page.Texts(words.Clinician, open)
	for i, text := range unknown { // what follows here stands in what goes on meanwhile
		text, _, _ = strings.Cut(text, " Until it is looked at: ")
		unknown[i], _, _ = strings.Cut(text, " Counts as ")
	}
	d.Listed("What could not be answered", unknown...)
}

// nothingAsked says why a letter is written that asks nothing.
func (l Letter) nothingAsked() string {
	if len(l.Outcome.Missing) > 0 {
		return "This is for your information. I ask nothing yet: what could not be answered I settle with the person first."
	}
	return "This is for your information, and training does not wait for an answer. Please tell me if you see a reason for limits."
}

func orNothing(lines []string, nothing string) []string {
	if len(lines) == 0 {
		return []string{nothing}
	}
	return lines
}

// meanwhile says what goes on, once.
func (l Letter) meanwhile(asked bool) string {
	text := "training begins light and within the limits named."
	switch m := l.Outcome.Meanwhile; {
	case l.Last && m == screening.WithinLimits && l.Held == "" && !l.Stopped:
		text = "the person goes on alone with what is on their own paper, and comes back as it says."
	case l.Expired && m == screening.WithinLimits && l.Held == "":
		text = "training pauses until there is a new plan."
	case l.Today:
		return "No exercise on " + page.Day(l.Check.Day) + ", by the check of that day."
	case l.Stopped || m == screening.Nothing:
		text = "no exercise."
	case l.Held != "":
		text = "nothing of " + l.Held + "."
	case m == screening.UnloadedPractice:
		text = "only the movements, without weights."
	case m == screening.LightSupervised:
		text = "only light loads, with somebody qualified beside the person."
	case len(l.Training) > 0:
		text = "training goes on within the limits named."
	}
	if page.OwnLimits(l.Outcome).IsZero() && len(page.Restrictions(l.Profile)) == 0 {
		text = strings.NewReplacer(" and within the limits named", "", " within the limits named", "").Replace(text)
	}
	if asked {
		return "Until I hear from you: " + text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}
