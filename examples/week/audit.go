package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose/guideline"
	"example.org/posology/units"
)

// tableLines are the lines of the audit, in their order.
var tableLines = []struct {
	item  guideline.Field
	label string
	name  string // where it is not the field's own
	// beside: shown for lifting alone too, and whether or not a column bounds it.
	beside bool
}{
	{guideline.FieldDays, "strength days", "", false},
	{guideline.FieldSessionsPerDay, "sessions a day", "sessions a day", false},
	{guideline.FieldExercises, "exercises", "", false},
	{guideline.FieldSets, "sets, exercise", "", false},
	{guideline.FieldWeeklySets, "sets, muscle", "", false},
	{guideline.FieldPerMuscle, "exer. a muscle", "exercises per muscle", false},
	{guideline.FieldReps, "repetitions", "repetitions", false},
	{guideline.FieldLoad, "load, % of 1RM", "", false},
	{guideline.FieldRM, "load as RM", "repetition maximum", false},
	{guideline.FieldReserve, "in reserve", "", false},
	{guideline.FieldEffort, "rated effort", "", false},
	{guideline.FieldRepSeconds, "seconds a rep.", "seconds per repetition", false},
	{guideline.FieldLiftSeconds, "seconds up", "seconds of lifting", false},
	{guideline.FieldLowerSeconds, "seconds down", "seconds of lowering", false},
	{guideline.FieldRest, "rest, seconds", "", false},
	{guideline.FieldRestBetween, "rest, exercises", "rest between exercises", false},
	{guideline.FieldRestInSet, "rest in a set", "rest within a set", false},
	{guideline.FieldHoursBetween, "hours between", "hours between sessions", false},
	{guideline.FieldMinutes, "session minutes", "", false},
	{guideline.FieldBalanceDays, "balance days", "", true},
	{guideline.FieldAerobic, "aerobic minutes", "", true},
	{guideline.FieldImpacts, "impacts", "", true},
}

// Widths of the table's parts; the whole is 100 columns.
const (
	labelWidth = 16
	foundWidth = 7
	cellWidth  = 13
)

var legend = []struct{ mark, means string }{
	{"week", "what this plan holds, from the least to the most"},
	{"met 2-3", "within what the guideline states, which stands behind the word"},
	{"proposed", "spoken of in this plan without a dose"},
	{"short", "less than it states"},
	{"over", "more than it states"},
	{"mixed", "some exercises less, some more"},
	{"*", "not so for all exercises: see one by one"},
	{"?", "it states a bound, and sets alone do not tell whether that is kept"},
	{"n/c", "not comparable: counted otherwise, or on another scale"},
	{"-", "not stated"},
	{"lifting alone", "the line above without what the plan puts beside lifting"},
}

func printAudit(s sheet, r result) {
	s.Heading("This week against six guidelines")
	for i, c := range r.Columns {
		printKey(s, i, c)
	}
	s.line("\n%s", row("", "", letters(r.Columns)))
	s.line("%s", row("", "", names(r.Columns, 0)))
	s.line("%s", row("", "week", names(r.Columns, 1)))
	s.line("%s", strings.Repeat("-", labelWidth+foundWidth+cellWidth*len(r.Columns)-1))
	var silent []string
	for _, l := range tableLines {
		cells := cellsOf(r.Columns, l.item, planned)
		if !l.beside && !slices.ContainsFunc(cells, func(c string) bool { return c != unsaid }) {
			silent = append(silent, cmp.Or(l.name, strings.ReplaceAll(l.item.String(), "_", " ")))
			continue
		}
		s.line("%s", row(l.label, found(r.Columns, l.item, planned), cells))
		if l.beside {
			s.line("%s", row("  lifting alone", found(r.Columns, l.item, alone), cellsOf(r.Columns, l.item, alone)))
		}
	}
	printAlone(s, r.Columns)
	s.line("")
	for _, l := range legend {
		s.Say(fmt.Sprintf("  %-15s", l.mark), l.means)
	}
	s.line("")
	s.Say("", "A guideline for other people does not bind this person; it shows what it would ask for.")
	if len(silent) > 0 {
		s.line("")
		s.Say("None of the six speaks of: ", strings.Join(silent, ", ")+".")
	}
	printExceptions(s, r.Columns)
	printOpposed(s, r.Columns)
}

func printKey(s sheet, i int, c column) {
	g, err := guideline.Get(c.Guideline)
	if err != nil {
		return // a result read back may name a row that there is no more
	}
	text := fmt.Sprintf("%s: %s, %d. For: %s. Shown for: %s. Numbers: %s.", g.ID, g.Body, g.Year, g.Population, c.Why, g.Basis)
	if len(g.SupersededBy) > 0 {
		text += fmt.Sprintf(" Superseded by %s.", g.SupersededBy[0])
	}
	s.Say(letter(i)+"  ", text)
}

// printAlone says what lifting alone leaves unmet.
func printAlone(s sheet, columns []column) {
	var parts []string
	for _, l := range tableLines {
		for i, cell := range cellsOf(columns, l.item, alone) {
			if l.beside && strings.HasPrefix(cell, "short") {
				parts = append(parts, fmt.Sprintf("%s for %s (%s)", l.label, letter(i), strings.TrimPrefix(cell, "short ")))
			}
		}
	}
	s.line("")
	if len(parts) > 0 {
		s.Say("Lifting alone does not meet: ", strings.Join(parts, ", ")+".")
	}
	s.Say("", "Guidelines of public health ask for aerobic minutes too. Those of the WHO are held here; where another's line has none, read it there.")
}

func letter(i int) string { return string(rune('A' + i)) }

func letters(columns []column) []string {
	var list []string
	for i := range columns {
		list = append(list, letter(i))
	}
	return list
}

// names returns who speaks (part 0) and the year (part 1), from the first part
// of the ID, such as "acsm2009".
func names(columns []column, part int) []string {
	var list []string
	for _, c := range columns {
		head, _, _ := strings.Cut(string(c.Guideline), "-")
		cut := strings.IndexAny(head, "0123456789")
		if cut < 0 {
			cut = len(head)
		}
		list = append(list, []string{head[:cut], head[cut:]}[part])
	}
	return list
}

func row(label, found string, cells []string) string {
	line := fmt.Sprintf("%-*s%-*s", labelWidth, label, foundWidth, found)
	for _, c := range cells {
		line += fmt.Sprintf("%-*s", cellWidth, c)
	}
	return strings.TrimRight(line, " ")
}

func planned(c column) guideline.Report { return c.Plan }
func alone(c column) guideline.Report   { return c.Alone }

func findings(r guideline.Report, item guideline.Field) []guideline.AuditLine {
	var list []guideline.AuditLine
	for _, f := range r.Findings {
		if f.Item == item {
			list = append(list, f)
		}
	}
	return list
}

// found returns what the week holds of an item, over all that any column tells.
func found(columns []column, item guideline.Field, of func(column) guideline.Report) string {
	var all []float64
	for _, c := range columns {
		for _, f := range findings(of(c), item) {
			if low, ok := f.Found.Min(); ok {
				high, _ := f.Found.Max()
				all = append(all, low, high)
			}
		}
	}
	if len(all) == 0 {
		return ""
	}
	return bounds(units.Must(units.Between(slices.Min(all), slices.Max(all))), item)
}

// bounds prints a range in few letters: "2-3", "≥2", "60-80".
func bounds(r units.Range[float64], item guideline.Field) string {
	text := func(x float64) string {
		if item == guideline.FieldLoad {
			return fmt.Sprintf("%.0f", 100*x)
		}
		return fmt.Sprintf("%.3g", x)
	}
	low, hasLow := r.Min()
	high, hasHigh := r.Max()
	switch {
	case hasLow && hasHigh && text(low) == text(high):
		return text(low)
	case hasLow && hasHigh:
		return text(low) + "-" + text(high)
	case hasLow:
		return "≥" + text(low)
	case hasHigh:
		return "≤" + text(high)
	}
	return ""
}

// unsaid marks what a guideline does not state.
const unsaid = "-"

var short = map[guideline.Verdict]string{
	guideline.Met: "met", guideline.Short: "short", guideline.Over: "over",
	guideline.NotStated: unsaid, guideline.NotRecorded: "?", guideline.NotComparable: "n/c", guideline.Proposed: "proposed",
}

func cellsOf(columns []column, item guideline.Field, of func(column) guideline.Report) []string {
	var list []string
	for _, c := range columns {
		list = append(list, cell(findings(of(c), item)))
	}
	return list
}

// cell sums up the findings of an item in one column: what is not met before
// what is, with a star where they do not agree.
func cell(list []guideline.AuditLine) string {
	var seen []guideline.Verdict
	for _, f := range list {
		if !slices.Contains(seen, f.Verdict) {
			seen = append(seen, f.Verdict)
		}
	}
	if len(seen) == 0 {
		return unsaid
	}
	slices.SortFunc(seen, func(a, b guideline.Verdict) int { return cmp.Compare(weight[a], weight[b]) })
	text := short[seen[0]]
	if slices.Contains(seen, guideline.Short) && slices.Contains(seen, guideline.Over) {
		text = "mixed"
	}
	if b := bounds(list[0].Bound, list[0].Item); b != "" {
		text += " " + b
	}
	if len(seen) > 1 {
		text += "*"
	}
	if low, has := list[0].Bound.Min(); has && seen[0] == guideline.Short && len(text) >= cellWidth {
		text = fmt.Sprintf("short of %.3g", low) // the whole range leaves no room between cells
	}
	return text
}

// weight orders verdicts by what a reader must see first.
var weight = map[guideline.Verdict]int{
	guideline.Short: 1, guideline.Over: 2, guideline.NotComparable: 3, guideline.Proposed: 4, guideline.Met: 5, guideline.NotRecorded: 6, guideline.NotStated: 7,
}
