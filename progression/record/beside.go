package record

import (
	"cmp"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// known is what work beside lifting goes by: what was kept of it, and for the minutes
// of a week that it lacks those that the activity tells.
func (r Record) known() beside.Known {
	k, a := r.Beside, r.Profile.Activity
	if a == nil {
		return k
	}
	brisk, easy := 0, 0
	switch {
	case a.Intensity >= screening.Moderate:
		brisk = a.DaysPerWeek * a.Minutes
	case a.Intensity == screening.Light:
		easy = a.DaysPerWeek * a.Minutes
	}
	k.Brisk, k.Easy = cmp.Or(k.Brisk, &brisk), cmp.Or(k.Easy, &easy)
	return k
}

// movedOn is what is known of work beside lifting on a day, with what was practised
// before it, and the items that it moved.
func (r Record) movedOn(day units.Day, o screening.Outcome) (beside.Known, []beside.Item, error) {
	s := beside.Situation{Day: day, Screening: o, Goal: r.Goal, Fast: r.Phase == dose.Power, Known: r.known()}
	if len(r.Practised) == 0 {
		return s.Known, nil, nil
	}
	if s.Known.Since.IsZero() {
		s.Known.Since = min(cmp.Or(r.began(), day), r.Practised[0].Day)
	}
	items, known, err := beside.MoveOn(r.Practised, s)
	return known, items, moves{"/situation/known": "/beside", "/situation/screening": "/profile", "/situation": ""}.of(err)
}

// keep is what of the work beside lifting is to be kept from a review on: the record's
// own answers, with the steps that were reached.
func (r Record) keep(moved beside.Known) beside.Known {
	k := r.Beside
	k.InForce, k.Since = moved.InForce, moved.Since
	return k
}

// sayMoved adds to each item of a week why it moved.
func sayMoved(list, moved []beside.Item) {
	for _, m := range moved {
		if i := slices.IndexFunc(list, func(i beside.Item) bool { return i.Track == m.Track && i.Step == m.Step && !i.Paused }); i >= 0 {
			list[i].Reasons = append(list[i].Reasons, m.Reasons...)
		}
	}
}

// checkPractised asks for what was practised in the order of days, each track once a day.
func (r Record) checkPractised() error {
	var bad field.Errors
	before := units.Day(0)
	seen := map[beside.TrackID]units.Day{}
	for i, p := range r.Practised {
		at := path("practised", i)
		bad.Add(at, p.Validate())
		if p.Day.Check() == nil && p.Day < before {
			bad.Add(at+"/day", field.Bad(p.Day, before.String()+" or later, since the one before is of that day", field.ErrConflict))
		}
		if seen[p.Track] == p.Day && p.Day != 0 {
			bad.Add(at+"/track", field.Bad(string(p.Track), "each track once on a day", field.ErrDuplicate))
		}
		seen[p.Track], before = p.Day, max(before, p.Day)
	}
	return bad.Err()
}
