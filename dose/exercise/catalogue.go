package exercise

import (
	"cmp"
	"encoding/json"
	"fmt"
	"iter"
	"slices"
	"strings"

	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
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
// another exercise has, a [field.ErrDuplicate]; an easier or harder step that
// is in neither c nor ex, a [field.ErrUnknown]; and steps that lead back to
// where they began, a [field.ErrConflict].
func (c Catalogue) With(ex ...Exercise) (Catalogue, error) {
	most := len(c.listed) + len(ex)
	n := Catalogue{listed: append(make([]Exercise, 0, most), c.listed...), byID: make(map[ID]int, most), byName: make(map[string]int, 2*most)}
	for _, e := range ex {
		n.listed = append(n.listed, e.clone())
	}
	var bad field.Errors
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
	var bad field.Errors
	e := c.listed[i]
	if _, twice := c.byID[e.ID]; !twice {
		c.byID[e.ID] = i
	}
	take := func(path, name string) {
		if name == "" {
			return // reported as missing
		}
		if other, twice := c.byName[fold(name)]; twice && other != i {
			bad.Add(path, field.Bad(fmt.Sprintf("%q", name), "a name that "+string(c.listed[other].ID)+" does not have", field.ErrDuplicate))
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
	return field.Bad(fmt.Sprintf("%q", id), "the ID of an exercise in the catalogue", field.ErrUnknown)
}

func (c *Catalogue) sort() {
	c.order = make([]int, len(c.listed))
	for i := range c.order {
		c.order[i] = i
	}
	slices.SortStableFunc(c.order, func(a, b int) int {
		return cmp.Compare(c.listed[a].Pattern, c.listed[b].Pattern)
	})
}

// Len returns the number of exercises.
func (c Catalogue) Len() int { return len(c.listed) }

// Get returns the exercise with the given ID, and whether there is one. What it
// returns is the caller's own copy.
func (c Catalogue) Get(id ID) (Exercise, bool) {
	e := c.at(id)
	if e == nil {
		return Exercise{}, false
	}
	return e.clone(), true
}

// at returns the catalogue's own exercise, which must not be changed, or nil.
func (c Catalogue) at(id ID) *Exercise {
	if i, ok := c.byID[id]; ok {
		return &c.listed[i]
	}
	return nil
}

// Pattern returns the pattern of the exercise with the given ID, and not given
// if there is none. It copies nothing.
func (c Catalogue) Pattern(id ID) Pattern {
	if e := c.at(id); e != nil {
		return e.Pattern
	}
	return 0
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
	e.Implements = slices.Clone(e.Implements)
	e.Muscles = slices.Clone(e.Muscles)
	e.Needs = slices.Clone(e.Needs)
	e.Facts = slices.Clone(e.Facts)
	e.Warnings = cloneReasons(e.Warnings)
	return e
}

// cloneReasons copies list; all its values and facts share one array each,
// since a copy is made for every exercise that is handed out.
func cloneReasons(list []evidence.Reason) []evidence.Reason {
	list = slices.Clone(list)
	values, named := 0, 0
	for _, r := range list {
		values += len(r.Args)
		named += len(r.Facts)
	}
	args, facts := make([]evidence.Arg, 0, values), make([]evidence.FactID, 0, named)
	for _, r := range list {
		args = append(args, r.Args...)
		facts = append(facts, r.Facts...)
	}
	for i, r := range list {
		if n := len(r.Args); r.Args != nil {
			list[i].Args, args = args[:n:n], args[n:]
		}
		if n := len(r.Facts); r.Facts != nil {
			list[i].Facts, facts = facts[:n:n], facts[n:]
		}
	}
	return list
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
	if err := field.Decode(data, &list, field.Strict); err != nil {
		return err
	}
	got, err := Catalogue{}.With(list...)
	return field.Assign(c, got, err)
}
