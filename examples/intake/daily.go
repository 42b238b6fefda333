package main

import (
	"errors"

	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// daily are the questions of the day that a field of the check answers.
var daily = map[screening.Code]func(text string) *question{
	"febrile": func(text string) *question {
		return yesNo("febrile", text, func(p *person, a screening.Answer) { p.check.Febrile = a })
	},
	"severe_low_24h": func(text string) *question {
		return yesNo("severe_low_24h", text, func(p *person, a screening.Answer) { p.check.SevereLow = a })
	},
	"glucose": func(text string) *question {
		return known("glucose", text, `with its unit, such as "98 mg/dL" or "5.4 mmol/L"`, func(p *person, answer string) error {
			g, err := screening.ParseGlucose(answer)
			p.check.Glucose = g
			if errors.Is(err, field.ErrMissing) {
				return errors.New("the unit matters: please write what the meter shows, mg/dL or mmol/L")
			}
			return err
		})
	},
	"oxygen_saturation": func(text string) *question {
		return known("oxygen_saturation", text, "per cent, such as 95", func(p *person, answer string) (err error) {
			p.check.SpO2, err = number(answer, 50, 100, "%", "per cent")
			return err
		})
	},
	"hf_worsening": func(text string) *question {
		return yesNo("hf_worsening", text, func(p *person, a screening.Answer) { p.check.Worsening = a })
	},
	"ketones": func(text string) *question {
		return choice("ketones", text, []string{"none", "small", "moderate", "large"}, func(p *person, i int) { p.check.Ketones = screening.NoKetones + screening.Ketones(i) })
	},
}

// painKinds are the kinds of pain, in a client's words.
var painKinds = []string{"in a joint, tendon or muscle", "around the chest", "spreading into an arm or leg", "in the spine, suddenly or after a knock",
	"in a bone that has cancer", "in a joint that is hot and swollen", "where you were operated on not long ago"}

// ofPain asks for the record of pain that was begun.
func (p *person) ofPain() *question {
	if p.check.Pain == nil {
		return nil
	}
	change := func(p *person, set func(r *screening.Pain)) {
		record := *p.check.Pain
		set(&record)
		p.check.Pain = &record
	}
	switch {
	case !p.asked["pain_kind"]:
		return choice("pain_kind", "Where was it?", painKinds, func(p *person, i int) {
			change(p, func(r *screening.Pain) { r.Kind = screening.OrdinaryPain + screening.PainKind(i) })
		})
	case !p.asked["pain_during"]:
		return known("pain_during", "While you trained, how bad was it at its worst?", "0 to 10; 0 if it did not hurt, and the worse the higher", func(p *person, answer string) error {
			v, err := score(answer)
			change(p, func(r *screening.Pain) { r.During = v })
			return err
		})
	case !p.asked["pain_after"]:
		return known("pain_after", "And right after it?", "0 to 10", func(p *person, answer string) error {
			v, err := score(answer)
			change(p, func(r *screening.Pain) { r.After = v })
			return err
		})
	case !p.asked["pain_settled"]:
		return yesNo("pain_settled", "Was it back to usual the next morning?", func(p *person, a screening.Answer) {
			change(p, func(r *screening.Pain) { r.SettledNextMorning = a })
		})
	case !p.asked["pain_trend"]:
		return choice("pain_trend", "From week to week, which way does it go?", []string{"falling", "stable", "rising"}, func(p *person, i int) {
			change(p, func(r *screening.Pain) { r.WeeklyTrend = screening.FallingPain + screening.Trend(i) })
		})
	}
	return nil
}
