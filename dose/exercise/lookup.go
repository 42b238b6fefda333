package exercise

import (
	"fmt"

	"example.org/posology/units/field"
)

// Lookup returns the exercise with the given ID, name or alias, without regard
// to case and outer spaces. A name that is not known is an [field.ErrUnknown];
// if it is a slip of the pen away from a known one, what is allowed names that.
func (c Catalogue) Lookup(name string) (Exercise, error) {
	if i, ok := c.byName[fold(name)]; ok {
		return c.listed[i].clone(), nil
	}
	allowed := "an exercise of the catalogue, by ID, name or alias"
	if near, ok := c.near(fold(name)); ok {
		allowed = "did you mean " + string(near)
	}
	return Exercise{}, field.Bad(fmt.Sprintf("%.40q", name), allowed, field.ErrUnknown)
}

// maxNear is the longest name that is searched for near misses, in bytes.
const maxNear = 60

// near returns the exercise one of whose names is the fewest slips away from
// name, the first in order of listing among equals, and false if all are more
// than a third of the name away.
func (c Catalogue) near(name string) (ID, bool) {
	if len(name) > maxNear {
		return "", false
	}
	given, best, found := []rune(name), len(name)/3+1, ID("")
	for _, e := range c.listed {
		for _, known := range append([]string{string(e.ID), e.Name}, e.Aliases...) {
			letters := []rune(fold(known))
			if more := len(letters) - len(given); more >= best || -more >= best {
				continue // so many slips at least
			}
			if d := slips(given, letters); d < best {
				best, found = d, e.ID
			}
		}
	}
	return found, found != ""
}

// slips counts the letters to put in, leave out or change between a and b
// (Levenshtein's distance).
func slips(a, b []rune) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i, x := range a {
		diagonal := row[0]
		row[0] = i + 1
		for j, y := range b {
			change := diagonal
			if x != y {
				change++
			}
			diagonal = row[j+1]
			row[j+1] = min(change, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(b)]
}
