package choice

import (
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A Wish is all that a choice depends on.
type Wish struct {
	Tasks     []Task            // the most wanted first; none is possible
	Goal      guideline.Goal    // bone brings what loads it
	Screening screening.Outcome // what was found, and the company
	Little    bool              // comes once a week, or to half of the sessions or fewer
	Named     bool              // exercises were asked for by name: only tests and aims are wanted
	// Kit decides between a weight and a band where both would do; the plan that is made
	// of the list heeds what else it has and lacks.
	Kit equipment.Kit
	// Tried are tests of function, as they went: of the latest of each stand, one that needed
	// the arms, or could not be done, brings the stand with hands, and no step yet.
	Tried []Tried
	// Brief asks for a few minutes each day: four exercises without a weight.
	Brief bool
}

// Chosen is a list of exercises, the most wanted first, and the tests of the tasks.
type Chosen struct {
	Tasks    []Task     `json:"tasks,omitempty"`
	Concerns []Concern  `json:"concerns,omitempty"`
	Wanted   []Wanted   `json:"wanted,omitempty"`
	Tests    []TaskTest `json:"tests,omitempty"`
	// Reasons are about the list as a whole, and what the plan aims at beside its exercises.
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// Wanted is an exercise of the list.
type Wanted struct {
	Exercise exercise.ID       `json:"exercise"`
	Reasons  []evidence.Reason `json:"reasons"` // why it, and why in this form
}

// Choose chooses by its tables alone, so that the same wish always gives the same list.
func Choose(r Wish) Chosen {
	c := chooser{r: r, found: concernsOf(r.Screening), arms: needsArms(r.Tried)}
	if !r.Named {
		c.collect()
		c.form()
		c.cut()
		c.unused()
	}
	out := Chosen{Tasks: slices.Clone(r.Tasks), Concerns: c.found, Reasons: c.reasons(), Tests: c.checks()}
	out.Reasons = append(out.Reasons, tells(r.Tasks))
	for _, s := range c.order {
		out.Wanted = append(out.Wanted, Wanted{c.id(s), c.why[s]})
	}
	return out
}

// A chooser works out one list.
type chooser struct {
	r       Wish
	found   []Concern
	arms    bool // stands up with them alone
	order   []slot
	variant [numSlots]exercise.ID
	why     [numSlots][]evidence.Reason
	banded  [numSlots]bool    // taken with the weakest band
	asked   [numSlots]bool    // by a task, a concern or the goal
	stays   [numSlots]bool    // what one of them asks for most
	left    []slot            // cut from the list
	lack    []evidence.Reason // what of the kit is not used, and why
}

// A named template is asked for by a term of a code.
type named struct {
	template
	code evidence.ReasonCode
	term string
	fact evidence.FactID
}

// templates are those of the request: tasks, concerns, the goal, being alone.
func (c *chooser) templates() []named {
	var list []named
	for _, t := range c.r.Tasks {
		list = append(list, named{forTask[t], codeForTask, t.String(), taskFact(t)})
	}
	for _, f := range c.found {
		list = append(list, named{forConcern[f], codeForConcern, f.String(), concernFact(f)})
	}
	if c.r.Goal == guideline.Bone && !slices.Contains(c.found, bone) {
		list = append(list, named{forBone, codeForGoal, guideline.Bone.String(), factGoalBone})
	}
	if c.r.Brief {
		list = append(list, named{briefly, codeForConcern, "a few minutes a day", factBrief})
	}
	if c.arms {
		list = append(list, named{byArms, codeForConcern, "standing up with the arms", factByArms})
	}
	novice := c.r.Screening.Who.Training <= body.Novice
	if novice {
		list = append(list, named{beginner, codeForConcern, "being a beginner", factBeginner})
	}
	if novice && c.r.Screening.Setting <= screening.Alone {
		list = append(list, named{alone, codeForConcern, "being alone", factAlone})
	}
	return list
}

// collect puts the slots in order: the templates take turns, then the rest of the body.
func (c *chooser) collect() {
	list := c.templates()
	for i := range numSlots {
		for _, t := range list {
			if int(i) < len(t.first) {
				c.add(t.first[i])
				c.stays[t.stays()] = true
			}
		}
	}
	for _, s := range c.order {
		c.asked[s] = true
		for _, code := range []evidence.ReasonCode{codeForTask, codeForConcern, codeForGoal} {
			c.say(s, code, list)
		}
	}
	for s := range everybody {
		c.add(s)
	}
	if c.arms {
		c.order = slices.DeleteFunc(c.order, func(s slot) bool { return s == step })
	}
	c.noLater(pull, latestPull)
	c.noLater(push, latestPush)
}

// say names in one reason of a code the templates that ask for a slot.
func (c *chooser) say(s slot, code evidence.ReasonCode, list []named) {
	var terms []string
	var facts []evidence.FactID
	for _, t := range list {
		if t.code == code && slices.Contains(t.first, s) {
			terms, facts = append(terms, t.term), append(append(facts, t.fact), t.facts...)
		}
	}
	if len(terms) > 0 {
		slices.Sort(facts)
		c.why[s] = append(c.why[s], evidence.Because(code, slices.Compact(facts)...).With(evidence.Terms("for", terms...)))
	}
}

func (c *chooser) add(s slot) {
	if !slices.Contains(c.order, s) {
		c.order = append(c.order, s)
	}
}

// noLater moves a slot forward to a place; one that would pass it stays where it is.
// The pull comes first, so it stands before the push.
func (c *chooser) noLater(s slot, at int) {
	if i := slices.Index(c.order, s); i > at {
		c.order = slices.Insert(slices.Delete(c.order, i, i+1), at, s)
	}
}

// form takes the hardest variant of each slot that no template caps.
func (c *chooser) form() {
	list := c.templates()
	for s, row := range variants {
		usual := len(row) - 1
		at, by := usual, named{}
		for _, t := range list {
			if limit, some := t.caps[slot(s)]; some && slices.Index(row, limit) < at {
				at, by = slices.Index(row, limit), t
			}
		}
		c.variant[s] = row[at]
		if len(c.why[s]) == 0 {
			c.why[s] = []evidence.Reason{evidence.Because(codeWhole, factWhole)}
		}
		if at < usual {
			c.why[s] = append(c.why[s], evidence.Because(codeGentler, by.fact).With(evidence.ID("usual", row[usual]), evidence.Term("for", by.term)))
		}
		c.takeBand(slot(s))
		for i := range c.why[s] {
			c.why[s][i] = c.why[s][i].With(evidence.ID("exercise", c.id(slot(s))))
		}
	}
}

// takeBand takes a slot's exercise with a band where the kit has no weight for the slot,
// a band, and what the exercise needs. Nothing but the kit decides, so that no concern does.
func (c *chooser) takeBand(s slot) {
	id, some := byBand[s]
	if !some || c.r.Brief || len(c.r.Kit.Bands) == 0 || c.weighted(s) {
		return
	}
	ex := worked()[id].ex
	if !c.there(&ex) {
		c.lack = append(c.lack, evidence.Because(codeNoAnchor, factByBand).With(evidence.Terms("things", textsOf(ex.Lacks(c.r.Kit.Things...))...), evidence.ID("exercise", id), evidence.ID("usual", c.variant[s])))
		return
	}
	c.why[s] = append(c.why[s], evidence.Because(codeByBand, factByBand, factBandAlike).With(evidence.ID("usual", c.variant[s])))
	c.variant[s], c.banded[s] = id, true
}

// weighted reports whether the kit has a weight for a form of the slot, and what that needs.
func (c *chooser) weighted(s slot) bool {
	return slices.ContainsFunc(variants[s], func(v exercise.ID) bool {
		ex := worked()[v].ex
		_, err := c.r.Kit.CompileFor(ex)
		return ex.Hold != body.Unloaded && err == nil && c.there(&ex)
	})
}

// unused says that a kit of bars and stacks alone leaves the list without a weight.
func (c *chooser) unused() {
	var kinds []string
	if len(c.r.Kit.Bars) > 0 {
		kinds = append(kinds, "bars")
	}
	if len(c.r.Kit.Stacks) > 0 {
		kinds = append(kinds, "stacks")
	}
	if len(kinds) > 0 && !slices.ContainsFunc(c.order, c.weighted) {
		c.lack = append(c.lack, evidence.Because(codeByName, factByName).With(evidence.Terms("kinds", kinds...)))
	}
}

func (c *chooser) there(ex *exercise.Exercise) bool {
	return c.r.Kit.Things == nil || len(ex.Lacks(c.r.Kit.Things...)) == 0
}

// id is the exercise of a slot, with the weakest band where it is taken with one.
func (c *chooser) id(s slot) exercise.ID {
	if c.banded[s] {
		return c.variant[s] + "-" + exercise.ID(c.r.Kit.Bands[0])
	}
	return c.variant[s]
}

// Why returns why an exercise of the list was chosen, nothing for one that was not.
func (c Chosen) Why(id exercise.ID) []evidence.Reason {
	for _, w := range c.Wanted {
		if w.Exercise == id {
			return w.Reasons
		}
	}
	return nil
}

// Said returns the reasons of the choice as a whole, and those of its tests.
func (c Chosen) Said() []evidence.Reason {
	list := slices.Clone(c.Reasons)
	for _, k := range c.Tests {
		list = append(list, k.Reasons...)
	}
	return list
}
