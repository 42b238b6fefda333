package main

import (
	"fmt"
	"io"

	"example.org/posology/examples/internal/visit"
	"example.org/posology/screening"
)

// doctorPaper is a letter: the findings and the question.
func doctorPaper(w io.Writer, r visit.Result) error {
	p, err := newPaper(w)
	if err != nil {
		return err
	}
	o := r.Screening
	p.line("LETTER TO THE DOCTOR")
	p.line("%s", day(o.Day))
	p.line("(%s)", r.Note)
	p.line("\nAbout: %s", r.Client)
	p.para("Dear colleague,")
	p.para(fmt.Sprintf("I saw %s on %s for strength training. The person's own aim is to %s.", r.Client, day(o.Day), r.Task))
	doctorFindings(p, o)
	p.para(question(o))
	p.para("Until I hear from you: " + meanwhileText(o.Meanwhile))
	p.para("The screening rules used are published ones; they are listed with their answers below. They give nobody leave to train, and your judgement takes their place.")
	p.line("")
	for _, line := range ruleLines(o.Rules) {
		p.say("- ", line)
	}
	p.line("\nWith kind regards,\n\n\n(name, profession, telephone)")
	return p.close()
}

func doctorFindings(p *paper, o screening.Outcome) {
	p.line("\nWhat I found:")
	for _, f := range o.Findings {
		p.say("- ", p.words.Clinician(f.Reason))
	}
	if len(o.Missing) > 0 {
		p.line("\nWhat could not be answered:")
		for _, q := range o.Missing {
			p.say("- ", p.words.Clinician(q.Reason))
		}
	}
}

// question is what the doctor is asked.
func question(o screening.Outcome) string {
	switch {
	case o.Route >= screening.SameDay:
		return "My question: this person needs to be seen without delay. Would you please see or direct them today?"
	case o.Route == screening.AskFirst:
		return "My question: is there any reason against resistance training that builds up step by step from light loads, and are there limits that I should keep to (load, effort, positions, blood pressure)? A line with your name, the date and what it covers is enough."
	}
	return "I have no question that training waits for. Please tell me if you see a reason for limits."
}

func meanwhileText(m screening.Meanwhile) string {
	switch m {
	case screening.WithinLimits:
		return "training begins light and within the limits named."
	case screening.LightSupervised:
		return "only light loads, with somebody qualified beside the person."
	case screening.UnloadedPractice:
		return "only the movements, without weights."
	}
	return "no exercise."
}
