package screening

import (
	"slices"
	"time"

	"example.org/posology/units"
	"example.org/posology/units/body"
)

// An item is an entry that is present, or that may be.
type item struct {
	*entry
	held     Answer    // Yes or Unknown
	question *question // whose answer is missing, if that is why it is not known
	by       []Code    // codes that imply it, where it was not told itself
}

// found returns what is present or not known, in the order of the tables. Lists
// that were not asked are left out: they are one finding each.
func (p *Profile) found() []item {
	items := make([]item, 0, 16)
	for _, list := range [...]Checklist{p.Diseases, p.Symptoms, p.RedFlags, p.Conditions} {
		items = list.appendItems(items)
	}
	items = p.appendEvents(items)
	if p.Falls != nil && p.Falls.positive() != No {
		items = append(items, item{entry: find(fallsRisk), held: p.Falls.positive(), question: findQuestion(askFalls)})
	}
	items = p.appendAnswers(items, Yes)
	items = appendDiabetes(items)
	return inOrder(p.appendAnswers(items, Unknown))
}

// appendAnswers adds what questions stand for that were answered with yes, or
// those that are triggered and not known.
func (p *Profile) appendAnswers(items []item, held Answer) []item {
	listed := items
	for i := range questions {
		q := &questions[i]
		if !q.yesNo || q.means == "" || p.Answers[q.code] != held {
			continue
		}
		switch {
		case held == Yes:
			items = append(items, item{entry: find(q.means), held: Yes})
		case q.triggered(listed):
			items = append(items, item{entry: find(q.means), held: Unknown, question: q})
		}
	}
	return items
}

func (c Checklist) appendItems(items []item) []item {
	for _, code := range c.Present {
		items = append(items, item{entry: find(code), held: Yes})
	}
	for _, code := range c.Unsure {
		items = append(items, item{entry: find(code), held: Unknown})
	}
	return slices.DeleteFunc(items, func(i item) bool { return i.entry == nil })
}

// appendEvents adds the conditions that events stand for.
func (p *Profile) appendEvents(items []item) []item {
	for _, e := range p.Events {
		for _, code := range p.standsFor(e) {
			if en := find(code); en != nil && (en.kind == Condition || code == operated) {
				items = append(items, item{entry: en, held: Yes})
			}
		}
	}
	return items
}

// standsFor lists the conditions that an event stands for.
func (p *Profile) standsFor(e Event) []Code {
	switch {
	case e.Code == fallen && !p.passed(e.Day, 0, fallMonths):
		return []Code{fallsRisk}
	case e.Code == fractured:
		return p.brokenBone(e)
	case e.Code == heartAttack && !p.passed(e.Day, infarctionWeeks, 0):
		return []Code{recentHeartAttack, afterAttackOrStroke}
	case e.Code == heartAttack || e.Code == stroke:
		return []Code{afterAttackOrStroke}
	}
	return []Code{e.Code}
}

// brokenBone lists the conditions that a fracture stands for: one of the spine
// is a vertebral fracture at every date.
func (p *Profile) brokenBone(e Event) []Code {
	var codes []Code
	if !p.passed(e.Day, 0, fractureMonths) {
		codes = append(codes, recentFracture)
	}
	if e.is(vertebralFracture) {
		codes = append(codes, vertebralFracture)
	}
	return codes
}

// is reports whether e is what a dated condition names.
func (e Event) is(code Code) bool {
	if code == afterAttackOrStroke && (e.Code == heartAttack || e.Code == stroke) {
		return true
	}
	ofSpine := e.Code == fractured && (e.Region == body.Neck || e.Region == body.UpperBack || e.Region == body.LowerBack)
	return e.Code == code || code == vertebralFracture && ofSpine
}

// inOrder sorts items by table and keeps the graver of two of one entry.
func inOrder(items []item) []item {
	slices.SortStableFunc(items, func(a, b item) int {
		if a.entry != b.entry {
			return a.row - b.row
		}
		return b.held.Severity() - a.held.Severity()
	})
	return slices.CompactFunc(items, func(a, b item) bool { return a.entry == b.entry })
}

// triggered reports whether something present or not known makes q necessary
// and nothing present answers it.
func (q *question) triggered(items []item) bool {
	hit := false
	for _, it := range items {
		if it.held == Yes && slices.Contains(q.unless, it.code) {
			return false
		}
		hit = hit || slices.Contains(q.triggers, it.code)
	}
	return hit
}

// because returns the first of the items that triggers q.
func (q *question) because(items []item) Code {
	for _, it := range items {
		if slices.Contains(q.triggers, it.code) {
			return it.code
		}
	}
	return ""
}

// passed reports whether so many weeks and months since the event have passed
// on the day of the visit; since a day that is not known none have.
func (p *Profile) passed(event units.Day, weeks, months int) bool {
	end, err := event.Plus(7 * weeks)
	if err != nil {
		return false
	}
	end = monthsAfter(end, months)
	return !end.IsZero() && p.Day >= end
}

// monthsAfter returns the same day n months later, the first of the month after
// where there is no such day, and no day beyond the calendar.
func monthsAfter(d units.Day, n int) units.Day {
	year, month, day := d.Date()
	m := int(month) - 1 + n
	first, err := units.NewDay(year+m/12, time.Month(m%12+1), 1)
	if err != nil {
		return 0
	}
	later, err := first.Plus(day - 1)
	if err != nil {
		return 0
	}
	return later
}

// stage returns the stage of d that the last event of an entry has reached, with its
// number from 1, and whether the day of the event is known at all.
func (p *Profile) stage(e *entry, d *dated) (stage *dated, number int, known bool) {
	var last units.Day
	for _, event := range p.Events {
		if !event.is(e.code) {
			continue
		}
		if event.Day.IsZero() {
			return nil, 0, false
		}
		last = max(last, event.Day)
	}
	if last.IsZero() {
		return nil, 0, false
	}
	for ; d != nil && p.passed(last, d.weeks, d.months); d = d.next {
		stage, number = d, number+1
	}
	return stage, number, true
}

// since says whether the last event of a dated entry lies far enough back, and
// whether its day is known at all.
func (p *Profile) since(e *entry) (passed, known bool) {
	stage, _, known := p.stage(e, e.dated)
	return stage != nil, known
}

// fractured returns the fractures whose region is known: recent ones, and of all
// if a fracture may be slow to unite. It is false unless every region is known.
func (p *Profile) fractured(all bool) (places []Event, known bool) {
	fractures := 0
	for _, e := range p.Events {
		if e.Code != "fracture" || !all && p.passed(e.Day, 0, fractureMonths) {
			continue
		}
		fractures++
		if e.Region != 0 && e.Region != body.WholeBody {
			places = append(places, e)
		}
	}
	return places, fractures > 0 && len(places) == fractures
}

// testsFrom returns the first day whose tests of strength still say something
// after the events and dated conditions that are known on the day: the one
// after the last event, and the day itself where that is later or one has no
// date. It is 0 without any.
func testsFrom(events []Event, conditions Checklist, day units.Day) units.Day {
	var from units.Day
	for _, e := range events {
		if e.Day.IsZero() {
			return day
		}
		from = max(from, min(e.Day+1, day))
	}
	for _, list := range [...][]Code{conditions.Present, conditions.Unsure} {
		for _, code := range list {
			told := slices.ContainsFunc(events, func(e Event) bool { return e.is(code) })
			if e := find(code); e != nil && e.dated != nil && e.dated.test && !told {
				return day
			}
		}
	}
	return from
}
