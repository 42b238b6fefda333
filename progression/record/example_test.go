package record_test

import (
	"fmt"
	"log"

	"example.org/posology/progression/record"
	"example.org/posology/units/field"
)

// client is an invented record: no such person exists.
const client = `{
	"version": 1, "note": "invented", "client": "Client Z", "task": "get out of a low chair", "goal": "strength",
	"profile": {
		"day": "2026-11-25", "age": 67, "sex": "female", "training": "novice", "setting": "in a group", "wanted": "moderate",
		"activity": {"days_per_week": 3, "minutes": 30, "intensity": "moderate", "months": 8},
		"diseases": {"asked": true}, "symptoms": {"asked": true}, "red_flags": {"asked": true}, "conditions": {"asked": true},
		"bp": {"systolic": 128, "diastolic": 78}, "resting_pulse": 66, "falls": {"afraid": "no", "fell": "no", "unsteady": "no"}
	},
	"kit": {"dumbbells": [{"mass": "2 kg", "count": 2}, {"mass": "4 kg", "count": 2}]},
	"exercises": ["goblet-squat"],
	"days": ["2026-11-30", "2026-12-03"]%s
}`

// trained is what comes of two visits.
const trained = `,
	"asked": [{"from": "2026-11-30", "exercise": "goblet-squat", "load": "2 kg", "sets": 1, "count": 10, "span": {"min": 10, "max": 15}, "reserve": 5}],
	"visits": [
		{"day": "2026-11-30", "pain_free": true, "moment": {}, "range_lost": "no", "form_lost": "no", "observer": "Instructor C"},
		{"day": "2026-12-03", "pain_free": true, "moment": {}, "range_lost": "no", "form_lost": "no", "observer": "Instructor C"}
	],
	"done": [
		{"day": "2026-11-30", "exercise": "goblet-squat", "side": "both", "hold": "both hands on one", "load": "2 kg", "reps": 10, "effort": "rir 5"},
		{"day": "2026-12-03", "exercise": "goblet-squat", "side": "both", "hold": "both hands on one", "load": "2 kg", "reps": 10, "effort": "rir 5"}
	]`

// The first visit: screening and a week.
func ExampleRecord_Start() {
	r, err := record.Decode(fmt.Appendf(nil, client, ""), field.Strict)
	if err != nil {
		log.Fatal(err)
	}
	plan, err := r.Start(r.LastDay())
	if err != nil {
		log.Fatal(err)
	}
	item := plan.Week.Sessions[0].Items[0]
	fmt.Println(plan.Screening.Route, plan.Screening.Meanwhile)
	fmt.Printf("%s on %s: %d × %d with %s\n", item.Name, plan.Week.Sessions[0].Day, item.Sets, item.Count, item.Load.Each())
	// Output:
	// none within limits
	// goblet squat on 2026-11-30: 1 × 10 with 2 kg
}

// After two visits: what is asked for at the third, kept with its edition and
// worked out again.
func ExampleRecord_Next() {
	r, err := record.Decode(fmt.Appendf(nil, client, trained), field.Strict)
	if err != nil {
		log.Fatal(err)
	}
	entry, err := r.Decide(r.Visits[1].Day + 4)
	if err != nil {
		log.Fatal(err)
	}
	d := entry.Items[0].Decision
	fmt.Printf("%s, %s: %s %s, %d × %d\n", entry.Day, entry.Items[0].Name, d.Action, d.Change, d.Next.Sets, d.Next.Count)
	r.Entries = append(r.Entries, entry)
	fmt.Println(r.Replay()[0].Err)
	// Output:
	// 2026-12-07, goblet squat: progress repetitions, 1 × 11
	// <nil>
}
