package main

import (
	"bytes"
	"fmt"
	"io"
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
func due(r record.Record, day units.Day) (route screening.Route, text string) {
	stands, err := r.Alarms(day)
	switch alarm := papers.Alarms(stands); {
	case err != nil:
		return 0, untold(err)
	case ended(r):
		for _, s := range stands {
			route = max(route, s.Route)
		}
		return route, strings.TrimSpace(fmt.Sprintf("%s Ended on %s. Next: show, for the papers; whoever comes back begins anew, with new and another name.", alarm, lastDay(r)))
	case len(stands) > 0 && stands[0].Open:
		return stands[0].Route, alarm + " Next: review, which asks who has looked."
	case len(stands) > 0:
		return 0, alarm + " Next: ask."
	case len(r.Visits) == 0:
		return 0, begins(r, day)
	}
	if text, err = underway(r, day); err != nil {
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
	case changed(r.Entries[n-1].Given, r.Given):
		return "The plan is older than what was told since. Next: visit."
	case r.Entries[n-1].Plan.Week == nil:
		return "Held, as the paper says. Next: ask, once there is an answer."
	case len(r.Asked) > 0 && day <= r.Began+aWeek:
		return firstDay(r, day)
	case slices.Min(r.Days) < day:
		return "The days of the plan have begun. Next: visit."
	}
	return "Next: week."
}

// firstDay says how the first week goes on: not on a day whose check stops it.
func firstDay(r record.Record, day units.Day) string {
	what, now, err := (&session{r: &r, day: day}).stricter()
	switch {
	case err != nil:
		return untold(err)
	case what == "":
		return "Next: " + toLog(r, r.Began, day)
	case now.Meanwhile == screening.Nothing: // a check stays as it is for its day
		return fmt.Sprintf("%s says: meanwhile nothing, on this day; check takes a second reading, where it asks for one. Next: %s", what, toLog(r, day+1, day))
	}
	return what + " is stricter than the plan. Next: visit."
}

// toLog says from when on a visit is logged, and whether the day's check comes before it.
func toLog(r record.Record, from, day units.Day) string {
	if needsCheck(r, max(from, day)) {
		return fmt.Sprintf("check, from %s on, on the day itself; log comes after it.", from)
	}
	return fmt.Sprintf("log, from %s on.", from)
}

// needsCheck reports whether a day lacks the check that each day of training needs.
func needsCheck(r record.Record, day units.Day) bool {
	o, err := r.Screening(day)
	return err == nil && len(o.EachDay) > 0 && !slices.ContainsFunc(r.Checks, func(c screening.Check) bool { return c.Day == day })
}

// aWeek without a visit makes what was decided before old.
const aWeek = 7

// stale says that what was decided is not for a day: the last visit, or the return that was decided for once days had passed, is too long ago.
func stale(r record.Record, day units.Day) string {
	n, known := len(r.Entries), lastVisit(r)
	if known == 0 || n == 0 {
		return ""
	}
	if e := r.Entries[n-1]; e.Day > known+aWeek && (e.Decided == 0 || e.Decided > known+aWeek) {
		known = e.Day
	}
	if day <= known+aWeek {
		return ""
	}
	return fmt.Sprintf("The last visit was on %s: what was decided before is not for %s.", page.Day(lastVisit(r)), page.Day(day))
}

// goesOn says which step comes next from the first visit on.
func goesOn(r record.Record, day units.Day, expired bool) string {
	last := r.Entries[len(r.Entries)-1]
	stopped := func(i record.Decided) bool { return i.Decision.Action == progression.StopExercise }
	switch {
	case news(r, last):
		return "review."
	case !idle(r, last.Day) && (!expired || last.Day >= day):
		if why := stale(r, day); why != "" {
			return "review. " + why
		}
		return toLog(r, last.Day, day)
	case expired:
		return "week."
	case day > last.Day && slices.ContainsFunc(r.Checks, func(c screening.Check) bool { return c.Day == last.Day }):
		return "review. The check of " + last.Day.String() + " was for that day."
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
		text += " " + words.Clinician(o) + map[string]string{"dose.overdue-review": " With it: week.", "dose.overdue-retest": " With it: test."}[string(o.Code)]
	}
	o, err := r.Screening(day)
	if err == nil && o.Frees.Who != 0 {
		text += fmt.Sprintf(" %s: %s; with it: ask.", map[bool]string{true: "Held until there is an answer", false: "An answer is still to come"}[o.Meanwhile > screening.WithinLimits], o.Frees)
	}
	_, paused := r.AskedOn(ever)
	items := slices.DeleteFunc(slices.Clone(r.Entries[len(r.Entries)-1].Items), func(i record.Decided) bool { return !paused[i.Exercise] })
	if awaited := papers.ToLook(items); len(awaited) > 0 {
		text += " Awaited: " + strings.Join(awaited, "; ") + "."
	}
	return text + " Next: " + goesOn(r, day, dates.Expired(day)), err
}

// due is what list says.
func (s *session) due() string {
	_, text := due(*s.r, s.day)
	return text
}
