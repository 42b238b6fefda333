package main

import (
	"fmt"
	"io"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// printWeek prints the plan, its weekly sets and its audit.
func printWeek(w io.Writer, r result) error {
	s, err := newSheet(w)
	if err != nil {
		return err
	}
	s.line("A WEEK OF TRAINING, AND WHAT GUIDELINES SAY OF IT")
	s.Note(r.Visit.Note)
	s.line("\n%s", r.Visit.Client)
	s.Para(page.Wanted("Own task", r.Visit.Task, r.Visit.Tasks))
	printScreening(s, r.Visit)
	if r.Visit.Week == nil {
		s.Heading("No week for now")
		s.because("- ", append([]evidence.Reason{r.Visit.Stop.Constraint}, r.Visit.Stop.Free...))
		return s.Close()
	}
	printCalendar(s, r)
	printSession(s, *r.Visit.Week)
	beside, err := papers.Beside(r.Visit.Week.Beside)
	if err != nil {
		return err
	}
	s.Body(beside)
	if out := r.Visit.Week.NotBeside; len(out) > 0 {
		s.Heading("Beside the lifting, not begun")
		s.ClinicianBeside(nil, out)
	}
	printLeftOut(s, r.Visit.Week.LeftOut)
	s.Unused(r.Visit.Week.Unused)
	of := s.Tests(s.because, r.Visit.Week.Choice.Tests, r.Visit.Tested)
	s.Heading("Why so")
	s.because("- ", page.Only(r.Visit.Week.Reasons, of))
	printSets(s, r.Prescribed.Totals)
	printAudit(s, r)
	return s.Close()
}

func printScreening(s sheet, v record.Plan) {
	o := v.Screening
	s.Heading("What screening asks for")
	s.line("Route: %s. Meanwhile: %s.", o.Route, o.Meanwhile)
	for _, f := range o.Findings {
		s.Clients("- ", []evidence.Reason{f.Reason})
	}
	for _, q := range o.Missing {
		s.Say("- still to be asked: ", s.Clinician(q.Reason))
	}
	if text := page.LeaveOut(o.Limits); text != "" {
		s.Say("- ", text)
	}
	for _, text := range page.Restrictions(v.Profile) {
		s.Say("- ", text)
	}
}

// printCalendar prints seven days. The days of sessions are the plan's; those
// of the work beside it are proposed here: balance first on the days of
// sessions, walking on the others.
func printCalendar(s sheet, r result) {
	w, totals := *r.Visit.Week, r.Prescribed.Totals
	s.Heading("The week")
	s.Say("", fmt.Sprintf("Phase: %s. Begins on %s, the same each week. Look at it again by %s, test strength by %s, follow it no longer than %s.", w.Phase, page.Day(w.Sessions[0].Day), page.Day(w.Review), page.Day(w.Retest), page.Day(w.Expires)))
	s.line("")
	beside := besides(w, totals.Days, totals.Week.Monday())
	all := 0
	for d := range units.Day(daysInWeek) {
		date := totals.Week.Monday() + d
		what := beside[d]
		if trains(totals.Days, date) {
			first := w.Sessions[0]
			all += first.Minutes
			what = append([]string{fmt.Sprintf("strength, %s, %d minutes", page.Counted(len(first.Items), "exercise"), first.Minutes)}, what...)
		}
		_, month, n := date.Date()
		s.Say(fmt.Sprintf("  %-10s%2d %-10s ", date.Weekday(), n, month), listed(what))
	}
	s.line("")
	s.Say("", fmt.Sprintf("Strength: %d minutes a week, warm-ups included. The days of what stands beside it are a proposal; its minutes come on top.", all))
}

// printSession prints what is done on each day of strength.
func printSession(s sheet, w week.Week) {
	first := w.Sessions[0]
	s.Heading("Each session")
	s.line("   Warm-up: %d minutes of easy movement.", first.WarmUp)
	names, amounts := 0, 0
	for _, item := range first.Items {
		names, amounts = max(names, len(item.Name)), max(amounts, len(page.Sets(item)))
	}
	for i, item := range first.Items {
		load := "without weight"
		if item.Mode != dose.WithoutLoad {
			load = item.Load.String()
		}
		s.line("%2d. %-*s  %-*s  %s", i+1, names, item.Name, amounts, page.Sets(item), load)
		s.Say("    ", effort(item))
	}
}

func effort(item dose.Prescription) string {
	text := "end each set while it is clearly easy"
	switch {
	case item.Measure != exercise.Repetitions:
		text = "stop before it gets hard to keep the position"
	case item.Reserve.Countable:
		text = fmt.Sprintf("end each set with %v repetitions left", item.Reserve)
	}
	if item.Finding != nil && item.Finding.MaxSteps > 0 {
		text += "; find the load from here"
	} else if item.Finding != nil {
		text += "; stay with it for the visit"
	}
	if item.Share > 0 {
		text += fmt.Sprintf("; %s of what is known of strength", item.Share)
	}
	for _, f := range item.Flags {
		text += "; " + f.String()
	}
	return text
}

func printLeftOut(s sheet, list []week.LeftOut) {
	for i, out := range list {
		if i == 0 {
			s.Heading("What had to give")
		}
		instead := "left out"
		if out.Instead != "" {
			instead = plain(string(out.Instead)) + " instead"
		}
		s.line("%s: %s", plain(string(out.Exercise)), instead)
		s.because("  - ", out.Reasons)
	}
}
