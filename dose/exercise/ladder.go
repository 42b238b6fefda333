package exercise

import (
	"fmt"
	"slices"

	"example.org/posology/units"
)

// Ladder returns the steps down from the exercise, the exercise and the steps
// up, easiest first. An ID that is not in the catalogue has no steps.
func (c Catalogue) Ladder(id ID) []Exercise {
	e, ok := c.Get(id)
	if !ok {
		return nil
	}
	steps := []Exercise{e}
	for down, ok := c.Get(e.Easier); ok; down, ok = c.Get(down.Easier) {
		steps = append(steps, down)
	}
	slices.Reverse(steps)
	for up, ok := c.Get(e.Harder); ok; up, ok = c.Get(up.Harder) {
		steps = append(steps, up)
	}
	return steps
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
	var bad units.FieldErrors
	for i, n := range below {
		if n > 0 && i >= first && c.listed[i].Easier+c.listed[i].Harder != "" {
			bad.Add(fmt.Sprintf("/%d", i-first), units.Field("/harder", c.listed[i].Harder, "steps that do not lead back to where they began", units.ErrConflict))
		}
	}
	return bad.Err()
}
