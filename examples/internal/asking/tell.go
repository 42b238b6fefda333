package asking

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// words are the library's.
var words = screening.Words()

// meanwhile says to the client what may go on.
var meanwhile = map[screening.Meanwhile]string{
	screening.WithinLimits:     "training within what stands here.",
	screening.LightSupervised:  "light weights only, with an instructor beside you.",
	screening.UnloadedPractice: "the movements only, without weights.",
	screening.Nothing:          "no exercise until this is settled.",
}

// TellClient tells the outcome shortly: what to do, what goes on, what is open.
func TellClient(w io.Writer, o screening.Outcome) {
	fmt.Fprintf(w, "\nTHANK YOU. THIS IS WHAT COMES OUT OF IT\n\n")
	var reasons []evidence.Reason
	for _, f := range o.Findings {
		saidBelow := !f.Known && f.Branch() == 0 && !slices.Contains(lists, f.Code)
		if !saidBelow && (o.Route < screening.Emergency || f.Route == o.Route) {
			reasons = append(reasons, f.Reason)
		}
	}
	for _, text := range page.Texts(words.Client, reasons) {
		page.Wrap(w, "- ", text)
	}
	page.Wrap(w, "- ", "For now: "+meanwhile[o.Meanwhile])
	if o.Route == screening.Emergency {
		return
	}
	if o.Meanwhile != screening.Nothing {
		for _, text := range limitsForClient(o.Limits) {
			page.Wrap(w, "- ", text)
		}
	}
	tellOpen(w, o.Missing)
	fmt.Fprintln(w)
	page.Wrap(w, "", "These are published rules, read out by a program. It cannot examine you, and what your doctor says comes first.")
}

// lists are what is asked as a whole.
var lists = []screening.Code{"diseases", "symptoms", "red_flags", "conditions", "new"}

const mostOpen = 6 // things to find out that a client reads by name

// tellOpen names what is still to be answered: questions in their own words,
// and by name what the person was not sure of. Many of those mean that the
// interview did not come to them.
func tellOpen(w io.Writer, missing []screening.Question) {
	var unsure []string
	if len(missing) > 0 {
		fmt.Fprintf(w, "\nStill open:\n")
	}
	for _, q := range missing {
		of := q.Because
		day := of != "" && q.Code == of+"_day"
		switch {
		case q.Unsure:
			unsure = append(unsure, screening.Option(q.Code))
		case !day:
			page.Wrap(w, "- ", words.Client(q.Reason))
		case !slices.ContainsFunc(missing, func(m screening.Question) bool { return m.Code == of }):
			what := screening.Option(of)
			page.Wrap(w, "- ", strings.ToUpper(what[:1])+what[1:]+". "+words.Client(q.Reason))
		}
	}
	if len(unsure) > mostOpen {
		page.Wrap(w, "- ", fmt.Sprintf("%d other things, which we will ask you one by one.", len(unsure)))
		return
	}
	for _, text := range unsure {
		page.Wrap(w, "- ", "Please find out whether this is so: "+text+".")
	}
}

// limitsForClient are the limits that a client keeps to.
func limitsForClient(l screening.Limits) []string {
	var all []string
	add := func(holds bool, text string) {
		if holds {
			all = append(all, text)
		}
	}
	add(l.NoBreathHolding, "Breathe out when you lift; do not hold your breath.")
	add(l.Support, "Keep a hand on something firm, or sit.")
	add(l.LowImpact, "No jumping; brisk walking is the most.")
	add(l.LeastCount > 0, "Rather more repetitions than more weight.")
	add(l.TechniqueFirst, "First the way of moving, then more weight.")
	add(l.EffortNotPulse, "Go by how hard it feels, not by your pulse.")
	add(l.LeastSetting > screening.Alone, "Train "+l.LeastSetting.String()+".")
	all = append(all, page.MassLimits(l)...)
	add(l.Avoid != 0, "Some movements are left out for now; your clinician has the list.")
	const ofSide = "On your %s side alone some movements are left out for now; your clinician has the list."
	add(l.AvoidLeft != 0, fmt.Sprintf(ofSide, body.Left))
	add(l.AvoidRight != 0, fmt.Sprintf(ofSide, body.Right))
	return all
}

// Sided says what was told of one side: places, events and the pain of the last training.
func Sided(p screening.Profile, pain *screening.Pain) []string {
	var told []string
	add := func(what string, region body.Region, side body.Side) {
		if side == body.Left || side == body.Right {
			told = append(told, strings.TrimSpace(fmt.Sprintf("%s: %s %s", what, side, region)))
		}
	}
	for _, s := range p.Sites {
		add(page.InWords(s.Code), s.Region, s.Side)
	}
	for _, e := range p.Events {
		add(page.InWords(e.Code), e.Region, e.Side)
	}
	if pain != nil {
		add("pain of the last training", pain.Site, pain.Side)
	}
	return told
}

// TellClinician tells everything, with rules and reasons, and what was told of one side.
func TellClinician(w io.Writer, o screening.Outcome, sided ...string) {
	fmt.Fprintf(w, "\nOUTCOME OF THE INTERVIEW, %s\n\nRoute: %s. Meanwhile: %s.\n\nFindings, the gravest first:\n", max(o.Day, o.Today), o.Route, o.Meanwhile)
	for _, f := range o.Findings {
		exit := ""
		if f.Exit.Who != 0 {
			exit = "; way out: " + f.Exit.String()
		}
		page.Wrap(w, "- ", fmt.Sprintf("%s %v (route %s, meanwhile %s%s)", words.Clinician(f.Reason), f.Reason.Facts, f.Route, f.Meanwhile, exit))
	}
	if len(sided) > 0 {
		page.Wrap(w, "\nTold of one side: ", strings.Join(sided, "; "))
	}
	if way := page.FreesMost(o); way != "" {
		page.Wrap(w, "\nWhat would free most: ", way)
	}
	if len(o.Missing) > 0 {
		fmt.Fprintf(w, "\nStill open:\n")
		for _, q := range o.Missing {
			page.Wrap(w, "- ", words.Clinician(q.Reason))
		}
	}
	if len(o.EachDay) > 0 {
		fmt.Fprintf(w, "\nEvery day's check must bring: %v\n", o.EachDay)
	}
	var told screening.Profile // what a rule names of it
	for _, f := range o.Findings {
		told.RedFlags.Present = append(told.RedFlags.Present, f.Code)
	}
	fmt.Fprintf(w, "\nEach published rule's own answer, never merged:\n")
	for _, text := range page.RuleLines(o.Rules, told, true) {
		page.Wrap(w, "- ", text)
	}
	fmt.Fprintf(w, "\nLimits for every dose:\n")
	limits := page.LimitLines(o.Limits)
	if l := o.Limits.Lighten; l.AtMostLast {
		limits = append(limits, fmt.Sprintf("a lighter session: no more weight than last time, %s fewer, %v more in reserve", page.Counted(l.FewerSets, "set"), l.MoreReserve))
	}
	for _, text := range limits {
		page.Wrap(w, "- ", text)
	}
	fmt.Fprintln(w)
	page.Wrap(w, "", "Flags and routes only: this gives nobody leave to train. Local rules and a licensed clinician decide.")
}
