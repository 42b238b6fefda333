package main

import (
	"io"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/review"
	"example.org/posology/examples/internal/visit"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	visits "example.org/posology/progression/visit"
	"example.org/posology/units/evidence"
)

func newPaper(w io.Writer) (*page.Paper, error) {
	words, err := visit.Words()
	return page.New(w, words), err
}

// doses are the doses of the next visit.
func doses(r review.Result) []dose.Prescription {
	var list []dose.Prescription
	for _, item := range r.Items {
		if item.Decision.Next != nil {
			list = append(list, *item.Decision.Next)
		}
	}
	return list
}

// why returns what a client reads of a decision: what stands in the way of more,
// unless the load rises or is still looked for, and the reasons.
func why(d progression.Decision) []evidence.Reason {
	switch {
	case d.Change == progression.MoreLoad || d.Change == progression.FindLoad:
		return d.Reasons
	case d.Action == progression.EaseOff:
		return append(stands(d, rule.Ease), d.Reasons...)
	}
	return append(stands(d, rule.Keep), d.Reasons...)
}

// stands returns what the gates say that ask for so little, or less.
func stands(d progression.Decision, advice rule.Advice) []evidence.Reason {
	var list []evidence.Reason
	for _, g := range d.Gates {
		if g.Advice >= advice {
			list = append(list, g.Reasons...)
		}
	}
	return list
}

// waits reports whether somebody else has to look at the exercise first.
func waits(item review.Item) bool { return item.Decision.Action == progression.StopAndRefer }

// waiting returns the exercises that somebody else has to look at first, and why.
func waiting(r review.Result) (names string, why []evidence.Reason) {
	var list []string
	for _, item := range r.Items {
		if waits(item) {
			list = append(list, item.Name)
			why = append(why, item.Decision.Reasons...)
		}
	}
	return strings.Join(list, ", "), once(why)
}

// bodily returns what hurt, showed or was lost at a visit, so far that less or
// nothing follows from it.
func bodily(v progression.Visit) []evidence.Reason {
	report, err := visits.Gates(v)
	if err != nil {
		return nil // it was decided on, so it has no bad field
	}
	var list []evidence.Reason
	for _, g := range report.Gates {
		if g.Gate <= visits.GateRange && g.Advice >= rule.Ease {
			list = append(list, g.Reasons...)
		}
	}
	return list
}

func last(item review.Item) progression.Visit { return item.Log[len(item.Log)-1] }

// allReasons collects the reasons of the whole result, in order.
func allReasons(r review.Result) []evidence.Reason {
	var all []evidence.Reason
	for _, f := range r.Screening.Findings {
		all = append(all, f.Reason)
	}
	for _, q := range r.Screening.Missing {
		all = append(all, q.Reason)
	}
	all = append(append(all, page.WhyUnused(r.Unused)...), r.Overdue...)
	all = append(all, r.Attended.Answer.Reasons...)
	for _, s := range r.Attended.Short {
		if s.Why != nil {
			all = append(all, *s.Why)
		}
	}
	for _, item := range r.Items {
		all = append(all, item.Decision.Reasons...)
		for _, v := range item.Log {
			all = append(all, bodily(v)...)
		}
		for _, g := range item.Decision.Gates {
			all = append(all, g.Reasons...)
		}
		for _, j := range []*progression.Jump{item.Decision.Rise, item.Decision.Jump} {
			if j != nil {
				all = append(all, j.Reasons...)
			}
		}
	}
	for _, p := range doses(r) {
		all = append(append(all, p.Cautions...), p.Reasons...)
	}
	if r.Coming != nil {
		all = append(all, r.Coming.Reasons...)
		for _, b := range r.Coming.Beside {
			all = append(all, b.Reasons...)
		}
	}
	return all
}

// queries are the reasons of what is to be asked about.
func queries(d progression.Decision) []evidence.Reason {
	var list []evidence.Reason
	for _, q := range d.Queries {
		list = append(list, q.Reason)
	}
	return once(list)
}

// once drops reasons that stand twice.
func once(list []evidence.Reason) []evidence.Reason {
	var kept []evidence.Reason
	for _, r := range list {
		kept = append(kept, page.Only([]evidence.Reason{r}, kept)...)
	}
	return kept
}
