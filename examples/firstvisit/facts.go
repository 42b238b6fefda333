package main

import (
	"fmt"

	"example.org/posology/examples/internal/visit"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// kg prints a mass in kilograms to one decimal.
func kg(m units.Mass) string { return fmt.Sprintf("%.1f", m.Kilograms()) }

// recordFacts lists every fact that a reason names, once, with how it is known.
func recordFacts(p *paper, r visit.Result) error {
	ledger, err := visit.Ledger()
	if err != nil {
		return err
	}
	used := map[evidence.FactID]bool{}
	for _, reason := range allReasons(r) {
		for _, id := range reason.Facts {
			used[id] = true
		}
	}
	cited := map[evidence.SourceID]bool{}
	p.heading("Facts behind it, and how each is known")
	for f := range ledger.All() {
		if used[f.ID] {
			p.say("- ", describe(f, ledger))
			cited[f.Source] = true
		}
	}
	p.heading("Sources")
	for s := range evidence.Sources() {
		if cited[s.ID] {
			p.say("- ", fmt.Sprintf("%s: %s", s.ID, s.Citation))
		}
	}
	return nil
}

func describe(f evidence.Fact, ledger *evidence.Ledger) string {
	basis := f.Basis.String()
	if weakest, err := ledger.Basis(f.ID); err == nil && weakest != f.Basis {
		basis += ", resting on " + weakest.String()
	}
	text := fmt.Sprintf("%s: %s (%s", f.ID, f.Value, basis)
	if f.Source != "" {
		text += "; " + string(f.Source)
	}
	if f.Via != "" {
		text += "; via " + f.Via
	}
	return text + ")"
}

// allReasons collects the reasons of the whole result, in order.
func allReasons(r visit.Result) []evidence.Reason {
	var all []evidence.Reason
	for _, f := range r.Screening.Findings {
		all = append(all, f.Reason)
	}
	for _, q := range r.Screening.Missing {
		all = append(all, q.Reason)
	}
	for _, e := range r.Estimates {
		all = append(all, e.Reasons...)
	}
	if r.Week == nil {
		return append(append(all, r.Stop.Constraint), r.Stop.Free...)
	}
	all = append(all, r.Week.Reasons...)
	for _, b := range r.Week.Beside {
		all = append(all, b.Reasons...)
	}
	for _, item := range r.Week.Sessions[0].Items {
		all = append(append(all, item.Cautions...), item.Reasons...)
	}
	for _, out := range r.Week.LeftOut {
		all = append(all, out.Reasons...)
	}
	return all
}
