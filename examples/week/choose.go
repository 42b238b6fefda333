package main

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/week"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// shown is how many recommendations a week is held against.
const shown = 6

// conditions are the screening's codes that recommendations are made for.
var conditions = map[screening.Code][]guideline.Condition{
	"osteoporosis":                         {guideline.Osteoporosis},
	"osteoporosis_uk":                      {guideline.Osteoporosis},
	"vertebral_fracture":                   {guideline.VertebralFracture},
	"osteoporosis_with_vertebral_fracture": {guideline.Osteoporosis, guideline.VertebralFracture},
}

// choose returns the recommendations to show, without their reports: what the
// plan follows and leads to, the closest to the goal, two for everybody of that
// age, one for bone, and then others for the goal and for strength.
func choose(r record.Record, w week.Week) []column {
	item := w.Sessions[0].Items[0]
	p := picker{starting: item.Phase == dose.Familiarise}
	p.add(item.Guideline, "this plan follows it")
	p.add(item.Aim, "the goal's row, which this start leads to")
	at := guideline.Query{Training: r.Profile.Training, Age: r.Profile.Age, Conditions: had(r.Profile)}
	at.AtLarge = len(at.Conditions) == 0
	p.find(at, r.Goal, 1, "closest to the goal")
	everybody := guideline.Query{Age: at.Age, AtLarge: true}
	p.find(everybody, guideline.Health, 2, "public health, this age")
	bone := guideline.Query{Age: at.Age, Conditions: append(at.Conditions, guideline.Osteoporosis)}
	p.find(bone, guideline.Bone, 1, "bone")
	p.find(at, r.Goal, shown-len(p.list), "another for the goal")
	p.find(everybody, guideline.Strength, shown-len(p.list), "strength, this age")
	return p.list
}

func had(p screening.Profile) []guideline.Condition {
	var list []guideline.Condition
	for _, code := range p.Conditions.Present {
		list = append(list, conditions[code]...)
	}
	return list
}

// A picker gathers recommendations, each once.
type picker struct {
	list     []column
	starting bool // then rows for one training status are of use too
}

func (p *picker) add(id guideline.ID, why string) bool {
	have := func(c column) bool { return c.Guideline == id }
	if id == "" || slices.ContainsFunc(p.list, have) {
		return false
	}
	p.list = append(p.list, column{Guideline: id, Why: why})
	return true
}

// find adds the closest n that nothing supersedes, that were read and that give
// a dose.
func (p *picker) find(q guideline.Query, goal guideline.Goal, n int, why string) {
	q.Goal = goal
	for _, r := range guideline.For(q) {
		if len(r.Training) > 0 && !p.starting {
			continue
		}
		dosed := !r.Days.IsZero() || !r.Sets.IsZero() || !r.WeeklySets.IsZero()
		if n > 0 && dosed && len(r.SupersededBy) == 0 && r.Basis != evidence.FromMemory && p.add(r.ID, why) {
			n--
		}
	}
}
