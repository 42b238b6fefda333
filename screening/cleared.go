package screening

import (
	"cmp"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// clearances records which clearances count and which do not.
func (a *assessment) clearances() {
	for _, c := range a.p.Clearances {
		reason := evidence.Because(clearanceCode, clearanceFact).With(evidence.Text("who", or(c.Who, "somebody unnamed")), evidence.Text("day", or(c.Day.String(), "a day not given")))
		why := a.p.void(c)
		if why == "" && !c.names(a.lifted) {
			why = whyNothing
		}
		if why != "" {
			reason.Code = voidCode
			a.out.add(byRule(reason.With(evidence.Text("why", why))), nothingFound)
			continue
		}
		scope := make([]string, len(c.Scope))
		for i, code := range c.Scope {
			scope[i] = string(code)
		}
		until := c.lastDay()
		a.out.reviewBy(until)
		a.out.add(byRule(reason.With(evidence.Day("until", until), evidence.Term("intensity", c.intensity().String()), evidence.Terms("scope", scope...))), nothingFound)
	}
}

// reviewBy notes a day on which something that counts lapses.
func (o *Outcome) reviewBy(d units.Day) {
	o.ReviewBy = min(o.ReviewBy, d)
}

func or(text, otherwise string) string { return cmp.Or(strings.TrimSpace(text), otherwise) }

// isLiftable reports whether a clearance may lift what follows from e, or answer
// the need of the branch that it leads to.
func (e *entry) isLiftable() bool {
	known := e.known != nil
	return e.released != nil || e.kind == Disease || known
}

// liftable are the codes that make the question about a clearance necessary.
func liftable() []Code { return codesWith((*entry).isLiftable) }

// askClearance asks for the clearance that would lift a hold and is not in
// force, and for the record of one that was only said.
func (a *assessment) askClearance() {
	said := a.p.Answers[askClearance]
	because := a.uncleared()
	if said != No && because != "" || said == Yes && len(a.p.Clearances) == 0 {
		a.out.ask(askFor(askClearance, because))
	}
}

// uncleared returns the first code that a clearance may lift and none in force
// does, "" if there is none.
func (a *assessment) uncleared() Code {
	for _, it := range a.items {
		if !it.isLiftable() {
			continue
		}
		var codes room
		_, lifted := a.covered(it.appendNamed(codes[:0]))
		_, needed := a.covered(it.appendNeeded(codes[:0]))
		if it.released != nil && !lifted && !a.free(it) || it.isKnown(true) && it.question == nil && !needed {
			return it.code
		}
	}
	for _, e := range a.met {
		var codes room
		if _, lifted := a.covered(item{entry: e}.appendNamed(codes[:0])); e.released != nil && !lifted {
			return e.code
		}
	}
	return ""
}

// free reports whether an item that a clearance may lift holds nobody as it is.
func (a *assessment) free(it item) bool {
	e, _ := a.itself(it)
	return e.route < AskFirst || it.dropped && a.policy.RiskFactors != OlderList
}
