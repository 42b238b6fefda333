package main

import (
	"fmt"
	"io"

	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/visit"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// doctorPaper is a letter: the findings and the question.
func doctorPaper(w io.Writer, r visit.Result) error {
	p, err := newPaper(w)
	if err != nil {
		return err
	}
	o := r.Screening
	p.Line("LETTER TO THE DOCTOR")
	p.Line("%s", page.Day(o.Day))
	p.Note(r.Note)
	p.Line("\nAbout: %s", r.Client)
	p.Para("Dear colleague,")
	p.Para(fmt.Sprintf("I saw %s on %s for strength training. The person's own aim is to %s.", r.Client, page.Day(o.Day), r.Task))
	doctorFindings(p, o)
	p.Para(page.Question(o))
	p.Para("Until I hear from you: " + page.Meanwhile(o.Meanwhile))
	p.Para("The screening rules used are published ones; they are listed with their answers below. They give nobody leave to train, and your judgement takes their place.")
	p.Line("")
	for _, line := range page.RuleLines(o.Rules) {
		p.Say("- ", line)
	}
	p.Line("\nWith kind regards,\n\n\n(name, profession, telephone)")
	return p.Close()
}

func doctorFindings(p *page.Paper, o screening.Outcome) {
	p.Line("\nWhat I found:")
	for _, f := range o.Findings {
		p.Letters("- ", []evidence.Reason{f.Reason})
	}
	if len(o.Missing) > 0 {
		p.Line("\nWhat could not be answered:")
		for _, q := range o.Missing {
			p.Letters("- ", []evidence.Reason{q.Reason})
		}
	}
}
