package main

import (
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/units"
)

const daysInWeek = 7

func trains(days []units.Day, d units.Day) bool { return slices.Contains(days, d) }

// besides lays what belongs beside the sessions on the days of the week.
func besides(week dose.Week, sessions []units.Day, monday units.Day) [daysInWeek][]string {
	var out [daysInWeek][]string
	for _, b := range week.Beside {
		for _, i := range placed(b, sessions, monday) {
			out[i] = append(out[i], besideText(b))
		}
	}
	return out
}

// placed returns the days of an activity: brisk movement on the days without a
// session; balance and impact with the sessions, and balance on further days
// while it needs more.
func placed(b dose.Beside, sessions []units.Day, monday units.Day) []int {
	var with, without []int
	for i := range daysInWeek {
		if trains(sessions, monday+units.Day(i)) {
			with = append(with, i)
		} else {
			without = append(without, i)
		}
	}
	switch need, _ := b.Days.Min(); {
	case b.Kind == dose.Aerobic:
		return without
	case len(with) < need:
		return append(with, without[:need-len(with)]...)
	default:
		return with
	}
}

func besideText(b dose.Beside) string {
	switch b.Kind {
	case dose.Balance:
		return "balance practice"
	case dose.Impact:
		return b.Amount.String() + " impacts"
	}
	return "brisk walking or other movement"
}

func listed(what []string) string {
	if len(what) == 0 {
		return "rest"
	}
	return strings.Join(what, "; ")
}
