package main

import (
	"slices"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// prompts is the library's table of questions, by code.
var prompts = func() map[screening.Code]screening.Prompt {
	table := map[screening.Code]screening.Prompt{}
	for prompt := range screening.Prompts() {
		table[prompt.Code] = prompt
	}
	return table
}()

// settle returns the question that settles a missing one; nil if it has been
// asked or belongs to the day, or if no way of asking it is known here.
func (p *person) settle(m screening.Question) *question {
	key := string(m.Code)
	prompt, ok := prompts[m.Code]
	if !ok || p.asked[key] {
		return nil
	}
	text := words.Client(m.Reason)
	if own := ownWords[m.Code]; own != "" {
		text = own
	}
	if make := fields[m.Code]; make != nil {
		if q := make(text); !p.asked[q.key] {
			return q
		}
		return nil
	}
	of, dated := strings.CutSuffix(key, "_day")
	switch {
	case dated:
		return dayOf(key, screening.Code(of), text)
	case !prompt.YesNo:
		return nil
	}
	return yesNo(key, text, func(p *person, a screening.Answer) { p.profile.Answers[m.Code] = a })
}

// efforts are the bands of effort, in a client's words.
var efforts = []string{"light, like a stroll", "moderate, like brisk walking", "vigorous, so that talking is hard"}

// fields are the questions that a field of the profile answers.
var fields = map[screening.Code]func(text string) *question{
	"wanted": func(text string) *question {
		return choice("wanted", text, efforts, func(p *person, i int) { p.profile.Wanted = screening.Light + screening.Intensity(i) })
	},
	"activity": func(string) *question {
		return known("activity", "In the last months, how many days of a week held planned exercise?", "0 to 7 days", func(p *person, answer string) error {
			days, err := number(answer, 0, 7, "days", "day")
			p.activity = screening.Activity{DaysPerWeek: days, Intensity: screening.Idle}
			if days == 0 {
				p.profile.Activity = &screening.Activity{Intensity: screening.Idle}
			}
			return err
		})
	},
	"blood_pressure": func(text string) *question {
		return known("blood_pressure", text, "both numbers in mmHg, such as 146/84", func(p *person, answer string) error {
			bp, err := readPressure(answer)
			p.profile.BP = bp
			return err
		})
	},
	"blood_pressure_again": func(text string) *question {
		return known("blood_pressure_again", text, "both numbers in mmHg", func(p *person, answer string) error {
			bp, err := readPressure(answer)
			p.profile.BPAgain = bp
			return err
		})
	},
	"resting_pulse": func(text string) *question {
		return known("pulse", text, "beats a minute, such as 68", func(p *person, answer string) (err error) {
			p.profile.RestingPulse, err = number(answer, 20, 250, "a minute", "bpm")
			return err
		})
	},
	"falls": func(string) *question {
		return yesNo("falls", "Have you fallen in the past year?", func(p *person, a screening.Answer) { p.profile.Falls = &screening.FallsScreen{Fell: a} })
	},
	"resting_pulse_again": func(text string) *question {
		return known("resting_pulse_again", text, "beats a minute", func(p *person, answer string) (err error) {
			p.profile.RestingPulseAgain, err = number(answer, 20, 250, "a minute", "bpm")
			return err
		})
	},
	"blood_counts": func(text string) *question {
		return yesNo("blood_counts", text, func(p *person, a screening.Answer) {
			if a == screening.Yes {
				p.profile.Counts = &screening.BloodCounts{}
			}
		})
	},
	"fracture_region": func(text string) *question {
		all := slices.Collect(body.Regions())
		texts := make([]string, len(all))
		for i, r := range all {
			texts[i] = r.String()
		}
		return choice("fracture_region", text, texts, func(p *person, i int) {
			p.profile.Events = append(p.profile.Events, screening.Event{Code: "fracture", Region: all[i]})
		})
	},
	"clearance": func(text string) *question {
		return yesNo("clearance", text, func(p *person, a screening.Answer) {
			p.profile.Answers["clearance"] = a
			if a == screening.Yes {
				p.profile.Clearances = []screening.Clearance{{}}
			}
		})
	},
	"restriction": func(text string) *question {
		return yesNo("restriction", text, func(p *person, a screening.Answer) {
			if a == screening.Yes {
				p.profile.Restrictions = []screening.Restriction{{Region: body.WholeBody}}
			}
		})
	},
}

// dayOf asks when something was.
func dayOf(key string, of screening.Code, text string) *question {
	return known(key, upper(inWords(of))+". "+text, dayHint, func(p *person, answer string) error {
		day, err := readDay(answer, p.profile.Day)
		p.profile.Events = append(p.profile.Events, screening.Event{Code: of, Day: day})
		return err
	})
}

func upper(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// followUps ask on where an answer opens a record.
var followUps = []func(p *person) *question{(*person).ofActivity, (*person).ofPulse, (*person).ofFalls, (*person).ofCounts, (*person).ofClearance, (*person).ofRestriction}

// ofActivity asks on after the days; only a whole record counts.
func (p *person) ofActivity() *question {
	switch {
	case p.activity.DaysPerWeek == 0:
		return nil
	case !p.asked["activity_minutes"]:
		return known("activity_minutes", "How long did it last each time?", "minutes, such as 30", func(p *person, answer string) (err error) {
			p.activity.Minutes, err = number(answer, 1, 1440, "minutes", "min")
			return err
		})
	case !p.asked["activity_months"]:
		return known("activity_months", "And for how many months by now?", "whole months, such as 6; 1 if it is less", func(p *person, answer string) (err error) {
			p.activity.Months, err = number(answer, 1, 1440, "months", "month")
			return err
		})
	case !p.asked["activity_effort"]:
		return choice("activity_effort", "How hard was it, mostly?", efforts, func(p *person, i int) {
			p.activity.Intensity = screening.Light + screening.Intensity(i)
			if p.activity.Minutes > 0 && p.activity.Months > 0 {
				a := p.activity
				p.profile.Activity = &a
			}
		})
	}
	return nil
}

// ofPulse asks for what the monitor showed beside the pressure.
func (p *person) ofPulse() *question {
	if p.profile.BP == nil || p.asked["pulse"] {
		return nil
	}
	return known("pulse", "And the pulse that the monitor showed?", "beats a minute, such as 68", func(p *person, answer string) (err error) {
		p.profile.RestingPulse, err = number(answer, 20, 250, "a minute", "bpm")
		return err
	})
}

// ofFalls asks for the other two points of the screen for falls.
func (p *person) ofFalls() *question {
	if p.profile.Falls == nil || p.profile.Falls.Fell == screening.Yes {
		return nil
	}
	change := func(p *person, set func(f *screening.FallsScreen)) {
		falls := *p.profile.Falls
		set(&falls)
		p.profile.Falls = &falls
	}
	switch {
	case !p.asked["falls_unsteady"]:
		return yesNo("falls_unsteady", "Do you feel unsteady when you stand or walk?", func(p *person, a screening.Answer) {
			change(p, func(f *screening.FallsScreen) { f.Unsteady = a })
		})
	case !p.asked["falls_afraid"]:
		return yesNo("falls_afraid", "Does falling worry you?", func(p *person, a screening.Answer) {
			change(p, func(f *screening.FallsScreen) { f.Afraid = a })
		})
	}
	return nil
}

// ofCounts asks for the two counts of a blood test.
func (p *person) ofCounts() *question {
	if p.profile.Counts == nil {
		return nil
	}
	change := func(p *person, set func(c *screening.BloodCounts)) {
		counts := *p.profile.Counts
		set(&counts)
		p.profile.Counts = &counts
	}
	switch {
	case !p.asked["platelets"]:
		return known("platelets", "What does it say of platelets?", "in 10⁹/L, which is thousands in a microlitre, such as 180", func(p *person, answer string) error {
			n, err := number(answer, 1, 2000)
			change(p, func(c *screening.BloodCounts) { c.Platelets = n })
			return err
		})
	case !p.asked["haemoglobin"]:
		return known("haemoglobin", "And of haemoglobin?", `with its unit, such as "135 g/L" or "13.5 g/dL"`, func(p *person, answer string) error {
			grams, err := readHaemoglobin(answer)
			change(p, func(c *screening.BloodCounts) { c.Haemoglobin = grams })
			return err
		})
	}
	return nil
}

// ofClearance asks who agreed, when, to what and how hard.
func (p *person) ofClearance() *question {
	if len(p.profile.Clearances) == 0 {
		return nil
	}
	change := func(p *person, set func(c *screening.Clearance)) { set(&p.profile.Clearances[0]) }
	switch {
	case !p.asked["clearance_who"]:
		return known("clearance_who", "Which doctor was it?", "a name", func(p *person, answer string) error {
			change(p, func(c *screening.Clearance) { c.Who = answer })
			return nil
		})
	case !p.asked["clearance_when"]:
		return known("clearance_when", "When was that?", dayHint, func(p *person, answer string) error {
			day, err := clearanceDay(answer)
			change(p, func(c *screening.Clearance) { c.Day = day })
			return err
		})
	case !p.asked["clearance_scope"]:
		codes := p.holders()
		return &question{key: "clearance_scope", text: "Which of these did you talk about then?", hint: pickHint, options: listWords(codes), take: func(p *person, answer string) error {
			if isUnsure(answer) {
				return nil
			}
			present, _, err := pick(answer, codes)
			change(p, func(c *screening.Clearance) { c.Scope = present })
			return err
		}}
	case !p.asked["clearance_effort"]:
		return choice("clearance_effort", "How hard may you train, by that agreement?", efforts,
			func(p *person, i int) {
				change(p, func(c *screening.Clearance) { c.Intensity = screening.Light + screening.Intensity(i) })
			})
	}
	return nil
}

// clearanceDay reads a day, or a month for its first day: the earlier, the more
// careful.
func clearanceDay(answer string) (units.Day, error) {
	if first, err := units.ParseDay(answer + "-01"); err == nil {
		return first, nil
	}
	return readDay(answer, 0)
}

// ofRestriction asks who set which limit.
func (p *person) ofRestriction() *question {
	if len(p.profile.Restrictions) == 0 {
		return nil
	}
	change := func(p *person, set func(r *screening.Restriction)) { set(&p.profile.Restrictions[0]) }
	switch {
	case !p.asked["restriction_who"]:
		return known("restriction_who", "Who told you so?", "a name", func(p *person, answer string) error {
			change(p, func(r *screening.Restriction) { r.Author = answer })
			return nil
		})
	case !p.asked["restriction_region"]:
		all := slices.Collect(body.Regions())
		texts := make([]string, len(all))
		for i, r := range all {
			texts[i] = r.String()
		}
		return choice("restriction_region", "Which part of the body is it about? (Not known counts as all of it.)", texts, func(p *person, i int) {
			change(p, func(r *screening.Restriction) { r.Region = all[i] })
		})
	case !p.asked["restriction_mass"]:
		return known("restriction_mass", "Is there a weight that you must not go above?", `with its unit, such as "2 kg" or "5 lb"; or "none"`, func(p *person, answer string) error {
			if strings.EqualFold(answer, "none") || strings.EqualFold(answer, "no") {
				return nil
			}
			mass, err := units.ParseMass(answer)
			change(p, func(r *screening.Restriction) { r.MaxMass = &mass })
			return err
		})
	case !p.asked["restriction_until"]:
		return known("restriction_until", "Until when? (Not known counts as until you are told.)", dayHint, func(p *person, answer string) error {
			day, err := readDay(answer, 0)
			change(p, func(r *screening.Restriction) { r.Until = day })
			return err
		})
	case !p.asked["restriction_note"]:
		return known("restriction_note", "In the words that you were given, what is it that you should not do?", "a line of text", func(p *person, answer string) error {
			change(p, func(r *screening.Restriction) { r.Note = answer })
			return nil
		})
	}
	return nil
}
