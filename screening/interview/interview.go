package interview

import (
	"fmt"
	"slices"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// An Interview is what has been asked and answered so far. It is never changed:
// Answer and Back return another. Copies may be used at the same time.
// The zero value has no day: it takes no answer. [On] begins one.
type Interview struct {
	now  state
	last *turn // nil before the first answer
}

// A turn is one question answered, with the interview before it.
type turn struct {
	given  GivenReply
	before Interview
}

// GivenReply is a reply to the question of a key.
type GivenReply struct {
	Key   string `json:"key"`
	Reply Reply  `json:"reply"`
}

// On begins the interview of a visit on the given day.
func On(day units.Day) Interview {
	return Interview{now: state{profile: screening.Profile{Day: day}, check: screening.Check{Day: day}}}
}

// Resume gives replies again, as [Interview.Given] lists them, so that a form need
// keep nothing else. The errors are those of [Interview.Answer], with the index of
// the reply before them; what came before that one is returned with it.
func Resume(day units.Day, all []GivenReply) (Interview, error) {
	i := On(day)
	for n, g := range all {
		after, err := i.Answer(g.Key, g.Reply)
		if err != nil {
			return i, field.At(fmt.Sprintf("/%d", n), err)
		}
		i = after
	}
	return i, nil
}

// Next returns the question to ask, and false when there is none left.
func (i Interview) Next() (FormQuestion, bool) {
	a := i.now.next()
	if a == nil {
		return FormQuestion{}, false
	}
	return a.FormQuestion, true
}

// Answer returns the interview after a reply to the question that Next returns;
// i stays as it is. The key tells that question, so that an answer that comes
// twice, or late, is not taken for that of another.
//
// The errors are of type [field.Error]: at /key a [field.ErrConflict] for another
// question's key or after the last; at /reply for a reply of another form, or a
// choice that was not offered; at the key, such as /age, for a text that cannot be read;
// and at /profile and /check those of [screening.Profile.Validate] and
// [screening.Check.Validate] for a value that cannot be.
func (i Interview) Answer(key string, r Reply) (Interview, error) {
	a := i.now.next()
	switch {
	case a == nil:
		return i, field.New("/key", fmt.Sprintf("%.60q", key), "no answer: no question is left", field.ErrConflict)
	case a.Key != key:
		return i, field.New("/key", fmt.Sprintf("%.60q", key), fmt.Sprintf("%q, the question that is next", a.Key), field.ErrConflict)
	}
	if err := a.check(r); err != nil {
		return i, field.At("/reply", err)
	}
	r = r.clone()
	now, err := i.now.with(a, r)
	if err != nil {
		return i, err
	}
	return Interview{now: now, last: &turn{GivenReply{key, r}, i}}, nil
}

// Back returns the interview before the last answer, exactly as it was, and false
// if there was none.
func (i Interview) Back() (Interview, bool) {
	if i.last == nil {
		return i, false
	}
	return i.last.before, true
}

// Given returns the replies in the order in which they were given.
func (i Interview) Given() []GivenReply {
	var all []GivenReply
	for ; i.last != nil; i = i.last.before {
		g := i.last.given
		all = append(all, GivenReply{g.Key, g.Reply.clone()})
	}
	slices.Reverse(all)
	return all
}

// Profile returns what is known for the assessment. Once the age is answered,
// [screening.Assess] takes it.
func (i Interview) Profile() screening.Profile { return copied(i.now.full()) }

// Check returns what is known for the day's check; [screening.Today] takes it with
// the outcome of Profile. It says something only for who trains today: see
// [Interview.Trains].
func (i Interview) Check() screening.Check {
	c, p := i.now.today(), copied(i.now.full())
	c.BP, c.BPAgain, c.Counts, c.Pain, c.BloodKetones = p.BP, p.BPAgain, p.Counts, again(c.Pain), again(c.BloodKetones)
	if c.Pain != nil {
		c.Pain.During, c.Pain.After = again(c.Pain.During), again(c.Pain.After)
	}
	return c
}

// Trains returns whether the person trains on the day of the interview.
func (i Interview) Trains() screening.Answer { return i.now.training }

// Outcome returns that of the assessment, tightened by the day's check for who
// trains today. Before the age is answered there is none: the error is a
// [field.ErrMissing].
func (i Interview) Outcome() (screening.Outcome, error) { return i.now.outcome() }

// copied returns p with nothing that it shares.
func copied(p screening.Profile) screening.Profile {
	p.Activity, p.BP, p.BPAgain, p.Counts, p.Falls = again(p.Activity), again(p.BP), again(p.BPAgain), again(p.Counts), again(p.Falls)
	p = ownRecords(p)
	for n := range p.Clearances {
		p.Clearances[n].Scope = slices.Clone(p.Clearances[n].Scope)
	}
	for n := range p.Restrictions {
		p.Restrictions[n].MaxMass = again(p.Restrictions[n].MaxMass)
	}
	return p
}

// again returns a copy of what p points to.
func again[T any](p *T) *T {
	if p == nil {
		return nil
	}
	v := *p
	return &v
}
