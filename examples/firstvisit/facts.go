package main

import (
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/visit"
	"example.org/posology/units/evidence"
)

// recordFacts lists every fact that a reason names, once, with how it is known.
func recordFacts(p *page.Paper, r visit.Result) error {
	ledger, err := visit.Ledger()
	if err != nil {
		return err
	}
	p.Facts(ledger, allReasons(r))
	return nil
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
	for _, refused := range r.Refused {
		all = append(all, refused.Reason)
	}
	if r.Week == nil {
		return append(append(all, r.Stop.Constraint), r.Stop.Free...)
	}
	all = append(append(all, r.Week.Reasons...), page.WhyUnused(r.Week.Unused)...)
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
