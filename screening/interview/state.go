package interview

import (
	"errors"
	"maps"
	"slices"

	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// A state is what the answers so far have told.
type state struct {
	profile  screening.Profile              // but for its lists
	asked    map[string]bool                // questions, by key
	lists    map[string]screening.Checklist // answered groups, by key
	activity screening.Activity             // as far as it was answered
	training screening.Answer               // whether the person trains today
	check    screening.Check
}

// An asking is a question with what its answer changes.
type asking struct {
	FormQuestion
	take func(s *state, r Reply) error
}

// clone returns a copy that can be changed without changing s.
func (s state) clone() state {
	s.asked, s.lists = owned(s.asked), owned(s.lists)
	s.profile = ownRecords(s.profile)
	s.profile.Answers = owned(s.profile.Answers)
	return s
}

// ownRecords returns p with lists of records of its own.
func ownRecords(p screening.Profile) screening.Profile {
	p.Answers = maps.Clone(p.Answers)
	p.Sites = slices.Clone(p.Sites)
	p.Events, p.Clearances, p.Restrictions = slices.Clone(p.Events), slices.Clone(p.Clearances), slices.Clone(p.Restrictions)
	return p
}

// owned returns a copy of m that can be written to.
func owned[K comparable, V any](m map[K]V) map[K]V {
	if m == nil {
		return map[K]V{}
	}
	return maps.Clone(m)
}

// with returns s after an answer, or says what is wrong with it.
func (s state) with(a *asking, r Reply) (state, error) {
	c := s.clone()
	c.asked[a.Key] = true
	if err := a.take(&c, r); err != nil {
		return state{}, placed(a.Key, err)
	}
	var bad field.Errors
	bad.Add("/profile", c.full().Validate())
	bad.Add("/check", c.today().Validate())
	return c, bad.Err()
}

// placed puts an error that names no field at the key of the question.
func placed(key string, err error) error {
	if e := (*field.Error)(nil); errors.As(err, &e) && e.Path != "" {
		return err
	}
	return field.At("/"+key, err)
}

// full returns the profile with its lists put together from their groups.
func (s state) full() screening.Profile {
	full := s.profile
	if s.training == screening.Yes { // with less company today the assessment is for that
		full.Setting = min(full.Setting, max(s.check.Setting, screening.Alone))
	}
	full.Symptoms, full.RedFlags = s.list(screening.Symptom), s.list(screening.RedFlag)
	full.Diseases, full.Conditions = s.list(screening.Disease), s.list(screening.Condition)
	return full
}

// list puts a list together. A list in which no group was answered, or with no what lasts
// alone, was not asked; the groups that were not answered beside others are unsure.
func (s state) list(kind screening.Kind) screening.Checklist {
	var list screening.Checklist
	var open []screening.Code
	for _, g := range groups() {
		if g.kind != kind {
			continue
		}
		answer, answered := s.lists[g.key]
		if !answered {
			open = append(open, g.codes...)
			continue
		}
		list.Asked = list.Asked || !g.lasts || len(answer.Present)+len(answer.Unsure) > 0
		list.Present = append(list.Present, answer.Present...)
		list.Unsure = append(list.Unsure, answer.Unsure...)
	}
	if list.Asked {
		list.Unsure = append(list.Unsure, open...)
	}
	return list
}

// today returns the day's check. What is new was asked with the lists.
func (s state) today() screening.Check {
	c := s.check
	c.New.Asked = s.list(screening.Symptom).Asked && s.list(screening.RedFlag).Asked
	if s.training != screening.Yes {
		c.Setting = s.profile.Setting
	}
	c.BP, c.BPAgain = s.profile.BP, s.profile.BPAgain
	c.RestingPulse, c.RestingPulseAgain, c.Counts = s.profile.RestingPulse, s.profile.RestingPulseAgain, s.profile.Counts
	c.InsulinOrSecretagogue = s.profile.Answers["insulin_or_secretagogue"]
	return c
}

// outcome is that of the assessment, tightened by the day's check for who
// trains today.
func (s state) outcome() (screening.Outcome, error) {
	o, err := screening.Assess(s.full())
	if err != nil || s.training != screening.Yes {
		return o, err
	}
	return screening.Today(s.today(), o)
}
