package record_test

import (
	"errors"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// What was asked for with a band, a seat or a step stays in the record when that is gone, as
// a weight does: with a kit that something was decided with, and no other. What comes in its
// place is of the present kit, and nothing harder.
func TestBandsAndHeightsChange(t *testing.T) {
	reserve := units.RIR(2)
	for _, tt := range []struct {
		id, in exercise.ID // what was asked for, and what comes in its place
		gone   func(r *record.Record)
	}{
		{"band-row-soft", "elbow-draw-back", func(r *record.Record) { r.Kit.Bands = []string{"wide"} }},
		{"band-row-wide", "band-row-soft", func(r *record.Record) { r.Kit.Bands = []string{"soft"} }},
		{"band-row-mid", "band-row-soft", func(r *record.Record) { r.Kit.Bands = []string{"wide", "soft"} }},
		{"band-row-wide", "elbow-draw-back", func(r *record.Record) { r.Kit.Bands = nil }},
		{"sit-to-stand-42", "sit-to-stand-45", func(r *record.Record) { r.Kit.Seats = []int{50, 45, 40} }},
		{"sit-to-stand-45", "sit-to-stand", func(r *record.Record) { r.Kit.Seats = []int{50, 40} }},
		{"step-up-30", "step-up", func(r *record.Record) { r.Kit.Steps, r.Kit.Bands = nil, nil }},
	} {
		r := withBands(t)
		r.Kit.Things = append(r.Kit.Things, exercise.LowStep)
		r.Kit.Bands = []string{"soft", "mid", "wide"}
		r.Kit.Seats, r.Kit.Steps = []int{50, 45, 42}, []int{10, 20, 30}
		catalogue, err := r.Catalogue()
		if err != nil {
			t.Fatal(err)
		}
		ex, err := catalogue.Lookup(string(tt.id))
		if err != nil {
			t.Fatal(err)
		}
		r.Asked = []record.Asked{{From: r.Days[0], Exercise: tt.id, Sets: 2, Count: 8, Span: units.Must(units.Between(8, 20)), Reserve: &reserve}}
		r.Exercises = []exercise.ID{tt.id}
		r = done(r, r.Days[0], 0, 0)
		for i := range r.Done {
			if r.Done[i].Hold = ex.Hold; ex.OneSided {
				r.Done[i].Side = []body.Side{body.Left, body.Right}[i%2]
			}
		}
		day := r.Days[0] + 4
		entry, err := r.Decide(day)
		if err != nil {
			t.Fatal(tt.id, err)
		}
		tt.gone(&r)
		if err := r.Validate(); !errors.Is(err, field.ErrUnknown) {
			t.Errorf("%s, and nothing decided: %v", tt.id, err)
		}
		r.Entries = []record.Entry{entry}
		r = read2(t, encoded(t, r))
		next, err := r.Decide(day + 1)
		if err != nil || len(next.Items) != 1 || next.Items[0].Decision.Next == nil || next.Items[0].Decision.Instead != tt.in {
			t.Errorf("%s: %v, %+v, want %s in its place", tt.id, err, next.Items, tt.in)
			continue
		}
		r.Asked[0].Until, r.Exercises = day, nil
		r.Asked, r.Entries = append(r.Asked, record.AskedFrom(*next.Items[0].Decision.Next, day+1)), append(r.Entries, next)
		sameAnswers(t, read2(t, encoded(t, r)))
		if _, err := r.Week(day + 1); err != nil {
			t.Errorf("%s: %v", tt.id, err)
		}
	}
}
