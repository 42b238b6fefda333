package letter

import (
	"fmt"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A Letter is all that one visit gives to tell the doctor.
type Letter struct {
	Note    string // where the case comes from
	Client  string
	Opening string // in which way the person was seen
	Task    string // the person's aim, in their own words
	Day     units.Day
	Profile screening.Profile // of the assessment
	Check   *screening.Check  // of the day, if there was one
	Outcome screening.Outcome
	Overdue []evidence.Reason // what should have happened by now
	// Training prints what came up during the exercises; nil: there were none.
	Training func(*page.Paper)
	// Asks are questions beside those that follow from what was found.
	Asks []string
	// Held are the names of exercises of which nothing is done for now, beside
	// what the outcome holds; Stopped says that nothing at all is done.
	Held    string
	Stopped bool
	Expired bool // the plan has ended, and nothing is done until there is a new one
}

// Write prints the letter. Its error is that of an assessment that cannot be made.
func (l Letter) Write(p *page.Paper) error {
	before, err := screening.Assess(l.Profile, l.Outcome.Policy)
	if err != nil {
		return err
	}
	asks := l.Questions()
	p.Line("LETTER TO THE DOCTOR")
	p.Line("%s", page.Day(l.Day))
	p.Note(l.Note)
	p.Line("\nAbout: %s", l.Client)
	p.Para("Dear colleague,")
	p.Para(fmt.Sprintf("%s Their aim, in their own words: %s.", l.Opening, page.Quoted(l.Task)))
	if len(asks) == 0 {
		p.Para(l.nothingAsked())
	}
	list(p, "Overdue", said(p, l.Overdue))
	list(p, "Readings", l.readings())
	today, assessed := l.found(p, before)
	if l.Check != nil {
		list(p, "Found today, "+page.Day(l.Check.Day), orNothing(today, "nothing new"))
	}
	list(p, "Found at the assessment on "+page.Day(l.Profile.Day), orNothing(assessed, "nothing"))
	list(p, "Operations, fractures and other events", l.events())
	if limits := page.OwnLimits(l.Outcome); !limits.IsZero() && !l.Stopped {
		list(p, "Limits kept to here", page.LimitLines(limits))
	}
	list(p, "Limits set by others", page.Restrictions(l.Profile))
	var open []evidence.Reason
	for _, q := range l.Outcome.Missing {
		open = append(open, q.Reason)
	}
	list(p, "What could not be answered", said(p, open))
	if l.Training != nil {
		l.Training(p)
	}
	list(p, "My questions", asks)
	if len(asks) > 0 {
		p.Para("A line with your name, the date and what it covers is enough.")
	}
	p.Para(l.meanwhile(len(asks) > 0))
	p.Para("The screening rules used are published ones, and how they are joined is a cautious design. They give nobody leave to train, and your judgement takes their place.")
	list(p, "What each rule says by itself", ruleLines(l.Outcome.Rules, l.Check != nil))
	p.Para(page.NoDevice)
	p.Line("\nWith kind regards,\n\n\n(name, profession, telephone)")
	return nil
}

// nothingAsked says why a letter is written that asks nothing.
func (l Letter) nothingAsked() string {
	if len(l.Outcome.Missing) > 0 {
		return "This is for your information. I ask nothing yet: what could not be answered I settle with the person first."
	}
	return "This is for your information, and training does not wait for an answer. Please tell me if you see a reason for limits."
}

// list prints lines under a heading; nothing without lines.
func list(p *page.Paper, heading string, lines []string) {
	if len(lines) == 0 {
		return
	}
	p.Line("\n%s:", heading)
	for _, line := range lines {
		p.Say("- ", line)
	}
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
	case l.Expired && m == screening.WithinLimits && l.Held == "":
		text = "training pauses until there is a new plan."
	case l.Stopped || m == screening.Nothing:
		text = "no exercise."
	case l.Held != "":
		text = "nothing of " + l.Held + "."
	case m == screening.UnloadedPractice:
		text = "only the movements, without weights."
	case m == screening.LightSupervised:
		text = "only light loads, with somebody qualified beside the person."
	case l.Training != nil:
		text = "training goes on within the limits named."
	}
	if asked {
		return "Until I hear from you: " + text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}
