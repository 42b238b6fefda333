package beside

import (
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A TrackID names a track of steps, such as "stance".
type TrackID string

// A MoveID names what is done on a step, such as "heel-to-toe".
type MoveID string

// An Item is what is done beside lifting, with its dose. Which fields are given goes by
// the kind: tries held for seconds or repeated, sets of impacts or rises, bouts of minutes.
// All but Track, Step, Met, Paused and Last follows from the step and the person: [Start] and
// [Next] work it out anew and never take it from an item that was handed to them.
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Item struct {
	Kind   ItemKind         `json:"kind"`
	Track  TrackID          `json:"track,omitzero"`
	Step   int              `json:"step,omitzero"`   // 1 is the first of the track
	Met    int              `json:"met,omitzero"`    // days in a row on which all that is asked was done, on this step
	Paused bool             `json:"paused,omitzero"` // not to be done until somebody looked: there is no dose
	Last   units.Day        `json:"last,omitzero"`   // as [MoveOn] keeps it: last practised, or the first day of the log if never
	Move   MoveID           `json:"move,omitzero"`
	Name   string           `json:"name,omitzero"`
	Days   units.Range[int] `json:"days,omitzero"` // a week

	Sets    int              `json:"sets,omitzero"`    // tries, sets, or bouts a day
	Count   int              `json:"count,omitzero"`   // repetitions of a try or set: movements, impacts, rises
	Seconds int              `json:"seconds,omitzero"` // a stance is held in each try
	Minutes int              `json:"minutes,omitzero"` // of a bout; for balance, of a day with the breaks
	Brisk   int              `json:"brisk,omitzero"`   // of the bouts of a day, those at which one can talk and not sing
	Amount  units.Range[int] `json:"amount,omitzero"`  // impacts a session
	Rest    int              `json:"rest,omitzero"`    // seconds between sets

	Hands   Holding `json:"hands,omitzero"`
	Company bool    `json:"company,omitzero"` // somebody within reach
	Effort  int     `json:"effort,omitzero"`  // of a stamp, 0 to 10
	Height  float64 `json:"height,omitzero"`  // cm, at most, of a jump or of what is stepped over
	Force   float64 `json:"force,omitzero"`   // body weights, the highest that was measured for the kind
	// Load is the row's band, of a one-repetition maximum, that fast lifts keep to.
	Load   units.Range[units.Fraction] `json:"load,omitzero"`
	Slower units.Fraction              `json:"slower,omitzero"` // the set ends with a rise that is so much slower than the first

	// Aim is what the row asks for, in minutes a week; for balance of the whole
	// programme, lifting with it.
	Aim     units.Range[int]  `json:"aim,omitzero"`
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// Place returns what of the item has to be kept, so that it goes on from there: its
// track, its step, the days that were met on it, whether it is paused and when it was last done.
func (i Item) Place() Item {
	return Item{Kind: i.Kind, Track: i.Track, Step: i.Step, Met: i.Met, Paused: i.Paused, Last: i.Last}
}

// Dosed reports whether the item says how much and on how many days. What does not is
// a proposal in words, or paused, or, of the lifts, dosed in the session.
func (i Item) Dosed() bool {
	_, days := i.Days.Min()
	return days && !i.Paused && i.Sets > 0 && (i.Seconds > 0 || i.Count > 0 || i.Minutes > 0)
}

// WeeklyMinutes returns the least minutes of a week that the item asks for: of aerobic
// work those of all bouts; 0 where it asks for none.
func (i Item) WeeklyMinutes() int {
	days, _ := i.Days.Min()
	if !i.Dosed() {
		return 0
	}
	if i.Kind == Aerobic {
		return days * i.Sets * i.Minutes
	}
	return days * i.Minutes
}

// BriskMinutes returns the least minutes of a week at moderate effort.
func (i Item) BriskMinutes() int {
	days, _ := i.Days.Min()
	if !i.Dosed() || i.Kind != Aerobic {
		return 0
	}
	return days * i.Brisk * i.Minutes
}

// SecondsFree returns the seconds a day that are stood without a hand on anything.
func (i Item) SecondsFree() int {
	if !i.Dosed() || i.Hands != HandsNear {
		return 0
	}
	return i.Sets * i.Seconds
}

// validate returns every field of a stored item that [Start] or [Next] cannot go on from.
func (i Item) validate() error {
	var bad field.Errors
	t := trackOf(i.Track)
	switch {
	case t == nil:
		bad.Add("/track", field.Bad(string(i.Track), "the name of a track, such as "+string(tracks[0].id), field.ErrUnknown))
	case i.Kind != t.kind:
		bad.Add("/kind", field.Bad(i.Kind, t.kind.String()+", that of the track", field.ErrConflict))
	case i.Step < 1 || i.Step > len(t.steps):
		bad.Add("/step", field.Bad(i.Step, "a step of the track, from 1", field.ErrOutOfRange))
	}
	if !i.Last.IsZero() {
		bad.Add("/last", i.Last.Check())
	}
	bad.Refuse(i.Met < 0, "/met", i.Met, "0 or more", field.ErrOutOfRange)
	return bad.Err()
}

// A Barred is a kind of work, or one track of it, that is not begun, and why.
type Barred struct {
	Kind    ItemKind          `json:"kind"`
	Track   TrackID           `json:"track,omitzero"`
	Reasons []evidence.Reason `json:"reasons"`
	Free    []evidence.Reason `json:"free,omitempty"` // what would free it
}
