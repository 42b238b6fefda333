package main

import (
	"maps"
	"slices"

	"example.org/posology/screening"
	"example.org/posology/units"
)

// A person is what the answers so far have told.
type person struct {
	note     string // where the answers come from; not given: from a person
	profile  screening.Profile
	asked    map[string]bool   // questions, by key
	lists    map[string]picked // answered groups, by key
	activity screening.Activity
	training screening.Answer // whether the person trains today
	check    screening.Check
}

// picked is the answer to a group of a list.
type picked struct{ present, unsure []screening.Code }

func newPerson(day units.Day) *person {
	return &person{
		profile: screening.Profile{Day: day, Answers: map[screening.Code]screening.Answer{}},
		check:   screening.Check{Day: day},
		asked:   map[string]bool{}, lists: map[string]picked{},
	}
}

// clone returns a copy that can be changed without changing p.
func (p *person) clone() *person {
	c := *p
	c.asked, c.lists = maps.Clone(p.asked), maps.Clone(p.lists)
	c.profile.Answers = maps.Clone(p.profile.Answers)
	c.profile.Events = slices.Clone(p.profile.Events)
	c.profile.Clearances = slices.Clone(p.profile.Clearances)
	c.profile.Restrictions = slices.Clone(p.profile.Restrictions)
	return &c
}

// with returns p after an answer, or says what is wrong with it.
func (p *person) with(q *question, answer string) (*person, error) {
	c := p.clone()
	c.asked[q.key] = true
	if err := q.take(c, answer); err != nil {
		return nil, err
	}
	if err := c.full().Validate(); err != nil {
		return nil, err
	}
	return c, c.today().Validate()
}

// full returns the profile with its lists put together from their groups.
func (p *person) full() screening.Profile {
	full := p.profile
	full.Symptoms, full.RedFlags = p.list(screening.Symptom), p.list(screening.RedFlag)
	full.Diseases, full.Conditions = p.list(screening.Disease), p.list(screening.Condition)
	return full
}

// list puts a list together. A list of which no group was answered was not
// asked; the groups that were not answered beside others are unsure.
func (p *person) list(kind screening.Kind) screening.Checklist {
	var list screening.Checklist
	var open []screening.Code
	for _, g := range groups() {
		if g.kind != kind {
			continue
		}
		answer, answered := p.lists[g.key]
		if !answered {
			open = append(open, g.codes...)
			continue
		}
		list.Asked = true
		list.Present = append(list.Present, answer.present...)
		list.Unsure = append(list.Unsure, answer.unsure...)
	}
	if list.Asked {
		list.Unsure = append(list.Unsure, open...)
	}
	return list
}

// today returns the day's check. What is new was asked with the lists.
func (p *person) today() screening.Check {
	c := p.check
	c.New.Asked = p.list(screening.Symptom).Asked && p.list(screening.RedFlag).Asked
	c.Setting, c.BP, c.BPAgain = p.profile.Setting, p.profile.BP, p.profile.BPAgain
	c.RestingPulse, c.RestingPulseAgain, c.Counts = p.profile.RestingPulse, p.profile.RestingPulseAgain, p.profile.Counts
	c.InsulinOrSecretagogue = p.profile.Answers["insulin_or_secretagogue"]
	return c
}

// outcome is that of the assessment, tightened by the day's check for who
// trains today.
func (p *person) outcome() (screening.Outcome, error) {
	o, err := screening.Assess(p.full())
	if err != nil || p.training != screening.Yes {
		return o, err
	}
	return screening.Today(p.today(), o)
}
