package week

import (
	"fmt"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// maxPlannedSets is a ceiling against slips; it is no dose.
const maxPlannedSets = 100

// Prescribed adds up what w asks for in one calendar week, for
// [guideline.Audit] and for sets per muscle. The totals are of the kind
// [volume.Prescribed], so that they never pass for what was done, and no
// prescribed set gets into a log.
//
// A plan is repeated week by week, while totals go from Monday to Sunday: the
// week taken is the first that holds every session, those before its Monday a
// week later. A set counts with the least reserve that the plan allows, with
// none where that is not to be counted, and with the share of 1RM that the plan
// states, if any; o.OneRM counts for the other exercises. Days of
// balance training, impacts and brisk minutes are the least that the plan doses beside the
// sessions, nothing where it asks for none, and proposed where it gives no dose. Rests are
// those between the sets of an exercise.
//
// The catalogue is that of the request, the zero value the standard one; a week with bands
// or heights needs the one that [equipment.Kit.Fit] returns. It is
// a [field.ErrConflict] if o asks for performed sets; other errors are those
// of [volume.NewCounter] and [volume.Tally.Add], at the item.
func (w Week) Prescribed(c exercise.Catalogue, o volume.Options) (guideline.AuditedWeek, error) {
	if o.Kind == volume.Performed {
		return guideline.AuditedWeek{}, field.New("/kind", o.Kind, "prescribed, as all that a plan holds", field.ErrConflict)
	}
	o.Kind = volume.Prescribed
	if c.Len() == 0 {
		c = exercise.Standard()
	}
	o.OneRM = w.shares(o.OneRM)
	counter, err := volume.NewCounter(c, o)
	if err != nil {
		return guideline.AuditedWeek{}, err
	}
	week, err := w.calendar()
	if err != nil {
		return guideline.AuditedWeek{}, err
	}
	tally := counter.NewTally()
	if err := w.tally(tally, week.Monday()); err != nil {
		return guideline.AuditedWeek{}, err
	}
	out := guideline.AuditedWeek{Totals: tally.Totals(week)}
	for _, s := range w.Sessions {
		out.Minutes = append(out.Minutes, float64(s.Minutes))
	}
	out.Rest = w.rests()
	w.asked(&out)
	return out, nil
}

// rests returns the range that holds the rests of every item with more than one
// set, without an upper end if one of them has none; zero if none states any.
func (w Week) rests() units.Range[float64] {
	var least, most []float64
	open := false
	for _, s := range w.Sessions {
		for _, p := range s.Items {
			low, has := p.Rest.Min()
			if high, closed := p.Rest.Max(); has && p.Sets > 1 {
				least, most, open = append(least, float64(low)), append(most, float64(high)), open || !closed
			}
		}
	}
	switch {
	case len(least) == 0:
		return units.Range[float64]{}
	case open:
		return units.AtLeast(slices.Min(least))
	}
	return units.Must(units.Between(slices.Min(least), slices.Max(most)))
}

// calendar returns the week of the last session.
func (w Week) calendar() (volume.ISOWeek, error) {
	var last volume.ISOWeek
	var bad field.Errors
	bad.Refuse(len(w.Sessions) == 0, "/sessions", nil, "at least one session", field.ErrMissing)
	for i, s := range w.Sessions {
		week, err := volume.ISOWeekOf(s.Day)
		bad.Add(given.At("/sessions", i)+"/day", err)
		last = max(last, week)
	}
	return last, bad.Err()
}

// tally adds every set, in the week that begins on monday.
func (w Week) tally(t *volume.Tally, monday units.Day) error {
	var bad field.Errors
	for i, s := range w.Sessions {
		day := s.Day
		for day < monday {
			day += given.Week
		}
		for j, item := range s.Items {
			bad.Add(fmt.Sprintf("/sessions/%d/items/%d", i, j), tally(t, item, day))
		}
	}
	return bad.Err()
}

func tally(t *volume.Tally, p dose.Prescription, day units.Day) error {
	if p.Sets < 1 || p.Sets > maxPlannedSets {
		return field.New("/sets", p.Sets, fmt.Sprintf("1 to %d", maxPlannedSets), field.ErrOutOfRange)
	}
	set := setlog.Set{
		Day: day, Exercise: p.Exercise, Side: p.Side, Hold: p.Hold, Load: p.Load.Each(), Reps: p.Count, RepSeconds: p.Tempo.Seconds(),
	}
	if p.Hold.Implements() > 1 {
		set.Stated = body.PerHand
	}
	if p.Reserve.Countable {
		effort, err := units.InReserve(float64(p.Reserve.Least))
		if err != nil {
			return field.At("/reserve/least", err)
		}
		set.Effort = effort
	}
	for range p.Sets {
		if err := t.Add(set); err != nil {
			return err
		}
	}
	return nil
}

// shares returns the one-repetition maxima behind the plan's shares of them,
// beside those of others.
func (w Week) shares(given map[volume.Lift]units.Mass) map[volume.Lift]units.Mass {
	all := map[volume.Lift]units.Mass{}
	for lift, m := range given {
		all[lift] = m
	}
	for _, s := range w.Sessions {
		for _, p := range s.Items {
			if whole, err := p.Load.Each().Scale(1/p.Share, units.Nearest); p.Share > 0 && err == nil && whole > 0 {
				all[volume.Lift{Exercise: p.Exercise, Side: p.Side, Hold: p.Hold}] = whole
			}
		}
	}
	return all
}
