package beside

import (
	"cmp"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Practised is what came of one track on one day, as a log keeps it.
type Practised struct {
	Day   units.Day `json:"day"`
	Track TrackID   `json:"track"`
	// Least is that of [Happened]: the least of all tries. 0: not counted, which is never good news.
	Least     int       `json:"least,omitzero"`
	MoreHands bool      `json:"more_hands,omitzero"` // more support was used than asked for
	Troubles  []Trouble `json:"troubles,omitempty"`
}

// Validate returns every bad field of p at once.
func (p Practised) Validate() error {
	var bad field.Errors
	bad.Add("/day", p.Day.Check())
	bad.Refuse(trackOf(p.Track) == nil, "/track", string(p.Track), "the name of a track, such as "+string(tracks[0].id), field.ErrUnknown)
	bad.Add("", p.happened().Validate())
	return bad.Err()
}

func (p Practised) happened() Happened {
	return Happened{Days: 1, Least: p.Least, MoreHands: p.MoreHands, Troubles: p.Troubles}
}

// MoveOn takes what was practised from Known.Since up to the day before the situation's
// into the items in force, day by day as [Next] does, and two weeks without a track as
// Next takes days missed. It returns the places of the items with why they moved, and what
// is known from then on: [Start] makes the items of it. What is practised and not in force counts from the step that [Start]
// begins with. The list is in any order; days after the situation's are left out.
// Errors are [field.Errors], those of the list at "/practised".
func MoveOn(list []Practised, s Situation) ([]Item, Known, error) {
	var bad field.Errors
	for i, p := range list {
		bad.Add(placeOf("/practised", i), p.Validate())
	}
	bad.Add("/situation", s.validate())
	if err := bad.Err(); err != nil {
		return nil, Known{}, err
	}
	s.Screening = s.Screening.Tightest()
	var items []Item
	kept := s.Known
	kept.InForce, kept.Since = nil, s.Day
	for i := range tracks {
		t := &tracks[i]
		going := s.going(t)
		days := s.practised(t, list)
		if going == nil && len(days) == 0 && !(len(list) > 0 && s.wants(t)) {
			continue
		}
		item := s.movedOn(t, going, days)
		if most, _ := s.ceiling(t); going == nil && most == 0 && !item.Paused {
			continue // not begun
		}
		items, kept.InForce = append(items, item), append(kept.InForce, item.Place())
	}
	return items, kept, nil
}

// practised returns what came of the track from Since up to the situation's day, in the
// order of days.
func (s *Situation) practised(t *track, list []Practised) (mine []Practised) {
	for _, p := range list {
		if p.Track == t.id && p.Day >= s.Known.Since && p.Day < s.Day {
			mine = append(mine, p)
		}
	}
	slices.SortStableFunc(mine, func(a, b Practised) int { return cmp.Compare(a.Day, b.Day) })
	return mine
}

// movedOn folds the days into the item.
func (s *Situation) movedOn(t *track, going *Item, days []Practised) Item {
	most, _ := s.ceiling(t)
	item := Item{Kind: t.kind, Track: t.id, Step: max(1, min(s.first(t), most))}
	if going != nil {
		item = going.Place()
	}
	was := item.Step
	item.Last = cmp.Or(item.Last, s.Known.Since)
	for _, p := range days {
		item = s.after(t, s.missed(t, item, p.Day), p.happened())
		item.Last = p.Day
	}
	from := item.Step
	item = s.missed(t, item, s.Day)
	if item.Paused || most == 0 || len(days) == 0 && item.Step == from {
		return item // nothing to say of it
	}
	code := evidence.ReasonCode("beside.same")
	switch {
	case item.Step > was:
		code = "beside.harder"
	case item.Step < was:
		code = "beside.easier"
	}
	item.Reasons = []evidence.Reason{evidence.Because(code, factMoveOn, factTrouble).With(evidence.Count("met", item.Met), evidence.Count("days", t.days))}
	return item
}

// missed takes off what the fortnights cost that were over between the day on which the
// track was last done and another, but for those that were over by Since.
func (s *Situation) missed(t *track, i Item, day units.Day) Item {
	if i.Last.IsZero() {
		return i
	}
	n := (day-i.Last)/missedDays - max(0, s.Known.Since-i.Last)/missedDays
	if n <= 0 {
		return i
	}
	last := i.Last
	i = s.after(t, i, Happened{Missed: int(n) * missedDays})
	i.Last = last
	return i
}

// after is the place after what happened. What is barred for now keeps its place, and
// does not wait for a look because of that.
func (s *Situation) after(t *track, i Item, h Happened) Item {
	if most, _ := s.ceiling(t); most == 0 && h.lost(t, t.steps[i.Step-1]) < toStop {
		return i
	}
	return s.next(t, i, h).Place()
}
