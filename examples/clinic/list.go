package main

import (
	"fmt"
	"io"
	"reflect"
	"slices"
	"strings"

	"example.org/posology/dose/week"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/folder"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// list says who there is, and what is due of each: first of those with something to look at.
func list(f folder.Folder, day units.Day, stdout, stderr io.Writer) int {
	names, err := f.Names()
	if err == nil && len(names) == 0 {
		fmt.Fprintf(stdout, "Nobody yet in %s: new NAME begins with somebody.\n", f)
	}
	var rows []row
	for _, name := range names {
		p, failed := f.Read(name)
		if failed != nil {
			err = failed
			fmt.Fprintln(stderr, "clinic:", failed)
			continue
		}
		one := row{name: name, note: p.Record.Note}
		stands, failed := p.Record.Stands(day)
		text := ""
		if failed == nil {
			text, failed = due(p.Record, day)
		}
		if failed != nil {
			text = "cannot be told: " + strings.ReplaceAll(failed.Error(), "\n", "; ")
		}
		one.text = p.Record.Client + ". " + text
		if open := papers.Open(stands); len(open) > 0 {
			one.route, one.text = open[0].Route, text+" "+p.Record.Client+"."
		}
		rows = append(rows, one)
	}
	slices.SortStableFunc(rows, func(a, b row) int { return int(b.route) - int(a.route) })
	for _, one := range rows {
		page.Wrap(stdout, fmt.Sprintf("%-12s ", one.name), one.text)
		page.Note(stdout, one.note)
	}
	if err != nil {
		return command.Bad
	}
	return command.OK
}

// A row is one person on the list.
type row struct {
	name, text, note string
	route            screening.Route // of what nobody has looked at
}

const ever units.Day = 1 << 30

// due says what stands against training, and which step comes next.
func due(r record.Record, day units.Day) (string, error) {
	stands, err := r.Stands(day)
	if err != nil {
		return "", err
	}
	alarm := papers.Alarm(stands)
	switch {
	case len(r.Asked) > 0 && len(inForce(r, ever)) == 0:
		last := slices.MaxFunc(r.Asked, func(a, b record.Asked) int { return int(a.Until - b.Until) })
		return fmt.Sprintf("Ended on %s. Next: show, for the papers; whoever comes back begins anew, with new and another name.", last.Until), nil
	case slices.ContainsFunc(before(r), unassessed):
		return strings.TrimSpace(alarm + " Something happened since the assessment. Next: ask, before anything else."), nil
	case len(papers.Open(stands)) > 0:
		return alarm + " Next: review, which asks who has looked.", nil
	case len(stands) > 0:
		return alarm + " Next: ask.", nil
	case len(r.Visits) == 0:
		return begins(r, day), nil
	}
	text, expired, err := underway(r, day)
	return text + " Next: " + goesOn(r, day, expired), err
}

// begins says which step comes next before the first visit was logged.
func begins(r record.Record, day units.Day) string {
	n := len(r.Entries)
	switch {
	case n == 0:
		return "Next: visit."
	case !reflect.DeepEqual(r.Entries[n-1].Given.Profile, r.Profile):
		return "The plan is older than the assessment. Next: visit."
	case r.Entries[n-1].Plan.Week == nil:
		return "Held, as the paper says. Next: ask, once there is an answer."
	case len(r.Asked) > 0:
		return fmt.Sprintf("Next: log, from %s on.", r.Began)
	case slices.Min(r.Days) < day:
		return "The days of the plan have begun. Next: visit."
	}
	return "Next: week."
}

// goesOn says which step comes next from the first visit on.
func goesOn(r record.Record, day units.Day, expired bool) string {
	last := r.Entries[len(r.Entries)-1]
	does := func(a progression.Action) bool {
		return slices.ContainsFunc(last.Items, func(i record.Decided) bool { return i.Decision.Action == a })
	}
	outcome, err := screening.Assess(r.Profile, r.Join)
	switch {
	case news(r, last):
		return "review."
	case !stopsAll(last) && (!expired || last.Day >= day):
		return fmt.Sprintf("log, from %s on.", last.Day)
	case does(progression.StopAndRefer) || err != nil || outcome.ReviewBy < day:
		return "ask; all is stopped until then."
	case expired:
		return "week."
	case does(progression.StopExercise):
		return "review, which asks who has looked at what was stopped."
	}
	return "ask; all is stopped until then."
}

// underway says how far somebody is, what is overdue, and whether the plan has ended.
func underway(r record.Record, day units.Day) (text string, expired bool, err error) {
	outcome, err := screening.Assess(r.Profile, r.Join)
	if err != nil {
		return "", false, err
	}
	dates, err := week.DatesOf(r.Phase, r.Began, outcome.ReviewBy)
	if err != nil {
		return "", false, err
	}
	if !r.Review.IsZero() {
		dates.Review = r.Review // as it was agreed last
	}
	words, err := record.Words()
	if err != nil {
		return "", false, err
	}
	text = fmt.Sprintf("Phase %s, %d visits, the last on %s; review by %s.", r.Phase, len(r.Visits), lastVisit(r), dates.Review)
	for _, o := range dates.Overdue(day) {
		text += " " + words.Clinician(o)
	}
	return text, dates.Expired(day), nil
}

// due is what list says.
func (s *session) due() string {
	text, err := due(*s.r, s.day)
	if err != nil {
		return err.Error()
	}
	return text
}
