package exercise

import (
	"cmp"
	"fmt"
	"strings"

	"example.org/posology/units/field"
)

// Lookup returns the exercise with the given ID, name or alias, without regard
// to case and outer spaces. A name that is not known is a [field.ErrUnknown];
// what is allowed names those that have its words, or the one that is a slip of
// the pen away, as [field.DidYouMean] does.
func (c Catalogue) Lookup(name string) (Exercise, error) {
	if i, ok := c.byName[fold(name)]; ok {
		return c.listed[i].clone(), nil
	}
	allowed := cmp.Or(field.DidYouMean(name, c.names), "an exercise of the catalogue, by ID, name or alias")
	return Exercise{}, field.Bad(fmt.Sprintf("%.40q", name), allowed, field.ErrUnknown)
}

// names yields every ID with what the exercise is called, one by one and together.
func (c Catalogue) names(yield func(id, text string) bool) {
	for _, e := range c.listed {
		called := append([]string{string(e.ID), e.Name}, e.Aliases...)
		for _, text := range append(called, strings.Join(called, " ")) {
			if !yield(string(e.ID), text) {
				return
			}
		}
	}
}
