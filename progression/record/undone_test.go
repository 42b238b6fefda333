package record_test

import (
	"testing"

	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// What was asked for and not done yet keeps nothing from being decided: its dose stays, within
// every limit of the day, and is lighter once days were missed.
func TestAskedForAndNotDone(t *testing.T) {
	limit := units.Kilogram
	for name, tt := range map[string]struct {
		change func(r *record.Record) units.Day // of the decision
		action progression.Action
		most   units.Mass
	}{
		"begun on the day":      {func(r *record.Record) units.Day { return begin(r, r.Review) }, progression.HoldDose, 2 * units.Kilogram},
		"left out at one visit": {func(r *record.Record) units.Day { begin(r, r.Visits[len(r.Visits)-1].Day); return r.Review }, progression.HoldDose, 2 * units.Kilogram},
		"three weeks ago": {func(r *record.Record) units.Day {
			r.Absence = screening.No
			return begin(r, r.Visits[len(r.Visits)-1].Day) + 21
		}, progression.EaseOff, 2 * units.Kilogram},
		"a limit since": {func(r *record.Record) units.Day {
			r.Profile.Restrictions = []screening.Restriction{{Author: "Surgeon B", Region: body.WholeBody, MaxMass: &limit}}
			return begin(r, r.Review)
		}, progression.ChangeVariant, 0},
	} {
		r := read(t, review)
		items, err := r.Next(tt.change(&r))
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		d := items[len(items)-1]
		if d.Exercise != begun || d.Decision.Action != tt.action || len(d.Log) > 0 {
			t.Errorf("%s: %s, %v, %d visits: %+v", name, d.Exercise, d.Decision.Action, len(d.Log), d.Decision.Reasons)
		}
		if p := d.Decision.Next; p != nil && (p.Load.Each() > tt.most || p.Sets > 2 || p.Exercise == begun && p.Count > 8) {
			t.Errorf("%s: %s", name, amount(*p))
		}
	}
}

const begun = "dumbbell-romanian-deadlift"

// begin asks for an exercise from a day on, with 2 kg.
func begin(r *record.Record, day units.Day) units.Day {
	least := units.RIR(3)
	r.Asked = append(r.Asked, record.Asked{From: day, Exercise: begun, Load: 2 * units.Kilogram, Stated: body.PerHand, Sets: 2, Count: 8, Span: units.Must(units.Between(8, 12)), Reserve: &least})
	return day
}
