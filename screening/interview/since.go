package interview

import (
	"slices"
	"strings"

	"example.org/posology/screening"
)

// Since returns the profile as [Interview.Profile] does, with what stood in an earlier one
// wherever the interview has not come to ask: nothing that was known is lost because somebody
// stopped, or an emergency ended it. What it never asks, such as the sex, is as it was.
//
// Whoever stopped before the lists were through is not screened on that day: the profile
// keeps the earlier one's. Once they are through it is that of the interview, on which
// no earlier reading counts.
func (i Interview) Since(was screening.Profile) screening.Profile {
	p, was := i.Profile(), copied(was)
	p.Key, p.Sex, p.Training, p.HomeReadings = was.Key, was.Sex, was.Training, slices.Clone(was.HomeReadings)
	p.CapacityMETs, p.HbA1c, p.MeanPAP, p.PlannedFraction = again(was.CapacityMETs), again(was.HbA1c), again(was.MeanPAP), was.PlannedFraction
	for _, code := range was.Conditions.Present {
		if strings.HasPrefix(string(code), rated) && p.Conditions.Asked {
			p.Conditions.Present = append(p.Conditions.Present, code)
		}
	}
	s := i.now
	if s.asked["today"] {
		return p
	}
	isThrough := true
	for _, g := range groups() {
		if !s.asked[g.key] {
			isThrough = false
			s.into(&p, g, was)
		}
	}
	if !isThrough && s.next() != nil && was.Day != 0 {
		p.Day = was.Day
	}
	s.unasked(&p, was)
	if !isThrough {
		s.readings(&p, was)
	}
	return p
}

// CheckSince returns the day's check as [Interview.Check] does, for the outcome of an earlier
// profile: what that one does not have of symptoms and red flags is new. A list that was not
// known as a whole was not asked; beside something that was told each item of it is unsure.
func (i Interview) CheckSince(was screening.Profile) screening.Check {
	c, now := i.Check(), i.now.full()
	list := screening.Checklist{Asked: c.New.Asked}
	for t := range screening.Codes() {
		if t.Kind != screening.Symptom && t.Kind != screening.RedFlag {
			continue
		}
		is, before := listIn(&now, t.Kind).Of(t.Code), listIn(&was, t.Kind).Of(t.Code)
		switch {
		case is == before || before == screening.Yes:
		case is == screening.Yes:
			list.Present, list.Asked = append(list.Present, t.Code), true
		case is == screening.Unknown:
			list.Unsure = append(list.Unsure, t.Code)
		}
	}
	if list.Asked {
		c.New = list
	}
	return c
}

// listIn returns the list of a kind.
func listIn(p *screening.Profile, kind screening.Kind) *screening.Checklist {
	switch kind {
	case screening.Disease:
		return &p.Diseases
	case screening.Symptom:
		return &p.Symptoms
	case screening.RedFlag:
		return &p.RedFlags
	}
	return &p.Conditions
}

// into puts what stood of a group that was not asked into the list of its kind.
func (s state) into(p *screening.Profile, g group, was screening.Profile) {
	list, before, codes := listIn(p, g.kind), *listIn(&was, g.kind), g.codes
	if !before.Asked {
		return
	}
	if !list.Asked {
		*list = screening.Checklist{Asked: true, Present: slices.Clone(before.Present), Unsure: slices.Clone(before.Unsure)}
		for _, other := range groups() { // asked, and nothing known of it
			if other.kind == g.kind && s.asked[other.key] {
				forgotten(list, other.codes)
			}
		}
	}
	for _, code := range slices.Concat(before.Present, before.Unsure) {
		if slices.Contains(codes, through[code]) {
			codes = append(slices.Clone(codes), code)
		}
	}
	for _, code := range codes {
		answer := before.Of(code)
		if answer != screening.Unknown {
			list.Unsure = slices.DeleteFunc(list.Unsure, func(c screening.Code) bool { return c == code })
		}
		if answer == screening.Yes && !slices.Contains(list.Present, code) {
			list.Present = append(list.Present, code)
		}
	}
}

// forgotten makes codes of a list not known.
func forgotten(list *screening.Checklist, codes []screening.Code) {
	of := func(code screening.Code) bool { return slices.Contains(codes, code) }
	list.Present, list.Unsure = slices.DeleteFunc(list.Present, of), append(slices.DeleteFunc(list.Unsure, of), codes...)
}

// unasked puts in what stood of every question that was not asked.
func (s state) unasked(p *screening.Profile, was screening.Profile) {
	for code, a := range was.Answers {
		if !s.asked[string(code)] {
			p.Answers = owned(p.Answers)
			p.Answers[code] = a
		}
	}
	keep := func(key string, put func()) {
		if !s.asked[key] {
			put()
		}
	}
	keep("age", func() { p.Age = was.Age })
	keep("setting", func() { p.Setting = was.Setting })
	keep("wanted", func() { p.Wanted = was.Wanted })
	keep("activity", func() { p.Activity = was.Activity })
	for _, site := range was.Sites {
		keep(string(site.Code)+"_site", func() { p.Sites = append(p.Sites, site) })
	}
	for _, e := range was.Events {
		if !slices.Contains(p.Events, e) {
			p.Events = append(p.Events, e)
		}
	}
	s.records(p, was)
}

// records puts in the records that were not begun, and completes those that were: a clearance
// that was not told to its end is none yet, and a restriction stands beside the earlier ones.
func (s state) records(p *screening.Profile, was screening.Profile) {
	if !s.asked["clearance"] || len(p.Clearances) > 0 && !s.asked["clearance_effort"] {
		p.Clearances = was.Clearances
	}
	if !s.asked["restriction"] || len(p.Restrictions) > 0 && !s.asked["restriction_note"] {
		p.Restrictions = append(was.Restrictions, p.Restrictions...)
	}
	switch {
	case was.Falls == nil:
	case !s.asked["falls"] && p.Falls == nil:
		p.Falls = was.Falls
	case p.Falls != nil && !s.asked["falls_unsteady"]:
		p.Falls.Unsteady, p.Falls.Afraid = was.Falls.Unsteady, was.Falls.Afraid
	case p.Falls != nil && !s.asked["falls_afraid"]:
		p.Falls.Afraid = was.Falls.Afraid
	}
	switch {
	case was.Counts == nil:
	case !s.asked["blood_counts"]:
		p.Counts = was.Counts
	case p.Counts != nil && !s.asked["platelets"]:
		*p.Counts = *was.Counts
	case p.Counts != nil && !s.asked["haemoglobin"]:
		p.Counts.Haemoglobin = was.Counts.Haemoglobin
	}
}

// readings puts in the readings that were not asked for.
func (s state) readings(p *screening.Profile, was screening.Profile) {
	if !s.asked["blood_pressure"] {
		p.BP, p.BPAgain = was.BP, was.BPAgain
	}
	if !s.asked["pulse"] {
		p.RestingPulse, p.RestingPulseAgain = was.RestingPulse, was.RestingPulseAgain
	}
}

// strokeBefore is asked as a question alone, and of any time in a life.
const strokeBefore screening.Code = "stroke_before"

// holds reports whether a code is asked back about: every disease, symptom and condition,
// since each holds, limits, asks or is let know of, and what lasts of the other lists. A sign
// of the last days comes and goes.
func holds(code screening.Code) bool {
	term, _ := screening.LookUp(code)
	switch term.Kind {
	case screening.Disease, screening.Symptom, screening.Condition:
		return true
	}
	return code == strokeBefore || slices.ContainsFunc(groups(), func(g group) bool { return g.lasts && slices.Contains(g.codes, code) })
}

// Forgets returns which diseases, symptoms, conditions and lasting signs stood in an earlier
// profile and would go by a reply to the question that [Interview.Next] returns, save the
// codes that are known to be gone: one "none" would free what each of them holds. It returns
// the reply with them, or with the areas that they are asked under, too. A form asks back
// before it takes the reply as it is. What is not known takes nothing away, and a reply that
// is refused forgets nothing.
func (i Interview) Forgets(r Reply, was screening.Profile, save ...screening.Code) (gone []screening.Code, kept Reply) {
	kept = r.clone()
	a := i.now.next()
	if a == nil || a.check(r) != nil {
		return nil, kept
	}
	stood := slices.Concat(was.Diseases.Present, was.Symptoms.Present, was.RedFlags.Present, was.Conditions.Present)
	for _, code := range stood {
		stood = append(stood, through[code])
	}
	isGone := func(code screening.Code) bool {
		told := slices.Contains(stood, code) || was.Answers[code] == screening.Yes
		return told && holds(code) && !slices.Contains(save, code)
	}
	if a.Form == YesNo && r.YesNo == screening.No && isGone(screening.Code(a.Key)) {
		kept.YesNo = screening.Yes
		return []screening.Code{screening.Code(a.Key)}, kept
	}
	for _, g := range groups() {
		lost := slices.DeleteFunc(slices.Clone(g.codes), func(code screening.Code) bool {
			return !isGone(code) || r.List.Of(code) != screening.No
		})
		switch {
		case len(lost) == 0:
		case a.Key == g.key:
			gone, kept.List.Present = lost, append(kept.List.Present, lost...)
		case a.Key == "areas" && g.area != "" && r.List.Of(screening.Code(g.key)) == screening.No:
			gone, kept.List.Present = append(gone, lost...), append(kept.List.Present, screening.Code(g.key))
		}
	}
	return gone, kept
}
