package main

import (
	"fmt"
	"strconv"

	"example.org/posology/progression/simulate"
)

const title = `POLICIES OF DOSE ON INVENTED PEOPLE: %d OF EACH KIND, %d WEEKS OF TWO VISITS

`

const legend = `The people are arithmetic and invented: nobody did any of it, no figure is a finding
about real people, and no policy but the module's own is for anybody to follow. A row
with one arm by novices of 66; 1RM 6 to 20 kg with steps of 1 kg, 5 to 11 with the
next two kits, 3.5 to 6 with one dumbbell of 3 kg. Person n is the same in every table.
  typical       alike in all but strength; end sets by feel
  mixed         growth, days, telling and curve differ; a tenth of the visits is missed
  true-telling  typical, but the reserve is told true on average
  stubborn      do the count printed, whatever they feel; typical, or mixed
Two policies know what nobody can: what a kit permits, eight times with three left, and
what of it the chance leaves that the module's doses are kept to (truth by chance).
A visit works with two sets or more, at least half of them at 60 % of the true 1RM or
more or with five or fewer truly left, and none above 25 repetitions: a definition of
ours. What is gained knows no such edge.
  works   % of visits from week 3 on that work, while a weight of half the 1RM is there
  gain    % of the 1RM, mean     first   week of the first of three working visits in
  share   % of the true 1RM, from week 9         four: median, 90th percentile
  <2 <1   % of working sets that end truly under two left; under one, or failed
  fail    % of working sets whose count could not be finished
  more    % of visits from week 9 on when a heavier weight (12 % or more with steps of
          1 kg) could be lifted eight times with three left
  vain    sets in which a weight could not be lifted once, per 100 people
  away    % of people sent to another exercise or to somebody, or refused: their
          visits after that count as not working
  under   % of people of whose visits from week 9 on fewer than half work
`

const columns = `                                  works  gain   first  share    <2    <1  fail  more  vain  away under
`

func (s scene) heading() string {
	text := "\n" + s.kit.name
	if s.estimated {
		text += ", an estimate of the 1RM given"
	}
	return text + "; " + heading[s.place] + "\n"
}

// row is one row of a table.
func row(people, policy string, t simulate.Toll) string {
	return fmt.Sprintf("%-14s %-17s %6.1f %5.1f %3s %3s %6.1f %5.1f %5.2f %5.2f %5.1f %5.0f %5.1f %5.1f\n", people, policy,
		t.Working, t.Gain, week(t.Median), week(t.P90), t.Share, t.Near, t.Close, t.Failed, t.Heavier, t.Vain, t.Elsewhere, t.Undertreated)
}

// week prints a week, or that it did not come.
func week(n int) string {
	if n == 0 {
		return "-"
	}
	return strconv.Itoa(n)
}
