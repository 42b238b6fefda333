package beside_test

import (
	"fmt"
	"log"

	"example.org/posology/dose/beside"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// An invented woman of 81 who is to have a hand on something firm, with a helper beside her.
func Example() {
	day := units.Must(units.NewDay(2026, 11, 30))
	outcome := screening.Waived("an example", body.Person{Age: 81, Sex: body.Female, Training: body.Novice}, screening.WithHelper, day)
	outcome.Limits.Support = true
	s := beside.Situation{Day: day, Screening: outcome, Goal: guideline.Bone}
	items, barred, err := beside.Start(s)
	if err != nil {
		log.Fatal(err)
	}
	for _, i := range items {
		fmt.Printf("%s: %s, %s, %d a week\n", i.Kind, i.Name, i.Hands, i.WeeklyMinutes())
	}
	for _, b := range barred {
		fmt.Printf("%s, %s: %s\n", b.Kind, b.Track, beside.Words().Clinician(b.Reasons[0]))
	}
	next, err := beside.Next(items[0], beside.Happened{Days: 2, Least: 10}, s)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("next:", next.Name)
	// Output:
	// balance: standing with the feet together, both hands, 15 a week
	// balance: shifting the weight, both hands, 15 a week
	// balance: marching on the spot, both hands, 15 a week
	// aerobic: walking, or other movement that goes on, , 50 a week
	// balance, one-leg: Goes no further until 3 stances of the four-stage balance test were held.
	// impact, impact: No impact item: support is asked for, or half-tandem was not held.
	// next: standing with one foot half ahead
}

// A fortnight of an invented person, from the log to the step that is kept.
func ExampleMoveOn() {
	day := units.Must(units.NewDay(2026, 11, 30))
	s := beside.Situation{
		Day: day, Goal: guideline.Strength,
		Screening: screening.Waived("an example", body.Person{Age: 72, Sex: body.Male, Training: body.Novice}, screening.InGroup, day),
	}
	items, _, err := beside.Start(s)
	if err != nil {
		log.Fatal(err)
	}
	practised := []beside.Practised{
		{Day: day, Track: "stance", Least: 10}, {Day: day + 3, Track: "stance", Least: 10},
		{Day: day + 4, Track: "reach", Least: 5, Troubles: []beside.Trouble{beside.Swayed}},
	}
	s.Day, s.Known.Since = day+5, day
	moved, _, err := beside.MoveOn(practised, s)
	if err != nil {
		log.Fatal(err)
	}
	for i, m := range moved[:3] {
		fmt.Printf("%s: step %d, then %d\n", m.Track, items[i].Step, m.Step)
	}
	// Output:
	// stance: step 4, then 5
	// reach: step 2, then 1
	// stepping: step 3, then 3
}
