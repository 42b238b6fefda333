package screening

import (
	"cmp"
	"iter"
	"slices"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A Clearance is a named clinician's statement that the person may exercise. It
// counts only for the codes it speaks for, and only while it is in force.
type Clearance struct {
	Who     string    `json:"who"`              // the clinician
	Day     units.Day `json:"day"`              // when it was given
	Expires units.Day `json:"expires,omitzero"` // last day in force; not given is 12 months on
	Scope   []Code    `json:"scope,omitempty"`  // diseases, symptoms and conditions it speaks for
	// Intensity is the hardest effort it speaks for; not given is moderate. One
	// that speaks for less effort than could go on without it lifts no limits:
	// who wants to forbid writes a [Restriction].
	Intensity Intensity `json:"intensity,omitzero"`
}

// A Restriction is a surgeon's or clinician's own limit. In force, it binds
// every dose; of two the tighter holds. It needs no name to forbid.
type Restriction struct {
	Author           string       `json:"author,omitzero"`
	Day              units.Day    `json:"day,omitzero"`
	Until            units.Day    `json:"until,omitzero"` // last day in force; not given is until further notice
	Side             body.Side    `json:"side,omitzero"`  // not given is either side
	Region           body.Region  `json:"region"`
	MaxMass          *units.Mass  `json:"max_mass,omitempty"` // per hand for work of the arms, else in total
	Avoid            body.Demands `json:"avoid,omitzero"`     // of an arm or a leg on that side alone, where the region is of it
	NonWeightBearing bool         `json:"non_weight_bearing,omitzero"`
	Note             string       `json:"note,omitzero"` // such as a range of motion, for people to read
}

// Why a clearance does not count, as told to the clinician.
const (
	whyNoName  = "no clinician is named"
	whyNoDay   = "its day is not given"
	whyLater   = "its day lies after the visit"
	whyExpired = "it has expired"
	whyEvent   = "something has happened since"
	whyScope   = "it does not say what it speaks for"
	whyNothing = "it lifts nothing that was found"
)

// lastDay is the last day on which c is in force.
func (c *Clearance) lastDay() units.Day {
	if !c.Expires.IsZero() {
		return c.Expires
	}
	return monthsAfter(c.Day, clearanceMonths)
}

// intensity is the hardest effort that c speaks for.
func (c *Clearance) intensity() Intensity { return cmp.Or(c.Intensity, Moderate) }

// void says why c does not count on the day of the visit, "" if it does.
func (p *Profile) void(c Clearance) string {
	switch {
	case strings.TrimSpace(c.Who) == "":
		return whyNoName
	case c.Day.IsZero():
		return whyNoDay
	case c.Day > p.Day:
		return whyLater
	case c.lastDay() < p.Day:
		return whyExpired
	case slices.ContainsFunc(p.Events, func(e Event) bool { return e.Day.IsZero() || e.Day > c.Day }):
		return whyEvent
	case len(c.Scope) == 0:
		return whyScope
	}
	return ""
}

// names reports whether c speaks for any of the codes.
func (c *Clearance) names(codes []Code) bool {
	return slices.ContainsFunc(codes, func(code Code) bool { return slices.Contains(c.Scope, code) })
}

// inForce returns the clearances that count on the day of the visit.
func (p *Profile) inForce() []Clearance {
	var list []Clearance
	for _, c := range p.Clearances {
		if p.void(c) == "" {
			list = append(list, c)
		}
	}
	return list
}

// covered returns the hardest effort that clearances in force speak for with
// regard to any of the codes, and whether any speaks for one.
func (a *assessment) covered(codes []Code) (Intensity, bool) {
	var hardest Intensity
	for i := range a.inForce {
		if c := &a.inForce[i]; c.names(codes) {
			hardest = max(hardest, c.intensity())
		}
	}
	return hardest, hardest != 0
}

// coveredAll is covered for every one of the items; for none it is false, and
// with a sign that no clearance lifts.
func (a *assessment) coveredAll(items []item) (Intensity, bool) {
	hardest := Vigorous
	for _, it := range items {
		var codes room
		i, ok := a.covered(it.appendNeeded(codes[:0]))
		if !ok || a.p.unliftable(it) {
			return 0, false
		}
		hardest = min(hardest, i)
	}
	return hardest, len(items) > 0
}

// unliftable reports whether an item is a sign that no clearance lifts.
func (p *Profile) unliftable(it item) bool {
	return it.kind == Symptom && (it.released == nil || p.kept(it.entry))
}

// unanswered is the question by which a sign that no clearance lifts may turn out another or
// none, "" where all of it is known.
func (p *Profile) unanswered(it item) Code {
	if it.held != Yes {
		return it.code
	}
	if it.finer != nil && p.Answers[it.finer.kept[0]] == Unknown {
		return it.finer.kept[0]
	}
	return ""
}

// vigorousClearance reports whether clearances in force, given in the last 12
// months, speak for vigorous effort with every one of the diseases, and returns
// the last day on which they do.
func vigorousClearance(inForce []Clearance, day units.Day, diseases iter.Seq[item]) (units.Day, bool) {
	var until units.Day
	some := false
	for it := range diseases {
		some = true
		var best units.Day
		var codes room
		needed := it.appendNeeded(codes[:0])
		for _, c := range inForce {
			if c.intensity() == Vigorous && c.names(needed) {
				best = max(best, min(c.lastDay(), monthsAfter(c.Day, clearanceMonths)))
			}
		}
		if best < day {
			return 0, false
		}
		if until == 0 || best < until {
			until = best
		}
	}
	return until, some
}

// inForce reports whether r binds on the day of the visit. One that begins
// later is kept: it forbids, and nobody gains by forgetting it.
func (r Restriction) inForce(day units.Day) bool { return r.Until.IsZero() || r.Until >= day }

// limits are what r forbids.
func (r Restriction) limits() Limits {
	l := Limits{Avoid: r.Avoid}
	if r.NonWeightBearing {
		l.Avoid = l.Avoid.Union(sparing(r.Region)).Union(standing)
	}
	l = l.onSide(r.Region, r.Side)
	if r.NonWeightBearing && !ofArm(r.Region) {
		l = l.Join(Limits{Avoid: legWork})
	}
	if r.MaxMass != nil {
		l.Masses = []MassLimit{{Region: r.Region, Side: cmp.Or(r.Side, body.Both), Max: *r.MaxMass, Author: r.Author}}
	}
	return l
}

// legWork is resisted work of the legs: with a hand on something firm it is done
// standing nevertheless.
var legWork = body.DemandSet(body.HipResisted, body.KneeResisted, body.AnkleResisted)

// ofArm reports whether a region is of the arm.
func ofArm(r body.Region) bool { return r == body.Shoulder || r == body.Elbow || r == body.WristHand }

// standing are demands that put the body's weight on the feet.
var standing = body.DemandSet(body.FreeStanding, body.SingleLegStance, body.DeepKneeBend, body.Impact)

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
