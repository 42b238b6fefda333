package exercise

import (
	"encoding/json"
	"fmt"
	"iter"
	"slices"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A Catalogue is a set of exercises that can be looked up by ID, name and
// alias. It is an immutable value, safe for concurrent use; the zero value is
// empty. Its JSON is the list of its exercises.
type Catalogue struct {
	listed []Exercise     // in order of listing
	byID   map[ID]int     // place in listed
	byName map[string]int // by folded ID, name and alias
	order  []int          // places in order of pattern, then listing
}

// fold is how names are compared: without regard to case and outer spaces.
func fold(name string) string { return strings.ToLower(strings.TrimSpace(name)) }

// With returns a catalogue that holds the exercises of c and ex. It reports
// every bad field at once, with paths such as "/0/easier" that count from the
// first of ex: what [Exercise.Validate] reports; an ID, name or alias that
// another exercise has, an [units.ErrDuplicate]; an easier or harder step that
// is in neither c nor ex, an [units.ErrUnknown]; and steps that lead back to
// where they began, an [units.ErrConflict].
func (c Catalogue) With(ex ...Exercise) (Catalogue, error) {
	n := Catalogue{listed: slices.Clone(c.listed), byID: map[ID]int{}, byName: map[string]int{}}
	for _, e := range ex {
		n.listed = append(n.listed, e.clone())
	}
	var bad units.FieldErrors
	for i, e := range n.listed {
		path := fmt.Sprintf("/%d", i-len(c.listed))
		bad.Add(path, e.Validate())
		bad.Add(path, n.enter(i))
	}
	for i, e := range n.listed[len(c.listed):] {
		path := fmt.Sprintf("/%d", i)
		bad.Add(path+"/easier", n.checkStep(e.Easier))
		bad.Add(path+"/harder", n.checkStep(e.Harder))
	}
	if len(bad) == 0 {
		bad.Add("", n.checkRings(len(c.listed)))
	}
	if len(bad) > 0 {
		return Catalogue{}, bad.Err()
	}
	n.sort()
	return n, nil
}

// enter takes the names of the exercise at place i into the indices.
func (c Catalogue) enter(i int) error {
	var bad units.FieldErrors
	e := c.listed[i]
	if _, twice := c.byID[e.ID]; !twice {
		c.byID[e.ID] = i
	}
	take := func(path, name string) {
		if name == "" {
			return // reported as missing
		}
		if other, twice := c.byName[fold(name)]; twice && other != i {
			bad.Add(path, units.Field("", fmt.Sprintf("%q", name), "a name that "+string(c.listed[other].ID)+" does not have", units.ErrDuplicate))
			return
		}
		c.byName[fold(name)] = i
	}
	take("/id", string(e.ID))
	take("/name", e.Name)
	for k, alias := range e.Aliases {
		take(fmt.Sprintf("/aliases/%d", k), alias)
	}
	return bad.Err()
}

func (c Catalogue) checkStep(id ID) error {
	if _, known := c.byID[id]; id == "" || known {
		return nil
	}
	return units.Field("", fmt.Sprintf("%q", id), "the ID of an exercise in the catalogue", units.ErrUnknown)
}

func (c *Catalogue) sort() {
	c.order = make([]int, len(c.listed))
	for i := range c.order {
		c.order[i] = i
	}
	slices.SortStableFunc(c.order, func(a, b int) int {
		return int(c.listed[a].Pattern) - int(c.listed[b].Pattern)
	})
}

// Len returns the number of exercises.
func (c Catalogue) Len() int { return len(c.listed) }

// Get returns the exercise with the given ID, and whether there is one.
func (c Catalogue) Get(id ID) (Exercise, bool) {
	i, ok := c.byID[id]
	if !ok {
		return Exercise{}, false
	}
	return c.listed[i].clone(), true
}

// All yields the exercises in order of pattern, then listing: the order in
// which a session takes them.
func (c Catalogue) All() iter.Seq[Exercise] {
	return func(yield func(Exercise) bool) {
		for _, i := range c.order {
			if !yield(c.listed[i].clone()) {
				return
			}
		}
	}
}

// clone keeps what the catalogue holds apart from what callers hold.
func (e Exercise) clone() Exercise {
	e.Aliases = slices.Clone(e.Aliases)
	e.Muscles = slices.Clone(e.Muscles)
	e.Facts = slices.Clone(e.Facts)
	e.Warnings = slices.Clone(e.Warnings)
	for i, w := range e.Warnings {
		e.Warnings[i] = evidence.Reason{Code: w.Code, Args: slices.Clone(w.Args), Facts: slices.Clone(w.Facts)}
	}
	return e
}

// MarshalJSON writes the exercises in order of listing.
func (c Catalogue) MarshalJSON() ([]byte, error) {
	if c.listed == nil {
		return []byte("[]"), nil
	}
	return json.Marshal(c.listed)
}

// UnmarshalJSON reads a list of exercises and reports what [Catalogue.With]
// reports.
func (c *Catalogue) UnmarshalJSON(data []byte) error {
	var list []Exercise
	if err := units.DecodeJSON(data, &list); err != nil {
		return err
	}
	got, err := Catalogue{}.With(list...)
	if err != nil {
		return err
	}
	*c = got
	return nil
}
