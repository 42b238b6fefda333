package choice

import (
	"maps"
	"slices"
	"sync"

	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// How many exercises a list has.
const (
	most   = 10 // the upper end of what guidelines for older adults name
	frail  = 7  // in frailty, where balance work of the same days comes on top
	little = 5  // for who comes little
	brief  = 4  // of a few minutes a day
)

// cut shortens the list: what the others train too goes first, from the end, and what
// nobody asked for before what somebody did, and what stays of a template after all that the
// others train. Who comes little keeps one of the legs, the pull and the push, who is frail the
// large movements, and each what is wanted most beside them.
func (c *chooser) cut() {
	switch {
	case c.r.Brief:
		c.keepBrief()
		return
	case c.r.Little:
		c.keepFew(little, c.order[slices.IndexFunc(c.order, ofLegs)], pull, push)
		return
	case slices.Contains(c.found, frailty):
		c.drop(func(s slot) bool { return s == carry }) // as a march it is among the balance work
		c.keepFew(frail, rise, pull, hinge, push, calf, side)
		return
	}
	for c.many() > most {
		_ = c.drop(c.unasked(c.doubled)) || c.drop(c.unasked(c.spare)) || c.drop(c.behind(c.doubled)) || c.drop(c.behind(c.spare)) ||
			c.drop(c.spare) || c.drop(c.behind(func(s slot) bool { return s != pull }))
	}
}

// many counts the slots that are possible: one that is not is left out with the reason, and
// takes no place from another.
func (c *chooser) many() int {
	n := 0
	for _, s := range c.order {
		if c.possible(s) {
			n++
		}
	}
	return n
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

// keepFew keeps n slots: those named, which are in every list, and the first of the others.
func (c *chooser) keepFew(n int, keep ...slot) {
	for _, s := range c.order {
		if len(keep) < n && !slices.Contains(keep, s) {
			keep = append(keep, s)
		}
	}
	for c.drop(func(s slot) bool { return !slices.Contains(keep, s) }) {
	}
}

// keepBrief keeps a few that have a form without a weight and for which all is there: one
// of the thighs, else of the legs, the pull, the push where there is a pull beside it, and
// what is wanted most.
func (c *chooser) keepBrief() {
	for c.drop(func(s slot) bool {
		work := worked()[c.variant[s]]
		return work.weight || s != push && !c.there(&work.ex)
	}) {
	}
	legs := slices.IndexFunc(c.order, ofThighs)
	if legs < 0 {
		legs = slices.IndexFunc(c.order, ofLegs)
	}
	keep := []slot{c.order[legs]}
	if slices.Contains(c.order, pull) {
		keep = append(keep, pull, push)
	}
	c.keepFew(brief, keep...)
}

// ofLegs reports whether the slot trains the large muscles of the legs.
func ofLegs(s slot) bool { return ofThighs(s) || s == hinge }

// ofThighs reports whether it trains the front of the thigh among them.
func ofThighs(s slot) bool { return s == rise || s == step }

// unasked narrows may to what no task, concern or goal asks for.
func (c *chooser) unasked(may func(slot) bool) func(slot) bool {
	return func(s slot) bool { return !c.asked[s] && may(s) }
}

// behind narrows may to what does not stay of a template.
func (c *chooser) behind(may func(slot) bool) func(slot) bool {
	return func(s slot) bool { return !c.stays[s] && may(s) }
}

// spare reports whether each main muscle that the slot trains is trained by another
// of the list, be it as a helper; that of the thighs with a weight, where this one has one.
func (c *chooser) spare(s slot) bool {
	for group := range mainMuscles {
		weight := group == thighs && worked()[c.variant[s]].weight
		if c.role(s, group) > 0 && c.others(s, group, weight) == 0 {
			return false
		}
	}
	return true
}

// doubled reports whether another of the list trains each of them no less, and with a
// weight where this one has one.
func (c *chooser) doubled(s slot) bool {
	for group := range mainMuscles {
		if c.role(s, group) > c.others(s, group, worked()[c.variant[s]].weight) {
			return false
		}
	}
	return true
}

// possible reports whether any form of the slot has what it needs.
func (c *chooser) possible(s slot) bool {
	return slices.ContainsFunc(variants[s], func(id exercise.ID) bool {
		ex := worked()[id].ex
		return c.there(&ex)
	})
}

// others is the largest part that another slot of the list has in training the group;
// of those that are possible, and with a weight, where that is asked.
func (c *chooser) others(but slot, group int, weight bool) int {
	part := 0
	for _, s := range c.order {
		if s != but && c.possible(s) && (!weight || worked()[c.variant[s]].weight) {
			part = max(part, c.role(s, group))
		}
	}
	return part
}

// role is 2 where the slot's exercise has a prime muscle in the group, 1 where it has a
// synergist, else 0.
func (c *chooser) role(s slot, group int) int { return worked()[c.variant[s]].parts[group] }

// work is what an exercise does for the main muscles.
type work struct {
	ex     exercise.Exercise // copied once: nobody changes it
	weight bool              // it is done with one
	parts  []int             // in each group
}

// worked tells of each variant what it does.
var worked = sync.OnceValue(func() map[exercise.ID]work {
	part := map[exercise.Role]int{exercise.Prime: 2, exercise.Synergist: 1}
	all := map[exercise.ID]work{}
	for _, id := range slices.Concat(slices.Concat(variants[:]...), slices.Collect(maps.Values(byBand))) {
		ex, _ := exercise.Standard().Get(id)
		one := work{ex, ex.Hold != body.Unloaded, make([]int, len(mainMuscles))}
		for _, w := range ex.Muscles {
			for i, group := range mainMuscles {
				if slices.Contains(group, w.Muscle) {
					one.parts[i] = max(one.parts[i], part[w.Role])
				}
			}
		}
		all[id] = one
	}
	return all
})

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
	made := evidence.Because(codeMade, factOrder, factMost, factManySource, factNoOverhead).With(evidence.Terms("tasks", textsOf(c.r.Tasks)...), evidence.Terms("concerns", textsOf(c.found)...), evidence.Count("n", c.many()))
	list := []evidence.Reason{made}
	n := evidence.Count("n", c.many())
	switch {
	case c.r.Brief:
		return append(list, evidence.Because(codeBrief, factBrief, factFourADay).With(n))
	case c.r.Little:
		list = append(list, evidence.Because(codeFew, factFew, factFewSource).With(n))
	case slices.Contains(c.found, frailty):
		list = append(list, evidence.Because(codeFewFrail, factFrail, factShortLiked, factFourADay, factManySource).With(n))
	}
	if c.arms {
		list = append(list, evidence.Because(codeStepLater, factByArms))
	}
	if len(c.left) > 0 {
		ids := make([]string, len(c.left))
		for i, s := range c.left {
			ids[i] = string(c.id(s))
		}
		list = append(list, evidence.Because(codeLeft, factMost).With(evidence.Terms("exercises", ids...)))
	}
	return append(list, c.lack...)
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
