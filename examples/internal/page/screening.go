package page

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// Screening prints an outcome for the file: findings, what is still to be asked,
// the rules' own answers and the limits.
func (p *Paper) Screening(o screening.Outcome, profile screening.Profile) {
	p.Heading("Screening")
	p.Line("Route: %s. Meanwhile: %s.", o.Route, o.Meanwhile)
	for _, f := range o.Findings {
		p.Line("")
		p.Clinicians("- ", []evidence.Reason{f.Reason})
		p.Line("  route %s, meanwhile %s", f.Route, f.Meanwhile)
		if exit := f.Exit.String(); exit != "" {
			p.Line("  way out: %s", exit)
		}
	}
	if len(o.Missing) > 0 {
		p.Line("\nStill to be asked:")
		for _, q := range o.Missing {
			p.Clinicians("- ", []evidence.Reason{q.Reason})
		}
	}
	if len(o.EachDay) > 0 {
		p.Say("Every day's check must bring", Named(o.EachDay)+".")
	}
	if way := FreesMost(o); way != "" {
		p.Say("\nWhat would free most: ", way)
	}
	for f := range o.Favours() {
		p.Say("Favours   ", favours(f))
	}
	p.Line("\nEach published rule's own answer:")
	for _, line := range RuleLines(o.Rules, profile, !o.Today.IsZero()) {
		p.Say("- ", line)
	}
	p.Line("\nLimits for every dose:")
	for _, line := range LimitLines(o.Limits) {
		p.Say("- ", line)
	}
}

// FreesMost says the one answer or paper that would free most, with what else is needed
// where it alone frees nothing, and "" where nobody is held.
func FreesMost(o screening.Outcome) string {
	var also []string
	for _, f := range o.Findings {
		exit := f.Exit
		exit.From = 0
		if exit.Who == 0 || exit == o.Frees || f.Branch() == screening.N3 || f.Branch() == screening.A3 {
			continue // such a branch is of signs that have a way of their own
		}
		other := way(o, exit)
		if f.Meanwhile == o.Meanwhile && (o.Meanwhile > screening.WithinLimits || f.Route == o.Route) && !slices.Contains(also, other) {
			also = append(also, other)
		}
	}
	if len(also) == 0 {
		return strings.TrimSuffix(way(o, o.Frees), ".")
	}
	return way(o, o.Frees) + " Nothing is freed without this too: " + strings.Join(also, " ")
}

// way says a way out, and what the person is asked.
func way(o screening.Outcome, exit screening.WayOut) string {
	for _, q := range o.Missing {
		if exit.Who == screening.ThePerson && q.Code == exit.Ask {
			return exit.String() + ": " + screening.Words().Client(q.Reason)
		}
	}
	return exit.String() + "."
}

// favours says what a condition speaks for.
func favours(f screening.Favour) string {
	term, _ := screening.LookUp(f.Code)
	text := term.Meaning + ": " + f.Says
	if f.PainBaseline {
		text += "; the usual pain is scored first"
	}
	if len(f.Tests) > 0 {
		text += "; tests: " + strings.Join(f.Tests, ", ")
	}
	return text + "."
}

// ToClient returns what a client reads of an outcome: what was found and what is
// to be asked, in an emergency nothing but that. Of what was agreed to no day is asked: it changes nothing.
func ToClient(o screening.Outcome) []evidence.Reason {
	var list []evidence.Reason
	for _, f := range o.Findings {
		asked := slices.ContainsFunc(o.Missing, func(q screening.Question) bool { return q.Code == f.Code })
		switch {
		case o.Route == screening.Emergency && f.Route < o.Route:
		case !f.Known && f.Route <= screening.Tell && asked: // the question says the same
		default:
			list = append(list, f.Reason)
		}
	}
	if o.Route < screening.Emergency {
		for _, q := range o.Missing {
			if !slices.ContainsFunc(o.Findings, func(f screening.Finding) bool { return f.Variant == screening.Agreed && q.Code == f.Code+"_day" }) {
				list = append(list, q.Reason)
			}
		}
	}
	return list
}

// LimitLines says the limits for every dose.
func LimitLines(l screening.Limits) []string {
	if l.IsZero() {
		return []string{"none from what was answered"}
	}
	var lines []string
	add := func(holds bool, format string, args ...any) {
		if holds {
			lines = append(lines, fmt.Sprintf(format, args...))
		}
	}
	add(l.MaxFraction > 0, "load at most %s of 1RM", l.MaxFraction)
	add(l.MinReserve > 0, "at least %v repetitions in reserve", l.MinReserve)
	add(l.MaxIntensity != 0, "effort at most %s", l.MaxIntensity)
	add(l.Lighten.AtMostLast, "no load above the last completed one")
	add(l.Lighten.FewerSets > 0, "%s fewer, down to one", Counted(l.Lighten.FewerSets, "set"))
	add(l.Lighten.MoreReserve > 0, "%v more repetitions in reserve than planned", l.Lighten.MoreReserve)
	add(l.NoBreathHolding, "no breath-holding")
	add(l.EffortNotPulse, "rate effort instead of taking the pulse")
	add(l.TechniqueFirst, "load rises only while technique and posture hold")
	add(l.LeastCount > 0, "sets of at least %d repetitions", l.LeastCount)
	add(l.LowImpact, "impact no higher than brisk walking")
	add(l.Support, "support in standing work")
	add(l.Avoid != 0, "avoid: %s", l.Avoid)
	add(l.AvoidLeft|l.AvoidRight != 0, "avoid on the left: %s; on the right: %s", l.AvoidLeft, l.AvoidRight)
	add(l.LeastSetting != 0, "at least this supervision: %s", l.LeastSetting)
	for _, m := range l.Masses {
		add(true, "%s, %s: at most %s (%s)", m.Region, m.Side, m.Max, m.Author)
	}
	return lines
}
