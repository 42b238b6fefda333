package planpaper

import (
	"fmt"
	"io"

	"example.org/posology/dose"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/week"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// For writes the paper of a plan that is wanted.
func For(o command.Wanted, w io.Writer, r record.Plan) error {
	return o.Write(w, r, papers.OfPlan(r), func(w io.Writer) error { return filePaper(w, r) })
}

// filePaper is for the clinical record: everything, with reasons and facts.
func filePaper(w io.Writer, r record.Plan) error {
	p, err := page.New(w)
	if err != nil {
		return err
	}
	p.Line("RECORD OF A FIRST VISIT: %s", r.Client)
	p.Line("%s", page.Day(max(r.Screening.Day, r.Screening.Today)))
	p.Note(r.Note)
	p.Para(page.Wanted("Client's own task", r.Task, r.Tasks))
	p.Summary(summary(r))
	p.Screening(r.Screening, r.Profile)
	Estimates(p, r)
	if r.Week != nil {
		p.Unused(r.Week.Unused)
		recordWeek(p, *r.Week, r.Tested)
	} else {
		p.Heading("No dose")
		p.Clinicians("- ", append([]evidence.Reason{r.Stop.Constraint}, r.Stop.Free...))
	}
	if err := p.Facts(r.Reasons()); err != nil {
		return err
	}
	return p.Close()
}

func summary(r record.Plan) page.Summary {
	s := page.Summary{Outcome: r.Screening, Profile: r.Profile, Day: max(r.Screening.Day, r.Screening.Today), Open: page.Open(r.Screening.Missing, r.Profile)}
	if len(r.Refused) > 0 {
		s.Open = append(s.Open, fmt.Sprintf("test sets without an estimate: %d", len(r.Refused)))
	}
	if w := r.Week; w != nil {
		s.Open = append(s.Open, page.OpenTests(w.Unused)...)
		s.Items, s.Dates = w.Sessions[0].Items, page.Dates(w.Dates(), s.Day)
	}
	return s
}

// Estimates prints what follows from test sets, and from which nothing does.
func Estimates(p *page.Paper, r record.Plan) {
	p.Heading("Estimated one-repetition maximum")
	if len(r.Estimates) == 0 && len(r.Refused) == 0 {
		p.Line("No test sets.")
	}
	var said []evidence.Reason // of those above, in the same words
	for _, e := range r.Estimates {
		recordEstimate(p, e, said)
		said = append(said, e.Reasons...)
	}
	for _, refused := range r.Refused {
		p.Led("- ", fmt.Sprintf("%s, %s, on %s: no estimate.", refused.Set.Exercise, refused.Set.Side, refused.Set.Day), []evidence.Reason{refused.Reason})
	}
}

func recordEstimate(p *page.Paper, e onerm.Estimate, said []evidence.Reason) {
	low, _ := e.Interval.Min()
	high, _ := e.Interval.Max()
	p.Say("- ", fmt.Sprintf("%s, %s, %s: %s %s, between %s and %s (%s), on %s",
		e.Exercise, e.Side, e.Hold, e.OneRM.Short(units.Nearest), e.Stated, low.Short(units.Down), high.Short(units.Up), e.Grade, e.Day))
	for _, a := range e.Answers {
		p.Line("    %s: %s", a.Formula, a.OneRM.Short(units.Nearest))
	}
	p.Clinicians("    ", page.Only(e.Reasons, said))
}

func recordWeek(p *page.Paper, w week.Week, tested []choice.Tested) {
	of := p.Tests(p.Clinicians, w.Choice.Tests, tested)
	p.Heading("First week")
	for _, s := range w.Sessions {
		p.Line("%s: %s, about %s", page.Day(s.Day), page.Counted(len(s.Items), "exercise"), page.Counted(s.Minutes, "minute"))
	}
	p.Para(fmt.Sprintf("Phase %s.", w.Phase))
	p.Line("")
	p.Clinicians("- ", page.Only(w.Reasons, of))
	items := w.Sessions[0].Items
	p.Line("\nFor every exercise:")
	shared := page.Shared(items)
	p.Clinicians("- ", shared)
	for i, item := range items {
		item.Cautions, item.Reasons = page.Only(item.Cautions, shared), page.Only(item.Reasons, shared)
		recordItem(p, i+1, item)
	}
	p.Heading("Beside the lifting")
	p.ClinicianBeside(w.Beside, w.NotBeside)
	if len(w.LeftOut) == 0 {
		return
	}
	p.Heading("Left out, with the reason")
	for _, out := range w.LeftOut {
		instead := "nothing instead"
		if out.Instead != "" {
			instead = "instead: " + string(out.Instead)
		}
		p.Line("%s (%s)", out.Exercise, instead)
		p.Clinicians("- ", out.Reasons)
	}
}

func recordItem(p *page.Paper, n int, item dose.Prescription) {
	p.Line("")
	p.Say(fmt.Sprintf("%d. ", n), item.Name+": "+page.Amount(item))
	p.Dose(item)
	if item.Next != nil {
		p.Say("   next     ", fmt.Sprintf("%s, a step of %s on the weight held", item.Next.To, item.Next.Share))
	}
	for _, f := range item.Flags {
		p.Say("   flag     ", f.String())
	}
	p.Clinicians("   heed     ", item.Cautions)
	p.Clinicians("   why      ", item.Reasons)
}
