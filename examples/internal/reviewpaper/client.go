package reviewpaper

import (
	"fmt"
	"io"
	"slices"

	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
)

// clientPaper is short, kind and in large steps: how it goes on.
func clientPaper(w io.Writer, r record.Review) error {
	p, err := page.New(w)
	if err != nil {
		return err
	}
	p.Line("FOR YOU: HOW IT GOES ON")
	p.Line("%s", page.Day(r.Day))
	p.Note(r.Note)
	p.Task("What you want to be able to do, in your own words", r.Task, r.Tasks)
	p.Para(clientDone(r))
	clientFirst(p, r)
	if r.Coming == nil {
		return closeClient(p)
	}
	p.Heading("Your days")
	for _, d := range r.Coming.Days {
		p.Line("- %s", page.Day(d))
	}
	clientItems(p, r)
	if len(r.Coming.Beside) > 0 {
		p.Heading("Beside the lifting")
		p.Say("", "This is where one begins. If we have shown you a later step, ask us before you go on with it.")
	}
	p.ClientBeside(r.Coming.Beside, r.Coming.NotBeside)
	p.Heading("Good to know")
	p.Clients("- ", r.Coming.Reasons)
	p.Say("- ", "We look at all of this together again by "+page.Day(r.Coming.Dates.Review)+".")
	return closeClient(p)
}

// clientDone says kindly how often the person was there.
func clientDone(r record.Review) string {
	text := fmt.Sprintf("You have trained on %d days since %s.", len(r.Attended.Done), page.Day(r.Attended.Done[0]))
	switch names, _ := waiting(r); {
	case r.Attended.Answer.Advice == rule.Ease:
		return text + " Thank you for every one of them."
	case names == "" && r.Coming != nil && r.Screening.Meanwhile <= screening.WithinLimits:
		return text + " Well done."
	}
	return text
}

func closeClient(p *page.Paper) error {
	p.Para("If anything here is other than what your doctor or therapist told you, do as they say, and tell us.")
	p.Para(page.NoDevice)
	return p.Close()
}

// clientFirst says what comes before the next visit.
func clientFirst(p *page.Paper, r record.Review) {
	p.Heading("First")
	list := append(slices.Clone(r.Overdue), r.Attended.Answer.Reasons...)
	list = append(list, page.WhyUnused(r.Unused)...)
	found := r.Screening
	if names, _ := waiting(r); names != "" || r.Coming == nil { // no praise beside what holds
		found.Findings = slices.DeleteFunc(slices.Clone(found.Findings), func(f screening.Finding) bool { return f.Route < screening.Tell })
	}
	list = append(list, page.ToClient(found)...)
	p.Clients("- ", list)
	clientPaused(p, r, p.ClientTexts(list))
	for _, item := range r.Items {
		if ask := queries(item.Decision); len(ask) > 0 {
			p.Say("- ", fmt.Sprintf("About the %s on %s:", item.Name, page.Day(last(item).Day)))
			p.Clients("  ", ask)
		}
	}
	p.GivenLimits(r.Screening, r.Profile)
	if text := page.LeaveOut(r.Screening.Limits.Avoid); text != "" && r.Coming != nil {
		p.Say("- ", text)
	}
	if asks := toDoctor(r).Questions(); r.Screening.Route == screening.AskFirst && len(asks) > 0 {
		p.Heading("What your doctor is asked")
		p.Each("- ", asks)
	}
}

// clientPaused says why an exercise is not done for now: with its name, unless it
// is so for others too.
func clientPaused(p *page.Paper, r record.Review, said []string) {
	of := map[string][]string{}
	var texts []string
	for _, item := range r.Items {
		if item.Decision.Next != nil {
			continue
		}
		for _, text := range p.ClientTexts(item.Decision.Reasons) {
			if len(of[text]) == 0 && !slices.Contains(said, text) {
				texts = append(texts, text)
			}
			of[text] = append(of[text], item.Name)
		}
	}
	for _, text := range texts {
		if names := of[text]; len(names) == 1 && len(r.Items) > 1 {
			text = fmt.Sprintf("About the %s: %s", names[0], text)
		}
		p.Say("- ", text)
	}
}

func clientItems(p *page.Paper, r record.Review) {
	list := doses(r)
	p.Heading("For all exercises")
	said := p.ClientShared(list)
	p.Each("- ", said)
	p.Heading("What you do each time")
	n := 0
	for _, item := range r.Items {
		if next := item.Decision.Next; next != nil {
			n++
			reasons := page.Only(whyOf(item.Decision), queries(item.Decision))
			p.ClientItem(n, *next, reasons, said)
		}
	}
}
