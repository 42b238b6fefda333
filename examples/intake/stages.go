package main

import (
	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// next returns the question to ask, nil when there is none: everybody's first,
// then those that the library misses, then those of the day. An emergency ends
// the interview at once.
func (p *person) next() *question {
	if q := p.first(); q != nil {
		return q
	}
	if o, err := screening.Assess(p.full()); err != nil || o.Route == screening.Emergency {
		return nil
	}
	for _, g := range groups() {
		if q := p.ofGroup(g); q != nil {
			return q
		}
	}
	if q := p.missing(); q != nil {
		return q
	}
	return p.ofTheDay()
}

// first asks what everybody is asked before the lists.
func (p *person) first() *question {
	switch {
	case !p.asked["age"]:
		return &question{key: "age", text: "How old are you?", hint: "whole years, such as 68", take: func(p *person, answer string) error {
			years, err := number(answer, 18, 120, "years")
			p.profile.Age = body.Age(years)
			return err
		}}
	case !p.asked["setting"]:
		return choice("setting", "Where would you train, and who is with you?",
			[]string{"alone", "with somebody at hand", "in a group with an instructor", "in a clinic"},
			func(p *person, i int) { p.profile.Setting = screening.Alone + screening.Setting(i) })
	}
	return nil
}

// ofGroup asks a group of a list, unless it was answered or its area was not named.
func (p *person) ofGroup(g group) *question {
	switch {
	case p.asked[g.key]:
		return nil
	case g.gate != "" && !p.asked[g.key+"_at_all"]:
		return g.gateQuestion()
	case g.area != "" && !p.asked["areas"]:
		return areasQuestion()
	}
	return g.question()
}

// missing asks on where an answer opened a record, then the first question that
// the library misses; what is asked of nobody here stays open.
func (p *person) missing() *question {
	for _, f := range followUps {
		if q := f(p); q != nil {
			return q
		}
	}
	o, err := screening.Assess(p.full())
	if err != nil {
		return nil
	}
	for _, m := range o.Missing {
		if q := p.settle(m); q != nil {
			return q
		}
	}
	return nil
}

// ofTheDay asks what a training today makes necessary.
func (p *person) ofTheDay() *question {
	if !p.asked["today"] {
		return yesNo("today", "Will you train today?", func(p *person, a screening.Answer) { p.training = a })
	}
	if p.training != screening.Yes {
		return nil
	}
	if !p.asked["hurt"] {
		return yesNo("hurt", "Did anything hurt in your last training, or after it? (No if there was none.)", func(p *person, a screening.Answer) {
			if a == screening.Yes {
				p.check.Pain = &screening.Pain{}
			}
		})
	}
	if q := p.ofPain(); q != nil {
		return q
	}
	o, err := p.outcome()
	if err != nil {
		return nil
	}
	for _, m := range o.Missing {
		if make, ok := daily[m.Code]; ok && !p.asked[string(m.Code)] {
			return make(words.Client(m.Reason))
		}
	}
	return nil
}

// words are the library's, for questions and outcome.
var words = screening.Words()

// holders are the codes that a clearance can speak for: what the person has, or
// may have.
func (p *person) holders() []screening.Code {
	full := p.full()
	var codes []screening.Code
	for _, list := range []screening.Checklist{full.Diseases, full.Symptoms, full.Conditions} {
		codes = append(append(codes, list.Present...), list.Unsure...)
	}
	for _, code := range screening.Contraindications(full).Reasons {
		if term, _ := screening.LookUp(code); term.Kind == screening.Reading { // a pressure too
			codes = append(codes, code)
		}
	}
	return codes
}
