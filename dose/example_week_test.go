package dose_test

import (
	"fmt"
	"log"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A first week of two days for an invented man of 70, half an hour each.
func ExamplePlanWeek() {
	day := units.Must(units.NewDay(2026, 11, 30))
	outcome, err := screening.Assess(screening.Profile{
		Day: day, Age: 70, Sex: body.Male, Training: body.Novice, Setting: screening.InGroup, Wanted: screening.Light,
		Activity: &screening.Activity{Intensity: screening.Idle},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
	})
	if err != nil {
		log.Fatal(err)
	}
	week, err := dose.PlanWeek(dose.WeekRequest{
		Day: day, Screening: outcome, Goal: guideline.Strength, Minutes: 30, Days: []units.Day{day, day + 3},
		Exercises: []exercise.ID{"goblet-squat", "one-arm-dumbbell-row"},
		Kit:       equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: units.Must(units.ParseMarked("2 kg")), Count: 2}}},
	})
	if err != nil {
		log.Fatal(err)
	}
	for _, item := range week.Sessions[0].Items {
		fmt.Printf("%s: %d × %d with %s\n", item.Name, item.Sets, item.Count, item.Load)
	}
	fmt.Printf("%.0f minutes without the warm-up; look at it again by %s\n", dose.MinutesOf(week.Sessions[0].Items), week.Review)
	days, sets, fact := dose.MaintenanceDose()
	fmt.Printf("to keep what was gained: %d days, %s sets (%s)\n", days, sets, fact)
	// Output:
	// goblet squat: 1 × 10 with 2 kg dumbbell in both hands
	// one-arm dumbbell row: 1 × 10 with 2 kg dumbbell in one hand
	// 4 minutes without the warm-up; look at it again by 2026-12-14
	// to keep what was gained: 2 days, 2 to 3 sets (dose.maintain)
}

// A frame is what binds every dose of one exercise: a step is granted within it.
func ExampleNewFrame() {
	day := units.Must(units.NewDay(2026, 11, 30))
	outcome, err := screening.Assess(screening.Profile{
		Day: day, Age: 66, Sex: body.Female, Training: body.Intermediate, Setting: screening.WithHelper, Wanted: screening.Moderate,
		Activity: &screening.Activity{DaysPerWeek: 3, Minutes: 30, Intensity: screening.Moderate, Months: 6},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
	})
	if err != nil {
		log.Fatal(err)
	}
	curl, err := exercise.Standard().Lookup("seated-hammer-curl")
	if err != nil {
		log.Fatal(err)
	}
	frame, err := dose.NewFrame(dose.Request{
		Day: day, Screening: outcome, Exercise: curl, Side: body.Both, Goal: guideline.Strength,
		Kit: equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: units.Must(units.ParseMarked("4 kg")), Count: 2}}},
	})
	if err != nil {
		log.Fatal(err)
	}
	plan, err := frame.Continue(dose.Step{Load: 4 * units.Kilogram, Last: 4 * units.Kilogram, Count: 12, Sets: 3})
	fmt.Printf("%d × %d with %s %v\n", plan.Sets, plan.Count, plan.Load, err)
	plan, err = frame.Continue(dose.Step{Load: 5 * units.Kilogram, Last: 4 * units.Kilogram, Count: 12, Sets: 3}) // no such weight
	fmt.Printf("%d × %d with %s %v\n", plan.Sets, plan.Count, plan.Load, err)
	// Output:
	// 3 × 12 with 4 kg dumbbell in each hand <nil>
	// 3 × 12 with 4 kg dumbbell in each hand <nil>
}
