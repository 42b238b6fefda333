package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/folder"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/units"
)

// list says who there is, and what is due of each.
func list(f folder.Folder, day units.Day, stdout, stderr io.Writer) int {
	names, err := f.Names()
	if err == nil && len(names) == 0 {
		fmt.Fprintf(stdout, "Nobody yet in %s: new NAME begins with somebody.\n", f)
	}
	for _, name := range names {
		p, failed := f.Read(name)
		if failed != nil {
			err = failed
			fmt.Fprintln(stderr, "clinic:", failed)
			continue
		}
		text, failed := due(p.Record, day)
		if failed != nil {
			text = "cannot be told: " + strings.ReplaceAll(failed.Error(), "\n", "; ")
		}
		page.Wrap(stdout, fmt.Sprintf("%-12s ", name), p.Record.Client+". "+text)
		page.Note(stdout, p.Record.Note)
	}
	if err != nil {
		return command.Bad
	}
	return command.OK
}

// due says which step comes next.
func due(r record.Record, day units.Day) (string, error) {
	switch {
	case len(r.Asked) > 0 && len(inForce(r, 1<<30)) == 0:
		return fmt.Sprintf("Ended on %s.", slices.MaxFunc(r.Asked, func(a, b record.Asked) int { return int(a.Until - b.Until) }).Until), nil
	case slices.ContainsFunc(before(r), unassessed):
		return "Something happened since the assessment: ask, before anything else.", nil
	case len(r.Entries) == 0:
		return "Next: visit.", nil
	case len(r.Asked) == 0:
		return "Next: week.", nil
	case len(r.Visits) == 0:
		return fmt.Sprintf("Next: log, from %s on.", r.Began), nil
	}
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
	if dates.Expired(day) {
		text += " Next: week."
	}
	return text, nil
}
