package interview

import (
	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// next returns the question to ask, nil when there is none: everybody's first,
// then those that the library misses, then those of the day. An emergency ends
// the interview at once.
func (s state) next() *asking {
	if a := s.first(); a != nil {
		return a
	}
	if s.training == screening.Yes && !s.asked["setting_today"] {
		return oneOf("setting_today", "setting", "And today, who is there?", settings, settingTexts, func(s *state, v screening.Setting) { s.check.Setting = v })
	}
	if o, err := screening.Assess(s.full()); err != nil || o.Route == screening.Emergency {
		return nil
	}
	for _, g := range groups() {
		if a := s.ofGroup(g); a != nil {
			return a
		}
	}
	if a := s.missing(); a != nil {
		return a
	}
	return s.ofTheDay()
}

// ageYears are the ages that screening takes.
var ageYears = span{18, 120, "years", []string{"years"}}

// first asks what everybody is asked before the lists.
func (s state) first() *asking {
	switch {
	case !s.asked["age"]:
		return &asking{FormQuestion{
			Key: "age", Form: Whole, Client: "How old are you?", Clinician: "Age; without it there is no outcome.", Hint: "whole years, such as 68",
			Needed: true, Least: ageYears.least, Most: ageYears.most, Unit: ageYears.unit,
		}, func(s *state, r Reply) error {
			years, err := readWhole(r.Text, ageYears.least, ageYears.most, ageYears.spellings...)
			s.profile.Age = body.Age(years)
			return err
		}}
	case !s.asked["setting"]:
		return oneOf("setting", "setting", "On your training days, where do you train, and who is there? Where the days differ, take the one with the fewest people.", settings, settingTexts, func(s *state, v screening.Setting) { s.profile.Setting = v })
	}
	return nil
}

// ofGroup asks a group of a list, unless it was answered or its area was not named.
func (s state) ofGroup(g group) *asking {
	switch {
	case s.asked[g.key]:
		return nil
	case g.gate != "" && !s.asked[g.key+"_at_all"]:
		return g.gateQuestion()
	case g.area != "" && !s.asked["areas"]:
		return areasQuestion()
	}
	return g.question()
}

// missing asks on where an answer opened a record, then the first question that
// the library misses; what is asked of nobody here stays open.
func (s state) missing() *asking {
	for _, follow := range followUps {
		if a := follow(s); a != nil {
			return a
		}
	}
	o, err := screening.Assess(s.full())
	if err != nil {
		return nil
	}
	for _, m := range o.Missing {
		if a := s.settle(m); a != nil {
			return because(m, a)
		}
	}
	return nil
}

// because notes what made a question necessary.
func because(m screening.Question, a *asking) *asking {
	a.Because = m.Because
	if m.Unsure {
		a.Because = m.Code
	}
	return a
}

// settle returns the question that settles a missing one; nil if it has been
// asked or belongs to the day, or if no way of asking it is known here.
func (s state) settle(m screening.Question) *asking {
	key := string(m.Code)
	prompt, ok := prompts()[m.Code]
	if !ok || s.asked[key] {
		return nil
	}
	text := screening.Words().Client(m.Reason)
	if own := ownWords[m.Code]; own != "" {
		text = own
	}
	if make := fields[m.Code]; make != nil {
		if a := make(text); !s.asked[a.Key] {
			return a
		}
		return nil
	}
	if of, placed := siteOf(m); placed {
		return site(key, of, text)
	}
	switch of, dated := datedOf(m); {
	case dated:
		return dayOf(key, of, text)
	case !prompt.YesNo:
		return nil
	}
	return yesNo(key, m.Code, text, func(s *state, a screening.Answer) { s.profile.Answers[m.Code] = a })
}

// datedOf returns the condition whose day a question asks for, if it asks for one.
func datedOf(m screening.Question) (screening.Code, bool) {
	return m.Because, m.Because != "" && m.Code == m.Because+"_day"
}

// siteOf returns the condition whose place a question asks for, if it asks for one.
func siteOf(m screening.Question) (screening.Code, bool) {
	return m.Because, m.Because != "" && m.Code == m.Because+"_site"
}

// ofTheDay asks what a training today makes necessary.
func (s state) ofTheDay() *asking {
	if !s.asked["today"] {
		a := yesNo("today", "", "Will you train today?", func(s *state, a screening.Answer) { s.training = a })
		a.Clinician = "Whether the day's check is to be asked."
		return a
	}
	if s.training != screening.Yes {
		return nil
	}
	if !s.asked["hurt"] {
		return yesNo("hurt", "pain", "Did anything hurt in your last training, or after it? (No if there was none.)", func(s *state, a screening.Answer) {
			if a == screening.Yes {
				s.check.Pain = &screening.Pain{}
			}
		})
	}
	if a := s.ofPain(); a != nil {
		return a
	}
	if !s.asked["unwell"] {
		a := yesNo("unwell", "", "Are you ill today without a fever, with a cold, for instance, or an upset stomach?", func(s *state, a screening.Answer) { s.check.Unwell = a })
		a.Clinician = "Ill without fever: a lighter day."
		return a
	}
	o, err := s.outcome()
	if err != nil {
		return nil
	}
	for _, m := range o.Missing {
		if make, ok := daily[m.Code]; ok && !s.asked[string(m.Code)] {
			return because(m, make(screening.Words().Client(m.Reason)))
		}
		if m.Code == "ketones" && !s.asked["blood_ketones"] {
			return because(m, bloodKetones())
		}
	}
	return nil
}
