package main

import (
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units"
)

// print prints the whole table.
func (t *tally) print(w io.Writer, all bool) {
	fmt.Fprintf(w, "AN INVENTED POPULATION: %d PEOPLE OF %d TO %d YEARS, SCREENED ONCE\n\n", t.people, youngest, oldest)
	fmt.Fprintln(w, "The people are drawn by chance, with shares that are invented. The table is")
	fmt.Fprintln(w, "there to judge how the rules are joined; nothing in it is a finding about")
	fmt.Fprintln(w, "real people. All lists were asked; everybody trains in a group.")

	t.heading(w, "What may go on meanwhile")
	for _, m := range meanwhiles {
		t.share(w, m.String(), t.meanwhile[m])
	}
	t.ages(w)
	t.heading(w, "Where people are sent")
	for _, r := range []screening.Route{screening.NoRoute, screening.Tell, screening.PhysioLooks, screening.AskFirst, screening.SameDay, screening.Emergency} {
		t.share(w, r.String(), t.route[r])
	}
	t.rules(w)
	t.heading(w, "By rule and list, in % of all people")
	for _, line := range legend {
		fmt.Fprintln(w, line)
	}
	rows(w, t.people, t.kinds, itself, itself, func(*row) bool { return true })
	t.heading(w, "By finding, in % of all people")
	fmt.Fprintf(w, "  Left out unless -all: what stops nobody and is found in less than %s.\n", units.Fraction(rare))
	rows(w, t.people, t.findings, key.name, key.label, func(r *row) bool { return all || r.stopped > 0 || float64(r.with) >= rare*float64(t.people) })

	t.heading(w, "Stopped by one finding alone, and what the strictest published rule says of them, in % of all people")
	t.alone(w)
	t.heading(w, "Held though every published rule that speaks is silent")
	fmt.Fprintf(w, "  %d of %d of whom all are silent: %s\n", t.silentHeld, t.silent, percent(t.silentHeld, max(t.silent, 1)))
	for _, why := range []string{byCuff, byUnknown, byUnasked, byFlag, byMemory, byOwn} {
		fmt.Fprintf(w, "    %-52s %7s\n", why, percent(t.silentBy[why], max(t.silent, 1)))
	}
	fmt.Fprintf(w, "  %d of %d of whom all stay silent, whatever comes of what is not known: %s\n", t.staysHeld, t.stays, percent(t.staysHeld, max(t.stays, 1)))

	t.heading(w, "What is not known")
	t.share(w, "with a question open", t.open)
	t.share(w, "stopped by nothing but what is not known", t.unknown)
}

// alone prints what stops people by itself, with the strictest rule's answer.
func (t *tally) alone(w io.Writer) {
	for _, k := range sorted(t.findings, key.name) {
		if t.findings[k].alone == 0 {
			continue
		}
		var rules []string
		for v := range screening.EveryStrictness() {
			if n := t.aloneBy[k][v]; n > 0 {
				rules = append(rules, fmt.Sprintf("%s %s", v, blank(n, t.people)))
			}
		}
		fmt.Fprintf(w, "  %-*s %7s  %s\n", labelWidth, k.label(), blank(t.findings[k].alone, t.people), strings.Join(rules, ", "))
	}
}

var legend = []string{
	"  found    in these people         stopped  it lets nothing go on",
	"  alone    nothing else stops them    held  no load, or light and supervised",
	"  to ask   it sends to ask first or further",
	"  limited  training goes on within limits that it sets",
}

const rare = 0.01 // share of people below which a finding that stops nobody is left out

var meanwhiles = []screening.Meanwhile{screening.WithinLimits, screening.LightSupervised, screening.UnloadedPractice, screening.Nothing}

// ages prints what may go on by decade of age.
func (t *tally) ages(w io.Writer) {
	t.heading(w, "The same by age, in % of each")
	fmt.Fprintf(w, "  %-22s", "")
	for _, m := range meanwhiles {
		fmt.Fprintf(w, " %21s", m)
	}
	fmt.Fprintln(w)
	for _, decade := range slices.Sorted(maps.Keys(t.decades)) {
		of := 0
		for _, n := range t.decades[decade] {
			of += n
		}
		fmt.Fprintf(w, "  %-22s", fmt.Sprintf("from %d (%d people)", decade, of))
		for _, m := range meanwhiles {
			fmt.Fprintf(w, " %21s", blank(t.decades[decade][m], of))
		}
		fmt.Fprintln(w)
	}
}

// rules prints what each published rule answers by itself.
func (t *tally) rules(w io.Writer) {
	t.heading(w, "Each published rule by itself")
	for b := screening.N1; b <= screening.A3; b++ {
		t.share(w, "preparticipation 2015, branch "+b.String(), t.branch[b])
	}
	t.share(w, "  clearance before any exercise, or stop first", t.need[screening.BeforeAny]+t.need[screening.StopFirst])
	t.share(w, "  clearance before vigorous exercise", t.need[screening.BeforeVigorous])
	t.share(w, "contraindications 2007: relative", t.level[screening.Relative])
	t.share(w, "contraindications 2007: absolute", t.level[screening.Absolute])
	t.share(w, "wider list 2003: any", t.wider)
	t.share(w, "red flags: urgent referral", t.referral[screening.UrgentReferral])
	t.share(w, "red flags: emergency", t.referral[screening.EmergencyReferral])
	t.share(w, "day's checks: not today", t.plan[screening.NotToday])
	for f := range screening.Facts() {
		if f.ID == "screening.share-referred" {
			fmt.Fprintf(w, "  For comparison, %s:\n  %s.\n", f.Source, f.Value)
		}
	}
}

func (t *tally) heading(w io.Writer, text string) { fmt.Fprintf(w, "\n%s\n", text) }

func (t *tally) share(w io.Writer, text string, n int) {
	fmt.Fprintf(w, "  %-50s %7s\n", text, percent(n, t.people))
}

func percent(n, of int) string { return fmt.Sprintf("%.2f %%", 100*float64(n)/float64(of)) }

// rows prints a table of rows, those that stop most first.
func rows[K comparable](w io.Writer, people int, table map[K]*row, name, label func(K) string, keep func(*row) bool) {
	fmt.Fprintf(w, "  %-*s %7s %7s %7s %7s %7s %7s\n", labelWidth, "", "found", "stopped", "alone", "held", "to ask", "limited")
	for _, key := range sorted(table, name) {
		r := table[key]
		if !keep(r) {
			continue
		}
		fmt.Fprintf(w, "  %-*s", labelWidth, label(key))
		for _, n := range []int{r.with, r.stopped, r.alone, r.held, r.sent, r.limited} {
			fmt.Fprintf(w, " %7s", blank(n, people))
		}
		fmt.Fprintln(w)
	}
}

func itself(kind string) string { return kind }

// blank prints a share, and nothing for nobody.
func blank(n, of int) string {
	if n == 0 {
		return "-"
	}
	return fmt.Sprintf("%.2f", 100*float64(n)/float64(of))
}
