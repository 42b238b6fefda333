package history

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/dose/week"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/visit"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Check returns every bad field of the visits at once, of those before from no more
// than the order of their days, which ends at the history's own.
func (h *History) Check(from int) error {
	var bad field.Errors
	i, before := 0, units.Day(0)
	for ; i < from && h.Log[i].Day >= before; i++ { // as of most logs
		before = h.Log[i].Day
	}
	for ; i < len(h.Log); i++ {
		v := &h.Log[i]
		if i < from && v.Day >= before {
			before = v.Day
			continue
		}
		if err := h.checkAt(i, before); err != nil {
			bad.Add(fmt.Sprintf("/log/%d", i), err)
		}
		before = max(before, v.Day)
	}
	if h.Day.Check() == nil && h.Day < before {
		bad.Add("/day", field.Bad(h.Day, "the day of the last visit or later", field.ErrConflict))
	}
	if last := (&History{Log: h.Log[from:]}); len(last.Log) > 0 && h.Day.Check() == nil && last.LastDone().Check() == nil && int(h.Day-last.LastDone()) > mostAway {
		bad.Add("/day", field.Bad(h.Day, fmt.Sprintf("at most %d days after the last set, of %s", mostAway, last.LastDone()), field.ErrOutOfRange))
	}
	return bad.Err()
}

// checkAt returns every bad field of the visit at a place.
func (h *History) checkAt(i int, before units.Day) error {
	var bad field.Errors
	bad.Add("", h.Log[i].Check())
	bad.Add("", h.checkVisit(&h.Log[i], before))
	return bad.Err()
}

// mostAway is how long after the last set a visit may be: the week that is planned, and
// the most days that a dose takes as missed. It is a ceiling against slips.
const mostAway = given.Week + dose.MostMissed

// checkVisit refuses a visit of another exercise, hold or side, without a day
// or out of order, and a look at it from later on.
func (h *History) checkVisit(v *visit.Visit, before units.Day) error {
	var bad field.Errors
	bad.Add("/day", v.Day.Check())
	if v.Day.Check() == nil && v.Day < before {
		bad.Add("/day", field.Bad(v.Day, "the day of the visit before or later", field.ErrConflict))
	}
	if v.Day.Check() == nil {
		bad.Add("/observer/day", given.UpTo(v.Observer.Day, v.Day))
		bad.Add("/looked_at/day", given.UpTo(v.LookedAt.Day, h.Day))
	}
	r := h.Request
	for i := range v.Sets {
		if err := r.Screening.Key.Matches(v.Sets[i].Key); err != nil {
			bad.Add(fmt.Sprintf("/sets/%d/key", i), err)
		}
	}
	if v.Plan.Exercise != r.Exercise.ID {
		bad.Add("/plan/exercise", field.Bad(v.Plan.Exercise, string(r.Exercise.ID), field.ErrConflict))
	}
	if v.Plan.Hold != r.Exercise.Hold {
		bad.Add("/plan/hold", field.Bad(v.Plan.Hold, r.Exercise.Hold.String(), field.ErrConflict))
	}
	if v.Plan.Side != r.Side {
		bad.Add("/plan/side", field.Bad(v.Plan.Side, r.Side.String(), field.ErrConflict))
	}
	return bad.Err()
}

// CheckDates takes days of the calendar, and what is not given.
func CheckDates(d week.Dates) error {
	var bad field.Errors
	bad.Add("/review", given.UpTo(d.Review, 0))
	bad.Add("/retest", given.UpTo(d.Retest, 0))
	bad.Add("/expires", given.UpTo(d.Expires, 0))
	return bad.Err()
}

// CheckWatched takes nobody, or somebody with a name on the day of the visit.
func CheckWatched(w dose.Observation, day units.Day) error {
	var bad field.Errors
	if w == (dose.Observation{}) {
		return nil
	}
	if w.Who == "" {
		bad.Add("/who", field.Bad(nil, "who will watch", field.ErrMissing))
	}
	if w.Day != day {
		bad.Add("/day", field.Bad(w.Day, day.String()+", the day of the course", field.ErrConflict))
	}
	return bad.Err()
}
