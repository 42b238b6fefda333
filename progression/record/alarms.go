package record

import (
	"cmp"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Look says that somebody has looked at what had shown, hurt or been told until then.
type Look struct {
	dose.Observation
	By        screening.Lifter `json:"by,omitzero"`        // what they are; not given: it was not kept
	Visits    int              `json:"visits,omitzero"`    // how many there were
	Happened  int              `json:"happened,omitzero"`  // likewise, of what was told
	Practised int              `json:"practised,omitzero"` // likewise, of what was practised
	Checks    int              `json:"checks,omitzero"`    // likewise, of the checks of days
}

// An Alarm is what stands against training: what showed or hurt at a visit so that somebody
// else has to look, or a sign that sends to help now or today, such as a faint, and was told in a
// day's check, in [Record.Happened] or as dizziness at the work beside lifting, until somebody
// has looked and the person was assessed anew, on a later day; an event that ends the plan, a
// fall at that work too, until an assessment has heard of it, or follows a look; or what else was
// told, until somebody has looked.
type Alarm struct {
	Day  units.Day               `json:"day"`           // of the visit, or of what was told
	Told programme.HappeningKind `json:"told,omitzero"` // not given: it was at a visit, or in a check
	Open bool                    `json:"open,omitzero"` // somebody has to look, and nobody is known to have
	// Who has to look at least, where it is open: whom screening names as the way out of it, a doctor of what sends
	// to help now or today, else a physiotherapist. See [Alarm.Counts].
	Who screening.Lifter `json:"who,omitzero"`
	// Route is the strictest that screening has for it: ask first, where it has none.
	Route    screening.Route   `json:"route"`
	Reasons  []evidence.Reason `json:"reasons"`            // first what to do now
	LookedAt dose.Observation  `json:"looked_at,omitzero"` // who has, where the assessment is still missing
}

// Alarms returns what stands against training on a day, first what is open, the gravest
// before the rest. The errors are those of [Record.Validate] and [screening.Assess], and of
// a day that is none at "/day".
func (r Record) Alarms(day units.Day) ([]Alarm, error) {
	if err := day.Check(); err != nil {
		return nil, field.At("/day", err)
	}
	if _, err := r.read(); err != nil {
		return nil, err
	}
	list, _, err := r.stands(day)
	return list, err
}

// stands returns what stands, and what follows from all that was told.
func (r Record) stands(day units.Day) (list []Alarm, told []programme.HappeningAnswer, err error) {
	if len(r.Happened) == 0 && !slices.ContainsFunc(r.Visits, TrainingDay.told) && !slices.ContainsFunc(r.Checks, func(c screening.Check) bool { return len(c.Events) > 0 || tellsSign(c) }) && !slices.ContainsFunc(r.Practised, fell) {
		return nil, nil, nil // as nearly always
	}
	_, o, err := r.screened(day)
	if err != nil {
		return nil, nil, err
	}
	for i, v := range r.Visits {
		s := Alarm{Day: v.Day, Route: screening.AskFirst, LookedAt: r.lookAt(func(l Look) bool { return i < l.Visits && l.Day <= day })}
		if s.Open = !s.LookedAt.Made(); v.Day <= day && (s.Open || v.Day >= o.Day) && s.showed(v, o) {
			list = append(list, s)
		}
	}
	list = append(list, r.inChecks(o, day)...)
	today := max(day, o.Day)
	all := programme.Happenings{Asked: today}
	heard := r.told(o.Day, day)
	for _, h := range heard {
		all.List = append(all.List, h.Happening)
	}
	report, err := all.Review(o, today)
	if err != nil {
		return nil, nil, err
	}
	for i, h := range report.Happenings {
		s := Alarm{Day: h.Day, Told: h.Kind, Open: h.Standing == programme.ReviewBefore, Route: screening.AskFirst, Reasons: h.Reasons}
		switch code, event := h.Kind.Code(); {
		case heard[i].sign != "":
			s.stands(heard[i], o)
			if by := heard[i].Reviewed; by.Made() && cmp.Or(h.Day, by.Day) < o.Day {
				continue
			}
		case h.Standing < programme.ReviewBefore:
			continue
		case event:
			s.add(screening.Check{New: screening.AskedFor(), Events: []screening.Event{{Code: code, Day: o.Day}}}, o, code)
		case h.Kind == programme.HeadKnock:
			s.Route, s.Who = screening.SameDay, screening.TheDoctor
		}
		list = append(list, s)
	}
	for i := range list {
		if s := &list[i]; s.Open {
			s.Who = max(s.Who, screening.ThePhysio) // whoever is responsible, where no way out is named
		} else {
			s.Who = 0
		}
	}
	slices.SortStableFunc(list, func(a, b Alarm) int {
		if a.Open == b.Open {
			return cmp.Compare(b.Route, a.Route)
		}
		return map[bool]int{true: -1, false: 1}[a.Open]
	})
	return list, report.Happenings, nil
}

// told is what was told up to a day, of work beside lifting too, with who has looked at it;
// without the events that the assessment has heard of.
func (r Record) told(assessed, day units.Day) (list []telling) {
	add := func(h programme.Happening, sign screening.Code, saw func(Look) bool) {
		e, event := h.Event()
		if h.Day > day || event && slices.Contains(r.Profile.Events, e) {
			return
		}
		h.Reviewed = r.lookAt(func(l Look) bool { return saw(l) && l.Day <= day })
		if !event || !h.Reviewed.Made() {
			h.Unassessed = screening.Yes // an assessment does not look for somebody
		}
		list = append(list, telling{h, sign})
	}
	for i, h := range r.Happened {
		add(h, signOf(h), func(l Look) bool { return i < l.Happened })
	}
	for i, p := range r.Practised {
		saw := func(l Look) bool { return i < l.Practised }
		if slices.Contains(p.Troubles, beside.Tumbled) {
			add(programme.Happening{Kind: programme.Fall, Day: p.Day}, "", saw)
		}
		if slices.Contains(p.Troubles, beside.Dizzied) {
			add(programme.Happening{Kind: programme.NewSymptom, Day: p.Day}, blackout, saw)
		}
	}
	for _, h := range r.ended(assessed, day) {
		list = append(list, telling{h, ""})
	}
	return list
}

// A telling is what was told, and which sign that sends to help now or today it is, if it is one.
type telling struct {
	programme.Happening
	sign screening.Code
}

// Signs that are told beside those of visits and checks.
const (
	blackout screening.Code = "dizziness_or_syncope" // what a faint is among symptoms
	someSign screening.Code = "sign"                 // one that is not kept
)

// signOf is the sign that what was told between assessments is, if it is one.
func signOf(h programme.Happening) screening.Code {
	switch {
	case h.Kind == programme.Faint:
		return blackout
	case h.Kind == programme.NewSymptom && h.Unassessed == screening.No:
		return someSign
	}
	return ""
}

// fell reports a fall or dizziness at work beside lifting.
func fell(p beside.Practised) bool {
	return slices.Contains(p.Troubles, beside.Tumbled) || slices.Contains(p.Troubles, beside.Dizzied)
}

// ended are the events of checks up to a day that the assessment has not heard of.
func (r Record) ended(assessed, day units.Day) (list []programme.Happening) {
	for i, c := range r.Checks {
		again := i > 0 && r.Checks[i-1].Day == c.Day // with all that the one before says
		for _, e := range c.Events {
			if again || c.Day < assessed || c.Day > day || slices.Contains(r.Profile.Events, e) {
				continue
			}
			for kind := range programme.HappeningKinds() {
				if code, ok := kind.Code(); ok && code == e.Code {
					list = append(list, programme.Happening{Kind: kind, Day: e.Day, Unassessed: screening.Yes})
				}
			}
		}
	}
	return list
}

// lookAt returns the first look that saw something; none where nobody has.
func (r Record) lookAt(saw func(Look) bool) dose.Observation {
	if i := slices.IndexFunc(r.Looked, saw); i >= 0 {
		return r.Looked[i].Observation
	}
	return dose.Observation{}
}

// told reports whether a visit has pain or what showed at it.
func (v TrainingDay) told() bool {
	return slices.ContainsFunc(v.noted(), func(n Noted) bool { return n.Moment != nil || n.Pain != nil })
}

// noted is what was noted, of all and of one exercise alone.
func (v TrainingDay) noted() []Noted {
	all := []Noted{v.Noted}
	for _, b := range v.But {
		all = append(all, b.Noted)
	}
	return all
}

// showed adds what showed or hurt at a visit, in one exercise too, and reports whether it is
// for somebody else.
func (s *Alarm) showed(v TrainingDay, o screening.Outcome) bool {
	for _, n := range v.noted() {
		seen := n.visit(v.Day, dose.Prescription{})
		why := seen.Refers(&o)
		if len(why) == 0 {
			continue
		}
		s.Reasons = append(s.Reasons, why...)
		if n.Moment != nil {
			d, _ := screening.During(*n.Moment) // the record is valid
			for _, f := range d.Findings {
				s.goes(f)
			}
		}
		if n.Pain != nil {
			s.add(screening.Check{Pain: n.Pain, New: screening.AskedFor()}, o, screening.PainModel(*n.Pain).Reasons...)
		}
	}
	if len(s.Reasons) == 0 {
		return false
	}
	s.looked(s.LookedAt)
	return true
}

// add adds what a check of the day finds by codes, whoever is asked of whatever else.
func (s *Alarm) add(c screening.Check, o screening.Outcome, codes ...screening.Code) {
	c.Day, c.Setting = o.Day, o.Setting
	out, err := screening.Today(c, o)
	if err != nil {
		return // ask first stays
	}
	for _, f := range out.Findings {
		if slices.Contains(codes, f.Code) {
			s.goes(f)
		}
	}
}

// routeOf is where the strictest of what nobody has looked at sends.
func routeOf(list []Alarm) (route screening.Route) {
	for _, s := range list {
		if !s.LookedAt.Made() {
			route = max(route, s.Route)
		}
	}
	return route
}

// heed stops everything while something stands, and sends the person where the strictest
// of it sends.
func (re *Review) heed() {
	var why []evidence.Reason
	for _, s := range re.Alarms {
		re.Overdue = nil // nothing of it is due before
		why = append(why, s.Reasons...)
		re.Screening.Meanwhile = screening.Nothing
	}
	re.Screening.Route = max(re.Screening.Route, routeOf(re.Alarms))
	for i := range re.Items {
		if d := &re.Items[i].Decision; len(why) > 0 {
			*d = progression.Decision{Action: progression.StopAndRefer, Gates: d.Gates, Queries: d.Queries, Reasons: why}
		}
	}
}

// checkLooked asks of each look who it was, on which day, and at no more than there was.
func (r Record) checkLooked() error {
	var bad field.Errors
	for i, h := range r.Happened {
		bad.Add(path("happened", i), h.Validate())
	}
	for i, l := range r.Looked {
		at := path("looked", i)
		if l.Who == "" {
			bad.Add(at+"/who", field.Bad(nil, "who has looked", field.ErrMissing))
		}
		bad.Add(at+"/day", l.Day.Check())
		if _, err := l.By.MarshalText(); l.By != 0 {
			bad.Add(at+"/by", err)
		}
		bad.Add(at, r.checkSeen(l))
	}
	return bad.Err()
}

// checkSeen asks of a look for no more than there was, and for no earlier day.
func (r Record) checkSeen(l Look) error {
	var bad field.Errors
	for _, saw := range []struct {
		name, of string
		n, most  int
		last     func(int) units.Day
	}{
		{"/visits", "visits", l.Visits, len(r.Visits), func(i int) units.Day { return r.Visits[i].Day }},
		{"/happened", "things that were told", l.Happened, len(r.Happened), func(i int) units.Day { return r.Happened[i].Day }},
		{"/practised", "things that were practised", l.Practised, len(r.Practised), func(i int) units.Day { return r.Practised[i].Day }},
		{"/checks", "checks", l.Checks, len(r.Checks), func(i int) units.Day { return r.Checks[i].Day }},
	} {
		switch {
		case saw.n < 0 || saw.n > saw.most:
			bad.Add(saw.name, field.Bad(saw.n, "0 up to the number of "+saw.of, field.ErrOutOfRange))
		case saw.n > 0 && l.Day < saw.last(saw.n-1):
			bad.Add("/day", field.Bad(l.Day, "the day of the last of the "+saw.of+" that it saw, or later", field.ErrConflict))
		}
	}
	return bad.Err()
}
