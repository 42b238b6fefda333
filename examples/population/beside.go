package main

import (
	"fmt"
	"io"
	"slices"

	"example.org/posology/screening"
)

// Why somebody is held of whom every published rule that speaks is silent.
const (
	byCuff    = "a pressure that was to be measured and was not"
	byUnknown = "not known, and a published rule holds who says yes"
	byUnasked = "not known, and every published rule is silent"
	byFlag    = "a red flag or a reading that no rule grades alone"
	byMemory  = "a disease that a rule counts from memory alone"
	byOwn     = "nothing but this module's own choice"
)

// whyHeld says by what somebody is held.
func whyHeld(p screening.Profile, o screening.Outcome) string {
	known, cuff, why := false, true, byOwn
	for _, f := range o.Findings {
		if slices.Contains(f.Reason.Facts, "screening.known-disease-recalled") && f.Known && why == byOwn {
			why = byMemory
		}
		if f.Meanwhile == screening.WithinLimits {
			continue
		}
		cuff = cuff && f.Code == "pressure_not_measured"
		if !f.Known || f.Open {
			continue
		}
		known = true
		if term, _ := screening.LookUp(f.Code); term.Kind == screening.RedFlag || term.Kind == screening.Reading {
			why = byFlag
		}
	}
	switch {
	case known:
		return why
	case cuff:
		return byCuff
	case ruled(p, o):
		return byUnknown
	}
	return byUnasked
}

// ruled reports whether a published rule speaks once all that is not known is so, a
// pressure that was to be measured among it.
func ruled(p screening.Profile, o screening.Outcome) bool {
	for _, l := range []*screening.Checklist{&p.Diseases, &p.Symptoms, &p.RedFlags, &p.Conditions} {
		*l = screening.AskedFor(slices.Concat(l.Present, l.Unsure)...)
	}
	if slices.ContainsFunc(o.Findings, func(f screening.Finding) bool { return f.Code == "pressure_not_measured" }) {
		p.BP = &screening.BloodPressure{Systolic: 161, Diastolic: 90}
	}
	worst, err := screening.Assess(p, o.Policy)
	return err == nil && worst.Rules.Strictest() > screening.Silent
}

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
