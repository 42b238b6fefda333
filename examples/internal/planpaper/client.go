package planpaper

import (
	"io"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// clientPaper is short, kind and in large steps: what to do.
func clientPaper(w io.Writer, r record.Plan) error {
	p, err := page.New(w)
	if err != nil {
		return err
	}
	p.Line("FOR YOU, AFTER YOUR FIRST VISIT")
	p.Line("%s", page.Day(max(r.Screening.Day, r.Screening.Today)))
	p.Note(r.Note)
	p.Task("What you want to be able to do, in your own words", r.Task, r.Tasks)
	p.Heading("First")
	p.Clients("- ", page.ToClient(r.Screening))
	if r.Week != nil {
		p.Clients("- ", page.WhyUnused(r.Week.Unused))
	}
	p.GivenLimits(r.Screening, r.Profile)
	if text := page.LeaveOut(r.Screening.Limits.Avoid); text != "" && r.Week != nil {
		p.Say("- ", text)
	}
	if asks := toDoctor(r).Questions(); r.Screening.Route == screening.AskFirst && len(asks) > 0 {
		p.Heading("What your doctor is asked")
		p.Each("- ", asks)
	}
	if r.Week == nil {
		p.Heading("For now")
		p.Clients("- ", []evidence.Reason{r.Stop.Constraint})
		return p.Close()
	}
	clientWeek(p, *r.Week)
	return p.Close()
}

func clientWeek(p *page.Paper, week dose.Week) {
	p.Heading("Your days")
	for _, s := range week.Sessions {
		p.Line("- %s, about %d minutes, %d of them easy movement to warm up", page.Day(s.Day), s.Minutes, s.WarmUp)
	}
	items := week.Sessions[0].Items
	p.Heading("For all exercises")
	said := p.ClientShared(items)
	p.Each("- ", said)
	p.Heading("What you do each time")
	for i, item := range items {
		p.ClientItem(i+1, item, nil, said)
	}
	p.ClientBeside(week.Beside, week.NotBeside)
	p.Heading("Good to know")
	p.Clients("- ", week.Reasons)
	p.Say("- ", "We look at this plan together again by "+page.Day(week.Review)+".")
}
