package main

import (
	"errors"
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// client is an invented record of the clinic: no such person exists.
const client = `{
  "version": 1, "note": "invented", "client": "Client Z", "task": "get out of a low chair", "goal": "strength",
  "profile": {
    "key": "z-1", "day": "2026-11-25", "age": 67, "sex": "female", "training": "novice", "setting": "in a group", "wanted": "moderate",
    "activity": {"days_per_week": 3, "minutes": 30, "intensity": "moderate", "months": 8},
    "diseases": {"asked": true}, "symptoms": {"asked": true}, "red_flags": {"asked": true}, "conditions": {"asked": true},
    "bp": {"systolic": 128, "diastolic": 78}, "resting_pulse": 66, "falls": {"afraid": "no", "fell": "no", "unsteady": "no"}
  },
  "kit": {"dumbbells": [{"mass": "2 kg", "count": 2}, {"mass": "4 kg", "count": 2}, {"mass": "6 kg", "count": 2}]},
  "exercises": ["goblet-squat"],
  "days": ["2026-11-30", "2026-12-03"]
}`

// job is that of a first visit, of a week and of a review.
func job() error {
	r, err := record.Decode([]byte(client), field.Strict)
	if err != nil {
		return err
	}
	first := r.Days[0]
	plan, err := r.Start(r.LastDay())
	if err != nil {
		return err
	}
	if plan.Stop != nil {
		return errors.New(plan.Stop.Why)
	}
	asked := plan.Week.Sessions[0].Items[0]
	fmt.Printf("first visit: %s with %s, %d × %d\n", asked.Exercise, asked.Load.Each(), asked.Sets, asked.Count)
	if err := audit(r, first); err != nil {
		return err
	}
	r.Asked = append(r.Asked, record.AskedFrom(asked, first))
	for _, day := range r.Days {
		trained(&r, day, asked)
	}
	return review(r)
}

// audit holds the week against a recommendation.
func audit(r record.Record, from units.Day) error {
	week, err := r.Week(from)
	if err != nil {
		return err
	}
	catalogue, err := r.Catalogue()
	if err != nil {
		return err
	}
	prescribed, err := week.Prescribed(catalogue, volume.Options{})
	if err != nil {
		return err
	}
	row, err := guideline.Get(week.Sessions[0].Items[0].Guideline)
	if err != nil {
		return err
	}
	report, err := guideline.Audit(prescribed, row)
	if err != nil {
		return err
	}
	fmt.Printf("week: %d sessions, held against %s: %v\n", len(week.Sessions), row.ID, len(report.Findings) > 0)
	return nil
}

func trained(r *record.Record, day units.Day, p dose.Prescription) {
	r.Visits = append(r.Visits, record.TrainingDay{Day: day, Noted: record.Noted{PainFree: true, Moment: &screening.Moment{}, Observer: "Instructor C"}})
	for range p.Sets {
		r.Done = append(r.Done, setlog.Set{
			Key: r.Profile.Key, Day: day, Exercise: p.Exercise, Side: p.Side, Hold: p.Hold, Load: p.Load.Each(), Reps: p.Count,
		})
	}
}

// review decides on the next visit, keeps the decision and works it out again.
func review(r record.Record) error {
	day := r.Visits[len(r.Visits)-1].Day + 4
	entry, err := r.Decide(day)
	if err != nil {
		return err
	}
	fmt.Printf("next: %s, %s, %s\n", entry.Items[0].Exercise, entry.Items[0].Side, entry.Items[0].Decision.Action)
	r.Entries = append(r.Entries, entry)
	for _, again := range r.Replay() {
		if again.Err != nil {
			return again.Err
		}
	}
	whole, err := r.Assess(day)
	if err != nil {
		return err
	}
	fmt.Printf("review: %d of %d sessions, the plan is looked at again by %s\n", len(whole.Attended.Done), len(whole.Attended.Sessions), whole.InForce.Review)
	return nil
}

// A file is the clinic's own, around a profile of the library.
type file struct {
	screening.Profile
	Clinic string `json:"clinic"`
}

// both decodes the clinic's file as a strict reader and as one that passes over
// what is newer than it.
func both() error {
	const newer = `{"day": "2026-11-25", "age": 67, "clinic": "Z", "newer": true}`
	var f file
	if err := field.Decode([]byte(newer), &f, field.Strict); !errors.Is(err, field.ErrUnknown) {
		return fmt.Errorf("a newer field, strictly: %w", err)
	}
	if err := field.Decode([]byte(newer), &f, field.PassOver); err != nil {
		return err
	}
	fmt.Printf("embedded: %d years, clinic %s\n", f.Age, f.Clinic)
	return nil
}
