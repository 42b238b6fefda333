package main

import (
	"fmt"
	"io"
	"slices"

	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/review"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// doctorPaper is a letter: the findings and the question.
func doctorPaper(w io.Writer, r review.Result) error {
	p, err := newPaper(w)
	if err != nil {
		return err
	}
	p.Line("LETTER TO THE DOCTOR")
	p.Line("%s", page.Day(r.Day))
	p.Note(r.Note)
	p.Line("\nAbout: %s", r.Client)
	p.Para("Dear colleague,")
	p.Para(fmt.Sprintf("I have reviewed the strength training of %s, %d visits since %s. The person's own aim is to %s.",
		r.Client, len(r.Attended.Done), page.Day(r.Attended.Done[0]), r.Task))
	p.Line("\nWhat I found, assessed on %s:", page.Day(r.Screening.Day))
	for _, f := range r.Screening.Findings {
		p.Letters("- ", []evidence.Reason{f.Reason})
	}
	doctorTraining(p, r)
	p.Para(question(r))
	p.Para("Until I hear from you: " + meanwhile(r))
	p.Para("The screening rules used are published ones, and how they are joined is a cautious design; they are listed with their answers below. They give nobody leave to train, and your judgement takes their place.")
	p.Line("")
	for _, line := range page.RuleLines(r.Screening.Rules) {
		p.Say("- ", line)
	}
	p.Para(noDevice)
	p.Line("\nWith kind regards,\n\n\n(name, profession, telephone)")
	return p.Close()
}

// doctorTraining prints what hurt, showed or was lost during the exercises.
func doctorTraining(p *page.Paper, r review.Result) {
	p.Line("\nWhat came up in training:")
	some := false
	for _, item := range r.Items {
		for _, v := range item.Log {
			some = doctorVisit(p, item.Name, v) || some
		}
	}
	names, why := waiting(r)
	switch {
	case names != "":
		p.Say("- ", "Nothing is prescribed for now of: "+names+".")
		p.Letters("    ", why)
	case !some:
		p.Line("- nothing in what was recorded")
	}
}

// doctorVisit prints one exercise of one visit, and reports whether there was anything.
func doctorVisit(p *page.Paper, name string, v progression.Visit) bool {
	why := bodily(v)
	if len(why) == 0 {
		return false
	}
	p.Say("- ", fmt.Sprintf("%s, on %s:", name, page.Day(v.Day)))
	p.Letters("    ", why)
	if text := painText(v.Pain); text != "" {
		p.Say("    ", "Recorded: "+text+".")
	}
	return true
}

func question(r review.Result) string {
	if r.Screening.Route < screening.AskFirst && slices.ContainsFunc(r.Items, waits) {
		return "My question: would you please look at what is named above before this person trains again, and tell me whether resistance training may go on, and within which limits (load, effort, positions)? A line with your name, the date and what it covers is enough."
	}
	return page.Question(r.Screening)
}

func meanwhile(r review.Result) string {
	switch names, _ := waiting(r); {
	case names != "" && r.Coming == nil:
		return "no exercise."
	case names != "":
		return "nothing of " + names + "."
	case r.Screening.Meanwhile == screening.WithinLimits:
		return "training goes on, within the limits named."
	}
	return page.Meanwhile(r.Screening.Meanwhile)
}
