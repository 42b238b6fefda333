package week_test

import (
	"fmt"
	"log"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A first week of two days for an invented man of 70, half an hour each.
func ExamplePlan() {
	day := units.Must(units.NewDay(2026, 11, 30))
	outcome, err := screening.Assess(screening.Profile{
		Day: day, Age: 70, Sex: body.Male, Training: body.Novice, Setting: screening.InGroup, Wanted: screening.Light,
		Activity: &screening.Activity{Intensity: screening.Idle},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
	})
	if err != nil {
		log.Fatal(err)
	}
	w, err := week.Plan(week.Request{
		Day: day, Screening: outcome, Goal: guideline.Strength, Minutes: 30, Days: []units.Day{day, day + 3},
		Exercises: []exercise.ID{"goblet-squat", "one-arm-dumbbell-row"},
		Kit:       equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: units.Must(units.ParseMarked("2 kg")), Count: 2}}},
	})
	if err != nil {
		log.Fatal(err)
	}
	for _, item := range w.Sessions[0].Items {
		fmt.Printf("%s: %d × %d with %s\n", item.Name, item.Sets, item.Count, item.Load)
	}
	fmt.Printf("%.0f minutes without the warm-up; look at it again by %s\n", week.MinutesOf(w.Sessions[0].Items), w.Review)
	items := slices.Clone(w.Sessions[0].Items)
	items[0].Sets, items[1].Sets = 6, 6
	w = w.With(items, 30)
	fmt.Println(week.Words().Clinician(w.Reasons[len(w.Reasons)-1]))
	// Output:
	// goblet squat: 1 × 10 with 2 kg dumbbell in both hands
	// one-arm dumbbell row: 1 × 10 with 2 kg dumbbell in one hand
	// 4 minutes without the warm-up; look at it again by 2026-12-14
	// A session takes 39 minutes by now, more than the 30 given. What goes first, as a plan would trim it: goblet squat, 5 of 6 sets; one-arm dumbbell row, 4 of 6 sets.
}

// A plan that builds, from its first session on, under a clearance that lapses sooner.
func ExampleDatesOf() {
	first := units.Must(units.NewDay(2026, 11, 30))
	dates, err := week.DatesOf(dose.Build, first, first+40)
	fmt.Printf("look again by %v, test by %v, ends on %v %v\n", dates.Review, dates.Retest, dates.Expires, err)
	// Output: look again by 2027-01-09, test by 2026-12-21, ends on 2027-01-09 <nil>
}
