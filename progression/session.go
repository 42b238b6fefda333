package progression

import (
	"cmp"
	"slices"
	"strconv"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/units/field"
)

const (
	mostRises    = 2 // loads at one visit
	mostFinds    = 2 // loads that are looked for or felt at one visit
	newUnwatched = 1 // exercises at one visit
	newWatched   = 2 // where a named person watches that day
)

// NextAll decides on all exercises of one visit, as [Next] on each, except that at
// most two loads rise, two are looked for or felt, and at most one exercise is new, two where all courses name
// somebody who will watch. Those loads rise that did not for longest, of those alike the ones with the
// smallest steps, of all that is moved, and those exercises are new that take the place of one that cannot go on;
// the first given where they are alike. The others wait, and say so: what could be
// harder holds, and what cannot go on is left out for this visit. A movement without
// weight in place of what cannot go on does not count as new. What one course has, or has
// new, takes no place in another. What in one
// course is for somebody else first holds for all. Decisions stand in the order
// of the courses; bad input is reported for all at once, and then there are none.
func NextAll(courses []Course) ([]Decision, error) { return ofDay(courses, nextAll) }

// nextAll is NextAll, without what is the day's alone.
func nextAll(courses []Course) ([]Decision, error) {
	list := make([]Decision, len(courses))
	var bad field.Errors
	var waits [findWaits + 1][]int // which exercises may, for what
	var kit equipment.Kit
	taken := map[exercise.ID]exercise.ID{} // asked for or new, by which exercise
	for i := range courses {
		taken[courses[i].Request.Exercise.ID] = courses[i].Request.Exercise.ID
	}
	one := func(i int, waits waiting) Decision {
		c := courses[i]
		kit = c.Request.Kit.Once(kit)
		c.Request.Kit = kit
		d, err := decide(&c, waits, taken)
		bad.Add("/"+strconv.Itoa(i), err)
		list[i] = d
		return d
	}
	for i := range courses {
		d := one(i, nothingWaits)
		if d.Instead != "" {
			taken[d.Instead] = courses[i].Request.Exercise.ID
		}
		waits[mayWait(d)] = append(waits[mayWait(d)], i)
	}
	if err := bad.Err(); err != nil {
		return nil, err
	}
	if refers := slices.IndexFunc(list, func(d Decision) bool { return d.Action == StopAndRefer }); refers >= 0 {
		why := list[refers].Reasons // it is the person who is sent on, not the exercise
		for i := range list {
			list[i] = Decision{}.refer(why...)
		}
		return list, nil
	}
	slices.SortStableFunc(waits[loadWaits], func(a, b int) int {
		one, other := courses[a].history(), courses[b].history()
		return cmp.Or(cmp.Compare(one.LastRise(), other.LastRise()), cmp.Compare(list[a].Rise.share(), list[b].Rise.share()))
	})
	slices.SortStableFunc(waits[newWaits], func(a, b int) int { return cmp.Compare(list[a].Change, list[b].Change) })
	for what, most := range [...]int{nothingWaits: len(courses), loadWaits: mostRises, newWaits: mostNew(courses), findWaits: mostFinds} {
		for _, i := range waits[what][min(most, len(waits[what])):] {
			one(i, waiting(what))
		}
	}
	if err := bad.Err(); err != nil {
		return nil, err
	}
	return list, nil
}

// mayWait is what an exercise has to wait for where there is too much of it at a visit. An
// easier movement without weight is no more to learn than the first visit asks, and
// leaving it out would leave the person with nothing to do.
func mayWait(d Decision) waiting {
	switch {
	case d.Change == MoreLoad:
		return loadWaits
	case d.Change == FindLoad && d.Next != nil && (d.Next.Finding != nil || d.Next.Feel != nil):
		return findWaits
	case d.Action == ChangeVariant && (d.Change == HarderVariant || d.Next.Mode != dose.WithoutLoad):
		return newWaits
	}
	return nothingWaits
}

// mostNew returns how many exercises may be new at the visit.
func mostNew(courses []Course) int {
	if slices.ContainsFunc(courses, func(c Course) bool { return !c.Watched.Made() }) {
		return newUnwatched
	}
	return newWatched
}
