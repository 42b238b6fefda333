package main

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose/beside"
	"example.org/posology/dose/week"
	"example.org/posology/examples/internal/page"
	"example.org/posology/units"
)

const daysInWeek = 7

func trains(days []units.Day, d units.Day) bool { return slices.Contains(days, d) }

// besides lays what belongs beside the sessions on the days of the week.
func besides(w week.Week, sessions []units.Day, monday units.Day) [daysInWeek][]string {
	var out [daysInWeek][]string
	minutes := 0
	for _, b := range w.Beside {
		if b.Kind == beside.Balance {
			minutes += b.Minutes
		}
	}
	said := false
	for _, b := range w.Beside {
		text := page.BesideText(b)
		if b.Kind == beside.Balance {
			if said {
				continue // all balance items are done together
			}
			text, said = fmt.Sprintf("balance, %d minutes", minutes), true
		}
		for _, i := range placed(b, sessions, monday) {
			out[i] = append(out[i], text)
		}
	}
	return out
}

// placed returns the days of an item: as many as it asks for, walking on days without a
// session first, all else on those with one first.
func placed(b beside.Item, sessions []units.Day, monday units.Day) []int {
	var with, without []int
	for i := range daysInWeek {
		if trains(sessions, monday+units.Day(i)) {
			with = append(with, i)
		} else {
			without = append(without, i)
		}
	}
	first, then := with, without
	if b.Kind == beside.Aerobic {
		first, then = without, with
	}
	need, _ := b.Days.Min()
	days := append(first, then...)
	return days[:min(need, len(days))]
}

func listed(what []string) string {
	if len(what) == 0 {
		return "rest"
	}
	return strings.Join(what, "; ")
}
