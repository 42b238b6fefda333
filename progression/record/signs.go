package record

import (
	"cmp"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// codesTold are the codes that a check may meet by what was told alone, whatever is measured
// once more: its signs, pain of its kinds, a heart that fails, and a low that needed help.
func codesTold(c screening.Check) []screening.Code {
	list := c.New.Present
	if c.Pain != nil && c.Pain.Kind > screening.OrdinaryPain {
		list = slices.Concat(list, screening.PainModel(*c.Pain).Reasons)
	}
	if c.Worsening == screening.Yes {
		list = append(slices.Clip(list), "hf_worsening")
	}
	if c.SevereLow == screening.Yes {
		list = append(slices.Clip(list), "glucose_lt_52_or_severe_hypo_24h")
	}
	return list
}

// tellsSign reports whether a check has anything by which a sign may be told.
func tellsSign(c screening.Check) bool { return len(codesTold(c)) > 0 }

// signed returns what the check at a place tells that sends to help now or today, and
// false where nothing does.
func (r Record) signed(i int, o screening.Outcome) (Alarm, bool) {
	c := r.Checks[i]
	if i > 0 && r.Checks[i-1].Day == c.Day { // with all that the one before says
		return Alarm{}, false
	}
	s := Alarm{Day: c.Day}
	told := screening.Check{New: c.New, Pain: c.Pain, Worsening: c.Worsening, SevereLow: c.SevereLow}
	return s, s.tells(told, o, codesTold(c)...)
}

// inChecks are the signs of checks up to a day that stand on it.
func (r Record) inChecks(o screening.Outcome, day units.Day) (list []Alarm) {
	for i, c := range r.Checks {
		by := r.lookAt(func(l Look) bool { return i < l.Checks && l.Day <= day })
		if c.Day > day || by.Made() && c.Day < o.Day {
			continue
		}
		if s, grave := r.signed(i, o); grave {
			s.looked(by)
			list = append(list, s)
		}
	}
	return list
}

// stands is what follows of a sign that was told, as of one in a check: of one that is not
// kept that it is seen today.
func (s *Alarm) stands(h telling, o screening.Outcome) {
	also := s.Reasons
	switch {
	case !s.tells(screening.Check{New: screening.AskedFor(blackout)}, o, h.sign):
		s.Route, s.Who = screening.SameDay, screening.TheDoctor
		s.says(h.Kind.String())
	case h.Kind == programme.Faint:
		s.Reasons = nil // its own say it
	}
	s.Reasons = append(s.Reasons, also...)
	s.looked(h.Reviewed)
}

// tells adds what of codes sends to help now or today by a check, and reports whether
// anything does.
func (s *Alarm) tells(c screening.Check, o screening.Outcome, codes ...screening.Code) bool {
	if len(codes) == 0 {
		return false
	}
	c.Day, c.Setting = o.Day, o.Setting
	out, err := screening.Today(c, o)
	if err != nil {
		return false // the record is valid
	}
	var what []string
	slices.SortStableFunc(out.Findings, func(a, b screening.Finding) int { return cmp.Compare(b.Route, a.Route) })
	for _, f := range out.Findings {
		term, known := screening.LookUp(f.Code)
		if f.Route < screening.SameDay || !slices.Contains(codes, f.Code) || !known || slices.Contains(what, term.Meaning) {
			continue
		}
		s.goes(f)
		what = append(what, term.Meaning)
	}
	s.says(what...)
	return len(what) > 0
}

// says begins with what to do now about what was told.
func (s *Alarm) says(what ...string) {
	code := evidence.ReasonCode("progression.see-today")
	if s.Route == screening.Emergency {
		code = "progression.help-now"
	}
	s.Reasons = []evidence.Reason{evidence.Because(code, "progression.gates").With(evidence.Text("what", strings.Join(what, "; ")), evidence.Day("day", s.Day))}
}

// goes takes in where a finding sends and who can lift it: what sends to help now or today
// takes a doctor at least, who has seen the person after an emergency too.
func (s *Alarm) goes(f screening.Finding) {
	who := f.Exit.Who
	if f.Route == screening.Emergency {
		who = screening.TheDoctor
	} else if f.Route == screening.SameDay {
		who = max(who, screening.TheDoctor)
	}
	s.Route, s.Who = max(s.Route, f.Route), max(s.Who, who)
}

// looked takes in who has looked, and says so in place of where to go.
func (s *Alarm) looked(by dose.Observation) {
	if s.LookedAt, s.Open = by, !by.Made(); !s.Open {
		s.Reasons = []evidence.Reason{evidence.Because("progression.looked-at", "progression.refer").With(evidence.Day("day", s.Day), evidence.Text("who", by.Who))}
	}
}

// Counts reports whether the look of somebody of a profession counts: of who has to look, or
// of somebody further in the order of [screening.Lifters]; the emergency services stand for a doctor and for nobody
// beyond. Whoever keeps a [Look] asks first: one that does not count is not to be kept.
func (s Alarm) Counts(by screening.Lifter) bool {
	return by >= s.Who && (by < screening.EmergencyServices || s.Who <= screening.TheDoctor)
}
