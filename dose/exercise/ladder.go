package exercise

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Ladder returns the steps down from the exercise, the exercise and the steps
// up, easiest first. An ID that is not in the catalogue has no steps.
func (c Catalogue) Ladder(id ID) []Exercise {
	start := c.at(id)
	if start == nil {
		return nil
	}
	var steps []Exercise
	for e := start; e != nil; e = c.at(e.Easier) {
		steps = append(steps, e.clone())
	}
	slices.Reverse(steps)
	for e := c.at(start.Harder); e != nil; e = c.at(e.Harder) {
		steps = append(steps, e.clone())
	}
	return steps
}

// Instead yields what can stand in for the exercise, none of it harder: the
// steps down from it, the nearest first; then, in the order of [Catalogue.All],
// what else has its pattern, has no more steps below it, and is done with the
// body alone or with dumbbells. Machines, bars and bands are left to be asked
// for by name.
func (c Catalogue) Instead(id ID) iter.Seq[Exercise] {
	return func(yield func(Exercise) bool) {
		wanted := c.at(id)
		if wanted == nil {
			return
		}
		below := map[ID]bool{id: true}
		for e := c.at(wanted.Easier); e != nil; e = c.at(e.Easier) {
			below[e.ID] = true
			if !yield(e.clone()) {
				return
			}
		}
		for _, i := range c.order {
			e := &c.listed[i]
			if e.Pattern == wanted.Pattern && !below[e.ID] && e.plain() && c.height(e) < len(below) && !yield(e.clone()) {
				return
			}
		}
	}
}

// height returns the number of steps below e.
func (c Catalogue) height(e *Exercise) int {
	n := 0
	for down := c.at(e.Easier); down != nil; down = c.at(down.Easier) {
		n++
	}
	return n
}

// plain reports whether e is done with the body alone or with dumbbells.
func (e *Exercise) plain() bool {
	switch e.Hold {
	case body.Unloaded, body.OneHand, body.OneEachHand, body.BothHandsOnOne:
		return len(e.Implements) == 0 || slices.Contains(e.Implements, Bodyweight) || slices.Contains(e.Implements, Dumbbell)
	}
	return false
}

// checkRings reports steps that lead back to where they began. Easier and
// harder are taken together: what is a step up from an exercise cannot also
// lead down to it by another way. The errors name the exercises from place
// first on that lie on such a ring or above it.
func (c Catalogue) checkRings(first int) error {
	above := make([][]int, len(c.listed)) // places one step up
	below := make([]int, len(c.listed))   // number of ways up to a place
	link := func(low, high int) {
		above[low] = append(above[low], high)
		below[high]++
	}
	for i, e := range c.listed {
		if j, ok := c.byID[e.Harder]; ok {
			link(i, j)
		}
		if j, ok := c.byID[e.Easier]; ok {
			link(j, i)
		}
	}
	// Take away, over and over, what nothing easier is left for; a ring stays.
	var free []int
	for i, n := range below {
		if n == 0 {
			free = append(free, i)
		}
	}
	for ; len(free) > 0; free = free[1:] {
		for _, j := range above[free[0]] {
			if below[j]--; below[j] == 0 {
				free = append(free, j)
			}
		}
	}
	var bad field.Errors
	for i, n := range below {
		if n > 0 && i >= first && c.listed[i].Easier+c.listed[i].Harder != "" {
			bad.Add(fmt.Sprintf("/%d", i-first), field.New("/harder", c.listed[i].Harder, "steps that do not lead back to where they began", field.ErrConflict))
		}
	}
	return bad.Err()
}
