package main

import (
	"fmt"
	"io"

	"example.org/posology/screening"
)

// beside prints what two policies make of the same people.
func beside(w io.Writer, own, older *tally) {
	fmt.Fprintf(w, "AN INVENTED POPULATION: %d PEOPLE, SCREENED BY TWO POLICIES\n\n", own.people)
	fmt.Fprintf(w, "  %-36s %12s %12s\n", "in % of all people", "own", "older lists")
	line := func(text string, a, b int) {
		fmt.Fprintf(w, "  %-36s %12s %12s\n", text, blank(a, own.people), blank(b, older.people))
	}
	for _, m := range meanwhiles {
		line(m.String(), own.meanwhile[m], older.meanwhile[m])
	}
	for r := range screening.Routes() {
		line("route "+r.String(), own.route[r], older.route[r])
	}
	line("held though every rule is silent", own.silentHeld, older.silentHeld)
	fmt.Fprintln(w, "\nFindings that hold other numbers of people:")
	for _, k := range sorted(older.findings, key.name) {
		a, b := row{}, *older.findings[k]
		if own.findings[k] != nil {
			a = *own.findings[k]
		}
		if a.held+a.stopped != b.held+b.stopped {
			line(k.label(), a.held+a.stopped, b.held+b.stopped)
		}
	}
}
