package main

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
)

// printExceptions lists, for every cell with a star, which exercises or
// muscles are how. Columns that say the same share a line.
func printExceptions(s sheet, columns []column) {
	var texts []string
	letters := map[string][]string{}
	for _, l := range tableLines {
		for i, c := range columns {
			list := findings(c.Plan, l.item)
			if text := exceptions(l.label, list); text != "" {
				if !slices.Contains(texts, text) {
					texts = append(texts, text)
				}
				letters[text] = append(letters[text], letter(i))
			}
		}
	}
	if len(texts) == 0 {
		return
	}
	s.line("\n* One by one:")
	for _, text := range texts {
		s.Say("- "+strings.Join(letters[text], ", ")+": ", text)
	}
}

func exceptions(label string, list []guideline.AuditLine) string {
	if !strings.HasSuffix(cell(list), "*") {
		return ""
	}
	var parts []string
	for _, v := range []guideline.Verdict{guideline.Short, guideline.Over, guideline.NotRecorded, guideline.NotComparable, guideline.Met} {
		var of []string
		for _, f := range list {
			if f.Verdict == v {
				of = append(of, strings.TrimSpace(fmt.Sprintf("%s %s", plain(f.Of), bounds(f.Found, f.Item))))
			}
		}
		switch {
		case v == guideline.Met && len(of) > 3:
			parts = append(parts, fmt.Sprintf("met in the other %d", len(of)))
		case len(of) > 0:
			parts = append(parts, called[v]+" "+strings.Join(of, ", "))
		}
	}
	return fmt.Sprintf("%s: %s", label, strings.Join(parts, "; "))
}

// plain turns the ID of an exercise or the code of a muscle into words.
func plain(code string) string {
	if ex, ok := exercise.Standard().Get(exercise.ID(code)); ok {
		return ex.Name
	}
	return strings.NewReplacer("-", " ", "_", " ").Replace(code)
}

// called are the verdicts in full, in a list.
var called = map[guideline.Verdict]string{
	guideline.Short: "short", guideline.Over: "over", guideline.Met: "met",
	guideline.NotRecorded: "not known", guideline.NotComparable: "not comparable",
}

// printOpposed prints what is the same in every column.
func printOpposed(s sheet, columns []column) {
	if len(columns) == 0 {
		return
	}
	s.line("")
	var parts []string
	for _, item := range []guideline.Field{guideline.FieldPushPull, guideline.FieldSquatHinge} {
		for _, f := range findings(columns[0].Plan, item) {
			n, _ := f.Found.Min()
			text := fmt.Sprintf("%s %g", plain(f.Of), n)
			if f.Verdict == guideline.Short {
				text += " (short: the other goes without it)"
			}
			parts = append(parts, text)
		}
	}
	s.Say("Opposed movements, sets a week: ", strings.Join(parts, ", ")+".")
	for _, f := range findings(columns[0].Plan, guideline.FieldSides) {
		if n, _ := f.Found.Min(); f.Verdict == guideline.Met {
			s.line("Left and right: as many sets of every exercise.")
		} else {
			s.Say("Left and right: ", fmt.Sprintf("%s has only %g sets.", plain(f.Of), n))
		}
	}
}
