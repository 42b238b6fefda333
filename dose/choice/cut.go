package choice

import (
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// How many exercises a list has.
const (
	most   = 10 // the upper end of what guidelines for older adults name
	least  = 8  // the lower end
	little = 5  // for who comes little
)

// cut shortens the list: what the others train too goes first, from the end, then
// simply the last. Who comes little keeps one of the legs, the pull and the push,
// and begins with what is wanted most.
func (c *chooser) cut() {
	switch {
	case c.r.Little:
		c.keepFew()
		return
	case slices.Contains(c.found, frailty):
		for len(c.order) > least && c.drop(func(s slot) bool { return !c.asked[s] && c.spare(s) }) {
		}
	}
	for len(c.order) > most {
		_ = c.drop(func(s slot) bool { return !c.asked[s] && c.spare(s) }) || c.drop(c.spare) || c.drop(func(s slot) bool { return s != pull })
	}
}

// drop cuts the last slot that may go, and reports whether there was one.
func (c *chooser) drop(may func(slot) bool) bool {
	for i := len(c.order) - 1; i >= 0; i-- {
		if s := c.order[i]; may(s) {
			c.left = append(c.left, s)
			c.order = slices.Delete(c.order, i, i+1)
			return true
		}
	}
	return false
}

func (c *chooser) keepFew() {
	keep := []slot{c.order[slices.IndexFunc(c.order, ofLegs)], pull, push}
	for _, s := range c.order {
		if len(keep) < little && !slices.Contains(keep, s) {
			keep = append(keep, s)
		}
	}
	for c.drop(func(s slot) bool { return !slices.Contains(keep, s) }) {
	}
}

// ofLegs reports whether the slot trains the large muscles of the legs.
func ofLegs(s slot) bool { return s == rise || s == step || s == hinge }

// spare reports whether each main muscle that the slot trains is trained by another
// of the list.
func (c *chooser) spare(s slot) bool {
	return !slices.ContainsFunc(mainMuscles, func(group []body.Muscle) bool {
		return c.trains(s, group) && !slices.ContainsFunc(c.order, func(o slot) bool { return o != s && c.trains(o, group) })
	})
}

// trains reports whether the slot's exercise works one of the muscles, as prime
// or synergist.
func (c *chooser) trains(s slot, group []body.Muscle) bool {
	ex, _ := exercise.Standard().Get(c.variant[s])
	return slices.ContainsFunc(ex.Muscles, func(w exercise.Work) bool {
		return w.Role < exercise.Stabiliser && slices.Contains(group, w.Muscle)
	})
}

// reasons say what the list as a whole goes by, and what is aimed at beside it.
func (c *chooser) reasons() []evidence.Reason {
	var list []evidence.Reason
	if !c.r.Named {
		list = c.listReasons()
	}
	for _, t := range c.templates() {
		if t.aim != "" {
			list = append(list, c.floorAim(t))
		}
	}
	return list
}

func (c *chooser) listReasons() []evidence.Reason {
	made := evidence.Because(codeMade, factOrder, factMost, factManySource).With(evidence.Terms("tasks", textsOf(c.r.Tasks)...), evidence.Terms("concerns", textsOf(c.found)...), evidence.Count("n", len(c.order)))
	list := []evidence.Reason{made}
	if c.r.Little {
		list = append(list, evidence.Because(codeFew, factFew, factFewSource).With(evidence.Count("n", len(c.order))))
	}
	if len(c.left) > 0 {
		ids := make([]string, len(c.left))
		for i, s := range c.left {
			ids[i] = string(c.variant[s])
		}
		list = append(list, evidence.Because(codeLeft, factMost).With(evidence.Terms("exercises", ids...)))
	}
	return list
}

// floorAim says that getting up from the floor is practised by steps, and that it
// waits where nothing is done on the floor.
func (c *chooser) floorAim(t named) evidence.Reason {
	code := t.aim
	if o := c.r.Screening; o.Limits.Avoid.Has(body.FloorTransfer) || o.Meanwhile > screening.WithinLimits || o.Setting <= screening.WithHelper {
		code = codeFloorLater
	}
	return evidence.Because(code, factFloorChain, factFloorSteps, factNotOnFloor)
}

// textsOf returns the texts, and "none" for none.
func textsOf[T interface{ String() string }](list []T) []string {
	if len(list) == 0 {
		return []string{"none"}
	}
	texts := make([]string, len(list))
	for i, v := range list {
		texts[i] = v.String()
	}
	return texts
}
