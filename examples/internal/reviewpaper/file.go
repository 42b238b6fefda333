package reviewpaper

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// For writes the paper of a review that is wanted; also stands on what the client takes home.
func For(o command.Wanted, w io.Writer, r record.Review, also ...dose.Prescription) error {
	return o.Write(w, r, papers.OfReview(r, also...), func(w io.Writer) error { return filePaper(w, r) })
}

// filePaper is for the clinical record: everything, with gates, reasons and facts.
func filePaper(w io.Writer, r record.Review) error {
	p, err := page.New(w)
	if err != nil {
		return err
	}
	p.Line("RECORD OF A REVIEW: %s", r.Client)
	p.Line("%s; decided for the visit of %s", page.Day(r.Day), page.Day(r.Next))
	p.Note(r.Note)
	for _, alarm := range r.Alarms {
		p.Clinicians("", alarm.Reasons[:1])
	}
	p.Para(page.NoDevice)
	p.Para(page.Wanted("Client's own task", r.Task, r.Tasks))
	p.Say("", screened(r))
	p.Summary(summary(p, r))
	recordOverview(p, r)
	tracked, err := recordStrength(p, r)
	if err != nil {
		return err
	}
	tests := p.Tests(p.Clinicians, r.Chosen, r.Tested)
	recordLookedAt(p, r)
	recordAttended(p, r.Attended)
	p.Unused(r.Unused)
	p.Screening(r.Screening, r.Profile)
	shared := recordShared(p, r)
	p.Heading("Exercise by exercise")
	for i, item := range r.Items {
		recordItem(p, i+1, item, shared)
	}
	recordComing(p, r, tests)
	if err := p.Facts(append(r.Reasons(), tracked...)); err != nil {
		return err
	}
	return p.Close()
}

func summary(p *page.Paper, r record.Review) page.Summary {
	s := page.Summary{Outcome: r.Screening, Profile: r.Profile, Day: r.Day, Items: papers.Doses(r), Open: page.Open(r.Screening.Missing, r.Profile)}
	for _, o := range r.Overdue {
		s.Overdue = append(s.Overdue, p.Clinician(o))
	}
	asked := 0
	for _, item := range r.Items {
		asked += len(item.Decision.Queries)
	}
	s.Open = append(s.Open, page.OpenTests(r.Unused)...)
	if asked > 0 {
		s.Open = append(s.Open, fmt.Sprintf("sets to be asked about: %d", asked))
	}
	if names, _ := papers.Waiting(r); names != "" {
		s.Open = append(s.Open, "to be looked at first: "+names)
	}
	s.Open = append(s.Open, papers.ToLook(r.Items)...)
	if r.Coming != nil {
		s.Dates = page.Dates(r.InForce, r.Day)
	}
	return s
}

func screened(r record.Review) string {
	text := "the day's check was not made here"
	switch {
	case !r.Screening.Today.IsZero():
		text = "checked on " + page.Day(r.Screening.Today)
	case len(r.Screening.EachDay) > 0:
		text += " and comes before the visit"
	}
	return fmt.Sprintf("Assessed on %s; %s.", page.Day(r.Screening.Day), text)
}

func recordOverview(p *page.Paper, r record.Review) {
	p.Heading("What changes")
	longest := 0
	for _, item := range r.Items {
		longest = max(longest, len(item.Name))
	}
	for _, item := range r.Items {
		p.Say(fmt.Sprintf("%-*s  ", longest, item.Name), overview(item))
	}
}

// recordStrength prints what the tracks show, and returns their reasons.
func recordStrength(p *page.Paper, r record.Review) (why []evidence.Reason, err error) {
	tracks, err := papers.Strengths(r.Items, r.Screening.Who)
	if err != nil || len(tracks) == 0 {
		return nil, err
	}
	p.Heading("Strength over the visits, by which no dose goes")
	for _, t := range tracks {
		p.Say("- ", t.Name+": "+t.Clinician())
		why = append(why, t.Odds.Reasons...)
	}
	return why, nil
}

func overview(item record.Decided) string {
	d := item.Decision
	text := d.Action.String()
	if d.Change != progression.NoChange {
		text += " (" + d.Change.String() + ")"
	}
	if d.Next == nil {
		return text + ": nothing is prescribed"
	}
	if len(item.Log) == 0 {
		return text + ": never done yet"
	}
	return text + ": " + cmp.Or(strings.Join(changed(last(item).Plan, *d.Next), ", "), "as it was")
}

// changed says what differs from the dose of the last visit.
func changed(was, is dose.Prescription) []string {
	if was.Exercise != is.Exercise {
		return []string{is.Name + " in its place"}
	}
	var list []string
	differ := func(what, before, after string) {
		if before != after {
			list = append(list, fmt.Sprintf("%s %s to %s", what, before, after))
		}
	}
	differ("load", was.Load.Each().String(), is.Load.Each().String())
	differ("sets", fmt.Sprint(was.Sets), fmt.Sprint(is.Sets))
	differ(is.Measure.String(), fmt.Sprint(was.Count), fmt.Sprint(is.Count))
	differ("in reserve", was.Reserve.String(), is.Reserve.String())
	differ("seconds down", fmt.Sprint(was.Tempo.Lowering), fmt.Sprint(is.Tempo.Lowering))
	differ("seconds of pause", fmt.Sprint(was.Tempo.Pausing), fmt.Sprint(is.Tempo.Pausing))
	return list
}

// recordLookedAt lists what somebody has to answer or to look at.
func recordLookedAt(p *page.Paper, r record.Review) {
	p.Heading("To ask, and for somebody else to look at")
	some := false
	say := func(what string, why []evidence.Reason) {
		some = some || len(why) > 0
		p.Led("- ", what+":", why)
	}
	names, why := papers.Waiting(r)
	say("before anything else ("+names+")", why)
	for _, f := range r.Screening.Findings {
		if f.Route >= screening.Tell {
			say(fmt.Sprintf("%s (%s)", cmp.Or(f.Exit.String(), "the doctor"), f.Route), []evidence.Reason{f.Reason})
		}
	}
	for _, item := range slices.Concat(r.Left, r.Items) {
		say("to ask, "+item.Name, papers.Queries(item.Decision))
		for _, v := range item.Log {
			say(fmt.Sprintf("to watch, %s, %s", item.Name, page.Day(v.Day)), record.Bodily(v))
		}
	}
	if !some {
		p.Line("Nothing in what was recorded.")
	}
}

func recordAttended(p *page.Paper, a record.AttendanceReport) {
	p.Heading("Done and missed")
	p.Line("%s planned, %s.", page.Counted(len(a.Sessions)-len(a.Away), "day"), page.Counted(len(a.Done), "visit"))
	p.Clinicians("- ", a.Answer.Reasons)
	for _, d := range a.Missed {
		p.Line("- missed: %s", page.Day(d))
	}
	if n := len(a.Away); n > 0 {
		p.Line("- not counted: %s away as told, ill or stopped", page.Counted(n, "day"))
	}
	for _, s := range a.Short {
		what := fmt.Sprintf("%s, %s:", page.Day(s.Day), s.Name)
		if s.Why == nil {
			p.Say("- ", what+" not done")
			continue
		}
		p.Led("- ", what, []evidence.Reason{*s.Why})
	}
}

// recordShared prints what holds for all doses, and returns it.
func recordShared(p *page.Paper, r record.Review) []evidence.Reason {
	list := papers.Doses(r)
	if len(list) == 0 {
		return nil
	}
	p.Heading("For every exercise")
	all := page.Shared(list)
	p.Clinicians("- ", all)
	return all
}

func recordComing(p *page.Paper, r record.Review, tests []evidence.Reason) {
	c := r.Coming
	if c == nil {
		p.Heading("No further days")
		text := "Nothing is prescribed until somebody has looked. Review as soon as there is an answer."
		if papers.HeldToday(r) {
			text = "The check of this day stops all on it. Review again for the next day of training."
		}
		if r.Expired {
			text = "The plan has ended. Nothing is prescribed until there is a new one."
		}
		p.Say("", text)
		return
	}
	p.Heading("The weeks to come")
	for _, d := range c.Days {
		p.Line("- %s", page.Day(d))
	}
	p.Line("")
	p.Clinicians("- ", page.Only(c.Reasons, tests))
	head := "Beside the lifting"
	if c.Begun {
		head += ", from the beginning"
	}
	p.Heading(head)
	p.ClinicianBeside(c.Beside, c.NotBeside)
}

func last(item record.Decided) progression.Visit { return item.Log[len(item.Log)-1] }
