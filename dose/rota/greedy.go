package rota

import (
	"math"
	"slices"

	"example.org/posology/dose/week"
)

// A dropped is an exercise left out, and the bounds of the class before that.
type dropped struct {
	spot
	kept             bool // whether everybody has something left
	late, last, most int  // waiting, slots, and those that fit
}

// greedy leaves out one after the other whatever brings the bounds nearest to what is
// wanted. That is the same for all amounts of waiting, and found once.
func (f *fitting) greedy(spots []spot, most, waiting int) *choice {
	var out []spot
	for len(out) <= most {
		if len(out) == len(f.path) && !f.further(spots, out) {
			return nil
		}
		step := f.path[len(out)]
		if step.kept && step.late <= waiting && step.last <= step.most {
			if got := f.try(out, waiting); got != nil {
				return got
			}
		}
		if step.client < 0 {
			return nil
		}
		out = append(out, step.spot)
	}
	return nil
}

// further finds what to leave out next; false where the work is over.
func (f *fitting) further(spots, out []spot) bool {
	if f.outlines.base == nil {
		f.outlines.begin(f.class)
	}
	todo := f.outlines.without(out)
	step := dropped{spot: spot{client: -1}}
	step.late, step.last, step.most, step.kept = f.bounds(todo)
	least := price{}
	for i, s := range spots {
		if *f.work <= 0 {
			return false
		}
		at, bit := f.outlines.at[s.client], uint32(1)<<s.item
		if todo[at]&bit == 0 {
			continue
		}
		todo[at] &^= bit
		late, last, most, kept := f.bounds(todo)
		todo[at] |= bit
		if excess := (price{late, max(0, last-most), i}); kept && (step.client < 0 || excess.compare(least) < 0) {
			step.spot, least = s, excess
		}
	}
	f.path = append(f.path, step)
	return true
}

// bounds are those of the class with the exercises in todo; kept is false where somebody
// has nothing left.
func (f *fitting) bounds(todo []uint32) (late, last, most int, kept bool) {
	*f.work -= len(f.class.Clients)
	if slices.Contains(todo, 0) {
		return 0, 0, 0, false
	}
	p, seconds := f.outlines.of(todo)
	*f.work -= len(f.outlines.items) + len(p.needs)*len(todo)
	late, last = p.bound(todo)
	return late, last, f.slots(seconds), true
}

// slots is how many of so many seconds fit.
func (f *fitting) slots(seconds int) int {
	return (f.minutes*60 + week.ChangeSeconds) / (seconds + week.ChangeSeconds)
}

// shortestOnly keeps of each client the shortest exercise, whatever waiting that is.
func (f *fitting) shortestOnly() *choice {
	var out []spot
	for i, client := range f.class.Clients {
		least := 0
		for j, item := range client.Items {
			if f.class.length(item) < f.class.length(client.Items[least]) {
				least = j
			}
		}
		for j := range client.Items {
			if j != least {
				out = append(out, spot{i, j})
			}
		}
	}
	return f.try(out, math.MaxInt)
}
