package main

import (
	"fmt"
	"io"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/onerm"
	"example.org/posology/examples/internal/visit"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// filePaper is for the clinical record: everything, with reasons and facts.
func filePaper(w io.Writer, r visit.Result) error {
	p, err := newPaper(w)
	if err != nil {
		return err
	}
	p.line("RECORD OF A FIRST VISIT: %s", r.Client)
	p.line("%s", day(r.Screening.Day))
	p.line("(%s)", r.Note)
	p.para("Client's own task: " + r.Task + ".")
	recordScreening(p, r.Screening)
	recordEstimates(p, r)
	if r.Week != nil {
		recordWeek(p, *r.Week)
	} else {
		p.heading("No dose")
		p.clinicians("- ", append([]evidence.Reason{r.Stop.Constraint}, r.Stop.Free...))
	}
	if err := recordFacts(p, r); err != nil {
		return err
	}
	return p.close()
}

func recordScreening(p *paper, o screening.Outcome) {
	p.heading("Screening")
	p.line("Route: %s. Meanwhile: %s.", o.Route, o.Meanwhile)
	for _, f := range o.Findings {
		p.line("")
		p.clinicians("- ", []evidence.Reason{f.Reason})
		p.line("  route %s, meanwhile %s", f.Route, f.Meanwhile)
	}
	if len(o.Missing) > 0 {
		p.line("\nStill to be asked:")
		for _, q := range o.Missing {
			p.clinicians("- ", []evidence.Reason{q.Reason})
		}
	}
	if len(o.EachDay) > 0 {
		p.say("Every day's check must bring", listed(o.EachDay)+".")
	}
	p.line("\nEach published rule's own answer:")
	for _, line := range ruleLines(o.Rules) {
		p.say("- ", line)
	}
	p.line("\nLimits for every dose:")
	for _, line := range limitLines(o.Limits) {
		p.say("- ", line)
	}
}

func ruleLines(r screening.Rules) []string {
	branch := "could not be told from what was answered"
	if p := r.Preparticipation; p.Branch != screening.BranchUnknown {
		branch = fmt.Sprintf("branch %s, %s", p.Branch, p.Clearance)
	}
	lines := []string{
		"preparticipation 2015: " + branch,
		fmt.Sprintf("contraindications 2007: %s%s", r.Contraindications.Level, listed(r.Contraindications.Reasons)),
		fmt.Sprintf("spinal red flags 2020: %s", r.RedFlags),
	}
	if r.SessionDay.Plan != screening.PlanUnknown {
		lines = append(lines, fmt.Sprintf("session-day checks: %s%s", r.SessionDay.Plan, listed(r.SessionDay.Reasons)))
	}
	if len(r.Cautions) > 0 {
		lines = append(lines, "cautions by condition"+listed(r.Cautions))
	}
	return lines
}

func listed(codes []screening.Code) string {
	if len(codes) == 0 {
		return ""
	}
	texts := make([]string, len(codes))
	for i, c := range codes {
		texts[i] = string(c)
	}
	return ": " + strings.Join(texts, ", ")
}

func limitLines(l screening.Limits) []string {
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
	add(l.MaxIntensity != screening.IntensityUnknown, "effort at most %s", l.MaxIntensity)
	add(l.NoBreathHolding, "no breath-holding")
	add(l.EffortNotPulse, "rate effort instead of taking the pulse")
	add(l.TechniqueFirst, "load rises only while technique and posture hold")
	add(l.LowImpact, "impact no higher than brisk walking")
	add(l.Support, "support in standing work")
	add(l.Avoid != 0, "avoid: %s", l.Avoid)
	add(l.LeastSetting != screening.SettingUnknown, "at least this supervision: %s", l.LeastSetting)
	for _, m := range l.Masses {
		add(true, "%s, %s: at most %s (%s)", m.Region, m.Side, m.Max, m.Author)
	}
	return lines
}

func recordEstimates(p *paper, r visit.Result) {
	p.heading("Estimated one-repetition maximum")
	if len(r.Estimates) == 0 && len(r.Refused) == 0 {
		p.line("No test sets.")
	}
	for _, e := range r.Estimates {
		recordEstimate(p, e)
	}
	for _, refused := range r.Refused {
		p.say("- ", fmt.Sprintf("%s: no estimate. %s", refused.Set.Exercise, refused.Why))
	}
}

func recordEstimate(p *paper, e onerm.Estimate) {
	low, _ := e.Interval.Min()
	high, _ := e.Interval.Max()
	p.say("- ", fmt.Sprintf("%s, %s, %s: %s kg %s, between %s and %s kg (%s), on %s",
		e.Exercise, e.Side, e.Hold, kg(e.OneRM), e.Stated, kg(low), kg(high), e.Grade, e.Day))
	for _, a := range e.Answers {
		p.line("    %s: %s kg", a.Formula, kg(a.OneRM))
	}
	p.clinicians("    ", e.Reasons)
}

func recordWeek(p *paper, week dose.Week) {
	p.heading("First week")
	for _, s := range week.Sessions {
		p.line("%s: %d exercises, about %d minutes", day(s.Day), len(s.Items), s.Minutes)
	}
	p.para(fmt.Sprintf("Phase %s. Review by %s; test strength again by %s; follow no longer than %s.", week.Phase, day(week.Review), day(week.Retest), day(week.Expires)))
	p.line("")
	for _, b := range week.Beside {
		p.clinicians("- ", b.Reasons)
	}
	p.clinicians("- ", week.Reasons)
	items := week.Sessions[0].Items
	p.line("\nFor every exercise:")
	heeded, why := shared(items, len(items), cautions), shared(items, len(items), reasons)
	p.clinicians("- ", append(heeded, why...))
	for i, item := range items {
		item.Cautions, item.Reasons = only(item.Cautions, heeded), only(item.Reasons, why)
		recordItem(p, i+1, item)
	}
	if len(week.LeftOut) == 0 {
		return
	}
	p.heading("Left out, with the reason")
	for _, out := range week.LeftOut {
		instead := "nothing instead"
		if out.Instead != "" {
			instead = "instead: " + string(out.Instead)
		}
		p.line("%s (%s)", out.Exercise, instead)
		p.clinicians("- ", out.Reasons)
	}
}

func recordItem(p *paper, n int, item dose.Prescription) {
	p.line("\n%d. %s: %s", n, item.Name, amount(item))
	if item.Mode != dose.WithoutLoad {
		p.say("   load     ", fmt.Sprintf("%s (%s in all); %s", item.Load, item.Load.Total, item.Mode))
	}
	if item.Share > 0 {
		p.say("   share    ", fmt.Sprintf("%s of the best estimate", item.Share))
	}
	if item.Reserve != (dose.Reserve{}) {
		p.say("   reserve  ", item.Reserve.String())
	}
	p.say("   rest     ", fmt.Sprintf("%s seconds; build to %d sets, %s %s a set", item.Rest, item.BuildTo, item.Span, item.Measure))
	if item.Next != nil {
		p.say("   next     ", nextStep(item))
	}
	for _, f := range item.Flags {
		p.say("   flag     ", f.String())
	}
	p.clinicians("   heed     ", item.Cautions)
	p.clinicians("   why      ", item.Reasons)
}

func nextStep(item dose.Prescription) string {
	return fmt.Sprintf("%s, a step of %s on the weight held", item.Next.To, item.Next.Share)
}
