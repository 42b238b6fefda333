package main

import (
	"slices"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A split is the invented share, among people with any of some codes, of those
// who answer a finer question with yes, where the answer is known. Of each code only the
// share is split; nobody gets or loses a code by it. They were frozen before the joining of
// the rules used any of them.
type split struct {
	Question   screening.Code
	Of         []screening.Code
	Known, Yes float64
}

// An ago is how long ago something was, evenly from today on, where it is known.
type ago struct {
	Code  screening.Code
	Known float64
	Days  int // at most
}

// sited are what has a place in the body. siteKnown is the share of people who say
// where, evenly over the regions.
var sited = []screening.Code{"pain_made_worse_by_training", "unstable_or_injured_joint", "acute_joint_inflammation", "musculoskeletal_limitation"}

const siteKnown = 0.95

// finely draws what is finer than the lists. What screening does not know yet is
// drawn and left out, so that the same people were drawn before it did.
func (d drawing) finely(p *screening.Profile, age, burden float64) {
	d.Rand = d.finer
	d.add(&p.Conditions, rates.Finer, p.Sex, age, burden)
	d.add(&p.RedFlags, rates.Alarms, p.Sex, age, burden)
	asked := yesNo()
	for _, s := range rates.Splits {
		answer := d.yes(s.Known, s.Yes)
		if slices.Contains(asked, s.Question) && has(screening.AskedFor(slices.Concat(p.Symptoms.Present, p.RedFlags.Present, p.Conditions.Present)...), s.Of...) {
			p.Answers[s.Question] = answer
		}
	}
	for _, a := range rates.Agos {
		day, known := visit-units.Day(d.IntN(a.Days)), d.chance(d.known(a.Known))
		if known && slices.Contains(asked, a.Code+"_day") && has(p.Conditions, a.Code) {
			p.Events = append(p.Events, screening.Event{Code: a.Code, Day: day})
		}
	}
	at := d.places()
	for _, code := range sited {
		if region := at[code]; region != 0 && slices.Contains(asked, code+"_site") && has(p.Conditions, code) {
			p.Sites = append(p.Sites, screening.Site{Code: code, Region: region})
		}
	}
}

// places draws where what has a place is, for everybody.
func (d drawing) places() map[screening.Code]body.Region {
	list := map[screening.Code]body.Region{}
	for _, code := range sited {
		region, known := body.Region(1+d.IntN(places)), d.chance(d.known(siteKnown))
		if known {
			list[code] = region
		}
	}
	return list
}

// places are the first ten regions; the whole body, one of them, says no place.
const places = 10

// add draws further codes of a list.
func (d drawing) add(list *screening.Checklist, rates []rate, sex body.Sex, age, burden float64) {
	for _, code := range d.present(rates, sex, age, burden) {
		if _, known := screening.LookUp(code); known {
			list.Present = append(list.Present, code)
		}
	}
}

// yesNo lists the questions that screening knows of.
func yesNo() []screening.Code {
	var list []screening.Code
	for prompt := range screening.Prompts() {
		list = append(list, prompt.Code)
	}
	return list
}
