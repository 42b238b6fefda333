package reviewpaper

import (
	"strings"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/progression/rule"
	"example.org/posology/units/evidence"
)

// doses are the doses of the next visit.
func doses(r record.Review) []dose.Prescription {
	var list []dose.Prescription
	for _, item := range r.Items {
		if item.Decision.Next != nil {
			list = append(list, *item.Decision.Next)
		}
	}
	return list
}

// whyOf returns what a client reads of a decision: what stands in the way of more,
// unless the load rises or is still looked for, and the reasons.
func whyOf(d progression.Decision) []evidence.Reason {
	switch {
	case d.Change == progression.MoreLoad || d.Change == progression.FindLoad:
		return d.Reasons
	case d.Action == progression.EaseOff:
		return append(stands(d, rule.Ease), d.Reasons...)
	}
	return append(stands(d, rule.Keep), d.Reasons...)
}

// stands returns what the gates say that ask for so little, or less.
func stands(d progression.Decision, advice rule.LoadAdvice) []evidence.Reason {
	var list []evidence.Reason
	for _, g := range d.Gates {
		if g.Advice >= advice {
			list = append(list, g.Reasons...)
		}
	}
	return list
}

// waits reports whether somebody else has to look at the exercise first.
func waits(item record.Decided) bool { return item.Decision.Action == progression.StopAndRefer }

// waiting returns the exercises that somebody else has to look at first, and why.
func waiting(r record.Review) (names string, why []evidence.Reason) {
	var list []string
	for _, item := range r.Items {
		if waits(item) {
			list = append(list, item.Name)
			why = append(why, item.Decision.Reasons...)
		}
	}
	return strings.Join(list, ", "), once(why)
}

func last(item record.Decided) progression.Visit { return item.Log[len(item.Log)-1] }

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
