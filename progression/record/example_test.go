package record_test

import (
	"fmt"
	"log"

	"example.org/posology/dose"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// client is an invented record: no such person exists.
const client = `{
	"version": 4, "note": "invented", "client": "Client Z", "task": "get out of a low chair", "goal": "strength",
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

// What stands against training until somebody has looked.
func ExampleRecord_Alarms() {
	r, err := record.Decode(fmt.Appendf(nil, client, trained), field.Strict)
	if err != nil {
		log.Fatal(err)
	}
	r.Happened = []programme.Happening{{Kind: programme.Faint, Day: r.Visits[1].Day}}
	entry, err := r.Decide(r.Visits[1].Day + 4)
	if err != nil {
		log.Fatal(err)
	}
	r.Entries = append(r.Entries, entry)
	list, err := r.Alarms(entry.Day)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(list[0].Told, list[0].Route, entry.Items[0].Decision.Action)
	fmt.Println(list[0].Who, list[0].Counts(screening.ThePhysio), list[0].Counts(screening.TheDoctor))
	asked, paused := r.AskedOn(entry.Day)
	fmt.Println(asked[0].Exercise, paused)
	// Output:
	// faint same day stop and refer
	// the doctor false true
	// goblet-squat map[goblet-squat:true]
}

// A clearance from before a faint does not speak for what comes after it.
func ExampleRecord_Screening() {
	r, err := record.Decode(fmt.Appendf(nil, client, trained), field.Strict)
	if err != nil {
		log.Fatal(err)
	}
	r.Profile.Conditions = screening.AskedFor("exertional_angina")
	r.Profile.Clearances = []screening.Clearance{{Who: "Doctor K", Day: r.Profile.Day - 3, Scope: []screening.Code{"exertional_angina"}}}
	for range 2 {
		o, err := r.Screening(r.Visits[1].Day)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(o.Route, len(o.Clearances))
		r.Happened = []programme.Happening{{Kind: programme.Faint, Day: r.Visits[1].Day}}
	}
	// Output:
	// tell 1
	// ask first 0
}

// Where the phase of a plan may lead, and what keeps it.
func ExampleRecord_Phases() {
	r, err := record.Decode(fmt.Appendf(nil, client, trained), field.Strict)
	if err != nil {
		log.Fatal(err)
	}
	r.Phase = dose.Familiarise
	review, err := r.Assess(r.Visits[1].Day + 4)
	if err != nil {
		log.Fatal(err)
	}
	phases, err := r.Phases(review, review.Day, programme.PlanStands)
	if err != nil {
		log.Fatal(err)
	}
	for _, c := range phases.Exits[0].Criteria[:4] {
		fmt.Println(c.Criterion, c.Holds)
	}
	// Output:
	// happened met
	// referral met
	// plan met
	// time not met
}

// What is asked for on a day, and whether it is paused.
func ExampleRecord_AskedOn() {
	r, err := record.Decode(fmt.Appendf(nil, client, trained), field.Strict)
	if err != nil {
		log.Fatal(err)
	}
	asked, paused := r.AskedOn(r.Visits[1].Day)
	fmt.Println(asked[0].Exercise, asked[0].Load, len(paused))
	// Output: goblet-squat 2 kg 0
}

// From a sentence on a page to its sources: what the reason rests on, and what that
// derives from.
func ExampleLedger() {
	r, err := record.Decode(fmt.Appendf(nil, client, trained), field.Strict)
	if err != nil {
		log.Fatal(err)
	}
	items, err := r.Next(r.Visits[len(r.Visits)-1].Day + 4)
	if err != nil {
		log.Fatal(err)
	}
	ledger, err := record.Ledger()
	if err != nil {
		log.Fatal(err)
	}
	words, err := record.Words()
	if err != nil {
		log.Fatal(err)
	}
	for _, why := range items[0].Decision.Reasons {
		fmt.Println(words.Clinician(why))
		for _, line := range ledger.Explain(why.Facts...) {
			fmt.Println("  ", line)
		}
	}
	// Output:
	// Up to 11 with the same load, ended by the reserve; 15 at most.
	//    progression.easy-step: repetitions go to what the chance allows, at most 2 more at a visit, and 5 while every set left more than can be counted; where nothing is known of strength one, but as many where a harder variant brings a weight; of seconds and metres 5 more (design)
	//    progression.bridge-top: bridging by repetitions ends at 20, or at 25 to a weight more than 15 % heavier where strength is known, no body is moved too and the present weight is not the lightest; at the end of the exercise's own range, where it has one, if that is lower; while movements are learnt, at the top of the range: the arithmetic is far off beyond (design)
	//      progression.bridge: to land on r repetitions after a step of the fraction p, first reach r + p × (30 + r) (computed, no better known than from memory)
	//        onerm.epley: 1RM = load·(1 + r/30) (from memory; Epley B. Poundage chart. Lincoln, NE: Body Enterprises; 1985)
	// The next weight after 2 kg is 4 kg, a step of 100 %; published guidance is 2 to 10 %.
	//    progression.step-2-to-10: add 2 to 10 % when 1 to 2 repetitions over the target can be done (published; Kraemer WJ, et al. (American College of Sports Medicine). Med Sci Sports Exerc 2002;34(2):364-380; abstract)
}

// What is asked for from a day on becomes a line of the record, and what a visit
// brought is read for what hurt, showed or was lost.
func ExampleAskedFrom() {
	r, err := record.Decode(fmt.Appendf(nil, client, trained), field.Strict)
	if err != nil {
		log.Fatal(err)
	}
	day := r.Visits[1].Day + 4
	items, err := r.Next(day)
	if err != nil {
		log.Fatal(err)
	}
	line := record.AskedFrom(*items[0].Decision.Next, day)
	fmt.Println("from", line.From, "on:", line.Exercise, line.Sets, "×", line.Count, "with", line.Load)
	words, err := record.Words()
	if err != nil {
		log.Fatal(err)
	}
	set := r.Done[1]
	set.Day = day
	visit := progression.Visit{Day: day, Plan: *items[0].Decision.Next, Sets: []setlog.Set{set}, RangeLost: screening.Yes, FormLost: screening.No}
	for _, why := range record.Bodily(visit) {
		fmt.Println(words.Clinician(why))
	}
	// Output:
	// from 2026-12-07 on: goblet-squat 1 × 11 with 2 kg
	// Range of movement was lost since the visit before: eased.
}

// The days that an invented plan of three weeks ago is held to.
func ExampleRecord_Dates() {
	r, err := record.Decode(fmt.Appendf(nil, client, trained), field.Strict)
	if err != nil {
		log.Fatal(err)
	}
	r.Phase, r.Began = dose.Build, units.Must(units.NewDay(2026, 11, 9))
	d, err := r.Dates(r.Began + 21)
	fmt.Println(d.Review, d.Retest, d.Expires, err)
	// Output: 2026-12-21 2026-11-30 2027-01-04 <nil>
}
