package main

import (
	"fmt"
	"io"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/visit"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// clientPaper is short, kind and in large steps: what to do.
func clientPaper(w io.Writer, r visit.Result) error {
	p, err := newPaper(w)
	if err != nil {
		return err
	}
	p.line("FOR YOU, AFTER YOUR FIRST VISIT")
	p.line("%s", day(r.Screening.Day))
	p.line("(%s)", r.Note)
	p.para("What you want to be able to do: " + r.Task + ".")
	p.heading("First")
	var findings []evidence.Reason
	for _, f := range r.Screening.Findings {
		findings = append(findings, f.Reason)
	}
	p.clients("- ", findings)
	for _, q := range r.Screening.Missing {
		p.clients("- ", []evidence.Reason{q.Reason})
	}
	if text := page.LeaveOut(r.Screening.Limits.Avoid); text != "" && r.Week != nil {
		p.say("- ", text)
	}
	if r.Screening.Route == screening.AskFirst && len(r.Screening.Missing) == 0 {
		p.heading("The question for your doctor")
		p.say("", question(r.Screening))
	}
	if r.Week == nil {
		p.heading("For now")
		p.clients("- ", []evidence.Reason{r.Stop.Constraint})
		return p.close()
	}
	clientWeek(p, *r.Week)
	return p.close()
}

func clientWeek(p *paper, week dose.Week) {
	p.heading("Your days")
	for _, s := range week.Sessions {
		p.line("- %s, about %d minutes, %d of them easy movement to warm up", day(s.Day), s.Minutes, s.WarmUp)
	}
	items := week.Sessions[0].Items
	p.heading("For all exercises")
	most := (len(items) + 1) / 2 // said once, if it holds for half of them
	said := append(shared(items, most, cautions), shared(items, most, reasons)...)
	p.clients("- ", said)
	p.heading("What you do each time")
	for i, item := range items {
		clientItem(p, i+1, item, said)
	}
	p.heading("Good to know")
	for _, b := range week.Beside {
		p.clients("- ", b.Reasons)
	}
	p.clients("- ", week.Reasons)
	p.say("- ", "We look at this plan together again by "+day(week.Review)+".")
}

// clientItem prints one exercise; what was said for all is not said again.
func clientItem(p *paper, n int, item dose.Prescription, said []evidence.Reason) {
	p.line("%d. %s", n, strings.ToUpper(item.Name))
	if item.Mode != dose.WithoutLoad {
		p.say("   Take  ", item.Load.String())
	}
	p.say("   Do    ", amount(item)+".")
	if ex, ok := exercise.Standard().Get(item.Exercise); ok {
		p.say("   How   ", ex.How)
	}
	p.say("   Stop  ", whenToStop(item))
	if rest, ok := item.Rest.Min(); ok && item.Sets > 1 {
		p.say("   Rest  ", fmt.Sprintf("at least %d seconds before the next set.", rest))
	}
	p.clients("   ", only(append(item.Cautions, item.Reasons...), said))
	p.line("")
}

// amount says sets and repetitions: "2 sets of 10 on each side".
func amount(item dose.Prescription) string {
	text := fmt.Sprintf("%d sets of %d", item.Sets, item.Count)
	if item.Sets == 1 {
		text = fmt.Sprintf("1 set of %d", item.Count)
	}
	if item.Measure != exercise.Repetitions {
		text += " " + item.Measure.String()
	}
	if item.OneSided {
		text += " on each side"
	}
	if item.Measure == exercise.Repetitions {
		text += fmt.Sprintf(", %g seconds down and %g seconds up", item.Tempo.Lowering, item.Tempo.Lifting)
	}
	return text
}

func whenToStop(item dose.Prescription) string {
	switch {
	case item.Measure != exercise.Repetitions:
		return "before it gets hard to keep the position."
	case !item.Reserve.Countable:
		return "while it still feels clearly easy. Fewer is fine."
	}
	return fmt.Sprintf("when you could do only about %v more. Fewer is fine.", item.Reserve.Least)
}
