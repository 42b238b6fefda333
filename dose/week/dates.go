package week

import (
	"example.org/posology/dose"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Dates are the days that a plan is held to.
type Dates struct {
	Review  units.Day `json:"review"`  // look at the plan again by this day
	Retest  units.Day `json:"retest"`  // test strength again by this day
	Expires units.Day `json:"expires"` // follow the plan no longer than this day
}

// Overdue says which of the days are over on the day given, in the order review,
// strength, expiry. A day that is not given is never over. Dates run from the plan
// in force, not from one drawn up later.
func (d Dates) Overdue(day units.Day) []evidence.Reason {
	var over []evidence.Reason
	for _, by := range []struct {
		day  units.Day
		code evidence.ReasonCode
		fact evidence.FactID
	}{{d.Review, "dose.overdue-review", factTwoWeeks}, {d.Retest, "dose.overdue-retest", factRetest}, {d.Expires, "dose.overdue-plan", factExpiry}} {
		if by.day.Check() == nil && day > by.day {
			over = append(over, evidence.Because(by.code, by.fact).With(evidence.Day("by", by.day), evidence.Day("day", day)))
		}
	}
	return over
}

// Expired reports whether a plan is not followed any more on the day given.
func (d Dates) Expired(day units.Day) bool {
	return day > d.Expires && !d.Expires.IsZero() && d.Expires.Check() == nil
}

// DatesOf returns the days that a plan of a phase is held to, from its first
// session on: review after 14 days of dose.Familiarise and 42 of any other phase,
// strength again after 21, expiry after 56. All of it is this module's design
// (dose.familiarise-two-weeks, dose.retest, dose.expiry).
//
// lapses is the last day on which the clearances that the plan rests on are in
// force, as in [screening.Outcome]; not given if there are none. Where it is the
// earlier it brings review and expiry forward. A phase or first day that is not
// given is a [field.ErrMissing], a day outside the calendar a
// [field.ErrOutOfRange].
func DatesOf(p dose.Phase, first, lapses units.Day) (Dates, error) {
	var bad field.Errors
	bad.Add("/phase", p.Check())
	bad.Add("/first", first.Check())
	if !lapses.IsZero() {
		bad.Add("/lapses", lapses.Check())
	}
	if err := bad.Err(); err != nil {
		return Dates{}, err
	}
	d, err := dates(p, first, lapses)
	return d, field.At("/first", err)
}

func dates(p dose.Phase, first, lapses units.Day) (Dates, error) {
	until := buildDays
	if p == dose.Familiarise {
		until = reviewDays
	}
	var d Dates
	var bad field.Errors
	for _, set := range []struct {
		day  *units.Day
		plus int
	}{{&d.Review, until}, {&d.Retest, retestDays}, {&d.Expires, expiryDays}} {
		day, err := first.Plus(set.plus)
		bad.Add("", err)
		*set.day = day
	}
	if !lapses.IsZero() {
		d.Review, d.Expires = min(d.Review, lapses), min(d.Expires, lapses)
	}
	return d, bad.Err()
}
