package dose

import (
	"slices"

	"example.org/posology/dose/beside"
)

// fast reports whether the lifts go up fast: in the phase Power, where nothing that
// package beside knows of bars it.
func (r *Request) fast() bool {
	if r.phase() != Power {
		return false
	}
	items, _, err := beside.Start(beside.Situation{Day: r.Day, Screening: r.Screening, Goal: r.Goal, Fast: true, Known: r.Known})
	return err == nil && slices.ContainsFunc(items, func(i beside.Item) bool { return i.Track == "lifts" && !i.Paused })
}
