package main

import (
	"bytes"
	"fmt"
	"io"
	"reflect"
	"slices"
	"strings"

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
	var by [screening.Emergency + 1]bytes.Buffer // where what somebody has to look at sends
	for _, name := range names {
		p, failed := f.Read(name)
		if failed != nil {
			err = failed
			fmt.Fprintln(stderr, "clinic:", failed)
			continue
		}
		route, text := due(p.Record, day)
		page.Wrap(&by[route], fmt.Sprintf("%-12s ", name), p.Record.Client+". "+text)
		page.Note(&by[route], p.Record.Note)
	}
	for i := range slices.Backward(by[:]) {
		stdout.Write(by[i].Bytes())
	}
	if err != nil {
		return command.Bad
	}
	return command.OK
}

const ever units.Day = 1 << 30

// due says what stands against training, and which step comes next.
func due(r record.Record, day units.Day) (screening.Route, string) {
	stands, err := r.Alarms(day)
	switch alarm := papers.Alarms(stands); {
	case err != nil:
		return 0, untold(err)
	case ended(r):
		return 0, fmt.Sprintf("Ended on %s. Next: show, for the papers; whoever comes back begins anew, with new and another name.", lastDay(r))
	case len(stands) > 0 && stands[0].Open:
		return stands[0].Route, alarm + " Next: review, which asks who has looked."
	case len(stands) > 0:
		return 0, alarm + " Next: ask."
	case len(r.Visits) == 0:
		return 0, begins(r, day)
	}
	text, err := underway(r, day)
	if err != nil {
		text = untold(err)
	}
	return 0, text
}

func untold(err error) string {
	return "cannot be told: " + strings.ReplaceAll(err.Error(), "\n", "; ")
}

// ended reports whether there was a goodbye: nothing is asked for any more.
func ended(r record.Record) bool { return len(r.Asked) > 0 && len(inForce(r, ever)) == 0 }

// lastDay is that of the goodbye.
func lastDay(r record.Record) (day units.Day) {
	for _, a := range r.Asked {
		day = max(day, a.Until)
	}
	return day
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
	stopped := func(i record.Decided) bool { return i.Decision.Action == progression.StopExercise }
	switch {
	case news(r, last):
		return "review."
	case !idle(r, last.Day) && (!expired || last.Day >= day):
		return fmt.Sprintf("log, from %s on.", last.Day)
	case expired:
		return "week."
	case slices.ContainsFunc(last.Items, stopped):
		return "review, which asks who has looked at what was stopped."
	}
	return "ask; all is stopped until then."
}

// underway says how far somebody is, what is overdue, and what comes next.
func underway(r record.Record, day units.Day) (string, error) {
	dates, err := r.Dates(day)
	if err != nil {
		return "", err
	}
	words, err := record.Words()
	if err != nil {
		return "", err
	}
	text := fmt.Sprintf("Phase %s, %s, the last on %s; review by %s.", r.Phase, page.Counted(len(r.Visits), "visit"), lastVisit(r), dates.Review)
	for _, o := range dates.Overdue(day) {
		text += " " + words.Clinician(o)
	}
	return text + " Next: " + goesOn(r, day, dates.Expired(day)), nil
}

// due is what list says.
func (s *session) due() string {
	_, text := due(*s.r, s.day)
	return text
}
