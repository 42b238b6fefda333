package record

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// An ending is what a clearance from before it does not speak for.
type ending struct {
	day    units.Day
	what   string
	looked dose.Observation // who has looked at it
}

// ends reports whether a clearance of an assessment does not count any more: it was given
// before, or on the day itself and was not told anew once somebody had looked. What has no
// day was before somebody looked at it, and nobody knows more.
func (e ending) ends(c screening.Clearance, assessed units.Day) bool {
	if e.day.IsZero() {
		if e.day = e.looked.Day; !e.looked.Made() {
			return true
		}
	}
	return c.Day < e.day || c.Day == e.day && (!e.looked.Made() || assessed < e.looked.Day || assessed == e.day)
}

// why is how an ending is told.
func (e ending) why() string {
	on := "on " + e.day.String()
	if e.day.IsZero() {
		on = "on a day that is not known"
	}
	return fmt.Sprintf("%s %s has ended it, until one of a later day", e.what, on)
}

// endings are what happened up to a day and ends clearances: a sign or pain at a visit or in
// a check that sends to help now or today, a faint, dizziness at the work beside lifting, a sign
// that an assessment heard of, and the events that the assessment has not heard of; those that
// it has are screening's.
func (r Record) endings(o screening.Outcome, day units.Day) (list []ending) {
	for i, v := range r.Visits {
		s := Alarm{Day: v.Day}
		if v.Day <= day && v.told() && s.showed(v, o) && s.Route >= screening.SameDay {
			list = append(list, ending{v.Day, "what showed or hurt at the visit", r.lookAt(func(l Look) bool { return i < l.Visits && l.Day <= day })})
		}
	}
	for i, c := range r.Checks {
		if c.Day > day || !tellsSign(c) {
			continue
		}
		if _, grave := r.signed(i, o); grave {
			list = append(list, ending{c.Day, "what was told in the check", r.lookAt(func(l Look) bool { return i < l.Checks && l.Day <= day })})
		}
	}
	for _, h := range r.told(o.Day, day) {
		if _, event := h.Kind.Code(); event || h.sign != "" {
			list = append(list, ending{h.Day, "the " + h.Kind.String(), h.Reviewed})
		}
	}
	return list
}

// answered returns the answers of the assessment as they count on a day, without clearances
// that have ended since, and why those do not count.
func (r Record) answered(day units.Day) (p screening.Profile, why []evidence.Reason, err error) {
	p = r.Profile
	if len(p.Clearances) == 0 {
		return p, nil, nil
	}
	o, err := screening.Assess(p, r.Join)
	if err != nil {
		return p, nil, field.At("/profile", err)
	}
	endings := r.endings(o, day)
	var kept []screening.Clearance
next:
	for _, c := range p.Clearances {
		for _, e := range endings {
			if e.ends(c, p.Day) {
				why = append(why, evidence.Because("screening.clearance-not-counted", "progression.signs-end-clearances").With(evidence.Text("who", c.Who), evidence.Text("day", c.Day.String()),
					evidence.Text("why", e.why())))
				continue next
			}
		}
		kept = append(kept, c)
	}
	p.Clearances = kept
	return p, why, nil
}

// Screening returns the outcome of the assessment as it counts on a day: clearances from
// before a sign or pain at a visit or in a check that sends to help now or today, a faint,
// dizziness at the work beside lifting, a sign that an assessment heard of, or an event that was
// told since, do not count any more, and a finding says so; one of that day counts once it was told anew, on a later day
// and when somebody had looked. It is never looser than [screening.Assess] of the profile. The record is taken to be valid; the errors are
// those of Assess at "/profile", and of a day that is none at "/day".
func (r Record) Screening(day units.Day) (screening.Outcome, error) {
	if err := day.Check(); err != nil {
		return screening.Outcome{}, field.At("/day", err)
	}
	_, o, err := r.screened(day)
	return o, err
}

// screened is Screening with the answers that it rests on.
func (r Record) screened(day units.Day) (screening.Profile, screening.Outcome, error) {
	p, why, err := r.answered(day)
	if err != nil {
		return p, screening.Outcome{}, err
	}
	o, err := screening.Assess(p, r.Join)
	for _, reason := range why {
		o.Findings = append(o.Findings, screening.Finding{Code: "clearance-not-counted", Known: true, Reason: reason, Route: screening.NoRoute, Meanwhile: screening.WithinLimits})
	}
	return p, o, field.At("/profile", err)
}
