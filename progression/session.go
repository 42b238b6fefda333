package progression

import (
	"cmp"
	"fmt"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// mostRises is how many loads may rise at one visit.
const mostRises = 2

// referredAny returns what in any of the courses is for somebody else first: it
// is the person who is sent on, not the exercise.
func referredAny(list []Decision) []evidence.Reason {
	for _, d := range list {
		if d.Action == StopAndRefer {
			return d.Reasons
		}
	}
	return nil
}

// Session decides on all exercises of one visit, as [Next] on each, save that at
// most two loads rise: those with the smallest steps, of all that is moved, and
// the first given where they are alike. The others hold, and say so. What in one
// course is for somebody else first holds for all. Decisions stand in the order
// of the courses; bad input is reported for all at once, and then there are none.
func Session(courses []Course) ([]Decision, error) {
	list := make([]Decision, len(courses))
	var bad units.FieldErrors
	var rising []int
	for i, c := range courses {
		d, err := Next(c)
		bad.Add(fmt.Sprintf("/%d", i), err)
		list[i] = d
		if d.Change == MoreLoad {
			rising = append(rising, i)
		}
	}
	if err := bad.Err(); err != nil {
		return nil, err
	}
	if why := referredAny(list); len(why) > 0 {
		for i := range list {
			list[i] = (&next{}).refer(why...)
		}
		return list, nil
	}
	if len(rising) <= mostRises {
		return list, nil
	}
	slices.SortStableFunc(rising, func(a, b int) int { return cmp.Compare(list[a].Step.share(), list[b].Step.share()) })
	for _, i := range rising[mostRises:] {
		d, err := decide(courses[i], true)
		bad.Add(fmt.Sprintf("/%d", i), err)
		list[i] = d
	}
	if err := bad.Err(); err != nil {
		return nil, err
	}
	return list, nil
}
