package main

import (
	"cmp"
	"errors"
	"fmt"
	"slices"

	"example.org/posology/dose/week"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/units"
)

// apart reports whether a day of rest comes between any two days, round the week.
func apart(days []units.Day) bool {
	for i, next := range append(slices.Clone(days[1:]), days[0]+aWeek) {
		if next-days[i] < week.DaysBetween {
			return false
		}
	}
	return true
}

// move takes other days, or minutes, into the plan in force: a visit that was decided for is decided again where they begin before it.
func (s *session) move(decided error) error {
	days, minutes, last := s.r.Days, s.r.Minutes, s.r.Entries[len(s.r.Entries)-1].Day
	err := s.days("The next visit was decided for. Do the days change, and to which, from when on? Nothing: as before.", false)
	first := slices.Min(s.r.Days)
	switch s.changes = !slices.Equal(days, s.r.Days) || minutes != s.r.Minutes; {
	case err != nil || !s.changes:
		return cmp.Or(err, decided)
	case !s.r.Brief && !apart(s.r.Days):
		return errors.New("at least one day of rest comes between two sessions")
	case first <= last:
		return s.decide(func(record.Review) error { return nil })
	case first-last < week.DaysBetween:
		return fmt.Errorf("the visit of %s was decided for: at least one day of rest comes after it", page.Day(last))
	}
	page.Wrap(s.said, "", fmt.Sprintf("The visit of %s stays; the new days begin after it.", page.Day(last)))
	return s.keep()
}
