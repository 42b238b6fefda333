package screening

import (
	"slices"

	"example.org/posology/units"
)

// testsFrom returns the first day whose tests of strength still say something
// after the events and dated conditions that are known on the day: the one
// after the last event, and the day itself where that is later or one has no
// date. It is 0 without any.
func testsFrom(events []Event, conditions Checklist, day units.Day) units.Day {
	var from units.Day
	for _, e := range events {
		if e.Day.IsZero() {
			return day
		}
		from = max(from, min(e.Day+1, day))
	}
	for _, list := range [...][]Code{conditions.Present, conditions.Unsure} {
		for _, code := range list {
			told := slices.ContainsFunc(events, func(e Event) bool { return e.is(code) })
			if e := find(code); e != nil && e.dated != nil && e.dated.test && !told {
				return day
			}
		}
	}
	return from
}
