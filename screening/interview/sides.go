package interview

import (
	"slices"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units/body"
)

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
