package progression_test

import (
	"cmp"
	"slices"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/testdata/screentest"
	"example.org/posology/units"
)

// A spoiling makes one thing of a client worse, or reports that it cannot be.
type spoiling struct {
	what string
	make func(t *rapid.T, p *client) bool
}

// allSpoilings are drawn from alike.
func allSpoilings() []spoiling {
	all := slices.Concat(listSpoilings(), profileSpoilings, checkSpoilings, daySpoilings)
	for _, v := range visitSpoilings {
		all = append(all,
			spoiling{v.what + " at the last visit", func(t *rapid.T, p *client) bool {
				return v.make(t, last(&p.course)) && sameFrame(v.what, *p)
			}},
			spoiling{v.what + " at an earlier visit", func(t *rapid.T, p *client) bool {
				log := p.course.Log
				return len(log) > 1 && v.make(t, &log[between(t, "place", 0, len(log)-2)]) && sameFrame(v.what, *p)
			}})
	}
	return all
}

// sameFrame leaves out that nobody watched where a novice would go back to
// familiarisation from a later phase than build: it is another phase with rows of
// its own, not an order.
func sameFrame(what string, p client) bool {
	return what != unwatched || p.course.Request.Technique.Made() || p.course.Request.Phase <= dose.Build
}

const unwatched = "nobody watched"

// listSpoilings add to a list, or forget it where nothing stood in it: what is
// not known is no worse than what is present.
func listSpoilings() []spoiling {
	var all []spoiling
	for _, l := range []struct {
		name string
		kind screening.Kind
		of   func(*client) *screening.Checklist
	}{
		{"disease", screening.Disease, func(p *client) *screening.Checklist { return &p.profile.Diseases }},
		{"symptom", screening.Symptom, func(p *client) *screening.Checklist { return &p.profile.Symptoms }},
		{"red flag", screening.RedFlag, func(p *client) *screening.Checklist { return &p.profile.RedFlags }},
		{"condition", screening.Condition, func(p *client) *screening.Checklist { return &p.profile.Conditions }},
	} {
		code := func(t *rapid.T, list *screening.Checklist) []screening.Code {
			free := func(c screening.Code) bool { return list.Of(c) == screening.No }
			return []screening.Code{rapid.SampledFrom(screentest.Codes(l.kind)).Filter(free).Draw(t, "code")}
		}
		all = append(all,
			spoiling{"one more " + l.name, func(t *rapid.T, p *client) bool {
				list := l.of(p)
				if list.Asked {
					list.Present = append(code(t, list), list.Present...)
				}
				return list.Asked
			}},
			spoiling{"unsure of a " + l.name, func(t *rapid.T, p *client) bool {
				list := l.of(p)
				if list.Asked {
					list.Unsure = append(code(t, list), list.Unsure...)
				}
				return list.Asked
			}},
			spoiling{l.name + " list not asked", func(_ *rapid.T, p *client) bool {
				empty := l.of(p).Asked && len(l.of(p).Present)+len(l.of(p).Unsure) == 0
				*l.of(p) = screening.Checklist{}
				return empty
			}})
	}
	return all
}

var profileSpoilings = []spoiling{
	{"a fast pulse", func(_ *rapid.T, p *client) bool { p.profile.RestingPulse = 120; return true }},
	{"activity not known", func(_ *rapid.T, p *client) bool { p.profile.Activity = nil; return true }},
	{"a heavy plan", func(_ *rapid.T, p *client) bool { p.profile.PlannedFraction = 0.85; return true }},
	{"a restriction", func(t *rapid.T, p *client) bool { addRestriction(t, &p.profile); return true }},
	{"a clearance gone", func(_ *rapid.T, p *client) bool {
		had := len(p.profile.Clearances) > 0
		p.profile.Clearances = nil
		return had
	}},
	{"a lower share", func(t *rapid.T, p *client) bool {
		p.share = min(cmp.Or(p.share, 1), units.Fraction(between(t, "lower share", 1, 9))/10)
		return true
	}},
	// A test or a set done before that is not known is no worsening: of a low one less is
	// known to be lifted, and without it what visits showed counts alone.
	{"less company", func(_ *rapid.T, p *client) bool {
		p.profile.Setting = screening.Alone
		if p.check != nil {
			c := *p.check
			c.Setting, p.check = screening.Alone, &c
		}
		return true
	}},
	{"higher pressure", func(t *rapid.T, p *client) bool {
		if p.profile.BP == nil || p.profile.BP.Systolic < 120 { // low pressure that rises is not worse
			return false
		}
		p.profile.BP = &screening.BloodPressure{Systolic: p.profile.BP.Systolic + between(t, "more", 1, 20), Diastolic: p.profile.BP.Diastolic}
		return true
	}},
	{"something happened before", func(t *rapid.T, p *client) bool {
		code := rapid.SampledFrom([]screening.Code{"fall", "operation", "hospital_stay", "new_diagnosis", "heart_attack", "stroke"}).Draw(t, "event")
		p.profile.Events = []screening.Event{{Code: code, Day: firstDay - units.Day(between(t, "ago", 2, 300))}}
		return true
	}},
}

// checked changes a day's check, where there is one.
func checked(what string, change func(t *rapid.T, c *screening.Check) bool) spoiling {
	return spoiling{what, func(t *rapid.T, p *client) bool {
		if p.check == nil {
			return false
		}
		c := *p.check
		p.check = &c
		return change(t, &c)
	}}
}

var checkSpoilings = []spoiling{
	{"a check of the day", func(t *rapid.T, p *client) bool {
		none := p.check == nil
		for none && p.check == nil {
			p.check = drawCheck(t, p.profile.Setting)
		}
		if none { // with more company than was screened for it would be better, too
			p.check.Setting = p.profile.Setting
		}
		return none
	}},
	checked("a new sign", func(t *rapid.T, c *screening.Check) bool {
		c.New = screening.AskedFor(rapid.SampledFrom(screentest.Codes(screening.Symptom, screening.RedFlag)).Draw(t, "new"))
		return true
	}),
	checked("unsure of a new sign", func(t *rapid.T, c *screening.Check) bool {
		c.New = screening.Checklist{Asked: true, Unsure: []screening.Code{rapid.SampledFrom(screentest.Codes(screening.Symptom, screening.RedFlag)).Draw(t, "new")}}
		return true
	}),
	checked("new signs not asked", func(_ *rapid.T, c *screening.Check) bool { c.New = screening.Checklist{}; return true }),
	checked("fever", func(t *rapid.T, c *screening.Check) bool { c.Febrile = notNo(t); return true }),
	checked("unwell", func(_ *rapid.T, c *screening.Check) bool { c.Unwell = screening.Yes; return true }),
	checked("sore", func(_ *rapid.T, c *screening.Check) bool { c.SorenessDays = 5; return true }),
	checked("alone today", func(_ *rapid.T, c *screening.Check) bool { c.Setting = 0; return true }),
	checked("an event", func(t *rapid.T, c *screening.Check) bool {
		code := rapid.SampledFrom([]screening.Code{"fall", "operation", "hospital_stay", "new_diagnosis"}).Draw(t, "event")
		c.Events = []screening.Event{{Code: code}}
		return true
	}),
	checked("glucose", func(t *rapid.T, c *screening.Check) bool {
		if c.InsulinOrSecretagogue != screening.No { // from one reading to another there is no order
			return false
		}
		c.InsulinOrSecretagogue = notNo(t)
		c.Glucose = glucose(t, rapid.SampledFrom([]string{"40 mg/dL", "60 mg/dL", "300 mg/dL", "400 mg/dL"}).Draw(t, "reading"))
		return true
	}),
	checked("a low that needed help", func(t *rapid.T, c *screening.Check) bool { c.SevereLow = notNo(t); return true }),
	checked("pressure today", func(t *rapid.T, c *screening.Check) bool {
		c.BP = &screening.BloodPressure{Systolic: between(t, "systolic today", 130, 220), Diastolic: between(t, "diastolic today", 60, 120)}
		return true
	}),
	checked("a fast pulse today", func(_ *rapid.T, c *screening.Check) bool { c.RestingPulse = 120; return true }),
	checked("pain", func(t *rapid.T, c *screening.Check) bool {
		p := calmPain()
		p.During = score(float64(between(t, "during", 2, 9)))
		p.Kind = rapid.SampledFrom([]screening.PainKind{0, 1, 1, 1, screening.ChestPain, screening.HotJointPain}).Draw(t, "kind")
		c.Pain = &p
		return true
	}),
}

func notNo(t *rapid.T) screening.Answer {
	return rapid.SampledFrom([]screening.Answer{screening.Unknown, screening.Yes}).Draw(t, "answer")
}

var daySpoilings = []spoiling{
	{"a lighter weight", func(t *rapid.T, p *client) bool {
		log := p.course.Log
		v := &log[between(t, "place", 0, len(log)-1)]
		table, err := p.course.Request.Kit.Compile(v.Plan.Hold)
		if err != nil || len(v.Sets) == 0 || v.Plan.Finding != nil || !allGood(*v) {
			return false
		}
		i := between(t, "set", 0, len(v.Sets)-1)
		load, err := table.Nearest(v.Sets[i].Load-1, equipment.RoundingRule{})
		v.Sets[i].Load = load.Each()
		return err == nil && v.Plan.Load.Each() <= last(&p.course).Plan.Load.Each() // a heavier one tells of a weight that is still to come
	}},
	{"a lower test", func(t *rapid.T, p *client) bool {
		set := p.tested
		if len(p.course.Request.Estimates) == 0 {
			return false
		}
		if seldom(t, "by repetitions", 2) {
			set.Reps--
		} else {
			set.Load -= units.Mass(between(t, "less", 1, 8)) * units.Kilogram / 2
		}
		return set.Reps > 0 && set.Load > 0 && p.tests(set)
	}},
	{"days missed", func(t *rapid.T, p *client) bool {
		p.course.Day += units.Day(between(t, "more days", 1, 90))
		return p.course.Day > last(&p.course).Day+7 // within a week nothing is missed, and what was tried in vain becomes older
	}},
	{"a gap in the middle", func(t *rapid.T, p *client) bool {
		log := p.course.Log
		if len(log) < 2 {
			return false
		}
		more := units.Day(between(t, "more days between", 1, 40))
		for i := between(t, "after", 1, len(log)-1); i < len(log); i++ {
			v := &log[i]
			v.Day, v.Observer.Day = v.Day+more, v.Observer.Day+more
			for j := range v.Sets {
				v.Sets[j].Day += more
			}
		}
		p.course.Day += more
		return len(p.course.Sessions) == 0 && p.course.Request.Estimates == nil && p.course.Request.Performed == nil // else they change too
	}},
	{"a session missed", func(t *rapid.T, p *client) bool {
		list := slices.Clone(p.course.Sessions)
		p.course.Sessions = list
		if len(list) == 0 {
			return false
		}
		s := &list[between(t, "session", 0, len(list)-1)]
		was := s.Missed
		s.Missed = notNo(t)
		return was == screening.No
	}},
	{"the plan has expired", func(_ *rapid.T, p *client) bool { p.course.Plan.Expires = p.course.Day - 1; return true }},
	{"the review is over", func(_ *rapid.T, p *client) bool { p.overdue = true; return true }},
	{"absence not known", func(_ *rapid.T, p *client) bool { p.course.Absence = screening.Unknown; return true }},
	{"absence with a medical cause", func(_ *rapid.T, p *client) bool { p.course.Absence = screening.Yes; return true }},
	{"technique seen by nobody", func(_ *rapid.T, p *client) bool {
		p.course.Request.Technique = dose.Observation{}
		for i := range p.course.Log {
			p.course.Log[i].Observer = dose.Observation{}
		}
		return p.course.Request.Phase <= dose.Build // from a later phase it is another phase, not an order
	}},
}

// A visitSpoiling makes one thing of a visit worse.
type visitSpoiling struct {
	what string
	make func(t *rapid.T, v *progression.Visit) bool
}

var visitSpoilings = []visitSpoiling{
	{"one repetition fewer", func(t *rapid.T, v *progression.Visit) bool {
		if len(v.Sets) == 0 {
			return false
		}
		s := &v.Sets[between(t, "set", 0, len(v.Sets)-1)]
		s.Reps--
		return s.Reps > 0
	}},
	{"less in reserve", func(t *rapid.T, v *progression.Visit) bool {
		if len(v.Sets) == 0 {
			return false
		}
		s := &v.Sets[between(t, "set", 0, len(v.Sets)-1)]
		if s.Effort.Scale() != units.ScaleRIR || s.Effort.Number() < 1 {
			return false
		}
		s.Effort = units.Must(units.InReserve(s.Effort.Number() - 1))
		return true
	}},
	{"a set fewer", leaveOut},
	{"nothing done", func(_ *rapid.T, v *progression.Visit) bool {
		good := allGood(*v) // else what was bad is no longer known
		v.Sets = nil
		return good
	}},
	{"effort not recorded", func(t *rapid.T, v *progression.Visit) bool {
		if len(v.Sets) == 0 {
			return false
		}
		i := between(t, "set", 0, len(v.Sets)-1)
		enough := v.Sets[i].Effort.Scale() == units.ScaleRIR && v.Sets[i].Effort.Number() >= max(1, float64(v.Plan.Reserve.Least)) // else what was bad is no longer known
		v.Sets[i].Effort = units.Effort{}
		return enough
	}},
	{"pain", func(t *rapid.T, v *progression.Visit) bool {
		if v.Pain == nil {
			return false
		}
		v.Pain.During = score(min(10, *v.Pain.During+float64(between(t, "more", 0, 9))))
		return true
	}},
	{"pain in another exercise", func(_ *rapid.T, v *progression.Visit) bool {
		v.HurtElsewhere = []string{"dumbbell shoulder press"}
		return true
	}},
	{"pain not recorded", func(_ *rapid.T, v *progression.Visit) bool {
		calm := v.Pain != nil && *v.Pain.During <= 2 && *v.Pain.NextMorning <= 1
		v.Pain = nil
		return calm
	}},
	{"pain of another kind", func(t *rapid.T, v *progression.Visit) bool {
		if v.Pain == nil {
			return false
		}
		v.Pain.Kind = rapid.SampledFrom([]screening.PainKind{screening.ChestPain, screening.SpinePain}).Draw(t, "kind")
		return true
	}},
	{"range lost", func(t *rapid.T, v *progression.Visit) bool {
		was := v.RangeLost
		v.RangeLost = notNo(t)
		return was == screening.No
	}},
	{"technique gave way", func(t *rapid.T, v *progression.Visit) bool {
		was := v.FormLost
		v.FormLost = notNo(t)
		return was == screening.No
	}},
	{unwatched, func(_ *rapid.T, v *progression.Visit) bool { v.Observer = dose.Observation{}; return true }},
	{"a sign", func(t *rapid.T, v *progression.Visit) bool {
		quiet := v.Moment == nil || len(v.Moment.Signs) == 0
		v.Moment = &screening.Moment{Signs: []screening.Code{rapid.SampledFrom(signs).Draw(t, "sign")}}
		return quiet
	}},
	{"nobody has looked", func(_ *rapid.T, v *progression.Visit) bool {
		was := v.LookedAt.Made()
		v.LookedAt = dose.Observation{}
		return was
	}},
	{"signs not recorded", func(_ *rapid.T, v *progression.Visit) bool {
		quiet := v.Moment != nil && len(v.Moment.Signs) == 0
		v.Moment = nil
		return quiet
	}},
	{"sore", func(_ *rapid.T, v *progression.Visit) bool { v.SorenessDays = 5; return true }},
	{"unwell", func(_ *rapid.T, v *progression.Visit) bool { v.Unwell = screening.Yes; return true }},
}

// good reports whether a set was as planned, with the reserve.
func good(v progression.Visit, i int) bool {
	s := v.Sets[i]
	left := v.Plan.Reserve.Least == 0 || s.Effort.Scale() == units.ScaleRIR && s.Effort.Number() >= float64(v.Plan.Reserve.Least)
	return s.Load == v.Plan.Load.Each() && s.Reps >= v.Plan.Count && left
}

func allGood(v progression.Visit) bool {
	for i := range v.Sets {
		if !good(v, i) {
			return false
		}
	}
	return true
}

// leaveOut leaves out a set that was good and not the weakest: without the
// weakest the rest would look better.
func leaveOut(t *rapid.T, v *progression.Visit) bool {
	if len(v.Sets) == 0 {
		return false
	}
	i := between(t, "set", 0, len(v.Sets)-1)
	weaker := len(v.Sets) == 1
	for j, s := range v.Sets {
		weaker = weaker || j != i && s.Load == v.Sets[i].Load && s.Reps <= v.Sets[i].Reps && s.Effort.Scale() == units.ScaleRIR && s.Effort.Number() <= v.Sets[i].Effort.Number()
	}
	if !good(*v, i) || !weaker {
		return false
	}
	v.Sets = slices.Delete(v.Sets, i, i+1)
	return true
}
