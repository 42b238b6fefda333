package interview

import (
	"slices"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// followUps ask on where an answer opens a record.
var followUps = []func(s state) *asking{state.ofActivity, state.ofPulse, state.ofFalls, state.ofCounts, state.ofClearance, state.ofRestriction, state.ofSides}

// ofActivity asks on after the days; only a whole record counts.
func (s state) ofActivity() *asking {
	switch {
	case s.activity.DaysPerWeek == 0:
		return nil
	case !s.asked["activity_minutes"]:
		return whole("activity_minutes", "activity", "How long did it last each time?", "minutes, such as 30", minutes, func(s *state, n int) { s.activity.Minutes = n })
	case !s.asked["activity_months"]:
		return whole("activity_months", "activity", "And for how many months by now?", "whole months, such as 6; 1 if it is less", months, func(s *state, n int) { s.activity.Months = n })
	case !s.asked["activity_effort"]:
		return oneOf("activity_effort", "activity", "How hard was it, mostly?", efforts, effortTexts, func(s *state, v screening.Intensity) {
			s.activity.Intensity = v
			if s.activity.Minutes > 0 && s.activity.Months > 0 {
				s.profile.Activity = again(&s.activity)
			}
		})
	}
	return nil
}

// ofPulse asks for what the monitor showed beside the pressure.
func (s state) ofPulse() *asking {
	if s.profile.BP == nil || s.asked["pulse"] {
		return nil
	}
	return pulse("And the pulse that the monitor showed?")
}

// ofFalls asks for the other two points of the screen for falls.
func (s state) ofFalls() *asking {
	told := s.list(screening.Condition).Of("falls_risk") == screening.Yes // one of the three, and not which
	switch {
	case s.profile.Falls == nil && told && !s.asked["falls"]:
		return fields["falls"]("")
	case s.profile.Falls == nil, s.profile.Falls.Fell == screening.Yes && !told:
		return nil
	}
	change := func(s *state) *screening.FallsScreen {
		s.profile.Falls = again(s.profile.Falls)
		return s.profile.Falls
	}
	switch {
	case !s.asked["falls_unsteady"]:
		return yesNo("falls_unsteady", "falls", "Do you feel unsteady when you stand or walk?", func(s *state, a screening.Answer) { change(s).Unsteady = a })
	case !s.asked["falls_afraid"]:
		return yesNo("falls_afraid", "falls", "Does falling worry you?", func(s *state, a screening.Answer) { change(s).Afraid = a })
	}
	return nil
}

// ofCounts asks for the two counts of a blood test.
func (s state) ofCounts() *asking {
	if s.profile.Counts == nil {
		return nil
	}
	change := func(s *state) *screening.BloodCounts {
		s.profile.Counts = again(s.profile.Counts)
		return s.profile.Counts
	}
	switch {
	case !s.asked["platelets"]:
		return whole("platelets", "blood_counts", "What does it say of platelets?", "in 10⁹/L, which is thousands in a microlitre, such as 180", counts, func(s *state, n int) { change(s).Platelets = n })
	case !s.asked["haemoglobin"]:
		return written("haemoglobin", "blood_counts", Quantity, "And of haemoglobin?", `with its unit, such as "135 g/L" or "13.5 g/dL"`, func(s *state, text string) (err error) {
			change(s).Haemoglobin, err = readHaemoglobin(text)
			return err
		})
	}
	return nil
}

// ofClearance asks who agreed, when, to what and how hard.
func (s state) ofClearance() *asking {
	if len(s.profile.Clearances) == 0 {
		return nil
	}
	switch {
	case !s.asked["clearance_who"]:
		return written("clearance_who", "clearance", FreeText, "Which doctor was it?", "a name", func(s *state, text string) error {
			s.profile.Clearances[0].Who = text
			return nil
		})
	case !s.asked["clearance_when"]:
		return written("clearance_when", "clearance", Date, "When was that?", dayHint, func(s *state, text string) (err error) {
			s.profile.Clearances[0].Day, err = readEarly(text)
			if err == nil && s.profile.Clearances[0].Day > s.profile.Day {
				err = field.Bad(text, "a day up to "+s.profile.Day.String()+", on which this is asked", field.ErrOutOfRange)
			}
			return err
		})
	case !s.asked["clearance_scope"]:
		return severalOf("clearance_scope", "clearance", "Which of these did you talk about then?", choices(s.holders()), func(s *state, l screening.Checklist) {
			s.profile.Clearances[0].Scope = l.Present
		})
	case !s.asked["clearance_effort"]:
		return oneOf("clearance_effort", "clearance", "How hard may you train, by that agreement?", efforts, effortTexts, func(s *state, v screening.Intensity) {
			s.profile.Clearances[0].Intensity = v
		})
	}
	return nil
}

// holders are the codes that a clearance can speak for: what the person has, or
// may have.
func (s state) holders() []screening.Code {
	full := s.full()
	var codes []screening.Code
	for _, list := range []screening.Checklist{full.Diseases, full.Symptoms, full.Conditions} {
		codes = append(append(codes, list.Present...), list.Unsure...)
	}
	if o, err := screening.Assess(full); err == nil { // what a question stands for too
		for _, f := range o.Findings {
			if term, ok := screening.LookUp(f.Code); ok && term.Kind == screening.Condition && f.Exit.With == screening.AClearance && !slices.Contains(codes, f.Code) {
				codes = append(codes, f.Code)
			}
		}
	}
	for _, code := range screening.Contraindications(full).Reasons {
		if term, _ := screening.LookUp(code); term.Kind == screening.Reading { // a pressure too
			codes = append(codes, code)
		}
	}
	return codes
}

// ofRestriction asks who set which limit.
func (s state) ofRestriction() *asking {
	if len(s.profile.Restrictions) == 0 {
		return nil
	}
	switch {
	case !s.asked["restriction_who"]:
		return written("restriction_who", "restriction", FreeText, "Who told you so?", "a name", func(s *state, text string) error {
			s.profile.Restrictions[0].Author = text
			return nil
		})
	case !s.asked["restriction_region"]:
		return region("restriction_region", "restriction", "Which part of the body is it about? (Not known counts as all of it.)", func(s *state, r body.Region) {
			s.profile.Restrictions[0].Region = r
		})
	case !s.asked["restriction_mass"]:
		return written("restriction_mass", "restriction", Quantity, "Is there a weight that you must not go above?", `with its unit, such as "2 kg" or "5 lb"; or "none"`, (*state).limitMass)
	case !s.asked["restriction_side"] && s.profile.Restrictions[0].MaxMass != nil && slices.Contains(limbs, s.profile.Restrictions[0].Region):
		return whichSide("restriction_side", "restriction", "", func(s *state, v body.Side) {
			s.profile.Restrictions[0].Side = v
		})
	case !s.asked["restriction_until"]:
		return written("restriction_until", "restriction", Date, "Until when? (Not known counts as until you are told.)", dayHint, func(s *state, text string) error {
			until, err := readDay(text, 0)
			if err == nil && until < s.profile.Day {
				return field.Bad(until, "a day from today on; of a limit that has ended go back, and say that there is none", field.ErrConflict)
			}
			s.profile.Restrictions[0].Until = until
			return err
		})
	case !s.asked["restriction_note"]:
		return written("restriction_note", "restriction", FreeText, "In the words that you were given, what is it that you should not do?", "a line of text", func(s *state, text string) error {
			s.profile.Restrictions[0].Note = text
			return nil
		})
	}
	return nil
}

// limitMass takes the weight of a restriction, or that there is none.
func (s *state) limitMass(text string) error {
	if strings.EqualFold(text, "none") || strings.EqualFold(text, "no") {
		return nil
	}
	mass, err := units.ParseMass(text)
	s.profile.Restrictions[0].MaxMass = &mass
	return field.At("/profile/restrictions/0/max_mass", err)
}

// aside is what the answers for a side are for.
const aside = "Side: work of the other arm or leg goes on, where it lets this one rest. Not known counts as both."

// whichSide asks on which side something is.
func whichSide(key string, of screening.Code, what string, take func(s *state, v body.Side)) *asking {
	text := "On which side? (Not known counts as both.)"
	if what != "" { // which the question before it does not name
		text = strings.ToUpper(what[:1]) + what[1:] + ". " + text
	}
	return oneOf(key, of, text, sides, sideTexts, take)
}

// ofSides asks for the side of each place and event where that lets one arm or leg go on.
func (s state) ofSides() *asking {
	var open []screening.Code
	add := func(code screening.Code) {
		if !s.asked[sideOf(code)] {
			open = append(open, code)
		}
	}
	for _, at := range s.profile.Sites {
		add(at.Code)
	}
	for _, event := range s.profile.Events {
		add(event.Code)
	}
	for _, code := range open {
		if s.frees(code, open) {
			a := whichSide(sideOf(code), "", screening.Option(code), func(s *state, v body.Side) { s.put(v, code) })
			a.Clinician, a.Because = aside, code
			return a
		}
	}
	return nil
}

// sideOf is the key of the question for the side of a place or an event.
func sideOf(code screening.Code) string { return string(code) + "_side" }

// frees reports whether a code keeps an arm or a leg from something that it does not with its
// side told, the other open ones being on that side too.
func (s state) frees(code screening.Code, open []screening.Code) bool {
	others := slices.DeleteFunc(slices.Clone(open), func(other screening.Code) bool { return other == code })
	for _, side := range sides[:2] {
		c := s.clone()
		c.put(side, others...)
		either, err := screening.Assess(c.full())
		c.put(side, code)
		one, err2 := screening.Assess(c.full())
		if err == nil && err2 == nil && either.Limits.Avoided(opposite[side]) != one.Limits.Avoided(opposite[side]) {
			return true
		}
	}
	return false
}

var opposite = map[body.Side]body.Side{body.Left: body.Right, body.Right: body.Left}

// put puts what codes name on a side: places and events.
func (s *state) put(side body.Side, codes ...screening.Code) {
	for n := range s.profile.Sites {
		if at := &s.profile.Sites[n]; slices.Contains(codes, at.Code) {
			at.Side = side
		}
	}
	for n := range s.profile.Events {
		if event := &s.profile.Events[n]; slices.Contains(codes, event.Code) {
			event.Side = side
		}
	}
}
